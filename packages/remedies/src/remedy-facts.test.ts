import { describe, expect, it } from 'vitest';
import { inventedRow } from '../test-data/invented-row.js';
import { codeReadings } from './remedy-facts.js';

const natural = inventedRow();
const electric = inventedRow({
  appliances: { 'water heater': { vent: 'electric', kind: 'water heater' } },
});
const standings = (...args: Parameters<typeof codeReadings>) =>
  codeReadings(...args).map(({ standing }) => standing);

describe('code rules on make-up air', () => {
  it('ask for a damper where natural draft stands beside a hood above 400 cfm', () => {
    expect(standings({ kind: 'passive opening', size: 0.02 }, natural)).toEqual(['not satisfied']);
    expect(standings({ kind: 'passive opening', size: 0.02 }, electric)).toEqual([]);
  });

  it('want a passive opening above 8 in. behind a motorized damper', () => {
    expect(standings({ kind: 'make-up duct', size: 8 * 0.0254 }, electric)).toEqual([]);
    expect(standings({ kind: 'make-up duct', size: 9 * 0.0254 }, electric)).toEqual([
      'not satisfied',
    ]);
    expect(standings({ kind: 'motorized make-up duct', size: 11 * 0.0254 }, natural)).toEqual([
      'satisfied',
    ]);
    // The table of passive openings ends at 11 in.
    expect(standings({ kind: 'motorized make-up duct', size: 12 * 0.0254 }, natural)).toEqual([
      'not satisfied',
      'satisfied',
    ]);
  });

  it('leave a barometric damper that opens by 3 Pa to its data, refuse one that opens later, and not beside natural draft in one state', () => {
    const flap = (opensAtPa: number) =>
      ({ kind: 'barometric make-up duct', size: 0.2, opensAtPa }) as const;
    expect(standings(flap(2), electric)).toEqual(['local code decides']);
    expect(standings(flap(5), electric)).toEqual(['not satisfied']);
    expect(standings(flap(2), natural)).toEqual(['local code decides', 'not satisfied']);
  });

  it('want powered make-up air at about the rate of the exhaust', () => {
    const hood = 600 * (0.028316846592 / 60);
    expect(standings({ kind: 'powered make-up air', size: hood }, natural)).toEqual(['satisfied']);
    expect(standings({ kind: 'powered make-up air', size: hood / 2 }, natural)).toEqual([
      'not satisfied',
    ]);
  });
});
