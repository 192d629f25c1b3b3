/** The widget's tests, in real Chromium. CHROME_BIN names another executable. */
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { chromeLauncher } from '@web/test-runner-chrome';
import { executableOf, SANDBOX_ARGS } from './scripts/browsers.mjs';

/** Sessions of the protocol by page: one that is let go takes its emulation with it. */
const sessions = new WeakMap();

/** The command 'media-features': sets features such as forced-colors, for which the runner has no command of its own. */
const mediaFeatures = {
  name: 'media-features',
  async executeCommand({ command, payload, session }) {
    if (command !== 'media-features') return undefined;
    const page = session.browser.getPage(session.id);
    if (!sessions.has(page)) sessions.set(page, await page.createCDPSession());
    await sessions.get(page).send('Emulation.setEmulatedMedia', { features: payload });
    return true;
  },
};

/** An error on the console fails the test that is running. */
const failOnConsoleErrors = `<script>
  const say = console.error;
  console.error = (...words) => {
    say(...words);
    Promise.reject(new Error(words.map(String).join(' ')));
  };
</script>`;

export default {
  files: ['test/widget/**/*.test.ts'],
  nodeResolve: true,
  concurrency: 1,
  plugins: [esbuildPlugin({ ts: true, target: 'es2022', tsconfig: 'tsconfig.json' }), mediaFeatures],
  browsers: [
    chromeLauncher({
      launchOptions: {
        executablePath: executableOf('chromium'),
        args: [
          ...SANDBOX_ARGS,
          '--disable-gpu',
          '--disable-quic',
          '--no-first-run',
          '--disable-background-networking',
          '--disable-component-update',
          '--disable-sync',
        ],
      },
    }),
  ],
  testFramework: { config: { timeout: 10_000 } },
  testRunnerHtml: (framework) =>
    `<!doctype html><html lang="en"><head>${failOnConsoleErrors}</head><body><script type="module" src="${framework}"></script></body></html>`,
};
