import { describe, expect, it } from 'vitest';
import { parseHouse } from '../parse-house.js';

const file = (sections: Readonly<Record<string, unknown>>) =>
  parseHouse({
    evendraft: 1,
    name: 'Test Lane 4',
    floorArea: '2000 ft2',
    airtightness: '800 cfm at 50 Pa',
    exhaust: { hood: '600 cfm' },
    ...sections,
  });

describe('where make-up air comes out', () => {
  it('is read of a damper and of a fan, only what was given', () => {
    const result = file({
      makeUp: {
        inlet: {
          opensWith: 'hood',
          diameter: '8 in',
          diffuser: { kind: 'perforated panel', directedAway: true },
        },
      },
      supply: {
        fresh: {
          kind: 'supply fan',
          flow: '400 cfm',
          interlock: 'hood',
          faceArea: '0.2 m2',
          diffuser: { distanceToHood: '2.5 m', airTemperature: '12 C' },
        },
      },
    });
    if (!result.ok) throw new Error(JSON.stringify(result.issues));
    expect(result.house.makeUpOpenings[0]!.diffuser).toEqual({
      kind: 'perforated panel',
      directedAway: true,
    });
    const fan = result.house.devices.find(({ id }) => id === 'fresh')!;
    expect(fan.faceAreaM2).toBeCloseTo(0.2, 12);
    expect(fan.diffuser).toEqual({ distanceToHoodM: 2.5, airTemperatureC: 12 });
  });

  it('is refused of what exhausts, and of a kind that is none', () => {
    const exhausting = file({ exhaust: { hood: { flow: '600 cfm', faceArea: '1 ft2' } } });
    expect(exhausting.ok ? [] : exhausting.issues.map(({ code }) => code)).toEqual([
      // Beside its flow the key is taken for a speed.
      'device.several-flows',
    ]);
    const kind = file({
      makeUp: { inlet: { opensWith: 'hood', diameter: '8 in', diffuser: { kind: 'slot' } } },
    });
    expect(kind.ok ? [] : kind.issues.map(({ path }) => path.join('.'))).toEqual([
      'makeUp.inlet.diffuser.kind',
    ]);
  });
});
