import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { typicalFans } from './typical-fans.js';

test.each(Object.entries(typicalFans))(
  'the typical %s can be rated and names its sources',
  (_, fan) => {
    expect(fan.rating.pressurePa).toBeGreaterThan(0);
    expect(fan.rating.pressurePa).toBeLessThan(fan.shutOff.pressurePa);
    for (const pressure of [fan.shutOff, fan.rating]) {
      expect(pressure.source.length).toBeGreaterThan(10);
      if (/^no source|^no rating|^taken as/.test(pressure.source)) {
        expect(pressure.status).toBe('assumed');
      } else {
        expect(pressure.status).not.toBe('assumed');
      }
    }
  },
);

test('the typical hood shuts off at 0.90 in. w.c.', () => {
  expectNear(typicalFans['range hood'].shutOff.pressurePa, 0.9 * 249.08891, {
    absolute: 0.5,
    because: 'rounded to whole pascals',
  });
});

test('the typical bath fan loses 19 % of its flow between 25 and 62.5 Pa', () => {
  const shutOff = typicalFans['bath fan'].shutOff.pressurePa;
  expectNear(Math.sqrt((shutOff - 62.5) / (shutOff - 25)), 0.81, {
    absolute: 5e-4,
    because: 'the shut-off pressure is rounded to whole pascals',
  });
});
