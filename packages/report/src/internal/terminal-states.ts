import type { StateBalance } from '@evendraft/studies';
import { countWords } from './count-words.js';
import { deepestPerState } from './deepest-per-state.js';
import type { NumberPrinter } from './number-printer.js';
import { conditionWords } from './situation-words.js';
import type { TerminalSection } from './terminal-findings.js';
import { narrowestTable, type TextColumn } from './text-table.js';
import { glue } from './wrap-text.js';
import { zonesThatMatter } from './zones-that-matter.js';

/**
 * Each operating state's pressure in each zone that matters, worst first, one row for a state.
 *
 * Where the zones do not fit side by side they are listed under their state instead.
 *
 * @param section - page, assessment and printer
 * @param most - how many states are shown at most [-]
 */
export function terminalStates(section: TerminalSection, most: number): void {
  const { page, assessment } = section;
  const states = deepestPerState(assessment.worstCase.situations);
  if (states.length === 0) return;
  const shown = states.slice(0, most);
  page.heading('Pressures by operating state, worst first');
  page.paragraph(
    "Zone minus outdoors at the zone's floor, in Pa; negative is depressurized. Each state is " +
      'shown in the weather in which its deepest zone is deepest.',
  );
  page.blank();
  const zones = zonesThatMatter(assessment);
  const columns = columnsOf(zones);
  const rows = shown.map((state, index) => cellsOf({ state, index, zones, section }));
  if (narrowestTable(columns, rows) <= page.width) page.table(columns, rows);
  else shown.forEach((state, index) => listState({ state, index, zones, section }));
  const situations = assessment.worstCase.situations.length;
  if (states.length > shown.length) {
    page.paragraph(
      `… and ${countWords(states.length - shown.length, 'further state')}; all ` +
        `${countWords(situations, 'situation')} are in the full report.`,
    );
  } else if (situations > shown.length) {
    page.paragraph(`All ${situations} situations, weather by weather, are in the full report.`);
  }
}

interface StateRow {
  readonly state: StateBalance;
  readonly index: number;
  readonly zones: readonly string[];
  readonly section: TerminalSection;
}

function columnsOf(zones: readonly string[]): readonly TextColumn[] {
  return [
    { header: '#', align: 'right' },
    { header: 'Running', minimum: 16 },
    ...zones.map((zone): TextColumn => ({ header: zone, align: 'right', minimum: 8 })),
    { header: 'Weather', minimum: 8 },
  ];
}

function cellsOf({ state, index, zones, section }: StateRow): readonly string[] {
  const pressures = pressuresOf(state, section.printer);
  return [
    String(index + 1),
    state.label,
    ...zones.map((zone) => pressures.get(zone) ?? ''),
    conditionWords(state, section.assessment),
  ];
}

function listState({ state, index, zones, section }: StateRow): void {
  const { page, assessment, printer } = section;
  const pressures = pressuresOf(state, printer);
  page.paragraph(`${index + 1}. ${state.label} (${conditionWords(state, assessment)})`);
  page.paragraph(
    zones
      .filter((zone) => pressures.has(zone))
      .map((zone) => zone + glue + (pressures.get(zone) ?? ''))
      .join(', '),
    4,
  );
}

function pressuresOf(state: StateBalance, printer: NumberPrinter): ReadonlyMap<string, string> {
  return new Map(
    state.zones.map(({ zone, pressurePa }) => [zone, printer.signedPressure(pressurePa)]),
  );
}
