import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cruise } from '../../tools/gates/layers.mjs';
import { repositoryRoot } from '../../tools/repository.mjs';

const packageNames = ['units', 'text', 'airflow', 'network', 'house', 'cli'];

/** One wrong import each, in a file of its own. */
const planted = [
  {
    what: 'a lower package that imports a higher one',
    path: 'packages/airflow/src/upwards.ts',
    text: "import '@evendraft/network';",
    rule: 'airflow-imports-its-layer',
  },
  {
    what: 'the same for its types alone',
    path: 'packages/airflow/src/upwards-for-a-type.ts',
    text: "import type { Network } from '@evendraft/network';",
    rule: 'airflow-imports-its-layer',
  },
  {
    what: 'a library from outside that its row does not list',
    path: 'packages/network/src/parser.ts',
    text: "import 'yaml';",
    rule: 'network-imports-its-layer',
  },
  {
    what: 'a test library outside of tests',
    path: 'packages/units/src/untested.ts',
    text: "import 'fast-check';",
    rule: 'units-imports-its-layer',
  },
  {
    what: 'a test that imports a higher package',
    path: 'packages/units/src/upwards.test.ts',
    text: "import '@evendraft/house';",
    rule: 'units-tests-import-its-layer',
  },
  {
    what: 'an import that leads nowhere',
    path: 'packages/house/src/nowhere.ts',
    text: "import '@evendraft/attic';",
    rule: 'import-leads-nowhere',
  },
  {
    what: 'a part of Node in a library for browsers',
    path: 'packages/house/src/disk.ts',
    text: "import 'node:fs';",
    rule: 'runs-in-a-browser',
  },
  {
    what: 'a way around the entry of another package',
    path: 'packages/network/src/around.ts',
    text: "import '../../airflow/src/internal/hidden.js';",
    rule: 'no-way-behind-an-entry',
  },
  {
    what: 'an example that reaches into a package',
    path: 'examples/reach.ts',
    text: "import '../packages/airflow/src/internal/hidden.js';",
    rule: 'examples-use-entries',
  },
  {
    what: 'files that import each other',
    path: 'packages/airflow/src/circle-one.ts',
    text: "import './circle-two.js';",
    rule: 'no-cycle',
  },
  {
    what: 'the reader of texts behind the plain entry of house',
    path: 'packages/house/src/index.ts',
    text: "import '@evendraft/text/read';",
    rule: 'house-carries-no-parser',
  },
  {
    what: 'a source that imports a test',
    path: 'packages/text/src/tested.ts',
    text: "import './tested.test.js';",
    rule: 'source-imports-no-test',
  },
];

/** A small repository of the same layout, in which imports can be planted without harm. */
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'evendraft layers '));
  for (const top of ['examples', 'bench', 'node_modules/@evendraft']) {
    mkdirSync(join(folder, top), { recursive: true });
  }
  for (const name of packageNames) {
    const target = join(folder, 'packages', name);
    mkdirSync(join(target, 'src/internal'), { recursive: true });
    cpSync(join(repositoryRoot, 'packages', name, 'package.json'), join(target, 'package.json'));
    plant(`packages/${name}/src/index.ts`, '');
    symlinkSync(target, join(folder, 'node_modules/@evendraft', name), 'junction');
  }
  for (const name of ['fraction.js', 'yaml', 'zod', 'vitest', 'fast-check', '@types']) {
    symlinkSync(
      join(repositoryRoot, 'node_modules', name),
      join(folder, 'node_modules', name),
      'junction',
    );
  }
  plant('packages/network/src/index.ts', "import '@evendraft/airflow';");
  plant('packages/units/src/index.ts', "import 'fraction.js';");
  plant('packages/units/src/index.test.ts', "import 'vitest';\nimport 'node:fs';");
  plant('packages/cli/src/index.ts', "import 'node:fs';");
  plant('packages/text/src/read.ts', "import 'yaml';");
  plant('packages/house/src/read.ts', "import '@evendraft/text/read';");
  plant('packages/airflow/src/internal/hidden.ts', '');
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** Writes a source that holds the given import. */
function plant(path: string, text: string): void {
  writeFileSync(join(folder, path), `export {};\n${text}\n`);
}

describe('the check of the layers', () => {
  it('accepts imports that the table allows, and test libraries in tests', async () => {
    const { exitCode, output } = await cruise(folder, repositoryRoot);
    expect(output).toContain('no dependency violations found');
    expect(exitCode).toBe(0);
  });

  describe('in a repository with wrong imports', () => {
    let output: string;

    beforeAll(async () => {
      for (const { path, text } of planted) plant(path, text);
      plant('packages/airflow/src/circle-two.ts', "import './circle-one.js';");
      plant('packages/text/src/tested.test.ts', '');
      const found = await cruise(folder, repositoryRoot);
      expect(found.exitCode).toBeGreaterThan(0);
      output = found.output;
    });

    it.each(planted)('rejects $what', ({ path, rule }) => {
      expect(output).toContain(`error ${rule}: ${path}`);
    });

    it('finds nothing else wrong', () => {
      const wrong = [...output.matchAll(/^ {2}error [^:]+: (\S+)/gm)].map(([, path]) => path);
      expect([...new Set(wrong)].sort()).toEqual(planted.map(({ path }) => path).sort());
    });
  });
});
