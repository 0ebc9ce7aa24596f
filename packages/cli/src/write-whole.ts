import { randomUUID } from 'node:crypto';
import { constants, rmSync } from 'node:fs';
import { access, lstat, mkdir, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { cleanUpOnExit } from './clean-up-on-exit.js';

/**
 * Writes a file so that it appears whole or not at all; its folder is made if need be.
 *
 * The draft lies beside it, because a file can only be renamed at once within one disk. A link is followed, so that
 * it stays a link; what is no ordinary file, such as a device, is left alone.
 *
 * @param path - where, as the user named it
 * @param content - text or bytes
 * @throws Error where it cannot be written
 */
export async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  await makeFolder(dirname(resolve(path)));
  const target = await writableFile(path);
  const draft = join(dirname(target), `.evendraft-${randomUUID()}.part`);
  const done = cleanUpOnExit(() => {
    removeDraft(draft);
  });
  try {
    await writeFile(draft, content, { flag: 'wx' });
    await rename(draft, target);
  } finally {
    await rm(draft, { force: true }).catch(() => undefined);
    done();
  }
}

/**
 * Whether a file can be written, as far as can be said without writing it.
 *
 * @param path - where, as the user named it
 * @returns the file itself, links followed
 * @throws Error where it is a folder or no ordinary file, where it is read-only, or where its link leads nowhere
 */
export async function writableFile(path: string): Promise<string> {
  const found = await lstat(path).catch(unlessMissing);
  if (found === undefined) return resolve(path);
  const target = await realpath(path).catch((error: unknown) => {
    if (!isMissing(error)) throw error;
    throw new Error('it is a link that leads nowhere');
  });
  const kind = await stat(target);
  if (kind.isDirectory()) throw Object.assign(new Error('it is a folder'), { code: 'EISDIR' });
  if (!kind.isFile()) throw new Error('it is no ordinary file');
  await access(target, constants.W_OK);
  return target;
}

/**
 * Whether a folder is there or can be made, as far as can be said without making it.
 *
 * @param path - the folder, as the user named it
 * @throws Error where a file stands in its way, or where it may not be written to
 */
export async function writableFolder(path: string): Promise<void> {
  const found = await stat(path).catch(unlessMissing);
  if (found === undefined) {
    const parent = dirname(resolve(path));
    if (parent !== resolve(path)) await writableFolder(parent);
    return;
  }
  if (!found.isDirectory()) throw Object.assign(new Error('it is a file'), { code: 'ENOTDIR' });
  await access(path, constants.W_OK);
}

/** Makes a folder and those above it. The system's own way may never end where a folder refuses new ones. */
async function makeFolder(path: string): Promise<void> {
  const found = await stat(path).catch(unlessMissing);
  if (found?.isDirectory() === true) return;
  if (found !== undefined) throw Object.assign(new Error('it is a file'), { code: 'ENOTDIR' });
  const parent = dirname(path);
  if (parent !== path) await makeFolder(parent);
  await mkdir(path).catch((error: unknown) => {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
  });
}

function isMissing(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ENOENT';
}

function unlessMissing(error: unknown): undefined {
  if (!isMissing(error)) throw error;
}

function removeDraft(draft: string): void {
  try {
    rmSync(draft, { force: true });
  } catch {
    // The process ends; a draft that cannot be removed stays a draft.
  }
}
