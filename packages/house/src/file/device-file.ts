import * as z from 'zod';
import { distinctKinds, kindNames, type KindTable } from '../kind-names.js';
import type { DeviceKind } from '../house.js';
import { branch } from './schema/branch.js';
import { accept, refuse, type ValueResult } from './schema/file-problem.js';
import { flag } from './schema/flag.js';
import { itemName } from './schema/item-name.js';
import { leaf } from './schema/leaf.js';
import { named } from './schema/named.js';
import { part } from './schema/part.js';
import { quantity, readQuantity } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';
import { themselves, word } from './schema/word.js';
import { interlockFile } from './interlock-file.js';
import { closedLeakage } from './closed-leakage.js';
import { diffuserShape } from './diffuser-file.js';
import { devicePathShape } from './device-path-file.js';
import { heightInZone, zoneName } from './opening-file.js';
import { outletFile } from './outlet-file.js';
import { preparationFile } from './preparation-file.js';
import { ranges } from './ranges.js';

/** The flow of a device, at its rating pressure. */
export const deviceFlow = quantity('volumeFlow', {
  description: 'Flow as rated.',
  allowed: ranges.flow,
  examples: ['150 cfm', '70 L/s', '250 m3/h'],
});

/** A point of a fan curve as typed. */
export interface CurvePointInFile {
  readonly flow: number;
  readonly rise: number;
}

const pointExamples = ['[400 cfm, 0.6 in. w.c.]', '[190 L/s, 150 Pa]'];

const curvePoint = leaf(
  {
    description: 'A flow and the pressure rise at it.',
    examples: pointExamples,
    jsonSchema: { type: 'array', items: { type: 'string' }, minItems: 2, maxItems: 2 },
  },
  (value): ValueResult<CurvePointInFile> => {
    if (!Array.isArray(value) || value.length !== 2) {
      const found = Array.isArray(value) ? `a list of ${value.length}` : shapeWords[shapeOf(value)];
      return refuse('value.wrong-shape', { found, accepted: pointExamples });
    }
    const flow = readQuantity(value[0], {
      dimension: 'volumeFlow',
      allowed: ranges.flowOnCurve,
      examples: ['400 cfm', '190 L/s'],
    });
    const rise = readQuantity(value[1], {
      dimension: 'pressure',
      allowed: ranges.pressureRise,
      examples: ['0.6 in. w.c.', '150 Pa'],
    });
    if (flow.ok && rise.ok) return accept({ flow: flow.value, rise: rise.value });
    return {
      ok: false,
      problems: [flow, rise].flatMap((result, index) =>
        result.ok ? [] : result.problems.map((problem) => ({ ...problem, path: [index] })),
      ),
    };
  },
);

/** Points of a fan curve. */
const curveFile = branch(
  { list: z.array(curvePoint) },
  {
    description:
      'The fan curve, of the device as installed or of the bare fan where its duct is described: points of flow and pressure rise, from shut-off to free delivery.',
    examples: ['[[0 cfm, 0.9 in. w.c.], [400 cfm, 0.6 in. w.c.], [600 cfm, 0 Pa]]'],
  },
);

/** One speed of a device: its flow, or a curve of its own. */
export const speedFile = branch(
  {
    text: deviceFlow,
    map: part(
      { flow: z.optional(deviceFlow), curve: z.optional(curveFile) },
      { description: 'A speed with its flow or its curve.', example: '{ flow: 500 cfm }' },
    ),
  },
  { description: 'Flow at this speed.', examples: ['250 cfm', '{ flow: 250 cfm }'] },
);

/** Whether a control holds a fan's flow, and how far. */
export const constantFlowFile = branch(
  {
    flag: flag('Whether a control holds the flow constant.'),
    text: flag('Whether a control holds the flow constant.'),
    map: part(
      {
        upTo: quantity('pressure', {
          description: 'Suction or back pressure up to which the control holds the flow.',
          allowed: ranges.fanPressure,
          examples: ['150 Pa', '0.6 in. w.c.'],
        }),
      },
      { description: 'The range of the control.', example: '{ upTo: 150 Pa }' },
    ),
  },
  {
    description: 'A control that holds the flow constant, and up to which pressure it can.',
    examples: ['{ upTo: 150 Pa }', true],
  },
);

/**
 * Schema of a device in full.
 *
 * @param kinds - the published names of its section
 * @param more - keys of that section alone
 * @returns the schema
 */
function deviceMap<More extends z.ZodRawShape>(kinds: KindTable<DeviceKind>, more: More) {
  return part(
    {
      kind: z.optional(
        word(
          themselves(distinctKinds(kinds)),
          'What it is; may be left out where its name says it.',
        ),
      ),
      flow: z.optional(deviceFlow),
      speeds: z.optional(
        branch(
          { map: named(speedFile, 'Flow at each speed, slowest first.', 'low: 250 cfm') },
          {
            description: 'Flow at each speed, slowest first.',
            examples: ['{ low: 250 cfm, high: 900 cfm }'],
          },
        ),
      ),
      cappedAt: z.optional(
        itemName(
          'Name of the speed above which a control no longer lets it run. The speeds above it stay in the file: they tell how strong its fan is.',
          ['medium'],
        ),
      ),
      curve: z.optional(curveFile),
      stall: z.optional(
        word(
          themselves(['envelope', 'every flow']),
          'What to do with the part of its curve that rises with the flow: replace it by the level above it, or find every flow at which the fan can work and count the least favourable.',
        ),
      ),
      zone: z.optional(zoneName),
      to: z.optional(outletFile),
      height: z.optional(heightInZone),
      ratingPressure: z.optional(
        quantity('pressure', {
          description: 'Pressure at which the flow is rated; typical of its kind when absent.',
          allowed: ranges.ratingPressure,
          examples: ['0.25 in. w.c.', '60 Pa'],
        }),
      ),
      shutOffPressure: z.optional(
        quantity('pressure', {
          description: 'Pressure at which its fan moves nothing; typical of its kind when absent.',
          allowed: ranges.fanPressure,
          examples: ['0.9 in. w.c.', '180 Pa'],
        }),
      ),
      constantFlow: z.optional(constantFlowFile),
      ...devicePathShape,
      ...more,
      closedLeakage: z.optional(closedLeakage),
      duringTest: z.optional(preparationFile),
      interlock: z.optional(interlockFile),
      continuous: z.optional(flag('Whether it runs all the time.')),
    },
    {
      description: 'A device in full.',
      example: '{ kind: bath fan, flow: 80 cfm, zone: main }',
    },
  );
}

/** A device in full, of the section `exhaust`. */
export const exhaustMap = deviceMap(kindNames.exhaust, {});
/** A device in full, of the section `supply`. */
export const supplyMap = deviceMap(kindNames.supply, diffuserShape);

/** What {@link exhaustMap} and {@link supplyMap} read. */
export type DeviceInFile = z.output<typeof supplyMap>;
/** What {@link speedFile} reads. */
export type SpeedInFile = z.output<typeof speedFile>;
