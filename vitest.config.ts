import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/{core,reader,link,published,laws,lists,practice,reading,hostile,house}/**/*.test.ts'],
    testTimeout: 90_000,
    hookTimeout: 90_000,
  },
});
