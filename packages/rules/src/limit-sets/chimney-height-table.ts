import type { Source } from '@evendraft/house';
import type { AppliesTo } from '../applies-to.js';
import type { Limit, LimitSet } from '../limit-set.js';

const recalled: Source = {
  document: 'CMHC Chimney Safety Tests manual',
  edition: '1980s',
  section: 'House Depressurization Limit, as reprinted in US weatherization guides',
  status: 'memory',
};

const exteriorPlace = 'exterior or unlined chimney';
const interiorPlace = 'interior, lined or insulated chimney';
const liningNote =
  'The house does not say whether the chimney is lined: an unlined one belongs to the stricter, exterior row.';

/** Columns of the table by chimney height, each from its own height up to the next: 13, 20 and 27 ft. */
const heights = [
  { id: '13-ft', words: 'chimney up to 13 ft (here below 20 ft)', range: { belowHeightM: 6.096 } },
  {
    id: '20-ft',
    words: '20 ft chimney (here 20 to 27 ft)',
    range: { fromHeightM: 6.096, belowHeightM: 8.2296 },
  },
  { id: '27-ft', words: '27 ft chimney (here 27 ft and more)', range: { fromHeightM: 8.2296 } },
] as const;

/**
 * Limits by fuel, chimney height and chimney place, with rows for hearths and stoves.
 *
 * Source: CMHC Chimney Safety Tests manual, 1980s, "House Depressurization Limit"; from memory.
 */
export const chimneyHeightTable: LimitSet = {
  evendraftLimits: 1,
  id: 'chimney-height-table',
  name: 'House depressurization limits by chimney height and place',
  edition: '2026-11',
  document: recalled.document,
  editionOfDocument: '1980s, as reprinted in US weatherization guides',
  summary:
    'An older North American table: gas and oil appliances by chimney height and place, open fireplaces, closed stoves and induced-draft fans.',
  note: 'An older table; later programmes replaced it by limits by vent type or by tests of spillage and carbon monoxide. A chimney between two heights of the table takes the limit of the lower one (our choice).',
  testSetUp:
    'Pressure of the house with every fan off; then exhaust fans, dryer and other exhaust on with windows and outside doors shut; the first reading is subtracted.',
  testConfigurations: [
    {
      id: 'all-exhaust',
      words: 'Exhaust fans, dryer and other exhaust at high, windows and outside doors shut.',
      exhaust: 'all',
      doors: 'as found',
      hearthDamper: 'not stated',
      airHandler: 'not stated',
      firing: 'nothing',
      baseline: 'everything off, same doors',
      source: recalled,
    },
  ],
  limits: [
    ...chimneyRows({ fuel: 'gas', exteriorPa: [-5, -5, -5], interiorPa: [-5, -6, -7] }),
    ...chimneyRows({ fuel: 'oil', exteriorPa: [-4, -4, -4], interiorPa: [-4, -5, -6] }),
    ...hearthRows({
      id: 'open-fireplace',
      words: 'Open fireplace, wood or gas',
      applies: [
        { vents: ['open hearth'], fuels: ['wood', 'gas'] },
        { kinds: ['fireplace'], vents: ['natural draft'], fuels: ['wood', 'gas'] },
      ],
      exteriorPa: -3,
      interiorPa: -4,
    }),
    ...hearthRows({
      id: 'closed-wood-stove',
      words: 'Airtight wood stove or fireplace',
      applies: [{ vents: ['closed stove'], fuels: ['wood'] }],
      exteriorPa: -10,
      interiorPa: -10,
    }),
    {
      id: 'induced-draft-fan',
      condition: 'Retrofitted induced-draft fan',
      limitPa: -15,
      quantity: 'change from baseline',
      applies: [{ vents: ['induced draft'] }],
      source: recalled,
      note: 'Every induced draft is read as this row, the stricter of the two for fans (our choice).',
    },
    {
      id: 'induced-draft-fan-sealed-vent',
      condition: 'Induced-draft fan with sealed vent',
      limitPa: -25,
      quantity: 'change from baseline',
      applies: [{ vents: ['power vented'] }],
      source: recalled,
      note: 'A power-vented appliance is read as having a sealed vent (our choice).',
    },
  ],
  exclusions: [],
};

/** Furnaces, boilers and water heaters of one fuel: three heights by two places. */
function chimneyRows(input: {
  readonly fuel: 'gas' | 'oil';
  readonly exteriorPa: readonly [number, number, number];
  readonly interiorPa: readonly [number, number, number];
}): readonly Limit[] {
  const { fuel, exteriorPa, interiorPa } = input;
  return heights.flatMap(({ id, words, range }, column) =>
    hearthRows({
      id: `${fuel}-${id}`,
      words: `${fuel === 'gas' ? 'Gas' : 'Oil'} furnace, boiler or water heater, ${words}`,
      applies: [
        {
          kinds: ['furnace', 'boiler', 'water heater'],
          vents: ['natural draft'],
          fuels: [fuel],
          chimney: range,
        },
      ],
      exteriorPa: exteriorPa[column]!,
      interiorPa: interiorPa[column]!,
    }),
  );
}

/** One row of the table, which has a value for each place of the chimney. */
function hearthRows(input: {
  readonly id: string;
  readonly words: string;
  readonly applies: readonly AppliesTo[];
  readonly exteriorPa: number;
  readonly interiorPa: number;
}): readonly Limit[] {
  const { id, words, applies, exteriorPa, interiorPa } = input;
  const at = (exterior: boolean): Omit<Limit, 'id' | 'condition' | 'limitPa'> => ({
    quantity: 'change from baseline',
    applies: applies.map((one) => ({ ...one, chimney: { ...one.chimney, exterior } })),
    source: recalled,
  });
  return [
    {
      id: `${id}-exterior`,
      condition: `${words}; ${exteriorPlace}`,
      limitPa: exteriorPa,
      ...at(true),
    },
    {
      id: `${id}-interior`,
      condition: `${words}; ${interiorPlace}`,
      limitPa: interiorPa,
      ...at(false),
      ...(exteriorPa === interiorPa ? {} : { note: liningNote }),
    },
  ];
}
