import { compileHouse, type CompiledHouse, type House } from '@evendraft/house';
import { judgeVelocity } from '@evendraft/rules';
import {
  balanceStudy,
  exhaustCurveOfRemedy,
  situationAirStudy,
  yearlyAirHeat,
  yearlyAirStudy,
  yearlyFanEnergy,
  type BalanceQuestion,
  type Remedy,
  type SituationAir,
  type SizingResult,
} from '@evendraft/studies';
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
  const result = compileHouse(size === undefined ? house : remedy.houseWith(size));
  const alone = result.ok ? largestAlone(result.compiled, largestExhaust(house)) : undefined;
  if (!result.ok || alone === undefined) return { ...head, situation: '', guidance: [] };
  const { compiled } = result;
  const { device, question } = alone;
  const balance = balanceStudy(compiled, question);
  const air = situationAirStudy(compiled, question);
  const entry = air?.entries.find(({ item }) => item === remedy.item);
  const velocity = entry?.velocityMPerS;
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
      : await exhaustCurveOfRemedy(
          remedy,
          { size, device, situation: balance },
          options.signal ? { signal: options.signal } : {},
        );
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
    ...(exhaustCurve === undefined ? {} : { exhaustCurve }),
    ...(delivered === undefined ? {} : { exhaustFlowM3PerS: delivered }),
    ...(velocity === undefined ? {} : { faceVelocityMPerS: velocity }),
    ...(air === undefined ? {} : { inducedHeatW: air.inducedHeatW, temperingW: air.temperingW }),
    ...(year === undefined ? {} : { year }),
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
  const { year, supplyFan = { pressureRisePa: 100, efficiency: 0.3 }, signal } = options;
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
          signal === undefined ? {} : { signal },
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
