import { defineUnits } from '../internal/define-units.js';
import {
  inch,
  inchOfMercury,
  inchOfWater,
  poundForce,
  standardGravity,
} from '../internal/standards.js';
import type { UnitDefinition } from '../unit-definition.js';

const si = 'SI Brochure, 9th edition (exact)';
const waterColumn = 'conventional column: 1000 kg/m3 under 9.80665 m/s2 (exact)';
const mercuryColumn = 'conventional column: 13595.1 kg/m3 under 9.80665 m/s2 (exact)';
const fromPound = 'pound of 0.45359237 kg under standard gravity 9.80665 m/s2 (exact)';

/** Units of pressure and force. */
export const pressureUnits: readonly UnitDefinition[] = [
  ...defineUnits('pressure', [
    {
      // At home in both systems: the trade reads house pressures in pascals and ducts in inches.
      symbol: 'Pa',
      aliases: ['pascal', 'pascals', 'N/m2'],
      system: 'both',
      factor: '1',
      source: si,
    },
    {
      symbol: 'in. w.c.',
      aliases: [
        'in. w.g.',
        'iwc',
        'iwg',
        'inH2O',
        '" w.c.',
        '" w.g.',
        "'' w.c.",
        '" H2O',
        'inches w.c.',
        'inches w.g.',
        'inch w.c.',
        'inch w.g.',
        'in. of water',
        'inches of water',
        'inches H2O',
        'in. water',
        'inches of water column',
        'inches water column',
        'in. water column',
        'in. water gauge',
      ],
      system: 'us',
      factor: inchOfWater,
      source: waterColumn,
    },
    {
      symbol: 'ft w.c.',
      aliases: ['ftH2O', 'feet of water'],
      system: 'us',
      factor: inchOfWater.mul(12),
      source: waterColumn,
    },
    {
      symbol: 'in. Hg',
      aliases: ['" Hg', 'inches Hg', 'inches of mercury'],
      system: 'us',
      factor: inchOfMercury,
      source: mercuryColumn,
    },
    {
      symbol: 'psi',
      aliases: ['lbf/in2', 'lb/in2', 'psig'],
      system: 'us',
      factor: poundForce.div(inch.pow(2)),
      source: fromPound,
    },
    { symbol: 'hPa', aliases: [], system: 'si', factor: '100', source: si },
    { symbol: 'kPa', aliases: [], system: 'si', factor: '1000', source: si },
    { symbol: 'mbar', aliases: ['millibar', 'millibars'], system: 'si', factor: '100', source: si },
    { symbol: 'bar', aliases: ['bars'], system: 'si', factor: '100000', source: si },
    {
      symbol: 'mm w.c.',
      aliases: ['mmH2O', 'mm w.g.', 'mm of water'],
      system: 'si',
      factor: standardGravity,
      source: waterColumn,
    },
    {
      symbol: 'mm Hg',
      aliases: ['mm of mercury'],
      system: 'si',
      factor: inchOfMercury.div('25.4'),
      source: mercuryColumn,
    },
    {
      symbol: 'atm',
      aliases: ['atmosphere', 'atmospheres'],
      system: 'both',
      factor: '101325',
      source: '10th General Conference on Weights and Measures, 1954 (exact)',
    },
  ]),
  ...defineUnits('force', [
    {
      symbol: 'lbf',
      aliases: ['pound-force', 'pounds-force'],
      system: 'us',
      factor: poundForce,
      source: fromPound,
    },
    { symbol: 'N', aliases: ['newton', 'newtons'], system: 'si', factor: '1', source: si },
    { symbol: 'kN', aliases: [], system: 'si', factor: '1000', source: si },
    {
      symbol: 'kgf',
      aliases: ['kp'],
      system: 'si',
      factor: standardGravity,
      source: 'kilogram under standard gravity 9.80665 m/s2 (exact)',
    },
  ]),
];
