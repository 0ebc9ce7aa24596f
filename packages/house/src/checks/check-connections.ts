import type { ForcedAirSystem } from '../forced-air.js';
import { insideZoneKinds, type Door, type LeakShare, type Opening, type Outlet } from '../house.js';
import type { RawItem } from '../reading/read-section.js';
import type { ZoneRead } from '../reading/read-zones.js';
import { report, warn, type Reading } from '../reading/reading.js';

/** What is always there to let air through. */
export interface Connections {
  readonly zones: readonly ZoneRead[];
  readonly leakShares: readonly LeakShare[];
  readonly openings: readonly Opening[];
  readonly doors: readonly Door[];
  readonly forcedAir: readonly ForcedAirSystem[];
}

/**
 * Checks that every zone has a way to outdoors or to a surrounding, through leaks, openings, doors and ducts.
 *
 * A buffer space that only the house itself ventilates is unusual and gets a warning.
 *
 * @param reading - where issues are collected
 * @param house - the zones and what connects them
 */
export function checkConnections(reading: Reading, house: Connections): void {
  const neighbours = new Map<string, Set<string>>();
  const connect = (one: string, other: string): void => {
    for (const [from, to] of [
      [one, other],
      [other, one],
    ] as const) {
      neighbours.set(from, (neighbours.get(from) ?? new Set()).add(to));
    }
  };
  for (const { zone, to, share } of house.leakShares) if (share > 0) connect(zone, nodeOf(to));
  for (const { zone, to, positions = [] } of house.openings) {
    // A window that may be shut is no way to rely on.
    if (!positions.includes('shut')) connect(zone, nodeOf(to));
  }
  for (const { between } of house.doors) connect(between[0], between[1]);

  for (const { id, supplies, returns, leaks } of house.forcedAir) {
    // Ducts connect their rooms even while the air handler stands.
    const ducts = `the ducts of ${id}`;
    for (const { zone } of [...supplies, ...returns]) connect(zone, ducts);
    for (const { to } of leaks) connect(ducts, nodeOf(to));
  }

  const reached = new Set([beyond]);
  for (const node of reached) for (const next of neighbours.get(node) ?? []) reached.add(next);

  for (const { zone, item } of house.zones) {
    const own = neighbours.get(zone.id) ?? new Set();
    if (!reached.has(zone.id)) {
      reportUnconnected(reading, item, own.size === 0 ? [] : [...own]);
    } else if (!insideZoneKinds.includes(zone.kind) && !own.has(beyond)) {
      const parameters = { name: zone.id, kind: zone.kind };
      warn(reading, item.path, { code: 'zone.closed-buffer', parameters });
    }
  }
}

/** Outdoors and every surrounding: whatever has a pressure of its own. */
const beyond = '@beyond';

function nodeOf(outlet: Outlet): string {
  return outlet.kind === 'zone' ? outlet.zone : beyond;
}

function reportUnconnected(
  reading: Reading,
  { name, path }: RawItem,
  neighbours: readonly string[],
): void {
  report(reading, path, { code: 'zone.not-connected', parameters: { name, neighbours } });
}
