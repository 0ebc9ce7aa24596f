import { randomUUID } from 'node:crypto';
import { rmSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { cleanUpOnExit } from './clean-up-on-exit.js';

/**
 * Writes a file so that it appears whole or not at all; its folder is made if need be.
 *
 * The draft lies beside it, because a file can only be renamed at once within one disk.
 *
 * @param path - where, as the user named it
 * @param content - text or bytes
 */
export async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const draft = `${path}.${randomUUID()}.part`;
  const done = cleanUpOnExit(() => {
    rmSync(draft, { force: true });
  });
  try {
    await writeFile(draft, content);
    await rename(draft, path);
  } finally {
    await rm(draft, { force: true });
    done();
  }
}
