import type { AssumedDimension } from '@evendraft/house';
import { formatQuantity, type UnitSystem } from '@evendraft/units';

/** Prints numbers in one unit system, each kind always rounded in the same way. */
export interface NumberPrinter {
  /** A pressure with its sign and without its unit, e.g. `-12.3`, for tables. */
  readonly signedPressure: (pressurePa: number) => string;
  /** A pressure's size with its unit, e.g. `12.3 Pa`, for sentences that say the direction. */
  readonly pressureSize: (pressurePa: number) => string;
  /** A volume flow, whole, e.g. `850 cfm`. */
  readonly flow: (volumeFlowM3PerS: number) => string;
  /** A velocity at a face of a hood or plenum, as the trade says it: `120 fpm`. */
  readonly faceVelocity: (velocityMPerS: number) => string;
  /** Any assumed or given value in the unit that is customary for its size. */
  readonly value: (si: number, dimension: AssumedDimension) => string;
}

interface Form {
  readonly unit: string;
  readonly decimals: number;
}

/** Below these a length or an area is printed in the small unit, as on a drawing. */
const smallLengthM = 0.6;
const tinyLengthM = 0.002;
const smallAreaM2 = 0.5;

type Forms = Readonly<Record<AssumedDimension | 'smallLength' | 'tinyLength' | 'smallArea', Form>>;

const formsOf: Readonly<Record<UnitSystem, Forms>> = {
  us: {
    length: { unit: 'ft', decimals: 1 },
    smallLength: { unit: 'in', decimals: 1 },
    tinyLength: { unit: 'in', decimals: 4 },
    area: { unit: 'ft2', decimals: 0 },
    smallArea: { unit: 'in2', decimals: 1 },
    volume: { unit: 'ft3', decimals: 0 },
    volumeFlow: { unit: 'cfm', decimals: 0 },
    pressure: { unit: 'Pa', decimals: 1 },
    temperature: { unit: 'F', decimals: 1 },
    speed: { unit: 'mph', decimals: 1 },
    angle: { unit: 'deg', decimals: 0 },
    ratio: { unit: '-', decimals: 3 },
  },
  si: {
    length: { unit: 'm', decimals: 2 },
    smallLength: { unit: 'mm', decimals: 0 },
    tinyLength: { unit: 'mm', decimals: 2 },
    area: { unit: 'm2', decimals: 1 },
    smallArea: { unit: 'cm2', decimals: 0 },
    volume: { unit: 'm3', decimals: 1 },
    volumeFlow: { unit: 'L/s', decimals: 0 },
    pressure: { unit: 'Pa', decimals: 1 },
    temperature: { unit: 'C', decimals: 1 },
    speed: { unit: 'm/s', decimals: 1 },
    angle: { unit: 'deg', decimals: 0 },
    ratio: { unit: '-', decimals: 3 },
  },
};

/**
 * The printer of one unit system. Pressures are in pascals in both: that is what a gauge shows.
 *
 * @param system - `us` or `si`
 * @returns functions from SI numbers to text
 */
export function numberPrinter(system: UnitSystem): NumberPrinter {
  const forms = formsOf[system];
  const print = (si: number, dimension: AssumedDimension, form: Form): string =>
    formatQuantity(si, dimension, { system, ...form });
  const pascals = (pressurePa: number): string => print(pressurePa, 'pressure', forms.pressure);
  return {
    signedPressure: (pressurePa) => pascals(pressurePa).replace(' Pa', ''),
    pressureSize: (pressurePa) => {
      const size = Math.abs(pressurePa);
      return size > 0 && size < 0.05 ? 'less than 0.1 Pa' : pascals(size);
    },
    flow: (volumeFlowM3PerS) => print(volumeFlowM3PerS, 'volumeFlow', forms.volumeFlow),
    faceVelocity: (velocityMPerS) =>
      formatQuantity(
        velocityMPerS,
        'speed',
        system === 'us'
          ? { system, unit: 'fpm', decimals: 0 }
          : { system, unit: 'm/s', decimals: 2 },
      ),
    value: (si, dimension) =>
      withoutEmptyDecimals(print(si, dimension, formFor(si, dimension, forms))),
  };
}

function formFor(si: number, dimension: AssumedDimension, forms: Forms): Form {
  const size = Math.abs(si);
  if (dimension === 'length' && size > 0 && size < tinyLengthM) return forms.tinyLength;
  if (dimension === 'length' && size > 0 && size < smallLengthM) return forms.smallLength;
  if (dimension === 'area' && size > 0 && size < smallAreaM2) return forms.smallArea;
  return forms[dimension];
}

/** `50.0 Pa` was given as 50 and is said so. */
function withoutEmptyDecimals(text: string): string {
  return text.replace(/^(-?\d+)\.(\d*?)0+(?!\d)/u, (_, whole: string, kept: string) =>
    kept === '' ? whole : `${whole}.${kept}`,
  );
}
