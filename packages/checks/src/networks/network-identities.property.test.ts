import type {
  Balance,
  BuiltNetwork,
  LinkDescription,
  NetworkDescription,
  Scenario,
} from '@evendraft/network';
import { buildNetwork, solveNetwork } from '@evendraft/network';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { houseNetwork } from './house-network.js';
import { randomNumbers } from './random-numbers.js';

const runs = { seed: 7, numRuns: 100 };
const seeds = fc.integer({ min: 1, max: 1_000_000 });
/** Solves stop at 1e-9 of the flow through a zone; pressures are exact to about as much of themselves. */
const tolerancePa = 1e-6;

describe('identities of every network', () => {
  it('every zone loses as much air as it gains', () => {
    holds((description, scenario) => {
      const { balance } = solve(description, scenario);
      for (const zone of description.zones) {
        let net = 0;
        let through = 0;
        description.links.forEach((link, index) => {
          const flow = balance.links.massFlowKgPerS[index]!;
          if (link.from === zone.id) net += flow;
          if (link.to === zone.id) net -= flow;
          if (link.from === zone.id || link.to === zone.id) through += Math.abs(flow);
        });
        expect(Math.abs(net)).toBeLessThanOrEqual(1e-9 * through);
      }
    });
  });

  it('forward minus backward is net, and volume times the density at the inlet is mass', () => {
    holds((description, scenario) => {
      const { balance } = solve(description, scenario);
      const { links } = balance;
      const density = new Map(
        [...description.zones, ...description.boundaries].map((n) => [n.id, n.air.densityKgPerM3]),
      );
      description.links.forEach((link, index) => {
        const flow = links.massFlowKgPerS[index]!;
        expect(links.forwardKgPerS[index]! - links.backwardKgPerS[index]!).toBe(flow);
        const inlet = density.get(flow > 0 ? link.from : link.to)!;
        expect(links.volumeFlowM3PerS[index]! * inlet).toBeCloseTo(flow, 12);
      });
    });
  });

  it('the order of zones, boundaries and links does not matter', () => {
    holds((description, scenario, seed) => {
      const { balance } = solve(description, scenario);
      const random = randomNumbers(seed);
      const shuffled = <Item>(items: readonly Item[]): Item[] =>
        items
          .map((item) => ({ item, key: random.between(0, 1) }))
          .sort((a, b) => a.key - b.key)
          .map(({ item }) => item);
      const links = shuffled(description.links);
      const other = solve(
        { ...description, zones: shuffled(description.zones), links },
        offsetsOf(links, description, scenario),
      );
      for (const [index, zone] of description.zones.entries()) {
        const place = other.network.zoneIndex.get(zone.id)!;
        expect(
          Math.abs(other.balance.pressuresPa[place]! - balance.pressuresPa[index]!),
        ).toBeLessThan(tolerancePa);
      }
    });
  });

  it('raising every boundary raises every zone by as much and changes no flow', () => {
    holds((description, scenario) => {
      const { balance, network } = solve(description, scenario);
      const raised = Float64Array.from(description.boundaries, ({ pressurePa }) => pressurePa + 50);
      const other = solvedOf(network, { ...scenario, boundaryPressuresPa: raised });
      balance.pressuresPa.forEach((pressure, zone) => {
        expect(Math.abs(other.pressuresPa[zone]! - pressure - 50)).toBeLessThan(tolerancePa);
      });
      expectFlows(other, balance);
    });
  });

  it('a link split into two of half its size carries the same flow', () => {
    holds((description, scenario) => {
      const { balance } = solve(description, scenario);
      const twin = (link: LinkDescription): LinkDescription => ({ ...link, id: `${link.id} twin` });
      const links = [...description.links, ...description.links.map(twin)];
      const offsets = scenario.linkOffsetPa!;
      const other = solve(
        { ...description, links },
        {
          linkOffsetPa: Float64Array.from([...offsets, ...offsets]),
          linkScale: new Float64Array(links.length).fill(0.5),
        },
      );
      balance.pressuresPa.forEach((pressure, zone) => {
        expect(Math.abs(other.balance.pressuresPa[zone]! - pressure)).toBeLessThan(tolerancePa);
      });
    });
  });

  it('turning every link round and every sign over turns every pressure over', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { description, scenario } = houseNetwork(seed, { mostZones: 12 });
        const links = description.links.map((link) =>
          link.law.kind === 'fixedFlow' || link.law.kind === 'fanCurve'
            ? link
            : { ...link, from: link.to, to: link.from },
        );
        // Leaks answer alike both ways, so turning them round only turns the sign of their flow.
        const offsets = Float64Array.from(scenario.linkOffsetPa!, (offset, index) =>
          links[index] === description.links[index] ? offset : -offset,
        );
        const symmetric = (link: LinkDescription): boolean => link.law.kind !== 'oneWayDamper';
        const scale = Float64Array.from(links, (link) => (symmetric(link) ? 1 : 0));
        const { balance } = solve(description, { ...scenario, linkScale: scale });
        const other = solve(
          { ...description, links },
          { linkOffsetPa: offsets, linkScale: scale },
        ).balance;
        balance.pressuresPa.forEach((pressure, zone) => {
          expect(Math.abs(other.pressuresPa[zone]! - pressure)).toBeLessThan(tolerancePa);
        });
      }),
      runs,
    );
  });

  it('warm and cold starts come to the same answer', () => {
    holds((description, scenario, seed) => {
      const { balance, network } = solve(description, scenario);
      const random = randomNumbers(seed);
      const start = Float64Array.from(balance.pressuresPa, (p) => p + random.between(-40, 40));
      const warm = solveNetwork(network, scenario, { start });
      if (warm.status !== 'solved') throw new Error(warm.hint);
      balance.pressuresPa.forEach((pressure, zone) => {
        expect(Math.abs(warm.pressuresPa[zone]! - pressure)).toBeLessThan(tolerancePa);
      });
    });
  });

  it('a link scaled to zero is as good as absent', () => {
    holds((description, scenario) => {
      const scale = Float64Array.from(description.links, (_, index) => (index % 5 === 4 ? 0 : 1));
      const links = description.links.filter((_, index) => scale[index] !== 0);
      const present = solve(description, { ...scenario, linkScale: scale }, true);
      const absent = solve(
        { ...description, links },
        offsetsOf(links, description, scenario),
        true,
      );
      expect(present.status).toBe(absent.status);
      if (present.status !== 'solved' || absent.status !== 'solved') return;
      present.balance.pressuresPa.forEach((pressure, zone) => {
        expect(Math.abs(absent.balance.pressuresPa[zone]! - pressure)).toBeLessThan(tolerancePa);
      });
    });
  });

  it('two scenarios on one network do not disturb each other', () => {
    holds((description, scenario) => {
      const { balance, network } = solve(description, scenario);
      const cold = description.zones.map((zone) => zone.air.temperatureC - 30);
      solveNetwork(network, {
        outdoorAir: { temperatureC: -30, densityKgPerM3: 1.45 },
        zoneAir: {
          temperatureC: Float64Array.from(cold),
          densityKgPerM3: Float64Array.from(cold, (t) => 353 / (t + 273)),
        },
        linkScale: Float64Array.from(description.links, (_, index) => index % 2),
      });
      const again = solvedOf(network, scenario);
      expect(again.pressuresPa).toEqual(balance.pressuresPa);
    });
  });
});

function holds(
  check: (description: NetworkDescription, scenario: Scenario, seed: number) => void,
): void {
  fc.assert(
    fc.property(seeds, (seed) => {
      const { description, scenario } = houseNetwork(seed, { mostZones: 12, stack: true });
      check(description, scenario, seed);
    }),
    runs,
  );
}

type Solved = { status: 'solved'; network: BuiltNetwork; balance: Balance };

function solve(description: NetworkDescription, scenario: Scenario): Solved;
function solve(
  description: NetworkDescription,
  scenario: Scenario,
  mayFail: true,
): Solved | { status: 'infeasible' | 'not-unique' | 'not-converged' | 'invalid-scenario' };
function solve(description: NetworkDescription, scenario: Scenario, mayFail = false) {
  const built = buildNetwork(description);
  if (built.status !== 'built') throw new Error(JSON.stringify(built.issues));
  const result = solveNetwork(built.network, scenario);
  if (result.status === 'solved') {
    return { status: result.status, network: built.network, balance: result };
  }
  if (mayFail) return { status: result.status };
  throw new Error(result.hint);
}

function solvedOf(network: BuiltNetwork, scenario: Scenario): Balance {
  const result = solveNetwork(network, scenario);
  if (result.status !== 'solved') throw new Error(result.hint);
  return result;
}

function offsetsOf(
  links: readonly LinkDescription[],
  description: NetworkDescription,
  { linkOffsetPa }: Scenario,
): Scenario {
  const places = links.map((link) => description.links.indexOf(link));
  return { linkOffsetPa: Float64Array.from(places, (place) => linkOffsetPa![place]!) };
}

function expectFlows(actual: Balance, expected: Balance): void {
  const greatest = Math.max(...expected.links.massFlowKgPerS.map(Math.abs));
  expected.links.massFlowKgPerS.forEach((flow, link) => {
    expect(Math.abs(actual.links.massFlowKgPerS[link]! - flow)).toBeLessThan(1e-7 * greatest);
  });
}
