import type { Provenance } from '../provenance.js';

/** Kinds of device for which a typical fan is stated. */
export type TypicalFanKind =
  'range hood' | 'downdraft' | 'bath fan' | 'dryer' | 'central vacuum' | 'inline fan' | 'other fan';

/** One pressure of a typical fan, with where it comes from. */
export interface TypicalFanPressure extends Provenance {
  /** The pressure [Pa]. */
  readonly pressurePa: number;
}

/** What is assumed of a device of which only the flow is known. */
export interface TypicalFan {
  /** Pressure rise of the bare fan at zero flow and highest speed. */
  readonly shutOff: TypicalFanPressure;
  /** Pressure rise at which the fan is rated, and which the assumed duct takes at rated flow. */
  readonly rating: TypicalFanPressure;
}

const ratingPoint: TypicalFanPressure = Object.freeze({
  pressurePa: 62.5,
  source:
    'rating point of installed residential fans, 0.25 in. w.c. (LBNL guidance on ventilation)',
  status: 'found',
});

const hoodShutOff: TypicalFanPressure = Object.freeze({
  pressurePa: 224,
  source:
    'fan curve of a 600 cfm hood, 0.90 in. w.c. at zero flow (Çengel and Cimbala, Fluid Mechanics, example 14-1, as restated in public)',
  status: 'found',
});

const bathShutOff: TypicalFanPressure = Object.freeze({
  pressurePa: 134,
  source:
    'the mean flow of over 80 measured bath fans falls by 19 % from 25 to 62.5 Pa (laboratory study); with rise = shut-off (1 − (flow/free flow)²), sqrt((134 − 62.5)/(134 − 25)) = 0.81',
  status: 'derived',
});

/**
 * Typical fans by kind of device, for a device of which only the flow is known.
 *
 * Every use of one is an assumption and is to be listed as such; a fan curve from the maker replaces
 * it. Which shut-off pressure is taken decides how deep a strong fan can draw a tight house.
 */
export const typicalFans: Readonly<Record<TypicalFanKind, TypicalFan>> = Object.freeze({
  'range hood': { shutOff: hoodShutOff, rating: ratingPoint },
  downdraft: {
    shutOff: {
      ...hoodShutOff,
      source: `taken as a range hood: ${hoodShutOff.source}`,
      status: 'assumed',
    },
    rating: ratingPoint,
  },
  'bath fan': { shutOff: bathShutOff, rating: ratingPoint },
  dryer: {
    shutOff: {
      pressurePa: 125,
      source:
        'fans of hoods and dryers keep running against 60 to 125 Pa (CSA gas technician course, unit 14); the upper end is taken',
      status: 'found',
    },
    rating: {
      pressurePa: 62.5,
      source: 'no rating pressure known; half of the shut-off pressure is taken',
      status: 'assumed',
    },
  },
  'central vacuum': {
    shutOff: {
      pressurePa: 20000,
      source:
        'no source; the suction of a cleaner is so far above that of a house that its flow hardly changes',
      status: 'assumed',
    },
    rating: {
      pressurePa: 10000,
      source: 'no source; half of the shut-off pressure',
      status: 'assumed',
    },
  },
  'inline fan': {
    shutOff: {
      pressurePa: 250,
      source: 'no source; about that of a range hood, because such fans are chosen for long ducts',
      status: 'assumed',
    },
    rating: ratingPoint,
  },
  'other fan': {
    shutOff: {
      ...bathShutOff,
      source: `taken as a bath fan: ${bathShutOff.source}`,
      status: 'assumed',
    },
    rating: ratingPoint,
  },
});
