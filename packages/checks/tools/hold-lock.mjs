import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

/** A lock older than this was left behind, even if its number now belongs to some process [ms]. */
const staleAfterMs = 30 * 60_000;

/**
 * Does a piece of work while no other process does the same in this repository. Best effort: when
 * the lock cannot be had or made, the work is done all the same.
 *
 * @template T
 * @param {string} root - the repository's top folder
 * @param {() => Promise<T>} work - what to do
 * @returns {Promise<T>} what the work returns
 */
export async function holdLock(root, work) {
  const folder = lockFolder(root);
  let told = false;
  while (!take(folder)) {
    if (ownerIsGone(folder)) {
      rmSync(folder, { recursive: true, force: true });
      continue;
    }
    if (!told) console.error('Waiting for another run that is installing or building …');
    told = true;
    await wait(250);
  }
  try {
    return await work();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * Where the lock of a repository lies.
 *
 * @param {string} root - the repository's top folder
 * @returns {string} a folder outside of it, because an install empties node_modules
 */
export function lockFolder(root) {
  const name = createHash('sha256').update(root).digest('hex').slice(0, 16);
  return join(tmpdir(), `evendraft-${name}.lock`);
}

/**
 * @param {string} folder - the lock: making a folder succeeds for one process only
 * @returns {boolean} whether the work may begin
 */
function take(folder) {
  try {
    mkdirSync(folder);
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code !== 'EEXIST';
  }
  try {
    writeFileSync(join(folder, 'pid'), String(process.pid));
  } catch {
    // Without a number the lock ends by its age.
  }
  return true;
}

/**
 * @param {string} folder - the lock
 * @returns {boolean} whether the process that took it no longer runs
 */
function ownerIsGone(folder) {
  try {
    if (Date.now() - statSync(folder).mtimeMs > staleAfterMs) return true;
    const pid = Number(readFileSync(join(folder, 'pid'), 'utf8'));
    if (!Number.isInteger(pid) || pid <= 0) return false;
    process.kill(pid, 0);
    return false;
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'ESRCH';
  }
}
