import { holdLock } from './hold-lock.mjs';
import { installIfNeeded } from './install.mjs';

/** The oldest Node that runs Evendraft. */
const oldestNode = [20, 19];

/**
 * Says what to do when this Node is too old, before anything fails in a way that nobody understands.
 *
 * @param {string} [version] - the running Node's version
 * @returns {boolean} whether it is new enough
 */
export function nodeIsNewEnough(version = process.versions.node) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = oldestNode;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return true;
  console.error(
    `Evendraft needs Node ${oldestNode.join('.')} or newer; this is Node ${version}. Get a newer one from https://nodejs.org, then run the same command again.`,
  );
  return false;
}

/**
 * Installs what is needed, then does some work that needs it, while no other run does the same here.
 *
 * @template T
 * @param {string} root - the repository's top folder
 * @param {() => Promise<T>} work - what to do once all is installed
 * @returns {Promise<T | undefined>} what the work returns; undefined if the installation failed
 */
export function whenInstalled(root, work) {
  return holdLock(root, async () => ((await installIfNeeded(root)) ? work() : undefined));
}
