import type { Appliance, House } from '@evendraft/house';
import type {
  ApplianceCombustion,
  CombustionStudy,
  Situation,
  StudiedSituation,
} from '@evendraft/studies';
import type { DraftLimit } from './further-limits.js';
import { judgeAmbientCo } from './judge-ambient-co.js';
import { judgeDraft, weakestDraft } from './judge-draft.js';
import { judgeSpillageTime } from './judge-spillage-time.js';
import type { LimitSet } from './limit-set.js';
import type { RuleFinding } from './rule-finding.js';

/** What a finding on combustion holds against a limit. */
export type CombustionSubject = 'draft' | 'spillage time' | 'carbon monoxide';

/** A finding on one appliance, and the situation of the house that it speaks of. */
export interface CombustionFinding {
  readonly appliance: string;
  readonly about: CombustionSubject;
  readonly situation: Pick<Situation, 'label' | 'weather' | 'airtightness'> & {
    readonly firing: Readonly<Record<string, string>>;
  };
  readonly finding: RuleFinding;
  /** Draft [Pa], spillage time [s] or carbon monoxide [ppm]; null where spillage does not end or gas gathers without end. */
  readonly found: number | null;
}

/** A study of combustion to be judged. */
export interface JudgeCombustionInput {
  readonly limitSet: LimitSet;
  readonly house: Pick<House, 'appliances' | 'weathers'>;
  readonly study: CombustionStudy;
}

const studied =
  'For the least favourable of the situations studied, which need not be the programme’s own set-up; a test on site decides.';

/**
 * Holds a study of combustion against the draft limits, spillage times and levels of carbon monoxide of a set.
 *
 * Draft is that of a hot flue in the situation with the least margin at its outdoor temperature; spillage that of the
 * least favourable situation from cold and from warm; carbon monoxide that of the zone that comes to hold most of it.
 *
 * @param input - set, house and study
 * @returns the findings, appliance by appliance; none where the set has no such limits
 */
export function judgeCombustion(input: JudgeCombustionInput): readonly CombustionFinding[] {
  const { house, study } = input;
  return study.appliances.flatMap((found) => {
    const appliance = house.appliances.find(({ id }) => id === found.appliance);
    if (appliance === undefined) return [];
    return [
      ...drafts(input, appliance, found),
      ...spillageTimes(input, found),
      ...carbonMonoxide(input, found),
    ];
  });
}

function drafts(
  { limitSet, house }: JudgeCombustionInput,
  appliance: Appliance,
  { situations }: ApplianceCombustion,
): readonly CombustionFinding[] {
  const temperatureOf = ({ weather }: StudiedSituation): number =>
    house.weathers.find(({ name }) => name === weather)?.outdoorTemperatureC ?? Number.NaN;
  const draftOf = ({ states, fromWarm }: StudiedSituation): number =>
    states[fromWarm]?.flues.find((flue) => flue.appliance === appliance.id)?.tapDraftPa ??
    Number.NaN;
  return (limitSet.draftLimits ?? []).flatMap((limit) => {
    const margin = (each: StudiedSituation): number =>
      weakestDraft(limit, temperatureOf(each)) - draftOf(each);
    const worst = leastBy(situations, margin);
    if (worst === undefined) return [];
    const findings = judgeDraft({
      limitSet: only(limitSet, limit),
      appliance,
      appliances: house.appliances,
      outdoorTemperatureC: temperatureOf(worst),
      draftPa: draftOf(worst),
    });
    return findings.map((finding) =>
      about('draft', {
        ...{ appliance: appliance.id, situation: worst, finding },
        found: draftOf(worst),
      }),
    );
  });
}

function only(limitSet: LimitSet, limit: DraftLimit): LimitSet {
  return { ...limitSet, draftLimits: [limit] };
}

function spillageTimes(
  { limitSet }: JudgeCombustionInput,
  { appliance, situations, courses }: ApplianceCombustion,
): readonly CombustionFinding[] {
  const [worst] = situations;
  if (worst === undefined) return [];
  return courses.flatMap(({ start, spillageS }) =>
    judgeSpillageTime({ limitSet, appliance, vent: start, spillageS }).map((finding) =>
      about('spillage time', { appliance, situation: worst, finding, found: spillageS }),
    ),
  );
}

function carbonMonoxide(
  { limitSet }: JudgeCombustionInput,
  { appliance, spilled }: ApplianceCombustion,
): readonly CombustionFinding[] {
  if (spilled === undefined) return [];
  const zone = leastBy(spilled.zones, ({ carbonMonoxidePpm }) => -(carbonMonoxidePpm ?? Infinity));
  if (zone === undefined) return [];
  const concentrationPpm = zone.carbonMonoxidePpm ?? Number.NaN;
  return judgeAmbientCo({ limitSet, zone: zone.zone, concentrationPpm }).map((finding) =>
    about('carbon monoxide', {
      appliance,
      situation: spilled,
      found: zone.carbonMonoxidePpm,
      finding: {
        ...finding,
        notes: [
          ...finding.notes,
          `For ${spilled.carbonMonoxideAirFreePpm} ppm in the gas without excess air, in proportion to it, the burner going on unchanged and every zone well mixed; a burner that takes in its own gas makes far more.`,
        ],
      },
    }),
  );
}

function about(
  subject: CombustionSubject,
  of: Pick<CombustionFinding, 'appliance' | 'situation' | 'finding' | 'found'>,
): CombustionFinding {
  const { label, weather, airtightness, firing } = of.situation;
  return {
    appliance: of.appliance,
    about: subject,
    situation: { label, weather, airtightness, firing },
    finding: { ...of.finding, notes: [...of.finding.notes, studied] },
    found: of.found,
  };
}

/** The first item with the smallest number; what is no number counts as smallest. */
function leastBy<Item>(items: readonly Item[], of: (item: Item) => number): Item | undefined {
  const size = (item: Item): number => {
    const value = of(item);
    return Number.isNaN(value) ? -Infinity : value;
  };
  return items.reduce<Item | undefined>(
    (least, item) => (least === undefined || size(item) < size(least) ? item : least),
    undefined,
  );
}
