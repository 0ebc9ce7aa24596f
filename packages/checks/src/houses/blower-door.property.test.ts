import { referenceAir } from '@evendraft/airflow';
import {
  compileHouse,
  insideZoneKinds,
  parseHouse,
  type CompiledHouse,
  type House,
} from '@evendraft/house';
import { buildNetwork, solveNetwork } from '@evendraft/network';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { randomHouse } from './random-house.js';

type HouseLink = CompiledHouse['links'][number];

const level = { fromHeightM: 0, toHeightM: 0 };
const leak = { kind: 'powerLaw', coefficientM3PerSPaN: 1, exponent: 1 } as const;
const runs = { seed: 50, numRuns: 60 };

it('a blower door on the compiled house finds the flow that the file gives, flues and ducts included', () => {
  let tested = 0;
  fc.assert(
    fc.property(randomHouse, (data) => {
      const read = parseHouse(data);
      const result = read.ok ? compileHouse(read.house) : undefined;
      if (!read.ok || result?.ok !== true) return;
      const { direction, cases } = read.house.airtightness;
      const { pressurePa, volumeFlowM3PerS } = cases[0]!;
      const at = (sign: 1 | -1) => blowerDoor(result.compiled, sign * pressurePa);
      const flow =
        direction === 'pressurized' ? at(1) : direction === 'both' ? (at(1) + at(-1)) / 2 : at(-1);
      expect(Math.abs(flow / volumeFlowM3PerS - 1)).toBeLessThan(1e-8);
      tested++;
    }),
    runs,
  );
  expect(tested).toBeGreaterThan(0.5 * runs.numRuns);
}, 60_000);

/** Flow of a fan in a door that holds everything inside at a pressure, with one air everywhere [m3/s]. */
function blowerDoor(
  { house, network, links, junctions }: CompiledHouse,
  pressurePa: number,
): number {
  const air = {
    temperatureC: referenceAir.temperatureC,
    densityKgPerM3: referenceAir.densityKgPerM3,
  };
  const inside = new Set(
    house.zones.filter(({ kind }) => insideZoneKinds.includes(kind)).map(({ id }) => id),
  );
  const places = new Set(junctions.map(({ id }) => id));
  const open = links.filter((link) => wasOpen(house, link)).map(({ description }) => description);
  const used = new Set(open.flatMap(({ from, to }) => [from, to]));
  const { zones, boundaries } = network.description;
  const built = buildNetwork({
    outdoorAir: air,
    // A zone beside the house, so that one without ducts is a network too.
    zones: [
      { id: '@aside', origin: 'aside', heightM: 0, air },
      ...zones
        .filter(({ id }) => places.has(id) && used.has(id))
        .map(({ id, origin }) => ({ id, origin, heightM: 0, air })),
    ],
    boundaries: [
      ...zones
        .filter(({ id }) => !places.has(id))
        .map(({ id, origin }) => ({ id, origin, pressurePa: inside.has(id) ? pressurePa : 0 })),
      ...boundaries.map(({ id, origin }) => ({ id, origin, pressurePa: 0 })),
    ].map((each) => ({ ...each, heightM: 0, air })),
    links: [
      ...open.map(({ id, origin, from, to, law }) => ({ id, origin, from, to, law, ...level })),
      { id: '@aside', origin: 'aside', from: '@aside', to: '@outdoors', law: leak, ...level },
    ],
  });
  if (built.status === 'rejected') throw new Error(JSON.stringify(built.issues));
  const balance = solveNetwork(built.network);
  if (balance.status !== 'solved') throw new Error(JSON.stringify(balance));
  const outward = open.reduce((sum, { from, to }, i) => {
    const flow = balance.links.massFlowKgPerS[i]!;
    return sum + (inside.has(from) ? flow : 0) - (inside.has(to) ? flow : 0);
  }, 0);
  return Math.abs(outward) / air.densityKgPerM3;
}

/** Whether air could pass a link during the test: everything off, and what the file says was sealed is sealed. */
function wasOpen(house: House, { role, description }: HouseLink): boolean {
  const preparation = (id: string) =>
    [...house.openings, ...house.makeUpOpenings, ...house.devices, ...(house.forcedAir ?? [])].find(
      (each) => each.id === id,
    )?.duringTest;
  switch (role.kind) {
    case 'leak':
      return true;
    case 'door':
      return role.position !== 'open';
    case 'device':
    case 'ventilator':
      return false;
    case 'opening':
      return preparation(role.id) === 'open';
    case 'device off':
      return preparation(role.id) !== 'sealed';
    case 'make-up':
      return preparation(role.id) === (role.damper === 'open' ? 'open' : 'closed');
    case 'air handler':
      return role.stand === 'standing' && preparation(role.id) !== 'sealed';
    case 'part': {
      const stood = preparation(role.id);
      if (stood === 'sealed') return false;
      // A booster fan stood still whatever else was open.
      if (description.law.kind === 'fanCurve') return false;
      if (boosts(house, role)) return role.when !== 'open';
      return role.when === 'always' || role.when === (stood === 'open' ? 'open' : 'closed');
    }
    case 'flue': {
      if (role.stages?.includes('off') === false) return false;
      const flue = house.appliances.find(({ id }) => id === role.id)?.flue;
      return role.part === 'chimney' || flue?.duringTest !== 'sealed';
    }
  }
}

/** Whether a part of a device's path is a fan in series, running or stopped. */
function boosts(house: House, role: Extract<HouseLink['role'], { kind: 'part' }>): boolean {
  const path = house.devices.find(({ id }) => id === role.id)?.path;
  const parts = [...(path?.before ?? []), ...(path?.after ?? [])];
  return parts.some(({ name, law }) => name === role.part && law.kind === 'fanCurve');
}
