import { commandScript } from '../repository.mjs';
import { runNode } from '../run-command.mjs';

/** @import { Gate } from '../run-gates.mjs' */

/**
 * Every file is formatted. Counts one when all are, and each file that is not.
 *
 * @type {Gate}
 */
export const formatGate = {
  name: 'format',
  title: 'every file is formatted (to repair: npm run format)',
  async run({ root, write }) {
    const { exitCode, stdout, stderr } = await runNode(
      [commandScript('prettier', 'prettier', root), '--list-different', '.'],
      { cwd: root },
    );
    if (exitCode === 0) return { passed: 1, failed: 0, skipped: 0 };
    write(`${stdout}${stderr}`.trimEnd());
    const files = stdout.split('\n').filter((line) => line !== '').length;
    return { passed: 0, failed: Math.max(1, files), skipped: 0 };
  },
};
