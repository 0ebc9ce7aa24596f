import { expect, test } from 'vitest';
import { expectNear } from '../../testing/expect-near.js';
import { saturationPressure } from './saturation-pressure.js';

/** The saturation pressure of CIPM-2007 (Metrologia 45, 2008; from memory), from which ours is independent. */
function cipmSaturationPressure(temperatureC: number): number {
  const kelvin = temperatureC + 273.15;
  return Math.exp(
    1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin,
  );
}

test.each([-40, -20, 0, 10, 20, 30, 40])(
  'saturation pressure at %s °C agrees with the formula of CIPM-2007',
  (temperatureC) => {
    expectNear(saturationPressure(temperatureC), cipmSaturationPressure(temperatureC), {
      relative: 0.003,
      because: 'two fits to different measurements; documented as within 0.3 %',
    });
  },
);

test('water boils near 100 °C at sea level', () => {
  expectNear(saturationPressure(100), 101325, {
    relative: 0.02,
    because: 'the fit is meant for the temperatures of weather and rooms',
  });
});

test('a temperature below absolute zero is refused', () => {
  expect(() => saturationPressure(-274)).toThrow(
    expect.objectContaining({ code: 'airflow.argument', argument: 'temperatureC', value: -274 }),
  );
});
