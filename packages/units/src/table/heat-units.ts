import { defineUnits } from '../internal/define-units.js';
import { exact } from '../internal/exact.js';
import { btu, foot, hour, poundForce, usTherm } from '../internal/standards.js';
import type { UnitDefinition } from '../unit-definition.js';

const si = 'SI Brochure, 9th edition (exact)';
const btuTable = 'International Table Btu of 1055.05585262 J, 1956 (exact)';
const fahrenheit = 'NIST SP 811 (2008), B.8: t/°C = (t/°F − 32)/1.8 (exact; from memory)';
const degree = exact('5/9');

/** Units of temperature, temperature difference, power and energy. */
export const heatUnits: readonly UnitDefinition[] = [
  ...defineUnits('temperature', [
    {
      symbol: 'F',
      printed: '°F',
      aliases: ['°F', 'degF', 'deg F', 'degrees F', 'Fahrenheit', 'degrees Fahrenheit'],
      system: 'us',
      factor: degree,
      offset: degree.mul(-32),
      source: fahrenheit,
    },
    {
      symbol: 'C',
      printed: '°C',
      aliases: ['°C', 'degC', 'deg C', 'degrees C', 'Celsius', 'degrees Celsius'],
      system: 'si',
      factor: '1',
      source: si,
    },
    { symbol: 'K', aliases: ['kelvin'], system: 'si', factor: '1', offset: '-273.15', source: si },
  ]),
  ...defineUnits('temperatureDifference', [
    {
      symbol: 'F',
      printed: '°F',
      aliases: ['°F', 'degF', 'deg F', 'degrees F', 'Fahrenheit', 'degrees Fahrenheit'],
      system: 'us',
      factor: degree,
      source: fahrenheit,
    },
    { symbol: 'K', aliases: ['kelvin'], system: 'si', factor: '1', source: si },
    {
      symbol: 'C',
      printed: '°C',
      aliases: ['°C', 'degC', 'deg C', 'degrees C', 'Celsius', 'degrees Celsius'],
      system: 'si',
      factor: '1',
      source: si,
    },
  ]),
  ...defineUnits('power', [
    {
      symbol: 'Btu/h',
      aliases: ['Btuh', 'Btu/hr', 'Btu/hour'],
      system: 'us',
      factor: btu.div(hour),
      source: btuTable,
    },
    {
      symbol: 'kBtu/h',
      aliases: ['kBtuh', 'kBtu/hr', 'MBH'],
      system: 'us',
      factor: btu.mul(1000).div(hour),
      source: btuTable,
    },
    {
      symbol: 'MMBtu/h',
      aliases: ['MMBtuh', 'MMBtu/hr'],
      system: 'us',
      factor: btu.mul(1000000).div(hour),
      source: btuTable,
    },
    {
      symbol: 'hp',
      aliases: ['horsepower'],
      system: 'us',
      factor: poundForce.mul(foot).mul(550),
      source: 'mechanical horsepower of 550 foot pound-force per second (exact)',
    },
    { symbol: 'W', aliases: ['watt', 'watts', 'J/s'], system: 'si', factor: '1', source: si },
    { symbol: 'kW', aliases: ['kilowatt', 'kilowatts'], system: 'si', factor: '1000', source: si },
  ]),
  ...defineUnits('energy', [
    { symbol: 'Btu', aliases: ['Btus'], system: 'us', factor: btu, source: btuTable },
    { symbol: 'kBtu', aliases: [], system: 'us', factor: btu.mul(1000), source: btuTable },
    { symbol: 'MMBtu', aliases: [], system: 'us', factor: btu.mul(1000000), source: btuTable },
    {
      symbol: 'therm',
      aliases: ['therms', 'thm'],
      system: 'us',
      factor: usTherm,
      source: 'US therm, Federal Register, 27 July 1968 (exact; from memory)',
    },
    { symbol: 'J', aliases: ['joule', 'joules'], system: 'si', factor: '1', source: si },
    { symbol: 'kJ', aliases: [], system: 'si', factor: '1000', source: si },
    { symbol: 'MJ', aliases: [], system: 'si', factor: '1000000', source: si },
    { symbol: 'GJ', aliases: [], system: 'si', factor: '1000000000', source: si },
    { symbol: 'Wh', aliases: [], system: 'si', factor: hour, source: si },
    {
      symbol: 'kWh',
      aliases: ['kW h', 'kilowatt-hours'],
      system: 'both',
      factor: hour.mul(1000),
      source: si,
    },
    { symbol: 'MWh', aliases: [], system: 'si', factor: hour.mul(1000000), source: si },
  ]),
];
