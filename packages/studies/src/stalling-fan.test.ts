import { compileHouse, houseWeather, parseHouse, type CompiledHouse } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { balanceStudy } from './balance-study.js';
import { pressureRangeStudy } from './pressure-range-study.js';
import { resolveColumns } from './resolve-columns.js';
import { worstCaseStudy } from './worst-case-study.js';

/** Straight pieces, the second rising as those of axial fans do [m3/s, Pa]. */
const corners = [
  [0, 60],
  [0.02, 5],
  [0.05, 60],
  [0.1, 0],
] as const;

function riseAt(flow: number): number {
  const k = Math.max(
    corners.findIndex(([end]) => end >= flow),
    1,
  );
  const [[q0, p0], [q1, p1]] = [corners[k - 1]!, corners[k]!];
  return p0 + ((flow - q0) / (q1 - q0)) * (p1 - p0);
}

/** Points so close to the corners that the smooth curve through them is straight elsewhere [L/s]. */
const flows = [0, 10, 15, 17, 19, 20, 21, 25, 30, 40, 45, 49, 50, 51, 55, 60, 80, 90, 100];

/** A tight house of one zone in calm air as warm as itself, and a fan that stalls. */
function house(stall: 'envelope' | 'every flow', atFiftyLPerS = 50): CompiledHouse {
  const read = parseHouse({
    evendraft: 1,
    name: 'Hazel Close 8',
    floorArea: '80 m2',
    airtightness: { result: `${atFiftyLPerS} L/s at 50 Pa`, exponent: 0.65 },
    exhaust: {
      fan: {
        kind: 'exhaust fan',
        curve: flows.map((flow) => [`${flow} L/s`, `${riseAt(flow / 1000).toFixed(9)} Pa`]),
        stall,
      },
    },
    weather: [{ name: 'still', outdoorTemperature: '20 C', wind: 'calm' }],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const result = compileHouse(read.house);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.compiled;
}

/** Pressures at which the leak lets in what the straight pieces of the curve carry, by close steps of flow [Pa]. */
function byHand(atFiftyLPerS: number): readonly number[] {
  const gap = (flow: number): number =>
    riseAt(flow) - 50 * (flow / (atFiftyLPerS / 1000)) ** (1 / 0.65);
  const step = 1e-6;
  const found: number[] = [];
  for (let flow = step; flow < 0.1; flow += step) {
    if (gap(flow) * gap(flow - step) < 0) found.push(-riseAt(flow));
  }
  return found;
}

const question = (compiled: CompiledHouse) => ({
  state: { running: { fan: 'on' }, doors: {} },
  weather: houseWeather(compiled.house, compiled.house.weathers[0]!),
  airtightnessCase: 0,
});

describe('a fan that stalls, of which every flow is wanted', () => {
  it('can work at three flows, of which the outer two are stable, and the deeper counts', () => {
    const compiled = house('every flow');
    const roots = byHand(50);
    expect(roots).toHaveLength(3);
    const { columns, span } = resolveColumns(compiled, question(compiled));
    expect(columns).toEqual({ stableBalances: 2, counted: true, complete: true, states: [] });
    // The steps of flow are a millionth of a cubic metre, some 2 mPa on the curve.
    expect(span!.lowestPa[0]).toBeCloseTo(Math.min(...roots), 2);
    expect(span!.highestPa[0]).toBeCloseTo(Math.max(...roots), 2);

    const balance = balanceStudy(compiled, question(compiled));
    if (balance.status !== 'solved') throw new Error(balance.hint);
    expect(balance.zones[0]!.pressurePa).toBe(span!.lowestPa[0]);
    expect(balance.proof.unique).toBe(false);
  });

  it('is in the worst case, listed or searched', async () => {
    const compiled = house('every flow');
    const deepest = Math.min(...byHand(50));
    const listed = await worstCaseStudy(compiled);
    const searched = await pressureRangeStudy(compiled);
    expect(listed.zones[0]!.lowest.pressurePa).toBeCloseTo(deepest, 2);
    expect(searched.zones[0]!.lowest.pressurePa).toBeCloseTo(deepest, 2);
    expect(searched.coverage.proved).toBe(true);
  });

  it('has one balance in a leaky house, and with the envelope everywhere', () => {
    const leaky = house('every flow', 200);
    expect(resolveColumns(leaky, question(leaky)).columns?.stableBalances).toBe(1);
    expect(byHand(200)).toHaveLength(1);
    const envelope = house('envelope');
    expect(resolveColumns(envelope, question(envelope)).columns).toBeUndefined();
  });
});
