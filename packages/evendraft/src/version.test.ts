import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { libraryVersion } from './version.js';

it('the library states the version of its package', async () => {
  const text = await readFile(new URL('../package.json', import.meta.url), 'utf8');
  expect(JSON.parse(text)).toMatchObject({ version: libraryVersion });
});
