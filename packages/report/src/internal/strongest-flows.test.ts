import { describe, expect, it } from 'vitest';
import type { SectionFlow } from '../drawings/house-section-data.js';
import { strongestFlows } from './strongest-flows.js';

function walls(heightM: number, volumeFlowM3PerS: number): SectionFlow {
  return { name: 'walls', kind: 'leakage', from: 'hall', heightM, volumeFlowM3PerS };
}

describe('strongestFlows', () => {
  it('adds up the leaks of one surface, in and out against each other', () => {
    expect(
      strongestFlows([walls(0.5, -0.25), walls(2, 0.75)], [walls(0.5, -1), walls(2, -0.5)]),
    ).toEqual([{ name: 'walls', from: 'hall', baseline: 0.5, worst: -1.5 }]);
  });

  it('keeps what has the same name elsewhere apart, the strongest of the worst state first', () => {
    const attic: SectionFlow = { ...walls(3, 2), to: 'attic' };
    const rows = strongestFlows([], [walls(1, -1), attic]);
    expect(rows.map(({ worst }) => worst)).toEqual([2, -1]);
  });
});
