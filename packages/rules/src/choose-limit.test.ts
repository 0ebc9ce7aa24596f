import type { Appliance } from '@evendraft/house';
import { describe, expect, it } from 'vitest';
import { appliance } from '../test-data/invented-study.js';
import { chooseLimit } from './choose-limit.js';
import type { Limit, LimitSet } from './limit-set.js';
import { canada5Pa } from './limit-sets/canada-5-pa.js';
import { chimneyHeightTable } from './limit-sets/chimney-height-table.js';
import { germany4Pa } from './limit-sets/germany-4-pa.js';
import { modelCode2015 } from './limit-sets/model-code-2015.js';
import { raterGuideline2010 } from './limit-sets/rater-guideline-2010.js';
import { ventTypeTable } from './limit-sets/vent-type-table.js';

const furnace = (given: Partial<Appliance> = {}) =>
  appliance({ id: 'furnace', kind: 'furnace', ...given });
const heater = appliance();
const onOneVent = (other: Appliance): readonly [Appliance, Appliance] => [
  { ...heater, sharesVentWith: [other.id] },
  { ...other, sharesVentWith: [heater.id] },
];

/** What the set says of the first appliance: the row, the exclusion or that there is none. */
function said(limitSet: LimitSet, ...appliances: readonly [Appliance, ...Appliance[]]): string {
  const choice = chooseLimit({ appliance: appliances[0], appliances, limitSet });
  switch (choice.status) {
    case 'chosen':
      return `${choice.limit.id} ${String(choice.limit.limitPa)}`;
    case 'excluded':
      return `excluded: ${choice.exclusion.id}`;
    case 'no row':
      return 'no row';
  }
}

function missing(limitSet: LimitSet, one: Appliance): readonly string[] {
  const choice = chooseLimit({ appliance: one, appliances: [one], limitSet });
  if (choice.status !== 'chosen') throw new Error(choice.status);
  return choice.missing;
}

describe('the vent-type table', () => {
  it.each<[string, Appliance, string]>([
    ['an orphaned water heater', heater, 'water-heater-alone -2'],
    ['a natural-draft furnace alone', furnace(), 'natural-draft-boiler-furnace-alone -5'],
    [
      'a power-vented furnace alone',
      furnace({ vent: 'power vented' }),
      'power-vented-boiler-furnace-alone -15',
    ],
    [
      'a fan-assisted furnace alone',
      furnace({ vent: 'fan assisted' }),
      'induced-draft-boiler-furnace-alone -15',
    ],
    [
      'a power-vented water heater alone',
      appliance({ vent: 'power vented' }),
      'fan-assisted-water-heater-alone -15',
    ],
    [
      'a direct-vent room heater',
      appliance({ kind: 'room heater', vent: 'direct vent' }),
      'direct-vent-sealed-combustion -50',
    ],
    ['an open fireplace', appliance({ kind: 'fireplace', vent: 'open hearth' }), 'no row'],
    ['a natural-draft room heater', appliance({ kind: 'room heater' }), 'no row'],
  ])('knows %s', (_, one, row) => {
    expect(said(ventTypeTable, one)).toBe(row);
  });

  it.each<[string, Appliance, string]>([
    ['a natural-draft furnace', furnace(), 'natural-draft-common-vent -3'],
    [
      'a natural-draft furnace with a vent damper',
      furnace({ ventDamper: true }),
      'natural-draft-vent-damper-common-vent -5',
    ],
    [
      'an induced-draft furnace',
      furnace({ vent: 'induced draft' }),
      'induced-draft-common-vent -5',
    ],
  ])('holds a water heater and %s on one vent against the same row', (_, other, row) => {
    const [first, second] = onOneVent(other);
    expect(said(ventTypeTable, first, second)).toBe(row);
    expect(said(ventTypeTable, second, first)).toBe(row);
  });

  it('sees a shared vent that is stated on one side only', () => {
    const [, second] = onOneVent(furnace());
    expect(said(ventTypeTable, heater, second)).toBe('natural-draft-common-vent -3');
  });

  it('takes the stricter row where a water heater shares its vent with two kinds', () => {
    const two = [
      furnace({ sharesVentWith: [heater.id], vent: 'induced draft' }),
      appliance({ id: 'boiler', kind: 'boiler', sharesVentWith: [heater.id] }),
    ];
    expect(said(ventTypeTable, heater, ...two)).toBe('natural-draft-common-vent -3');
  });
});

describe('the other sets', () => {
  it('judge a decorative gas appliance by the model code', () => {
    const one = appliance({ kind: 'decorative gas appliance' });
    expect(said(modelCode2015, one)).toBe('decorative-gas-appliance -5');
    expect(said(modelCode2015, ...onOneVent(furnace()))).toBe('category-1-common-vent -3');
  });

  it.each<[string, Partial<Appliance>, string]>([
    ['12 ft, interior', { chimney: { heightM: 3.6576, exterior: false } }, 'gas-13-ft-interior -5'],
    ['20 ft, interior', { chimney: { heightM: 6.096, exterior: false } }, 'gas-20-ft-interior -6'],
    ['20 ft, exterior', { chimney: { heightM: 6.096, exterior: true } }, 'gas-20-ft-exterior -5'],
    [
      'just below 27 ft, interior',
      { chimney: { heightM: 8.2, exterior: false } },
      'gas-20-ft-interior -6',
    ],
    ['27 ft, interior', { chimney: { heightM: 8.2296, exterior: false } }, 'gas-27-ft-interior -7'],
    [
      'oil, 40 ft, interior',
      { fuel: 'oil', chimney: { heightM: 12.2, exterior: false } },
      'oil-27-ft-interior -6',
    ],
  ])('read the chimney table at %s', (_, given, row) => {
    expect(said(chimneyHeightTable, furnace(given))).toBe(row);
  });

  it('read the hearth rows of the chimney table', () => {
    const open = appliance({ kind: 'fireplace', vent: 'open hearth', fuel: 'wood' });
    const closed = appliance({ kind: 'wood stove', vent: 'closed stove', fuel: 'wood' });
    const inside = { chimney: { exterior: false } };
    expect(said(chimneyHeightTable, { ...open, ...inside })).toBe('open-fireplace-interior -4');
    expect(said(chimneyHeightTable, open)).toBe('open-fireplace-exterior -3');
    expect(said(chimneyHeightTable, closed)).toBe('closed-wood-stove-exterior -10');
  });

  it('know pellet stoves only in the guideline for raters', () => {
    const pellets = appliance({ kind: 'room heater', vent: 'power vented', fuel: 'pellets' });
    expect(said(raterGuideline2010, pellets)).toBe('pellet-stove -15');
    expect(said(ventTypeTable, pellets)).toBe('no row');
  });

  it('exclude solid fuel and direct vents in Canada, and nothing else', () => {
    expect(said(canada5Pa, appliance({ kind: 'wood stove', vent: 'closed stove' }))).toBe(
      'excluded: solid-fuel',
    );
    expect(said(canada5Pa, appliance({ vent: 'direct vent' }))).toBe('excluded: direct-vent');
    expect(said(canada5Pa, heater)).toBe('draft-hood-and-fan-assisted -5');
    expect(said(canada5Pa, appliance({ vent: 'power vented', fuel: 'oil' }))).toBe(
      'vented-not-direct-vent -5',
    );
  });

  it('split Germany by where the combustion air comes from', () => {
    expect(said(germany4Pa, appliance({ vent: 'closed stove' }))).toBe('room-air-dependent -4');
    expect(said(germany4Pa, appliance({ vent: 'sealed combustion' }))).toBe(
      'room-air-independent -8',
    );
  });
});

describe('a fact that the house lacks', () => {
  it('never makes a limit more lenient: the strictest row that may apply is taken and the fact named', () => {
    expect(said(chimneyHeightTable, furnace())).toBe('gas-13-ft-exterior -5');
    expect(missing(chimneyHeightTable, furnace())).toEqual([
      'chimney height',
      'whether the chimney stands outside',
    ]);
    expect(said(chimneyHeightTable, furnace({ fuel: 'not stated' }))).toBe('oil-13-ft-exterior -4');
    expect(missing(chimneyHeightTable, furnace({ fuel: 'not stated' }))).toContain('fuel');
  });

  it('is not named where it decides nothing', () => {
    expect(
      missing(chimneyHeightTable, furnace({ chimney: { heightM: 3, exterior: undefined } })),
    ).toEqual([]);
    expect(missing(ventTypeTable, appliance({ fuel: 'not stated' }))).toEqual([]);
  });

  it('is named where it might leave the appliance without a limit', () => {
    expect(said(canada5Pa, appliance({ fuel: 'not stated' }))).toBe(
      'draft-hood-and-fan-assisted -5',
    );
    expect(missing(canada5Pa, appliance({ fuel: 'not stated' }))).toEqual(['fuel']);
  });

  it('leaves an exclusion that may apply where no row is left', () => {
    const limitSet = { ...canada5Pa, limits: [] };
    expect(said(limitSet, appliance({ fuel: 'not stated' }))).toBe('excluded: solid-fuel');
  });
});

describe('the order between rows', () => {
  const row = (id: string, limitPa: number, applies: Limit['applies']): Limit => ({
    id,
    condition: id,
    limitPa,
    quantity: 'change from baseline',
    applies,
    source: { document: 'made for this test', status: 'our choice' },
  });
  const set = (...limits: readonly Limit[]): LimitSet => ({ ...ventTypeTable, limits });
  const any = row('any', -4, [{}]);
  const byKind = row('by kind', -9, [{ kinds: ['water heater'] }]);
  const byKindStrict = row('by kind, strict', -3, [{ kinds: ['water heater'] }]);

  it('is most facts first, wherever it stands', () => {
    expect(said(set(any, byKind), heater)).toBe('by kind -9');
    expect(said(set(byKind, any), heater)).toBe('by kind -9');
  });

  it('is the strictest of rows with equally many facts, then the first', () => {
    expect(said(set(byKind, byKindStrict), heater)).toBe('by kind, strict -3');
    const twin = { ...byKind, id: 'twin' };
    expect(said(set(byKind, twin), heater)).toBe('by kind -9');
    expect(said(set(twin, byKind), heater)).toBe('twin -9');
  });

  it('takes the best of the descriptions of one row', () => {
    const either = row('either', -6, [
      { kinds: ['boiler'] },
      { kinds: ['water heater'], alone: true },
    ]);
    expect(said(set(byKind, either), heater)).toBe('either -6');
    expect(said(set(either), furnace())).toBe('no row');
  });
});
