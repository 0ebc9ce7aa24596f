import { flowAt, gravity, type FlowLawDescription } from '@evendraft/airflow';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildNetwork } from './build-network.js';
import {
  boundBalances,
  findAllBalances,
  findExtremeBalances,
  type TwoStateColumn,
} from './find-all-balances.js';
import type { LinkDescription, NetworkDescription } from './network-description.js';
import { solveNetwork } from './solve-network.js';

const air = { temperatureC: 20, densityKgPerM3: 1.2041 };
const states = ['upward', 'downward', 'still'] as const;

const drawnColumn = fc.record({
  from: fc.nat(2),
  /** 3 and more are outdoors. */
  to: fc.nat(5),
  riseM: fc.double({ min: 1, max: 9, noNaN: true }),
  turned: fc.boolean(),
  coefficient: fc.double({ min: 0.002, max: 0.03, noNaN: true }),
  upward: fc.double({ min: 1.0, max: 1.3, noNaN: true }),
  downward: fc.double({ min: 1.1, max: 1.4, noNaN: true }),
});

const drawn = fc.record({
  zones: fc.integer({ min: 1, max: 3 }),
  leaks: fc.array(fc.double({ min: 0.0005, max: 0.02, noNaN: true }), {
    minLength: 3,
    maxLength: 3,
  }),
  exhaust: fc.double({ min: -0.06, max: 0.06, noNaN: true }),
  columns: fc.array(drawnColumn, { minLength: 1, maxLength: 5 }),
});

/** Rooms in a row, each with a leak, doors between them, a fan in the first, and columns anywhere. */
function networkOf({
  zones,
  leaks,
  exhaust,
  columns,
}: typeof drawn extends fc.Arbitrary<infer T> ? T : never): {
  readonly description: NetworkDescription;
  readonly twoState: readonly TwoStateColumn[];
} {
  const rooms = Array.from({ length: zones }, (_, k) => `room ${k}`);
  const power = (coefficientM3PerSPaN: number, exponent = 0.65): FlowLawDescription => ({
    kind: 'powerLaw',
    coefficientM3PerSPaN,
    exponent,
  });
  const level = { fromHeightM: 0, toHeightM: 0 };
  const links: LinkDescription[] = [
    ...rooms.map((from, k) => ({
      ...{ id: `leak ${k}`, origin: `leak ${k}`, from, to: 'out', ...level },
      law: power(leaks[k]!),
    })),
    ...rooms.slice(1).map((to, k) => ({
      ...{ id: `door ${k}`, origin: `door ${k}`, from: rooms[k]!, to, ...level },
      law: power(0.02, 0.5),
    })),
    {
      ...{ id: 'fan', origin: 'fan', ...level },
      from: exhaust > 0 ? 'room 0' : 'out',
      to: exhaust > 0 ? 'out' : 'room 0',
      law: { kind: 'fixedFlow', volumeFlowM3PerS: Math.abs(exhaust) },
    },
  ];
  const twoState: TwoStateColumn[] = [];
  columns.forEach(({ from, to, riseM, turned, coefficient, upward, downward }, k) => {
    const lower = rooms[from % zones]!;
    const upper = to < zones && to !== from % zones ? rooms[to]! : 'out';
    const up = { from: lower, to: upper, fromHeightM: 0, toHeightM: riseM };
    const down = { from: upper, to: lower, fromHeightM: riseM, toHeightM: 0 };
    links.push({
      ...{ id: `column ${k}`, origin: `column ${k}`, ...(turned ? down : up) },
      columnAir: air,
      law: power(coefficient, 0.5),
    });
    twoState.push({
      link: `column ${k}`,
      upwardDensityKgPerM3: upward,
      downwardDensityKgPerM3: downward,
    });
  });
  return {
    twoState,
    description: {
      outdoorAir: air,
      zones: rooms.map((id) => ({ id, origin: id, heightM: 0, air })),
      boundaries: [{ id: 'out', origin: 'out', heightM: 0, pressurePa: 0, air }],
      links,
    },
  };
}

interface Tried {
  readonly pressuresPa: readonly number[];
  readonly stable: boolean;
}

/** Every combination of states, one solve each, kept where each column flows as was assumed. */
function everyCombination(
  description: NetworkDescription,
  twoState: readonly TwoStateColumn[],
): readonly Tried[] {
  const built = buildNetwork(description);
  if (built.status !== 'built') throw new Error(JSON.stringify(built.issues));
  const first = description.links.length - twoState.length;
  const kept: Tried[] = [];
  for (let code = 0; code < 3 ** twoState.length; code++) {
    const assumed = twoState.map((_, k) => states[Math.floor(code / 3 ** k) % 3]!);
    const columnDensityKgPerM3 = new Float64Array(description.links.length).fill(1.2041);
    const linkScale = new Float64Array(description.links.length).fill(1);
    twoState.forEach(({ upwardDensityKgPerM3, downwardDensityKgPerM3 }, k) => {
      columnDensityKgPerM3[first + k] =
        assumed[k] === 'downward' ? downwardDensityKgPerM3 : upwardDensityKgPerM3;
      if (assumed[k] === 'still') linkScale[first + k] = 0;
    });
    const solved = solveNetwork(
      built.network,
      { columnDensityKgPerM3, linkScale },
      { tolerance: 1e-11, enclosure: false },
    );
    if (solved.status !== 'solved') continue;
    let stable = true;
    const agrees = twoState.every((column, k) => {
      const { law, fromHeightM, toHeightM } = description.links[first + k]!;
      const rise = toHeightM - fromHeightM;
      const flow = Math.sign(rise) * solved.links.massFlowKgPerS[first + k]!;
      if (assumed[k] === 'upward') return flow > 0;
      if (assumed[k] === 'downward') return flow < 0;
      const withUp = solved.links.pressureDifferencePa[first + k]!;
      const change = gravity * (column.upwardDensityKgPerM3 - column.downwardDensityKgPerM3) * rise;
      const up = flowAt(law, withUp).massFlowKgPerS * Math.sign(rise);
      const down = flowAt(law, withUp + change).massFlowKgPerS * Math.sign(rise);
      stable &&= up < 0;
      return up * down < 0;
    });
    if (agrees) kept.push({ pressuresPa: [...solved.pressuresPa], stable });
  }
  return kept;
}

const rounded = (pressuresPa: Iterable<number>): string =>
  [...pressuresPa].map((pressure) => (Math.round(pressure * 1e4) / 1e4 + 0).toFixed(4)).join(' ');

describe('the search for balances of columns that may hold either air', () => {
  it('finds what trying every combination of states finds', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const { description, twoState } = networkOf(given);
        const every = everyCombination(description, twoState);
        const found = findAllBalances(description, {}, { twoState });
        if (found.status !== 'solved') throw new Error(JSON.stringify(found));
        expect(found.complete && found.counted).toBe(true);
        const pressures = found.balances.map(({ balance }) => rounded(balance.pressuresPa));
        expect(new Set(pressures)).toEqual(new Set(every.map((one) => rounded(one.pressuresPa))));
      }),
      { seed: 41, numRuns: 150 },
    );
  }, 60_000);

  it('gives the stable ones when asked for extremes, inside the bounds', () => {
    fc.assert(
      fc.property(drawn, (given) => {
        const { description, twoState } = networkOf(given);
        const every = everyCombination(description, twoState);
        const stable = every.filter((one) => one.stable);
        const found = findExtremeBalances(description, {}, { twoState, zones: given.zones });
        if (found.status !== 'solved') throw new Error(JSON.stringify(found));
        expect(found.complete && found.counted).toBe(true);
        const pressures = found.balances.map(({ balance }) => rounded(balance.pressuresPa));
        expect(new Set(pressures)).toEqual(new Set(stable.map((one) => rounded(one.pressuresPa))));
        const bounds = boundBalances(description, {}, { twoState });
        for (const { pressuresPa } of every) {
          pressuresPa.forEach((pressure, zone) => {
            expect(pressure).toBeGreaterThanOrEqual(bounds!.lowestPa[zone]! - 1e-6);
            expect(pressure).toBeLessThanOrEqual(bounds!.highestPa[zone]! + 1e-6);
          });
        }
      }),
      { seed: 42, numRuns: 150 },
    );
  }, 60_000);
});

describe('twelve shafts', () => {
  /** Winter: indoor air at 1.20 rises, outdoor air at 1.33 falls, in shafts of 5 to 9 m from three rooms. */
  const columns = Array.from({ length: 12 }, (_, k) => ({
    ...{ from: k % 3, to: 5, riseM: 5 + (k % 5), turned: k % 2 === 0 },
    ...{ coefficient: 0.004 + 0.001 * k, upward: 1.2, downward: 1.33 },
  }));
  const { description, twoState } = networkOf({
    ...{ zones: 3, leaks: [0.002, 0.003, 0.001], exhaust: 0.02, columns },
  });

  it('have the extremes of trying every combination of up and down', () => {
    const built = buildNetwork(description);
    if (built.status !== 'built') throw new Error(JSON.stringify(built.issues));
    const first = description.links.length - twoState.length;
    const extremes = Array.from({ length: 3 }, () => ({ least: Infinity, most: -Infinity }));
    let stable = 0;
    for (let code = 0; code < 2 ** 12; code++) {
      const goesUp = (k: number): boolean => ((code >> k) & 1) === 1;
      const columnDensityKgPerM3 = new Float64Array(description.links.length).fill(1.2041);
      twoState.forEach((column, k) => {
        columnDensityKgPerM3[first + k] = goesUp(k)
          ? column.upwardDensityKgPerM3
          : column.downwardDensityKgPerM3;
      });
      const solved = solveNetwork(built.network, { columnDensityKgPerM3 }, { enclosure: false });
      if (solved.status !== 'solved') throw new Error(solved.hint);
      const agrees = twoState.every((_, k) => {
        const { fromHeightM, toHeightM } = description.links[first + k]!;
        const flow = solved.links.massFlowKgPerS[first + k]! * Math.sign(toHeightM - fromHeightM);
        return goesUp(k) ? flow > 0 : flow < 0;
      });
      if (!agrees) continue;
      stable++;
      extremes.forEach((extreme, zone) => {
        extreme.least = Math.min(extreme.least, solved.pressuresPa[zone]!);
        extreme.most = Math.max(extreme.most, solved.pressuresPa[zone]!);
      });
    }
    // So many that they are not listed one by one.
    expect(stable).toBeGreaterThan(1000);
    const found = findExtremeBalances(description, {}, { twoState, zones: 3, mostSolves: 3000 });
    if (found.status !== 'solved') throw new Error(JSON.stringify(found));
    expect(found).toMatchObject({ complete: true, counted: false });
    extremes.forEach(({ least, most }, zone) => {
      const pressures = found.balances.map(({ balance }) => balance.pressuresPa[zone]!);
      // Balances within 1e-5 Pa of one that is known are left out.
      expect(Math.abs(Math.min(...pressures) - least)).toBeLessThan(2e-5);
      expect(Math.abs(Math.max(...pressures) - most)).toBeLessThan(2e-5);
    });
  }, 60_000);
});
