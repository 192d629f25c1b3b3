import { defineConfig } from 'vitest/config';

/** The tests that a mutation of the checks or the physics has to get past. */
export default defineConfig({
  test: { include: ['test/{core/checks,core/physics,core/data,published,laws}/**/*.test.ts'] },
});
