import * as z from 'zod';
import { describe, expect, it } from 'vitest';
import { branch } from './branch.js';
import { flag } from './flag.js';
import { part } from './part.js';
import { quantity } from './quantity.js';

const flow = quantity('volumeFlow', {
  description: 'Flow.',
  allowed: { above: 0, words: 'more than 0' },
});
const fan = part({ flow, on: z.optional(flag('On.')) }, { description: 'Fan.', example: '{ }' });
const either = branch(
  { text: flow, map: fan, list: z.array(fan) },
  { description: 'A fan.', examples: ['95 L/s'] },
);

function problems(value: unknown) {
  const result = either.safeParse(value);
  return (result.error?.issues ?? []).map(({ path, message }) => [path.join('.'), message]);
}

describe('branch', () => {
  it('reads each shape with its own schema', () => {
    expect(either.parse('95 L/s')).toBe(0.095);
    expect(either.parse({ flow: '95 L/s' })).toEqual({ flow: 0.095 });
    expect(either.parse([{ flow: '95 L/s', on: 'yes' }])).toEqual([{ flow: 0.095, on: true }]);
  });

  it('points every issue at its own key, all at once', () => {
    expect(problems({ flow: '95 L', on: 'maybe', of: 1 })).toEqual([
      ['flow', 'quantity.wrong-dimension'],
      ['on', 'value.unknown-word'],
      ['of', 'key.unknown'],
    ]);
    expect(problems([{ flow: 95 }, {}])).toEqual([
      ['0.flow', 'quantity.unit-missing'],
      ['1.flow', 'key.missing'],
    ]);
  });

  it('names a shape that no branch reads, and nothing at all', () => {
    expect(problems(true)).toEqual([['', 'value.wrong-shape']]);
    expect(problems(new Date(0))).toEqual([['', 'value.wrong-shape']]);
    expect(problems(null)).toEqual([['', 'value.empty']]);
    expect(problems(undefined)).toEqual([['', 'key.missing']]);
  });

  it('sends a bare number to the text branch, which asks for its unit', () => {
    expect(problems(900)).toEqual([['', 'quantity.unit-missing']]);
  });

  it('keeps its branches and its words through optional and in the JSON Schema', () => {
    const schema = z.toJSONSchema(z.object({ fan: z.optional(either) }), { io: 'input' });
    expect(schema).toMatchObject({
      properties: {
        fan: {
          description: 'A fan.',
          anyOf: [{ type: 'string' }, { type: 'object' }, { type: 'array' }],
        },
      },
    });
    expect(schema.required ?? []).toEqual([]);
  });
});
