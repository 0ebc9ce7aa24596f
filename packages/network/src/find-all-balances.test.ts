import type { FanCurveDescription, FanPoint, FlowLawDescription } from '@evendraft/airflow';
import { flowAt, gravity } from '@evendraft/airflow';
import { describe, expect, it } from 'vitest';
import { buildNetwork } from './build-network.js';
import type { AllBalances, AllBalancesOptions } from './find-all-balances.js';
import { findAllBalances } from './find-all-balances.js';
import type { LinkDescription, NetworkDescription } from './network-description.js';
import { solveNetwork } from './solve-network.js';
import { UnknownIdError } from './unknown-id-error.js';

const air = { temperatureC: 20, densityKgPerM3: 1.2041 };
const warm = 0.8;
const cold = 1.25;

describe('one house with a chimney of 8 m', () => {
  // 9.80665 x 8 x (1.2041 - 0.8) = 31.7 Pa of draft when warm, -3.6 Pa when cold.
  it('has two stable balances and one at rest between them when a fan works against a warm draft', () => {
    const { balances, complete } = all(chimneyHouse(0.03), both);
    expect(complete).toBe(true);
    expect(statesOf(balances)).toEqual([
      ['downward', true],
      ['still', false],
      ['upward', true],
    ]);
    for (const { balance, columns } of balances) {
      // The same balance from a plain solve with the column's air as found.
      const densities = new Float64Array(3).fill(1.2041);
      densities[1] = columns[0]!.densityKgPerM3;
      const plain = solved(chimneyHouse(0.03), { columnDensityKgPerM3: densities });
      expect(Math.abs(plain.pressuresPa[0]! - balance.pressuresPa[0]!)).toBeLessThan(1e-6);
      expect(
        Math.abs(plain.links.massFlowKgPerS[1]! - balance.links.massFlowKgPerS[1]!),
      ).toBeLessThan(1e-6);
    }
  });

  it('has only the upward balance without a fan', () => {
    // Air that comes down is indoor-warm soon: lighter than outdoors, it rises again.
    const { balances } = all(chimneyHouse(0), [
      { link: 'chimney', upwardDensityKgPerM3: warm, downwardDensityKgPerM3: 1.19 },
    ]);
    expect(statesOf(balances)).toEqual([['upward', true]]);
  });

  it('has only the downward balance under a great fan', () => {
    const { balances } = all(chimneyHouse(0.2), both);
    expect(statesOf(balances)).toEqual([['downward', true]]);
  });

  it('comes to rest, stably, where the air of either direction would stop it', () => {
    // A cold shaft in summer: upward it fills with heavy air, downward with warm outdoor air.
    const { balances } = all(chimneyHouse(0), [
      { link: 'chimney', upwardDensityKgPerM3: 1.22, downwardDensityKgPerM3: 1.15 },
    ]);
    expect(statesOf(balances)).toEqual([['still', true]]);
    expect(balances[0]!.columns[0]!.densityKgPerM3).toBeCloseTo(1.2041, 6);
  });

  it('counts up from the lower end, whichever end the link begins at', () => {
    const description = chimneyHouse(0.03);
    const turned = {
      ...description,
      links: description.links.map((link) =>
        link.id === 'chimney'
          ? { ...link, from: 'out', to: 'house', fromHeightM: 8, toHeightM: 0 }
          : link,
      ),
    };
    expect(statesOf(all(turned, both).balances)).toEqual(statesOf(all(description, both).balances));
  });

  it('stands at rest behind a flap that no air of the column opens', () => {
    const description = chimneyHouse(0.2);
    const flap: FlowLawDescription = {
      kind: 'oneWayDamper',
      coefficientM3PerSPaN: 0.02,
      exponent: 0.5,
      crackingPressurePa: 2,
    };
    const links = description.links.map((link) =>
      link.id === 'chimney' ? { ...link, law: flap } : link,
    );
    const { balances } = all({ ...description, links }, both);
    expect(statesOf(balances)).toEqual([['still', true]]);
  });

  it('rejects a column by an unknown link by name', () => {
    const column = { link: 'flue', upwardDensityKgPerM3: 1, downwardDensityKgPerM3: 1 };
    expect(() => findAllBalances(chimneyHouse(0), {}, { twoState: [column] })).toThrow(
      UnknownIdError,
    );
  });

  it('says that it is not complete when the ceiling is hit', () => {
    expect(all(chimneyHouse(0.03), both, { mostSolves: 1 }).complete).toBe(false);
  });

  it('refuses a scenario of the wrong length', () => {
    const result = findAllBalances(chimneyHouse(0), { linkScale: new Float64Array(2) });
    expect(result).toMatchObject({ status: 'invalid-scenario' });
  });
});

it('two chimneys, each strong enough to turn the other: one up, one down, either way round', () => {
  const base = chimneyHouse(0);
  const second = { ...base.links[1]!, id: 'second', origin: 'second' };
  // Hardly any other leak: what rises in one must come down the other.
  const tight = { ...base.links[0]!, law: leak(0.0005) };
  const description = { ...base, links: [tight, base.links[1]!, second] };
  const column = { upwardDensityKgPerM3: warm, downwardDensityKgPerM3: cold };
  const { balances, complete } = all(description, [
    { link: 'chimney', ...column },
    { link: 'second', ...column },
  ]);
  expect(complete).toBe(true);
  const stable = balances.filter((root) => root.stable);
  expect(stable.map((root) => root.columns.map(({ state }) => state))).toEqual(
    expect.arrayContaining([
      ['upward', 'downward'],
      ['downward', 'upward'],
    ]),
  );
});

/** Rising between the second and third point, as axial fans are. */
const dip = (scale: number): FanCurveDescription => ({
  kind: 'fanCurve',
  points: (
    [
      [0, 60],
      [0.02, 30],
      [0.05, 50],
      [0.1, 0],
    ] as const
  ).map(([flow, rise]) => ({ volumeFlowM3PerS: scale * flow, pressureRisePa: rise })),
  beyondShutOff: 'extended',
  interpolation: 'linear',
});

describe('against a dense scan of one zone', () => {
  it.each([0.0009, 0.0035, 0.006, 0.0075, 0.009, 0.012, 0.02])(
    'one rising fan and a chimney on a leak of %d',
    (coefficient) => {
      const description = fanHouse(coefficient, [dip(1)]);
      const { balances, complete } = all(description, both);
      expect(complete).toBe(true);
      expectSameRoots(balances, scan(description, both));
    },
  );

  it.each([0.003, 0.007, 0.012, 0.018, 0.024])(
    'two rising fans and a chimney on a leak of %d',
    (coefficient) => {
      const description = fanHouse(coefficient, [dip(1), dip(0.7)]);
      const { balances, complete } = all(description, both);
      expect(complete).toBe(true);
      expectSameRoots(balances, scan(description, both));
    },
  );
});

it('two rising fans in two rooms share five balances, three of them stable', () => {
  const base = chimneyHouse(0);
  const apart: NetworkDescription = {
    ...base,
    zones: [...base.zones, { ...base.zones[0]!, id: 'room', origin: 'room' }],
    links: [
      link('house leak', leak(0.004)),
      { ...link('room leak', leak(0.004)), from: 'room' },
      { ...link('door', leak(0.05)), to: 'room' },
      link('fan 0', dip(1)),
      { ...link('fan 1', dip(0.8)), from: 'room' },
    ],
  };
  const { balances, complete } = all(apart, []);
  expect(complete).toBe(true);
  // Each fan on its high or low branch, or both between; the count is golden, what follows is not.
  expect(balances.map((root) => root.stable)).toEqual([true, false, true, false, true]);
  for (const { balance } of balances) {
    const flows = balance.links.massFlowKgPerS;
    const out = (id: string): number =>
      apart.links.reduce(
        (sum, { from, to }, k) => sum + (from === id ? flows[k]! : to === id ? -flows[k]! : 0),
        0,
      );
    expect(Math.abs(out('house'))).toBeLessThan(1e-9);
    expect(Math.abs(out('room'))).toBeLessThan(1e-9);
    apart.links.forEach(({ law }, k) => {
      if (law.kind !== 'fanCurve') return;
      const rise = riseAt(law.points, balance.links.volumeFlowM3PerS[k]!);
      expect(Math.abs(rise + balance.links.pressureDifferencePa[k]!)).toBeLessThan(1e-6);
    });
  }
});

it('finds the fan that its own damper holds shut beside the one that blows', () => {
  // Wind of 62 Pa on the outlet, more than the fan's 60 Pa at no flow: shut. The rise never reaches it again.
  const shut = { ...dip(1), beyondShutOff: 'blocked' } as const;
  const description = fanHouse(0.05, [shut]);
  const at = (pressurePa: number) => {
    const boundaries = [...description.boundaries];
    boundaries.push({ ...boundaries[0]!, id: 'wind', origin: 'wind', pressurePa });
    const links = description.links.map((item) =>
      item.id === 'fan 0' ? { ...item, to: 'wind' } : item,
    );
    const { balances } = all({ ...description, boundaries, links }, []);
    return balances.map(({ fans, stable }) => [fans[0]!.volumeFlowM3PerS === 0, stable]);
  };
  expect(at(80)).toEqual([[true, true]]);
  expect(at(-10)).toEqual([[false, true]]);
});

type Columns = NonNullable<AllBalancesOptions['twoState']>;
const both: Columns = [
  { link: 'chimney', upwardDensityKgPerM3: warm, downwardDensityKgPerM3: cold },
];

function leak(coefficientM3PerSPaN: number): FlowLawDescription {
  return { kind: 'powerLaw', coefficientM3PerSPaN, exponent: 0.65 };
}

function link(id: string, law: FlowLawDescription): LinkDescription {
  return { id, origin: id, from: 'house', to: 'out', fromHeightM: 0, toHeightM: 0, law };
}

function chimneyHouse(exhaustM3PerS: number): NetworkDescription {
  const node = { heightM: 0, air };
  return {
    outdoorAir: air,
    zones: [{ id: 'house', origin: 'house', ...node }],
    boundaries: [{ id: 'out', origin: 'out', pressurePa: 0, ...node }],
    links: [
      link('leak', leak(0.004)),
      {
        ...link('chimney', leak(0.004)),
        toHeightM: 8,
        columnAir: { temperatureC: 100, densityKgPerM3: warm },
      },
      link('fan', { kind: 'fixedFlow', volumeFlowM3PerS: exhaustM3PerS }),
    ],
  };
}

function fanHouse(coefficient: number, fans: readonly FanCurveDescription[]): NetworkDescription {
  const base = chimneyHouse(0);
  const links = [link('leak', leak(coefficient)), base.links[1]!];
  return { ...base, links: [...links, ...fans.map((law, k) => link(`fan ${k}`, law))] };
}

function all(
  description: NetworkDescription,
  twoState: Columns,
  options: AllBalancesOptions = {},
): AllBalances {
  const result = findAllBalances(description, {}, { twoState, ...options });
  if (result.status !== 'solved') throw new Error(JSON.stringify(result));
  return result;
}

function solved(description: NetworkDescription, scenario: Parameters<typeof solveNetwork>[1]) {
  const built = buildNetwork(description);
  if (built.status !== 'built') throw new Error(JSON.stringify(built.issues));
  const result = solveNetwork(built.network, scenario);
  if (result.status !== 'solved') throw new Error(result.hint);
  return result;
}

/** State of the first column and stability, by rising flow through it. */
function statesOf(balances: AllBalances['balances']) {
  return balances
    .map(({ columns, stable }) => [columns[0]!.state, stable])
    .sort((a, b) => String(a[0]).localeCompare(String(b[0])));
}

function expectSameRoots(balances: AllBalances['balances'], scanned: readonly number[]): void {
  const found = balances.map(({ balance }) => balance.pressuresPa[0]!).sort((a, b) => a - b);
  expect(found).toHaveLength(scanned.length);
  // The scan interpolates between steps of a hundredth of a pascal.
  found.forEach((pressure, k) => expect(Math.abs(pressure - scanned[k]!)).toBeLessThan(0.01));
}

const scanStepPa = 0.01;

function riseAt(points: readonly FanPoint[], flow: number): number {
  const last = points.length - 2;
  const k = Math.min(
    Math.max(points.findIndex(({ volumeFlowM3PerS }) => volumeFlowM3PerS >= flow) - 1, 0),
    last,
  );
  const [a, b] = [points[k]!, points[k + 1]!];
  const part = (flow - a.volumeFlowM3PerS) / (b.volumeFlowM3PerS - a.volumeFlowM3PerS);
  return a.pressureRisePa + part * (b.pressureRisePa - a.pressureRisePa);
}

/**
 * Pressures of a one-zone house at which its air balances, by brute force: every branch of every fan's curve
 * and every state of the chimney, at close pressures.
 */
function scan({ links }: NetworkDescription, [column]: Columns): number[] {
  const fans = links.flatMap(({ law }) => (law.kind === 'fanCurve' ? [law] : []));
  const chimney = links[1]!.law;
  const draft = (density: number): number => gravity * 8 * (air.densityKgPerM3 - density);
  const branches = combinations(fans.map(({ points }) => points.length + 1)).flatMap((pieces) =>
    (['upward', 'downward', 'still'] as const).map((state) => ({ pieces, state, before: NaN })),
  );
  const roots: number[] = [];
  for (let p = -80.00317; p < 20; p += scanStepPa) {
    const leakFlow = flowAt(links[0]!.law, p).massFlowKgPerS;
    const up = flowAt(chimney, p + draft(column!.upwardDensityKgPerM3)).massFlowKgPerS;
    const down = flowAt(chimney, p + draft(column!.downwardDensityKgPerM3)).massFlowKgPerS;
    const chimneyFlow = {
      upward: up > 0 ? up : NaN,
      downward: down < 0 ? down : NaN,
      still: up > 0 && down < 0 ? 0 : NaN,
    };
    for (const branch of branches) {
      let now = leakFlow + chimneyFlow[branch.state];
      fans.forEach(({ points }, k) => {
        now += air.densityKgPerM3 * branchFlow(points, branch.pieces[k]!, -p);
      });
      if (branch.before * now < 0) roots.push(p - (scanStepPa * now) / (now - branch.before));
      branch.before = now;
    }
  }
  return roots.sort((a, b) => a - b);
}

/** The flow on one straight piece of a curve at a rise, ends continued; NaN off the piece. */
function branchFlow(points: readonly FanPoint[], piece: number, rise: number): number {
  const last = points.length - 1;
  const k = Math.min(Math.max(piece - 1, 0), last - 1);
  const [a, b] = [points[k]!, points[k + 1]!];
  const part = (rise - a.pressureRisePa) / (b.pressureRisePa - a.pressureRisePa);
  const [least, most] = piece === 0 ? [-Infinity, 0] : piece > last ? [1, Infinity] : [0, 1];
  if (!(part >= least && part <= most)) return NaN;
  return a.volumeFlowM3PerS + part * (b.volumeFlowM3PerS - a.volumeFlowM3PerS);
}

function combinations(counts: readonly number[]): number[][] {
  return counts.reduce<number[][]>(
    (rows, count) => rows.flatMap((row) => Array.from({ length: count }, (_, k) => [...row, k])),
    [[]],
  );
}
