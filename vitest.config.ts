import { defineConfig } from 'vitest/config';
import type { Reporter } from 'vitest/node';

/** Says at the end what was left out for want of an outside program; the usual report gives their number alone. */
const leftOut: Reporter = {
  onTestRunEnd(modules) {
    const suites = modules.flatMap((each) => [...each.children.allSuites()]).map(({ name }) => name);
    for (const name of suites.filter((each) => /\(skipped: .*\)$/.test(each))) process.stdout.write(`left out: ${name}\n`);
  },
};

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/no-warnings.ts'],
    reporters: ['default', leftOut],
    // Each file in a process of its own: some look at the processes below them, or at how a process ends.
    pool: 'forks',
    // Two files at once are what two cores carry while a browser runs beside them.
    maxWorkers: 2,
    // A browser on a busy machine takes its time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
