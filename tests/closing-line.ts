import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with the names of what passed only when tried again, and one plain line, "N passed, N failed", that scripts can read. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: ReadonlyArray<TestModule>): void {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      if (module.state() === 'failed' && tests.length === 0) count.failed++;
      for (const test of tests) {
        count[test.result().state]++;
        if (test.diagnostic()?.flaky)
          process.stdout.write(`passed only when tried again: ${test.fullName}\n`);
      }
    }
    const skipped = count.skipped + count.pending;
    process.stdout.write(
      `${count.passed} passed, ${count.failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`,
    );
  }
}
