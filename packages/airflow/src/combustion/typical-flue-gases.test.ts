import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { draftHoodMixing } from '../flues/draft-hood-mixing.js';
import { fuels } from './fuels.js';
import { productsOfCombustion } from './products-of-combustion.js';
import { typicalFlueGases } from './typical-flue-gases.js';

const massOf = (kind: keyof typeof typicalFlueGases): number => {
  const { fuel, carbonDioxideFraction } = typicalFlueGases[kind];
  return productsOfCombustion({ fuel: fuels[fuel], carbonDioxideFraction }).flueGasKgPerJ;
};

test('every typical gas can come of its fuel', () => {
  for (const kind of Object.keys(typicalFlueGases) as (keyof typeof typicalFlueGases)[]) {
    expect(massOf(kind)).toBeGreaterThan(3e-7);
    expect(typicalFlueGases[kind].status).toBe('memory');
  }
});

test('diluting the gas before the hood to the CO2 behind it gives about the rise behind it', () => {
  const before = typicalFlueGases['gas, before the draft hood'];
  const behind = typicalFlueGases['gas, behind the draft hood'];
  const { ventInletTemperatureC } = draftHoodMixing({
    applianceFlowKgPerS: massOf('gas, before the draft hood'),
    applianceTemperatureC: 20 + before.temperatureRiseK,
    ventFlowKgPerS: massOf('gas, behind the draft hood'),
    roomTemperatureC: 20,
    outdoorTemperatureC: 0,
  });
  expectNear(ventInletTemperatureC - 20, behind.temperatureRiseK, {
    relative: 0.1,
    because: 'two rows of a table of round numbers, not of one appliance',
  });
});
