import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';

/** A folder that each test of a file has to itself. */
export interface OwnFolder {
  /** Its path while a test runs. */
  readonly path: string;
  /** Writes a file there and gives its path. */
  file(name: string, content: string | Uint8Array): Promise<string>;
}

/** Makes a folder before each test of the file that calls it, and removes it after. */
export function ownFolder(): OwnFolder {
  let path = '';
  beforeEach(async () => {
    path = await mkdtemp(join(tmpdir(), 'evendraft-'));
  });
  afterEach(async () => {
    await rm(path, { recursive: true, force: true });
  });
  return {
    get path() {
      return path;
    },
    async file(name, content) {
      const at = join(path, name);
      await writeFile(at, content);
      return at;
    },
  };
}
