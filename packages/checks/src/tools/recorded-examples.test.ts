import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleProblem } from '../../tools/example-problem.mjs';
import { listExamples, runExample } from '../../tools/recorded-examples.mjs';
import { repositoryRoot } from '../../tools/repository.mjs';

/** A repository with a command that answers its arguments, and the examples that a case plants. */
let root: string;

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'evendraft examples '));
  for (const folder of [
    'examples/recorded',
    'packages/cli/bin',
    'packages/evendraft',
    'node_modules',
  ]) {
    mkdirSync(join(root, folder), { recursive: true });
  }
  const tsx = 'node_modules/tsx';
  symlinkSync(join(repositoryRoot, tsx), join(root, tsx), 'junction');
  write('packages/evendraft/package.json', '{ "version": "1.2.3" }');
  write(
    'packages/cli/bin/evendraft.js',
    "console.log('Evendraft 1.2.3', process.argv.slice(2).join(' '));\n" +
      "if (process.argv[2] === 'wrong') { console.error('no such house'); process.exitCode = 2; }\n",
  );
});

afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

function write(path: string, text: string): void {
  writeFileSync(join(root, path), text);
}

/** Lists one command as the only example, with what is recorded for it. */
function plant(command: object, recorded: string | undefined): void {
  write('examples/commands.json', JSON.stringify([command]));
  rmSync(join(root, 'examples/recorded/planted.txt'), { force: true });
  if (recorded !== undefined) write('examples/recorded/planted.txt', recorded);
}

describe('an example', () => {
  it('is recorded with the version left out and with what it said on standard error', async () => {
    plant({ name: 'planted', command: ['evendraft', 'wrong', '1.2.34'], exitCode: 2 }, undefined);
    const [example] = listExamples(root);
    expect(example).toBeDefined();
    if (example === undefined) return;
    expect(await runExample(root, example)).toEqual({
      exitCode: 2,
      text: 'Evendraft <version> wrong 1.2.34\n[stderr]\nno such house\n',
    });
  });

  it('may not run anything but the command', () => {
    plant({ name: 'planted', command: ['rm', '-r', '/'] }, undefined);
    expect(() => listExamples(root)).toThrow('must run "evendraft"');
  });
});

describe('what is wrong with an example', () => {
  /** What is wrong with the only example. */
  async function problem(): Promise<string | undefined> {
    const [example] = listExamples(root);
    if (example === undefined) throw new Error('nothing was planted');
    return exampleProblem(root, example);
  }

  it('is nothing when it prints what is recorded', async () => {
    plant({ name: 'planted', command: ['evendraft', 'a'] }, 'Evendraft <version> a\n');
    expect(await problem()).toBeUndefined();
  });

  it('is the first line that is not as recorded', async () => {
    plant({ name: 'planted', command: ['evendraft', 'a'] }, 'Evendraft <version> b\n');
    expect(await problem()).toContain('recorded: Evendraft <version> b');
  });

  it('is another exit code', async () => {
    plant({ name: 'planted', command: ['evendraft', 'wrong'] }, 'Evendraft <version> wrong\n');
    expect(await problem()).toContain('exit code 2 and not 0');
  });

  it('is that nothing is recorded', async () => {
    plant({ name: 'planted', command: ['evendraft', 'a'] }, undefined);
    expect(await problem()).toContain('nothing is recorded');
  });
});
