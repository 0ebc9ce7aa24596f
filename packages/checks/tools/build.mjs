import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { commandScript } from './repository.mjs';
import { runNode } from './run-command.mjs';

/**
 * @typedef {object} BuildResult
 * @property {boolean} succeeded
 * @property {boolean} skipped - nothing had changed
 * @property {string} output - what the compiler said
 */

/**
 * Compiles packages to their `dist` folders, doing only what changed since the last time.
 *
 * The compiler trusts its own notes and does not look whether `dist` is still there, so missing
 * files are looked for here; and files whose source is gone are removed, because they would be packed.
 *
 * @param {string} root - the repository's top folder
 * @param {readonly string[]} projects - folders with a tsconfig.json, relative to the top
 * @returns {Promise<BuildResult>} whether it succeeded, and the compiler's words
 */
export async function buildIfNeeded(root, projects) {
  const packages = builtPackages(root);
  for (const folder of packages) {
    if (missesOutput(folder)) rmSync(join(folder, '.tsbuildinfo'), { force: true });
  }
  const stampPath = join(root, 'node_modules/.cache/evendraft/built');
  const stamp = () => `${projects.join(' ')} ${digest(root, packages)}\n`;
  if (existsSync(stampPath) && readFileSync(stampPath, 'utf8') === stamp()) {
    return { succeeded: true, skipped: true, output: '' };
  }
  const { exitCode, stdout, stderr } = await runNode(
    [commandScript('typescript', 'tsc', root), '-b', ...projects],
    { cwd: root },
  );
  if (exitCode !== 0) return { succeeded: false, skipped: false, output: `${stdout}${stderr}` };
  for (const folder of packages) removeOrphans(folder);
  try {
    mkdirSync(dirname(stampPath), { recursive: true });
    writeFileSync(stampPath, stamp());
  } catch {
    // Without a stamp the next build asks the compiler again.
  }
  return { succeeded: true, skipped: false, output: stdout };
}

/**
 * @param {string} root - the repository's top folder
 * @returns {string[]} folders of the packages that have sources
 */
function builtPackages(root) {
  return readdirSync(join(root, 'packages'))
    .map((name) => join(root, 'packages', name))
    .filter((folder) => existsSync(join(folder, 'src')));
}

/**
 * @param {string} folder - a package
 * @returns {string[]} its compiled sources, relative to `src`, without `.ts`
 */
function sourceStems(folder) {
  return readdirSync(join(folder, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts') && !/\.(test|d)\.ts$/.test(path))
    .map((path) => path.slice(0, -'.ts'.length))
    .sort();
}

/**
 * @param {string} folder - a package
 * @returns {boolean} whether a file that the compiler should have written is not there
 */
function missesOutput(folder) {
  return sourceStems(folder).some((stem) =>
    ['.js', '.d.ts'].some((ending) => !existsSync(join(folder, 'dist', stem + ending))),
  );
}

/**
 * @param {string} folder - a package
 */
function removeOrphans(folder) {
  const dist = join(folder, 'dist');
  if (!existsSync(dist)) return;
  const stems = new Set(sourceStems(folder));
  for (const path of readdirSync(dist, { recursive: true, encoding: 'utf8' })) {
    if (statSync(join(dist, path), { throwIfNoEntry: false })?.isFile() !== true) continue;
    if (!stems.has(path.replace(/(\.d)?\.[a-z]+(\.map)?$/, ''))) rmSync(join(dist, path));
  }
}

/**
 * @param {string} root - the repository's top folder
 * @param {readonly string[]} packages - folders of the packages
 * @returns {string} a digest of everything that decides what the compiler would do
 */
function digest(root, packages) {
  const hash = createHash('sha256');
  /** @param {string} path */
  const add = (path) => {
    hash.update(`\0${path}\0`);
    if (existsSync(path)) hash.update(readFileSync(path));
  };
  add(join(root, 'package-lock.json'));
  add(join(root, 'tsconfig.base.json'));
  for (const folder of packages) {
    for (const name of ['package.json', 'tsconfig.json', '.tsbuildinfo']) add(join(folder, name));
    for (const stem of sourceStems(folder)) add(join(folder, 'src', `${stem}.ts`));
  }
  return hash.digest('hex');
}
