import {
  chmod,
  lstat,
  mkdir,
  mkdtemp,
  readFile,
  readdir,
  rm,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { whyUnwritable } from './why-unwritable.js';
import { writableFile, writableFolder, writeWhole } from './write-whole.js';

let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'evendraft-write-'));
});

afterEach(async () => {
  await rm(folder, { recursive: true, force: true });
});

/** Why a text could not be written to a path; undefined where it was. */
async function refusal(path: string): Promise<string | undefined> {
  try {
    await writeWhole(path, 'new');
    return undefined;
  } catch (error) {
    return whyUnwritable(error);
  }
}

describe('writeWhole', () => {
  it('makes the folders above and leaves nothing but the file', async () => {
    await writeWhole(join(folder, 'a', 'b', 'page.html'), 'new');
    expect(await readdir(join(folder, 'a', 'b'))).toEqual(['page.html']);
  });

  it('replaces a file, also under the longest name that a file may have', async () => {
    const path = join(folder, 'n'.repeat(255));
    await writeFile(path, 'old');
    await writeWhole(path, 'new');
    expect(await readFile(path, 'utf8')).toBe('new');
    expect(await readdir(folder)).toHaveLength(1);
  });

  it('follows a link, which stays one', async () => {
    const [target, link] = [join(folder, 'target.html'), join(folder, 'link.html')];
    await writeFile(target, 'old');
    await symlink(target, link);
    await writeWhole(link, 'new');
    expect(await readFile(target, 'utf8')).toBe('new');
    expect((await lstat(link)).isSymbolicLink()).toBe(true);
  });

  it('refuses a folder, a link to nothing, links in a circle, a name that is too long', async () => {
    await mkdir(join(folder, 'folder'));
    await writeFile(join(folder, 'file'), 'old');
    await symlink('nowhere', join(folder, 'dangling'));
    await symlink('circle', join(folder, 'circle'));
    const cases = [
      ['folder', 'it is a folder'],
      ['dangling', 'it is a link that leads nowhere'],
      ['circle', 'its links lead in a circle'],
      ['n'.repeat(300), 'its name is too long'],
      [join('file', 'page.html'), 'a file stands where a folder is wanted'],
    ] as const;
    const before = await readdir(folder);
    for (const [name, why] of cases) expect(await refusal(join(folder, name))).toBe(why);
    expect(await readdir(folder)).toEqual(before);
    expect(await readFile(join(folder, 'file'), 'utf8')).toBe('old');
  });

  it.skipIf(!existsSync('/dev/null') || !existsSync('/proc'))(
    'leaves devices alone, and ends where the system makes no folders',
    async () => {
      expect(await refusal('/dev/null')).toBe('it is no ordinary file');
      expect((await lstat('/dev/null')).isCharacterDevice()).toBe(true);
      expect(await refusal('/proc/evendraft/page.html')).toBeDefined();
    },
  );

  it.skipIf(process.getuid?.() === 0)('refuses what may not be written to', async () => {
    const path = join(folder, 'page.html');
    await writeFile(path, 'old');
    await chmod(path, 0o444);
    expect(await refusal(path)).toBe('writing there is not allowed');
    await chmod(folder, 0o555);
    expect(await refusal(join(folder, 'other.html'))).toBe('writing there is not allowed');
    await chmod(folder, 0o755);
    expect(await readFile(path, 'utf8')).toBe('old');
  });
});

describe('what is seen before anything is solved', () => {
  it('is where a report cannot go, and never makes anything', async () => {
    await writeFile(join(folder, 'file'), 'old');
    await expect(writableFile(folder)).rejects.toThrow('folder');
    await expect(writableFolder(join(folder, 'file'))).rejects.toMatchObject({ code: 'ENOTDIR' });
    await writableFile(join(folder, 'not there yet'));
    await writableFolder(join(folder, 'neither', 'is', 'this'));
    expect(await readdir(folder)).toEqual(['file']);
  });
});
