import {
  baselineOf,
  compileHouse,
  houseIssues,
  houseScenario,
  houseWeather,
  operatingStates,
  parseHouse,
  type CompiledHouse,
  type House,
  type OperatingState,
} from '@evendraft/house';
import { solveNetwork, type Balance } from '@evendraft/network';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomHouse, type HouseData } from './random-house.js';

const runs = { seed: 20261125, numRuns: 70 };

describe('random houses', () => {
  it('have located issues, or balance in every state with proof', () => {
    let solved = 0;
    fc.assert(
      fc.property(randomHouse, (data) => {
        const read = parseHouse(data);
        if (!read.ok) {
          for (const issue of read.issues) {
            expect(houseIssues.has(issue.code)).toBe(true);
            expect(issue.path.length).toBeGreaterThan(0);
          }
          return;
        }
        const result = compileHouse(read.house);
        if (!result.ok) {
          expect(result.issues.map(({ code }) => code)).toEqual(['airtightness.nothing-left']);
          return;
        }
        const { compiled } = result;
        for (const weather of read.house.weathers.map((each) => houseWeather(read.house, each))) {
          for (const state of statesOf(read.house)) {
            for (const columns of ['upward', 'downward'] as const) {
              const { scenario } = houseScenario(compiled, {
                state,
                weather,
                airtightnessCase: 0,
                columns: compiled.twoStateLinks.map(() => columns),
              });
              const balance = solveNetwork(compiled.network, scenario);
              if (balance.status !== 'solved') throw new Error(JSON.stringify(balance));
              expectProof(compiled, balance);
              solved++;
            }
          }
        }
      }),
      runs,
    );
    // Most houses come as far as a balance, else this test would say little.
    expect(solved).toBeGreaterThan(10 * runs.numRuns);
  }, 60_000);

  it('do not care where heights are counted from', () => {
    const heightOf = /^(-?[\d.]+) ft$/;
    const raised = (data: HouseData): HouseData => ({
      ...data,
      zones: Object.fromEntries(
        Object.entries(data['zones'] as Record<string, { floorHeight: string }>).map(
          ([name, zone]) => {
            const [, feet] = heightOf.exec(zone.floorHeight) ?? [];
            return [name, { ...zone, floorHeight: `${Number(feet) + 40} ft` }];
          },
        ),
      ),
    });
    fc.assert(
      fc.property(randomHouse, (data) => {
        const [low, high] = [data, raised(data)].map(pressuresWithAllOn);
        expect(high?.length).toBe(low?.length);
        // Each solve leaves up to a billionth of each flow, and heights are doubles.
        low?.forEach((pressure, i) => expect(Math.abs(high![i]! - pressure)).toBeLessThan(1e-6));
      }),
      { ...runs, numRuns: 30 },
    );
  }, 60_000);
});

/** Pressures in the last state of a house; undefined where it is refused. */
function pressuresWithAllOn(data: HouseData): Float64Array | undefined {
  const read = parseHouse(data);
  const result = read.ok ? compileHouse(read.house) : undefined;
  if (!read.ok || result?.ok !== true) return undefined;
  const weather = houseWeather(read.house, read.house.weathers[0]!);
  const { scenario } = houseScenario(result.compiled, {
    state: operatingStates(read.house).at(-1)!,
    weather,
    airtightnessCase: 0,
  });
  const balance = solveNetwork(result.compiled.network, scenario);
  if (balance.status !== 'solved') throw new Error(JSON.stringify(balance));
  return balance.pressuresPa;
}

/** Some states, the first and the last among them, their baseline, and appliances with their first stage or last. */
function statesOf(house: House): readonly OperatingState[] {
  const all = operatingStates(house);
  const some = [0, 0.37, 0.71].map((part) => all[Math.floor(part * all.length)]!);
  const last = all.at(-1)!;
  const burning = (which: number): OperatingState => ({
    ...last,
    firing: Object.fromEntries(
      house.appliances.flatMap(({ id, flue }) => {
        const stage = flue?.stages.at(which)?.name;
        return stage === undefined ? [] : [[id, stage]];
      }),
    ),
  });
  return [baselineOf(last), ...some, last, burning(0), burning(-1)];
}

function expectProof({ network }: CompiledHouse, balance: Balance): void {
  const { links, pressuresPa, proof } = balance;
  expect(pressuresPa.every(Number.isFinite)).toBe(true);
  // A millipascal is far below what anyone can measure; a looser enclosure would hide a wrong pressure.
  expect(proof.enclosureRadiusPa).toBeLessThan(1e-3);
  expect(proof.largestRelativeResidual).toBeLessThanOrEqual(1e-9);
  const { zones, links: described } = network.description;
  const net = new Map(zones.map(({ id }) => [id, 0]));
  let greatest = 0;
  described.forEach(({ from, to }, i) => {
    const flow = links.massFlowKgPerS[i]!;
    expect(Number.isFinite(links.volumeFlowM3PerS[i])).toBe(true);
    greatest = Math.max(greatest, Math.abs(flow));
    if (net.has(from)) net.set(from, net.get(from)! - flow);
    if (net.has(to)) net.set(to, net.get(to)! + flow);
  });
  // A zone may be out by a billionth of the flow through it, which is no more than the links of the house carry.
  for (const sum of net.values()) expect(Math.abs(sum)).toBeLessThan(1e-8 * greatest + 1e-15);
}
