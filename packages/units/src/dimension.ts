/** What a quantity measures. Two quantities can be compared only within one dimension. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'volumeFlow'
  | 'massFlow'
  | 'pressure'
  | 'temperature'
  | 'temperatureDifference'
  | 'power'
  | 'speed'
  | 'angle'
  | 'airChangeRate'
  | 'ratio'
  | 'time'
  | 'flowPerArea'
  | 'density'
  | 'energy'
  | 'force'
  | 'mass'
  | 'concentration';

/** What is fixed about a dimension: the unit computed in, its words, and what a person may type. */
export interface DimensionDefinition {
  /** Symbol of the unit that every computation uses; a row of the unit table with factor 1. */
  readonly siUnit: string;
  /** The dimension in words, with its article, for messages: `a volume flow`. */
  readonly words: string;
  /** Three things that a person may type here, the commonest first. */
  readonly examples: readonly [string, string, string];
}

/**
 * Every dimension with its SI unit, its words and examples of what is accepted.
 *
 * A temperature is kept in degrees Celsius and a temperature difference in kelvin: 9 °F as a
 * temperature is -12.8 °C, as a difference it is 5 K. An angle is kept in degrees, as a compass
 * and a wind report give it.
 */
export const dimensions: Readonly<Record<Dimension, DimensionDefinition>> = {
  length: { siUnit: 'm', words: 'a length', examples: ['8 ft 6 in', '3 1/2 in', '2.6 m'] },
  area: { siUnit: 'm2', words: 'an area', examples: ['2180 ft2', '12 in2', '200 m2'] },
  volume: { siUnit: 'm3', words: 'a volume', examples: ['18500 ft3', '520 m3', '40 L'] },
  volumeFlow: {
    siUnit: 'm3/s',
    words: 'a volume flow',
    examples: ['640 cfm', '300 m3/h', '95 L/s'],
  },
  massFlow: { siUnit: 'kg/s', words: 'a mass flow', examples: ['150 scfm', '300 kg/h', '20 lb/h'] },
  pressure: { siUnit: 'Pa', words: 'a pressure', examples: ['5 Pa', '0.25 in. w.c.', '0.1 kPa'] },
  temperature: { siUnit: 'C', words: 'a temperature', examples: ['72 F', '21 C', '294 K'] },
  temperatureDifference: {
    siUnit: 'K',
    words: 'a temperature difference',
    examples: ['9 F', '5 K', '5 C'],
  },
  power: { siUnit: 'W', words: 'a power', examples: ['40 kBtu/h', '40,000 Btu/h', '12 kW'] },
  speed: { siUnit: 'm/s', words: 'a speed', examples: ['15 mph', '300 fpm', '5 m/s'] },
  angle: { siUnit: 'deg', words: 'a direction', examples: ['270 deg', '270°', 'W'] },
  airChangeRate: {
    siUnit: '1/s',
    words: 'an air change rate',
    examples: ['1.2 ACH', '1.2 1/h', '1.2 ACH50'],
  },
  ratio: { siUnit: '-', words: 'a share', examples: ['45 %', '0.45', '45%'] },
  time: { siUnit: 's', words: 'a time', examples: ['10 min', '30 s', '2 h'] },
  flowPerArea: {
    siUnit: 'm3/(s m2)',
    words: 'a flow per area',
    examples: ['0.2 cfm/ft2', '1 L/(s m2)', '3.6 m3/(h m2)'],
  },
  density: {
    siUnit: 'kg/m3',
    words: 'a density',
    examples: ['0.075 lb/ft3', '1.2 kg/m3', '1200 g/m3'],
  },
  energy: { siUnit: 'J', words: 'an energy', examples: ['500 kBtu', '150 kWh', '540 MJ'] },
  force: { siUnit: 'N', words: 'a force', examples: ['2 lbf', '9 N', '0.9 kgf'] },
  mass: { siUnit: 'kg', words: 'a mass', examples: ['12 lb', '5.5 kg', '400 g'] },
  concentration: {
    siUnit: '-',
    words: 'a concentration',
    examples: ['35 ppm', '0.1 %', '800 ppb'],
  },
};
