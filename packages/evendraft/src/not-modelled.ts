import type { House } from '@evendraft/house';
import type { DraftResults } from '@evendraft/report';

/**
 * What this version does not look at in a given house, in sentences for the report.
 *
 * @param house - the house
 * @param draft - what was found of its flues; absent where it has none
 * @returns sentences, the weightiest first
 */
export function notModelled(house: House, draft?: DraftResults): readonly string[] {
  const vented = house.appliances.filter(
    (a) => !['electric', 'unvented', 'direct vent', 'sealed combustion'].includes(a.vent),
  );
  const solved = new Set(
    draft?.status === 'solved'
      ? draft.appliances.filter(({ worst }) => worst !== undefined).map((each) => each.appliance)
      : [],
  );
  const names = (appliances: readonly { readonly id: string }[]): string =>
    appliances.map(({ id }) => id).join(', ');
  const unsolved = names(vented.filter(({ id, flue }) => flue !== undefined && !solved.has(id)));
  const without = names(vented.filter(({ flue }) => flue === undefined));
  const held = names([
    ...house.devices.filter(({ speeds }) => speeds.some(({ law }) => law.kind === 'fixedFlow')),
    ...house.ventilators,
  ]);
  return [
    ...(solved.size === 0
      ? []
      : [
          `The flues of ${[...solved].join(', ')} are solved with their gas only in the situations that press them most, not in every state; the worst case of suction is that with every appliance off. Soot, leaks, blocked vents and gusts are not in it.`,
        ]),
    ...(unsolved === ''
      ? []
      : [
          `The flues of ${unsolved} stand as openings of the house, with every appliance off. Whether they draft once they fire, and spillage itself, is not judged: the finding is suction held against a limit.`,
        ]),
    ...(without === ''
      ? []
      : [
          `The flues of ${without} are not openings of the network: their draft, the air they draw while firing, and spillage itself are not calculated. The finding is suction held against a limit.`,
        ]),
    ...(held === ''
      ? []
      : [
          `The flows of ${held} are held against any pressure. What they lead to in a tight house has no bound here; a real fan gives way before.`,
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
