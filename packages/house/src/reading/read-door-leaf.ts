import type { DoorwayDescription, FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { DoorInFile } from '../file/door-file.js';
import { assumedDischargeCoefficient, louvreFreeShare } from '../file/opening-law.js';
import type { DoorPart, Zone } from '../house.js';
import { readDuct } from './read-duct.js';
import { checkLaw } from './read-law.js';
import { givenOr, originOf, report, type Reading } from './reading.js';
import { dischargeSource, louvreSource, ourChoice } from './sources.js';

/** Clear size of an open door where none is given [m]. */
const assumedWidthM = 0.9;
const assumedHeightM = 2;

/** Free area under a shut door where none is given: 12 in2 [m2]. */
const assumedUndercutM2 = 12 * 0.0254 ** 2;

/**
 * The doorway that an open door, an archway or a stair opening leaves.
 *
 * @param reading - where assumptions are collected
 * @param door - what the file says, and its origin
 * @returns the law, from the floor up
 */
export function readOpenDoor(
  reading: Reading,
  door: { readonly inFile: DoorInFile; readonly origin: string },
): DoorwayDescription {
  const { inFile, origin } = door;
  const { width, height, dischargeCoefficient } = inFile.open ?? {};
  const size = (what: string, given: number | undefined, si: number): number =>
    givenOr(reading, given, {
      origin,
      what: `clear ${what} when open`,
      value: { si, dimension: 'length' },
      source: ourChoice('0.9 by 2.0 m, a usual interior door'),
    });
  const widthM = size('width', width, assumedWidthM);
  const heightM = size('height', height, assumedHeightM);
  if (inFile.kind === 'stair opening') {
    reading.assumptions.push({
      origin,
      what: 'direction of the opening',
      value: 'upright, at the upper floor',
      source: ourChoice('air passes the foot or the head of a stair sideways'),
    });
  }
  return {
    kind: 'doorway',
    widthM,
    heightM,
    dischargeCoefficient: assumedCoefficient(reading, origin, dischargeCoefficient),
  };
}

/**
 * What a shut door leaves: its undercut, a grille, louvres.
 *
 * @param reading - where issues and assumptions are collected
 * @param door - what the file says, where it stands, and its open doorway
 * @returns the law of the undercut, where it can be computed with, and what passes air besides
 */
export function readShutDoor(
  reading: Reading,
  door: {
    readonly inFile: DoorInFile;
    readonly path: IssuePath;
    readonly opening: DoorwayDescription;
  },
): { readonly shut: FlowLawDescription | undefined; readonly parts: readonly DoorPart[] } {
  const { inFile, path, opening } = door;
  const origin = originOf(path);
  const undercut = givenOr(reading, undercutArea(inFile), {
    origin,
    what: 'free area under the shut door',
    value: { si: assumedUndercutM2, dimension: 'area' },
    source: ourChoice('a gap of 3/8 in under a door of 32 in'),
  });
  const shut = checkLaw(reading, path, orifice(undercut));
  return {
    shut,
    parts: [
      ...readGrille(reading, { inFile, path, doorHeightM: opening.heightM }),
      ...readLouvre(reading, { inFile, path, doorHeightM: opening.heightM }),
    ],
  };
}

/**
 * An archway or a stair opening: what belongs to a leaf is reported, and shut is as open.
 *
 * @param reading - where issues are collected
 * @param door - what the file says, its kind, where it stands, and the law of the open one
 * @returns the law of the open one
 */
export function withoutLeaf(
  reading: Reading,
  door: {
    readonly inFile: DoorInFile;
    readonly kind: string;
    readonly path: IssuePath;
    readonly open: FlowLawDescription | undefined;
  },
): FlowLawDescription | undefined {
  const { inFile, kind, path, open } = door;
  for (const key of ['undercut', 'grille', 'louvre'] as const) {
    if (inFile[key] === undefined) continue;
    const parameters = { key, way: `kind: ${kind}` };
    report(reading, [...path, key], { code: 'key.without-effect', parameters });
  }
  return open;
}

/**
 * A duct that leads from ceiling to ceiling beside the door, whatever its position.
 *
 * @param reading - where issues and assumptions are collected
 * @param door - what the file says, where it stands, and the rooms on both sides
 * @returns the duct, where there is one
 */
export function readJumpDuct(
  reading: Reading,
  door: {
    readonly inFile: DoorInFile;
    readonly path: IssuePath;
    readonly rooms: readonly Zone[];
  },
): readonly DoorPart[] {
  const { inFile, path, rooms } = door;
  if (inFile.jumpDuct === undefined) return [];
  const duct = readDuct(reading, {
    inFile: inFile.jumpDuct,
    path: [...path, 'jumpDuct'],
    name: 'jump duct',
    begins: true,
    ends: true,
    outside: 'end',
  });
  if (duct === undefined) return [];
  const [one, other] = rooms;
  if (one === undefined || other === undefined) return [];
  for (const { id, heightM } of one.heightM === other.heightM ? [one] : rooms) {
    reading.assumptions.push({
      origin: originOf(path),
      what:
        one.heightM === other.heightM
          ? 'height of its jump duct'
          : `height of its jump duct in ${id}`,
      value: { si: heightM, dimension: 'length' },
      source: ourChoice('from ceiling to ceiling'),
    });
  }
  const floorM = Math.max(one.floorHeightM, other.floorHeightM);
  const heightM = one.floorHeightM + one.heightM - floorM;
  const endHeightM = other.floorHeightM + other.heightM - floorM;
  const ends = Math.abs(endHeightM - heightM) < 1e-9 ? { heightM } : { heightM, endHeightM };
  return [{ name: 'jump duct', law: duct.part.law, ...ends, when: 'always' }];
}

function undercutArea({ undercut }: DoorInFile): number | undefined {
  return typeof undercut === 'object' ? undercut.gap * undercut.width : undercut;
}

function orifice(areaM2: number): FlowLawDescription {
  return { kind: 'orifice', areaM2, dischargeCoefficient: assumedDischargeCoefficient };
}

function assumedCoefficient(reading: Reading, origin: string, given?: number): number {
  return givenOr(reading, given, {
    origin,
    what: 'discharge coefficient',
    value: { si: assumedDischargeCoefficient, dimension: 'ratio' },
    source: dischargeSource,
  });
}

interface LeafPart {
  readonly inFile: DoorInFile;
  readonly path: IssuePath;
  readonly doorHeightM: number;
}

function readGrille(
  reading: Reading,
  { inFile, path, doorHeightM }: LeafPart,
): readonly DoorPart[] {
  const { grille } = inFile;
  if (grille === undefined) return [];
  const { netFreeArea, height } =
    typeof grille === 'number' ? { netFreeArea: grille, height: undefined } : grille;
  const heightM = givenOr(reading, height, {
    origin: originOf(path),
    what: 'height of its grille',
    value: { si: doorHeightM / 2, dimension: 'length' },
    source: ourChoice('half of the door'),
  });
  const law = checkLaw(reading, [...path, 'grille'], orifice(netFreeArea));
  return law === undefined ? [] : [{ name: 'grille', law, heightM, when: 'shut' }];
}

function readLouvre(
  reading: Reading,
  { inFile, path, doorHeightM }: LeafPart,
): readonly DoorPart[] {
  const { louvre } = inFile;
  if (louvre === undefined) return [];
  const origin = originOf(path);
  const at = [...path, 'louvre'];
  const full = typeof louvre === 'number' ? { netFreeArea: louvre } : louvre;
  const areaM2 = louvreArea(reading, { full, origin, at });
  if (areaM2 === undefined) return [];
  const louvredM = 'height' in full ? full.height : undefined;
  if (louvredM !== undefined && louvredM > doorHeightM + 1e-9) {
    const parameters = { heightM: louvredM, doorM: doorHeightM };
    report(reading, [...at, 'height'], { code: 'door.louvre-above-door', parameters });
    return [];
  }
  const heightM = givenOr(reading, louvredM, {
    origin,
    what: 'height of its louvred part',
    value: { si: doorHeightM, dimension: 'length' },
    source: ourChoice('the whole door is louvred'),
  });
  // The free area is spread over the height, so that warm air leaves above while cool air enters below.
  const law = checkLaw(reading, at, {
    kind: 'doorway',
    widthM: areaM2 / heightM,
    heightM,
    dischargeCoefficient: assumedDischargeCoefficient,
  });
  return law === undefined ? [] : [{ name: 'louvre', law, heightM: 0, when: 'shut' }];
}

function louvreArea(
  reading: Reading,
  louvre: {
    readonly full: {
      readonly netFreeArea?: number | undefined;
      readonly grossArea?: number | undefined;
      readonly madeOf?: 'wood' | 'metal' | undefined;
    };
    readonly origin: string;
    readonly at: IssuePath;
  },
): number | undefined {
  const { full, origin, at } = louvre;
  const { netFreeArea, grossArea, madeOf } = full;
  if (netFreeArea !== undefined && grossArea !== undefined) {
    const parameters = { keys: ['netFreeArea', 'grossArea'] };
    report(reading, [...at, 'grossArea'], { code: 'opening.several-laws', parameters });
    return undefined;
  }
  if (netFreeArea !== undefined) {
    if (madeOf !== undefined) {
      const parameters = { key: 'madeOf', way: 'netFreeArea' };
      report(reading, [...at, 'madeOf'], { code: 'key.without-effect', parameters });
    }
    return netFreeArea;
  }
  if (grossArea === undefined) {
    const accepted = ['netFreeArea: 300 in2', 'grossArea: 1400 in2, madeOf: wood'];
    report(reading, at, { code: 'opening.law-missing', parameters: { accepted } });
    return undefined;
  }
  const share = louvreFreeShare[madeOf ?? 'wood'];
  reading.assumptions.push({
    origin,
    what: 'free share of its louvre',
    value: { si: share, dimension: 'ratio' },
    source: louvreSource,
  });
  return share * grossArea;
}
