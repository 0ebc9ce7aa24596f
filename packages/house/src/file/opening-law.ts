import {
  coefficientFromFlow,
  coefficientFromLeakageArea,
  referenceAir,
  type FlowLawDescription,
} from '@evendraft/airflow';
import * as z from 'zod';
import { flag } from './schema/flag.js';
import { measuredLeak } from './schema/measured-leak.js';
import { plainNumber } from './schema/plain-number.js';
import { quantity } from './schema/quantity.js';
import { word } from './schema/word.js';
import { leakCoefficient } from './leak-coefficient.js';
import { ranges } from './ranges.js';

/** A value that a law needed and the user did not give. */
export interface LawAssumption {
  readonly what:
    'discharge coefficient' | 'flow exponent' | 'opening pressure' | 'free share of its louvre';
  readonly value: number;
}

/** A law, with what was assumed to make it. */
export interface MadeLaw {
  readonly law: FlowLawDescription;
  readonly assumed: readonly LawAssumption[];
}

/** Keys by which an opening says how much air it passes; every opening takes all of them, and uses one way. */
export const openingLawShape = {
  area: z.optional(
    quantity('area', {
      description: 'Free area of a sharp-edged opening.',
      allowed: ranges.openingArea,
      examples: ['12 in2', '80 cm2', '0.01 m2'],
    }),
  ),
  diameter: z.optional(
    quantity('length', {
      description: 'Diameter of a round, sharp-edged opening.',
      allowed: ranges.height,
      examples: ['6 in', '150 mm'],
    }),
  ),
  netFreeArea: z.optional(
    quantity('area', {
      description: 'Net free area of a vent, grille or louvre, as its maker states it.',
      allowed: ranges.openingArea,
      examples: ['100 in2', '650 cm2'],
    }),
  ),
  grossArea: z.optional(
    quantity('area', {
      description: 'Face area of a louvre whose net free area is not known.',
      allowed: ranges.openingArea,
      examples: ['300 in2', '0.2 m2'],
    }),
  ),
  louvre: z.optional(
    word(
      { wood: 'wood', wooden: 'wood', metal: 'metal' },
      'What a louvre of a gross area is made of: wood passes 25 % of its face, metal 75 %.',
    ),
  ),
  dischargeCoefficient: z.optional(
    plainNumber(
      ranges.dischargeCoefficient,
      'Discharge coefficient of an area; 0.6 when absent.',
      [0.6, 0.61],
    ),
  ),
  flow: z.optional(
    measuredLeak(['flow'], {
      description: 'Flow at a pressure difference.',
      examples: ['40 cfm at 50 Pa', '20 L/s at 10 Pa'],
    }),
  ),
  leakageArea: z.optional(
    measuredLeak(['area'], {
      description:
        'Leakage area with its reference pressure: at 4 Pa (discharge coefficient 1) or at 10 Pa (0.611).',
      examples: ['12 in2 at 4 Pa', '80 cm2 at 10 Pa'],
    }),
  ),
  coefficient: z.optional(leakCoefficient),
  exponent: z.optional(
    plainNumber(
      ranges.exponent,
      'Flow exponent of a flow, a leakage area or a coefficient; 0.65 when absent.',
      [0.65, 0.5],
    ),
  ),
  oneWay: z.optional(flag('Whether a flap lets air only in.')),
  opensAt: z.optional(
    quantity('pressure', {
      description: 'Pressure difference at which the flap of a one-way opening starts to open.',
      allowed: ranges.opensAt,
      examples: ['3 Pa', '0.01 in. w.c.'],
    }),
  ),
} satisfies z.ZodRawShape;

/** What {@link openingLawShape} reads. */
export type OpeningLawInFile = {
  readonly [Key in keyof typeof openingLawShape]?: z.output<(typeof openingLawShape)[Key]>;
};

/** Discharge coefficient of a sharp-edged opening when none is given [-]. */
export const assumedDischargeCoefficient = 0.6;
/**
 * Share of a louvre's face that passes air, where the maker's net free area is not known; the smaller one where
 * the material is not known either [-].
 * Source: NFPA 54-2012, 9.3.7.
 */
export const louvreFreeShare: Readonly<Record<'wood' | 'metal', number>> = {
  wood: 0.25,
  metal: 0.75,
};
/** Flow exponent of a leak when none is given [-]. */
export const assumedExponent = 0.65;
/** Pressure at which a one-way flap opens when none is given [Pa]. */
const assumedOpeningPressurePa = 2.5;

/** One way in which an opening may be written. A law joins with one row. */
export interface OpeningLawWay {
  /** The key that chooses this way. */
  readonly key:
    'area' | 'diameter' | 'netFreeArea' | 'grossArea' | 'flow' | 'leakageArea' | 'coefficient';
  /** Keys that may stand beside it. */
  readonly beside: readonly ('dischargeCoefficient' | 'exponent' | 'louvre')[];
  /** As it may be typed. */
  readonly example: string;
  /** The law it gives, from an item that has the key. */
  make(item: OpeningLawInFile): MadeLaw | undefined;
}

/** Every way in which an opening may be written, with the law it gives. */
export const openingLaws: readonly OpeningLawWay[] = [
  {
    key: 'area',
    beside: ['dischargeCoefficient'],
    example: 'area: 28 in2',
    make: (item) => (item.area === undefined ? undefined : orifice(item.area, item)),
  },
  {
    key: 'diameter',
    beside: ['dischargeCoefficient'],
    example: 'diameter: 6 in',
    make: (item) =>
      item.diameter === undefined ? undefined : orifice((Math.PI / 4) * item.diameter ** 2, item),
  },
  {
    key: 'netFreeArea',
    beside: ['dischargeCoefficient'],
    example: 'netFreeArea: 100 in2',
    make: (item) => (item.netFreeArea === undefined ? undefined : orifice(item.netFreeArea, item)),
  },
  {
    key: 'grossArea',
    beside: ['dischargeCoefficient', 'louvre'],
    example: 'grossArea: 300 in2, louvre: metal',
    make(item) {
      if (item.grossArea === undefined) return undefined;
      const value = louvreFreeShare[item.louvre ?? 'wood'];
      const made = orifice(item.grossArea * value, item);
      return { ...made, assumed: [{ what: 'free share of its louvre', value }, ...made.assumed] };
    },
  },
  {
    key: 'flow',
    beside: ['exponent'],
    example: 'flow: 40 cfm at 50 Pa',
    make: ({ flow, exponent }) =>
      flow?.kind === 'flow'
        ? powerLaw(exponent, (n) => coefficientFromFlow({ ...flow, exponent: n }))
        : undefined,
  },
  {
    key: 'leakageArea',
    beside: ['exponent'],
    example: 'leakageArea: 12 in2 at 4 Pa',
    make: ({ leakageArea, exponent }) =>
      leakageArea?.kind === 'area'
        ? powerLaw(exponent, (n) => coefficientFromLeakageArea({ ...leakageArea, exponent: n }))
        : undefined,
  },
  {
    key: 'coefficient',
    beside: ['exponent'],
    example: 'coefficient: 12 cfm/Pa^n',
    make: ({ coefficient, exponent }) =>
      coefficient === undefined ? undefined : powerLaw(exponent, () => coefficient),
  },
];

/**
 * The law of a flap that lets air only in, from the law of the open hole behind it.
 *
 * @param open - law of the hole
 * @param opensAtPa - pressure at which the flap opens; assumed when absent [Pa]
 * @returns the law, with what was assumed besides
 */
export function oneWayLaw(open: FlowLawDescription, opensAtPa: number | undefined): MadeLaw {
  const assumed: LawAssumption[] =
    opensAtPa === undefined ? [{ what: 'opening pressure', value: assumedOpeningPressurePa }] : [];
  const crackingPressurePa = opensAtPa ?? assumedOpeningPressurePa;
  if (open.kind === 'powerLaw') {
    return { law: { ...open, kind: 'oneWayDamper', crackingPressurePa }, assumed };
  }
  if (open.kind === 'orifice') {
    // At reference air Q = Cd A sqrt(2 dP / rho0).
    const coefficientM3PerSPaN =
      open.dischargeCoefficient * open.areaM2 * Math.sqrt(2 / referenceAir.densityKgPerM3);
    const law = { kind: 'oneWayDamper', coefficientM3PerSPaN, exponent: 0.5, crackingPressurePa };
    return { law: law as FlowLawDescription, assumed };
  }
  return { law: open, assumed: [] };
}

/**
 * The power law of a measured leak, such as that of a closed damper.
 *
 * @param leak - flow at a pressure, or leakage area
 * @param exponent - flow exponent [-]
 * @returns the law
 */
export function leakLaw(
  leak: NonNullable<OpeningLawInFile['flow']>,
  exponent: number,
): FlowLawDescription {
  const coefficientM3PerSPaN =
    leak.kind === 'flow'
      ? coefficientFromFlow({ ...leak, exponent })
      : coefficientFromLeakageArea({ ...leak, exponent });
  return { kind: 'powerLaw', coefficientM3PerSPaN, exponent };
}

function orifice(areaM2: number, { dischargeCoefficient }: OpeningLawInFile): MadeLaw {
  const value = dischargeCoefficient ?? assumedDischargeCoefficient;
  return {
    law: { kind: 'orifice', areaM2, dischargeCoefficient: value },
    assumed: dischargeCoefficient === undefined ? [{ what: 'discharge coefficient', value }] : [],
  };
}

function powerLaw(given: number | undefined, coefficient: (exponent: number) => number): MadeLaw {
  const exponent = given ?? assumedExponent;
  return {
    law: { kind: 'powerLaw', coefficientM3PerSPaN: coefficient(exponent), exponent },
    assumed: given === undefined ? [{ what: 'flow exponent', value: exponent }] : [],
  };
}
