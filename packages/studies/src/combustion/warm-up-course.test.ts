import { hearthStages } from '@evendraft/airflow';
import { compileHouse, houseWeather, parseHouse } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { combustionSituation } from './combustion-situation.js';
import { flameOfStage } from './flame-of-stage.js';
import { houseWithoutFlues } from './house-without-flues.js';
import { statesOfFlues } from './states-of-flues.js';
import { startCourse } from './start-course.js';
import { wallsAtRest, warmUpCourse } from './warm-up-course.js';

/** An invented house with a water heater; the hood's flow decides which way its flue goes. */
function solvedWith(hood: string, outdoors: string) {
  const parsed = parseHouse({
    evendraft: 1,
    name: 'Larch Bend 3',
    floorArea: '180 m2',
    volume: '440 m3',
    airtightness: { result: '2 ACH50', direction: 'depressurized' },
    exhaust: { hood: { kind: 'hood', flow: hood } },
    weather: [{ name: 'only', outdoorTemperature: outdoors, wind: 'calm' }],
    appliances: {
      'water heater': {
        vent: 'natural draft',
        fuel: 'gas',
        input: '12 kW',
        flue: {
          height: '7 m',
          diameter: '175 mm',
          construction: 'masonry, tile-lined',
          exteriorShare: '20 %',
          collarHeight: '1.5 m',
          connector: { length: '2 m', rise: '0.5 m', diameter: '100 mm', elbows: 2 },
          draftHood: { reliefArea: '120 cm2' },
          duringTest: 'sealed',
        },
      },
    },
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const made = compileHouse(parsed.house);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const { compiled } = made;
  const rest = houseWithoutFlues(compiled);
  if ('withoutAir' in rest) throw new Error(rest.withoutAir.join());
  const solved = combustionSituation(compiled, statesOfFlues(compiled, rest), {
    appliance: 'water heater',
    state: { running: { hood: 'on' }, doors: {} },
    firing: { 'water heater': 'firing' },
    weather: houseWeather(compiled.house, compiled.house.weathers[0]!),
    airtightnessCase: 0,
  });
  if ('reason' in solved) throw new Error(solved.reason);
  return { compiled, solved };
}

describe('a flue that starts cold', () => {
  it('warms for hours and comes to rest in the state of the balance', () => {
    const { compiled, solved } = solvedWith('10 L/s', '5 C');
    const course = startCourse(compiled, solved, { start: 'cold', index: 0 })!;
    expect(course.settled).toBe(true);
    expect(course.spillageS).toBe(0);
    const { situation, roots } = solved;
    const end = course.rows.at(-1)!;
    const flow = roots[situation.fromCold]!.flows[0]!;
    // Sixteen cells of wall a piece follow the gas within a percent or so.
    expect(Math.abs(end.massFlowKgPerS / flow - 1)).toBeLessThan(0.02);
    expect(end.outletTemperatureC).toBeGreaterThan(course.rows[0]!.outletTemperatureC);
    expect(end.tapDraftPa).toBeLessThan(course.rows[0]!.tapDraftPa);
  });

  it('spills for good where outdoor air comes down, and begins drawn where it was hot', () => {
    const { compiled, solved } = solvedWith('120 L/s', '-10 C');
    expect(solved.situation.verdict).toBe('drafts only once warm');
    const cold = startCourse(compiled, solved, { start: 'cold', index: 0 })!;
    const warm = startCourse(compiled, solved, { start: 'warm', index: 0 })!;
    expect(cold.spillageS).toBeNull();
    expect(cold.rows.every(({ spilledShare }) => spilledShare > 0.99)).toBe(true);
    expect(warm.spillageS).toBe(0);
    // Only what enters a vent heats it.
    expect(cold.rows.at(-1)!.outletTemperatureC).toBeLessThan(21);
  });

  it('spills at first and draws after, where its flue just lets some gas in', () => {
    const { compiled, solved } = solvedWith('70 L/s', '-10 C');
    const { set } = solved;
    const cold = wallsAtRest(set, [-0.02]);
    const course = warmUpCourse(compiled, set, { walls: cold, flows: [-0.02] })!;
    const shares = course.steps.map(({ flues }) => flues[0]!.spilledShare);
    expect(course.steps.map(({ timeS }) => timeS)).toEqual(
      course.steps.map(({ timeS }) => timeS).toSorted((a, b) => a - b),
    );
    expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
    expect(course.settled).toBe(true);
  });
});

describe('the flame of a stage', () => {
  const fire = { vent: 'open hearth', fuel: 'wood' } as const;
  const stage = {
    name: 'full fire',
    gasFlowKgPerS: 0,
    gas: { aboveRoomK: 180 },
    ventFlowKgPerS: 0.1,
    gasShare: 1,
  };

  it('of a fire brings the stage’s heat at the stage’s flow', () => {
    const flame = flameOfStage(fire, stage, 20)!;
    expect(flame.gasFlowKgPerS).toBeLessThan(
      0.1 / (0.8 * hearthStages['open hearth']['full fire'].excessAir),
    );
    const heat = flame.gasFlowKgPerS * (flame.gasTemperatureC - 20);
    expect(heat).toBeCloseTo(0.1 * 180, 9);
  });

  it('of a burner is what the house says', () => {
    const flame = flameOfStage(
      { vent: 'natural draft', fuel: 'gas' },
      {
        name: 'firing',
        gasFlowKgPerS: 0.0056,
        gas: { aboveRoomK: 222 },
        ventFlowKgPerS: 0.008,
        gasShare: 0.7,
      },
      20,
    )!;
    expect(flame.gasTemperatureC).toBe(242);
    expect(flame.gasFlowKgPerS).toBe(0.0056);
    // Some 0.46 kg/s a megawatt at 8 % CO2 (derived from the composition of natural gas).
    expect(flame.inputW).toBeGreaterThan(11_000);
    expect(flame.inputW).toBeLessThan(13_500);
  });

  it('is none while a flue only stands warm', () => {
    const warm = { ...stage, name: 'standing warm', ventFlowKgPerS: 0 };
    expect(flameOfStage(fire, warm, 20)).toBeUndefined();
  });
});
