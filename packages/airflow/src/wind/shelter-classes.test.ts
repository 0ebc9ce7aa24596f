import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { lowRiseSurfaces } from './low-rise-surfaces.js';
import { shelterClasses, type ShelterClass } from './shelter-classes.js';
import { superposedInfiltration } from './superposed-infiltration.js';

const classes = [1, 2, 3, 4, 5] as const;

test.each([
  ['speed factor', (of: ShelterClass) => shelterClasses[of].speedFactor],
  ['speed factor with a flue', (of: ShelterClass) => shelterClasses[of].speedFactorWithFlue[1]],
  ['shielding coefficient', (of: ShelterClass) => shelterClasses[of].shieldingCoefficient],
] as const)('each class shelters more than the one before: %s', (_, read) => {
  for (let k = 1; k < classes.length; k++) {
    expect(read(classes[k]!)).toBeLessThan(read(classes[k - 1]!));
  }
});

test('the flue stands higher in the wind than the walls', () => {
  for (const { speedFactor, speedFactorWithFlue } of Object.values(shelterClasses)) {
    for (const factor of speedFactorWithFlue) expect(factor).toBeGreaterThan(speedFactor);
  }
});

test('every class names a column of the low-rise table', () => {
  const columns = Object.keys(lowRiseSurfaces['long wall'].byShelter);
  for (const { tableShelter } of Object.values(shelterClasses)) {
    expect(columns).toContain(tableShelter);
  }
});

test('the wind coefficients of the superposition model fall as the square of the shielding coefficient', () => {
  // Two tables of two documents, each from memory: that they agree speaks for both.
  const flow = (shelterClass: ShelterClass): number =>
    superposedInfiltration({
      effectiveLeakageAreaM2: 0.05,
      temperatureDifferenceK: 0,
      windSpeedMPerS: 4,
      storeys: 1,
      shelterClass,
    });
  const shielding = (of: ShelterClass): number =>
    shelterClasses[of].shieldingCoefficient / shelterClasses[1].shieldingCoefficient;
  for (const of of classes) {
    expectNear((flow(of) / flow(1)) ** 2, shielding(of) ** 2, {
      relative: 0.02,
      because: 'both tables are rounded, the least entry to two digits',
    });
  }
});
