import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { compare, readHouse } from 'evendraft';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startBrowser } from '../../tools/browser.mjs';
import { buildIfNeeded } from '../../tools/build.mjs';
import { repositoryRoot } from '../../tools/repository.mjs';
import { runNode } from '../../tools/run-command.mjs';
import { accessibilityFaults, drawingFaults } from '../page/accessibility-faults.js';
import { sheetFaults } from '../page/sheet-faults.js';
import { textFaults } from '../page/text-faults.js';
import { schemaFaults } from './published-schemas.js';

// A reader of JSON has the published schema alone, so its own validator reads what the command prints. A reader of
// the page has a browser: it is looked at there, at three widths.

interface Listed {
  readonly name: string;
  readonly command: readonly string[];
  readonly exitCode: number;
}

const examples = join(repositoryRoot, 'examples');
const commands = JSON.parse(readFileSync(join(examples, 'commands.json'), 'utf8')) as Listed[];
const withResult = commands.filter(({ command }) => command[1] !== 'check');

/** Names of sixty letters in four scripts on three floors: what no drawing may cut and no table break on. */
const longNames: Listed = {
  name: 'long names in four scripts',
  command: [
    ...['evendraft', 'assess', join(import.meta.dirname, 'long-names.yaml')],
    ...['--cures', 'never', '--air', 'never'],
  ],
  exitCode: 0,
};

const started = await startBrowser();
const folder = mkdtempSync(join(tmpdir(), 'evendraft-results-'));

beforeAll(async () => {
  const { succeeded, output } = await buildIfNeeded(repositoryRoot, ['packages/cli']);
  if (!succeeded) throw new Error(output);
}, 300_000);

afterAll(async () => {
  await started.browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** What is wrong with a page in a browser, by width. */
async function pageFaults(file: string): Promise<readonly string[]> {
  if (started.browser === undefined) return [];
  const faults: string[] = [];
  for (const width of [360, 800, 1280]) {
    const page = await started.browser.newPage({ viewport: { width, height: 900 } });
    page.on('console', (message) => faults.push(`said ${message.text()}`));
    page.on('pageerror', (error) => faults.push(String(error)));
    await page.goto(pathToFileURL(file).href);
    faults.push(...(await textFaults(page)).map((fault) => `${width} px: ${fault}`));
    if (width === 1280) {
      const { drawings, faults: silent } = await drawingFaults(page);
      faults.push(...(await accessibilityFaults(page)), ...silent);
      if (drawings < 3) faults.push(`only ${drawings} drawings`);
      faults.push(...(await sheetFaults(page)));
    }
    await page.close();
  }
  return faults;
}

describe('the result of every example', { timeout: 180_000 }, () => {
  it.each([...withResult, longNames].map((each) => [each.name, each] as const))(
    '%s: JSON is what the published schema says, and the page reads well in a browser',
    async (_, { command, exitCode }) => {
      const [, ...args] = command;
      const page = join(folder, 'page.html');
      const reports = command[1] === 'assess' ? ['--report', page] : [];
      const ran = await runNode(
        [join(repositoryRoot, 'packages/cli/bin/evendraft.js'), ...args, '--json', ...reports],
        { cwd: examples, timeoutMs: 150_000 },
      );
      expect(ran.exitCode).toBe(exitCode);
      const result: unknown = JSON.parse(ran.stdout);
      expect(schemaFaults(result)).toEqual([]);
      expect(ran.stdout).not.toMatch(/NaN|Infinity|undefined|-0[,\n\]]/u);
      if (reports.length > 0) {
        expect(await pageFaults(page)).toEqual([]);
        const text = readFileSync(page, 'utf8').replace(/<style>[\s\S]*?<\/style>/u, '');
        expect(text).not.toMatch(/NaN|Infinity|undefined|\[object|>[\u2212-]0(?:\.0*)?</u);
      }
    },
  );

  it('has commands of every kind that has a schema', () => {
    const kinds = new Set(withResult.map(({ command }) => command[1]));
    expect(kinds).toEqual(new Set(['assess', 'size', 'compare']));
  });
});

describe('a result that was stopped', () => {
  it('is what the published schema says where remedies were compared', async () => {
    const read = readHouse(readFileSync(join(examples, 'condensing-dryer.yaml')), {
      file: 'condensing-dryer.yaml',
    });
    if (!read.ok) throw new Error('the example cannot be read');
    const stop = new AbortController();
    const comparison = await compare(read.house, {
      signal: stop.signal,
      whenStopped: 'keep',
      onProgress: () => {
        stop.abort();
      },
    });
    expect(comparison.incomplete?.parts).toHaveLength(1);
    expect(schemaFaults(JSON.parse(JSON.stringify(comparison)))).toEqual([]);
  });
});

describe('schemaFaults', () => {
  it('finds an unknown key, a missing one and a kind that has no schema', () => {
    const faults = schemaFaults({ schema: 'evendraft-sizing', schemaVersion: 1, colour: 'red' });
    expect(faults.join('\n')).toContain('additional properties');
    expect(faults.join('\n')).toContain("required property 'result'");
    expect(schemaFaults({ schema: 'something' })).toEqual([
      'no schema is published for "something"',
    ]);
  });
});
