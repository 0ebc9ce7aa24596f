import {
  verdictsByUrgency,
  type CombustionFinding,
  type RuleFinding,
  type Verdict,
} from '@evendraft/rules';
import type { DraftVerdict } from '@evendraft/studies';
import { formatQuantity, type UnitSystem } from '@evendraft/units';
import type { Assessment } from '../assessment.js';
import type { ApplianceDraft, DraftSituation, SolvedDraft } from '../draft-results.js';
import { countWords } from './count-words.js';
import { fullStop } from './full-stop.js';
import type { NumberPrinter } from './number-printer.js';
import { situationWords } from './situation-words.js';

/** What the words need. */
export interface DraftWordsInput {
  readonly assessment: Assessment;
  readonly printer: NumberPrinter;
  readonly system: UnitSystem;
}

/** What each verdict means, without a clearance. */
const meanings: Readonly<Record<DraftVerdict, string>> = {
  reversed: 'Runs backwards: even a flue that is already warm leaves all its gas in the room.',
  'spills in part': 'Spills in part: in every state of the flue some gas stays in the room.',
  'drafts only once warm':
    'Drafts only once warm: a cold flue does not start by itself, and till it does all gas stays in the room.',
  'drafts from cold':
    'Drafts from cold: in each situation that was solved it comes to rest without spillage. It may spill on the way there, and that is no clearance.',
};

/**
 * What the flues were solved as, what the signs mean and how far the numbers can be trusted.
 *
 * @param draft - the results
 * @returns sentences
 */
export function draftIntroduction({ situations, limitSets }: SolvedDraft): readonly string[] {
  return [
    `Each flue and its gas were solved as a part of the house, in the ${situations} situations that press it most, not in every state. Draft is vent minus room at the test tap, in Pa: negative draws, positive pushes gas into the room.`,
    'How sure: the flow is taken as steady at each instant and the same over the flue’s cross section, each room as well mixed; no gusts, soot or blockage. No number here clears an appliance: a test on site decides.',
    `Limits by: ${limitSets.map(({ name, id }) => `${name} (${id})`).join('; ')}.`,
  ];
}

/**
 * The three answers on an appliance, from the coarse to the physical.
 *
 * @param found - the appliance
 * @param assessment - with the findings of suction
 * @returns cells: appliance, suction against its limit, draft against its rule, flue and house together
 */
export function threeAnswers(
  found: ApplianceDraft,
  { findings }: Assessment,
): readonly [string, Verdict, Verdict, string] {
  const suction = findings.find(({ appliance }) => appliance === found.appliance);
  const drafts = found.findings.filter(({ about }) => about === 'draft');
  return [
    found.appliance,
    suction?.verdict ?? 'not judged',
    mostUrgent(drafts.map(({ finding }) => finding.verdict)),
    found.worst?.verdict ?? 'not judged',
  ];
}

function mostUrgent(verdicts: readonly Verdict[]): Verdict {
  return verdictsByUrgency.find((each) => verdicts.includes(each)) ?? 'not judged';
}

/**
 * What was found of one flue: verdict, situation, suctions at which it turns, how it starts.
 *
 * @param found - the appliance
 * @param input - the assessment and how to print
 * @returns sentences
 */
export function flueSentences(found: ApplianceDraft, input: DraftWordsInput): readonly string[] {
  const { worst, verdicts, unjudged, starts } = found;
  const { printer, system } = input;
  const missing = unjudged.map(
    ({ reason, situations }) =>
      `Not judged in ${countWords(situations, 'situation')}: ${fullStop(reason)}`,
  );
  if (worst === undefined) return [...missing, 'No situation of it could be judged.'];
  const counted = verdicts.map(({ verdict, situations }) => `${verdict} in ${situations}`);
  const { thresholds } = worst;
  return [
    meanings[worst.verdict],
    `Least favourable, with ${draftSituationWords(worst, input)}. Of all its situations: ${counted.join(', ')}.`,
    pressesOut(worst)
      ? `Its burner presses the gas into a vent that should draw: once warm the vent stands ${printer.signedPressure(worst.tapDraftPa)} Pa above the room at the tap. Gas comes out at joints and through the appliance; how much is not calculated, and all of it counts as spilled.`
      : `Draft there, once warm: ${printer.signedPressure(worst.tapDraftPa)} Pa at the tap; of its gas ${percent(worst.spilledShare.fromCold)} stays in the room from cold, ${percent(worst.spilledShare.fromWarm)} from warm.`,
    ...(thresholds === undefined
      ? pressesOut(worst)
        ? []
        : ['A fan holds the flow of its gas, so that there is no suction at which it turns.']
      : [
          `Where it turns, room minus outdoors at its collar, in Pa: ${turns('a cold flue starts to draw only above', thresholds.coldEstablishes, printer)}; ${turns('a hot flue spills below', thresholds.hotSpills, printer)}; ${turns('a hot flue reverses below', thresholds.hotReverses, printer)}.`,
        ]),
    ...(starts.length === 0
      ? []
      : [`From the start of the burner: ${starts.map(startWords(system)).join('; ')}.`]),
    ...missing,
  ];
}

/** Whether gas rises, and yet counts as spilled because its vent stands above the room. */
function pressesOut({
  verdict,
  spilledShare,
  tapDraftPa,
}: NonNullable<ApplianceDraft['worst']>): boolean {
  return verdict === 'spills in part' && spilledShare.fromWarm === 1 && tapDraftPa > 0;
}

function turns(
  what: string,
  { roomPa, houseGivesPa }: { readonly roomPa: number; readonly houseGivesPa: number },
  printer: NumberPrinter,
): string {
  return `${what} ${printer.signedPressure(roomPa)}, this house gives ${printer.signedPressure(houseGivesPa)}`;
}

function startWords(system: UnitSystem): (start: ApplianceDraft['starts'][number]) => string {
  const time = (seconds: number): string =>
    seconds < 600 ? `${Math.round(seconds)} s` : formatQuantity(seconds, 'time', { system });
  return ({ start, spillageS, followedS }) =>
    spillageS === null
      ? `a ${start} flue spills on, with no end in the ${time(followedS)} that were followed`
      : spillageS === 0
        ? `a ${start} flue takes its gas at once`
        : `a ${start} flue spills for ${time(spillageS)}`;
}

/**
 * Situation and what fires in it.
 *
 * @param situation - names and firing
 * @param input - the assessment and how to print
 * @returns words without a full stop
 */
export function draftSituationWords(
  situation: DraftSituation,
  { assessment, printer }: DraftWordsInput,
): string {
  const firing = Object.entries(situation.firing).map(([appliance, stage]) =>
    stage === 'firing' ? appliance : `${appliance} (${stage})`,
  );
  return `${situationWords(situation, assessment, printer)}, firing: ${firing.join(', ')}`;
}

/**
 * Findings on one flue as a reader needs them: of the levels of carbon monoxide only the highest that is passed.
 *
 * @param found - the appliance
 * @returns findings in their order
 */
export function toldFindings({ findings }: ApplianceDraft): readonly CombustionFinding[] {
  const levels = findings.filter(({ about }) => about === 'carbon monoxide');
  const told = new Map<string, CombustionFinding>();
  for (const each of levels) {
    const { document } = each.finding.source;
    const kept = told.get(document);
    if (kept === undefined || each.finding.verdict !== 'within the limit') told.set(document, each);
  }
  return findings.filter(
    (each) => each.about !== 'carbon monoxide' || [...told.values()].includes(each),
  );
}

/** Lines of the arithmetic that hold the number and its limit, by what is judged. */
const linesOf: Readonly<Record<CombustionFinding['about'], readonly [string, string]>> = {
  draft: ['draft', 'weakest draft'],
  'spillage time': ['spillage', 'limit'],
  'carbon monoxide': ['concentration', 'level'],
};

/**
 * Cells of a finding: what it is on, its number, its limit, the verdict.
 *
 * @param found - the finding
 * @param system - the reader's units
 * @returns cells
 */
export function judgedCells(
  { about, finding }: CombustionFinding,
  system: UnitSystem,
): readonly [string, string, string, Verdict] {
  const [found, limit] = linesOf[about];
  return [
    `${finding.title}${startOf(about, finding)}`,
    lineValue(finding, found, system),
    lineValue(finding, limit, system),
    finding.verdict,
  ];
}

/** Some limits are the same from a cold and from a warm flue, and do not say which in their title. */
function startOf(about: CombustionFinding['about'], { title, why }: RuleFinding): string {
  if (about !== 'spillage time' || /cold|warm/u.test(title)) return '';
  return why.includes('cold') ? ', cold flue' : ', warm flue';
}

function lineValue({ arithmetic }: RuleFinding, wanted: string, system: UnitSystem): string {
  const value = arithmetic.find(({ label }) => label === wanted)?.value;
  if (value === undefined || typeof value === 'string') return value ?? '';
  if (value.dimension === 'time') return `${Math.round(value.si)} s`;
  if (value.dimension === 'concentration') return `${(value.si * 1e6).toFixed(0)} ppm`;
  const decimals = value.dimension === 'pressure' ? { decimals: 1 } : {};
  return formatQuantity(value.si, value.dimension, { system, ...decimals });
}

/**
 * What levels of carbon monoxide that are passed call for, each once.
 *
 * @param found - the appliance
 * @returns sentences, that of the highest level first
 */
export function calledFor(found: ApplianceDraft): readonly string[] {
  const actions = toldFindings(found)
    .filter(({ about }) => about === 'carbon monoxide')
    .flatMap(({ finding }) => finding.satisfiedBy.map(fullStop));
  return [...new Set(actions)].reverse();
}

function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}
