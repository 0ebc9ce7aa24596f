import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { run, runWith } from '../test-data/run-written.js';

const cottage = `evendraft: 1
name: Test Cottage 2
floorArea: 1500 ft2
airtightness: 1500 cfm at 50 Pa
exhaust:
  hood: { low: 150 cfm, high: 400 cfm }
  dryer: 60 cfm
weather:
  - { name: cold, outdoorTemperature: -10 C }
appliances:
  boiler: { vent: natural draft, fuel: gas, kind: boiler }
`;

const flue = 'fuel: gas, input: 60 kBtu/h, flue: { height: 16 ft, diameter: 6 in }';
const heater = `  water heater: { vent: natural draft, fuel: gas, input: 40 kBtu/h, flue: { height: 16 ft, diameter: 5 in } }\n`;

let folder: string;
let house: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'evendraft-'));
  house = join(folder, 'cottage.yaml');
  await writeFile(house, cottage);
});

afterEach(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('evendraft size', () => {
  it('finds a duct for a pressure, in the units asked for', async () => {
    const { code, out, err } = await run(
      ...['size', house, '--remedy', 'duct', '--target', '-5 Pa', '--units', 'si'],
    );
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/Smallest size that keeps every target: \d+ mm round\./u);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  }, 30_000);

  it('prints JSON alone on stdout, and ends with 1 where no size does it', async () => {
    const { code, out } = await run(
      ...['size', house, '--remedy', 'duct', '--target', '-0.1 Pa', '--json'],
    );
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      schema: 'evendraft-sizing',
      result: { status: 'impossible' },
    });
  }, 30_000);

  it('gives nothing where it is stopped before anything is solved', async () => {
    const stopped = { signal: AbortSignal.abort() };
    const { code, out, err } = await runWith(stopped, 'size', house, '--json');
    expect([code, out]).toEqual([130, '']);
    expect(err).toBe(
      'Stopped: nothing was solved yet. There is no result and nothing was written.\n',
    );
  });

  it.each([
    ['text', []],
    ['JSON', ['--json']],
  ])('stopped while its bar runs prints what is known as incomplete, as %s', async (_, flags) => {
    // Two flues of their own in many weathers: long enough for a bar, however fast the machine.
    const weathers = Array.from(
      { length: 24 },
      (_, row) => `  - { name: row ${row}, outdoorTemperature: ${row - 12} C }\n`,
    );
    const slow = cottage
      .replace('fuel: gas', flue)
      .replace('weather:\n', `weather:\n${weathers.join('')}`);
    await writeFile(house, `${slow}${heater}`);
    const stop = new AbortController();
    let shown = '';
    const { code, out } = await runWith(
      {
        signal: stop.signal,
        progress: true,
        err: (text) => {
          shown += text;
          if (/\b[1-9]\d* of \d+ sizes/u.test(text)) stop.abort();
        },
      },
      ...['size', house, '--remedy', 'opening', ...flags],
    );
    expect(code).toBe(130);
    expect(shown).toMatch(/\[=* *\] \d+ of \d+ sizes, \d+ (s|min) left/u);
    expect(shown).toMatch(/\r\u001b\[KStopped: what follows holds what was done by then\.\n$/u);
    if (flags.length === 0) {
      expect(out).toMatch(/Incomplete: the work was stopped[^]*No size is shown to be the/u);
      expect(out).not.toContain('Smallest size that keeps');
    } else {
      expect(JSON.parse(out)).toMatchObject({
        incomplete: { parts: [{ work: 'sizes' }] },
        result: { status: 'unfinished' },
      });
    }
  });

  it('explains usage that is wrong with code 2', async () => {
    const kind = await run('size', house, '--remedy', 'window');
    expect(kind.code).toBe(2);
    expect(kind.err).toContain('Write one of opening, duct,');
    const target = await run('size', house, '--target', '-5');
    expect(target.code).toBe(2);
    expect(target.err).toContain('-5 Pa');
    const zero = await run('size', house, '--target', '0 Pa');
    expect(zero.code).toBe(2);
    expect(zero.err).toContain('--target: write a pressure below zero');
    const above = await run('size', house, '--target', '5 Pa');
    expect([above.code, above.out]).toEqual([2, '']);
    expect(above.err).toContain('"-5 Pa". What limits pushing outward is --highest.');
    const sets = await run(
      ...['size', house, '--limits', 'vent-type-table', '--limits', 'germany-4-pa'],
    );
    expect(sets.code).toBe(2);
    expect(sets.err).toContain('a size keeps one limit set');
    const zone = await run('size', house, '--zone', 'cellar');
    expect(zone.code).toBe(2);
    expect(zone.err).toContain('the house has no zone "cellar"');
    const unknown = await run('size', house, '--target', '-5 Pa', '--zone', 'cellar');
    expect(unknown.code).toBe(2);
  });
});

describe('what cannot be asked of size and compare', () => {
  it.each([
    ['a flap that opens at no suction', ['--opens-at', '0 Pa'], 'It must be above 0 Pa'],
    ['a flap that opens without a unit', ['--opens-at', '0'], 'The number has no unit'],
    ['a control that falls short of everything', ['--shortfall', '100 %'], 'It must be 0 to 90 %'],
    ['a control band upside down', ['--overshoot', '-5 %'], 'It must be 0 to 100 %'],
    ['a duct of negative length', ['--duct-length', '-3 m'], 'It must be 0 to 500 m'],
    ['no pressure outward at all', ['--highest', '0 Pa'], 'It must be above 0 Pa'],
    ['less friction than of smooth metal', ['--friction', '0.5'], 'from 1 to 10'],
  ])('%s is refused at its flag', async (_, flags, message) => {
    for (const command of ['size', 'compare']) {
      const { code, out, err } = await run(command, house, ...flags);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(flags[0]);
      expect(err).toContain(message);
    }
  });

  it.each([
    [
      'a plan whose ends are upside down',
      ['airtightness: 1500 cfm at 50 Pa', 'airtightness: 3000 to 1500 cfm at 50 Pa (planned)'],
      ':4:15: ',
    ],
    [
      'interlocks that wait for each other',
      [
        'weather:',
        'supply:\n  fan: { kind: supply fan, flow: 90 cfm, interlock: twin }\n  twin: { kind: supply fan, flow: 90 cfm, interlock: fan }\nweather:',
      ],
      ':9:',
    ],
    [
      'an interlock with a speed that its driver has not',
      [
        'weather:',
        'makeUp:\n  inlet: { diameter: 8 in, opensWith: { device: hood, speeds: [turbo] } }\nweather:',
      ],
      'there is no speed of hood "turbo". Known here: low, high.',
    ],
  ] as const)('%s is located and explained', async (_, [before, after], message) => {
    await writeFile(house, cottage.replace(before, after));
    for (const command of ['size', 'compare', 'assess']) {
      const { code, out, err } = await run(command, house);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain(`${house}:`);
      expect(err).toContain(message);
      expect(err).toContain('nothing was calculated');
    }
  });

  it('a reserve below zero is refused; a band too wide for both ends is answered with 1', async () => {
    const reserve = await run('compare', house, '--reserve', '-1 Pa');
    expect(reserve.code).toBe(2);
    expect(reserve.err).toContain('It must be 0 to 500 Pa');
    const { code, out } = await run(
      // Some 420 cfm against suction, of which twice as much would push with some 430 cfm.
      ...['size', house, '--remedy', 'powered', '--target', '-0.6 Pa', '--target-of', 'change'],
      ...['--highest', '1 Pa', '--overshoot', '100 %'],
    );
    expect(code).toBe(1);
    expect(out).toContain('No size offered keeps every target.');
  }, 30_000);
});

describe('evendraft compare', () => {
  it('lays remedies side by side by the rank that is given', async () => {
    const { code, out, err } = await run(
      ...['compare', house, '--remedy', 'powered', '--remedy', 'cap', '--rank', 'upkeep'],
    );
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('Ranked by: less things to look after.');
    expect(out.indexOf('1. cap on')).toBeGreaterThan(0);
    expect(out.indexOf('2. powered')).toBeGreaterThan(0);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  }, 30_000);

  it('prices a year of hours, and locates what is wrong with the table', async () => {
    const year = join(folder, 'year.csv');
    await writeFile(year, `hour,temperature [C]\n${'1,5\n'.repeat(8760)}`);
    const { code, out } = await run(
      ...['compare', house, '--remedy', 'powered', '--year', year, '--json'],
    );
    expect(code).toBe(0);
    const result = JSON.parse(out) as {
      readonly comparison: {
        readonly rows: readonly { readonly year: { readonly totalKWh: number } }[];
      };
    };
    expect(result.comparison.rows[0]!.year.totalKWh).toBeGreaterThan(0);
    await writeFile(year, 'hour,temperature [C]\n1,warm\n');
    const wrong = await run('compare', house, '--year', year);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain(`${year}:2:3: found "warm", expected an outdoor temperature`);
    const missing = await run('compare', house, '--year', join(folder, 'none.csv'));
    expect(missing.code).toBe(2);
    expect(missing.err).toContain('there is no such file');
  }, 30_000);

  it('explains a rank that is wrong with code 2', async () => {
    const { code, err } = await run('compare', house, '--rank', 'limits,price');
    expect(code).toBe(2);
    expect(err).toContain('Write some of limits, code, heat');
    const twice = await run('compare', house, '--rank', 'heat,heat');
    expect(twice.code).toBe(2);
  });
});

describe('evendraft assess, further questions', () => {
  it('shows sets beside the first, one of them from a file', async () => {
    const own = join(folder, 'own.json');
    await writeFile(own, '{ "evendraftLimits": 1 }');
    const wrong = await run('assess', house, '--limits', own);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain(own);
    expect(wrong.err).toContain('the limit set cannot be used');
    const { code, out } = await run(
      ...['assess', house, '--cures', 'never', '--limits', 'vent-type-table'],
      ...['--limits', 'germany-4-pa', '--region', 'Germany'],
    );
    expect(code).toBe(0);
    expect(out).toContain('Limit set germany-4-pa, edition');
    expect(out).not.toContain('(Canada)');
  });

  it('draws what is uncertain with a seed', async () => {
    const { code, out } = await run(
      ...['assess', house, '--cures', 'never', '--uncertainty', '200', '--seed', '3'],
    );
    expect(code).toBe(0);
    expect(out).toContain('200 draws, seed 3.');
    const seed = await run('assess', house, '--seed', '3');
    expect(seed.code).toBe(2);
    expect(seed.err).toContain('add --uncertainty');
  }, 30_000);

  it('takes facts for code screens from a file, and locates what is wrong with it', async () => {
    const facts = join(folder, 'facts.yaml');
    await writeFile(facts, 'devices:\n  dyer: { ductLength: 20 ft }\n');
    const wrong = await run('assess', house, '--facts', facts);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain(`${facts}:`);
  });
});
