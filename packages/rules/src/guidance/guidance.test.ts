import { describe, expect, it } from 'vitest';
import { si, valueOf } from '../../test-data/screened.js';
import { RulesArgumentError } from '../rules-argument-error.js';
import { judgeDoorForce } from './door-force.js';
import { judgeHoodCapture } from './hood-capture-california.js';
import { judgeHoodFlow } from './hood-flow.js';
import { judgeDiffuser } from './make-up-diffuser.js';
import { judgeJetAtHood } from './make-up-jet.js';
import { judgeVelocity } from './make-up-velocity.js';
import { judgeNetFlow } from './net-flow-by-climate.js';
import { judgeGarageWall, judgeSoilGasSuction } from './suction-on-ground-and-garage.js';

const verdicts = (findings: readonly { readonly verdict: string }[]) =>
  findings.map(({ verdict }) => verdict);

describe('the flow of a hood', () => {
  const hood = (cfm: number) => ({
    device: 'hood',
    deliveredFlowM3PerS: si.cfm(cfm),
    widthM: si.ft(3),
    place: 'at a wall' as const,
    burnerInputW: si.btuPerHour(40000),
    kitchenVolumeM3: si.ft3(1600),
  });

  it('by width, by burners and by the kitchen is 300, 400 and 400 cfm, worked by hand', () => {
    const found = judgeHoodFlow(hood(350));
    expect(valueOf(found[0], 'guidance')).toBeCloseTo(si.cfm(300), 12);
    expect(valueOf(found[0], 'least by guidance')).toBeCloseTo(si.cfm(120), 12);
    expect(valueOf(found[1], 'guidance')).toBeCloseTo(si.cfm(400), 12);
    expect(valueOf(found[2], 'guidance')).toBeCloseTo(si.cfm(400), 12);
    expect(verdicts(found)).toEqual(['within the limit', 'beyond the limit', 'beyond the limit']);
  });

  it('over an island is 150 cfm a foot', () => {
    const [island] = judgeHoodFlow({ ...hood(350), place: 'over an island' });
    expect(valueOf(island, 'guidance')).toBeCloseTo(si.cfm(450), 12);
  });

  it('says what to give where a number is missing', () => {
    const found = judgeHoodFlow({ device: 'hood', deliveredFlowM3PerS: 0.1 });
    expect(verdicts(found)).toEqual(['not judged', 'not judged', 'not judged']);
    expect(found.map(({ give }) => give.length)).toEqual([2, 1, 1]);
  });

  it('is 160 or 280 cfm in a small dwelling in California, unless its capture is tested', () => {
    const judged = (range: 'electric' | 'gas', cfm: number, captureEfficiency?: number) =>
      judgeHoodCapture({
        device: 'hood',
        range,
        floorAreaM2: si.ft2(700),
        deliveredFlowM3PerS: si.cfm(cfm),
        ...(captureEfficiency === undefined ? {} : { captureEfficiency }),
      }).verdict;
    expect(judged('electric', 180)).toBe('within the limit');
    expect(judged('gas', 180)).toBe('beyond the limit');
    expect(judged('gas', 180, 0.9)).toBe('within the limit');
    expect(judged('gas', 300, 0.5)).toBe('within the limit');
  });
});

describe('velocities of make-up air', () => {
  it('are flow over area, and 75 fpm at the hood', () => {
    const at = (in2: number) =>
      judgeVelocity({
        subject: 'grille',
        place: 'at the hood',
        flowM3PerS: si.cfm(100),
        areaM2: si.in2(in2),
      });
    // 100 cfm through 1 ft² is 100 fpm, 0.508 m/s.
    expect(valueOf(at(144), 'velocity')).toBeCloseTo(0.508, 6);
    expect(at(144).verdict).toBe('beyond the limit');
    expect(at(288).verdict).toBe('within the limit');
    expect(at(0).verdict).toBe('not judged');
  });

  it('follow guidance of the caller, and say so', () => {
    const found = judgeVelocity({
      subject: 'duct',
      place: 'in a quiet duct',
      flowM3PerS: 0.1,
      areaM2: 0.02,
      largestMPerS: 6,
    });
    expect(found.verdict).toBe('within the limit');
    expect(found.source.status).toBe('our choice');
  });

  it('have diffusers warm enough and turned away', () => {
    expect(judgeDiffuser({ subject: 'diffuser' })).toEqual([]);
    const found = judgeDiffuser({
      subject: 'diffuser',
      airTemperatureC: 5,
      roomTemperatureC: 20,
      distanceM: 2,
      directedAway: false,
    });
    expect(verdicts(found)).toEqual(Array(3).fill('beyond the limit'));
  });
});

describe('net flow by climate', () => {
  const judged = (climate: 'hot and humid' | 'very cold' | 'other', cfm: number) =>
    judgeNetFlow({ climate, netExhaustM3PerS: si.cfm(cfm), floorAreaM2: si.ft2(2000) }).verdict;

  it('is 150 cfm for 2,000 ft², of exhaust where it is humid and of supply where it is cold', () => {
    expect(judged('hot and humid', 160)).toBe('beyond the limit');
    expect(judged('hot and humid', -300)).toBe('within the limit');
    expect(judged('very cold', -160)).toBe('beyond the limit');
    expect(judged('very cold', 300)).toBe('within the limit');
    expect(judged('other', 300)).toBe('not judged');
  });
});

describe('suction on the ground and the garage', () => {
  it('warns from 5 Pa on the ground, our choice, and from 0 against the garage', () => {
    const ground = (pressurePa: number) => judgeSoilGasSuction({ zone: 'basement', pressurePa });
    expect(ground(-3).verdict).toBe('within the limit');
    expect(ground(-5).verdict).toBe('near the limit');
    expect(ground(-8).verdict).toBe('beyond the limit');
    expect(ground(-8).source.status).toBe('our choice');
    const wall = (againstGaragePa: number) =>
      judgeGarageWall({ zone: 'main', againstGaragePa }).verdict;
    expect(wall(2)).toBe('within the limit');
    expect(wall(-0.5)).toBe('near the limit');
    expect(wall(-2)).toBe('beyond the limit');
  });
});

describe('make-up air that arrives at a hood', () => {
  const outlet = { subject: 'outlet', flowM3PerS: 0.2, areaM2: 0.25 };

  it('slows with the distance as a jet, and is never faster than at its face', () => {
    // 0.8 m/s at the face; K √A is 4.7 · 0.5 = 2.35 m, so that half of it is left at 4.7 m.
    const at = (distanceToHoodM: number, kind: 'grille' | 'open end' = 'grille') =>
      judgeJetAtHood({ ...outlet, diffuser: { kind, distanceToHoodM } })!;
    expect(valueOf(at(4.7), 'velocity at the hood')).toBeCloseTo(0.4, 9);
    expect(valueOf(at(1), 'velocity at the hood')).toBeCloseTo(0.8, 9);
    expect(valueOf(at(6, 'open end'), 'velocity at the hood')).toBeCloseTo(0.4, 9);
    // 75 fpm are 0.381 m/s.
    expect(at(1).verdict).toBe('beyond the limit');
    expect(at(10).verdict).toBe('within the limit');
  });

  it('is not held against a jet that is turned away, and says so', () => {
    const away = judgeJetAtHood({
      ...outlet,
      diffuser: { distanceToHoodM: 1, directedAway: true },
    })!;
    expect(away.verdict).toBe('within the limit');
    expect(away.notes.join(' ')).toContain('turned away');
    expect(away.notes.join(' ')).toContain('taken as a grille');
    expect(judgeJetAtHood({ ...outlet, diffuser: {} })).toBeUndefined();
  });
});

describe('the force on a door', () => {
  const door = {
    door: 'front door',
    holdingPressurePa: 50,
    widthM: 0.9,
    heightM: 2,
    handleToEdgeM: 0.1,
    interior: false,
  };

  it('is the moment of the pressure over the lever of the hand, worked by hand', () => {
    // 50 × 1.8 m² × 0.45 m = 40.5 N·m; over 0.8 m: 50.625 N.
    const force = (given: object) => valueOf(judgeDoorForce({ ...door, ...given })[0], 'force');
    expect(force({})).toBeCloseTo(50.625, 9);
    expect(force({ closerN: 20 })).toBeCloseTo(70.625, 9);
    expect(force({ holdingPressurePa: -50 })).toBeCloseTo(-50.625, 9);
    expect(force({ holdingPressurePa: -50, closerN: 20 })).toBeCloseTo(-30.625, 9);
  });

  it('is held against 30 and 15 lbf, and 5 lbf between rooms', () => {
    // 15 lbf are 66.7 N, 30 lbf 133.4 N, 5 lbf 22.2 N.
    expect(verdicts(judgeDoorForce(door))).toEqual(['within the limit', 'within the limit']);
    expect(verdicts(judgeDoorForce({ ...door, holdingPressurePa: 80 }))).toEqual([
      'within the limit',
      'beyond the limit',
    ]);
    expect(verdicts(judgeDoorForce({ ...door, interior: true }))).toEqual([
      'within the limit',
      'within the limit',
      'beyond the limit',
    ]);
  });

  it('says whether it sticks or flies open', () => {
    expect(judgeDoorForce(door)[0]?.notes.join(' ')).toContain('it sticks');
    const pushed = judgeDoorForce({ ...door, holdingPressurePa: -80, closerN: 5 });
    expect(pushed[0]?.notes.join(' ')).toContain('flies open');
  });

  it('refuses a handle that is not on the door', () => {
    for (const handleToEdgeM of [0.9, -0.1, NaN]) {
      expect(() => judgeDoorForce({ ...door, handleToEdgeM })).toThrow(RulesArgumentError);
    }
  });
});
