import type { House } from '@evendraft/house';

/**
 * What this version does not look at in a given house, in sentences for the report.
 *
 * @param house - the house
 * @returns sentences, the weightiest first
 */
export function notModelled(house: House): readonly string[] {
  const vented = house.appliances.filter(
    (a) => !['electric', 'unvented', 'direct vent', 'sealed combustion'].includes(a.vent),
  );
  const named = (flues: boolean): string =>
    vented
      .filter((a) => (a.flue !== undefined) === flues)
      .map((a) => a.id)
      .join(', ');
  return [
    ...(named(true) === ''
      ? []
      : [
          `The flues of ${named(true)} stand as openings of the house, with every appliance off. Whether they draft once they fire, and spillage itself, is not judged: the finding is suction held against a limit.`,
        ]),
    ...(named(false) === ''
      ? []
      : [
          `The flues of ${named(false)} are not openings of the network: their draft, the air they draw while firing, and spillage itself are not calculated. The finding is suction held against a limit.`,
        ]),
    ...(house.doors.length === 0
      ? []
      : [
          'Rooms keep the temperatures that the house file gives: the heat that two-way flow carries through open doors does not change them.',
        ]),
    ...(house.devices.some(({ speeds, path }) => speeds.length > 0 && path === undefined)
      ? [
          'Ducts are not sized: a device given by a bare flow is assumed to deliver it against its own duct while the house is at outdoor pressure.',
        ]
      : []),
    'Wind pressure at the ends of exhaust ducts counts only where the house file names the face or the roof they end at.',
    ...(house.forcedAir === undefined
      ? [
          'The house file describes no forced-air system: what an air handler and leaky ducts would add is not calculated.',
        ]
      : []),
  ];
}
