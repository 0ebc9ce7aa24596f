import { InvalidArgumentError } from 'commander';
import type { OfferOptions, RemedyKind } from 'evendraft';

/** Flags that say what a remedy is made of. */
export interface RemedyFlags {
  readonly zone?: string;
  readonly device?: string;
  readonly to?: string;
  /** Where make-up air comes from. */
  readonly from: RemedyPlace;
  /** Of a make-up duct [m]. */
  readonly ductLength: number;
  readonly bends: number;
  /** Friction against smooth metal [-]. */
  readonly friction: number;
  /** Suction at which a barometric damper begins to open [Pa]. */
  readonly opensAt: number;
  /** How far powered make-up air may fall short of its flow, and go beyond it [-]. */
  readonly shortfall: number;
  readonly overshoot: number;
}

/** Where make-up air may come from: calm air, a face of the house, the roof. */
export type RemedyPlace = 'outdoors' | 'front' | 'right' | 'back' | 'left' | 'roof';

const places: readonly RemedyPlace[] = ['outdoors', 'front', 'right', 'back', 'left', 'roof'];

/** What a remedy is called on the command line. */
export const remedyNames = {
  opening: 'passive opening',
  duct: 'make-up duct',
  barometric: 'barometric make-up duct',
  motorized: 'motorized make-up duct',
  powered: 'powered make-up air',
  cap: 'speed cap',
  transfer: 'transfer opening',
  airtightness: 'airtightness',
  exhaust: 'exhaust flow',
} as const satisfies Readonly<Record<string, RemedyKind>>;

/** One of the names. */
export type RemedyName = keyof typeof remedyNames;

/**
 * A remedy as the flags describe it.
 *
 * @param name - its kind
 * @param flags - what it is made of
 * @returns what the library is asked for
 */
export function remedyFrom(name: RemedyName, flags: RemedyFlags): OfferOptions {
  const { zone, device, to, ductLength, bends, friction, opensAt } = flags;
  const { shortfall, overshoot, from } = flags;
  return {
    kind: remedyNames[name],
    run: { lengthM: ductLength, elbows: bends, frictionMultiplier: friction },
    opensAtPa: opensAt,
    from: from === 'outdoors' || from === 'roof' ? { kind: from } : { kind: 'face', face: from },
    shortfall,
    overshoot,
    ...(zone === undefined ? {} : { zone }),
    ...(device === undefined ? {} : { device }),
    ...(to === undefined ? {} : { otherZone: to }),
  };
}

/**
 * Reads the name of a remedy.
 *
 * @param text - as typed
 * @returns the name
 * @throws InvalidArgumentError for any other text
 */
export function remedyName(text: string): RemedyName {
  if (Object.hasOwn(remedyNames, text)) return text as RemedyName;
  throw new InvalidArgumentError(`Write one of ${Object.keys(remedyNames).join(', ')}.`);
}

/**
 * Reads where make-up air comes from.
 *
 * @param text - as typed
 * @returns the place
 * @throws InvalidArgumentError for any other text
 */
export function remedyPlace(text: string): RemedyPlace {
  const found = places.find((each) => each === text);
  if (found !== undefined) return found;
  throw new InvalidArgumentError(`Write one of ${places.join(', ')}.`);
}
