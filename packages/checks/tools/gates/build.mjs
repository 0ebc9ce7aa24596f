import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildIfNeeded } from '../build.mjs';

/** @import { Gate } from '../run-gates.mjs' */

/**
 * Every package compiles to its `dist`. Counts one for each package.
 *
 * @type {Gate}
 */
export const buildGate = {
  name: 'build',
  title: 'every package compiles',
  async run({ root, write }) {
    /** @type {{ references: { path: string }[] }} */
    const { references } = JSON.parse(readFileSync(join(root, 'packages/tsconfig.json'), 'utf8'));
    const { succeeded, skipped, output } = await buildIfNeeded(root, ['packages']);
    if (succeeded) {
      write(skipped ? 'Nothing had changed.' : `Compiled ${references.length} packages.`);
      return { passed: references.length, failed: 0, skipped: 0 };
    }
    write(output);
    const broken = new Set(
      [...output.matchAll(/^packages\/([^/]+)\/.*error TS/gm)].map(([, name]) => name),
    );
    const failed = Math.max(1, broken.size);
    return { passed: Math.max(0, references.length - failed), failed, skipped: 0 };
  },
};
