import {
  flueLossCoefficient,
  type FlueComponentCounts,
  type FlueConstructionName,
} from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { FlueInFile } from '../file/flue-file.js';
import type { FlueSection } from '../flue.js';
import type { VentType } from '../house.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/** Connector of a gas or oil appliance where none is given [m]. */
const assumedConnector = { lengthM: 1.5, riseM: 0.3, elbows: 2 };

/** The stretches of a flue, and its clear area where the appliance is connected. */
export interface FlueSections {
  readonly connector: readonly FlueSection[];
  readonly chimney: readonly FlueSection[];
  readonly collarAreaM2: number;
  readonly collarDiameterM: number;
}

/** A flue as it stands in the file, with what it belongs to. */
export interface TypedFlue {
  readonly inFile: FlueInFile;
  readonly vent: VentType;
  readonly path: IssuePath;
  /** Whether another appliance stands on the same chimney. */
  readonly shared: boolean;
  readonly hasDraftHood: boolean;
}

/**
 * Reads the stretches of a flue.
 *
 * @param reading - where issues and assumptions are collected
 * @param flue - what the file says, and what it belongs to
 * @returns its stretches; `undefined` where its size is missing or wrong, which is then reported
 */
export function readFlueSections(reading: Reading, flue: TypedFlue): FlueSections | undefined {
  const { inFile, vent, path, shared, hasDraftHood } = flue;
  const own = readSize(reading, flue);
  if (own === undefined) return undefined;
  const connected = vent !== 'open hearth';
  const connectorSize = roundSize(inFile.connector?.diameter) ?? own;
  const entry: FlueComponentCounts = hasDraftHood ? { 'draft hood': 1 } : { 'leaving velocity': 1 };
  const connector = connected
    ? readConnector(reading, flue, { size: connectorSize, entry })
    : undefined;
  if (connected && connector === undefined) return undefined;
  if (!connected && inFile.connector !== undefined) {
    const parameters = { key: 'connector', way: `vent: ${vent}` };
    report(reading, [...path, 'connector'], { code: 'key.without-effect', parameters });
    return undefined;
  }
  const chimney =
    inFile.height === undefined
      ? []
      : readChimney(reading, flue, {
          heightM: inFile.height,
          size: own,
          entry: connected ? (shared ? { tee: 1 } : {}) : entry,
        });
  return {
    connector: connector === undefined ? [] : [connector],
    chimney,
    collarAreaM2: connectorSize.areaM2,
    collarDiameterM: connectorSize.hydraulicDiameterM,
  };
}

type Size = Pick<FlueSection, 'hydraulicDiameterM' | 'areaM2'>;

function readSize(reading: Reading, { inFile, path }: TypedFlue): Size | undefined {
  const { diameter, size } = inFile;
  if (diameter !== undefined && size !== undefined) {
    const parameters = { key: 'size', way: 'diameter' };
    report(reading, [...path, 'size'], { code: 'key.without-effect', parameters });
    return undefined;
  }
  if (size !== undefined) {
    const [width, depth] = size;
    return {
      areaM2: width * depth,
      hydraulicDiameterM: (2 * width * depth) / (width + depth),
    };
  }
  const round = roundSize(diameter);
  if (round === undefined) report(reading, path, { code: 'flue.size-missing', parameters: {} });
  return round;
}

function roundSize(diameterM: number | undefined): Size | undefined {
  if (diameterM === undefined) return undefined;
  return { hydraulicDiameterM: diameterM, areaM2: (Math.PI / 4) * diameterM ** 2 };
}

function readConnector(
  reading: Reading,
  { inFile, path }: TypedFlue,
  of: { readonly size: Size; readonly entry: FlueComponentCounts },
): FlueSection | undefined {
  const origin = originOf(path);
  const typed = inFile.connector ?? {};
  const lengthM = givenOr(reading, typed.length, {
    origin,
    what: 'length of its connector',
    value: { si: Math.max(assumedConnector.lengthM, typed.rise ?? 0), dimension: 'length' },
    source: ourChoice('an appliance that stands close to its chimney'),
  });
  const riseM = givenOr(reading, typed.rise, {
    origin,
    what: 'rise of its connector',
    value: { si: Math.min(assumedConnector.riseM, lengthM), dimension: 'length' },
    source: ourChoice('1 ft, the least that installers aim at'),
  });
  if (riseM > lengthM) {
    const parameters = { riseM, lengthM };
    report(reading, [...path, 'connector', 'rise'], {
      code: 'flue.connector-too-short',
      parameters,
    });
    return undefined;
  }
  return {
    ...of.size,
    lengthM,
    riseM,
    stands: 'indoors',
    construction: readWall(reading, origin, {
      given: typed.construction,
      what: 'wall of its connector',
      assumed: 'single-wall metal',
    }),
    lossCoefficient: flueLossCoefficient({
      ...of.entry,
      ...readFittings(reading, typed, {
        origin,
        what: 'elbows of its connector',
        assumedElbows: assumedConnector.elbows,
      }),
    }),
  };
}

function readChimney(
  reading: Reading,
  { inFile, vent, path }: TypedFlue,
  of: { readonly heightM: number; readonly size: Size; readonly entry: FlueComponentCounts },
): readonly FlueSection[] {
  const { heightM, size, entry } = of;
  const origin = originOf(path);
  const gas = vent === 'natural draft' || vent === 'fan assisted' || vent === 'induced draft';
  const construction = readWall(reading, origin, {
    given: inFile.construction,
    what: 'wall of its chimney',
    assumed: gas
      ? 'double-wall gas vent'
      : vent === 'open hearth'
        ? 'masonry, tile-lined'
        : 'insulated metal chimney',
  });
  const share = givenOr(reading, inFile.exteriorShare, {
    origin,
    what: 'share of its chimney that stands outdoors',
    value: { si: 0, dimension: 'ratio' },
    source: ourChoice('a chimney inside the house, whose end above the roof is short'),
  });
  const cap = inFile.cap ?? (vent === 'open hearth' ? 'open top' : 'low-resistance cap');
  if (inFile.cap === undefined) {
    const source = ourChoice('the usual top of such a chimney');
    reading.assumptions.push({ origin, what: 'top of its chimney', value: cap, source });
  }
  const counts = readFittings(reading, inFile, {
    origin,
    what: 'elbows of its chimney',
    assumedElbows: 0,
  });
  const section = (
    stands: FlueSection['stands'],
    part: number,
    components: FlueComponentCounts,
  ): FlueSection => ({
    ...size,
    lengthM: part * heightM,
    riseM: part * heightM,
    stands,
    construction,
    lossCoefficient: flueLossCoefficient(components),
  });
  const top: FlueComponentCounts = { ...counts, [cap]: 1 };
  if (share <= 0) return [section('indoors', 1, sumOf(entry, top))];
  if (share >= 1) return [section('outdoors', 1, sumOf(entry, top))];
  return [section('indoors', 1 - share, entry), section('outdoors', share, top)];
}

function sumOf(one: FlueComponentCounts, other: FlueComponentCounts): FlueComponentCounts {
  const names = new Set([...Object.keys(one), ...Object.keys(other)]) as Set<keyof typeof one>;
  return Object.fromEntries(
    [...names].map((name) => [name, (one[name] ?? 0) + (other[name] ?? 0)]),
  );
}

function readFittings(
  reading: Reading,
  typed: {
    readonly elbows?: number | undefined;
    readonly halfElbows?: number | undefined;
    readonly tees?: number | undefined;
  },
  of: { readonly origin: string; readonly what: string; readonly assumedElbows: number },
): FlueComponentCounts {
  const { halfElbows = 0, tees = 0 } = typed;
  const said =
    typed.elbows !== undefined || typed.halfElbows !== undefined || typed.tees !== undefined;
  const elbows = said
    ? (typed.elbows ?? 0)
    : givenOr(reading, undefined, {
        origin: of.origin,
        what: of.what,
        value: { si: of.assumedElbows, dimension: 'ratio' },
        source: ourChoice('as many as such a flue usually has'),
      });
  return { 'elbow 90': elbows, 'elbow 45': halfElbows, tee: tees };
}

function readWall(
  reading: Reading,
  origin: string,
  wall: {
    readonly given: FlueConstructionName | undefined;
    readonly what: string;
    readonly assumed: FlueConstructionName;
  },
): FlueConstructionName {
  if (wall.given !== undefined) return wall.given;
  const source = ourChoice('the usual wall of such a flue');
  reading.assumptions.push({ origin, what: wall.what, value: wall.assumed, source });
  return wall.assumed;
}
