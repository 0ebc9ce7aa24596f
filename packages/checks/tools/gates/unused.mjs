import { commandScript } from '../repository.mjs';
import { runNode } from '../run-command.mjs';

/** @import { Gate } from '../run-gates.mjs' */

/**
 * Nothing lies about unused: files, exports, dependencies. Counts one when so, and each unused thing.
 *
 * @type {Gate}
 */
export const unusedGate = {
  name: 'unused',
  title: 'no file, export or dependency is left without use',
  async run({ root, write }) {
    const { exitCode, stdout, stderr } = await runNode(
      [
        commandScript('knip', 'knip', root),
        '--config',
        'packages/checks/tools/knip.json',
        '--no-progress',
        '--no-config-hints',
        '--reporter',
        'compact',
      ],
      { cwd: root, env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' } },
    );
    if (exitCode === 0) return { passed: 1, failed: 0, skipped: 0 };
    write(`${stdout}${stderr}`.trim());
    const headed = [...stdout.matchAll(/^[A-Z].*\((\d+)\)$/gm)].map(([, count]) => Number(count));
    const things = headed.reduce((sum, count) => sum + count, 0);
    return { passed: 0, failed: Math.max(1, things), skipped: 0 };
  },
};
