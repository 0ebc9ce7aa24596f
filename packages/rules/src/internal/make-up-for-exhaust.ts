import type { Device } from '@evendraft/house';
import type { ArithmeticLine, RuleFinding } from '../rule-finding.js';
import { judgedBy, lacks, type Rule } from './answer.js';
import { amount, line } from './arithmetic-line.js';
import { highestFlow, suppliesWith } from './exhaust-systems.js';
import type { ScreenContext } from './screen.js';

/** "Approximately equal" read as within this share; our choice [-]. */
const approximately = 0.1;

/** Devices that a rule holds against a trigger of exhaust, and what it wants above it. */
export interface TriggeredExhaust {
  readonly devices: readonly Device[];
  /** Flow above which make-up air is asked for [m³/s]. */
  readonly triggerM3PerS: number;
  readonly why: string;
  /** How the wanted flow comes about, in words. */
  readonly wantedWords: string;
  /** Whether only what is above the trigger is wanted; all of the exhaust when absent. */
  readonly onlyExcess?: boolean;
}

/**
 * Holds exhaust against a trigger, and above it the make-up air that comes with it against what the rule asks for.
 *
 * @param rule - the rule
 * @param context - house and study
 * @param exhaust - devices, trigger and what is wanted
 * @returns one finding for each device
 */
export function makeUpAboveTrigger(
  rule: Rule,
  context: ScreenContext,
  exhaust: TriggeredExhaust,
): readonly RuleFinding[] {
  const { devices, triggerM3PerS, why, wantedWords, onlyExcess = false } = exhaust;
  return devices.map((device) => {
    const flow = highestFlow(device);
    if (flow <= triggerM3PerS)
      return underTrigger(rule, device, { flowM3PerS: triggerM3PerS, why });
    const wantedM3PerS = onlyExcess ? flow - triggerM3PerS : flow;
    return makeUpForExhaust(rule, context, {
      device,
      why,
      wantedM3PerS,
      arithmetic: [
        ...(onlyExcess
          ? [
              line(device.id, 'rated flow at its highest speed', amount.flow(flow)),
              line('free', 'without make-up air', amount.flow(triggerM3PerS)),
            ]
          : [line('trigger', 'above which make-up air is asked for', amount.flow(triggerM3PerS))]),
        line('wanted', wantedWords, amount.flow(wantedM3PerS)),
      ],
    });
  });
}

/** A device above a trigger, and how much make-up air the rule wants for it. */
interface WantedMakeUp {
  readonly device: Device;
  readonly why: string;
  /** Make-up flow that the rule asks for [m³/s]. */
  readonly wantedM3PerS: number;
  /** Lines that lead to it. */
  readonly arithmetic: readonly ArithmeticLine[];
}

/**
 * Holds the make-up air that comes with a device against what a rule asks for.
 *
 * Supply fans count with their rated flow; make-up openings with the flow that they have, in the worst
 * case, where the device runs at its highest speed.
 *
 * @param rule - the rule
 * @param context - house and study
 * @param wanted - device and flow
 * @returns the finding
 */
function makeUpForExhaust(
  rule: Rule,
  { house, worstCase }: ScreenContext,
  wanted: WantedMakeUp,
): RuleFinding {
  const { device, why, wantedM3PerS } = wanted;
  const supplies = suppliesWith(house, device.id);
  const openings = house.makeUpOpenings.filter(({ interlock }) => interlock.driver === device.id);
  const fastest = device.speeds.reduce<Device['speeds'][number] | undefined>(
    (most, speed) => (speed.ratedFlowM3PerS > (most?.ratedFlowM3PerS ?? -1) ? speed : most),
    undefined,
  );
  const running = worstCase?.situations.find(({ devices }) =>
    devices.some(({ device: id, speed }) => id === device.id && speed === fastest?.name),
  );
  const about = { subject: device.id, why };
  const passive = openings.map(({ id }) => ({
    id,
    flow: running?.makeUp.find(({ opening }) => opening === id)?.flowM3PerS,
  }));
  if (passive.some(({ flow }) => flow === undefined)) {
    return lacks(rule, { ...about, arithmetic: wanted.arithmetic }, [
      `what ${openings.map(({ id }) => id).join(', ')} brings in: run the worst case`,
    ]);
  }
  const supplied =
    supplies.reduce((sum, { flowM3PerS }) => sum + flowM3PerS, 0) +
    passive.reduce((sum, { flow = 0 }) => sum + flow, 0);
  return judgedBy(
    rule,
    {
      ...about,
      arithmetic: [
        ...wanted.arithmetic,
        ...supplies.map(({ device: fan, flowM3PerS }) =>
          line(fan.id, 'rated flow of supply that runs with it', amount.flow(flowM3PerS)),
        ),
        ...passive.map(({ id, flow = 0 }) =>
          line(id, `flow in the worst state in which it is open`, amount.flow(flow)),
        ),
        line('make-up air', 'all that comes with it', amount.flow(supplied)),
        line('missing', 'wanted less make-up air', amount.flow(wantedM3PerS - supplied)),
      ],
      notes: ['Approximately equal is read as within 10 % (our choice).'],
    },
    {
      held: {
        value: supplied,
        limit: wantedM3PerS,
        sense: 'at least',
        nearBand: approximately * wantedM3PerS,
      },
      satisfiedBy: [
        `Make-up air of the missing flow that opens or starts with the ${device.id}, into the same room.`,
        `The ${device.id} limited to the trigger or less.`,
      ],
    },
  );
}

/**
 * A finding for a device that stays under a trigger.
 *
 * @param rule - the rule
 * @param device - the device
 * @param trigger - flow above which the rule asks for make-up air, with why it applies [m³/s]
 * @returns the finding, within or near
 */
function underTrigger(
  rule: Rule,
  device: Device,
  trigger: { readonly flowM3PerS: number; readonly why: string },
): RuleFinding {
  const flow = highestFlow(device);
  return judgedBy(
    rule,
    {
      subject: device.id,
      why: trigger.why,
      arithmetic: [
        line(device.id, 'rated flow at its highest speed', amount.flow(flow)),
        line('trigger', 'above which make-up air is asked for', amount.flow(trigger.flowM3PerS)),
      ],
    },
    {
      held: { value: flow, limit: trigger.flowM3PerS, sense: 'at most' },
      satisfiedBy: [
        'It stays at or under the trigger; a stronger speed would ask for make-up air.',
      ],
    },
  );
}
