import { defineUnits } from '../internal/define-units.js';
import { foot, hour, minute, pound } from '../internal/standards.js';
import type { UnitDefinition } from '../unit-definition.js';

const si = 'SI Brochure, 9th edition (exact)';
const fromPound = 'international yard and pound agreement, 1959 (exact)';

/** Units of time, mass, density, share and concentration. */
export const amountUnits: readonly UnitDefinition[] = [
  ...defineUnits('time', [
    {
      symbol: 's',
      aliases: ['sec', 'secs', 'second', 'seconds'],
      system: 'both',
      factor: '1',
      source: si,
    },
    {
      symbol: 'min',
      aliases: ['mins', 'minute', 'minutes'],
      system: 'both',
      factor: minute,
      source: si,
    },
    {
      symbol: 'h',
      aliases: ['hr', 'hrs', 'hour', 'hours'],
      system: 'both',
      factor: hour,
      source: si,
    },
    { symbol: 'd', aliases: ['day', 'days'], system: 'both', factor: hour.mul(24), source: si },
  ]),
  ...defineUnits('mass', [
    {
      symbol: 'lb',
      aliases: ['lbs', 'lbm', 'pound', 'pounds'],
      system: 'us',
      factor: pound,
      source: fromPound,
    },
    {
      symbol: 'oz',
      aliases: ['ounce', 'ounces'],
      system: 'us',
      factor: pound.div(16),
      source: fromPound,
    },
    { symbol: 'kg', aliases: ['kilogram', 'kilograms'], system: 'si', factor: '1', source: si },
    { symbol: 'g', aliases: ['gram', 'grams'], system: 'si', factor: '0.001', source: si },
  ]),
  ...defineUnits('density', [
    {
      symbol: 'lb/ft3',
      aliases: ['pcf', 'lb/cu ft', 'lbm/ft3'],
      system: 'us',
      factor: pound.div(foot.pow(3)),
      source: fromPound,
    },
    { symbol: 'kg/m3', aliases: [], system: 'si', factor: '1', source: si },
    { symbol: 'g/m3', aliases: [], system: 'si', factor: '0.001', source: si },
  ]),
  ...defineUnits('ratio', [
    {
      symbol: '%',
      aliases: ['percent', 'per cent', 'pct'],
      system: 'both',
      factor: '0.01',
      source: si,
    },
    // A bare number up to 1 is a share; the reader of quantities gives it this unit.
    { symbol: '-', printed: '', aliases: [], system: 'both', factor: '1', source: si },
  ]),
  ...defineUnits('concentration', [
    {
      symbol: 'ppm',
      aliases: ['ppmv'],
      system: 'both',
      factor: '0.000001',
      source: 'parts per million, by definition',
    },
    {
      symbol: 'ppb',
      aliases: ['ppbv'],
      system: 'both',
      factor: '0.000000001',
      source: 'parts per billion (1e9), by definition',
    },
    { symbol: '%', aliases: ['percent', 'pct'], system: 'both', factor: '0.01', source: si },
    { symbol: '-', printed: '', aliases: [], system: 'both', factor: '1', source: si },
  ]),
];
