import {
  airAsFlueGas,
  airAt,
  flowAt,
  flueConstructions,
  flueDuct,
  flueInSteadyState,
  flueLossCoefficient,
  gravity,
  type AirState,
  type FlowLawDescription,
  type FluePiece,
} from '@evendraft/airflow';
import { findAllBalances, type NetworkDescription } from '@evendraft/network';
import { expect, it } from 'vitest';

const pressurePa = 101325;
const outdoors = airAt({ temperatureC: 0, pressurePa });
const indoors = airAt({ temperatureC: 20, pressurePa });
const chimney: FluePiece = {
  lengthM: 6,
  riseM: 6,
  hydraulicDiameterM: 0.13,
  areaM2: (Math.PI / 4) * 0.13 ** 2,
  construction: flueConstructions['masonry, tile-lined'],
  surroundings: 'outdoors',
  ambientTemperatureC: 0,
  lossCoefficient: flueLossCoefficient({ 'draft hood': 1, 'elbow 90': 1, 'low-resistance cap': 1 }),
};
const stateAt = (massFlowKgPerS: number) =>
  flueInSteadyState({
    pieces: [chimney],
    massFlowKgPerS,
    gas: airAsFlueGas,
    inletTemperatureC: 120,
    outdoorTemperatureC: 0,
    pressurePa,
  });
/** Air of the house enters it below, outdoor air above; only its column is warm. */
const law = flueDuct([chimney]);
const leak: FlowLawDescription = {
  kind: 'powerLaw',
  coefficientM3PerSPaN: 0.012,
  exponent: 0.65,
};
const warm = stateAt(0.012).columnDensityKgPerM3;
const cold = stateAt(-0.012).columnDensityKgPerM3;

it('a warm flue is lighter than outdoor air by its draft, a reversed one as heavy', () => {
  expect((outdoors.densityKgPerM3 - warm) * gravity * 6).toBeGreaterThan(8);
  expect(Math.abs(cold - outdoors.densityKgPerM3)).toBeLessThan(1e-12);
});

it.each([
  [-0.02, ['upward']],
  [0.05, ['upward', 'downward']],
  [0.2, ['downward']],
])(
  'with an exhaust of %d m3/s (less than 0: a supply) the flue can run %j, as bisection on the pressure finds',
  (exhaustM3PerS, directions) => {
    const result = findAllBalances(
      house(exhaustM3PerS),
      {},
      { twoState: [{ link: 'flue', upwardDensityKgPerM3: warm, downwardDensityKgPerM3: cold }] },
    );
    if (result.status !== 'solved') throw new Error(result.status);
    expect(result.complete).toBe(true);
    const moving = result.balances.filter(({ columns }) => columns[0]!.state !== 'still');
    expect(moving.map(({ columns }) => columns[0]!.state).sort()).toEqual([...directions].sort());
    const scanned = bisected(exhaustM3PerS);
    expect(moving).toHaveLength(scanned.length);
    for (const { columns, balance } of moving) {
      const own = scanned.find(({ state }) => state === columns[0]!.state)!;
      expect(Math.abs(balance.pressuresPa[0]! - own.pressurePa)).toBeLessThan(1e-6);
    }
  },
);

function house(exhaustM3PerS: number): NetworkDescription {
  const link = { origin: 'house', from: 'house', to: 'outdoors', fromHeightM: 0 };
  return {
    outdoorAir: outdoors,
    zones: [{ id: 'house', origin: 'house', heightM: 0, air: indoors }],
    boundaries: [{ id: 'outdoors', origin: 'outdoors', heightM: 0, pressurePa: 0, air: outdoors }],
    links: [
      { ...link, id: 'leak', toHeightM: 0, law: leak },
      {
        ...link,
        id: 'fan',
        toHeightM: 0,
        law: { kind: 'fixedFlow', volumeFlowM3PerS: exhaustM3PerS },
      },
      { ...link, id: 'flue', toHeightM: 6, columnAir: outdoors, law },
    ],
  };
}

/** Balances of both states by bisection on the pressure of the house, each only where its direction agrees. */
function bisected(exhaustM3PerS: number) {
  const air: { readonly from: AirState; readonly to: AirState } = { from: indoors, to: outdoors };
  return (['upward', 'downward'] as const).flatMap((state) => {
    const density = state === 'upward' ? warm : cold;
    const flue = (p: number): number =>
      flowAt(law, p + (outdoors.densityKgPerM3 - density) * gravity * 6, air).massFlowKgPerS;
    const inlet = exhaustM3PerS > 0 ? indoors : outdoors;
    const net = (p: number): number =>
      flowAt(leak, p, air).massFlowKgPerS + flue(p) + exhaustM3PerS * inlet.densityKgPerM3;
    let low = -500;
    let high = 500;
    while (high - low > 1e-9) {
      const middle = (low + high) / 2;
      if (net(middle) > 0) high = middle;
      else low = middle;
    }
    const flow = flue(low);
    return (state === 'upward' ? flow > 1e-9 : flow < -1e-9) ? [{ state, pressurePa: low }] : [];
  });
}
