import type { House } from '@evendraft/house';
import type { PressureTarget } from '../pressure-target.js';
import type {
  InputImportance,
  Spread,
  TargetProbability,
  ZoneSpread,
} from '../uncertain-pressures.js';
import { normalQuantile } from './normal-quantile.js';
import { correlationOfRanks, ranksOf } from './rank-correlation.js';
import type { SampleOutcome } from './sample-rows.js';

/**
 * Spreads, probabilities and importances of samples; failed ones are left out.
 *
 * @param of - the house, what the samples gave, the targets
 * @returns zones in the house's order, targets in the order given
 */
export function summarizeSamples(of: {
  readonly house: House;
  readonly outcome: SampleOutcome;
  readonly targets: readonly PressureTarget[];
}): { readonly zones: readonly ZoneSpread[]; readonly targets: readonly TargetProbability[] } {
  const { house, outcome, targets } = of;
  const solved = (values: Float64Array): Float64Array =>
    outcome.failed.size === 0 ? values : values.filter((_, sample) => !outcome.failed.has(sample));
  const inputs = [...outcome.inputs].map(([input, values]) => ({
    input,
    ranks: ranksOf(solved(values)),
  }));
  if (outcome.samples - outcome.failed.size < 2) return { zones: [], targets: [] };
  return {
    zones: house.zones.map(({ id }, zone) => {
      const pressures = solved(outcome.lowestPa[zone]!);
      return {
        zone: id,
        pressurePa: spreadOf(pressures),
        changePa: spreadOf(solved(outcome.largestFallPa[zone]!)),
        inputs: importanceOf(inputs, pressures),
      };
    }),
    targets: targets.map((target) => {
      const zone = house.zones.findIndex(({ id }) => id === target.zone);
      const values = solved(valuesFor(target, outcome)[zone]!);
      const low = target.side === 'not below';
      const beyond = values.filter((value) =>
        low ? value < target.limitPa : value > target.limitPa,
      );
      return {
        target,
        probability: beyond.length / values.length,
        between: scoreInterval(beyond.length, values.length),
      };
    }),
  };
}

function valuesFor(
  { quantity, side }: PressureTarget,
  outcome: SampleOutcome,
): readonly Float64Array[] {
  if (quantity === 'zone minus outdoors') {
    return side === 'not below' ? outcome.lowestPa : outcome.highestPa;
  }
  return side === 'not below' ? outcome.largestFallPa : outcome.largestRisePa;
}

function spreadOf(values: Float64Array): Spread {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const sorted = values.slice().sort();
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = sorted[Math.floor(place)]!;
    return below + (place % 1) * (sorted[Math.ceil(place)]! - below);
  };
  return {
    mean,
    standardDeviation: Math.sqrt(squares / (values.length - 1)),
    percentiles: [at(0.05), at(0.25), at(0.5), at(0.75), at(0.95)],
  };
}

function importanceOf(
  inputs: readonly { readonly input: string; readonly ranks: Float64Array }[],
  pressures: Float64Array,
): readonly InputImportance[] {
  const pressureRanks = ranksOf(pressures);
  const correlations = inputs.map(({ input, ranks }) => ({
    input,
    rankCorrelation: correlationOfRanks(ranks, pressureRanks),
  }));
  const squares = correlations.reduce((sum, each) => sum + each.rankCorrelation ** 2, 0);
  return correlations
    .map((each) => ({ ...each, share: squares > 0 ? each.rankCorrelation ** 2 / squares : 0 }))
    .sort((a, b) => b.share - a.share);
}

/** Score interval of a share (Wilson 1927), from memory. */
function scoreInterval(count: number, of: number): readonly [number, number] {
  const z = normalQuantile(0.975);
  const share = count / of;
  const middle = share + (z * z) / (2 * of);
  const half = z * Math.sqrt((share * (1 - share)) / of + (z / (2 * of)) ** 2);
  const total = 1 + (z * z) / of;
  return [Math.max(0, (middle - half) / total), Math.min(1, (middle + half) / total)];
}
