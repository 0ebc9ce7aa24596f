import {
  stateLabel,
  type Appliance,
  type Device,
  type House,
  type OperatingState,
} from '@evendraft/house';
import { highestFlow } from './internal/exhaust-systems.js';
import type { LimitSet } from './limit-set.js';
import type { TestConfiguration } from './test-configuration.js';

/** One state of the house that a programme's test asks for. Plain JSON. */
export interface TestState {
  /** Id of the configuration it belongs to. */
  readonly configuration: string;
  /** The state in words. */
  readonly label: string;
  readonly state: OperatingState;
  /** What is solved and subtracted; absent where the programme subtracts nothing. */
  readonly baseline?: OperatingState;
  /** Ids of the appliances that fire, step by step; empty where nothing fires. */
  readonly firingSteps: readonly (readonly string[])[];
  /** What the programme asks for and the house file does not hold, as sentences. */
  readonly notModelled: readonly string[];
}

/** Doors beyond this many are not combined: they stand all open, all shut, or one by one apart from the rest. */
const combinedDoors = 8;

/**
 * The states of a house that a limit set's own test asks for, configuration by configuration.
 *
 * Each device that runs is at its highest speed; devices with an interlock follow their driver; supply
 * fans that people switch stay off. A ventilator runs where it is continuous, or, while exhaust runs,
 * where it takes out more than it brings in. Windows are shut. Where doors or air handlers stand as they are worse, every
 * combination is listed, and the worst of them counts. A hearth does not burn, so that its damper is shut where it has one.
 *
 * @param house - the house
 * @param limitSet - the programme
 * @returns the states; none where the set describes no configuration
 */
export function testStates(
  house: House,
  limitSet: Pick<LimitSet, 'testConfigurations'>,
): readonly TestState[] {
  return (limitSet.testConfigurations ?? []).flatMap((configuration) =>
    doorPositions(house, configuration).flatMap((positions) => {
      const doors = { ...positions, ...windowsShut(house) };
      const baseline = baselineFor(house, configuration, doors);
      return airHandlers(house, configuration).map((handlers) => {
        const state = { running: { ...runningIn(house, configuration), ...handlers }, doors };
        return {
          configuration: configuration.id,
          label: stateLabel(house, state),
          state,
          ...(baseline === undefined ? {} : { baseline }),
          firingSteps: firingSteps(house, configuration),
          notModelled: notModelled(house, configuration),
        };
      });
    }),
  );
}

/** The exhaust that a selection runs, strongest first; followers of an interlock are not in it. */
function selectedExhaust(
  house: House,
  configuration: Pick<TestConfiguration, 'exhaust' | 'largerThanM3PerS' | 'without'>,
): readonly Device[] {
  const { exhaust, largerThanM3PerS = 0, without = [] } = configuration;
  const able = house.devices
    .filter(
      ({ direction, speeds, interlock, kind }) =>
        direction === 'exhaust' &&
        speeds.length > 0 &&
        interlock === undefined &&
        !without.includes(kind),
    )
    .sort((one, other) => highestFlow(other) - highestFlow(one));
  const running = able.filter(({ continuous }) => continuous);
  const and = (chosen: readonly Device[]) => able.filter((d) => d.continuous || chosen.includes(d));
  switch (exhaust) {
    case 'none':
    case 'continuous only':
      return running;
    case 'all':
      return able;
    case 'two largest':
      return and(able.slice(0, 2));
    case 'largest':
      return and(able.slice(0, 1));
    case 'dryers and larger':
      return and(able.filter((d) => d.kind === 'dryer' || highestFlow(d) > largerThanM3PerS));
  }
}

function runningIn(house: House, configuration: TestConfiguration): Record<string, string> {
  const supplies = house.devices.filter(
    ({ direction, continuous, interlock }) =>
      direction === 'supply' && continuous && interlock === undefined,
  );
  const chosen = new Set([...selectedExhaust(house, configuration), ...supplies]);
  // In the house's order, so that a state and its label do not depend on which device is stronger.
  const devices = house.devices.flatMap((device): [string, string][] => {
    const fastest = device.speeds.at(-1);
    return chosen.has(device) && fastest !== undefined ? [[device.id, fastest.name]] : [];
  });
  const exhausts = !['none', 'continuous only'].includes(configuration.exhaust);
  const ventilators = house.ventilators
    .filter((v) => v.continuous || (exhausts && v.exhaustFlowM3PerS > v.supplyFlowM3PerS))
    .map((v): [string, string] => [v.id, 'on']);
  return Object.fromEntries([...devices, ...ventilators]);
}

/** Air handlers beyond this many are not combined: all stand still or all run. */
const combinedHandlers = 3;

/** How the air handlers stand: off, as the house has them, or each combination of which the worst counts. */
function airHandlers(
  house: House,
  { airHandler }: TestConfiguration,
): readonly OperatingState['running'][] {
  const { forcedAir = [] } = house;
  const on = (ids: readonly string[]): OperatingState['running'] =>
    Object.fromEntries(ids.map((id) => [id, 'on']));
  const all = forcedAir.map(({ id }) => id);
  switch (airHandler) {
    case 'off':
      return [{}];
    case 'not stated':
      return [on(forcedAir.filter(({ continuous }) => continuous).map(({ id }) => id))];
    case 'where it lowers the zone':
      if (all.length > combinedHandlers) return [{}, on(all)];
      return all.reduce<readonly OperatingState['running'][]>(
        (made, id) => made.flatMap((before) => [before, { ...before, [id]: 'on' }]),
        [{}],
      );
  }
}

type Doors = OperatingState['doors'];

function doorPositions(house: House, { doors }: TestConfiguration): readonly Doors[] {
  const ids = house.doors.map(({ id }) => id);
  const all = (position: 'open' | 'shut') => positionOfAll(house, position);
  switch (doors) {
    case 'all open':
      return [all('open')];
    case 'all shut':
      return [all('shut')];
    case 'as found':
      return [Object.fromEntries(house.doors.map((door) => [door.id, door.baselinePosition]))];
    case 'where worse':
      if (ids.length === 0) return [{}];
      return ids.length > combinedDoors
        ? [
            all('open'),
            all('shut'),
            ...ids.map((id): Doors => ({ ...all('open'), [id]: 'shut' })),
            ...ids.map((id): Doors => ({ ...all('shut'), [id]: 'open' })),
          ]
        : ids.reduce<readonly Doors[]>(
            (made, id) =>
              made.flatMap((before) => [
                { ...before, [id]: 'open' as const },
                { ...before, [id]: 'shut' as const },
              ]),
            [{}],
          );
  }
}

function positionOfAll(house: House, position: 'open' | 'shut'): Doors {
  return Object.fromEntries(house.doors.map(({ id }) => [id, position]));
}

/** No programme tests with windows open. */
function windowsShut(house: House): Doors {
  return Object.fromEntries(
    house.openings.flatMap(({ id, positions }) => (positions === undefined ? [] : [[id, 'shut']])),
  );
}

function baselineFor(
  house: House,
  { baseline }: TestConfiguration,
  doors: Doors,
): OperatingState | undefined {
  switch (baseline) {
    case 'nothing is subtracted':
      return undefined;
    case 'everything off, same doors':
      return { running: {}, doors };
    case 'everything off, doors open':
      return { running: {}, doors: { ...doors, ...positionOfAll(house, 'open') } };
  }
}

function firingSteps(house: House, { firing }: TestConfiguration): readonly (readonly string[])[] {
  const burners = house.appliances
    .filter(({ vent }) => vent !== 'electric')
    .sort((one, other) => inputOf(one) - inputOf(other))
    .map(({ id }) => id);
  if (burners.length === 0) return [];
  const together = burners.length > 1 ? [burners] : [];
  switch (firing) {
    case 'nothing':
      return [];
    case 'all':
      return [burners];
    case 'smallest input first, then all':
      return [burners.slice(0, 1), ...together];
    case 'each alone, then all':
      return [...burners.map((id) => [id]), ...together];
  }
}

/** An input that is not stated comes last. */
function inputOf({ inputW }: Appliance): number {
  return inputW ?? Number.MAX_VALUE;
}

function notModelled(
  { appliances, forcedAir }: House,
  { airHandler, hearthDamper }: TestConfiguration,
): readonly string[] {
  const open =
    hearthDamper === 'closed'
      ? appliances.filter(
          ({ vent, kind, flue }) =>
            (vent === 'open hearth' || kind === 'fireplace') && flue?.damper === undefined,
        )
      : [];
  return [
    ...(airHandler === 'where it lowers the zone' && forcedAir === undefined
      ? [
          'The air handler is asked for where it lowers the zone; the house file describes no forced-air system.',
        ]
      : []),
    ...(open.length > 0
      ? [
          `The hearth damper is asked to be closed; the house file gives none to the ${open.map(({ id }) => id).join(' and the ')}.`,
        ]
      : []),
  ];
}
