import type { AirState, DoorwayDescription } from '@evendraft/airflow';
import { expect, it } from 'vitest';
import { buildNetwork } from './build-network.js';
import type { Balance } from './balance.js';
import type { LinkDescription, NetworkDescription } from './network-description.js';
import type { Scenario } from './scenario.js';
import { solveNetwork } from './solve-network.js';

const door: DoorwayDescription = {
  kind: 'doorway',
  widthM: 0.9,
  heightM: 2,
  dischargeCoefficient: 0.6,
};
// Dry air of 18 and 20 °C at 101,325 Pa; the answers are derived by a separate program.
const cool: AirState = { temperatureC: 18, densityKgPerM3: 1.212368662 };
const warm: AirState = { temperatureC: 20, densityKgPerM3: 1.204097343 };

it('a cool room behind a doorway to a warm hall exchanges 0.159382 kg/s each way without net flow', () => {
  const { links } = solved();
  expect(Math.abs(links.pressureDifferencePa[1]! - 0.0810214)).toBeLessThan(5e-7);
  expect(Math.abs(links.massFlowKgPerS[1]!)).toBeLessThan(1e-12);
  expect(Math.abs(links.forwardKgPerS[1]! - 0.159382)).toBeLessThan(5e-7);
  expect(Math.abs(links.backwardKgPerS[1]! - 0.159382)).toBeLessThan(5e-7);
});

it('an exhaust in the room takes its air through the doorway, and the difference of the streams is its flow', () => {
  const { links, proof } = solved([
    {
      ...level('fan', 'room', 'out'),
      law: { kind: 'fixedFlow', massFlowKgPerS: 0.1 },
    },
  ]);
  expect(links.backwardKgPerS[1]!).toBeGreaterThan(links.forwardKgPerS[1]!);
  expect(links.forwardKgPerS[1]!).toBeGreaterThan(0);
  expect(
    Math.abs(links.forwardKgPerS[1]! - links.backwardKgPerS[1]! - links.massFlowKgPerS[1]!),
  ).toBeLessThan(1e-14);
  expect(Math.abs(links.massFlowKgPerS[1]! + 0.1)).toBeLessThan(1e-9);
  expect(proof.enclosed).toBe(true);
});

it('a door a third open has a third of the streams, a shut one none', () => {
  const whole = solved().links;
  const third = solved([], { linkScale: Float64Array.of(1, 1 / 3) }).links;
  expect(Math.abs(third.forwardKgPerS[1]! - whole.forwardKgPerS[1]! / 3)).toBeLessThan(1e-9);
  const window: LinkDescription = {
    ...level('window', 'room', 'out'),
    law: { kind: 'orifice', areaM2: 0.01, dischargeCoefficient: 0.6 },
  };
  const shut = solved([window], { linkScale: Float64Array.of(1, 0, 1) }).links;
  expect(shut.forwardKgPerS[1]).toBe(0);
  expect(shut.backwardKgPerS[1]).toBe(0);
});

function level(id: string, from: string, to: string) {
  return { id, origin: id, from, to, fromHeightM: 0, toHeightM: 0 };
}

/** A hall with a leak to outdoors, and a room that has only a doorway to the hall. */
function solved(more: readonly LinkDescription[] = [], scenario: Scenario = {}): Balance {
  const description: NetworkDescription = {
    outdoorAir: warm,
    zones: [
      { id: 'hall', origin: 'hall', heightM: 0, air: warm },
      { id: 'room', origin: 'room', heightM: 0, air: cool },
    ],
    boundaries: [{ id: 'out', origin: 'out', heightM: 0, pressurePa: 0, air: warm }],
    links: [
      {
        ...level('leak', 'hall', 'out'),
        law: { kind: 'orifice', areaM2: 0.05, dischargeCoefficient: 0.6 },
      },
      { ...level('door', 'room', 'hall'), law: door },
      ...more,
    ],
  };
  const built = buildNetwork(description);
  if (built.status !== 'built') throw new Error(JSON.stringify(built.issues));
  const balance = solveNetwork(built.network, scenario);
  if (balance.status !== 'solved') throw new Error(`${balance.status}: ${balance.hint}`);
  return balance;
}
