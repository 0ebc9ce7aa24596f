import { compileHouse, houseWeather, type House } from '@evendraft/house';
import { judgeVelocity, type LimitSet } from '@evendraft/rules';
import {
  balanceStudy,
  situationAirStudy,
  sizeRemedy,
  yearlyAirHeat,
  yearlyFanEnergy,
  type BalanceQuestion,
  type PressureTarget,
  type Remedy,
  type SizingResult,
  type YearOfWeather,
} from '@evendraft/studies';
import { largestExhaust } from './largest-exhaust.js';
import { rankRemedies, usualRankRule, type RankRule } from './rank-rule.js';
import { codeReadings, upkeepOf } from './remedy-facts.js';
import type { RemedyRow } from './remedy-row.js';
import { targetsOfLimitSet } from './targets-of-limit-set.js';

/** How remedies are compared. */
export interface CompareOptions {
  /** The remedies, of this house. */
  readonly remedies: readonly Remedy[];
  /** Pressures to keep in place of the limits of the set. */
  readonly targets?: readonly PressureTarget[];
  /** How far inside each limit a size must stay; 0 when absent [Pa]. */
  readonly reservePa?: number;
  /** Order of the rows; {@link usualRankRule} when absent. */
  readonly rank?: RankRule;
  /** A year of weather with the hours a day in which the largest exhaust runs; no yearly energy when absent. */
  readonly year?: { readonly weather: YearOfWeather; readonly hoursPerDay: number };
  /** Of the fan of powered make-up air; 100 Pa at an efficiency of 0.3 when absent, our choice. */
  readonly supplyFan?: { readonly pressureRisePa: number; readonly efficiency: number };
  readonly signal?: AbortSignal;
  readonly onProgress?: (done: number, of: number) => void;
}

/** Remedies side by side; plain JSON. */
export interface RemedyComparison {
  readonly question: 'compare';
  readonly limitSet: string;
  /** The best first. */
  readonly rows: readonly RemedyRow[];
  readonly rank: RankRule;
  /** Appliances without a limit in the set: nothing here is sized for them. */
  readonly withoutLimit: readonly string[];
}

/**
 * Sizes remedies to a limit set and lays them side by side.
 *
 * No row clears an appliance: after any change the house is to be assessed and tested again.
 *
 * @param house - the house without a remedy
 * @param limitSet - the limits to keep
 * @param options - remedies, ranking, year, signal and progress
 * @returns rows in the order of the rule; no rows where the set has no limit for any appliance
 */
export async function compareRemedies(
  house: House,
  limitSet: LimitSet,
  options: CompareOptions,
): Promise<RemedyComparison> {
  const { remedies, reservePa = 0, rank = usualRankRule, onProgress, signal } = options;
  const ofSet = targetsOfLimitSet(house, limitSet, reservePa);
  const targets = options.targets ?? ofSet.targets;
  const withoutLimit = options.targets === undefined ? ofSet.withoutLimit : [];
  const rows: RemedyRow[] = [];
  for (const [index, remedy] of targets.length === 0 ? [] : remedies.entries()) {
    const sizing = await sizeRemedy(house, { remedy, targets }, signal ? { signal } : {});
    rows.push(rowOf(house, { remedy, sizing, options }));
    onProgress?.(index + 1, remedies.length);
  }
  return {
    question: 'compare',
    limitSet: limitSet.id,
    rows: rankRemedies(rows, rank),
    rank,
    withoutLimit,
  };
}

function rowOf(
  house: House,
  of: {
    readonly remedy: Remedy;
    readonly sizing: SizingResult;
    readonly options: CompareOptions;
  },
): RemedyRow {
  const { remedy, sizing, options } = of;
  const size = sizeOf(sizing);
  const head = {
    kind: remedy.kind,
    remedy: remedy.what,
    dimension: remedy.dimension,
    sizing,
    upkeep: upkeepOf[remedy.kind],
    assumptions: remedy.assumptions,
    code: size === undefined ? [] : codeReadings({ ...remedy, size }, house),
  };
  const exhaust = largestExhaust(house);
  const result = compileHouse(size === undefined ? house : remedy.houseWith(size));
  if (exhaust === undefined || !result.ok) return { ...head, situation: '', guidance: [] };
  const { compiled } = result;
  const [coldest] = [...compiled.house.weathers].sort(
    (a, b) => a.outdoorTemperatureC - b.outdoorTemperatureC,
  );
  const speeds = compiled.house.devices.find(({ id }) => id === exhaust.id)?.speeds ?? [];
  const question: BalanceQuestion = {
    state: {
      running: { [exhaust.id]: speeds.at(-1)?.name ?? 'on' },
      doors: Object.fromEntries(
        house.doors.map(({ id, baselinePosition }) => [id, baselinePosition]),
      ),
    },
    weather: houseWeather(compiled.house, coldest!),
  };
  const balance = balanceStudy(compiled, question);
  const air = situationAirStudy(compiled, question);
  const entry = air?.entries.find(({ item }) => item === remedy.item);
  const velocity = entry?.velocityMPerS;
  const delivered =
    balance.status === 'solved'
      ? balance.devices.find(({ device }) => device === exhaust.id)?.deliveredFlowM3PerS
      : undefined;
  const yearlyKWh = yearlyEnergy(air, { options, supply: suppliedFlow(remedy, size) });
  return {
    ...head,
    situation: `${balance.label}, ${balance.weather}`,
    guidance:
      entry?.areaM2 === undefined
        ? []
        : [
            judgeVelocity({
              subject: remedy.item,
              place: 'at the hood',
              flowM3PerS: entry.volumeFlowM3PerS,
              areaM2: entry.areaM2,
            }),
          ],
    ...(delivered === undefined ? {} : { exhaustFlowM3PerS: delivered }),
    ...(velocity === undefined ? {} : { faceVelocityMPerS: velocity }),
    ...(air === undefined ? {} : { inducedHeatW: air.inducedHeatW, temperingW: air.temperingW }),
    ...(yearlyKWh === undefined ? {} : { yearlyKWh }),
  };
}

function sizeOf(sizing: SizingResult): number | undefined {
  switch (sizing.status) {
    case 'sized':
      return sizing.size;
    case 'impossible':
      return sizing.best;
    case 'nothing needed':
      return undefined;
  }
}

function suppliedFlow({ kind }: Remedy, size: number | undefined): number {
  return kind === 'powered make-up air' ? (size ?? 0) : 0;
}

/** Energy of the air that the exhaust draws in beyond the baseline, and of the supply fan [kWh]. */
function yearlyEnergy(
  air: ReturnType<typeof situationAirStudy>,
  { options, supply }: { readonly options: CompareOptions; readonly supply: number },
): number | undefined {
  const { year, supplyFan = { pressureRisePa: 100, efficiency: 0.3 } } = options;
  if (air === undefined || year === undefined) return undefined;
  const massFlowKgPerS = Math.max(0, air.inflowKgPerS - air.baselineInflowKgPerS);
  const { heatingKWh, coolingKWh } = yearlyAirHeat(
    { massFlowKgPerS, hoursPerDay: year.hoursPerDay, roomTemperatureC: 20 },
    year.weather,
  );
  const fan = yearlyFanEnergy({
    volumeFlowM3PerS: supply,
    ...supplyFan,
    hoursPerDay: year.hoursPerDay,
  });
  return heatingKWh + coolingKWh + fan;
}
