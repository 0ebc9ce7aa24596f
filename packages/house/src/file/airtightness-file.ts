import { parseQuantity } from '@evendraft/units';
import * as z from 'zod';
import { accept, refuse, type ValueResult } from './schema/file-problem.js';
import { branch } from './schema/branch.js';
import { flag } from './schema/flag.js';
import { leaf } from './schema/leaf.js';
import { readMeasuredLeak, splitAtPressure, type MeasuredLeak } from './schema/measured-leak.js';
import { named } from './schema/named.js';
import { part } from './schema/part.js';
import { plainNumber } from './schema/plain-number.js';
import { isAllowed } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';
import { word } from './schema/word.js';
import { preparationFile } from './preparation-file.js';
import { ranges } from './ranges.js';

/** One airtightness as typed: a measured leak, or air changes an hour at 50 Pa. */
export type TightnessInFile =
  | MeasuredLeak
  | { readonly kind: 'airChanges'; readonly changesPerS: number; readonly pressurePa: number };

/** A result as typed: one value for a test or a plan, two for a planned range. */
export interface ResultInFile {
  readonly planned: boolean;
  readonly from: TightnessInFile;
  /** The second end of a planned range. */
  readonly upTo?: TightnessInFile;
}

const examples = ['310 cfm at 50 Pa', '1.2 ACH50', '55 in2 at 4 Pa', '0.8 to 3 ACH50 (planned)'];

const resultText = leaf(
  {
    description:
      'Blower-door result: flow at a pressure, air changes at 50 Pa, or leakage area at 4 or 10 Pa. Before a test: one value or a range, with (planned).',
    examples,
  },
  (value): ValueResult<ResultInFile> => {
    const shape = shapeOf(value);
    if (shape !== 'text' && shape !== 'number') {
      return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: examples });
    }
    return readResult(String(value));
  },
);

/** The airtightness of the house, short or in full. */
export const airtightnessFile = branch(
  {
    text: resultText,
    map: part(
      {
        result: resultText,
        exponent: z.optional(
          plainNumber(
            ranges.exponent,
            'Flow exponent n of the envelope; 0.65 when absent.',
            [0.65, 0.62],
          ),
        ),
        direction: z.optional(
          word(
            {
              depressurized: 'depressurized',
              depressurised: 'depressurized',
              depressurization: 'depressurized',
              pressurized: 'pressurized',
              pressurised: 'pressurized',
              pressurization: 'pressurized',
              both: 'both',
              average: 'both',
              'not stated': 'not stated',
            },
            'Direction of the test; studies of exhaust prefer the depressurization result.',
          ),
        ),
        guarded: z.optional(
          flag(
            'Whether neighbours were held at the same pressure, so that party walls did not leak.',
          ),
        ),
        preparation: z.optional(
          branch(
            {
              map: named(
                preparationFile,
                'How each separately modelled opening, device or make-up opening stood during the test.',
                'hood: sealed',
              ),
            },
            {
              description: 'The preparation of the test.',
              examples: ['{ hood: sealed, kitchen make-up: closed }'],
            },
          ),
        ),
      },
      {
        description: 'Airtightness with everything that is known about the test.',
        example: '{ result: 310 cfm at 50 Pa, exponent: 0.62 }',
      },
    ),
  },
  { description: 'Airtightness of the house, tested or planned.', examples },
);

function readResult(text: string): ValueResult<ResultInFile> {
  const { rest, planned } = withoutPlanned(text);
  const range =
    /^(.*?\d[^\d]*?)\s*(?:\bto\b|–|—|…|\.\.\.?|(?<=\d\s*|[a-z]\s*)-(?=\s*\d))\s*(.*\d.*)$/is.exec(
      rest,
    );
  if (!range) {
    const only = readTightness(rest);
    return only.ok ? accept({ planned, from: only.value }) : only;
  }
  const [, first = '', last = ''] = range;
  const upTo = readTightness(last.trim());
  if (!upTo.ok) return upTo;
  const from = readTightness(withUnitOf(first.trim(), last.trim()));
  if (!from.ok) return from;
  return accept({ planned: true, from: from.value, upTo: upTo.value });
}

function withoutPlanned(text: string): { readonly rest: string; readonly planned: boolean } {
  const rest = text.replace(/\s*(?:\(\s*planned\s*\)|,?\s*\bplanned)\s*$/i, '');
  return { rest: rest.trim(), planned: rest !== text };
}

/** `0.8` of `0.8 to 3 ACH50` takes the unit and the pressure that stand at the end. */
function withUnitOf(first: string, last: string): string {
  if (/[a-z]/i.test(first)) {
    const { pressure } = splitAtPressure(first);
    const shared = splitAtPressure(last).pressure;
    return pressure === undefined && shared !== undefined ? `${first} at ${shared}` : first;
  }
  return first + last.replace(/^[+-]?[\d.,]+(?:\s+\d+\/\d+)?/, '');
}

function readTightness(text: string): ValueResult<TightnessInFile> {
  const { amount, pressure } = splitAtPressure(text);
  const changes = parseQuantity(amount, 'airChangeRate');
  if (!changes.ok) return readMeasuredLeak(text, ['flow', 'area'], examples);
  const { unit, valueSi } = changes.quantity;
  const at50 = pressure !== undefined && /^50\s*pa$/i.test(pressure);
  if (unit !== 'ACH50' && !at50) {
    return refuse('airtightness.natural-rate', {
      found: text.slice(0, 60),
      suggestion: `${amount.replace(/[^\d.,]+.*$/s, '')} ACH50`,
    });
  }
  if (unit === 'ACH50' && pressure !== undefined && !at50) {
    return refuse('airtightness.two-pressures', { found: text.slice(0, 60) });
  }
  const allowed = { above: 0, to: 200 / 3600, words: 'more than 0, up to 200 ACH50' };
  if (!isAllowed(valueSi, allowed)) {
    return refuse('value.out-of-range', { found: text.slice(0, 60), allowed: allowed.words });
  }
  return accept({ kind: 'airChanges', changesPerS: valueSi, pressurePa: 50 });
}
