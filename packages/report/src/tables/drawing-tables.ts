import { strongestFlows } from '../internal/strongest-flows.js';
import type { DeviceSharesDrawingData } from '../drawings/device-shares.js';
import type { ExceedanceDrawingData } from '../drawings/exceedance.js';
import type { ExhaustCurveDrawingData } from '../drawings/exhaust-curve.js';
import type { FanAndSystemDrawingData } from '../drawings/fan-and-system.js';
import type { FlueDraftDrawingData } from '../drawings/flue-draft.js';
import type { HouseSectionDrawingData } from '../drawings/house-section-data.js';
import type { MakeUpOptionsDrawingData } from '../drawings/make-up-options.js';
import type { PressureLadderDrawingData } from '../drawings/pressure-ladder.js';
import type { WindRoseDrawingData } from '../drawings/wind-rose.js';
import type { ReportTable } from './report-table.js';

/**
 * The numbers of the pressure ladder by zone; those of appliances are in the table of verdicts.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function ladderTable({ zones, situation }: PressureLadderDrawingData): ReportTable {
  return {
    id: 'ladder-zones',
    caption: 'Pressures of the worst case',
    note: `${situation}. Against outdoors at the height of each floor; negative is below outdoors.`,
    columns: [{ header: 'Zone' }, { header: 'Pressure', quantity: 'pressure' }],
    rows: zones.map(({ zone, pressurePa }) => [zone, pressurePa]),
  };
}

/**
 * The numbers of the house in section: pressures and neutral levels.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function sectionTable({ zones, baseline, worst }: HouseSectionDrawingData): ReportTable {
  const pressure = (state: typeof worst, zone: string): number | undefined =>
    state.pressures.find((each) => each.zone === zone)?.pressurePa;
  const level = (state: typeof worst, zone: string): number | undefined =>
    state.neutralLevels.find((each) => each.zone === zone)?.heightM;
  return {
    id: 'section',
    caption: 'The house in section, zone by zone',
    note: `${baseline.title}. ${worst.title}. An empty neutral level lies outside the zone.`,
    columns: [
      { header: 'Zone' },
      { header: 'Floor at', quantity: 'length' },
      { header: 'Height', quantity: 'length' },
      { header: 'Baseline', quantity: 'pressure' },
      { header: 'Worst', quantity: 'pressure' },
      { header: 'Neutral level, baseline', quantity: 'length' },
      { header: 'Neutral level, worst', quantity: 'length' },
    ],
    rows: zones.map(({ zone, floorHeightM, heightM }) => [
      zone,
      floorHeightM,
      heightM,
      pressure(baseline, zone),
      pressure(worst, zone),
      level(baseline, zone),
      level(worst, zone),
    ]),
  };
}

/**
 * The flows of the house in section, both states side by side, the strongest first.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function sectionFlowTable({ baseline, worst }: HouseSectionDrawingData): ReportTable {
  return {
    id: 'section-flows',
    caption: 'Flows of the house in section',
    note: 'From the first to the second; negative is backwards. Leaks at several heights are added up.',
    columns: [
      { header: 'Through' },
      { header: 'From' },
      { header: 'To' },
      { header: 'Baseline', quantity: 'volumeFlow' },
      { header: 'Worst', quantity: 'volumeFlow' },
    ],
    rows: strongestFlows(baseline.flows, worst.flows).map((each) => [
      each.name,
      each.from ?? 'outdoors',
      each.to ?? 'outdoors',
      each.baseline,
      each.worst,
    ]),
  };
}

/**
 * Operating points on the curve of pressure against exhaust flow.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function exhaustCurveTable(data: ExhaustCurveDrawingData): ReportTable {
  return {
    id: 'exhaust-curve',
    caption: `Pressure of ${data.zone} against exhaust flow`,
    note: `${data.condition}.${limitWords(data)}`,
    columns: [
      { header: 'Curve or point' },
      { header: 'Exhaust', quantity: 'volumeFlow' },
      {
        header: data.quantity === 'zone minus outdoors' ? 'Against outdoors' : 'Against baseline',
        quantity: 'pressure',
      },
    ],
    rows: [
      ...data.operatingPoints.map(({ name, exhaustFlowM3PerS, pressurePa }, index) => [
        `${index + 1}. ${name}`,
        exhaustFlowM3PerS,
        pressurePa,
      ]),
      ...data.curves.flatMap(({ name, points }) =>
        someOf(points, 5).map(({ exhaustFlowM3PerS, pressurePa }) => [
          name,
          exhaustFlowM3PerS,
          pressurePa,
        ]),
      ),
    ],
  };
}

/** Limits of the drawing, each with its appliance. */
function limitWords({ limits, quantity }: ExhaustCurveDrawingData): string {
  if (limits.length === 0) return '';
  const each = limits.map(({ appliance, limitPa }) => `${appliance} ${limitPa.toFixed(1)} Pa`);
  return ` Limits on ${quantity}: ${each.join(', ')}.`;
}

/**
 * Where each fan works, with the house at outdoor pressure and in the worst state.
 *
 * @param fans - what the drawing shows
 * @returns the table beside it
 */
export function fanTable(fans: readonly FanAndSystemDrawingData[]): ReportTable {
  return {
    id: 'fans',
    caption: 'Fans against duct and house',
    columns: [
      { header: 'Device' },
      { header: 'Speed' },
      { header: 'House suction', quantity: 'pressure' },
      { header: 'Without it', quantity: 'volumeFlow' },
      { header: 'Rise without it', quantity: 'pressure' },
      { header: 'Delivered', quantity: 'volumeFlow' },
      { header: 'Rise', quantity: 'pressure' },
    ],
    rows: fans.map((each) => [
      each.device,
      each.speed,
      each.houseSuctionPa,
      each.withoutSuction.flowM3PerS,
      each.withoutSuction.pressurePa,
      each.delivered.flowM3PerS,
      each.delivered.pressurePa,
    ]),
  };
}

/**
 * The share of each device in the fall of a zone.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function sharesTable(data: DeviceSharesDrawingData): ReportTable {
  return {
    id: 'shares',
    caption: `Share of each device in the fall of ${data.zone}`,
    note: `With ${data.situation}.`,
    columns: [
      { header: 'Device' },
      { header: 'Change', quantity: 'pressure' },
      { header: 'Share', quantity: 'share' },
    ],
    rows: data.shares.map(({ device, changePa, share }) => [device, changePa, share]),
  };
}

/**
 * Draft of each flue over the outdoor temperature.
 *
 * @param flues - what the drawing shows
 * @returns the table beside it
 */
export function flueTable(flues: readonly FlueDraftDrawingData[]): ReportTable {
  const valueAt = (
    points: readonly { readonly outdoorTemperatureC: number }[],
    temperature: number,
  ): number => points.findIndex((each) => each.outdoorTemperatureC === temperature);
  return {
    id: 'flues',
    caption: 'Draft of each flue by outdoor temperature',
    note: 'At the test tap, room minus vent: positive draws. The last column is the weakest that is asked for.',
    columns: [
      { header: 'Flue' },
      { header: 'Outdoors', quantity: 'temperature' },
      { header: 'Warm', quantity: 'pressure' },
      { header: 'From cold', quantity: 'pressure' },
      { header: 'Asked for', quantity: 'pressure' },
    ],
    rows: flues.flatMap(({ flue, warm, cold, weakest }) =>
      someOf(warm, 8).map(({ outdoorTemperatureC, draftPa }) => [
        flue,
        outdoorTemperatureC,
        draftPa,
        cold[valueAt(cold, outdoorTemperatureC)]?.draftPa,
        weakest[valueAt(weakest, outdoorTemperatureC)]?.draftPa,
      ]),
    ),
  };
}

/**
 * Probability of exceeding each limit.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function exceedanceTable({ basis, limits }: ExceedanceDrawingData): ReportTable {
  return {
    id: 'exceedance',
    caption: 'Probability of exceeding each limit',
    note: `${basis}.`,
    columns: [
      { header: 'Appliance' },
      { header: 'Limit', quantity: 'pressure' },
      { header: 'Probability', quantity: 'probability' },
      { header: 'From', quantity: 'probability' },
      { header: 'To', quantity: 'probability' },
    ],
    rows: limits.map(({ appliance, limitPa, probability, low, high }) => [
      appliance,
      limitPa,
      probability,
      low,
      high,
    ]),
  };
}

/**
 * Make-up options compared.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function makeUpOptionTable({ situation, options }: MakeUpOptionsDrawingData): ReportTable {
  return {
    id: 'make-up-options',
    caption: 'Make-up options compared',
    note: `${situation}.`,
    columns: [
      { header: 'Option' },
      { header: 'Worst', quantity: 'pressure' },
      { header: 'Finding' },
      { header: 'Make-up air', quantity: 'volumeFlow' },
      { header: 'Opening', quantity: 'area' },
      { header: 'At its face', quantity: 'faceVelocity' },
      { header: 'Heating', quantity: 'power' },
      { header: 'When it fails' },
    ],
    rows: options.map((each) => [
      each.recommended === undefined
        ? each.name
        : `${each.name} (recommended: ${each.recommended})`,
      each.worstPressurePa,
      each.verdict,
      each.makeUpFlowM3PerS,
      each.openingAreaM2,
      each.faceVelocityMPerS,
      each.heatingPowerW,
      each.whenItFails ?? '',
    ]),
  };
}

/**
 * Worst pressure of each windy weather.
 *
 * @param data - what the drawing shows
 * @returns the table beside it
 */
export function windTable({ winds, stillPressurePa }: WindRoseDrawingData): ReportTable {
  return {
    id: 'winds',
    caption: 'Worst pressure by the direction of the wind',
    columns: [
      { header: 'Weather' },
      { header: 'Wind', quantity: 'speed' },
      { header: 'From', quantity: 'angle' },
      { header: 'Deepest zone', quantity: 'pressure' },
    ],
    rows: [
      ...winds.map((each) => [
        each.weather,
        each.windSpeedMPerS,
        each.windFromDeg,
        each.pressurePa,
      ]),
      ...(stillPressurePa === undefined ? [] : [['still air', 0, undefined, stillPressurePa]]),
    ],
  };
}

/** Evenly picked, ends included. */
function someOf<T>(items: readonly T[], most: number): readonly T[] {
  if (items.length <= most) return items;
  return Array.from(
    { length: most },
    (_, index) => items[Math.round((index * (items.length - 1)) / (most - 1))] as T,
  );
}
