import { commandScript } from '../repository.mjs';
import { runNode } from '../run-command.mjs';

/** @import { Gate } from '../run-gates.mjs' */

/**
 * The rules of `eslint.config.mjs` hold. Counts one when they do, and each file with an error.
 *
 * @type {Gate}
 */
export const lintGate = {
  name: 'lint',
  title: 'exports are documented and the rules of style hold',
  async run({ root, write }) {
    const { exitCode, stdout, stderr } = await runNode(
      [
        commandScript('eslint', 'eslint', root),
        '--config',
        'packages/checks/tools/eslint.config.mjs',
        '--max-warnings=0',
        '--no-warn-ignored',
        '.',
      ],
      { cwd: root },
    );
    if (exitCode === 0) return { passed: 1, failed: 0, skipped: 0 };
    write(`${stdout}${stderr}`.trim());
    // The usual output names each file on a line of its own, by its absolute path.
    const files = stdout.split('\n').filter((line) => line.startsWith(root)).length;
    return { passed: 0, failed: Math.max(1, files), skipped: 0 };
  },
};
