import type { IssuePath } from '@evendraft/text';
import type { LeakageInFile } from '../file/leakage-file.js';
import { insideZoneKinds, type LeakShare, type Outlet, type Zone } from '../house.js';
import { findOutlet, type HouseNames } from './house-names.js';
import type { ZoneRead } from './read-zones.js';
import { originOf, report, warn, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/** Where the leakage of a house lies when nothing is said about it; our choice. */
const assumedShares = { walls: 0.65, ceiling: 0.2, floor: 0.15 } as const;

type Surface = keyof typeof assumedShares;

const surfaces: readonly Surface[] = ['walls', 'ceiling', 'floor'];

/**
 * Reads where the tested leakage lies. Shares that the user gave make 100 % together; without any they
 * are spread by volume over the zones inside the envelope.
 *
 * @param reading - where issues and assumptions are collected
 * @param zones - the zones that were read
 * @param names - every name of the house
 * @returns shares that add up to one
 */
export function readLeakShares(
  reading: Reading,
  zones: readonly ZoneRead[],
  names: HouseNames,
): readonly LeakShare[] {
  if (zones.every(({ inFile }) => inFile.leakage === undefined)) {
    return assumeShares(reading, zones);
  }
  const shares = zones.flatMap((zone) => sharesOfZone(reading, zone, names));
  // What was typed counts, even where it leads to a place that does not exist.
  const typed = zones.flatMap(({ inFile: { leakage } }) =>
    leakage === undefined ? [] : surfaces.flatMap((surface) => sharesOfSurface(leakage[surface])),
  );
  const sum = typed.reduce((total, { share }) => total + share, 0);
  // Half a percent is left for shares that were rounded to whole percents.
  if (Math.abs(sum - 1) > 0.005) {
    const parameters = { sumPercent: Math.round(sum * 1000) / 10 };
    report(reading, ['zones'], { code: 'leakage.sum', parameters });
    return shares;
  }
  for (const { zone, item, inFile } of zones) {
    const led = shares.some(({ to }) => to.kind === 'zone' && to.zone === zone.id);
    if (insideZoneKinds.includes(zone.kind) && inFile.leakage === undefined && !led) {
      warn(reading, item.path, { code: 'zone.no-leak', parameters: { name: zone.id } });
    }
  }
  return shares
    .filter(({ share }) => share > 0)
    .map((each) => (Math.abs(sum - 1) < 1e-9 ? each : { ...each, share: each.share / sum }));
}

function sharesOfZone(
  reading: Reading,
  { zone, item, inFile }: ZoneRead,
  names: HouseNames,
): readonly LeakShare[] {
  const { leakage } = inFile;
  if (leakage === undefined) return [];
  const path = [...item.path, 'leakage'];
  if (!insideZoneKinds.includes(zone.kind)) {
    const parameters = { name: zone.id, kind: zone.kind };
    report(reading, path, { code: 'leakage.outside-envelope', parameters });
    return [];
  }
  const { walls } = leakage;
  if (
    walls !== undefined &&
    !isList(walls) &&
    walls.to !== undefined &&
    walls.share === undefined
  ) {
    report(reading, [...path, 'walls', 'share'], {
      code: 'key.missing',
      parameters: { accepted: ['45 %'] },
    });
  }
  return surfaces.flatMap((surface) =>
    sharesOfSurface(leakage[surface]).flatMap(({ share, to, path: below }) => {
      const at = [...path, surface, ...below];
      const outlet: Outlet | undefined =
        to === undefined
          ? { kind: 'outdoors' }
          : findOutlet(reading, names, { name: to, path: at });
      if (outlet === undefined) return [];
      if (outlet.kind === 'zone' && outlet.zone === zone.id) {
        const parameters = { what: 'leakage', zone: zone.id };
        report(reading, at, { code: 'reference.own-zone', parameters });
        return [];
      }
      return [{ origin: originOf(at), zone: zone.id, surface, to: outlet, share }];
    }),
  );
}

interface TypedShare {
  readonly share: number;
  readonly to?: string | undefined;
  readonly path: IssuePath;
}

const faces = ['front', 'right', 'back', 'left'] as const;

/** One share, a list of shares, or a map of faces, as a list. */
function sharesOfSurface(typed: LeakageInFile[Surface]): readonly TypedShare[] {
  if (typed === undefined) return [];
  if (isList(typed)) return typed.map((each, index) => ({ ...each, path: [index] }));
  const own =
    typed.share === undefined ? [] : [{ share: typed.share, to: typed.to, path: [] as IssuePath }];
  const byFace = faces.flatMap((face) => {
    const share = face in typed ? (typed as Partial<Record<string, number>>)[face] : undefined;
    return share === undefined ? [] : [{ share, to: face as string, path: [face] }];
  });
  return [...own, ...byFace];
}

function isList<Item>(value: Item | readonly Item[]): value is readonly Item[] {
  return Array.isArray(value);
}

function assumeShares(reading: Reading, read: readonly ZoneRead[]): readonly LeakShare[] {
  const zones = read.map(({ zone }) => zone);
  const inside = zones.filter((zone) => zone.kind === 'living' || zone.kind === 'basement');
  if (inside.length === 0) return [];
  const top = Math.max(...inside.map((zone) => zone.floorHeightM + zone.heightM));
  const bottom = Math.min(...inside.map((zone) => zone.floorHeightM));
  const spaceOf = (kind: Zone['kind']): Outlet => {
    const space = zones.find((zone) => zone.kind === kind);
    return space === undefined ? { kind: 'outdoors' } : { kind: 'zone', zone: space.id };
  };
  // Storeys of nearly the same height count as one.
  const within = 0.5;
  const spread: Readonly<Record<Surface, { on: readonly Zone[]; to: Outlet }>> = {
    walls: { on: inside, to: { kind: 'outdoors' } },
    ceiling: {
      on: inside.filter((zone) => zone.floorHeightM + zone.heightM > top - within),
      to: spaceOf('attic'),
    },
    floor: {
      on: inside.filter((zone) => zone.floorHeightM < bottom + within),
      to: spaceOf('crawl space'),
    },
  };
  reading.assumptions.push({
    origin: 'airtightness',
    what: 'where the leakage lies',
    value: describeSpread(spread, inside.length),
    source: ourChoice('no document agrees on a distribution; walls hold most joints and openings'),
  });
  return (Object.keys(spread) as Surface[]).flatMap((surface) => {
    const { on, to } = spread[surface];
    const volume = on.reduce((sum, zone) => sum + zone.volumeM3, 0);
    return on.map((zone) => ({
      origin: zone.origin,
      zone: zone.id,
      surface,
      to,
      share: assumedShares[surface] * (zone.volumeM3 / volume),
    }));
  });
}

function describeSpread(
  spread: Readonly<Record<Surface, { readonly to: Outlet }>>,
  zoneCount: number,
): string {
  const surfaces = (Object.keys(spread) as Surface[]).map((surface) => {
    const { to } = spread[surface];
    const percent = `${surface} ${Math.round(assumedShares[surface] * 100)} %`;
    return to.kind === 'zone' ? `${percent} to ${to.zone}` : percent;
  });
  const zones =
    zoneCount === 1
      ? ''
      : '; over the zones by volume, ceilings of the highest and floors of the lowest only';
  return surfaces.join(', ') + zones;
}
