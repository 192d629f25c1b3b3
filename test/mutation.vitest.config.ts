import { defineConfig } from 'vitest/config';

/** The tests that a mutation of the checks or the physics has to get past. No test is timed: a busy machine is no fault. */
export default defineConfig({
  test: {
    include: ['test/{core/checks,core/physics,core/data,published,laws}/**/*.test.ts'],
    testTimeout: 120_000,
  },
});
