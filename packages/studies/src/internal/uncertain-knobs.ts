import type { CompiledHouse, Zone } from '@evendraft/house';
import type { UncertainInput } from '../uncertain-input.js';
import { normalQuantile } from './normal-quantile.js';

/** One thing that is drawn for a sample. */
export interface Knob {
  /** In words, e.g. `flow of the dryer`. */
  readonly label: string;
  /** The value at a share of its distribution [-]. */
  at(share: number): number;
}

/** A knob on the factors of links. */
interface LinkKnob extends Knob {
  readonly links: readonly number[];
}

/** Everything that is drawn: knobs on links, those on the distribution of leaks, the wind and the exponent. */
export interface Knobs {
  readonly links: readonly LinkKnob[];
  /** Factors on groups of leaks, brought back to the same total. */
  readonly distribution: readonly LinkKnob[];
  /** Size of each group of leaks at the test pressure, as described [-]. */
  readonly weights: readonly number[];
  readonly wind: Knob | undefined;
  readonly exponent: Knob | undefined;
}

/**
 * What ranges turn on a compiled house.
 *
 * @param compiled - the compiled house
 * @param ranges - ranges without issues
 * @returns the knobs
 */
export function knobsOf(compiled: CompiledHouse, ranges: readonly UncertainInput[]): Knobs {
  const { links, house } = compiled;
  const range = (kind: UncertainInput['kind'], device?: string): UncertainInput | undefined =>
    ranges.find((each) => each.kind === kind && each.device === device);
  const linksWhere = (holds: (link: (typeof links)[number]) => boolean): readonly number[] =>
    links.flatMap((link, index) => (holds(link) ? [index] : []));

  const airtightness = range('airtightness');
  const groups = leakGroups(compiled);
  const distribution = range('leak distribution');
  const wind = range('wind pressure');
  const exponent = range('flow exponent');
  return {
    links: [
      ...(airtightness === undefined
        ? []
        : [
            {
              label: 'airtightness of the house',
              at: quantileOf(airtightness),
              links: linksWhere(({ role }) => role.kind === 'leak'),
            },
          ]),
      ...house.devices.flatMap(({ id, speeds }) => {
        const own = range('device flow', id) ?? range('device flow');
        if (own === undefined || speeds.length === 0) return [];
        return [
          {
            label: `flow of the ${id}`,
            at: quantileOf(own),
            links: linksWhere(({ role }) => role.kind === 'device' && role.id === id),
          },
        ];
      }),
    ],
    // One group alone has nothing to be distributed over.
    distribution:
      distribution === undefined || groups.length < 2
        ? []
        : groups.map(({ label, links: members }) => ({
            label: `share of the leaks of ${label}`,
            at: quantileOf(distribution),
            links: members,
          })),
    weights: groups.map(({ weight }) => weight),
    wind: wind && { label: 'wind pressure on the house', at: quantileOf(wind) },
    exponent: exponent && { label: 'flow exponent of the leaks', at: quantileOf(exponent) },
  };
}

/** Leaks of one surface of one zone to one place belong together, on whichever face or height they are. */
function leakGroups({
  links,
  house,
}: CompiledHouse): readonly { label: string; links: number[]; weight: number }[] {
  const groups = new Map<string, { label: string; links: number[]; weight: number }>();
  links.forEach(({ role, description: { from, to, fromHeightM, law } }, index) => {
    if (role.kind !== 'leak' || law.kind !== 'powerLaw') return;
    const zone = house.zones.find(({ id }) => id === from);
    const label = `${from} ${surfaceAt(fromHeightM, zone)}${to.startsWith('@') ? '' : ` to ${to}`}`;
    const group = groups.get(label) ?? { label, links: [], weight: 0 };
    group.links.push(index);
    group.weight += law.coefficientM3PerSPaN;
    groups.set(label, group);
  });
  return [...groups.values()];
}

function surfaceAt(heightM: number, zone: Zone | undefined): string {
  if (zone === undefined || heightM === zone.floorHeightM) return 'floor';
  return heightM === zone.floorHeightM + zone.heightM ? 'ceiling' : 'walls';
}

/** 95 of 100 values of a bell lie within this many standard deviations [-]. */
const bellHalfWidth = normalQuantile(0.975);

/** Factors vary by ratio, so that half and double are as far from one; the exponent varies by difference. */
function quantileOf({ kind, low, high, shape }: UncertainInput): (share: number) => number {
  const byRatio = kind !== 'flow exponent';
  const from = byRatio ? Math.log(low) : low;
  const to = byRatio ? Math.log(high) : high;
  const back = byRatio ? Math.exp : (value: number): number => Math.min(1, Math.max(0.5, value));
  if (shape === 'even')
    return (share) => (byRatio ? low + share * (high - low) : back(from + share * (to - from)));
  const middle = (from + to) / 2;
  const deviation = (to - from) / 2 / bellHalfWidth;
  return (share) => back(middle + deviation * normalQuantile(share));
}
