import type { Reporter, TestModule } from 'vitest/node'

/** Closes a run with one plain line that any program can read: how many tests passed, failed and were skipped. */
export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const counts = { passed: 0, failed: 0, skipped: 0, pending: 0 }
    for (const module of modules) {
      for (const test of module.children.allTests()) counts[test.result().state] += 1
    }
    process.stdout.write(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped\n`)
  }
}
