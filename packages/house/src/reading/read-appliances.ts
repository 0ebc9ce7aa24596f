import { applianceFile } from '../file/appliance-file.js';
import type { FlueInFile } from '../file/flue-file.js';
import type { Flue } from '../flue.js';
import type { Appliance, TestPreparation } from '../house.js';
import { kindNames } from '../kind-names.js';
import { reportUnknown } from './house-names.js';
import { joinFlues } from './join-flues.js';
import { readFlue, type FlueRead } from './read-flue.js';
import { readKind } from './read-kind.js';
import { readZoneOf, type HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { originOf, readValue, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/**
 * Reads the combustion appliances. A shared vent that one of them names is completed for the others.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section `appliances`
 * @param house - zones and names
 * @returns appliances in the order of the file; wrong ones are left out
 */
export function readAppliances(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar & { readonly preparation: ReadonlyMap<string, TestPreparation> },
): readonly Appliance[] {
  const read = items.flatMap((item) => {
    const appliance = readAppliance(reading, item, house);
    return appliance === undefined ? [] : [appliance];
  });
  const appliances = read.map(({ appliance }) => ({
    ...appliance,
    sharesVentWith: onSameVent(
      appliance.id,
      read.map((each) => each.appliance),
    ),
  }));
  const flues = new Map<string, FlueRead>();
  read.forEach(({ flueInFile, path }, index) => {
    const appliance = appliances[index];
    if (flueInFile === undefined || appliance === undefined) return;
    const of = { inFile: flueInFile, appliance, path: [...path, 'flue'] };
    const flue = readFlue(reading, house, of);
    if (flue !== undefined) flues.set(appliance.id, flue);
  });
  const zones = house.zones.map(({ zone }) => zone);
  const joined = joinFlues(reading, appliances, { flues, zones });
  return appliances.map((appliance) => {
    const flue = joined.get(appliance.id);
    return flue === undefined ? appliance : { ...appliance, flue, ...limitsOf(appliance, flue) };
  });
}

/** What limits that depend on a chimney ask of it, from the flue that describes it. */
function limitsOf(appliance: Appliance, { chimney }: Flue): Pick<Appliance, 'chimney'> {
  if (appliance.chimney !== undefined || chimney.length === 0) return {};
  const heightM = chimney.reduce((sum, { riseM }) => sum + riseM, 0);
  const outdoorsM = chimney.reduce(
    (sum, { riseM, stands }) => sum + (stands === 'outdoors' ? riseM : 0),
    0,
  );
  return { chimney: { heightM, exterior: outdoorsM > heightM / 2 } };
}

interface ReadAppliance {
  readonly appliance: Omit<Appliance, 'flue'>;
  readonly flueInFile: FlueInFile | undefined;
  readonly path: RawItem['path'];
}

function readAppliance(
  reading: Reading,
  { name, path, raw }: RawItem,
  house: HouseSoFar,
): ReadAppliance | undefined {
  const inFile = readValue(reading, applianceFile, { path, raw: raw ?? {} });
  // The kind of an item that could not be read is asked for only where none stands there.
  if (inFile === undefined && saysKind(raw)) return undefined;
  const kind = readKind(reading, kindNames.appliances, { name, path, given: inFile?.kind });
  if (inFile === undefined) return undefined;
  const origin = originOf(path);
  const zone = readZoneOf(reading, house, { given: inFile.zone, path });
  const shared = readShared(reading, inFile.sharesVentWith, { name, path, house });
  if (inFile.ventDamper === undefined && inFile.vent !== 'electric' && inFile.vent !== 'unvented') {
    reading.assumptions.push({
      origin,
      what: 'vent damper',
      value: 'none',
      source: ourChoice('none is named'),
    });
  }
  if (kind === undefined || zone === undefined) return undefined;
  const { chimney, input, flue } = inFile;
  if (chimney !== undefined && flue !== undefined) {
    const parameters = { key: 'chimney', way: 'flue' };
    report(reading, [...path, 'chimney'], { code: 'key.without-effect', parameters });
    return undefined;
  }
  const appliance = {
    id: name,
    origin,
    kind,
    vent: inFile.vent,
    fuel: inFile.fuel ?? 'not stated',
    zone,
    ...(input === undefined ? {} : { inputW: input }),
    sharesVentWith: shared,
    ventDamper: inFile.ventDamper ?? false,
    ...(chimney === undefined
      ? {}
      : {
          chimney: {
            ...(chimney.height === undefined ? {} : { heightM: chimney.height }),
            exterior: chimney.exterior,
          },
        }),
  };
  return { appliance, flueInFile: flue, path };
}

function saysKind(raw: unknown): boolean {
  return typeof raw === 'object' && raw !== null && 'kind' in raw;
}

function readShared(
  reading: Reading,
  typed: string | readonly string[] | undefined,
  appliance: {
    readonly name: string;
    readonly path: RawItem['path'];
    readonly house: HouseSoFar;
  },
): readonly string[] {
  const { name, path, house } = appliance;
  const list = typeof typed === 'string' ? [typed] : (typed ?? []);
  return list.flatMap((other, index) => {
    const at = [...path, 'sharesVentWith', ...(typeof typed === 'string' ? [] : [index])];
    if (other === name) {
      report(reading, at, { code: 'appliance.own-vent', parameters: { name } });
      return [];
    }
    if (house.names.appliances.includes(other)) return [other];
    const known = house.names.appliances.filter((each) => each !== name);
    reportUnknown(reading, { name: other, path: at, what: 'appliance', known });
    return [];
  });
}

/** Everything that hangs on one vent shares it, whoever says so. */
function onSameVent(start: string, appliances: readonly Appliance[]): readonly string[] {
  const found = new Set([start]);
  for (const id of found) {
    for (const each of appliances) {
      if (each.id === id) for (const other of each.sharesVentWith) found.add(other);
      if (each.sharesVentWith.includes(id)) found.add(each.id);
    }
  }
  found.delete(start);
  return appliances.map(({ id }) => id).filter((id) => found.has(id));
}
