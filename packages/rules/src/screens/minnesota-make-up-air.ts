import type { FlowLawDescription } from '@evendraft/airflow';
import type { PathPart } from '@evendraft/house';
import { judgedBy, lacks, type Rule } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { highestFlow } from '../internal/exhaust-systems.js';
import {
  isMatched,
  minnesotaColumnOf,
  minnesotaWorksheet,
} from '../internal/minnesota-worksheet.js';
import type { Screen, ScreenContext } from '../internal/screen.js';
import { siOf } from '../internal/si-of.js';
import type { ArithmeticLine, RuleFinding } from '../rule-finding.js';
import {
  minnesotaColumns,
  minnesotaPassiveOpening,
  minnesotaSource,
} from './minnesota-passive-openings.js';

const inch = siOf('1 in', 'length');

/**
 * Make-up air of a new dwelling in Minnesota, step by step as the state's form has it.
 *
 * Source: Minnesota Rules 1346.0501, Table 501.4.1 (501.3.1), read.
 */
export const minnesotaMakeUpAir: Screen = {
  rule: {
    id: 'minnesota-make-up-air',
    title: 'Make-up air of a new dwelling, state worksheet',
    region: 'Minnesota',
    source: minnesotaSource,
    notes: [
      'For new dwellings. Barometric dampers are prohibited in passive openings where any appliance is atmospherically vented. Openings above 8 in. have a motorized damper interlocked with the largest exhaust.',
      'Equivalent length is 100 ft of smooth round metal: take off 40 ft for the outside hood and 10 ft for each right angle; flexible duct is one inch larger, stretched.',
      'A test by ASTM E1998 is an exception to the worksheet (501.4.1, exception 1).',
    ],
  },
  run(context) {
    const { house } = context;
    const { column, why } = minnesotaColumnOf(house);
    const { arithmetic, makeUpM3PerS } = minnesotaWorksheet(house, {
      column,
      factor: minnesotaColumns[column].factor,
      factorWords: `column ${column}`,
    });
    if (makeUpM3PerS <= 0) {
      return [
        judgedBy(this.rule, { why, arithmetic }, { held: 'within the limit', satisfiedBy: [] }),
      ];
    }
    const opening = minnesotaPassiveOpening(column, makeUpM3PerS);
    const size = line(
      'passive opening',
      `table for column ${column}`,
      opening === undefined
        ? 'none: powered make-up air'
        : `${opening.diameterIn} in. round${opening.motorizedDamper ? ' with motorized damper' : ''}`,
    );
    return [
      judgeBuilt(this.rule, context, {
        why,
        arithmetic: [...arithmetic, size],
        makeUpM3PerS,
        ...(opening === undefined ? {} : { diameterM: opening.diameterIn * inch }),
      }),
    ];
  },
};

function judgeBuilt(
  rule: Rule,
  { house, facts }: ScreenContext,
  wanted: {
    readonly why: string;
    readonly arithmetic: readonly ArithmeticLine[];
    readonly makeUpM3PerS: number;
    readonly diameterM?: number;
  },
): RuleFinding {
  const { why, arithmetic, makeUpM3PerS, diameterM } = wanted;
  const satisfiedBy = [
    diameterM === undefined
      ? 'Powered make-up air of that flow, interlocked with the largest exhaust.'
      : 'A passive opening of that size, or powered make-up air of that flow interlocked with the largest exhaust.',
    'Exhaust of a smaller rating, or recirculating.',
  ];
  // What starts with exhaust that dropped out of the form is used up already.
  const supplies = house.devices.filter(
    ({ direction, interlock }) =>
      direction === 'supply' &&
      interlock !== undefined &&
      !house.devices.some(
        (device) =>
          device.id === interlock.driver && isMatched(house, device.id, highestFlow(device)),
      ),
  );
  const powered = supplies.reduce((sum, device) => sum + highestFlow(device), 0);
  const diameters = house.makeUpOpenings.map(({ id, openLaw, parts }) => ({
    id,
    diameterM: facts.makeUp?.[id]?.ductDiameterM ?? narrowestDiameter([openLaw, ...lawsOf(parts)]),
  }));
  const unknown = diameters.filter((one) => one.diameterM === undefined);
  if (powered < makeUpM3PerS && unknown.length > 0) {
    return lacks(
      rule,
      { why, arithmetic },
      unknown.map(({ id }) => `the diameter of the duct of the ${id}`),
    );
  }
  const largest = Math.max(0, ...diameters.map((one) => one.diameterM ?? 0));
  return judgedBy(
    rule,
    {
      why,
      arithmetic: [
        ...arithmetic,
        line('powered make-up air', 'built, interlocked', amount.flow(powered)),
        line('passive make-up air', 'largest duct built, diameter', amount.length(largest)),
      ],
    },
    {
      held:
        powered >= makeUpM3PerS || diameterM === undefined
          ? { value: powered, limit: makeUpM3PerS, sense: 'at least' }
          : { value: largest, limit: diameterM, sense: 'at least', nearBand: 0.1 * inch },
      satisfiedBy,
    },
  );
}

function lawsOf(parts: readonly PathPart[] = []): readonly FlowLawDescription[] {
  return parts.map(({ law }) => law);
}

/** The narrowest duct or hole of a way, as the diameter of a round one; nothing where none is described [m]. */
function narrowestDiameter(laws: readonly FlowLawDescription[]): number | undefined {
  const areas = laws.flatMap((law) =>
    law.kind === 'duct'
      ? law.sections.map(({ areaM2 }) => areaM2)
      : law.kind === 'orifice'
        ? [law.areaM2]
        : [],
  );
  return areas.length === 0 ? undefined : 2 * Math.sqrt(Math.min(...areas) / Math.PI);
}
