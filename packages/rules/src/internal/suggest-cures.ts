import {
  followInterlocks,
  type Appliance,
  type Device,
  type House,
  type OperatingState,
  type Ventilator,
} from '@evendraft/house';
import type { WorstPressure } from '@evendraft/studies';
import { cureOrders, type CureKind } from '../cures/cure-orders.js';

/**
 * What would cure an appliance's finding, in the order in which it is usually tried.
 *
 * Remove or replace the exhaust, cap its speed, interlock, bring in make-up air, separate the zone,
 * change the appliance: the order of `cureOrders`. None is re-solved here.
 *
 * @param input - the house, the appliance and the situation in which its zone is at its worst
 * @returns short sentences that name what runs in that situation
 */
export function suggestCures(input: {
  readonly house: House;
  readonly appliance: Appliance;
  readonly worst: WorstPressure;
}): readonly string[] {
  const { house, appliance, worst } = input;
  const exhaust = runningExhaust(house, worst.state);
  const names = exhaust.map(({ device }) => nameOf(device));
  const dryers = exhaust.filter(({ device }) => device.kind === 'dryer');
  const others = exhaust.filter(({ device }) => device.kind !== 'dryer');
  const unbalanced = house.ventilators.filter((ventilator) => pulls(ventilator, worst));
  const madeUp = house.makeUpOpenings.length > 0;

  const cures: Partial<Record<CureKind, readonly string[]>> = {
    'exhaust without air': dryers.map(
      ({ device }) =>
        `Replace ${nameOf(device)} with a condensing or heat-pump dryer, which exhausts no air.`,
    ),
    'remove exhaust': sentence(others, (list) => `Remove, replace or reduce exhaust: ${list}.`),
    'balance the ventilator': unbalanced.map(
      ({ id }) => `Balance the ${id}, which takes out more air than it brings in.`,
    ),
    'cap the speed': exhaust.filter(canRunSlower).map(cappedSpeed),
    interlock: interlocks(exhaust, appliance),
    'make-up air':
      names.length === 0
        ? []
        : [
            `Bring in ${madeUp ? 'more ' : ''}make-up air that opens or starts with ${andList(names)}, into the same room or one joined to it by permanent openings.`,
          ],
    'close high openings':
      names.length + unbalanced.length > 0
        ? []
        : [
            'No exhaust runs in this situation: weather and leaks alone pull the zone down, so look at openings high in the house.',
          ],
    'separate the zone': zoneChange(house, appliance),
    'sealed appliance': [applianceChange(appliance)],
  };
  return cureOrders.depressurization.order.flatMap((kind) => cures[kind] ?? []);
}

interface RunningExhaust {
  readonly device: Device;
  readonly speed: string;
}

/** Exhaust that runs by hand or follows something that runs, strongest first, then in the house's order. */
function runningExhaust(house: House, state: OperatingState): readonly RunningExhaust[] {
  const { running } = followInterlocks(house, state);
  return house.devices
    .flatMap((device) => {
      const speed = running.get(device.id);
      return speed === undefined || device.direction !== 'exhaust' || device.speeds.length === 0
        ? []
        : [{ device, speed }];
    })
    .sort((one, other) => ratedFlow(other) - ratedFlow(one));
}

function ratedFlow({ device, speed }: RunningExhaust): number {
  return device.speeds.find(({ name }) => name === speed)?.ratedFlowM3PerS ?? 0;
}

function canRunSlower({ device, speed }: RunningExhaust): boolean {
  return device.speeds.findIndex(({ name }) => name === speed) > 0;
}

function cappedSpeed({ device, speed }: RunningExhaust): string {
  const slower = device.speeds.slice(
    0,
    device.speeds.findIndex(({ name }) => name === speed),
  );
  return `Cap the speed of ${nameOf(device)} below ${speed}: it also has ${andList(slower.map(({ name }) => name))}.`;
}

/** What already follows another device is not asked to keep clear of it. */
function interlocks(exhaust: readonly RunningExhaust[], { id }: Appliance): readonly string[] {
  const byHand = exhaust.filter(({ device }) => device.interlock === undefined);
  const names = andList(byHand.map(({ device }) => nameOf(device)));
  if (byHand.length === 0) return [];
  return byHand.length === 1
    ? [`Interlock ${names} so that it cannot run while the ${id} fires.`]
    : [`Interlock ${names} so that they cannot run together.`];
}

function pulls(ventilator: Ventilator, worst: WorstPressure): boolean {
  return (
    worst.state.running[ventilator.id] !== undefined &&
    ventilator.exhaustFlowM3PerS > ventilator.supplyFlowM3PerS
  );
}

/** A hearth belongs to its room; anything else may have a room of its own. */
function zoneChange(house: House, { id, vent, zone }: Appliance): readonly string[] {
  if (vent === 'open hearth' || vent === 'closed stove') return [];
  const air = 'combustion air of its own from outdoors';
  const lived = house.zones.some((other) => other.id === zone && other.kind === 'living');
  return lived
    ? [`Enclose the ${id} in a room sealed from the rest of the house, with ${air}.`]
    : [`Seal the ${zone} from the rest of the house and give it ${air}.`];
}

function applianceChange({ id, vent }: Appliance): string {
  switch (vent) {
    case 'direct vent':
    case 'sealed combustion':
      return `Have the air intake and the vent of the ${id} checked for tightness.`;
    case 'open hearth':
    case 'closed stove':
      return `Change the ${id} to a sealed appliance that takes its combustion air straight from outdoors.`;
    default:
      return `Change the ${id} to sealed combustion or to electric.`;
  }
}

/** The user's own name, with its kind where the name does not say it. */
function nameOf({ id, kind }: Device): string {
  return id.toLowerCase().includes(kind) ? `the ${id}` : `the ${id} (${kind})`;
}

function sentence(
  list: readonly RunningExhaust[],
  say: (list: string) => string,
): readonly string[] {
  if (list.length === 0) return [];
  const names = list.map(({ device, speed }) =>
    device.speeds.length > 1 ? `${nameOf(device)} at ${speed}` : nameOf(device),
  );
  return [say(andList(names))];
}

function andList(names: readonly string[]): string {
  return names.length < 2
    ? names.join('')
    : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
}
