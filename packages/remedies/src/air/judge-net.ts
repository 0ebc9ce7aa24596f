import { followInterlocks, type House } from '@evendraft/house';
import { judgeNetFlow, type RuleFinding, type WallClimate } from '@evendraft/rules';
import type { StateBalance } from '@evendraft/studies';
import type { AirStudy } from './air-study.js';

/**
 * Net flow of fans by climate, where the house stands highest and where it stands lowest.
 *
 * In a very cold climate the highest situation is judged, in which powered make-up air pushes most; in a hot
 * humid one the lowest.
 *
 * @param house - the house
 * @param study - its numbers
 * @param climate - climate of the walls, where it is known
 * @returns one finding; none where the situation was not solved
 */
export function judgeNet(
  house: House,
  { extremes }: AirStudy,
  climate: WallClimate | undefined,
): readonly RuleFinding[] {
  const balance = climate === 'hot and humid' ? extremes.lowest : extremes.highest;
  if (balance === undefined) return [];
  const finding = judgeNetFlow({
    climate: climate ?? 'other',
    netExhaustM3PerS: netExhaustOf(house, balance),
    floorAreaM2: house.floorAreaM2,
  });
  const notes = [...finding.notes, `In the situation "${balance.label}", ${balance.weather}.`];
  if (climate !== undefined) return [{ ...finding, notes }];
  const give = ['the climate: hot and humid, very cold, or other'];
  return [
    {
      ...finding,
      applies: 'unknown',
      why: 'It depends on the climate.',
      reason: `Not given: ${give.join('; ')}.`,
      give,
      notes,
    },
  ];
}

/** What fans and ventilators carry out less what they bring in [m³/s]. */
function netExhaustOf(house: House, { devices, state }: StateBalance): number {
  const directions = new Map(house.devices.map(({ id, direction }) => [id, direction]));
  const ofDevices = devices.reduce((sum, { device, deliveredFlowM3PerS }) => {
    const direction = directions.get(device);
    if (direction === undefined) return sum;
    return sum + (direction === 'exhaust' ? 1 : -1) * deliveredFlowM3PerS;
  }, 0);
  const { running } = followInterlocks(house, state);
  return house.ventilators.reduce((sum, ventilator) => {
    const { id, continuous, otherModes = [] } = ventilator;
    const mode = running.get(id);
    if (mode === undefined && !continuous) return sum;
    const flows = otherModes.find(({ name }) => name === mode) ?? ventilator;
    return sum + flows.exhaustFlowM3PerS - flows.supplyFlowM3PerS;
  }, ofDevices);
}
