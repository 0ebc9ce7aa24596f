import type { House } from '@evendraft/house';
import type { Issue } from '@evendraft/text';
import * as z from 'zod';
import { near, schemaIssues } from './internal/schema-issues.js';
import type { ScreenFacts } from './screen-facts.js';
import type { ScreenFactsIssueCode } from './screen-facts-issues.js';
import { screenFactsSchema } from './screen-facts-schema.js';

/** Facts for the screens, or everything that is wrong with what were to be some. */
export type ReadScreenFactsResult =
  | { readonly ok: true; readonly facts: ScreenFacts }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Facts for the screens from a plain value, such as a parsed YAML or JSON file, for one house.
 *
 * Names are checked against the house; the words of the issues are in `screenFactsIssues`.
 *
 * @param value - anything
 * @param house - the house that the facts are of
 * @returns the facts, or all issues with their paths
 */
export function readScreenFacts(value: unknown, house: House): ReadScreenFactsResult {
  const parsed = screenFactsSchema.safeParse(value, { reportInput: true });
  const file = {
    prefix: 'facts' as const,
    schema: () => z.toJSONSchema(screenFactsSchema, { target: 'draft-7', io: 'input' }) as object,
  };
  const issues = [
    ...(parsed.error?.issues.flatMap((problem) => schemaIssues(problem, file)) ?? []),
    ...unknownNames(value, house),
    ...(parsed.success ? unknownZones(parsed.data, house) : []),
  ];
  return parsed.success && issues.length === 0
    ? { ok: true, facts: parsed.data }
    : { ok: false, issues };
}

/** Looked for in the raw value, so that they are found even where other things are wrong. */
function unknownNames(value: unknown, house: House): readonly Issue[] {
  const idsOf = (items: readonly { readonly id: string }[]) => items.map(({ id }) => id);
  const known: Readonly<
    Record<string, { readonly what: string; readonly ids: readonly string[] }>
  > = {
    appliances: { what: 'appliance', ids: idsOf(house.appliances) },
    devices: { what: 'device', ids: idsOf(house.devices) },
    makeUp: { what: 'make-up opening', ids: idsOf(house.makeUpOpenings) },
    zones: { what: 'zone', ids: idsOf(house.zones) },
    doors: { what: 'door', ids: idsOf(house.doors) },
    hoods: {
      what: 'hood',
      ids: idsOf(house.devices.filter(({ kind }) => kind === 'hood' || kind === 'downdraft')),
    },
    intakes: {
      what: 'intake',
      ids: [
        ...idsOf(house.devices.filter(({ direction }) => direction === 'supply')),
        ...idsOf(house.makeUpOpenings),
        ...idsOf(house.ventilators),
      ],
    },
  };
  const code: ScreenFactsIssueCode = 'facts.unknown-name';
  return Object.entries(known).flatMap(([section, { what, ids }]) => {
    const items = (value as Readonly<Record<string, unknown>> | null | undefined)?.[section];
    if (typeof items !== 'object' || items === null || Array.isArray(items)) return [];
    return Object.keys(items)
      .filter((name) => !ids.includes(name))
      .map((name) => ({
        code,
        severity: 'error' as const,
        path: [section, name],
        parameters: {
          found: name,
          what,
          allowed: ids.length === 0 ? ['none'] : ids,
          ...near(name, ids),
        },
      }));
  });
}

/** Zones that doors stand in or swing into. */
function unknownZones(
  { doors = {}, outsideDoors = {} }: ScreenFacts,
  house: House,
): readonly Issue[] {
  const zones = house.zones.map(({ id }) => id);
  const code: ScreenFactsIssueCode = 'facts.unknown-name';
  const check = (
    path: readonly string[],
    found: string | undefined,
    ids: readonly string[],
  ): readonly Issue[] =>
    found === undefined || ids.includes(found)
      ? []
      : [
          {
            code,
            severity: 'error',
            path,
            parameters: { found, what: 'zone', allowed: ids, ...near(found, ids) },
          },
        ];
  return [
    ...Object.entries(doors).flatMap(([name, { opensInto }]) => {
      const between = house.doors.find(({ id }) => id === name)?.between ?? [];
      return check(['doors', name, 'opensInto'], opensInto, between);
    }),
    ...Object.entries(outsideDoors).flatMap(([name, { zone, opensInto }]) => [
      ...check(['outsideDoors', name, 'zone'], zone, zones),
      ...check(['outsideDoors', name, 'opensInto'], opensInto, [zone, 'outdoors']),
    ]),
  ];
}
