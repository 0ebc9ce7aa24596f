import type { Source } from '@evendraft/house';

/** A number to hold air at a hood or duct against; a user may put others in its place. */
export interface AirGuidance {
  readonly id: string;
  readonly what: string;
  readonly least?: number;
  readonly most?: number;
  readonly unit: 'm/s' | 'm³/s per m' | 'm³/s per W';
  readonly source: Source;
}

/** 1 foot a minute [m/s]. */
const fpm = 0.3048 / 60;
/** 1 cubic foot a minute [m³/s]. */
const cfm = 0.028316846592 / 60;
/** 10,000 Btu an hour [W]. */
const tenThousandBtuPerHour = 2930.71;

const secondHand = {
  document: 'Home Ventilating Institute, range hood guidance, restated by others',
  status: 'found second-hand',
} as const;

/** Guidance on the speed of make-up air and the flow of hoods. */
export const airGuidance: readonly AirGuidance[] = [
  {
    id: 'make-up air at the hood',
    what: 'make-up air that leaves an opening or diffuser near a hood; faster air pushes fumes out of its grip',
    most: 75 * fpm,
    unit: 'm/s',
    source: { document: 'commercial kitchen ventilation design guidance', status: 'memory' },
  },
  {
    id: 'air in a make-up duct',
    what: 'air in a residential duct that is to stay quiet',
    most: 900 * fpm,
    unit: 'm/s',
    source: { document: 'residential duct design manuals, 700 to 900 ft/min', status: 'memory' },
  },
  {
    id: 'air in a hood duct',
    what: 'air in the duct of a hood',
    least: 1000 * fpm,
    most: 1500 * fpm,
    unit: 'm/s',
    source: { document: 'residential duct design manuals', status: 'memory' },
  },
  {
    id: 'hood at a wall',
    what: 'flow of a hood at a wall by its width',
    least: (40 * cfm) / 0.3048,
    unit: 'm³/s per m',
    source: secondHand,
  },
  {
    id: 'hood over an island',
    what: 'flow of a hood over an island by its width',
    least: (150 * cfm) / 0.3048,
    unit: 'm³/s per m',
    source: secondHand,
  },
  {
    id: 'hood over burners',
    what: 'flow of a hood by the input of the burners below it',
    least: (100 * cfm) / tenThousandBtuPerHour,
    unit: 'm³/s per W',
    source: secondHand,
  },
];

/** A value held against guidance. */
export interface GuidanceReading {
  readonly guidance: AirGuidance;
  readonly value: number;
  readonly standing: 'below' | 'inside' | 'above';
}

/**
 * Holds a value against guidance.
 *
 * @param value - in the guidance's unit
 * @param id - of one of the rows
 * @param rows - guidance; that of this project when absent
 * @returns the reading; undefined where no row has that id
 */
export function readGuidance(
  value: number,
  id: string,
  rows: readonly AirGuidance[] = airGuidance,
): GuidanceReading | undefined {
  const guidance = rows.find((row) => row.id === id);
  if (guidance === undefined) return undefined;
  const { least = -Infinity, most = Infinity } = guidance;
  return { guidance, value, standing: value < least ? 'below' : value > most ? 'above' : 'inside' };
}
