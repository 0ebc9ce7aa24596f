import { defineUnits } from '../internal/define-units.js';
import {
  foot,
  hour,
  mile,
  minute,
  nauticalMile,
  pound,
  standardAirDensity,
} from '../internal/standards.js';
import { exact } from '../internal/exact.js';
import type { UnitDefinition } from '../unit-definition.js';

const si = 'SI Brochure, 9th edition (exact)';
const fromFoot = 'by definition from the foot, international agreement 1959 (exact)';
const fromPound = 'by definition from the pound, international agreement 1959 (exact)';
const cubicFoot = foot.pow(3);
const litre = exact('0.001');

/** Units of volume flow, mass flow, speed, air change rate and flow per area. */
export const flowUnits: readonly UnitDefinition[] = [
  ...defineUnits('volumeFlow', [
    {
      // Actual cubic feet at the condition of the air that flows; standard flow is `scfm`.
      symbol: 'cfm',
      aliases: ['acfm', 'ft3/min', 'cu ft/min', 'cubic feet/minute', 'cubic feet/min'],
      system: 'us',
      factor: cubicFoot.div(minute),
      source: fromFoot,
    },
    {
      symbol: 'cfh',
      aliases: ['ft3/h', 'ft3/hr'],
      system: 'us',
      factor: cubicFoot.div(hour),
      source: fromFoot,
    },
    { symbol: 'ft3/s', aliases: ['cfs'], system: 'us', factor: cubicFoot, source: fromFoot },
    {
      symbol: 'L/s',
      aliases: ['lps', 'L/sec', 'litres/second', 'liters/second'],
      system: 'si',
      factor: litre,
      source: si,
    },
    { symbol: 'L/min', aliases: ['lpm'], system: 'si', factor: litre.div(minute), source: si },
    {
      symbol: 'm3/h',
      aliases: ['m3/hr', 'cmh', 'cubic metres/hour', 'cubic meters/hour'],
      system: 'si',
      factor: exact('1').div(hour),
      source: si,
    },
    { symbol: 'm3/s', aliases: ['m3/sec'], system: 'si', factor: '1', source: si },
  ]),
  ...defineUnits('massFlow', [
    {
      symbol: 'scfm',
      aliases: ['standard cfm'],
      system: 'us',
      factor: cubicFoot.div(minute).mul(standardAirDensity),
      source: 'a cubic foot per minute of air at 1.2041 kg/m3 (20 °C, 101325 Pa); our convention',
    },
    {
      symbol: 'lb/h',
      aliases: ['lb/hr', 'lbs/h', 'lbs/hr', 'lbm/h', 'pph'],
      system: 'us',
      factor: pound.div(hour),
      source: fromPound,
    },
    {
      symbol: 'lb/min',
      aliases: ['lbs/min', 'lbm/min'],
      system: 'us',
      factor: pound.div(minute),
      source: fromPound,
    },
    { symbol: 'kg/s', aliases: ['kg/sec'], system: 'si', factor: '1', source: si },
    { symbol: 'kg/h', aliases: ['kg/hr'], system: 'si', factor: exact('1').div(hour), source: si },
    { symbol: 'g/s', aliases: ['g/sec'], system: 'si', factor: '0.001', source: si },
  ]),
  ...defineUnits('speed', [
    {
      symbol: 'mph',
      aliases: ['mi/h', 'miles/hour'],
      system: 'us',
      factor: mile.div(hour),
      source: fromFoot,
    },
    {
      symbol: 'fpm',
      aliases: ['ft/min', 'feet/minute', 'feet/min'],
      system: 'us',
      factor: foot.div(minute),
      source: fromFoot,
    },
    { symbol: 'ft/s', aliases: ['fps', 'ft/sec'], system: 'us', factor: foot, source: fromFoot },
    { symbol: 'm/s', aliases: ['m/sec', 'mps'], system: 'si', factor: '1', source: si },
    {
      symbol: 'km/h',
      aliases: ['km/hr', 'kph', 'kmh'],
      system: 'si',
      factor: exact('1000').div(hour),
      source: si,
    },
    {
      symbol: 'kn',
      aliases: ['knot', 'knots', 'kt', 'kts'],
      system: 'both',
      factor: nauticalMile.div(hour),
      source: 'a nautical mile of 1852 m per hour (exact)',
    },
  ]),
  ...defineUnits('airChangeRate', [
    {
      symbol: 'ACH',
      aliases: ['air changes/hour', 'ac/h'],
      system: 'us',
      factor: exact('1').div(hour),
      source: si,
    },
    {
      // The same number of changes an hour, but in a blower-door test at 50 Pa: `Quantity.unit` tells
      // it from a natural rate, so a caller can refuse the one where the other is meant.
      symbol: 'ACH50',
      aliases: ['n50', 'ACH at 50 Pa', 'ACH at 50', 'ACH@50Pa', 'ACH@50'],
      system: 'both',
      factor: exact('1').div(hour),
      source: si,
    },
    {
      symbol: '1/h',
      printed: '1/h',
      aliases: ['/h', '1/hr', '/hr', 'h-1'],
      system: 'si',
      factor: exact('1').div(hour),
      source: si,
    },
    {
      symbol: '1/s',
      printed: '1/s',
      aliases: ['/s', 's-1'],
      system: 'si',
      factor: '1',
      source: si,
    },
  ]),
  ...defineUnits('flowPerArea', [
    {
      symbol: 'cfm/ft2',
      aliases: ['cfm/sq ft', 'cfm/sf'],
      system: 'us',
      factor: foot.div(minute),
      source: fromFoot,
    },
    {
      symbol: 'L/(s m2)',
      aliases: ['L/s m2', 'L/s/m2', 'L/(s*m2)', '(L/s)/m2'],
      system: 'si',
      factor: litre,
      source: si,
    },
    {
      symbol: 'm3/(h m2)',
      aliases: ['m3/h m2', 'm3/h/m2', 'm3/hr/m2', '(m3/h)/m2'],
      system: 'si',
      factor: exact('1').div(hour),
      source: si,
    },
    {
      symbol: 'm3/(s m2)',
      aliases: ['m3/s m2', 'm3/s/m2', '(m3/s)/m2'],
      system: 'si',
      factor: '1',
      source: si,
    },
  ]),
];
