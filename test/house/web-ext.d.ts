/** The part of web-ext that the tests call; it brings no types of its own. */
declare module 'web-ext' {
  interface Entry {
    readonly code: string;
    readonly file?: string;
    readonly line?: number;
  }
  export const cmd: {
    readonly lint: (
      of: { sourceDir: string; output: 'none' },
      how: { shouldExitProgram: false },
    ) => Promise<Record<'errors' | 'warnings' | 'notices', readonly Entry[]>>;
  };
}
