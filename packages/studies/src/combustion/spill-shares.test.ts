import { expect, it } from 'vitest';
import { randomVents } from './internal/random-vents.js';
import { countedShare, spillShares } from './spill-shares.js';
import { tapDraft } from './tap-draft.js';
import type { VentSystem } from './vent-system.js';

/** Appliances on one chimney with 5 g/s of gas each. */
function burning(members: number): VentSystem {
  const { system } = randomVents(() => 0.5, members);
  return {
    ...system,
    members: system.members.map((member) => ({ ...member, gasFlowKgPerS: 0.005 })),
  };
}

it('gas spills as far as the vent takes less, and all of it where air comes down', () => {
  const alone = burning(1);
  expect(spillShares(alone, [0.01])).toEqual([0]);
  expect(spillShares(alone, [0.004])[0]).toBeCloseTo(0.2, 12);
  expect(spillShares(alone, [-0.004])).toEqual([1]);
});

it('gas of one appliance comes out at the other where its connector runs down', () => {
  // 9 g/s rise to the foot of the chimney, 3 g/s of them go down again: a third.
  expect(spillShares(burning(2), [0.009, -0.003])[0]).toBeCloseTo(1 / 3, 12);
  // Outdoor air falls in the chimney as well: all that rises comes down.
  expect(spillShares(burning(2), [0.002, -0.006])[0]).toBeCloseTo(1 - 0.4 * (1 - 6 / 6), 12);
});

it('an appliance that is off spills nothing', () => {
  const { system } = randomVents(() => 0.9, 1);
  expect(spillShares(system, [-0.01])).toEqual([0]);
});

it('draft at the tap is what room air and entry lose, negative while gas rises', () => {
  const flue = { entryLoss: 1.5, collarAreaM2: 0.01 };
  const lawAir = { temperatureC: 150, densityKgPerM3: 0.8 };
  // V = 0.008/(0.8 · 0.01) = 1 m/s, so 0.4 Pa of velocity pressure (derived).
  const drawing = { massFlowKgPerS: 0.008, lawAir, inletSuctionPa: 0.3 };
  expect(tapDraft(flue, drawing)).toBeCloseTo(-0.3 - 1.5 * 0.4, 12);
  const falling = { massFlowKgPerS: -0.008, lawAir, inletSuctionPa: -2 };
  expect(tapDraft(flue, falling)).toBeCloseTo(2 + 1.5 * 0.4, 12);
});

it('all gas counts where a burner presses it into a vent that leaks, above the pressure of the room', () => {
  const leaking = { leaksUnderPressure: true };
  expect(countedShare(leaking, { tapDraftPa: 2, spilledShare: 0 })).toBe(1);
  expect(countedShare(leaking, { tapDraftPa: -2, spilledShare: 0 })).toBe(0);
  expect(countedShare({ leaksUnderPressure: false }, { tapDraftPa: 2, spilledShare: 0.1 })).toBe(
    0.1,
  );
});
