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
  return [
    ...(vented.length === 0
      ? []
      : [
          `The flues of ${vented.map((a) => a.id).join(', ')} are not openings of the network: their draft, the air they draw while firing, and spillage itself are not calculated. The finding is suction held against a limit.`,
        ]),
    ...(house.doors.length === 0
      ? []
      : [
          'An open door is one orifice: the two-way flow that a temperature difference drives through it is not calculated.',
        ]),
    ...(house.devices.some(({ speeds, path }) => speeds.length > 0 && path === undefined)
      ? [
          'Ducts are not sized: a device given by a bare flow is assumed to deliver it against its own duct while the house is at outdoor pressure.',
        ]
      : []),
    'Wind pressure at the ends of exhaust ducts counts only where the house file names the face or the roof they end at.',
    'Forced-air duct leakage is not calculated.',
  ];
}
