import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/no-warnings.ts'],
    // Each file in a process of its own: some look at the processes below them, or at how a process ends.
    pool: 'forks',
    // Two files at once are what two cores carry while a browser runs beside them.
    maxWorkers: 2,
    // A browser on a busy machine takes its time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
