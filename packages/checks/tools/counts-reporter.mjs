import { writeFileSync } from 'node:fs';

/** @import { TestModule } from 'vitest/node' */

/**
 * Counts the tests of a run for the runner of the gates, and prints nothing. The file that takes the
 * counts is named by the environment variable EVENDRAFT_COUNTS_FILE.
 */
// eslint-disable-next-line no-restricted-syntax -- the test runner asks for a default export and a class
export default class CountsReporter {
  /**
   * @param {readonly TestModule[]} modules - every test file with its tests
   * @param {readonly unknown[]} unhandledErrors - errors outside of any test
   */
  onTestRunEnd(modules, unhandledErrors) {
    const counts = { passed: 0, failed: unhandledErrors.length, skipped: 0 };
    for (const module of modules) {
      let failedHere = 0;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') counts.passed += 1;
        else if (state === 'failed') failedHere += 1;
        else counts.skipped += 1;
      }
      // A file that cannot be loaded, or a suite whose preparation failed, has no test that failed.
      counts.failed += failedHere === 0 && module.state() === 'failed' ? 1 : failedHere;
    }
    const path = process.env['EVENDRAFT_COUNTS_FILE'];
    if (path !== undefined) writeFileSync(path, JSON.stringify(counts));
  }
}
