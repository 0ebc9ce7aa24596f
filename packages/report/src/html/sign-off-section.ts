import type { UnitSystem } from '@evendraft/units';
import { markup, type Markup } from '../internal/markup.js';
import type { SignOff, SignOffPerson } from '../sign-off.js';
import { htmlFacts } from './html-section.js';
import { htmlTable } from './html-table.js';

/**
 * The block to sign, on a page of its own: what was told, then a line for each signature.
 *
 * @param signOff - what was told
 * @param system - units of the reader
 * @returns HTML
 */
export function signOffSection(signOff: SignOff, system: UnitSystem): Markup {
  const { designer, tester, gauge, test, revisions = [] } = signOff;
  const signatures = signOff.signatures ?? ['Designer', 'Tester'];
  return markup`${htmlFacts([
    ['Address', signOff.address],
    ['Permit', signOff.permit],
    ['Jurisdiction', signOff.jurisdiction],
    ['Code and edition', signOff.codeEdition],
    ['Basis', signOff.basis],
    ['Designer', personWords(designer)],
    ['Tester', personWords(tester)],
    ['Gauge', gauge && `serial number ${gauge.serial}`],
    ['Gauge calibrated', gauge?.calibrated],
    ['Day of the test', test?.date],
    ['Weather of the test', test?.weather],
  ])}
${htmlTable(
  {
    id: 'revisions',
    caption: 'Revisions',
    columns: [{ header: 'Revision' }, { header: 'Date' }, { header: 'Change' }],
    rows: revisions.map(({ mark, date, change }) => [mark, date, change]),
  },
  { system },
)}
<p class="note">A signature confirms that the house file and the readings are as described. It does not clear an appliance.</p>
<div class="signatures">${signatures.map((role) => markup`<p>${role}: name, signature, date</p>`)}</div>
`;
}

function personWords(person: SignOffPerson | undefined): string | undefined {
  if (person === undefined) return undefined;
  const { name, company, credential } = person;
  return [name, company, credential && `credential ${credential}`].filter(Boolean).join(', ');
}
