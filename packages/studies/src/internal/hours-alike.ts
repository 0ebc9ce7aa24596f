import type { YearOfWeather } from '../air-heat.js';

/** How far apart hours may lie that count as alike. */
export interface HourWidths {
  readonly temperatureK: number;
  readonly windMPerS: number;
  readonly windDeg: number;
  readonly pressurePa: number;
}

/** Hours that are alike, in their mean weather. */
export interface HourGroup {
  readonly hours: number;
  readonly temperatureC: number;
  readonly windSpeedMPerS: number;
  readonly windFromDeg: number;
  /** Absent where the year has no pressures [Pa]. */
  readonly pressurePa?: number;
}

/** The finest widths; each round of taking hours together doubles them, the angle up to a quarter turn. */
const finest: HourWidths = { temperatureK: 0.5, windMPerS: 0.25, windDeg: 11.25, pressurePa: 2000 };

/**
 * The hours of a year taken together where their weather is alike, so that no more than some weathers are left.
 *
 * A group has the mean of its hours' temperatures, wind speeds and pressures; its wind comes from the middle of
 * its sector.
 *
 * @param year - hours of weather
 * @param options - where the wind comes from if the year does not say [°], and the most groups
 * @returns groups in the order of their first hour, and the widths that were needed
 */
export function hoursAlike(
  year: Extract<YearOfWeather, { readonly kind: 'hourly' }>,
  options: { readonly fromDeg: number; readonly mostWeathers: number },
): { readonly groups: readonly HourGroup[]; readonly widths: HourWidths } {
  let widths = finest;
  let groups = groupsOf(year, widths, options.fromDeg);
  while (groups.length > options.mostWeathers) {
    widths = {
      temperatureK: 2 * widths.temperatureK,
      windMPerS: 2 * widths.windMPerS,
      windDeg: Math.min(90, 2 * widths.windDeg),
      pressurePa: 2 * widths.pressurePa,
    };
    groups = groupsOf(year, widths, options.fromDeg);
  }
  return { groups, widths };
}

interface Sums {
  hours: number;
  temperatureC: number;
  windSpeedMPerS: number;
  pressurePa: number;
  readonly windFromDeg: number;
}

function groupsOf(
  { temperaturesC, windSpeedsMPerS, windFromDeg, pressuresPa }: Parameters<typeof hoursAlike>[0],
  widths: HourWidths,
  fromDeg: number,
): readonly HourGroup[] {
  const sums = new Map<string, Sums>();
  for (let hour = 0; hour < temperaturesC.length; hour += 1) {
    const temperatureC = temperaturesC[hour]!;
    const windSpeedMPerS = windSpeedsMPerS?.[hour] ?? 0;
    const pressurePa = pressuresPa?.[hour] ?? 0;
    const speed = Math.round(windSpeedMPerS / widths.windMPerS);
    const sector = speed === 0 ? 0 : sectorOf(windFromDeg?.[hour], widths.windDeg);
    const key = [
      Math.round(temperatureC / widths.temperatureK),
      speed,
      sector,
      Math.round(pressurePa / widths.pressurePa),
    ].join(' ');
    const middle = windFromDeg === undefined ? fromDeg : sector * widths.windDeg;
    const sum = sums.get(key) ?? {
      hours: 0,
      temperatureC: 0,
      windSpeedMPerS: 0,
      pressurePa: 0,
      windFromDeg: middle,
    };
    sum.hours += 1;
    sum.temperatureC += temperatureC;
    sum.windSpeedMPerS += windSpeedMPerS;
    sum.pressurePa += pressurePa;
    sums.set(key, sum);
  }
  return [...sums.values()].map((sum) => ({
    hours: sum.hours,
    temperatureC: sum.temperatureC / sum.hours,
    windSpeedMPerS: sum.windSpeedMPerS / sum.hours,
    windFromDeg: sum.windFromDeg,
    ...(pressuresPa === undefined ? {} : { pressurePa: sum.pressurePa / sum.hours }),
  }));
}

function sectorOf(fromDeg: number | undefined, widthDeg: number): number {
  return Math.round((fromDeg ?? 0) / widthDeg) % Math.round(360 / widthDeg);
}
