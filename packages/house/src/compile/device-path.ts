import type { Device, House } from '../house.js';
import { floorOf } from './floor-of.js';
import type { HousePaths } from './house-link.js';
import { outletNode } from './house-nodes.js';
import { opensInward } from './opens-inward.js';
import { partStages } from './part-stages.js';
import { seriesPath, type SeriesLaw } from './series-path.js';

/**
 * Links of a device: its fan at every speed and standing still, with the ducts and dampers in series.
 *
 * @param house - the house
 * @param device - the device
 * @returns its links and junctions; none for a device that moves no air
 */
export function devicePath(house: House, device: Device): HousePaths {
  const { id, origin, zone, direction, path } = device;
  const outlet = outletNode(device.to);
  const inward = direction === 'supply';
  const { before = [], after = [], stoppedLaw } = path ?? {};
  const rise = (parts: typeof before): number => parts.reduce((sum, { riseM }) => sum + riseM, 0);
  const fan: SeriesLaw[] = device.speeds.map(({ name, law }) => ({
    name,
    law,
    role: { kind: 'device', id, speed: name },
  }));
  const stopped = stoppedLaw ?? device.offLaw;
  if (stopped !== undefined) {
    const flap = opensInward(stopped);
    fan.push({
      name: 'off',
      law: stopped,
      // Its own law is that of an opening: outwards, but for a flap that lets air in.
      reversed: path === undefined && inward !== flap,
      role: { kind: 'device off', id },
    });
  }
  if (fan.length === 0) return { links: [], junctions: [] };
  const atZoneM = floorOf(house, zone) + device.heightM;
  return seriesPath({
    item: id,
    origin,
    from: inward ? outlet : zone,
    to: inward ? zone : outlet,
    heightM: inward ? atZoneM - rise(before) - rise(after) : atZoneM,
    airOf: inward ? outlet : zone,
    stages: [...partStages(id, before), { laws: fan }, ...partStages(id, after)],
  });
}
