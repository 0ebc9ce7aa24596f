import { shapeOf, shapeWords } from '../file/schema/shape-of.js';
import { plainWord } from '../file/schema/word.js';
import { weatherFile, type WindInFile } from '../file/weather-file.js';
import type { Source, Weather } from '../house.js';
import { positiveAngle, type Basics } from './read-basics.js';
import type { WindRead } from './read-wind.js';
import { originOf, readValue, report, type Reading } from './reading.js';
import { commonPractice, ourChoice } from './sources.js';

/** The most weathers of a house file; our choice. */
const mostWeathers = 50;

/** How far each face is turned from the front, clockwise from above [°]. */
const turned = { front: 0, right: 90, back: 180, left: 270 } as const;

/** The coefficients of a house whose file says nothing of the wind. */
const coefficientSource: Source = {
  document:
    'Swami and Chandra, FSEC-CR-163-86, for walls; Walker and Wilson, a flue cap above the roof',
  status: 'memory',
};

/**
 * Reads the weathers to study; four of our choice when the file has none.
 *
 * @param reading - where issues and assumptions are collected
 * @param root - the whole file
 * @param house - indoor temperature, where the front looks, and how the wind meets the house
 * @returns weathers in the order of the file; wrong ones are left out
 */
export function readWeathers(
  reading: Reading,
  root: Readonly<Record<string, unknown>>,
  house: HouseInWind,
): readonly Weather[] {
  const weathers = readAll(reading, root, house);
  if (!house.saysWind && weathers.some(({ windSpeedMPerS }) => windSpeedMPerS > 0)) {
    reading.assumptions.push({
      origin: 'wind',
      what: 'how the wind presses on the house',
      value:
        'no shelter; walls by the wall correlation; roof and what ends above it with a coefficient of -0.5',
      source: coefficientSource,
    });
  }
  return weathers;
}

function readAll(
  reading: Reading,
  root: Readonly<Record<string, unknown>>,
  house: HouseInWind,
): readonly Weather[] {
  const raw = root['weather'];
  const shape = shapeOf(raw);
  if (shape === 'nothing' || (Array.isArray(raw) && raw.length === 0)) {
    return assumeWeathers(reading, house.basics);
  }
  if (!Array.isArray(raw)) {
    const accepted = ['- { name: winter design, outdoorTemperature: 5 F, wind: 12 mph from NW }'];
    const parameters = { found: shapeWords[shape], accepted };
    report(reading, ['weather'], { code: 'value.wrong-shape', parameters });
    return [];
  }
  if (raw.length > mostWeathers) {
    const parameters = { found: raw.length, allowed: mostWeathers };
    report(reading, ['weather'], { code: 'section.too-many', parameters });
    return [];
  }
  const names = new Map<string, string>();
  return raw.flatMap((item: unknown, index) => {
    const path = ['weather', index];
    const inFile = readValue(reading, weatherFile, { path, raw: item });
    if (inFile === undefined) return [];
    const other = names.get(plainWord(inFile.name));
    if (other !== undefined) {
      const parameters = { name: inFile.name, other };
      report(reading, [...path, 'name'], { code: 'name.duplicate', parameters });
    }
    names.set(plainWord(inFile.name), `weather[${index}]`);
    const wind = windOf(reading, inFile.wind, { path, house });
    if (wind === undefined) return [];
    return [
      {
        name: inFile.name,
        origin: originOf(path),
        outdoorTemperatureC: inFile.outdoorTemperature,
        ...wind,
      },
    ];
  });
}

/** What a weather meets. */
export interface HouseInWind {
  readonly basics: Basics;
  /** How the wind meets the house, where the file says so. */
  readonly wind: WindRead | undefined;
  /** The file has the key, right or wrong. */
  readonly saysWind: boolean;
}

type Wind = Pick<Weather, 'windSpeedMPerS' | 'windFromDeg'>;

function windOf(
  reading: Reading,
  typed: WindInFile | undefined,
  weather: { readonly path: readonly (string | number)[]; readonly house: HouseInWind },
): Wind | undefined {
  const { path, house } = weather;
  const { basics } = house;
  const origin = originOf(path);
  if (typed === undefined) {
    reading.assumptions.push({
      origin,
      what: 'wind',
      value: 'calm',
      source: ourChoice('no wind is given'),
    });
  }
  const windSpeedMPerS = typed?.speed ?? 0;
  if (windSpeedMPerS === 0) return { windSpeedMPerS: 0, windFromDeg: basics.frontFacesDeg };
  const from = typed?.from;
  if (from === undefined) {
    const accepted = ['12 mph from NW', '6 m/s from 315 deg', '12 mph from front'];
    report(reading, [...path, 'wind'], {
      code: 'weather.direction-missing',
      parameters: { accepted },
    });
    return undefined;
  }
  const windFromDeg = positiveAngle(
    from.kind === 'degrees' ? from.degrees : basics.frontFacesDeg + turned[from.face],
  );
  const { wind } = house;
  const at = typed?.at ?? (wind === undefined ? 'eaves' : 'station');
  if (at === 'station' && wind === undefined) {
    // Where the file's own `wind` is wrong, that is reported already.
    if (!house.saysWind) {
      report(reading, [...path, 'wind', 'at'], { code: 'weather.no-terrain', parameters: {} });
    }
    return undefined;
  }
  if (typed?.at === undefined) {
    reading.assumptions.push({
      origin,
      what: 'place of the wind speed',
      value: wind === undefined ? 'at eave height of the house' : wind.station,
      source: ourChoice(
        wind === undefined
          ? 'the file gives the wind at the house, not at a weather station'
          : 'the file says how the wind of a station comes to the house',
      ),
    });
  }
  const eavesMPerS = at === 'station' && wind ? wind.atEaves(windSpeedMPerS) : windSpeedMPerS;
  return { windSpeedMPerS: eavesMPerS, windFromDeg };
}

function assumeWeathers(reading: Reading, basics: Basics): readonly Weather[] {
  const { frontFacesDeg, indoorTemperatureC } = basics;
  const weather = (name: string, outdoorTemperatureC: number, windSpeedMPerS = 0): Weather => ({
    name,
    origin: 'weather',
    outdoorTemperatureC,
    windSpeedMPerS,
    windFromDeg: frontFacesDeg,
  });
  reading.assumptions.push({
    origin: 'weather',
    what: 'weathers studied',
    value:
      'still (outdoors as warm as indoors), cold (-10 °C or 14 °F, calm), hot (35 °C or 95 °F, calm), windy (10 °C or 50 °F, 7 m/s or 16 mph at eave height from the front)',
    source: commonPractice('a still day, a winter, a summer and a windy day'),
  });
  return [
    weather('still', indoorTemperatureC),
    weather('cold', -10),
    weather('hot', 35),
    weather('windy', 10, 7),
  ];
}
