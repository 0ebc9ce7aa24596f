/**
 * @typedef {object} LockedPackage - one entry of a lock file, as npm writes it
 * @property {string} [version]
 * @property {boolean} [link] - a package of this repository, linked into node_modules
 * @property {boolean} [optional] - may be absent, such as a binary for another system
 * @property {readonly string[]} [os] - systems it is meant for
 * @property {readonly string[]} [cpu] - processors it is meant for
 */

/** @typedef {{ readonly packages?: Readonly<Record<string, LockedPackage>> }} LockFile */

/**
 * @typedef {object} InstallFacts
 * @property {LockFile | undefined} locked - package-lock.json: what should be installed
 * @property {LockFile | undefined} installed - node_modules/.package-lock.json: what npm says it installed
 * @property {(path: string) => string | undefined} versionAt - the version in the package.json of a
 * folder; undefined if it is missing, unreadable or a script that it offers as a command is missing
 */

/**
 * Decides whether an install is needed, from what is locked and what is there.
 *
 * Contents are compared and not times: an install without development dependencies leaves a young
 * but incomplete node_modules, and a fresh checkout gives every file the same time.
 *
 * @param {InstallFacts} facts - both lock files and a look at the disk
 * @returns {string | undefined} why an install is needed, in words; undefined if all is there
 */
export function installReason({ locked, installed, versionAt }) {
  if (installed?.packages === undefined) return 'nothing is installed yet';
  if (locked?.packages === undefined) return undefined;
  for (const [path, wanted] of Object.entries(locked.packages)) {
    if (!path.includes('node_modules/')) continue;
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
    if (wanted.link === true) {
      if (versionAt(path) === undefined) return `${name} is not linked`;
      continue;
    }
    const had = installed.packages[path];
    if (had === undefined) {
      if (mayBeAbsent(wanted)) continue;
      return `${name} is missing`;
    }
    if (had.version !== wanted.version) {
      return `${name} is ${had.version}, and ${wanted.version} is asked for`;
    }
    if (versionAt(path) !== wanted.version) return `${name} is only half there`;
  }
  return undefined;
}

/**
 * @param {LockedPackage} wanted - an entry of the lock file
 * @returns {boolean} whether npm may have left it out on this system
 */
function mayBeAbsent({ optional, os, cpu }) {
  return optional === true || os !== undefined || cpu !== undefined;
}
