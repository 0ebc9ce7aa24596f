import { commandScript } from '../repository.mjs';
import { runNode } from '../run-command.mjs';

/** @import { Gate } from '../run-gates.mjs' */

/**
 * Imports go only the ways that `layer-table.cjs` allows. Counts one when they do, and each that does not.
 *
 * @type {Gate}
 */
export const layersGate = {
  name: 'layers',
  title: 'imports between packages follow the table of layers',
  async run({ root, write }) {
    const { exitCode, output } = await cruise(root);
    write(output.trim());
    if (exitCode === 0) return { passed: 1, failed: 0, skipped: 0 };
    // The exit code is the number of errors, but it has only eight bits.
    const errors = Number(/\((\d+) errors?/.exec(output)?.[1] ?? 1);
    return { passed: 0, failed: Math.max(1, errors), skipped: 0 };
  },
};

/**
 * Follows every import below a folder and holds it against the table of layers.
 *
 * @param {string} folder - a folder that is laid out like this repository
 * @param {string} root - the repository whose tools are used
 * @returns {Promise<{ exitCode: number, output: string }>} zero if all is well, and what is wrong
 */
export async function cruise(folder, root = folder) {
  const { exitCode, stdout, stderr } = await runNode(
    [
      commandScript('dependency-cruiser', 'depcruise', root),
      '--config',
      `${root}/packages/checks/tools/dependency-cruiser.config.cjs`,
      '--output-type',
      'err-long',
      'packages',
      'examples',
      'bench',
    ],
    { cwd: folder, env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' } },
  );
  return { exitCode, output: `${stdout}${stderr}` };
}
