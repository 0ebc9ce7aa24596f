import type { House } from '@evendraft/house';
import type { LimitSet } from '@evendraft/rules';
import type { DuctRun } from '@evendraft/studies';
import { sealedAppliance } from './flue-changes.js';
import type { HouseChange } from './house-changes.js';
import { makeUpChanges } from './make-up-changes.js';

/** What cures are put together for. */
export interface TogetherAsked {
  readonly limitSet: LimitSet;
  /** Ids of the appliances to be cured. */
  readonly appliances: readonly string[];
  readonly run: DuctRun;
  readonly signal?: AbortSignal;
}

/** A house with some of the cures, and what was done to it. */
interface Stage {
  readonly house: House;
  readonly done: readonly string[];
}

/**
 * Cures made together, for a house that none by itself cures; each asks more than the one before it.
 *
 * First every exhaust device at its lowest speed and the dryer replaced, then make-up air with it, in the size that
 * what is left asks for; then the same with the appliances changed to sealed combustion. Common practice, no source.
 *
 * @param house - the house as it is
 * @param asked - limits, appliances, the run of a make-up duct, signal
 * @yields one change after the other; the caller stops at the first that is enough
 */
export async function* curesTogether(
  house: House,
  asked: TogetherAsked,
): AsyncGenerator<HouseChange> {
  const less = lessExhaust(house);
  for (const stage of [less, withSealedAppliances(less, asked.appliances)]) {
    if (stage.done.length > 1) yield { cure: sentenceOf(stage.done), houses: [stage.house] };
    if (stage.done.length === 0) continue;
    const made = await makeUpChanges(stage.house, asked);
    for (const { cure, makeUp, houses } of made) {
      if (makeUp?.keepsLimits !== true) continue;
      const bringIn = cure.replace(/^B/u, 'b').replace(/\.$/u, '');
      yield { cure: sentenceOf([...stage.done, bringIn]), makeUp, houses };
    }
  }
}

/** Every exhaust device at its lowest speed, and no dryer that exhausts. */
function lessExhaust(house: House): Stage {
  const done: string[] = [];
  const devices = house.devices.map((device) => {
    if (device.direction !== 'exhaust' || device.speeds.length === 0) return device;
    if (device.kind === 'dryer') {
      done.push(`replace the ${device.id} with one that exhausts no air`);
      return { ...device, kind: 'condensing dryer' as const, speeds: [] };
    }
    if (device.speeds.length === 1) return device;
    done.push(`cap the ${device.id} at ${device.speeds[0]!.name}`);
    return { ...device, speeds: device.speeds.slice(0, 1) };
  });
  return { house: { ...house, devices }, done };
}

function withSealedAppliances({ house, done }: Stage, appliances: readonly string[]): Stage {
  return appliances.reduce<Stage>(
    (stage, appliance) => ({
      house: sealedAppliance(stage.house, appliance).houses[0] ?? stage.house,
      done: [...stage.done, `change the ${appliance} to sealed combustion`],
    }),
    { house, done },
  );
}

function sentenceOf(done: readonly string[]): string {
  const words = [done.slice(0, -1).join(', '), done.at(-1)!].filter((part) => part !== '');
  return words.join(' and ').replace(/^./u, (letter) => letter.toUpperCase()) + '.';
}
