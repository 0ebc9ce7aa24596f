import { defineUnits } from '../internal/define-units.js';
import { foot, inch } from '../internal/standards.js';
import type { UnitDefinition } from '../unit-definition.js';

const si = 'SI Brochure, 9th edition (exact)';
const yardAgreement = 'international yard and pound agreement, 1959 (exact)';
const byDefinition = 'by definition from the foot, international agreement 1959 (exact)';

/** Units of length, area, volume and direction. */
export const geometryUnits: readonly UnitDefinition[] = [
  ...defineUnits('length', [
    {
      symbol: 'ft',
      aliases: ['foot', 'feet', "'", 'ft-', 'lf', 'lin ft'],
      system: 'us',
      factor: foot,
      source: yardAgreement,
    },
    {
      symbol: 'in',
      aliases: ['inch', 'inches', '"', "''", 'ins'],
      system: 'us',
      factor: inch,
      source: byDefinition,
    },
    {
      symbol: 'yd',
      aliases: ['yard', 'yards'],
      system: 'us',
      factor: foot.mul(3),
      source: yardAgreement,
    },
    {
      symbol: 'm',
      aliases: ['metre', 'metres', 'meter', 'meters'],
      system: 'si',
      factor: '1',
      source: si,
    },
    {
      symbol: 'cm',
      aliases: ['centimetres', 'centimeters'],
      system: 'si',
      factor: '0.01',
      source: si,
    },
    {
      symbol: 'mm',
      aliases: ['millimetres', 'millimeters'],
      system: 'si',
      factor: '0.001',
      source: si,
    },
  ]),
  ...defineUnits('area', [
    {
      symbol: 'ft2',
      aliases: ['sq ft', 'sqft', 'sf', 'sq feet', 'square feet', 'square foot'],
      system: 'us',
      factor: foot.pow(2),
      source: byDefinition,
    },
    {
      symbol: 'in2',
      aliases: ['sq in', 'square inch', 'square inches'],
      system: 'us',
      factor: inch.pow(2),
      source: byDefinition,
    },
    {
      symbol: 'm2',
      aliases: ['sq m', 'sqm', 'square metres', 'square meters'],
      system: 'si',
      factor: '1',
      source: si,
    },
    { symbol: 'cm2', aliases: ['sq cm'], system: 'si', factor: '0.0001', source: si },
    { symbol: 'mm2', aliases: ['sq mm'], system: 'si', factor: '0.000001', source: si },
  ]),
  ...defineUnits('volume', [
    {
      symbol: 'ft3',
      aliases: ['cu ft', 'cuft', 'cf', 'cubic feet', 'cubic foot'],
      system: 'us',
      factor: foot.pow(3),
      source: byDefinition,
    },
    { symbol: 'in3', aliases: ['cu in'], system: 'us', factor: inch.pow(3), source: byDefinition },
    {
      symbol: 'm3',
      aliases: ['cu m', 'cubic metres', 'cubic meters'],
      system: 'si',
      factor: '1',
      source: si,
    },
    {
      symbol: 'L',
      aliases: ['litre', 'litres', 'liter', 'liters'],
      system: 'si',
      factor: '0.001',
      source: si,
    },
  ]),
  ...defineUnits('angle', [
    {
      symbol: 'deg',
      printed: '°',
      aliases: ['°', 'degree', 'degrees'],
      system: 'both',
      factor: '1',
      source: 'the degree itself; angles are kept in degrees',
    },
  ]),
];
