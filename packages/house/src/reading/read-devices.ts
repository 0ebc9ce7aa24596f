import { suggest, type IssuePath } from '@evendraft/text';
import {
  deviceFlow,
  exhaustMap,
  supplyMap,
  speedFile,
  type DeviceInFile,
} from '../file/device-file.js';
import { checkName } from '../file/schema/item-name.js';
import { shapeOf } from '../file/schema/shape-of.js';
import { plainWord } from '../file/schema/word.js';
import type { Device, DeviceKind, DeviceSpeed, TestPreparation } from '../house.js';
import { kindNames } from '../kind-names.js';
import { reportUnknown } from './house-names.js';
import { readDeviceLaws, type NamedSpeed } from './read-device-laws.js';
import { hasPath, readDevicePath, reportKeysWithoutDuct } from './read-device-path.js';
import { placeOfDevice } from './read-device-place.js';
import { readDiffuser } from './read-diffuser.js';
import { readInterlock } from './read-interlock.js';
import { readKind } from './read-kind.js';
import { readOffLaw } from './read-off-law.js';
import type { HouseSoFar } from './read-place.js';
import type { RawItem } from './read-section.js';
import { readStand } from './read-stand.js';
import { originOf, readValue, report, type Reading } from './reading.js';

/**
 * Reads the devices of one section.
 *
 * @param reading - where issues and assumptions are collected
 * @param items - items of the section
 * @param house - zones, names, the preparation of the test, and which section it is
 * @returns devices in the order of the file; wrong ones are left out
 */
export function readDevices(
  reading: Reading,
  items: readonly RawItem[],
  house: HouseSoFar & {
    readonly preparation: ReadonlyMap<string, TestPreparation>;
    readonly section: 'exhaust' | 'supply';
    /** Altitude of the house [m]. */
    readonly altitudeM: number;
  },
): readonly Device[] {
  return items.flatMap((item) => {
    const device = readDevice(reading, item, house);
    return device === undefined ? [] : [device];
  });
}

function readDevice(
  reading: Reading,
  item: RawItem,
  house: Parameters<typeof readDevices>[2],
): Device | undefined {
  const { name, path } = item;
  const { section } = house;
  const typed = readTyped(reading, item, section);
  const given = typed?.inFile.kind;
  const kind = readKind<DeviceKind>(reading, kindNames[section], { name, path, given });
  if (typed === undefined || kind === undefined) return undefined;
  const { inFile, speeds } = typed;

  const place = placeOfDevice(reading, house, { inFile, path, kind });
  const { altitudeM } = house;
  const built =
    place === 'indoors' ? [] : readDeviceLaws(reading, { inFile, speeds, kind, path, altitudeM });
  const laws = built && upToCap(reading, built, { inFile, path });
  const duringTest = readStand(reading, house.preparation, {
    name,
    path,
    given: inFile.duringTest,
    assumed: 'closed',
    matters: inFile.closedLeakage !== undefined,
  });
  reportKeysWithoutDuct(reading, inFile, path);
  if (laws?.length === 0 && hasPath(inFile)) {
    const key = inFile.duct === undefined ? 'damper' : 'duct';
    const parameters = { key, way: place === 'indoors' ? 'to: indoors' : `kind: ${kind}` };
    report(reading, [...path, key], { code: 'key.without-effect', parameters });
  }
  const topFlowM3PerS = built?.at(-1)?.ratedFlowM3PerS;
  const series =
    hasPath(inFile) && topFlowM3PerS !== undefined
      ? readDevicePath(reading, {
          inFile,
          name,
          path,
          direction: section,
          topFlowM3PerS,
          duringTest,
          names: house.names,
          altitudeM,
        })
      : undefined;
  const offLaw = hasPath(inFile)
    ? undefined
    : readOffLaw(reading, { inFile, path, duringTest, hasFlow: laws?.length !== 0 });
  const interlock = readInterlock(reading, house.names, {
    inFile: inFile.interlock,
    path: [...path, 'interlock'],
    name,
  });
  if (inFile.interlock !== undefined && inFile.continuous === true) {
    report(reading, [...path, 'continuous'], {
      code: 'interlock.and-continuous',
      parameters: { name },
    });
  }
  if (place === undefined || laws === undefined) return undefined;
  if (hasPath(inFile) && laws.length > 0 && series === undefined) return undefined;
  return {
    id: name,
    origin: originOf(path),
    kind,
    direction: section,
    ...(place === 'indoors' ? indoorsOf(house) : place),
    speeds: laws,
    ...(offLaw === undefined ? {} : { offLaw }),
    ...series,
    ...readDiffuser(inFile),
    duringTest,
    ...(interlock === undefined ? {} : { interlock }),
    continuous: inFile.continuous ?? false,
  };
}

/** The speeds up to that at which a control caps the device; `undefined` where it has no such speed. */
function upToCap(
  reading: Reading,
  built: readonly DeviceSpeed[],
  { inFile: { cappedAt }, path }: { readonly inFile: DeviceInFile; readonly path: IssuePath },
): readonly DeviceSpeed[] | undefined {
  if (cappedAt === undefined) return built;
  const names = built.map(({ name }) => name);
  const place = names.indexOf(cappedAt);
  if (place >= 0) return built.slice(0, place + 1);
  const at = [...path, 'cappedAt'];
  reportUnknown(reading, { name: cappedAt, path: at, what: 'speed', known: names });
  return undefined;
}

/** Where a device stands that moves air about inside its room only. */
function indoorsOf({ names }: HouseSoFar): Pick<Device, 'zone' | 'to' | 'heightM'> {
  return { zone: names.zones[0] ?? '', to: { kind: 'outdoors' }, heightM: 0 };
}

/** A device as typed: everything but its speeds, and its speeds in the order of the file. */
interface TypedDevice {
  readonly inFile: DeviceInFile;
  readonly speeds: readonly NamedSpeed[];
}

/** The only speed of a device that has one. */
const onlySpeed = 'on';

/** The most speeds of a device; our choice. */
const mostSpeeds = 20;

/** Names of speeds that are never taken for a slip of another key. */
const usualSpeeds = [
  'low',
  'medium',
  'high',
  'boost',
  'max',
  'min',
  'normal',
  'quiet',
  'on',
  'top',
];

function readTyped(
  reading: Reading,
  { name, path, raw }: RawItem,
  section: 'exhaust' | 'supply',
): TypedDevice | undefined {
  const full = section === 'exhaust' ? exhaustMap : supplyMap;
  if (shapeOf(raw) === 'nothing') {
    // A dryer that exhausts nothing has nothing to say.
    const kinds: Readonly<Record<string, DeviceKind>> = kindNames[section];
    if (kinds[plainWord(name)] === 'condensing dryer') return { inFile: {}, speeds: [] };
  }
  if (shapeOf(raw) !== 'map') {
    const flow = readValue(reading, deviceFlow, { path, raw });
    if (flow === undefined) return undefined;
    return { inFile: {}, speeds: [{ name: onlySpeed, path, inFile: flow }] };
  }
  const { known, speedsBeside } = splitKeys(
    raw as Record<string, unknown>,
    Object.keys(full.shape),
  );
  const inFile = readValue(reading, full, { path, raw: known });
  if (inFile === undefined) return undefined;
  const beside = Object.keys(speedsBeside);
  const ways = [
    ...(['flow', 'speeds', 'curve'] as const).filter((key) => inFile[key] !== undefined),
    ...beside.slice(0, 1),
  ];
  if (ways.length > 1) {
    report(reading, [...path, ways[1] as string], {
      code: 'device.several-flows',
      parameters: { keys: ways },
    });
    return undefined;
  }
  // Speeds are read one by one, so that each name is checked and keeps its place.
  const speeds =
    beside.length > 0
      ? readSpeeds(reading, speedsBeside, path)
      : inFile.speeds !== undefined
        ? readSpeeds(reading, known['speeds'] as Record<string, unknown>, [...path, 'speeds'])
        : ways.length === 0
          ? []
          : [onlySpeedOf(inFile, path)];
  return speeds === undefined ? undefined : { inFile, speeds };
}

/**
 * Splits what stands under a device into keys that describe it and speeds beside them:
 * `{ low: 250 cfm, high: 900 cfm, zone: kitchen }`. A near miss of a key, or what holds no flow, stays
 * with the keys and is refused there.
 */
function splitKeys(
  raw: Readonly<Record<string, unknown>>,
  keys: readonly string[],
): {
  readonly known: Readonly<Record<string, unknown>>;
  readonly speedsBeside: Readonly<Record<string, unknown>>;
} {
  const describes = Object.keys(raw).some((key) => keys.includes(key));
  const isSpeed = (key: string, value: unknown): boolean => {
    if (keys.includes(key)) return false;
    if (usualSpeeds.includes(plainWord(key))) return true;
    if (suggest(key, keys) !== undefined) return false;
    // Where nothing else describes the device, any name is that of a speed.
    return !describes || startsAsQuantity(value) || shapeOf(value) === 'map';
  };
  const entries = Object.entries(raw);
  return {
    known: Object.fromEntries(entries.filter(([key, value]) => !isSpeed(key, value))),
    speedsBeside: Object.fromEntries(entries.filter(([key, value]) => isSpeed(key, value))),
  };
}

/** The only speed of a device that gives one flow or one curve. */
function onlySpeedOf({ flow, curve }: DeviceInFile, path: IssuePath): NamedSpeed {
  if (flow !== undefined) return { name: onlySpeed, path: [...path, 'flow'], inFile: flow };
  return { name: onlySpeed, path: [...path, 'curve'], inFile: { curve } };
}

function readSpeeds(
  reading: Reading,
  raw: Readonly<Record<string, unknown>>,
  path: IssuePath,
): readonly NamedSpeed[] | undefined {
  const count = Object.keys(raw).length;
  if (count > mostSpeeds) {
    report(reading, path, {
      code: 'section.too-many',
      parameters: { found: count, allowed: mostSpeeds },
    });
    return undefined;
  }
  const before = reading.issues.length;
  const names = new Map<string, string>();
  const speeds = Object.entries(raw).flatMap(([key, value]) => {
    const at = [...path, key];
    const name = checkSpeedName(reading, key, { path: at, names });
    const inFile = readValue(reading, speedFile, { path: at, raw: value });
    return name === undefined || inFile === undefined ? [] : [{ name, path: at, inFile }];
  });
  if (count === 0) {
    report(reading, path, { code: 'value.empty', parameters: { accepted: ['{ high: 900 cfm }'] } });
  }
  return reading.issues.length === before ? speeds : undefined;
}

function startsAsQuantity(value: unknown): boolean {
  return typeof value === 'number' || (typeof value === 'string' && /^[+-]?[\d.]/.test(value));
}

function checkSpeedName(
  reading: Reading,
  key: string,
  at: { readonly path: IssuePath; readonly names: Map<string, string> },
): string | undefined {
  const checked = checkName(key);
  if (!checked.ok) {
    for (const problem of checked.problems) report(reading, at.path, problem);
    return undefined;
  }
  const plain = plainWord(checked.value);
  const other = at.names.get(plain);
  if (other !== undefined) {
    report(reading, at.path, { code: 'name.duplicate', parameters: { name: key, other } });
    return undefined;
  }
  at.names.set(plain, checked.value);
  if (plain === 'off') {
    const parameters = { name: key, reason: '"off" is what a device is when it does not run' };
    report(reading, at.path, { code: 'name.reserved', parameters });
    return undefined;
  }
  return checked.value;
}
