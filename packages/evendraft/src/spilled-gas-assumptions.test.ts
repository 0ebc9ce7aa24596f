import type { House } from '@evendraft/house';
import type { DraftResults } from '@evendraft/report';
import { describe, expect, it } from 'vitest';
import { spilledGasAssumptions } from './spilled-gas-assumptions.js';

// Only what the function reads.
const house = {
  appliances: [
    { id: 'heater', origin: 'appliances.heater', vent: 'natural draft', fuel: 'gas' },
    { id: 'stove', origin: 'appliances.stove', vent: 'closed stove', fuel: 'wood' },
  ],
} as unknown as House;
const found = (appliances: readonly object[]) =>
  ({ status: 'solved', appliances }) as unknown as DraftResults;

describe('what concentrations of spilled gas assume', () => {
  it('is listed with a source for each appliance that spills, mixing and burner included', () => {
    const listed = spilledGasAssumptions(
      house,
      found([
        { appliance: 'heater', spilled: { carbonMonoxideAirFreePpm: 400 } },
        { appliance: 'stove', spilled: { carbonMonoxideAirFreePpm: 5000 } },
      ]),
    );
    expect(listed.map(({ origin }) => origin)).toEqual([
      'appliances.heater',
      'appliances.stove',
      'spilled gas',
      'spilled gas',
      'spilled gas',
    ]);
    expect(listed.map(({ value }) => value).slice(0, 2)).toEqual(['400 ppm', '5000 ppm']);
    expect(listed.map(({ source }) => source.status).slice(0, 2)).toEqual(['memory', 'our choice']);
  });

  it('is nothing where nothing spills or flues were not solved', () => {
    expect(spilledGasAssumptions(house, found([{ appliance: 'heater' }]))).toEqual([]);
    expect(spilledGasAssumptions(house, { status: 'not solved', why: 'Not asked.' })).toEqual([]);
    expect(spilledGasAssumptions(house, undefined)).toEqual([]);
  });
});
