import type { House } from '@evendraft/house';
import type { HouseSummary } from '@evendraft/report';

/**
 * What a report repeats of a house.
 *
 * @param house - the house
 * @returns names, kinds and what the results rest on
 */
export function houseSummary(house: House): HouseSummary {
  const { name, floorAreaM2, volumeM3, digest, altitudeM, weathers } = house;
  const { remainingM3PerSPaN: _, ...airtightness } = house.airtightness;
  return {
    name,
    floorAreaM2,
    volumeM3,
    digest,
    altitudeM,
    airtightness,
    zones: house.zones.map(({ id, kind }) => ({ id, kind })),
    devices: house.devices.map(({ id, kind, direction, zone }) => ({ id, kind, direction, zone })),
    appliances: house.appliances.map(({ id, kind, vent, zone }) => ({ id, kind, vent, zone })),
    weathers,
    testPreparation: testPreparation(house),
  };
}

/** How everything that is modelled apart stood during the airtightness test. */
function testPreparation({
  openings,
  devices,
  makeUpOpenings,
}: House): NonNullable<HouseSummary['testPreparation']> {
  const withLeak = devices.filter(({ offLaw, path }) => offLaw !== undefined || path !== undefined);
  return [...openings, ...withLeak, ...makeUpOpenings].map(({ id, duringTest }) => ({
    item: id,
    duringTest,
  }));
}
