import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { repositoryRoot } from '../../tools/repository.mjs';
import { runNode } from '../../tools/run-command.mjs';

/** A package with the command's entry alone. */
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'evendraft entry '));
  mkdirSync(join(folder, 'dist'));
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  cpSync(join(repositoryRoot, 'packages/cli/bin'), join(folder, 'bin'), { recursive: true });
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function run() {
  return runNode(['bin/evendraft.js'], { cwd: folder });
}

describe("the command's entry", () => {
  it('runs what is built', async () => {
    writeFileSync(join(folder, 'dist/main.js'), "console.log('built'); process.exitCode = 1;");
    expect(await run()).toEqual({ exitCode: 1, stdout: 'built\n', stderr: '' });
  });

  it('says what to do when nothing is built', async () => {
    const { exitCode, stderr } = await run();
    expect(exitCode).toBe(2);
    expect(stderr).toContain('npm start');
  });

  it('shows no stack trace for a fault in the program', async () => {
    writeFileSync(join(folder, 'dist/main.js'), "throw new Error('a fault');");
    const { exitCode, stdout, stderr } = await run();
    expect(exitCode).toBe(3);
    expect(stdout).toBe('');
    expect(stderr).toContain('a fault');
    expect(stderr).not.toContain('main.js');
  });
});
