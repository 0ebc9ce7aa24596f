import { verdictsByUrgency, type RuleFinding } from '@evendraft/rules';
import type { SolvedAir } from '../air-results.js';
import { spillsSomewhere } from '../spills-somewhere.js';
import { countWords } from './count-words.js';
import { deepestPerState } from './deepest-per-state.js';
import { calledFor } from './draft-words.js';
import { fullStop } from './full-stop.js';
import { terminalCuresInShort } from './terminal-cures.js';
import { threeAnswersTable } from './terminal-draft.js';
import { terminalFindings, type TerminalSection } from './terminal-findings.js';
import { terminalBeside } from './terminal-judged-sets.js';
import { terminalLadder } from './terminal-ladder.js';
import { terminalStates } from './terminal-states.js';
import { terminalUncertainty } from './terminal-uncertainty.js';

/** The most urgent cautions; where nothing is beyond a limit and nothing spills the first alone. */
const cautionsShown = 2;
const statesShown = 3;

/**
 * What decides, on about one screen: the ladder, verdicts, what is beyond or near a limit, what to do now, the worst
 * states; then how much more there is and how to see it.
 *
 * @param section - page, assessment and printer
 * @param restWith - how the reader gets everything, e.g. `--all`
 */
export function terminalWhatDecides(section: TerminalSection, restWith: string): void {
  terminalLadder(section);
  terminalFindings(section, { explained: 'pressing' });
  flues(section);
  terminalBeside(section);
  whatToDo(section);
  terminalUncertainty(section);
  terminalStates(section, statesShown);
  rules(section);
  rest(section, restWith);
}

/** Three answers on each appliance that has a flue, and no more. */
function flues(section: TerminalSection): void {
  const { page, assessment } = section;
  const { draft } = assessment;
  if (draft === undefined) return;
  page.heading('Draft and spillage');
  if (draft.status === 'not solved') {
    page.paragraph(fullStop(draft.why));
    return;
  }
  if (draft.appliances.length > 0) threeAnswersTable(section, draft.appliances);
  for (const { appliance, reason } of draft.notStudied) {
    page.bullet(`Not solved, ${appliance}: ${fullStop(reason)}`);
  }
}

function whatToDo(section: TerminalSection): void {
  const { page, assessment } = section;
  const { draft, findings, cautions } = assessment;
  const beyond = findings.some(({ verdict }) => verdict === 'beyond the limit');
  const called = draft?.status === 'solved' ? draft.appliances.flatMap(calledFor) : [];
  const spills = draft?.status === 'solved' && draft.appliances.some(spillsSomewhere);
  page.heading('What to do now');
  for (const caution of cautions.slice(0, beyond || spills ? cautionsShown : 1)) {
    page.bullet(caution);
  }
  if (called.length > 0) {
    page.bullet(`The carbon monoxide found calls for this: ${[...new Set(called)].join(' ')}`);
  }
  terminalCuresInShort(section);
}

/** Rules that are beyond or near a limit, each once with all that it is about. */
function rules({ page, assessment }: TerminalSection): void {
  const { screens, houseFindings } = assessment;
  const meant = [...houseFindings, ...screens].filter(({ applies }) => applies !== 'no');
  if (meant.length === 0) return;
  const counts = verdictsByUrgency
    .map((verdict) => ({ verdict, all: meant.filter((each) => each.verdict === verdict) }))
    .filter(({ all }) => all.length > 0);
  page.heading('Code screens and limits of the house');
  page.paragraph(
    `Of ${countWords(meant.length, 'rule')} for such a house: ${counts.map(({ verdict, all }) => `${all.length} ${verdict}`).join(', ')}. Local code and its official decide which of them bind.`,
  );
  for (const verdict of ['beyond the limit', 'near the limit'] as const) {
    const named = new Map<string, string[]>();
    for (const each of meant) {
      if (each.verdict !== verdict) continue;
      const subjects = named.get(titleWords(each)) ?? [];
      const subject = each.subject === undefined ? [] : [each.subject];
      named.set(titleWords(each), [...subjects, ...subject]);
    }
    for (const [title, subjects] of named) {
      page.verdictBullet(
        verdict,
        `${title}${subjects.length === 0 ? '' : `: ${subjects.join(', ')}`}.`,
      );
    }
  }
}

function titleWords({ title, region }: RuleFinding): string {
  return region === 'everywhere' ? title : `${title} (${region})`;
}

/** What is not shown, in numbers, so that nobody takes the short form for all there is. */
function rest({ page, assessment }: TerminalSection, restWith: string): void {
  const { worstCase, attribution, air, assumptions, notModelled, cautions, programmeTest } =
    assessment;
  const states = deepestPerState(worstCase.situations).length;
  const left = [
    ...(states > statesShown
      ? [`${countWords(states, 'state')}, ${countWords(worstCase.situations.length, 'situation')}`]
      : []),
    ...(attribution === undefined ? [] : ['what each device adds']),
    ...(programmeTest === undefined ? [] : ["the programme's own test"]),
    ...(air?.status !== 'solved' ? [] : airParts(air)),
    'the arithmetic and source of every rule',
    ...(assumptions.length === 0 ? [] : [countWords(assumptions.length, 'assumed value')]),
    ...(notModelled.length === 0
      ? []
      : [
          countWords(
            notModelled.length,
            'thing that is not modelled',
            'things that are not modelled',
          ),
        ]),
    ...(cautions.length === 0 ? [] : [countWords(cautions.length, 'caution')]),
    'the proof of the solve',
  ];
  page.heading('Not shown here');
  page.paragraph(`With ${restWith}: ${left.join('; ')}.`);
}

/** What was solved of the air beside the appliances, with what is beyond its guidance. */
function airParts({ howFar, guidance, failures }: SolvedAir): readonly string[] {
  const beyond = guidance.filter(({ verdict }) => verdict === 'beyond the limit').length;
  return [
    ...(howFar.airtightness.length === 0 ? [] : ['how far the house may go']),
    ...(failures.length === 0 ? [] : ['what fails']),
    `guidance on its air, ${beyond} beyond it`,
  ];
}
