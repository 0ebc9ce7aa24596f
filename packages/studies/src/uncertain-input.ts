import type { House, Source } from '@evendraft/house';

/** What of a house is uncertain. */
export type UncertainInputKind =
  'airtightness' | 'flow exponent' | 'leak distribution' | 'device flow' | 'wind pressure';

/** A range in which a value may lie. */
export interface UncertainInput {
  readonly kind: UncertainInputKind;
  /** Device whose flow is meant; absent for the other kinds, and for every device by itself. */
  readonly device?: string;
  /**
   * Low and high end: factors on the value, but for the flow exponent, which is given itself [-].
   * With `even` every value between is as likely as another; with `bell` 95 of 100 lie between.
   */
  readonly low: number;
  readonly high: number;
  readonly shape: 'even' | 'bell';
  readonly source: Source;
}

/** A range that makes no sense, with what would. */
export interface UncertainInputIssue {
  readonly code:
    'range.upside-down' | 'range.out-of-bounds' | 'range.unknown-device' | 'range.twice';
  /** Place in the list of ranges. */
  readonly index: number;
  readonly found: string;
  readonly allowed: string;
}

const practice: Source = {
  document: 'this project: ranges for a first look, to be replaced by what is known of the house',
  status: 'common practice, no source',
};

/**
 * Ranges for a first look at a house whose owner states none.
 *
 * @param house - the house; its own flow exponent is the middle of the exponent's range
 * @returns one range a kind
 */
export function usualUncertainty(house: House): readonly UncertainInput[] {
  const n = house.airtightness.exponent;
  const bell = { shape: 'bell', source: practice } as const;
  return [
    { kind: 'airtightness', low: 0.9, high: 1.1, ...bell },
    { kind: 'flow exponent', low: Math.max(0.5, n - 0.07), high: Math.min(1, n + 0.07), ...bell },
    { kind: 'leak distribution', low: 0.5, high: 2, ...bell },
    { kind: 'device flow', low: 0.8, high: 1.1, ...bell },
    { kind: 'wind pressure', low: 0.5, high: 1.5, ...bell },
  ];
}

/**
 * What is wrong with ranges, all at once.
 *
 * @param ranges - the ranges
 * @param house - the house that they are of
 * @returns issues in the order of the ranges; none if all make sense
 */
export function uncertainInputIssues(
  ranges: readonly UncertainInput[],
  house: House,
): readonly UncertainInputIssue[] {
  const known = new Set(house.devices.map(({ id }) => id));
  const seen = new Set<string>();
  return ranges.flatMap((range, index): readonly UncertainInputIssue[] => {
    const { kind, device, low, high } = range;
    const [least, most] = kind === 'flow exponent' ? [0.5, 1] : [0.01, 100];
    const found = `${low} to ${high}`;
    const key = `${kind} ${device ?? ''}`;
    const twice = seen.has(key);
    seen.add(key);
    return [
      ...(low > high
        ? [{ code: 'range.upside-down' as const, index, found, allowed: `${high} to ${low}` }]
        : []),
      ...(low >= least && high <= most
        ? []
        : [{ code: 'range.out-of-bounds' as const, index, found, allowed: `${least} to ${most}` }]),
      ...(device === undefined || known.has(device)
        ? []
        : [
            {
              code: 'range.unknown-device' as const,
              index,
              found: device,
              allowed: [...known].join(', '),
            },
          ]),
      ...(twice
        ? [{ code: 'range.twice' as const, index, found: key.trim(), allowed: 'once' }]
        : []),
    ];
  });
}
