import { visibleControls } from '@evendraft/text';
import {
  renderJson,
  renderSizing,
  size,
  type House,
  type PressureTarget,
  type SizeRequest,
} from 'evendraft';
import { chooseLimitSet } from './choose-limit-sets.js';
import type { CommandStreams } from './command-streams.js';
import { exitCode, type ExitCode } from './exit-code.js';
import { readHouseFile } from './read-house-file.js';
import { remedyFrom, type RemedyFlags, type RemedyName } from './remedy-flags.js';
import { sayStopped } from './say-stopped.js';
import { situationWorkers } from './situation-workers.js';
import { watchWork } from './watch-work.js';

/** Flags of `evendraft size`. */
export interface SizeFlags extends RemedyFlags {
  readonly remedy: RemedyName;
  readonly units: 'us' | 'si';
  readonly json: boolean;
  readonly limits: readonly string[];
  /** Zone minus outdoors, or its change from the baseline [Pa]. */
  readonly target?: number;
  readonly targetOf: PressureTarget['quantity'];
  /** A pressure above outdoors that no room inside may exceed [Pa]. */
  readonly highest?: number;
}

/**
 * `evendraft size FILE`: finds the size of one remedy that keeps the limits in every state and weather.
 *
 * @param file - path of the house file
 * @param flags - remedy, target, output
 * @param streams - where results and messages go
 * @returns exit code: 0 where there is a size or none is needed, 1 where no size offered does it, 130 where it was
 *   stopped; then what is known is printed, which is no answer
 */
export async function sizeCommand(
  file: string,
  flags: SizeFlags,
  streams: CommandStreams,
): Promise<ExitCode> {
  const limitSet = await chooseLimitSet(flags.limits, streams);
  if (limitSet === undefined) return exitCode.wrongInput;
  // Above zero it would limit pushing outward, which every house under suction keeps.
  if (flags.target !== undefined && flags.target >= 0) {
    streams.err(
      '--target: write a pressure below zero, for suction is negative: "-5 Pa". What limits pushing outward is --highest.\n',
    );
    return exitCode.wrongInput;
  }
  const house = await readHouseFile(file, streams, flags.json);
  if (house === undefined) return exitCode.wrongInput;
  const request: SizeRequest = {
    remedy: remedyFrom(flags.remedy, flags),
    limitSet,
    createPool: situationWorkers,
    ...(flags.highest === undefined ? {} : { highestPa: flags.highest }),
    ...(flags.target === undefined ? {} : { targets: targetsOf(house, flags) }),
  };
  const result = await watchWork(
    (watch) => size(house, { ...request, ...watch, whenStopped: 'keep' }),
    'sizes',
    streams,
  );
  if (result === undefined) return exitCode.stopped;
  if (result.status === 'not possible') {
    streams.err(`${visibleControls(file)}: ${result.why}.\n`);
    return exitCode.wrongInput;
  }
  const { sizing } = result;
  if (sizing.result.status === 'unfinished') {
    const known = sizing.result.tried.length > 0 || sizing.result.margins.length > 0;
    sayStopped(streams, known);
    if (!known) return exitCode.stopped;
  }
  streams.out(
    flags.json
      ? renderJson(sizing)
      : renderSizing(sizing, {
          system: flags.units,
          width: Math.min(Math.max(streams.width, 60), 100),
          color: streams.color,
        }),
  );
  switch (sizing.result.status) {
    case 'unfinished':
      return exitCode.stopped;
    case 'impossible':
      return exitCode.beyondLimit;
    case 'sized':
    case 'nothing needed':
      return exitCode.done;
  }
}

/** The pressure in the zone that was named, or in each zone with an appliance, or in each living zone. */
function targetsOf(house: House, flags: SizeFlags): readonly PressureTarget[] {
  const { target: limitPa = 0, targetOf, zone } = flags;
  const withAppliance = new Set(house.appliances.map((appliance) => appliance.zone));
  const living = house.zones.filter(({ kind }) => kind === 'living').map(({ id }) => id);
  const zones = zone !== undefined ? [zone] : withAppliance.size > 0 ? [...withAppliance] : living;
  return zones.map((each) => ({
    id: each,
    zone: each,
    quantity: targetOf,
    limitPa,
    side: 'not below',
  }));
}
