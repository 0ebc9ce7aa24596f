import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readCsv } from '@evendraft/text/read';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run, type Written } from '../test-data/run-written.js';

// Names that may be names, and that would be markup, paths, formulas or commands where somebody believed them.

const deviceNames = [
  '<script>document.title="x"</script>',
  '../../../evil',
  '=HYPERLINK("http://example.org")',
  'CON',
  '$(touch evil)',
  'مروحة 80',
] as const;
const applianceNames = [
  '</script><svg onload=alert(1)>',
  '"><img src=x onerror=alert(1)>',
  '/etc/evil',
  '+1+1',
  'nul.txt',
] as const;
const weatherNames = ['-2+3', '`touch evil`|*b* [l](http://example.org)'] as const;

const house = {
  evendraft: 1,
  name: '</title><script src=//example.org></script>',
  floorArea: '2180 ft2',
  airtightness: '310 cfm at 50 Pa',
  exhaust: Object.fromEntries(
    deviceNames.map((name, index) => [name, { kind: 'bath fan', flow: `${60 + 20 * index} cfm` }]),
  ),
  appliances: Object.fromEntries(
    applianceNames.map((name) => [
      name,
      { kind: 'boiler', vent: 'natural draft', fuel: 'gas', input: '40 kBtu/h' },
    ]),
  ),
  weather: weatherNames.map((name, index) => ({
    name,
    outdoorTemperature: `${10 + 30 * index} F`,
  })),
};

const signOff = {
  evendraftSignOff: 1,
  address: '<img src=x onerror=alert(1)>',
  permit: '=1+1',
  designer: { name: '</dd><script>1</script>' },
};

let folder: string;
let written: Written;
let page: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'evendraft-names-'));
  await writeFile(join(folder, 'house.json'), JSON.stringify(house));
  await writeFile(join(folder, 'sign.json'), JSON.stringify(signOff));
  written = await run(
    ...['assess', join(folder, 'house.json'), '--all', '--cures', 'never'],
    ...['--report', join(folder, 'page.html'), '--sign-off', join(folder, 'sign.json')],
    ...['--csv', join(folder, 'tables'), '--out', join(folder, 'full')],
  );
  page = await readFile(join(folder, 'page.html'), 'utf8');
}, 120_000);

afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('names that mean something elsewhere', () => {
  it('name no file and no folder', async () => {
    expect([written.code, written.err]).toEqual([0, '']);
    expect((await readdir(folder)).sort()).toEqual([
      ...['full', 'house.json', 'page.html', 'sign.json', 'tables'],
    ]);
    expect((await readdir(join(folder, 'full'))).sort()).toEqual(['house.json', 'house.md']);
    for (const name of await readdir(join(folder, 'tables'))) {
      expect(name).toMatch(/^[a-z-]+\.csv$/u);
    }
  });

  it('are no element, no attribute and no address of the page', () => {
    const body = page.replace(/<style>[\s\S]*?<\/style>/u, '');
    const tags = [...body.matchAll(/<\/?([a-zA-Z]+)([^<>]*)>/gu)];
    expect(tags.length).toBeGreaterThan(500);
    for (const [tag, element, attributes = ''] of tags) {
      expect(tag).not.toMatch(/^<\/?(?:script|img|iframe|object|embed|link|base|form)\b/iu);
      expect(attributes).not.toMatch(/\son[a-z]+=|javascript:|\s(?:src|action)=/iu);
      if (element === 'a') expect(attributes).toMatch(/^(?: href="#[a-z0-9-]+")?$/u);
    }
    expect(body).toContain('&lt;/script&gt;&lt;svg onload=alert(1)&gt;');
    expect(body).toContain('<title>&lt;/title&gt;&lt;script src=//example.org&gt;');
  });

  it('are no formula in any table, and read back from it letter for letter', async () => {
    const folderOfTables = join(folder, 'tables');
    const cells: string[] = [];
    for (const name of await readdir(folderOfTables)) {
      const read = readCsv(await readFile(join(folderOfTables, name)), { file: name });
      if (!read.ok) throw new Error(`${name} cannot be read back`);
      cells.push(...read.table.rows.flatMap((row) => row.map(({ text }) => text)));
    }
    for (const cell of cells) {
      if (/^\s*[=+\-@\t\r\uff1d]/u.test(cell))
        expect(cell).toMatch(/^-?\d+(?:\.\d+)?(?:e-?\d+)?$/u);
    }
    for (const name of [...deviceNames, ...applianceNames]) {
      expect(cells).toContain(/^[=+\-@]/u.test(name) ? `'${name}` : name);
    }
  });

  it('stand in the JSON as they are', async () => {
    const text = await readFile(join(folder, 'full/house.json'), 'utf8');
    const { house: summary } = JSON.parse(text) as {
      readonly house: Readonly<Record<'devices' | 'appliances', readonly { id: string }[]>>;
    };
    expect(summary.devices.map(({ id }) => id)).toEqual(deviceNames);
    expect(summary.appliances.map(({ id }) => id)).toEqual(applianceNames);
  });

  it('neither command the terminal nor make a line too long', () => {
    expect(written.out).not.toMatch(/(?!\n)[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/u);
    for (const line of written.out.split('\n').filter((each) => !each.includes(folder))) {
      expect(line.length).toBeLessThanOrEqual(80);
    }
    const words = written.out.replace(/\s+/gu, ' ');
    const unsaid = [...deviceNames, ...applianceNames].filter((name) => !words.includes(name));
    expect(unsaid).toEqual([]);
  });

  it('are no markup of the full report', async () => {
    const markdown = await readFile(join(folder, 'full/house.md'), 'utf8');
    expect(markdown).not.toMatch(/(?<!\\)<(?:script|svg|img)/u);
    expect(markdown).not.toMatch(/(?<!\\)\]\(http/u);
  });
});
