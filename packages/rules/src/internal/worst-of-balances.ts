import type { House } from '@evendraft/house';
import type { StateBalance, WorstPressure, ZonePressure } from '@evendraft/studies';
import type { JudgedStudy } from '../judged-study.js';

/**
 * The worst of a handful of solved situations, zone by zone and appliance by appliance.
 *
 * @param house - the house
 * @param solved - its situations, in the order in which they were run
 * @returns what judging needs, but for what could not be solved
 */
export function worstOfBalances(
  house: House,
  solved: readonly StateBalance[],
): Omit<JudgedStudy, 'unsolved'> {
  const zones = house.zones.flatMap(({ id }, index) => {
    const lowest = worstBy(solved, index, (reading) => reading.pressurePa);
    const largestFall = worstBy(solved, index, (reading) => reading.changeFromBaselinePa);
    return lowest === undefined || largestFall === undefined
      ? []
      : [{ zone: id, lowest, largestFall }];
  });
  const radii = solved.flatMap(({ proof }) => proof.enclosureRadiusPa ?? []);
  return {
    situations: solved,
    zones,
    appliances: house.appliances.flatMap((appliance) =>
      zones
        .filter(({ zone }) => zone === appliance.zone)
        .map((worst) => ({ appliance: appliance.id, ...worst })),
    ),
    proof: {
      largestRelativeResidual: Math.max(0, ...solved.map((s) => s.proof.largestRelativeResidual)),
      largestEnclosureRadiusPa: radii.length === 0 ? null : Math.max(...radii),
      notEnclosed: solved.length - radii.length,
      mostIterations: Math.max(0, ...solved.map(({ proof }) => proof.iterations)),
    },
  };
}

function worstBy(
  solved: readonly StateBalance[],
  index: number,
  of: (reading: ZonePressure) => number,
): WorstPressure | undefined {
  let worst: { readonly balance: StateBalance; readonly reading: ZonePressure } | undefined;
  for (const balance of solved) {
    const reading = balance.zones[index];
    if (reading === undefined) continue;
    if (worst === undefined || of(reading) < of(worst.reading)) worst = { balance, reading };
  }
  if (worst === undefined) return undefined;
  const { state, label, weather, airtightness } = worst.balance;
  const { pressurePa, changeFromBaselinePa } = worst.reading;
  return {
    state,
    label,
    weather,
    airtightness,
    pressurePa,
    changeFromBaselinePa,
    baselinePa: pressurePa - changeFromBaselinePa,
  };
}
