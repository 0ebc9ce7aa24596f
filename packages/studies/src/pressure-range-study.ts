import { countOperatingStates, stateLabel, type CompiledHouse } from '@evendraft/house';
import { extremeIn, type ExtremeKind } from './internal/keep-extremes.js';
import { searchExtremes } from './internal/search-extremes.js';
import { situationSolver } from './internal/situation-solver.js';
import { stopCheck } from './internal/stop-check.js';
import type { PooledOptions, Stopped } from './study-options.js';
import type { WorstCaseCoverage } from './worst-case-study.js';
import type { WorstPressure } from './worst-of-balances.js';

/** How far the pressure of one zone goes either way. */
export interface ZoneRange {
  readonly zone: string;
  readonly lowest: WorstPressure;
  readonly largestFall: WorstPressure;
  readonly highest: WorstPressure;
  readonly largestRise: WorstPressure;
}

/** The pressures of every zone over all states, weathers and airtightness cases, both signs; plain JSON. */
export interface PressureRangeStudy {
  readonly question: 'pressure range';
  readonly zones: readonly ZoneRange[];
  readonly coverage: WorstCaseCoverage;
  readonly solves: number;
  /** Situations that could not be solved, in words; any of them may hold an extreme. */
  readonly unsolved: readonly string[];
  /** Present where the study was stopped: the situations that its ranges are over, of all. */
  readonly stopped?: Stopped;
}

/**
 * Finds how far below and above outdoors, and below and above its baseline, every zone goes.
 *
 * As the worst-case study covers large houses: by the ordering of settings where it was shown law against law,
 * by going through the rest. Powered make-up air can push a house above outdoors; this shows it.
 *
 * @param compiled - the compiled house
 * @param options - signal, what a stop gives, progress, workers
 * @returns the range of every zone
 */
export async function pressureRangeStudy(
  compiled: CompiledHouse,
  options: PooledOptions = {},
): Promise<PressureRangeStudy> {
  const { house } = compiled;
  const { onProgress } = options;
  const situations =
    countOperatingStates(house) * house.weathers.length * house.airtightness.cases.length;
  const solver = situationSolver(compiled, options);
  const { found, coverage, settled } = await searchExtremes({
    compiled,
    solver,
    stopped: stopCheck(options),
    onProgress,
  }).finally(solver.close);
  const whole = settled.done === settled.of;
  if (whole) onProgress?.(situations, situations);

  const extreme = (zone: number, kind: ExtremeKind): WorstPressure | undefined => {
    const best = found.find((each) => each.kind === kind && each.zone === zone);
    if (best === undefined) return undefined;
    const { state, weather, airtightnessCase = 0 } = best.question;
    const { pressurePa, baselinePa } = extremeIn(best, kind, zone);
    return {
      state,
      label: stateLabel(house, state),
      weather: weather.name,
      airtightness: compiled.leakage[airtightnessCase]?.name ?? 'tested',
      pressurePa,
      baselinePa,
      changeFromBaselinePa: pressurePa - baselinePa,
    };
  };
  return {
    question: 'pressure range',
    zones: house.zones.flatMap(({ id }, zone) => {
      const lowest = extreme(zone, 'lowest');
      const largestFall = extreme(zone, 'largest fall');
      const highest = extreme(zone, 'highest');
      const largestRise = extreme(zone, 'largest rise');
      return lowest && largestFall && highest && largestRise
        ? [{ zone: id, lowest, largestFall, highest, largestRise }]
        : [];
    }),
    coverage: {
      situations,
      ordered: coverage.ordered,
      notOrdered: coverage.notOrdered,
      proved: whole && coverage.premiseHolds && coverage.unsolved.length === 0,
    },
    solves: coverage.solves,
    unsolved: coverage.unsolved.map(
      ({ state, weather }) => `${stateLabel(house, state)} (${weather.name})`,
    ),
    ...(whole ? {} : { stopped: settled }),
  };
}
