import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { commandScript, repositoryRoot } from '../../tools/repository.mjs';
import { runNode } from '../../tools/run-command.mjs';

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'evendraft-planted-'));
  symlinkSync(join(repositoryRoot, 'node_modules'), join(folder, 'node_modules'), 'junction');
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** What is counted when the planted test files are run. */
async function count(files: Readonly<Record<string, string>>): Promise<unknown> {
  for (const [name, text] of Object.entries(files)) {
    writeFileSync(
      join(folder, name),
      `import { describe, it, expect, beforeAll } from 'vitest';\n${text}`,
    );
  }
  const countsPath = join(folder, 'counts.json');
  try {
    await runNode(
      [
        commandScript('vitest', 'vitest'),
        'run',
        `--root=${folder}`,
        `--reporter=${join(repositoryRoot, 'packages/checks/tools/counts-reporter.mjs')}`,
      ],
      { cwd: folder, env: { ...process.env, EVENDRAFT_COUNTS_FILE: countsPath } },
    );
    return JSON.parse(readFileSync(countsPath, 'utf8'));
  } finally {
    rmSync(countsPath, { force: true });
    for (const name of Object.keys(files)) rmSync(join(folder, name), { force: true });
  }
}

describe('the counts of a test run', () => {
  it('add up what passed, failed, was skipped or is still to be written', async () => {
    const counts = await count({
      'mixed.test.js':
        "it('a', () => {}); it('b', () => { expect(1).toBe(2); }); it.skip('c', () => {}); it.todo('d');",
      'good.test.js': "it('a', () => {}); it('b', () => {});",
    });
    expect(counts).toEqual({ passed: 3, failed: 1, skipped: 2 });
  });

  it('have a failure for a file that cannot be loaded and for a preparation that fails', async () => {
    const counts = await count({
      'broken.test.js': "throw new Error('broken');",
      'unprepared.test.js':
        "describe('s', () => { beforeAll(() => { throw new Error('no'); }); it('a', () => {}); });",
    });
    expect(counts).toEqual({ passed: 0, failed: 2, skipped: 1 });
  });
});
