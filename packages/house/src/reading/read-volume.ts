import { insideZoneKinds } from '../house.js';
import type { Basics } from './read-basics.js';
import { assumedCeilingHeightM, type ZoneRead } from './read-zones.js';
import type { Reading } from './reading.js';
import { commonPractice } from './sources.js';

/** Volume inside the tested envelope, and whether a height had to be assumed for it. */
export interface VolumeRead {
  readonly volumeM3: number;
  readonly assumed: boolean;
}

/**
 * Volume inside the tested envelope: as given, from the ceiling height, from the zones, or assumed.
 *
 * @param reading - where assumptions are collected
 * @param basics - floor area, volume and ceiling height as given
 * @param zones - the zones that were read
 * @returns the volume; `undefined` while the floor area is wrong
 */
export function readVolume(
  reading: Reading,
  basics: Basics,
  zones: readonly ZoneRead[],
): VolumeRead | undefined {
  const { volumeM3, ceilingHeightM, floorAreaM2 } = basics;
  if (volumeM3 !== undefined) return { volumeM3, assumed: false };
  if (floorAreaM2 === undefined) return undefined;
  if (ceilingHeightM !== undefined) {
    return { volumeM3: floorAreaM2 * ceilingHeightM, assumed: false };
  }
  const inside = zones.filter(({ zone }) => insideZoneKinds.includes(zone.kind));
  const listed = inside.length > 0 && inside.every(({ sizeGiven }) => sizeGiven);
  const sum = inside.reduce((total, { zone }) => total + zone.volumeM3, 0);
  const si = listed ? sum : floorAreaM2 * assumedCeilingHeightM;
  reading.assumptions.push({
    origin: 'volume',
    what: 'volume inside the tested envelope',
    value: { si, dimension: 'volume' },
    source: listed
      ? { document: 'sum of the zones inside the envelope', status: 'derived' }
      : commonPractice('floor area times 2.5 m (8.2 ft)'),
  });
  return { volumeM3: si, assumed: !listed };
}
