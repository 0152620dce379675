import { defineConfig } from 'vitest/config';
import { NearestFirst } from './nearest-first';

/**
 * The unit tests that hold behaviour. Left out: those that read the source as text, that start a server, that set the
 * process's time zone (the runner works in threads, which have none of their own), and the long simulation.
 */
export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    environment: 'node',
    include: [`${process.env.MUTANT_TESTS ?? 'tests'}/**/*.test.{ts,tsx}`],
    exclude: [
      'tests/browser/**',
      'tests/hub/**',
      'tests/*.test.ts',
      'tests/actions/backup-day.test.ts',
      'tests/parts/fields/time/time-choice.test.ts',
    ],
    setupFiles: ['tests/mutants/no-shrinking.ts'],
    sequence: { sequencer: NearestFirst },
    // On a busy machine a test that is merely slow would count as a change caught; what never ends is ended from outside.
    testTimeout: 300_000,
  },
});
