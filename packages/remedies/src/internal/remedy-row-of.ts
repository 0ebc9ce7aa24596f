import {
  compileHouse,
  insideZoneKinds,
  type CompiledHouse,
  type Diffuser,
  type House,
} from '@evendraft/house';
import { judgeJetAtHood, judgeVelocity, type RuleFinding } from '@evendraft/rules';
import {
  balanceStudy,
  closedDamperLeakage,
  exhaustCurveOfRemedy,
  pressureRangeStudy,
  situationAirStudy,
  yearlyAirHeat,
  yearlyAirStudy,
  yearlyFanEnergy,
  type BalanceQuestion,
  type Remedy,
  type SituationAir,
  type SizingResult,
} from '@evendraft/studies';
import { failureRows, type FailureExtreme } from '../air/failure-rows.js';
import type { CompareOptions } from '../compare-options.js';
import { codeReadings, upkeepOf } from '../remedy-facts.js';
import type { RemedyRow, RemedyYear } from '../remedy-row.js';
import { largestExhaust } from '../largest-exhaust.js';
import { largestAlone } from './largest-alone.js';

/**
 * One remedy with all that it is compared by.
 *
 * @param house - the house without it
 * @param of - the remedy, its sizing, how remedies are compared
 * @returns the row; without numbers of a situation where the house has no exhaust
 */
export async function remedyRowOf(
  house: House,
  of: {
    readonly remedy: Remedy;
    readonly sizing: SizingResult;
    readonly options: CompareOptions;
  },
): Promise<RemedyRow> {
  const { remedy, sizing, options } = of;
  const watched = options.signal === undefined ? {} : { signal: options.signal };
  const size = sizeOf(sizing);
  const head = {
    kind: remedy.kind,
    remedy: remedy.what,
    dimension: remedy.dimension,
    ...(remedy.built === undefined ? {} : { built: remedy.built }),
    sizing,
    upkeep: upkeepOf[remedy.kind],
    assumptions: remedy.assumptions,
    code: size === undefined ? [] : codeReadings({ ...remedy, size }, house),
  };
  const result = compileHouse(size === undefined ? house : remedy.houseWith(size));
  const alone = result.ok ? largestAlone(result.compiled, largestExhaust(house)) : undefined;
  if (!result.ok || alone === undefined) {
    return { ...head, situation: '', guidance: [], failures: [] };
  }
  const { compiled } = result;
  const { device, question } = alone;
  const balance = balanceStudy(compiled, question);
  const air = situationAirStudy(compiled, question, { made: [remedy.item] });
  const entry = air?.entries.find(({ item }) => item === remedy.item);
  const areaM2 = options.outlet?.areaM2 ?? entry?.areaM2;
  const outlet =
    entry === undefined || areaM2 === undefined
      ? undefined
      : { subject: remedy.item, flowM3PerS: entry.volumeFlowM3PerS, areaM2 };
  const delivered =
    balance.status === 'solved'
      ? balance.devices.find((each) => each.device === device)?.deliveredFlowM3PerS
      : undefined;
  const year = await yearOf(compiled, {
    question,
    air,
    options,
    supply: suppliedFlow(remedy, size),
  });
  const exhaustCurve =
    size === undefined
      ? undefined
      : await exhaustCurveOfRemedy(remedy, { size, device, situation: balance }, watched);
  const highest = size === undefined ? undefined : await highestOf(remedy, size, watched);
  const closedDamper = closedDamperLeakage(compiled.house).find(({ item }) => item === remedy.item);
  return {
    ...head,
    situation: `${balance.label}, ${balance.weather}`,
    guidance: outlet === undefined ? [] : guidanceOn(outlet, options.outlet?.diffuser),
    failures:
      size === undefined
        ? []
        : await failureRows(compiled.house, { item: remedy.item, ...watched }),
    ...(highest === undefined ? {} : { highest }),
    ...(closedDamper === undefined ? {} : { closedDamper }),
    ...(exhaustCurve === undefined ? {} : { exhaustCurve }),
    ...(delivered === undefined ? {} : { exhaustFlowM3PerS: delivered }),
    ...(outlet === undefined ? {} : { faceVelocityMPerS: outlet.flowM3PerS / outlet.areaM2 }),
    ...(air === undefined ? {} : { inducedHeatW: air.inducedHeatW, temperingW: air.temperingW }),
    ...(year === undefined ? {} : { year }),
  };
}

/** Velocity at the outlet, and of its jet at the hood where the distance is known. */
function guidanceOn(
  outlet: { readonly subject: string; readonly flowM3PerS: number; readonly areaM2: number },
  diffuser: Diffuser | undefined,
): readonly RuleFinding[] {
  const jet = diffuser && judgeJetAtHood({ ...outlet, diffuser });
  return jet === undefined
    ? [judgeVelocity({ ...outlet, place: 'at the hood' })]
    : [judgeVelocity({ ...outlet, place: 'at a diffuser' }), jet];
}

/** Highest pressure of any room inside, where most air is brought in. */
async function highestOf(
  remedy: Remedy,
  size: number,
  watched: { readonly signal?: AbortSignal },
): Promise<FailureExtreme | undefined> {
  const result = compileHouse(remedy.houseAtMost?.(size) ?? remedy.houseWith(size));
  if (!result.ok) return undefined;
  const { compiled } = result;
  const inside = new Set(
    compiled.house.zones.filter(({ kind }) => insideZoneKinds.includes(kind)).map(({ id }) => id),
  );
  const { zones } = await pressureRangeStudy(compiled, watched);
  const [highest] = zones
    .filter(({ zone }) => inside.has(zone))
    .sort((one, other) => other.highest.pressurePa - one.highest.pressurePa);
  if (highest === undefined) return undefined;
  const { zone, highest: found } = highest;
  return {
    zone,
    pressurePa: found.pressurePa,
    situation: `${found.label}, ${found.weather}`,
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

/** Energy of the air that the exhaust draws in beyond the baseline, and of the supply fan. */
async function yearOf(
  compiled: CompiledHouse,
  of: {
    readonly question: BalanceQuestion;
    readonly air: SituationAir | undefined;
    readonly options: CompareOptions;
    readonly supply: number;
  },
): Promise<RemedyYear | undefined> {
  const { question, air, options, supply } = of;
  const { year, supplyFan = { pressureRisePa: 100, efficiency: 0.3 } } = options;
  const { signal, onProgress, createPool } = options;
  if (air === undefined || year === undefined) return undefined;
  const { weather, hoursPerDay } = year;
  const massFlowKgPerS = Math.max(0, air.inflowKgPerS - air.baselineInflowKgPerS);
  const byDegreeDays = yearlyAirHeat(
    { massFlowKgPerS, hoursPerDay, roomTemperatureC: 20 },
    weather,
  );
  const fanKWh = yearlyFanEnergy({ volumeFlowM3PerS: supply, ...supplyFan, hoursPerDay });
  const byHours =
    weather.kind === 'hourly'
      ? await yearlyAirStudy(
          compiled,
          { state: question.state, hoursPerDay, year: weather },
          {
            ...(signal === undefined ? {} : { signal }),
            ...(onProgress === undefined ? {} : { onProgress }),
            ...(createPool === undefined ? {} : { createPool }),
          },
        )
      : undefined;
  const { heatingKWh, coolingKWh } = byHours ?? byDegreeDays;
  return {
    totalKWh: heatingKWh + coolingKWh + fanKWh,
    fanKWh,
    ...(byHours === undefined ? {} : { byHours }),
    byDegreeDays,
  };
}
