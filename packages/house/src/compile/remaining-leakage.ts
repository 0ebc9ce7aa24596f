import { referenceAir, type FlowLawDescription } from '@evendraft/airflow';
import {
  insideZoneKinds,
  type AirtightnessCase,
  type Device,
  type Door,
  type House,
  type MakeUpOpening,
  type Opening,
  type Outlet,
  type PathPart,
} from '../house.js';
import { branchedTestFlow, type TestFlow } from './branched-test-flow.js';
import { fluePaths } from './flue-paths.js';
import { forcedAirPath } from './forced-air-path.js';
import type { HouseLink, HousePaths } from './house-link.js';
import { opensInward } from './opens-inward.js';
import { seriesFlow, type ChainedLaw } from './series-flow.js';

/** An airtightness case after the separately modelled openings are taken off. */
export interface RemainingLeakage {
  readonly name: AirtightnessCase['name'];
  /** Flow coefficient of what remains, at reference air [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow of the tested envelope at the test pressure [m3/s]. */
  readonly testedFlowM3PerS: number;
  /** Part of it that goes through separately modelled openings [m3/s]. */
  readonly modelledFlowM3PerS: number;
  /** Openings whose flow during the test could not be told; absent where there is none. */
  readonly unknown?: readonly string[];
}

/**
 * Leakage that remains for the leak shares in each airtightness case.
 *
 * A test measured every opening that was not sealed. What the house models by itself is therefore
 * subtracted, at the test pressure. Openings to a buffer space outside the envelope count as if that
 * space stood at outdoor pressure during the test, doors to it as shut. What stands in series is taken as one. The
 * leaks of a house that was changed since are those that its test left.
 *
 * @param house - the house
 * @returns one row a case; a coefficient of zero or below means that nothing is left
 */
export function remainingLeakage(house: House): readonly RemainingLeakage[] {
  const { cases, exponent, remainingM3PerSPaN } = house.airtightness;
  return cases.map((test, index) => {
    const kept = remainingM3PerSPaN?.[index];
    if (kept !== undefined) {
      return {
        name: test.name,
        coefficientM3PerSPaN: kept,
        testedFlowM3PerS: test.volumeFlowM3PerS,
        modelledFlowM3PerS: test.volumeFlowM3PerS - kept * test.pressurePa ** exponent,
      };
    }
    const flows = modelledFlows(house, test.pressurePa);
    const modelledFlowM3PerS = flows.reduce(
      (sum, flow) => sum + (flow.status === 'solved' ? flow.volumeFlowM3PerS : 0),
      0,
    );
    const unknown = flows.filter(({ status }) => status !== 'solved').map(({ item }) => item);
    const remaining = test.volumeFlowM3PerS - modelledFlowM3PerS;
    return {
      name: test.name,
      coefficientM3PerSPaN: remaining / test.pressurePa ** exponent,
      testedFlowM3PerS: test.volumeFlowM3PerS,
      modelledFlowM3PerS,
      ...(unknown.length === 0 ? {} : { unknown }),
    };
  });
}

/** What a separately modelled opening lets through during an airtightness test, air at 20 °C and 101,325 Pa. */
export type ModelledFlow = TestFlow & {
  /** Name of the opening, device, door or duct system; `flues` for all flues, which may share a chimney. */
  readonly item: string;
};

/**
 * What each separately modelled opening lets through during an airtightness test; sealed ones are left out.
 *
 * @param house - the house
 * @param pressurePa - pressure of the test [Pa]
 * @returns one row an item, in the house's order; items without flow are left out
 */
export function modelledFlows(house: House, pressurePa: number): readonly ModelledFlow[] {
  const { direction } = house.airtightness;
  const inSeries = modelledOpenings(house).map(({ item, chain }): ModelledFlow => ({
    item,
    ...inDirection(direction, pressurePa, (inwardPa) => chainFlow(chain, inwardPa)),
  }));
  const branched = branchedPaths(house).map(({ item, paths }): ModelledFlow => ({
    item,
    ...inDirection(direction, pressurePa, (inwardPa) => branchedFlow(house, paths, inwardPa)),
  }));
  return [...inSeries, ...branched].filter(
    (flow) => flow.status !== 'solved' || flow.volumeFlowM3PerS !== 0,
  );
}

/** What one item lets through during the test: laws in series on the way in. */
type TestedChain = readonly ChainedLaw[];

interface TestedItem {
  readonly item: string;
  readonly chain: TestedChain;
}

function modelledOpenings(house: House): readonly TestedItem[] {
  const inside = new Set(
    house.zones.filter((zone) => insideZoneKinds.includes(zone.kind)).map((zone) => zone.id),
  );
  const leadsOut = (zone: string, to: Outlet): boolean =>
    inside.has(zone) &&
    !(to.kind === 'zone' && inside.has(to.zone)) &&
    !(to.kind === 'surrounding' && house.airtightness.guarded);
  const standing = <Item extends Pick<Opening, 'id' | 'zone' | 'to' | 'duringTest'>>(
    item: Item,
    chain: (item: Item, stood: 'closed' | 'open') => TestedChain | undefined,
  ): readonly TestedItem[] => {
    const { id, zone, to, duringTest } = item;
    if (duringTest === 'sealed' || !leadsOut(zone, to)) return [];
    const laws = chain(item, duringTest);
    return laws === undefined ? [] : [{ item: id, chain: laws }];
  };
  return [
    ...house.openings.flatMap((each) => standing(each, openingChain)),
    ...house.makeUpOpenings.flatMap((each) => standing(each, makeUpChain)),
    ...house.devices.flatMap((each) => standing(each, deviceChain)),
    ...house.doors.flatMap((door) => outerDoorChains(door, inside)),
  ];
}

/** What the shut door between an inside zone and a buffer lets through: under its leaf, and beside it. */
function outerDoorChains(
  { id, between: [from, to], shut, parts = [] }: Door,
  inside: ReadonlySet<string>,
): readonly TestedItem[] {
  if (inside.has(from) === inside.has(to)) return [];
  const reversed = inside.has(from);
  return [shut, ...parts.map(({ law }) => law)].map((law) => ({
    item: id,
    chain: [{ law, reversed }],
  }));
}

function openingChain(
  { law, parts = [] }: Opening,
  stood: 'closed' | 'open',
): TestedChain | undefined {
  if (stood === 'closed') return undefined;
  return joined([partChain(parts, 'open'), [onItsOwn(law)]]);
}

function makeUpChain(opening: MakeUpOpening, stood: 'closed' | 'open'): TestedChain | undefined {
  const law = stood === 'open' ? opening.openLaw : opening.closedLaw;
  if (law === undefined) return undefined;
  return joined([partChain(opening.parts ?? [], stood), [onItsOwn(law)]]);
}

function deviceChain(
  { offLaw, path, direction }: Device,
  stood: 'closed' | 'open',
): TestedChain | undefined {
  if (path === undefined) return offLaw === undefined ? undefined : [onItsOwn(offLaw)];
  const along = joined([
    partChain(path.before, stood),
    [{ law: path.stoppedLaw }],
    partChain(path.after, stood),
  ]);
  if (direction === 'supply') return along;
  return along?.map(({ law, reversed = false }) => ({ law, reversed: !reversed }));
}

/** A law counts its flow outwards, but a flap counts it in the direction in which it opens: in. */
function onItsOwn(law: FlowLawDescription): ChainedLaw {
  return { law, reversed: !opensInward(law) };
}

function partChain(parts: readonly PathPart[], stood: 'closed' | 'open'): TestedChain | undefined {
  // A fan in series stands still during a test, however its item stands.
  const laws = parts.map(({ law, closed }) =>
    closed !== undefined && (stood === 'closed' || law.kind === 'fanCurve') ? closed : law,
  );
  return laws.includes('inside the tested leakage')
    ? undefined
    : (laws as readonly FlowLawDescription[]).map((law) => ({ law }));
}

function joined(chains: readonly (TestedChain | undefined)[]): TestedChain | undefined {
  return chains.includes(undefined) ? undefined : (chains as readonly TestedChain[]).flat();
}

function chainFlow(chain: TestedChain, inwardPa: number): TestFlow {
  const volumeFlowM3PerS = Math.abs(seriesFlow(chain, inwardPa)) / referenceAir.densityKgPerM3;
  return Number.isFinite(volumeFlowM3PerS)
    ? { status: 'solved', volumeFlowM3PerS }
    : { status: 'not solved', reason: 'not-converged' };
}

/** A flow at the test pressure, inwards as in a depressurization test unless the test was another. */
function inDirection(
  direction: House['airtightness']['direction'],
  pressurePa: number,
  flow: (inwardPa: number) => TestFlow,
): TestFlow {
  if (direction === 'pressurized') return flow(-pressurePa);
  const inward = flow(pressurePa);
  if (direction !== 'both' || inward.status !== 'solved') return inward;
  const outward = flow(-pressurePa);
  if (outward.status !== 'solved') return outward;
  const volumeFlowM3PerS = (inward.volumeFlowM3PerS + outward.volumeFlowM3PerS) / 2;
  return { status: 'solved', volumeFlowM3PerS };
}

/** Paths that branch: ducts with their registers, flues with their draft hoods. */
function branchedPaths(
  house: House,
): readonly { readonly item: string; readonly paths: HousePaths }[] {
  const ducts = (house.forcedAir ?? [])
    .filter(({ duringTest }) => duringTest !== 'sealed')
    .map((system) => ({ item: system.id, paths: forcedAirPath(house, system) }));
  return [...ducts, { item: 'flues', paths: fluePaths(house) }];
}

/** What passes through paths that branch during the test. */
function branchedFlow(house: House, { links, junctions }: HousePaths, inwardPa: number): TestFlow {
  const inside = new Set(
    house.zones.filter((zone) => insideZoneKinds.includes(zone.kind)).map((zone) => zone.id),
  );
  // A guarded neighbour stood at the pressure of the house.
  if (house.airtightness.guarded) for (const { id } of house.surroundings) inside.add(id);
  const open = links.filter((link) => stoodOpen(house, link));
  return branchedTestFlow({ paths: { links: open, junctions }, inside, pressurePa: -inwardPa });
}

/** Whether a link of a branched path was there during the test: nothing ran, nothing fired. */
function stoodOpen(house: House, { role }: HouseLink): boolean {
  if (role.kind === 'air handler') return role.stand === 'standing';
  if (role.kind !== 'flue') return true;
  if (role.stages?.includes('off') === false) return false;
  // What is sealed is a flue's way into the room; the chimney that others share stays.
  const sealed = house.appliances.find(({ id }) => id === role.id)?.flue?.duringTest === 'sealed';
  return role.part === 'chimney' || !sealed;
}
