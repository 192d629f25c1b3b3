import { defineConfig } from 'vitest/config';

/** `npm run publishers`: the widget in the software that people publish with. It installs what it needs into a folder of its own. */
export default defineConfig({
  test: {
    include: ['test/publishing/publishers.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 900_000,
  },
});
