import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildIfNeeded } from '../build.mjs';
import { commandScript } from '../repository.mjs';
import { runNode } from '../run-command.mjs';

/** @import { Gate, GateCounts } from '../run-gates.mjs' */

/**
 * Every test of every package. Counts tests, and one failure for each file that could not be loaded.
 *
 * @type {Gate}
 */
export const testsGate = {
  name: 'tests',
  title: 'every test of every package',
  async run({ root, write }) {
    // Tests run from source, but a worker thread starts only from what is compiled.
    await buildIfNeeded(root, ['packages']);
    const folder = mkdtempSync(join(tmpdir(), 'evendraft-counts-'));
    const countsPath = join(folder, 'counts.json');
    try {
      const { exitCode } = await runNode(
        [
          commandScript('vitest', 'vitest', root),
          'run',
          '--config',
          'packages/checks/tools/vitest.config.ts',
          '--reporter=default',
          `--reporter=${join(root, 'packages/checks/tools/counts-reporter.mjs')}`,
        ],
        { cwd: root, env: { ...process.env, EVENDRAFT_COUNTS_FILE: countsPath }, echo: true },
      );
      if (!existsSync(countsPath)) {
        write('The test runner ended before it could count, which is a failure.');
        return { passed: 0, failed: 1, skipped: 0 };
      }
      /** @type {GateCounts} */
      const counts = JSON.parse(readFileSync(countsPath, 'utf8'));
      // A failure that belongs to no test, such as an exception after the last one, is not lost.
      return exitCode !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
};
