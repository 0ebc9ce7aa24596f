import type { Source } from '@evendraft/house';
import { judgedBy, lacks } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { siOf } from '../internal/si-of.js';
import type { RuleFinding } from '../rule-finding.js';

/** Where a hood hangs. */
export type HoodPlace = 'at a wall' | 'over an island';

/** Guidance on the flow of a kitchen hood; every number may be replaced by the caller. */
export interface HoodFlowGuidance {
  /** Flow for each metre of width by place [m²/s]. */
  readonly perWidthM2PerS: Readonly<Record<HoodPlace, number>>;
  /** The least that is named for a hood at a wall, for each metre of width [m²/s]. */
  readonly leastPerWidthM2PerS: number;
  /** Flow for each watt of burner input [m³/(s·W)]. */
  readonly perInputM3PerSW: number;
  /** Air changes of the kitchen [1/s]. */
  readonly kitchenAirChangePerS: number;
}

const perFoot = (flow: string) => siOf(flow, 'volumeFlow') / siOf('1 ft', 'length');

/**
 * Guidance on hood flow as makers and a trade body give it.
 *
 * Source: HVI, restated on pages of the trade: 40 (least) to 100 cfm for each ft at a wall, 150 cfm over an
 * island; 100 cfm for each 10,000 Btu/h; 15 air changes an hour of the kitchen.
 */
export const hoodFlowGuidance: HoodFlowGuidance = {
  perWidthM2PerS: { 'at a wall': perFoot('100 cfm'), 'over an island': perFoot('150 cfm') },
  leastPerWidthM2PerS: perFoot('40 cfm'),
  perInputM3PerSW: siOf('100 cfm', 'volumeFlow') / siOf('10000 Btu/h', 'power'),
  kitchenAirChangePerS: siOf('15 1/h', 'airChangeRate'),
};

const source: Source = {
  document: 'HVI guidance on kitchen hoods',
  section: 'as pages of the trade restate it',
  status: 'found second-hand',
};
const notes = [
  'Guidance, not a limit: flow alone does not tell how much of the fumes a hood catches; its shape, height and the cook’s place do as much. Capture efficiency is tested by ASTM E3087.',
];

/** What is known of a hood. */
export interface JudgeHoodFlowInput {
  /** Id of the device. */
  readonly device: string;
  /** Flow that it delivers against the suction of the house [m³/s]. */
  readonly deliveredFlowM3PerS: number;
  readonly widthM?: number;
  readonly place?: HoodPlace;
  readonly burnerInputW?: number;
  readonly kitchenVolumeM3?: number;
  /** Other guidance than the published one. */
  readonly guidance?: HoodFlowGuidance;
}

/**
 * The flow of a hood held against guidance by width, by burner input and by the volume of the kitchen.
 *
 * @param input - delivered flow and what is known of the hood
 * @returns three findings; one that lacks data says what to give
 */
export function judgeHoodFlow(input: JudgeHoodFlowInput): readonly RuleFinding[] {
  return [byWidth(input), byInput(input), byKitchen(input)];
}

function byWidth(input: JudgeHoodFlowInput): RuleFinding {
  const { widthM, place, guidance = hoodFlowGuidance } = input;
  const rule = frame('hood-flow-by-width', 'Hood flow by its width', input);
  if (widthM === undefined || place === undefined) {
    return lacks(rule, about(input), [
      ...(widthM === undefined ? ['the width of the hood'] : []),
      ...(place === undefined ? ['whether it hangs at a wall or over an island'] : []),
    ]);
  }
  const wanted = guidance.perWidthM2PerS[place] * widthM;
  const lines = [
    line('width', 'given', amount.length(widthM)),
    ...(place === 'at a wall'
      ? [
          line(
            'least by guidance',
            'width × the least flow for each unit of width',
            amount.flow(guidance.leastPerWidthM2PerS * widthM),
          ),
        ]
      : []),
    line('guidance', `width × flow for each unit of width, ${place}`, amount.flow(wanted)),
  ];
  return against(rule, input, { wanted, lines });
}

function byInput(input: JudgeHoodFlowInput): RuleFinding {
  const { burnerInputW, guidance = hoodFlowGuidance } = input;
  const rule = frame('hood-flow-by-burners', 'Hood flow by the input of the burners', input);
  if (burnerInputW === undefined) {
    return lacks(rule, about(input), ['the input of the burners under it']);
  }
  const wanted = guidance.perInputM3PerSW * burnerInputW;
  return against(rule, input, {
    wanted,
    lines: [
      line('burners', 'input of all together, given', amount.power(burnerInputW)),
      line('guidance', 'input × flow for each unit of input', amount.flow(wanted)),
    ],
  });
}

function byKitchen(input: JudgeHoodFlowInput): RuleFinding {
  const { kitchenVolumeM3, guidance = hoodFlowGuidance } = input;
  const rule = frame('hood-flow-by-kitchen', 'Hood flow by the volume of the kitchen', input);
  if (kitchenVolumeM3 === undefined) {
    return lacks(rule, about(input), ['the volume of the kitchen']);
  }
  const wanted = guidance.kitchenAirChangePerS * kitchenVolumeM3;
  return against(rule, input, {
    wanted,
    lines: [
      line('kitchen', 'volume, given', amount.volume(kitchenVolumeM3)),
      line('guidance', 'volume × air changes', amount.flow(wanted)),
    ],
  });
}

function frame(id: string, title: string, { guidance }: JudgeHoodFlowInput) {
  const own: Source = { document: 'given by the caller', status: 'our choice' };
  return {
    id,
    title,
    region: 'everywhere' as const,
    source: guidance === undefined ? source : own,
    notes,
  };
}

function about({ device, deliveredFlowM3PerS }: JudgeHoodFlowInput) {
  return {
    subject: device,
    why: 'It is a kitchen hood.',
    arithmetic: [
      line('delivered', 'flow against the suction of the house', amount.flow(deliveredFlowM3PerS)),
    ],
  };
}

function against(
  rule: ReturnType<typeof frame>,
  input: JudgeHoodFlowInput,
  { wanted, lines }: { readonly wanted: number; readonly lines: RuleFinding['arithmetic'] },
): RuleFinding {
  const { arithmetic, ...rest } = about(input);
  return judgedBy(
    rule,
    { ...rest, arithmetic: [...lines, ...arithmetic] },
    {
      held: { value: input.deliveredFlowM3PerS, limit: wanted, sense: 'at least' },
      satisfiedBy: [
        'More delivered flow by make-up air or a better duct, a wider or lower hood, or back burners and a lower flame.',
      ],
    },
  );
}
