import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from './assessment.js';
import { airBesideSection } from './html/air-beside-section.js';
import { airSection } from './html/air-section.js';
import { answerSection } from './html/answer-section.js';
import { assumptionSection, houseSection, proofSection } from './html/basis-section.js';
import { draftSection } from './html/draft-section.js';
import { findingSection } from './html/finding-section.js';
import { htmlList, htmlSection, type HtmlInput, type HtmlSection } from './html/html-section.js';
import { resultSection } from './html/result-section.js';
import { signOffSection } from './html/sign-off-section.js';
import { pageStyle, printedMargins } from './html/style.js';
import { houseWords } from './internal/house-words.js';
import { markup, type Markup } from './internal/markup.js';
import { numberPrinter } from './internal/number-printer.js';
import type { ReportExtras } from './report-extras.js';
import type { SignOff } from './sign-off.js';

/** How the page is made. */
export interface HtmlOptions {
  /** Units of the reader: inch-pound or SI. Pressures are in pascals in both. */
  readonly system: UnitSystem;
  /** Further results to show beside the assessment. */
  readonly extras?: ReportExtras;
  /** The block to sign; left out where it is not given. */
  readonly signOff?: SignOff;
}

/** Nothing is fetched and nothing runs: styles stand in the page, images there are none. */
const policy =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

/**
 * The report as one page that needs nothing beside it: it opens from disk, without a network or a
 * script, and prints to a numbered document.
 *
 * Names from the house file are escaped: they never become markup, links or paths.
 *
 * @param assessment - what was found
 * @param options - units, further results, block to sign
 * @returns an HTML document, ending in a line end
 */
export function renderHtml(assessment: Assessment, options: HtmlOptions): string {
  const { system, extras = {}, signOff } = options;
  const input: HtmlInput = { assessment, extras, system, printer: numberPrinter(system) };
  const sections = pageSections(input, signOff);
  const { house, libraryVersion } = assessment;
  const identity = `Evendraft ${libraryVersion}, house file ${house.digest.slice(0, 19)}`;
  const style: Markup = { finished: pageStyle + printedMargins(identity) };
  return markup`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light">
<title>${house.name}: pressures and findings</title>
<style>${style}</style>
</head>
<body>
<div class="page">
<header>
<p class="kicker">Evendraft: what the house does to its own air</p>
<h1>${house.name}</h1>
<p class="kicker">${houseWords(assessment, input.printer)}</p>
</header>
<nav aria-label="Contents"><ul>${[{ id: 'answer', title: 'Answer' }, ...sections].map(
    ({ id, title }) => markup`<li><a href="#${id}">${title}</a></li>`,
  )}</ul></nav>
<main>
${answerSection(input)}
${sections.map(htmlSection)}</main>
<footer><p>Evendraft ${libraryVersion}. House file ${house.digest}. Risk screening by computation: it clears no appliance, a test on site decides.</p></footer>
</div>
</body>
</html>
`.finished;
}

function pageSections(input: HtmlInput, signOff: SignOff | undefined): readonly HtmlSection[] {
  const { assessment, extras, system } = input;
  const draft = draftSection(input);
  const beside = airBesideSection(input);
  return [
    ...(assessment.cautions.length === 0
      ? []
      : [{ id: 'cautions', title: 'Cautions', body: htmlList(assessment.cautions) }]),
    { id: 'findings', title: 'Findings', body: findingSection(input) },
    ...(draft === undefined
      ? []
      : [{ id: 'draft', title: 'Draft, spillage and spilled gas', body: draft }]),
    { id: 'pressures', title: 'Pressures', body: resultSection(input) },
    { id: 'air', title: 'Air moved', body: airSection(input) },
    ...(beside === undefined
      ? []
      : [{ id: 'beside', title: 'How far, what fails, guidance', body: beside }]),
    { id: 'house', title: 'House', body: houseSection(input) },
    { id: 'assumed', title: 'Assumed and not modelled', body: assumptionSection(input) },
    ...(extras.notes ?? []).map(({ title, sentences }, index) => ({
      id: `note-${index + 1}`,
      title,
      body: htmlList(sentences),
    })),
    { id: 'proof', title: 'Proof of the solve', body: proofSection(input) },
    ...(signOff === undefined
      ? []
      : [{ id: 'sign-off', title: 'To sign', body: signOffSection(signOff, system), alone: true }]),
  ];
}
