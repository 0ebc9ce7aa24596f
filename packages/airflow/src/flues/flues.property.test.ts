import fc from 'fast-check';
import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { draftHoodMixing } from './draft-hood-mixing.js';
import { flueConstructions, type FlueConstructionName } from './flue-constructions.js';
import { flueCooling } from './flue-cooling.js';
import { flueDraft } from './flue-draft.js';
import { airAsFlueGas } from './flue-gas.js';
import { flueInSteadyState } from './flue-in-steady-state.js';
import { flueLosses } from './flue-losses.js';
import type { FluePiece } from './flue-piece.js';
import { flueWallAtRest, type FlueWall } from './flue-wall.js';
import { warmFlue } from './warm-flue.js';

const seed = 1125;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const constructions = Object.keys(flueConstructions) as FlueConstructionName[];
const piece: fc.Arbitrary<FluePiece> = fc
  .record({
    lengthM: between(0.1, 12),
    slope: between(0, 1),
    diameterM: between(0.08, 0.4),
    construction: fc.constantFrom(...constructions),
    surroundings: fc.constantFrom('indoors' as const, 'outdoors' as const),
    ambientTemperatureC: between(-30, 35),
    lossCoefficient: between(0, 8),
  })
  .map(({ slope, diameterM, construction, ...rest }) => ({
    ...rest,
    riseM: slope * rest.lengthM,
    hydraulicDiameterM: diameterM,
    areaM2: (Math.PI / 4) * diameterM ** 2,
    construction: flueConstructions[construction],
  }));
const pieces = fc.array(piece, { minLength: 1, maxLength: 4 });
const flowKgPerS = fc.oneof(between(-0.05, 0.05), fc.constant(0), between(-1e-9, 1e-9));
const conditions = fc.record({
  inletTemperatureC: between(20, 500),
  outdoorTemperatureC: between(-30, 35),
  pressurePa: between(70_000, 103_000),
});
const gas = airAsFlueGas;

test('gas never leaves the range of what enters and what is around, and loses what its enthalpy falls by', () => {
  fc.assert(
    fc.property(
      between(-30, 500),
      between(-30, 40),
      between(0, 500),
      between(0, 50),
      (inlet, around, ua, mc) => {
        const state = flueCooling({
          inletTemperatureC: inlet,
          ambientTemperatureC: around,
          conductanceWPerK: ua,
          heatCapacityFlowWPerK: mc,
        });
        const [low, high] = [Math.min(inlet, around) - 1e-9, Math.max(inlet, around) + 1e-9];
        for (const temperature of [state.outletTemperatureC, state.meanTemperatureC]) {
          expect(temperature).toBeGreaterThanOrEqual(low);
          expect(temperature).toBeLessThanOrEqual(high);
        }
        const because = 'a difference of temperatures of some hundred degrees';
        if (mc > 0) {
          const absolute = 1e-12 * mc * 600;
          expectNear(state.heatLossW, mc * (inlet - state.outletTemperatureC), {
            absolute,
            because,
          });
          expectNear(state.heatLossW, ua * (state.meanTemperatureC - around), {
            absolute: 1e-12 * (ua + mc) * 600,
            because,
          });
        }
      },
    ),
    { seed, numRuns: 500 },
  );
});

test('two pieces in series are one of both their lengths', () => {
  fc.assert(
    fc.property(piece, flowKgPerS, conditions, (whole, massFlowKgPerS, around) => {
      const half = { ...whole, lengthM: whole.lengthM / 2, riseM: whole.riseM / 2 };
      const one = flueInSteadyState({ ...around, gas, massFlowKgPerS, pieces: [whole] });
      const two = flueInSteadyState({ ...around, gas, massFlowKgPerS, pieces: [half, half] });
      expectNear(two.outletTemperatureC, one.outletTemperatureC, { absolute: 1e-9 });
      expectNear(two.meanGas.temperatureC, one.meanGas.temperatureC, { absolute: 1e-9 });
    }),
    { seed },
  );
});

test('draft grows with height, with cold outdoors and with hot gas', () => {
  fc.assert(
    fc.property(between(1, 12), between(-30, 20), between(40, 400), (heightM, cold, hot) => {
      const column = { heightM, outdoorTemperatureC: cold, gasTemperatureC: hot, pressurePa: 1e5 };
      const draft = flueDraft(column);
      expect(draft).toBeGreaterThan(0);
      expect(flueDraft({ ...column, heightM: heightM * 1.1 })).toBeGreaterThan(draft);
      expect(flueDraft({ ...column, outdoorTemperatureC: cold - 5 })).toBeGreaterThan(draft);
      expect(flueDraft({ ...column, gasTemperatureC: hot + 5 })).toBeGreaterThan(draft);
      const two = flueDraft({ ...column, heightM: 2 * heightM });
      expectNear(two, 2 * draft);
    }),
    { seed },
  );
});

test('losses oppose the flow and grow faster than it', () => {
  fc.assert(
    fc.property(pieces, between(0.001, 0.03), conditions, (flue, massFlowKgPerS, around) => {
      const state = flueInSteadyState({ ...around, gas, massFlowKgPerS, pieces: flue });
      const once = flueLosses(flue, state, massFlowKgPerS);
      const twice = flueLosses(flue, state, 2 * massFlowKgPerS);
      once.forEach((loss, index) => {
        expect(loss).toBeGreaterThan(0);
        expect(twice[index]).toBeGreaterThan(2 * loss * (1 - 1e-12));
      });
    }),
    { seed },
  );
});

test('mass and heat at a draft hood balance', () => {
  const hoods = fc.record({
    applianceFlowKgPerS: between(0, 0.02),
    applianceTemperatureC: between(60, 400),
    ventFlowKgPerS: between(-0.02, 0.03),
    roomTemperatureC: between(10, 25),
    outdoorTemperatureC: between(-30, 35),
  });
  fc.assert(
    fc.property(hoods, (hood) => {
      const state = draftHoodMixing(hood);
      const up = Math.max(0, hood.ventFlowKgPerS);
      // Gas and dilution come in; what goes up and what spills go out.
      expectNear(hood.applianceFlowKgPerS + state.dilutionKgPerS, up + state.spilledKgPerS, {
        absolute: 1e-16,
      });
      const heatIn =
        (hood.applianceFlowKgPerS - state.spilledKgPerS) * hood.applianceTemperatureC +
        state.dilutionKgPerS * hood.roomTemperatureC;
      if (up > 0) expectNear(up * state.ventInletTemperatureC, heatIn, { absolute: 1e-13 });
      expect(state.dilutionKgPerS * state.spilledKgPerS).toBe(0);
    }),
    { seed, numRuns: 500 },
  );
});

/** A wall of any temperatures, cell by cell. */
const walls = (flue: readonly FluePiece[], numbers: readonly number[]): FlueWall => ({
  temperaturesC: flueWallAtRest(flue, 5).temperaturesC.map((cells, index) =>
    cells.map((_, cell) => numbers[(7 * index + cell) % numbers.length]!),
  ),
});
const numbers = fc.array(between(-30, 400), { minLength: 3, maxLength: 9 });

test('the heat of a step closes to 1e-9: what the gas gives is stored or lost', () => {
  fc.assert(
    fc.property(
      fc.tuple(pieces, numbers),
      flowKgPerS,
      fc.tuple(conditions, between(0.1, 1e5)),
      ([flue, cells], massFlowKgPerS, [around, durationS]) => {
        const wall = walls(flue, cells);
        const { heat, state } = warmFlue({
          ...around,
          gas,
          massFlowKgPerS,
          pieces: flue,
          wall,
          durationS,
        });
        const size = Math.abs(heat.fromGasJ) + Math.abs(heat.storedJ) + Math.abs(heat.lostJ);
        const moved = Math.abs(heat.fromGasJ - heat.storedJ - heat.lostJ);
        // A step of almost no time moves almost nothing out of a wall of much heat: rounding of that heat counts.
        const held = flue.reduce(
          (sum, { construction, areaM2, hydraulicDiameterM, lengthM }) =>
            sum + ((4 * areaM2 * lengthM) / hydraulicDiameterM) * construction.heatCapacityJPerM2K,
          0,
        );
        expect(moved).toBeLessThanOrEqual(1e-9 * size + 1e-14 * held * 500);
        // The enthalpy that the gas brings and takes says the same as the sum over the cells.
        const inlet = massFlowKgPerS < 0 ? around.outdoorTemperatureC : around.inletTemperatureC;
        if (massFlowKgPerS !== 0) {
          const gasJ =
            Math.abs(massFlowKgPerS) *
            gas.specificHeatJPerKgK *
            (inlet - state.outletTemperatureC) *
            durationS;
          expectNear(heat.fromGasJ, gasJ, {
            absolute: 1e-9 * size + 1e-12 * Math.abs(massFlowKgPerS) * 1006 * 500 * durationS,
            because: 'a share of the heat in joules, and the rounding of some hundred degrees',
          });
        }
      },
    ),
    { seed, numRuns: 300 },
  );
});

test('however long the step, no temperature leaves the range of gas, wall and surroundings', () => {
  fc.assert(
    fc.property(
      fc.tuple(pieces, numbers),
      flowKgPerS,
      fc.tuple(conditions, between(-3, 7)),
      ([flue, cells], massFlowKgPerS, [around, decade]) => {
        const wall = walls(flue, cells);
        const inlet = massFlowKgPerS < 0 ? around.outdoorTemperatureC : around.inletTemperatureC;
        const all = [
          ...wall.temperaturesC.flatMap((piece) => [...piece]),
          ...flue.map((one) => one.ambientTemperatureC),
          ...(massFlowKgPerS === 0 ? [] : [inlet]),
        ];
        const [low, high] = [Math.min(...all) - 1e-9, Math.max(...all) + 1e-9];
        const warmed = warmFlue({
          ...around,
          gas,
          massFlowKgPerS,
          pieces: flue,
          wall,
          durationS: 10 ** decade,
        });
        const after = [
          ...warmed.wall.temperaturesC.flatMap((piece) => [...piece]),
          ...warmed.state.pieces.map((one) => one.meanTemperatureC),
          warmed.state.outletTemperatureC,
        ];
        for (const temperature of after) {
          expect(temperature).toBeGreaterThanOrEqual(low);
          expect(temperature).toBeLessThanOrEqual(high);
        }
      },
    ),
    { seed, numRuns: 300 },
  );
});

test('a cold flue that is fired draws more with every step, and the step leaves the wall it was given alone', () => {
  fc.assert(
    fc.property(pieces, between(0.002, 0.03), between(1, 60), (flue, massFlowKgPerS, durationS) => {
      const inPlace = flue.map((one) => ({ ...one, ambientTemperatureC: 10 }));
      const around = { inletTemperatureC: 200, outdoorTemperatureC: 0, pressurePa: 101325 };
      let wall = flueWallAtRest(inPlace);
      let before = -Infinity;
      for (let k = 0; k < 8; k++) {
        const kept = wall.temperaturesC.map((cells) => [...cells]);
        const warmed = warmFlue({
          ...around,
          gas,
          massFlowKgPerS,
          pieces: inPlace,
          wall,
          durationS,
        });
        expect(wall.temperaturesC.map((cells) => [...cells])).toEqual(kept);
        expect(warmed.state.draftPa).toBeGreaterThanOrEqual(before - 1e-12);
        before = warmed.state.draftPa;
        ({ wall } = warmed);
      }
    }),
    { seed, numRuns: 100 },
  );
});
