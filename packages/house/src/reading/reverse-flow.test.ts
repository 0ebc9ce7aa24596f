import { flowAt, typicalFanCurve, type FlowLawDescription } from '@evendraft/airflow';
import { expect, test } from 'vitest';
import { withReverseFlow } from './reverse-flow.js';

const fan: FlowLawDescription = {
  kind: 'fanCurve',
  points: typicalFanCurve({
    ratedFlowM3PerS: 0.3,
    ratingPressurePa: 62.5,
    shutOffPressurePa: 224,
    ductPressurePa: 0,
  }),
  beyondShutOff: 'blocked',
};
const flow = (law: FlowLawDescription, risePa: number): number =>
  flowAt(law, -risePa).massFlowKgPerS;

test('below shut-off the fan moves what it moved before', () => {
  const open = withReverseFlow(fan);
  for (const rise of [-50, 0, 62.5, 150, 220]) {
    expect(flow(open, rise)).toBeCloseTo(flow(fan, rise), 12);
  }
});

test('beyond shut-off it is blown backwards as far as it was short of it', () => {
  const open = withReverseFlow(fan);
  for (const beyond of [1, 20, 100, 224]) {
    expect(flow(open, 224 + beyond)).toBeCloseTo(-flow(open, 224 - beyond), 12);
  }
  expect(flow(fan, 300)).toBe(0);
});

test('a constant flow is left as it is', () => {
  const held: FlowLawDescription = { kind: 'fixedFlow', volumeFlowM3PerS: 0.1 };
  expect(withReverseFlow(held)).toBe(held);
});
