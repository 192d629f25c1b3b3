import { defineConfig } from 'vitest/config';

/** The built page and extension in real browsers; run the build first. One browser at a time: they are large. */
export default defineConfig({
  test: {
    include: ['test/extension/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 30_000 } },
  },
});
