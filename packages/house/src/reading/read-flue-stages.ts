import {
  fuels,
  hearthFlow,
  hearthStages,
  productsOfCombustion,
  typicalFlueGases,
  type HearthKind,
  type TypicalFlueGas,
} from '@evendraft/airflow';
import type { FlueStage } from '../flue.js';
import { fuelName } from '../fuel-name.js';
import type { Appliance } from '../house.js';
import { doorOpen, doorsShut } from './read-flue-inlets.js';
import type { TypedFlue } from './read-flue-sections.js';
import { originOf, type Reading } from './reading.js';
import { ourChoice, sourceOf } from './sources.js';

/** Input where none is given [W]. */
const assumedInputW: Readonly<Record<Appliance['kind'], number>> = {
  'water heater': 12_000,
  furnace: 25_000,
  boiler: 30_000,
  fireplace: 15_000,
  'wood stove': 8_000,
  'room heater': 10_000,
  'decorative gas appliance': 10_000,
};

/** How much warmer than its room a flue stands that has just fired or has a pilot [K]. */
const standingWarmK = 20;

/**
 * What an appliance can be doing with its flue besides being off.
 *
 * @param reading - where assumptions are collected
 * @param flue - what the file says, and what it belongs to
 * @param appliance - its appliance
 * @returns the stages
 */
export function readFlueStages(
  reading: Reading,
  flue: TypedFlue,
  appliance: Pick<Appliance, 'kind' | 'fuel' | 'inputW'>,
): readonly FlueStage[] {
  const { path, vent } = flue;
  const origin = originOf(path);
  const inputW = appliance.inputW ?? assumedInputW[appliance.kind];
  if (appliance.inputW === undefined) {
    const source = ourChoice(`a usual ${appliance.kind}`);
    const value = `${inputW / 1000} kW`;
    reading.assumptions.push({ origin: originOf(path.slice(0, -1)), what: 'input', value, source });
  }
  const warm: FlueStage = {
    name: 'standing warm',
    gasFlowKgPerS: 0,
    gas: { aboveRoomK: standingWarmK },
    ventFlowKgPerS: 0,
    gasShare: 0,
  };
  reading.assumptions.push({
    origin,
    what: 'temperature of the flue when it stands warm',
    value: `${standingWarmK} K above its room`,
    source: ourChoice('a flue that fired a short time ago, or with a pilot'),
  });
  const fires = vent === 'open hearth' || vent === 'closed stove';
  const burning = fires
    ? fireStages(reading, flue, { ...appliance, inputW })
    : [firingStage(reading, flue, { ...appliance, inputW })];
  const damperOpen: readonly FlueStage[] =
    flue.inFile.damper === undefined
      ? []
      : [{ name: 'damper open', gasFlowKgPerS: 0, ventFlowKgPerS: 0, gasShare: 0 }];
  return [...burning, warm, ...damperOpen];
}

function firingStage(
  reading: Reading,
  { path, hasDraftHood }: TypedFlue,
  of: Pick<Appliance, 'fuel'> & { readonly inputW: number },
): FlueStage {
  const oil = of.fuel === 'oil';
  const gas = typicalFlueGases[oil ? 'oil' : 'gas, before the draft hood'];
  const behind = typicalFlueGases['gas, behind the draft hood'];
  const fuel = fuels[fuelName(of.fuel, false)];
  const perJoule = ({ carbonDioxideFraction }: TypicalFlueGas): number =>
    productsOfCombustion({ fuel, carbonDioxideFraction }).flueGasKgPerJ;
  const gasFlowKgPerS = perJoule(gas) * of.inputW;
  const ventFlowKgPerS = hasDraftHood ? perJoule(behind) * of.inputW : gasFlowKgPerS;
  const words = (each: TypicalFlueGas): string =>
    `${Number((100 * each.carbonDioxideFraction).toFixed(1))} % CO2`;
  reading.assumptions.push(
    {
      origin: originOf(path),
      what: 'gas of the firing appliance',
      value: `${words(gas)}, ${Math.round(gas.temperatureRiseK)} K above its room`,
      source: sourceOf(gas),
    },
    {
      origin: originOf(path),
      what: 'air that the burner takes from its room',
      value: 'as much as gas leaves it',
      source: ourChoice('the fuel adds some 5 % of the air'),
    },
  );
  if (hasDraftHood) {
    reading.assumptions.push({
      origin: originOf(path),
      what: 'gas behind its draft hood, for the cooling of the flue',
      value: words(behind),
      source: sourceOf(behind),
    });
  }
  return {
    name: 'firing',
    gasFlowKgPerS,
    gas: { aboveRoomK: gas.temperatureRiseK },
    ventFlowKgPerS,
    gasShare: gasFlowKgPerS / ventFlowKgPerS,
  };
}

function fireStages(
  reading: Reading,
  { vent, inFile, path }: TypedFlue,
  of: Pick<Appliance, 'fuel'> & { readonly inputW: number },
): readonly FlueStage[] {
  const fuel = fuels[fuelName(of.fuel, true)];
  const stagesOf = (kind: HearthKind, suffix: string): readonly FlueStage[] =>
    Object.entries(hearthStages[kind]).map(([name, stage]) => {
      const { flueGasKgPerS, temperatureRiseK } = hearthFlow({
        stage,
        fuel,
        fullInputW: of.inputW,
      });
      reading.assumptions.push({
        origin: originOf(path),
        what: `heat of the fire that its gas carries, ${name}${suffix}`,
        value: `${Math.round(100 * stage.heatToGasShare)} % of ${Math.round(100 * stage.burnRateShare)} % of its input`,
        source: sourceOf(stage),
      });
      return {
        name: `${name}${suffix}`,
        gasFlowKgPerS: 0,
        gas: { aboveRoomK: temperatureRiseK },
        ventFlowKgPerS: flueGasKgPerS,
        gasShare: 1,
      };
    });
  if (vent === 'closed stove') {
    return [
      ...stagesOf('wood stove, door shut', ''),
      ...stagesOf('wood stove, door open', doorOpen),
    ];
  }
  const shut = inFile.shutOpening === undefined ? [] : stagesOf('open hearth', doorsShut);
  return [...stagesOf('open hearth', ''), ...shut];
}
