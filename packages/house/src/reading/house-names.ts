import { suggest, type IssuePath } from '@evendraft/text';
import type { Face, Outlet } from '../house.js';
import { ranges } from '../file/ranges.js';
import { readQuantity } from '../file/schema/quantity.js';
import { plainWord } from '../file/schema/word.js';
import { sections, type RawItem, type SectionKey } from './read-section.js';
import { report, type Reading } from './reading.js';

/** The items of every section as they stand in the file, wrong ones included. */
export type FileItems = Readonly<Record<SectionKey, readonly RawItem[]>>;

/** Every name of the house, so that a reference can be checked even where the item itself is wrong. */
export interface HouseNames {
  readonly zones: readonly string[];
  readonly surroundings: readonly string[];
  /** Devices, ventilators, air handlers and appliances, which can drive others. */
  readonly drivers: readonly string[];
  /** Openings, combustion air, forced-air systems and appliances with flues, whose stand during a test counts. */
  readonly openings: readonly string[];
  readonly makeUp: readonly string[];
  readonly devices: readonly string[];
  readonly appliances: readonly string[];
  /** Azimuth of the front, for places that are given by the compass [°]. */
  readonly frontFacesDeg: number;
}

/** The name of the only zone of a house without a list of zones. */
export const onlyZone = 'house';

/** Word for a device that gives its air back to the house. */
export const indoorsWord = 'indoors';

/** Words for where an opening ends that no zone or surrounding can have as its name. */
const outletWords: Readonly<Record<string, Outlet>> = {
  outdoors: { kind: 'outdoors' },
  outside: { kind: 'outdoors' },
  outdoor: { kind: 'outdoors' },
  front: { kind: 'face', face: 'front' },
  right: { kind: 'face', face: 'right' },
  back: { kind: 'face', face: 'back' },
  rear: { kind: 'face', face: 'back' },
  left: { kind: 'face', face: 'left' },
  roof: { kind: 'roof' },
};

/** Sections whose items may be named together, in an interlock or in the preparation of a test. */
const things: readonly SectionKey[] = [
  'exhaust',
  'supply',
  'makeUp',
  'ventilators',
  'forcedAir',
  'openings',
  'combustionAir',
  'doors',
  'appliances',
];

/**
 * Collects every name and reports those that cannot be used: taken twice, or with a meaning of their own.
 *
 * @param reading - where issues are collected
 * @param items - items of every section
 * @param frontFacesDeg - azimuth of the front [°]
 * @returns the names
 */
export function readNames(reading: Reading, items: FileItems, frontFacesDeg: number): HouseNames {
  reportDuplicates(reading, [...items.zones, ...items.surroundings]);
  reportDuplicates(
    reading,
    things.flatMap((section) => items[section]),
  );
  for (const item of Object.values(items).flat()) {
    // Outdoors, its faces and the roof are written with this sign inside a network.
    if (item.name.startsWith('@')) {
      const parameters = { name: item.name, reason: 'names do not begin with @' };
      report(reading, item.path, { code: 'name.reserved', parameters });
    }
  }
  for (const { name, path } of [...items.zones, ...items.surroundings]) {
    if (Object.hasOwn(outletWords, plainWord(name)) || plainWord(name) === indoorsWord) {
      const reason = `"${plainWord(name)}" already says where an opening ends`;
      report(reading, path, { code: 'name.reserved', parameters: { name, reason } });
    }
  }
  const names = (section: SectionKey): readonly string[] => items[section].map(({ name }) => name);
  const devices = [...names('exhaust'), ...names('supply')];
  return {
    zones: items.zones.length === 0 ? [onlyZone] : names('zones'),
    surroundings: names('surroundings'),
    drivers: [...devices, ...names('ventilators'), ...names('forcedAir'), ...names('appliances')],
    openings: [
      ...names('openings'),
      ...names('combustionAir'),
      ...names('forcedAir'),
      ...items.appliances.filter(({ raw }) => hasFlue(raw)).map(({ name }) => name),
    ],
    makeUp: names('makeUp'),
    devices,
    appliances: names('appliances'),
    frontFacesDeg,
  };
}

function hasFlue(raw: unknown): boolean {
  return typeof raw === 'object' && raw !== null && 'flue' in raw;
}

/**
 * The zone that a reference names.
 *
 * @param reading - where issues are collected
 * @param names - every name of the house
 * @param reference - the name as typed, and where
 * @returns the name; `undefined` if there is no such zone, which is then reported
 */
export function findZone(
  reading: Reading,
  names: HouseNames,
  reference: { readonly name: string; readonly path: IssuePath },
): string | undefined {
  if (names.zones.includes(reference.name)) return reference.name;
  reportUnknown(reading, { ...reference, what: 'zone', known: names.zones });
  return undefined;
}

/**
 * The outlet that a reference names: outdoors, a face, also by its azimuth, the roof, a zone or a surrounding.
 *
 * @param reading - where issues are collected
 * @param names - every name of the house
 * @param reference - the name as typed, and where
 * @returns the outlet; `undefined` if there is no such place, which is then reported
 */
export function findOutlet(
  reading: Reading,
  names: HouseNames,
  reference: { readonly name: string; readonly path: IssuePath },
): Outlet | undefined {
  const { name } = reference;
  if (names.zones.includes(name)) return { kind: 'zone', zone: name };
  if (names.surroundings.includes(name)) return { kind: 'surrounding', surrounding: name };
  const plain = plainWord(name);
  const outdoors = Object.hasOwn(outletWords, plain) ? outletWords[plain] : undefined;
  if (outdoors) return outdoors;
  const azimuth = readQuantity(name, { dimension: 'angle', allowed: ranges.angle, examples: [] });
  if (azimuth.ok) return { kind: 'face', face: faceTo(azimuth.value - names.frontFacesDeg) };
  const words = ['outdoors', 'front', 'right', 'back', 'left', 'roof'];
  const known = [...words, ...names.zones, ...names.surroundings];
  reportUnknown(reading, { ...reference, what: 'place', known });
  return undefined;
}

/** The face whose outward normal is nearest to a direction, clockwise from the front [°]. */
function faceTo(turnedDeg: number): Face {
  const faces = ['front', 'right', 'back', 'left'] as const;
  const quarter = ((Math.round(turnedDeg / 90) % 4) + 4) % 4;
  return faces[quarter]!;
}

/**
 * Reports a name that nothing has.
 *
 * @param reading - where issues are collected
 * @param reference - the name, where it stands, what it should name, and every name of that sort
 */
export function reportUnknown(
  reading: Reading,
  reference: {
    readonly name: string;
    readonly path: IssuePath;
    readonly what: string;
    readonly known: readonly string[];
  },
): void {
  const { name, path, what, known } = reference;
  const suggestion = suggest(name, known);
  report(reading, path, {
    code: 'reference.unknown',
    parameters: {
      what,
      found: name,
      known: known.slice(0, 30),
      ...(suggestion === undefined ? {} : { suggestion }),
    },
  });
}

function reportDuplicates(reading: Reading, items: readonly RawItem[]): void {
  const first = new Map<string, RawItem>();
  for (const item of items) {
    const plain = plainWord(item.name);
    const before = first.get(plain);
    if (before === undefined) {
      first.set(plain, item);
      continue;
    }
    const other = `${sections[before.path[0] as SectionKey].key}.${before.name}`;
    const parameters = { name: item.name, other };
    report(reading, item.path, { code: 'name.duplicate', parameters });
  }
}
