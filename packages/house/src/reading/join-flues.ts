import type { Flue, FlueSection } from '../flue.js';
import type { Appliance, Zone } from '../house.js';
import type { FlueRead } from './read-flue.js';
import { report, type Reading } from './reading.js';

/** How far the ends of two connectors may lie apart where they meet [m]. */
const meetingToleranceM = 0.15;

/**
 * Joins flues that share a chimney: of appliances on one vent, exactly one describes the chimney, and the
 * connectors of the others end where its own ends.
 *
 * @param reading - where issues are collected
 * @param appliances - every appliance, without flues
 * @param of - flues that were read, by appliance, and the zones
 * @returns the flues, by appliance; wrong ones are left out
 */
export function joinFlues(
  reading: Reading,
  appliances: readonly Omit<Appliance, 'flue'>[],
  of: { readonly flues: ReadonlyMap<string, FlueRead>; readonly zones: readonly Zone[] },
): ReadonlyMap<string, Flue> {
  const { flues, zones } = of;
  const joined = new Map<string, Flue>();
  const floorOf = (zone: string): number => zones.find(({ id }) => id === zone)?.floorHeightM ?? 0;
  for (const appliance of appliances) {
    const read = flues.get(appliance.id);
    if (read === undefined) continue;
    const owners = appliance.sharesVentWith.filter(
      (id) => (flues.get(id)?.flue.chimney.length ?? 0) > 0,
    );
    const [owner] = owners;
    if (read.flue.chimney.length > 0) {
      if (owner === undefined) joined.set(appliance.id, read.flue);
      else {
        // Reported once, at the second of both.
        if (joined.has(owner)) {
          report(reading, [...read.path, 'height'], {
            code: 'flue.several-chimneys',
            parameters: { other: owner },
          });
        }
        joined.set(appliance.id, read.flue);
      }
      continue;
    }
    const chimney = owner === undefined ? undefined : flues.get(owner);
    const host = appliances.find(({ id }) => id === owner);
    if (owner === undefined || chimney === undefined || host === undefined) {
      report(reading, read.path, { code: 'flue.height-missing', parameters: {} });
      continue;
    }
    const meetingM = floorOf(host.zone) + endOfConnector(chimney.flue) - floorOf(appliance.zone);
    const flue = meetingAt(read, meetingM);
    if (flue === undefined) {
      report(reading, [...read.path, 'collarHeight'], {
        code: 'flue.connectors-do-not-meet',
        parameters: { other: owner, endM: endOfConnector(read.flue), meetingM },
      });
      continue;
    }
    joined.set(appliance.id, { ...flue, joins: owner, to: chimney.flue.to });
  }
  return joined;
}

/** Height of the end of a connector above the floor of its zone [m]. */
function endOfConnector({ collarHeightM, connector }: Flue): number {
  return connector.reduce((height, { riseM }) => height + riseM, collarHeightM);
}

/** The flue with its connector ending at a height, where what was given allows that. */
function meetingAt(read: FlueRead, meetingM: number): Flue | undefined {
  const { flue, collarGiven, riseGiven } = read;
  if (collarGiven && riseGiven) {
    const apart = Math.abs(endOfConnector(flue) - meetingM);
    return apart <= meetingToleranceM ? withRise(flue, meetingM - flue.collarHeightM) : undefined;
  }
  if (!collarGiven) {
    const rise = endOfConnector(flue) - flue.collarHeightM;
    const collarHeightM = meetingM - rise;
    return collarHeightM >= 0 ? { ...flue, collarHeightM } : undefined;
  }
  return withRise(flue, meetingM - flue.collarHeightM);
}

function withRise(flue: Flue, riseM: number): Flue {
  const connector = flue.connector.map((section): FlueSection => ({
    ...section,
    riseM,
    lengthM: Math.max(section.lengthM, Math.abs(riseM)),
  }));
  return { ...flue, connector };
}
