import type { House, Source } from '@evendraft/house';
import type { RemedyKind } from '@evendraft/studies';

/** What must be looked after where a remedy is built. Common practice, no source. */
export const upkeepOf: Readonly<Record<RemedyKind, readonly string[]>> = {
  'passive opening': ['screen or grille kept free'],
  'make-up duct': ['intake hood and screen kept free'],
  'barometric make-up duct': ['intake hood and screen kept free', 'flap moves freely', 'gasket'],
  'motorized make-up duct': [
    'intake hood and screen kept free',
    'damper and its drive tested',
    'gasket',
    'access panel',
  ],
  'powered make-up air': [
    'intake hood and screen kept free',
    'filter changed',
    'fan and its control tested',
    'access panel',
  ],
  'speed cap': ['control that holds the cap'],
  'transfer opening': ['grille kept free'],
  airtightness: [],
  'exhaust flow': [],
};

/** What a code rule says of a remedy. */
export interface CodeReading {
  readonly rule: string;
  readonly standing: 'satisfied' | 'not satisfied' | 'local code decides';
  readonly why: string;
  readonly source: Source;
}

/** What is held against code rules. */
export interface RemedyForCode {
  readonly kind: RemedyKind;
  /** As sized: diameter [m] of a duct, flow [m³/s] of a fan. */
  readonly size: number;
  /** Suction at which a barometric damper opens [Pa]. */
  readonly opensAtPa?: number;
}

const irc: Source = {
  document: 'International Residential Code, makeup air for range hoods',
  edition: '2018 to 2024',
  section: 'M1503.6',
  status: 'found',
};
const ircDampers: Source = { ...irc, section: 'M1503.6.2', status: 'memory' };
const minnesota: Source = {
  document: 'Minnesota Rules, makeup air for new dwellings',
  edition: '2015 and 2020',
  section: '1346.0501, Table 501.4.2 and its notes',
  status: 'found',
};
/** 0.01 in. w.c.; the code prints 3 Pa. */
const dampersOpenByPa = 3;
const eightInchesM = 8 * 0.0254;
const elevenInchesM = 11 * 0.0254;
const passiveDucts: readonly RemedyKind[] = [
  'make-up duct',
  'barometric make-up duct',
  'motorized make-up duct',
];
/** 400 cfm. */
const hoodTriggerM3PerS = (400 * 0.028316846592) / 60;

/**
 * Holds a remedy against the rules on make-up air that this project knows, paraphrased.
 *
 * Local code and its official decide; a rule that is not listed here may apply.
 *
 * @param remedy - kind and size
 * @param house - the house without it
 * @returns one reading a rule that has something to say
 */
export function codeReadings(remedy: RemedyForCode, house: House): readonly CodeReading[] {
  const { kind, size, opensAtPa } = remedy;
  const natural = house.appliances.some(
    ({ vent }) => vent === 'natural draft' || vent === 'open hearth' || vent === 'closed stove',
  );
  const largest = Math.max(
    0,
    ...house.devices
      .filter(({ direction }) => direction === 'exhaust')
      .flatMap(({ speeds }) => speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS)),
  );
  const triggered = natural && largest > hoodTriggerM3PerS;
  const readings: CodeReading[] = [];
  const say = (
    rule: string,
    satisfied: boolean,
    rest: Pick<CodeReading, 'why' | 'source'>,
  ): void => {
    readings.push({ rule, standing: satisfied ? 'satisfied' : 'not satisfied', ...rest });
  };
  if (triggered && (kind === 'passive opening' || kind === 'make-up duct')) {
    say('make-up air has a damper', false, { why: 'It is always open.', source: irc });
  }
  if (triggered && kind === 'powered make-up air') {
    say('make-up air at about the rate of the exhaust', size >= 0.9 * largest, {
      why: 'Held against the largest rated exhaust; about is taken as nine tenths, our choice.',
      source: irc,
    });
  }
  if (kind === 'barometric make-up duct') {
    if (opensAtPa !== undefined) {
      readings.push({
        rule: 'gravity dampers in passive make-up air give their flow at 3 Pa or less',
        standing: opensAtPa < dampersOpenByPa ? 'local code decides' : 'not satisfied',
        why: `It begins to open at ${opensAtPa} Pa; what it passes at 3 Pa is for its maker to state.`,
        source: ircDampers,
      });
    }
    if (natural) {
      say(
        'no barometric damper in a passive opening where an appliance vents by natural draft',
        false,
        {
          why: 'The house has such an appliance.',
          source: minnesota,
        },
      );
    }
  }
  if (kind === 'make-up duct' && size > eightInchesM + 1e-9) {
    say(
      'a passive opening above 8 in. has a motorized damper interlocked with the largest exhaust',
      false,
      {
        why: 'It is always open.',
        source: minnesota,
      },
    );
  }
  if (passiveDucts.includes(kind) && size > elevenInchesM + 1e-9) {
    say('a passive opening is at most 11 in. wide; beyond it make-up air is powered', false, {
      why: 'It is wider.',
      source: minnesota,
    });
  }
  if (kind === 'motorized make-up duct') {
    say('a passive opening has a motorized damper interlocked with the exhaust', true, {
      why: 'The damper opens with the device.',
      source: minnesota,
    });
  }
  if (kind === 'speed cap' && natural) {
    readings.push({
      rule: 'make-up air where an exhaust can exceed 400 cfm',
      standing: 'local code decides',
      why: 'Whether a cap counts depends on whether the user can lift it.',
      source: irc,
    });
  }
  return readings;
}
