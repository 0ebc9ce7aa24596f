import { cpSync, existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { runNpm } from './npm-command.mjs';

/**
 * @typedef {object} Manifest - what is used here of a package.json
 * @property {string} name
 * @property {string} version
 * @property {boolean} [private]
 * @property {string[]} [files]
 * @property {Record<string, string>} [dependencies]
 * @property {Record<string, string | Record<string, string>>} [exports]
 */

/**
 * @typedef {object} Tarball
 * @property {string} name - of the package
 * @property {string} path - of the .tgz
 * @property {string[]} files - what is in it
 */

/**
 * Packs every public package as it would be published: with the licence, and without the export
 * condition that leads to sources, which are not in the package.
 *
 * @param {string} root - the repository's top folder, built
 * @param {string} into - an empty folder for the tarballs
 * @returns {Promise<Tarball[]>} one for each public package
 */
export async function packPackages(root, into) {
  const folders = readdirSync(join(root, 'packages'))
    .map((name) => join(root, 'packages', name))
    .filter((folder) => existsSync(join(folder, 'package.json')))
    .filter((folder) => readManifest(folder).private !== true);
  const staged = folders.map((folder) => stage(root, folder, join(into, 'staged')));
  return packFolders(staged, into);
}

/**
 * Packs what the given packages need from outside, from the installed copies and with no network.
 *
 * @param {string} root - the repository's top folder
 * @param {string} into - a folder for the tarballs
 * @returns {Promise<Tarball[]>} one for each package that our public packages need, near or far
 */
export async function packDependencies(root, into) {
  /** @type {Map<string, string>} */
  const found = new Map();
  /** @param {string} folder */
  const visit = (folder) => {
    for (const name of Object.keys(readManifest(folder).dependencies ?? {})) {
      const at = installedFolder(folder, name);
      if (at === undefined) throw new Error(`${name}, which ${folder} needs, is not installed.`);
      const known = found.get(name);
      if (known !== undefined) continue;
      if (!isOurs(name)) found.set(name, at);
      if (!isOurs(name)) visit(at);
    }
  };
  for (const name of readdirSync(join(root, 'packages'))) {
    const folder = join(root, 'packages', name);
    if (existsSync(join(folder, 'package.json')) && readManifest(folder).private !== true) {
      visit(folder);
    }
  }
  return packFolders([...found.values()], into);
}

/**
 * @param {string} folder - a package
 * @returns {Manifest} its package.json
 */
function readManifest(folder) {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}

/**
 * @param {string} name - of a package
 * @returns {boolean} whether it is one of this repository's
 */
function isOurs(name) {
  return name === 'evendraft' || name.startsWith('@evendraft/');
}

/**
 * @param {string} root - the repository's top folder
 * @param {string} folder - a package
 * @param {string} into - where to put the copy
 * @returns {string} the copy's folder
 */
function stage(root, folder, into) {
  const manifest = readManifest(folder);
  const target = join(into, manifest.name.replaceAll('/', '__'));
  mkdirSync(target, { recursive: true });
  for (const name of manifest.files ?? []) {
    cpSync(join(folder, name), join(target, name), { recursive: true });
  }
  if (existsSync(join(folder, 'README.md'))) {
    cpSync(join(folder, 'README.md'), join(target, 'README.md'));
  }
  cpSync(join(root, 'LICENSE'), join(target, 'LICENSE'));
  const exports = Object.fromEntries(
    Object.entries(manifest.exports ?? {}).map(([entry, targets]) => {
      if (typeof targets === 'string') return [entry, targets];
      const { '@evendraft/source': _source, ...published } = targets;
      return [entry, published];
    }),
  );
  const published = { ...manifest, exports };
  writeFileSync(join(target, 'package.json'), `${JSON.stringify(published, null, 2)}\n`);
  return target;
}

/**
 * @param {readonly string[]} folders - packages
 * @param {string} into - where the tarballs go
 * @returns {Promise<Tarball[]>} the tarballs
 */
async function packFolders(folders, into) {
  const { exitCode, stdout, stderr } = await runNpm(
    [
      'pack',
      '--json',
      '--ignore-scripts',
      '--loglevel=error',
      '--pack-destination',
      into,
      ...folders,
    ],
    { cwd: into },
  );
  if (exitCode !== 0) throw new Error(`npm pack did not succeed:\n${stdout}${stderr}`);
  /** @type {{ name: string, filename: string, files: { path: string }[] }[]} */
  const packed = Object.values(JSON.parse(stdout));
  return packed.map(({ name, filename, files }) => ({
    name,
    path: join(into, filename.replace('@', '').replaceAll('/', '-')),
    files: files.map(({ path }) => path),
  }));
}

/**
 * @param {string} from - folder of the package that needs it
 * @param {string} name - of the needed package
 * @returns {string | undefined} where Node would find it
 */
function installedFolder(from, name) {
  for (let folder = from; ; folder = dirname(folder)) {
    const candidate = join(folder, 'node_modules', name);
    if (existsSync(join(candidate, 'package.json'))) return candidate;
    if (folder === dirname(folder)) return undefined;
  }
}
