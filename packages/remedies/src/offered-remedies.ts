import type { House, Outlet } from '@evendraft/house';
import {
  airtightness,
  barometricMakeUp,
  exhaustFlow,
  makeUpDuct,
  motorizedMakeUp,
  passiveOpening,
  poweredMakeUp,
  speedCap,
  transferOpening,
  type DuctRun,
  type Remedy,
  type RemedyKind,
} from '@evendraft/studies';
import { largestExhaust } from './largest-exhaust.js';

/** What a remedy is to be made of. */
export interface OfferOptions {
  readonly kind: RemedyKind;
  /** Id of the zone that air is brought to; that of the device when absent. */
  readonly zone?: string;
  /** Id of the other zone of a transfer opening. */
  readonly otherZone?: string;
  /** Id of the device that is followed, capped or held; the largest exhaust when absent. */
  readonly device?: string;
  /** Run of a duct; 3 m with two bends when absent, our choice. */
  readonly run?: DuctRun;
  /** Where make-up air comes from; outdoors without wind when absent. */
  readonly from?: Outlet;
  /** Suction at which a barometric damper begins to open; 2 Pa when absent, our choice [Pa]. */
  readonly opensAtPa?: number;
  /** How far the control of powered make-up air may fall short of its flow, and go beyond it; 0.1 each when absent [-]. */
  readonly shortfall?: number;
  readonly overshoot?: number;
}

/** A remedy of the house, or why it cannot have it, as a sentence without a full stop. */
export type OfferedRemedy =
  | { readonly status: 'offered'; readonly remedy: Remedy }
  | { readonly status: 'not possible'; readonly why: string };

/**
 * Makes remedies of a house from their kinds.
 *
 * @param house - the house
 * @param options - what each is to be made of
 * @returns one entry for each, in the same order
 */
export function offeredRemedies(
  house: House,
  options: readonly OfferOptions[],
): readonly OfferedRemedy[] {
  return options.map((each) => {
    const made = remedyOf(house, each);
    return typeof made === 'string'
      ? { status: 'not possible', why: made }
      : { status: 'offered', remedy: made };
  });
}

function remedyOf(house: House, options: OfferOptions): Remedy | string {
  const { kind, run = { lengthM: 3, elbows: 2 }, opensAtPa = 2 } = options;
  const { shortfall = 0.1, overshoot = 0.1 } = options;
  const exhaust = house.devices.filter(
    ({ direction, speeds }) => direction === 'exhaust' && speeds.length > 0,
  );
  const device =
    options.device === undefined
      ? largestExhaust(house)
      : exhaust.find(({ id }) => id === options.device);
  if (options.device !== undefined && device === undefined) {
    return notThere('exhaust device', options.device, exhaust);
  }
  const inside = options.zone ?? device?.zone ?? house.zones[0]?.id ?? '';
  for (const zone of [inside, ...(options.otherZone === undefined ? [] : [options.otherZone])]) {
    if (!house.zones.some(({ id }) => id === zone)) return notThere('zone', zone, house.zones);
  }
  const place = { zone: inside, ...(options.from === undefined ? {} : { from: options.from }) };
  switch (kind) {
    case 'passive opening':
      return passiveOpening(house, place);
    case 'make-up duct':
      return makeUpDuct(house, { ...place, run });
    case 'barometric make-up duct':
      return barometricMakeUp(house, { ...place, run, opensAtPa });
    case 'airtightness':
      return airtightness(house);
    case 'transfer opening':
      if (options.otherZone === undefined || options.otherZone === inside) {
        return 'a transfer opening needs two zones';
      }
      return transferOpening(house, [inside, options.otherZone]);
    case 'motorized make-up duct':
      return device === undefined
        ? noExhaust
        : motorizedMakeUp(house, { ...place, run, opensWith: { driver: device.id } });
    case 'powered make-up air':
      return device === undefined
        ? noExhaust
        : poweredMakeUp(house, { ...place, follows: device.id, shortfall, overshoot });
    case 'speed cap':
      return device === undefined ? noExhaust : speedCap(house, device.id);
    case 'exhaust flow':
      return device === undefined ? noExhaust : exhaustFlow(house, device.id);
  }
}

const noExhaust = 'the house has no exhaust device that people switch';

function notThere(what: string, id: string, known: readonly { readonly id: string }[]): string {
  // Quoted as JSON, so that a name cannot command a terminal.
  const names = known.map((each) => JSON.stringify(each.id)).join(', ');
  return `the house has no ${what} ${JSON.stringify(id)}; it has ${names === '' ? 'none' : names}`;
}
