import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The top folder of the repository, without a slash at its end. */
export const repositoryRoot = fileURLToPath(new URL('../../..', import.meta.url)).replace(
  /[\\/]$/,
  '',
);

/**
 * The script behind a command of an installed package, to be run by this same Node on any system.
 *
 * @param {string} packageName - such as `typescript`
 * @param {string} [command] - such as `tsc`; needed where the package offers several commands
 * @param {string} [root] - the repository's top folder
 * @returns {string} absolute path of the script
 */
export function commandScript(packageName, command, root = repositoryRoot) {
  const folder = join(root, 'node_modules', packageName);
  /** @type {{ bin?: string | Record<string, string> }} */
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const script =
    typeof bin === 'string' ? bin : (bin?.[command ?? packageName] ?? Object.values(bin ?? {})[0]);
  if (script === undefined) {
    throw new Error(`The package ${packageName} offers no command ${command ?? packageName}.`);
  }
  return join(folder, script);
}
