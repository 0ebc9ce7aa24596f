import { textDigest, type Issue } from '@evendraft/text';
import { checkCompiled } from './checks/check-compiled.js';
import { checkConnections } from './checks/check-connections.js';
import { checkInterlocks } from './checks/check-interlocks.js';
import { checkMagnitudes } from './checks/check-magnitudes.js';
import { checkPlenums } from './checks/check-plenums.js';
import { houseFile } from './file/house-file.js';
import { unknownKey } from './file/schema/part.js';
import { shapeOf, shapeWords } from './file/schema/shape-of.js';
import type { House } from './house.js';
import { canonicalJson } from './internal/canonical-json.js';
import { readNames, type FileItems } from './reading/house-names.js';
import { readAirtightness } from './reading/read-airtightness.js';
import { readAppliances } from './reading/read-appliances.js';
import { readBasics } from './reading/read-basics.js';
import { readCombustionAir } from './reading/read-combustion-air.js';
import { readDevices } from './reading/read-devices.js';
import { readDoors } from './reading/read-doors.js';
import { readForcedAir } from './reading/read-forced-air.js';
import { readLeakShares } from './reading/read-leak-shares.js';
import { readMakeUp } from './reading/read-make-up.js';
import { readOpenings } from './reading/read-openings.js';
import { readSection, sections, type SectionKey } from './reading/read-section.js';
import { readSurroundings } from './reading/read-surroundings.js';
import { readVentilators } from './reading/read-ventilators.js';
import { readVolume } from './reading/read-volume.js';
import { readWeathers } from './reading/read-weathers.js';
import { readWind } from './reading/read-wind.js';
import { readZones } from './reading/read-zones.js';
import { readValue, report, startReading, type Reading } from './reading/reading.js';

/** A house with what is unusual about it, or everything that is wrong. */
export type HouseResult =
  | {
      readonly ok: true;
      readonly house: House;
      /** Nothing that stops the work. */
      readonly warnings: readonly Issue[];
    }
  | {
      readonly ok: false;
      /** Errors, and warnings besides. */
      readonly issues: readonly Issue[];
    };

/** How a house is read from data. */
export interface ParseHouseOptions {
  /** Digest of the text that the data came from; that of its canonical JSON when absent. */
  readonly digest?: string;
}

/**
 * A house from the data of a house file: what JSON or YAML gives, or an object of the same form.
 *
 * Everything that is wrong is reported at once, each with its path; nothing is thrown. What the data do
 * not give and a study needs is assumed and listed in the house.
 *
 * @param value - the data
 * @param options - the digest of their text, if they came from one
 * @returns the house with warnings, or all issues
 *
 * @example
 * const result = parseHouse({
 *   evendraft: 1,
 *   name: 'Alder Row 14',
 *   floorArea: '2180 ft2',
 *   airtightness: '310 cfm at 50 Pa',
 * });
 * result.ok && result.house.zones.length; // => 1
 */
export function parseHouse(value: unknown, options: ParseHouseOptions = {}): HouseResult {
  const reading = startReading();
  const root = readRoot(reading, value);
  const house = root === undefined ? undefined : readHouseParts(reading, root);
  if (house === undefined) return { ok: false, issues: reading.issues };
  const digest = options.digest ?? textDigest(canonicalJson(value));
  const { assumptions, issues } = reading;
  const signed: House = { ...house, assumptions, digest };
  if (!hasError(reading)) checkCompiled(reading, signed);
  return hasError(reading) ? { ok: false, issues } : { ok: true, house: signed, warnings: issues };
}

function hasError(reading: Reading): boolean {
  return reading.issues.some(({ severity }) => severity === 'error');
}

/** The file as a map of this version's keys; `undefined` where reading on would only confuse. */
function readRoot(reading: Reading, value: unknown): Readonly<Record<string, unknown>> | undefined {
  const shape = shapeOf(value);
  if (shape === 'nothing') {
    report(reading, [], { code: 'house.empty', parameters: {} });
    return undefined;
  }
  if (shape !== 'map') {
    report(reading, [], { code: 'house.not-a-map', parameters: { found: shapeWords[shape] } });
    return undefined;
  }
  const root = value as Readonly<Record<string, unknown>>;
  if (Object.keys(root).length === 0) {
    report(reading, [], { code: 'house.empty', parameters: {} });
    return undefined;
  }
  const known = Object.keys(houseFile.shape);
  const version = readValue(reading, houseFile.shape.evendraft, {
    path: ['evendraft'],
    raw: root['evendraft'],
  });
  // Of another version no key can be judged.
  if (version === undefined && shapeOf(root['evendraft']) !== 'nothing') return undefined;
  for (const key of Object.keys(root)) {
    if (!known.includes(key)) report(reading, [], unknownKey(key, known));
  }
  return root;
}

type UnsignedHouse = Omit<House, 'assumptions' | 'digest'>;

function readHouseParts(
  reading: Reading,
  root: Readonly<Record<string, unknown>>,
): UnsignedHouse | undefined {
  const items = Object.fromEntries(
    (Object.keys(sections) as SectionKey[]).map((key) => [key, readSection(reading, root, key)]),
  ) as unknown as FileItems;
  const basics = readBasics(reading, root);
  const names = readNames(reading, items, basics.frontFacesDeg);
  const zones = readZones(reading, items.zones, basics);
  const zonesAreWhole = zones.length === names.zones.length;
  const volume = readVolume(reading, basics, zones);

  const tightness = readAirtightness(reading, root, {
    names,
    zones,
    knownVolumeM3: volume?.assumed === false ? volume.volumeM3 : undefined,
  });
  const surroundings = readSurroundings(reading, items.surroundings, basics);
  const leakShares = zonesAreWhole ? readLeakShares(reading, zones, names) : [];
  const preparation = tightness?.preparation ?? new Map<string, never>();
  const around = { names, zones, preparation, altitudeM: basics.altitudeM };
  const openings = [
    ...readOpenings(reading, items.openings, around),
    ...readCombustionAir(reading, items.combustionAir, around),
  ];
  const doors = readDoors(reading, items.doors, around);
  const devices = [
    ...readDevices(reading, items.exhaust, { ...around, section: 'exhaust' }),
    ...readDevices(reading, items.supply, { ...around, section: 'supply' }),
  ];
  const makeUpOpenings = readMakeUp(reading, items.makeUp, around);
  const ventilators = readVentilators(reading, items.ventilators, around);
  const forcedAir = readForcedAir(reading, items.forcedAir, around);
  const appliances = readAppliances(reading, items.appliances, around);
  const wind = readWind(
    reading,
    root,
    zones.map(({ zone }) => zone),
  );
  const saysWind = root['wind'] !== undefined;
  const weathers = readWeathers(reading, root, { basics, wind, saysWind });
  checkInterlocks(reading, { devices, makeUpOpenings, ventilators, forcedAir, appliances });
  checkPlenums(reading, devices, makeUpOpenings);

  const { name, floorAreaM2 } = basics;
  if (
    hasError(reading) ||
    name === undefined ||
    floorAreaM2 === undefined ||
    volume === undefined
  ) {
    return undefined;
  }
  if (tightness === undefined) return undefined;
  checkConnections(reading, { zones, leakShares, openings, doors, forcedAir });
  const house: UnsignedHouse = {
    name,
    floorAreaM2,
    volumeM3: volume.volumeM3,
    altitudeM: basics.altitudeM,
    frontFacesDeg: basics.frontFacesDeg,
    sideRatio: basics.sideRatio,
    ...(wind === undefined ? {} : { wind: wind.exposure }),
    zones: zones.map(({ zone }) => zone),
    surroundings,
    airtightness: tightness.airtightness,
    leakShares,
    openings,
    doors,
    devices,
    makeUpOpenings,
    ventilators,
    ...(forcedAir.length === 0 ? {} : { forcedAir }),
    appliances,
    weathers,
  };
  checkMagnitudes(reading, house, zones);
  return house;
}
