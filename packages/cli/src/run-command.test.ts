import { chmod, readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { ownFolder } from '../test-data/own-folder.js';
import { run, runWith } from '../test-data/run-written.js';

const tightHouse = `evendraft: 1
name: Alder Row 14
floorArea: 2180 ft2
volume: 18500 ft3
airtightness: 310 cfm at 50 Pa
exhaust:
  hood: { low: 250 cfm, medium: 500 cfm, high: 900 cfm }
  dryer: 150 cfm
appliances:
  water heater: { vent: natural draft, fuel: gas, input: 40 kBtu/h }
`;

const own = ownFolder();

describe('evendraft assess', () => {
  it('prints the answer and leaves no file where no folder is named', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const { code, out, err } = await run('assess', house);
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toContain('beyond the limit');
    expect(out).toContain('hood high + dryer');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    expect(await readdir(own.path)).toEqual(['house.yaml']);
  });

  it('writes the full report, whole, and says where', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const reports = join(own.path, 'reports');
    const { code, out } = await run('assess', house, '--out', reports, '--units', 'si');
    expect(code).toBe(0);
    expect((await readdir(reports)).sort()).toEqual(['house.json', 'house.md']);
    expect(out).toContain(join(reports, 'house.md'));
    const result: unknown = JSON.parse(await readFile(join(reports, 'house.json'), 'utf8'));
    expect(result).toMatchObject({ schema: 'evendraft-assessment', schemaVersion: 3 });
    expect(await readFile(join(reports, 'house.md'), 'utf8')).toContain('L/s');
  });

  it('fails on a finding beyond its limit only when asked', async () => {
    const house = await own.file('house.yaml', tightHouse);
    expect((await run('assess', house)).code).toBe(0);
    const { code, err } = await run('assess', house, '--fail-on-beyond');
    expect(code).toBe(1);
    expect(err).toContain('suction 2 (water heater)');
  });

  it('fails on a code screen that is beyond where the suction is within its limit', async () => {
    const house = await own.file(
      'house.yaml',
      'evendraft: 1\nname: Test Loose Barn 2\nfloorArea: 1200 ft2\nairtightness: 30000 cfm at 50 Pa\nexhaust: { hood: 600 cfm }\nappliances: { water heater: { vent: natural draft, fuel: gas } }\n',
    );
    const asked = ['assess', house, '--fail-on-beyond', '--cures', 'never'];
    const here = await run(...asked, '--region', 'United States');
    expect(here.out).not.toContain('Beyond the limit: water heater');
    expect(here.code).toBe(1);
    expect(here.err).toContain('code screen');
    expect(here.err).not.toContain('suction');
  });

  it('prints JSON alone on stdout with --json', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const { code, out } = await run('assess', house, '--json', '--out', join(own.path, 'r'));
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ house: { name: 'Alder Row 14' } });
  });

  it('names the limit sets there are when asked for one that is not', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const { code, err, out } = await run('assess', house, '--limits', 'nonsense');
    expect(code).toBe(2);
    expect(err).toContain('model-code-2015');
    expect(out).toBe('');
  });

  it('says so when the report cannot be written, with exit code 2', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const { code, out, err } = await run('assess', house, '--out', house);
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(
      `--out ${house}: the report could not be written there: a file stands where a folder is wanted.\n`,
    );
  });

  it('prints what decides, or everything with --all', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const short = await run('assess', house, '--cures', 'never');
    const whole = await run('assess', house, '--cures', 'never', '--all');
    for (const { out } of [short, whole]) {
      expect(out).toContain('beyond the limit');
      expect(out).toContain('At once, if a carbon monoxide alarm sounds');
    }
    expect(short.out).toContain('Not shown here');
    expect(short.out).toContain('With --all: ');
    expect(short.out.split('\n').length).toBeLessThan(90);
    expect(whole.out).not.toContain('Not shown here');
    expect(whole.out).toContain('Proof of the solve');
  });
});

/** A program that stands for a browser: it writes what it is told to print to, or ends with a fault. */
async function standInBrowser(exitCode: number): Promise<string> {
  const path = await own.file(
    `browser-${exitCode}`,
    `#!/bin/sh\nfor each; do case "$each" in --print-to-pdf=*) printf '%%PDF' > "\${each#--print-to-pdf=}";; esac; done\nexit ${exitCode}\n`,
  );
  await chmod(path, 0o755);
  return path;
}

describe('the page, its print and the tables', () => {
  const before = process.env['CHROMIUM_PATH'];
  afterEach(() => {
    if (before === undefined) delete process.env['CHROMIUM_PATH'];
    else process.env['CHROMIUM_PATH'] = before;
  });

  it('writes the page where it was told, whole, in the units asked for', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const page = join(own.path, 'deep', 'page.html');
    const { code, out } = await run('assess', house, '--report', page, '--units', 'si');
    expect([code, out]).toEqual([0, expect.stringContaining(`Page: ${page}`)]);
    expect(await readdir(join(own.path, 'deep'))).toEqual(['page.html']);
    const html = await readFile(page, 'utf8');
    expect(html).toMatch(/^<!doctype html>[\s\S]*Delivered, L\/s[\s\S]*<\/html>\n$/u);
  });

  it('writes every table under a name of its own', async () => {
    const house = await own.file('house.yaml', tightHouse.replace('Alder Row 14', '"../../=evil"'));
    const tables = join(own.path, 'tables');
    expect((await run('assess', house, '--csv', tables)).code).toBe(0);
    const names = await readdir(tables);
    expect(names).toContain('situations.csv');
    for (const name of names) expect(name).toMatch(/^[a-z-]+\.csv$/u);
    expect((await readdir(own.path)).sort()).toEqual(['house.yaml', 'tables']);
  });

  it('puts the block to sign on the page, and locates what is wrong with it', async () => {
    const house = await own.file('house.yaml', tightHouse);
    const page = join(own.path, 'page.html');
    const sign = await own.file('sign.yaml', 'evendraftSignOff: 1\npermit: B-117\n');
    expect((await run('assess', house, '--report', page, '--sign-off', sign)).code).toBe(0);
    expect((await readFile(page, 'utf8')).includes('B-117')).toBe(true);

    const wrong = await own.file('wrong.yaml', 'evendraftSignOff: 1\ntest:\n  date: soon\n');
    const refused = await run('assess', house, '--report', page, '--sign-off', wrong);
    expect([refused.code, refused.out]).toEqual([2, '']);
    expect(refused.err).toContain('wrong.yaml:3:9: test.date: found "soon", expected a day.');
    const alone = await run('assess', house, '--sign-off', sign);
    expect([alone.code, alone.err]).toEqual([2, expect.stringContaining('add --report or --pdf')]);
    const gone = await run('assess', house, '--report', page, '--sign-off', join(own.path, 'no'));
    expect([gone.code, gone.err]).toEqual([2, expect.stringContaining('no such file')]);
  });

  it.skipIf(process.platform === 'win32')('prints with the browser that is named', async () => {
    const house = await own.file('house.yaml', tightHouse);
    process.env['CHROMIUM_PATH'] = await standInBrowser(0);
    const pdf = join(own.path, 'prints', 'house.pdf');
    const { code, out } = await run('assess', house, '--pdf', pdf);
    expect([code, out]).toEqual([0, expect.stringContaining(`Printed page: ${pdf}`)]);
    expect(await readFile(pdf, 'utf8')).toBe('%PDF');
    expect(await readdir(join(own.path, 'prints'))).toEqual(['house.pdf']);
  });

  it.skipIf(process.platform === 'win32')('leaves no print where the browser fails', async () => {
    const house = await own.file('house.yaml', tightHouse);
    process.env['CHROMIUM_PATH'] = await standInBrowser(7);
    const { code, err } = await run('assess', house, '--pdf', join(own.path, 'house.pdf'));
    expect([code, err]).toEqual([2, expect.stringContaining('the browser ended with code 7')]);
    expect(await readdir(own.path)).not.toContain('house.pdf');
  });

  it('says before any work how to print where there is no browser', async () => {
    const house = await own.file('house.yaml', tightHouse);
    process.env['CHROMIUM_PATH'] = join(own.path, 'no-browser');
    const { code, out, err } = await run('assess', house, '--pdf', join(own.path, 'house.pdf'));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('CHROMIUM_PATH names');
  });

  it('writes nothing where it is stopped before anything is solved', async () => {
    const devices = Array.from(
      { length: 9 },
      (_, index) => `  fan ${index}: { kind: bath fan, flow: 60 cfm }\n`,
    );
    const house = await own.file(
      'house.yaml',
      tightHouse.replace('exhaust:\n', `exhaust:\n${devices.join('')}`),
    );
    const { code, out, err } = await runWith(
      { signal: AbortSignal.abort() },
      ...['assess', house, '--report', join(own.path, 'page.html')],
    );
    expect([code, out]).toEqual([130, '']);
    expect(err).toBe(
      'Stopped: nothing was solved yet. There is no result and nothing was written.\n',
    );
    expect(await readdir(own.path)).toEqual(['house.yaml']);
  });
});

describe('a file that cannot be used', () => {
  const hostile: readonly (readonly [string, string | Uint8Array, string])[] = [
    ['an empty file', '', ''],
    ['a text that is no YAML', 'a: [1, 2\nb: }', ''],
    ['a bare word', 'hello', ''],
    ['bytes that are no text', Uint8Array.of(0, 255, 254, 1), ''],
    ['ten megabytes of nonsense', 'x: {\n'.repeat(2_000_000), ''],
    ['a wrong unit', tightHouse.replace('2180 ft2', '2180 ft3'), ':3:'],
    ['a missing unit', tightHouse.replace('2180 ft2', '2180'), ':3:'],
    ['an unknown key', tightHouse.replace('floorArea', 'flourArea'), 'floorArea'],
    ['a negative flow', tightHouse.replace('150 cfm', '-150 cfm'), ':8:'],
    ['a number that is none', tightHouse.replace('150 cfm', '.nan'), ':8:'],
    ['a comma inside a number', tightHouse.replace('900 cfm', '1,900 cfm'), 'quote'],
    ['a duplicate name', tightHouse.replace('  dryer: 150 cfm', '  hood: 150 cfm'), ':8:'],
    [
      'a device in a zone that does not exist',
      tightHouse.replace('dryer: 150 cfm', 'dryer: { flow: 150 cfm, zone: loft }'),
      'loft',
    ],
    [
      'a cycle of interlocks',
      `${tightHouse}supply:
  one: { kind: supply fan, flow: 50 cfm, interlock: two }
  two: { kind: supply fan, flow: 50 cfm, interlock: one }
`,
      'one',
    ],
  ];

  it.each(hostile)('%s is explained with exit code 2 and nothing is written', async (...row) => {
    const [, content, expected] = row;
    const house = await own.file('house.yaml', content);
    const { code, out, err } = await run('assess', house, '--out', join(own.path, 'reports'));
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('house.yaml');
    expect(err).toContain(expected);
    expect(err).not.toMatch(/\n\s+at /);
    expect(await readdir(own.path)).toEqual(['house.yaml']);
  });

  it('is explained as JSON on stdout with --json', async () => {
    const house = await own.file('house.yaml', tightHouse.replace('2180 ft2', '2180'));
    const { code, out } = await run('check', house, '--json');
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject({
      issues: [{ path: ['floorArea'], position: { line: 3 } }],
    });
  });

  it('is named when it does not exist or is a folder', async () => {
    const missing = await run('assess', join(own.path, 'nothing.yaml'));
    expect([missing.code, missing.err]).toEqual([2, expect.stringContaining('no such file')]);
    const aFolder = await run('check', own.path);
    expect([aFolder.code, aFolder.err]).toEqual([2, expect.stringContaining('folder')]);
  });
});

describe('the command', () => {
  it('prints every schema', async () => {
    for (const what of ['house', 'assessment', 'sizing', 'comparison', 'sign-off']) {
      const { code, out } = await run('schema', what);
      expect(code).toBe(0);
      expect(JSON.parse(out)).toHaveProperty('$schema');
    }
  });

  it('shows examples in its help, and ends wrong usage with code 2 and no stack trace', async () => {
    const help = await run('assess', '--help');
    expect([help.code, help.out]).toEqual([0, expect.stringContaining('Examples:')]);
    for (const args of [
      [],
      ['asess'],
      ['assess'],
      ['assess', 'x', '--units', 'metric'],
      ['--nope'],
    ]) {
      const wrong = await run(...args);
      expect(wrong.code).toBe(2);
      expect(wrong.err).not.toMatch(/\n\s+at /);
    }
  });
});
