import { lacks, notMeantFor, withoutLimit } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { burnersInside, burnsSolidFuel } from '../internal/burners.js';
import { exhaustSystems, highestFlow } from '../internal/exhaust-systems.js';
import { minnesotaColumnOf, minnesotaWorksheet } from '../internal/minnesota-worksheet.js';
import type { Screen } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import { minnesotaColumns } from './minnesota-passive-openings.js';

/** 0.25, 0.15, 0.10 and 0.05 cfm/ft² by those of new dwellings, from memory and unsure [-]. */
const quotedByNew = 5 / 3;
const trigger = siOf('300 cfm', 'volumeFlow');

/**
 * Which of the state's tables an existing dwelling in Minnesota belongs to, by its year.
 *
 * Source: Minnesota Rules 1346.0501, 501.4.3, triggers read; its tables for older dwellings were not
 * reached, so nothing is held against them.
 */
export const minnesotaExistingDwelling: Screen = {
  rule: {
    id: 'minnesota-existing-dwelling',
    title: 'Make-up air when exhaust or an appliance is added to an existing dwelling',
    region: 'Minnesota',
    source: {
      document: 'Minnesota Rules 1346.0501',
      section: '501.4.3',
      status: 'found',
    },
    notes: [
      'Only the triggers are judged: the values of Tables 501.4.3(1) to (3) were not reached. Exhaust is taken as newly installed.',
      'The factors shown for older dwellings are often quoted and from memory, unsure: five thirds of those for new ones. They are no verdict; the state’s form has the right ones.',
    ],
  },
  run({ house, facts }) {
    const year = facts.builtInYear;
    const large = exhaustSystems(house).filter((device) => highestFlow(device) > trigger);
    const solid = burnersInside(house).filter(burnsSolidFuel);
    const arithmetic = [
      line('trigger', 'exhaust above which the tables are used', amount.flow(trigger)),
      ...large.map((device) =>
        line(device.id, 'rated flow at its highest speed', amount.flow(highestFlow(device))),
      ),
      line('solid-fuel appliances', 'in the house', solid.map(({ id }) => id).join(', ') || 'none'),
    ];
    if (year === undefined) {
      return [
        lacks(
          this.rule,
          { applies: 'unknown', why: 'The table depends on the year of building.', arithmetic },
          ['the year in which the dwelling was built'],
        ),
      ];
    }
    const table = tableFor(year, { large: large.length > 0, solid: solid.length > 0 });
    if (table === undefined) {
      return [
        notMeantFor(this.rule, {
          why: `Built in ${year}: nothing in the house is a trigger.`,
          arithmetic,
        }),
      ];
    }
    const why = `Built in ${year}: ${table} is used.`;
    if (table === newTable) {
      const reason = 'The worksheet for new dwellings is used: see its finding.';
      return [withoutLimit(this.rule, { why, arithmetic }, reason)];
    }
    const { column } = minnesotaColumnOf(house);
    const quoted = minnesotaWorksheet(house, {
      column,
      factor: quotedByNew * minnesotaColumns[column].factor,
      factorWords: `column ${column}, often quoted for older dwellings, from memory and unsure`,
    });
    return [
      lacks(this.rule, { why, arithmetic: [...arithmetic, ...quoted.arithmetic] }, [
        `the pressure factors and opening sizes of ${table}, to be looked up in the state’s form`,
      ]),
    ];
  },
};

const newTable = 'Table 501.4.1, that of new dwellings,';

function tableFor(
  year: number,
  { large, solid }: { readonly large: boolean; readonly solid: boolean },
): string | undefined {
  if (year > 2003) return newTable;
  if (year >= 1994) return solid ? newTable : large ? 'Table 501.4.3(1)' : undefined;
  if (solid) return 'Table 501.4.3(3)';
  return large ? 'Table 501.4.3(2)' : undefined;
}
