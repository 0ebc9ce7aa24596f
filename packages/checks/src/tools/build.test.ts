import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildIfNeeded } from '../../tools/build.mjs';
import { repositoryRoot } from '../../tools/repository.mjs';

/** A repository of one package. */
let root: string;
let packageFolder: string;

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'evendraft build '));
  packageFolder = join(root, 'packages/one');
  mkdirSync(join(packageFolder, 'src'), { recursive: true });
  mkdirSync(join(root, 'node_modules'));
  symlinkSync(
    join(repositoryRoot, 'node_modules/typescript'),
    join(root, 'node_modules/typescript'),
    'junction',
  );
  writeFileSync(
    join(packageFolder, 'tsconfig.json'),
    JSON.stringify({
      compilerOptions: {
        composite: true,
        rootDir: 'src',
        outDir: 'dist',
        tsBuildInfoFile: '.tsbuildinfo',
        module: 'NodeNext',
        lib: ['ES5'],
        skipLibCheck: true,
        types: [],
      },
      include: ['src'],
      exclude: ['src/**/*.test.ts'],
    }),
  );
  writeFileSync(join(packageFolder, 'package.json'), '{ "type": "module" }');
  source('index.ts', 'export const one = 1;');
});

afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

function source(name: string, text: string): void {
  writeFileSync(join(packageFolder, 'src', name), text);
}

function build() {
  return buildIfNeeded(root, ['packages/one']);
}

function built(): string[] {
  return readdirSync(join(packageFolder, 'dist')).sort();
}

describe('the build', () => {
  it('compiles, and does nothing the second time', async () => {
    expect(await build()).toMatchObject({ succeeded: true, skipped: false });
    expect(built()).toEqual(['index.d.ts', 'index.js']);
    expect(await build()).toMatchObject({ succeeded: true, skipped: true });
  });

  it('compiles again what was changed', async () => {
    source('index.ts', 'export const one = 11;');
    expect(await build()).toMatchObject({ succeeded: true, skipped: false });
    expect(readFileSync(join(packageFolder, 'dist/index.js'), 'utf8')).toContain('11');
  });

  it('writes again what was deleted, though the compiler believes it is there', async () => {
    rmSync(join(packageFolder, 'dist'), { recursive: true });
    expect(await build()).toMatchObject({ succeeded: true, skipped: false });
    expect(built()).toEqual(['index.d.ts', 'index.js']);
  });

  it('removes what was compiled from a source that is gone, and never compiles a test', async () => {
    source('two.ts', 'export const two = 2;');
    source('two.test.ts', 'export const test = 2;');
    await build();
    expect(built()).toEqual(['index.d.ts', 'index.js', 'two.d.ts', 'two.js']);
    rmSync(join(packageFolder, 'src/two.ts'));
    expect(await build()).toMatchObject({ succeeded: true, skipped: false });
    expect(built()).toEqual(['index.d.ts', 'index.js']);
  });

  it('fails with the words of the compiler, and again until the source is right', async () => {
    source('index.ts', "export const one: number = 'one';");
    for (const attempt of [1, 2]) {
      const { succeeded, output } = await build();
      expect(succeeded, `attempt ${attempt}`).toBe(false);
      expect(output).toContain('error TS2322');
    }
    source('index.ts', 'export const one = 1;');
    expect(await build()).toMatchObject({ succeeded: true });
    expect(existsSync(join(packageFolder, 'dist/index.js'))).toBe(true);
  });
});
