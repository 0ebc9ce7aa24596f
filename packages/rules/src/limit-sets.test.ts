import { describe, expect, it } from 'vitest';
import type { Limit } from './limit-set.js';
import { limitSetSchema } from './limit-set-schema.js';
import { defaultLimitSet, limitSets } from './limit-sets.js';

/**
 * Every limit once more, typed from the project's notes on the documents and not from the data files:
 * set, row, magnitude in Pa, status. All are changes from baseline but the German ones.
 */
const typedFromTheNotes = `
vent-type-table water-heater-alone 2 found second-hand
vent-type-table natural-draft-common-vent 3 found second-hand
vent-type-table natural-draft-vent-damper-common-vent 5 found second-hand
vent-type-table natural-draft-boiler-furnace-alone 5 found second-hand
vent-type-table induced-draft-common-vent 5 found second-hand
vent-type-table power-vented-boiler-furnace-alone 15 found second-hand
vent-type-table induced-draft-boiler-furnace-alone 15 memory
vent-type-table fan-assisted-water-heater-alone 15 memory
vent-type-table direct-vent-sealed-combustion 50 memory
model-code-2015 category-1-water-heater 2 memory
model-code-2015 category-1-common-vent 3 memory
model-code-2015 category-1-flue-damper-common-vent 5 memory
model-code-2015 category-1-boiler-furnace-alone 5 memory
model-code-2015 category-1-fan-assisted-common-vent 5 memory
model-code-2015 decorative-gas-appliance 5 memory
model-code-2015 power-vented-boiler-furnace-alone 15 memory
model-code-2015 fan-assisted-water-heater-alone 15 memory
model-code-2015 category-4-direct-vent 50 memory
chimney-height-table gas-13-ft-exterior 5 memory
chimney-height-table gas-13-ft-interior 5 memory
chimney-height-table gas-20-ft-exterior 5 memory
chimney-height-table gas-20-ft-interior 6 memory
chimney-height-table gas-27-ft-exterior 5 memory
chimney-height-table gas-27-ft-interior 7 memory
chimney-height-table oil-13-ft-exterior 4 memory
chimney-height-table oil-13-ft-interior 4 memory
chimney-height-table oil-20-ft-exterior 4 memory
chimney-height-table oil-20-ft-interior 5 memory
chimney-height-table oil-27-ft-exterior 4 memory
chimney-height-table oil-27-ft-interior 6 memory
chimney-height-table open-fireplace-exterior 3 memory
chimney-height-table open-fireplace-interior 4 memory
chimney-height-table closed-wood-stove-exterior 10 memory
chimney-height-table closed-wood-stove-interior 10 memory
chimney-height-table induced-draft-fan 15 memory
chimney-height-table induced-draft-fan-sealed-vent 25 memory
rater-guideline-2010 atmospheric 5 memory
rater-guideline-2010 pellet-stove 15 memory
canada-5-pa draft-hood-and-fan-assisted 5 found second-hand
canada-5-pa vented-not-direct-vent 5 found second-hand
germany-4-pa room-air-dependent 4 found second-hand
germany-4-pa room-air-independent 8 found second-hand
canada-f326-1991 spillage-prone 5 memory
`;

const everyRow = limitSets.flatMap((set) =>
  set.limits.map((limit): [string, string, Limit] => [set.id, limit.id, limit]),
);

describe('the limit sets', () => {
  it('hold the values and the status that were typed independently, and no others', () => {
    const lines = everyRow.map(
      ([set, id, limit]) => `${set} ${id} ${String(-limit.limitPa)} ${limit.source.status}`,
    );
    expect(lines.join('\n')).toBe(typedFromTheNotes.trim());
  });

  it('limit a change from baseline, but for Germany, where the pressure against outdoors is limited', () => {
    for (const [set, , limit] of everyRow) {
      expect(limit.quantity).toBe(
        set === 'germany-4-pa' ? 'zone minus outdoors' : 'change from baseline',
      );
    }
  });

  it('name document, status and test set-up for every row and every exclusion', () => {
    expect(everyRow.length).toBe(43);
    for (const set of limitSets) {
      expect(set.testConfigurations ?? [], set.id).not.toEqual([]);
      expect(set.document, set.id).not.toBe('');
      expect(set.editionOfDocument, set.id).not.toBe('');
      expect(set.note, set.id).not.toBe('');
      expect(set.testSetUp, set.id).toMatch(/\.$/);
      for (const { id, source } of [...set.limits, ...set.exclusions]) {
        expect(source.document, `${set.id} ${id}`).not.toBe('');
        expect(source.section ?? '', `${set.id} ${id}`).not.toBe('');
        expect(['found', 'found second-hand', 'memory'], `${set.id} ${id}`).toContain(
          source.status,
        );
      }
    }
  });

  it('have ids of their own', () => {
    expect(new Set(limitSets.map(({ id }) => id)).size).toBe(limitSets.length);
    expect(new Set(everyRow.map(([set, id]) => `${set} ${id}`)).size).toBe(everyRow.length);
  });

  it.each(limitSets.map((set) => [set.id, set] as const))(
    '%s fits the schema of a user’s own set and survives JSON unchanged',
    (_, set) => {
      const copy: unknown = JSON.parse(JSON.stringify(set));
      expect(limitSetSchema.parse(copy)).toEqual(set);
      expect(copy).toEqual(set);
    },
  );

  it('begin with the default', () => {
    expect(limitSets[0]).toBe(defaultLimitSet);
    expect(defaultLimitSet.id).toBe('vent-type-table');
  });

  it('never speak of a limit as a clearance', () => {
    // The title of a document is not a word of ours.
    expect(JSON.stringify(limitSets).replaceAll('Approved Document', '')).not.toMatch(
      /\b(ok|pass(es|ed)?|safe(ly)?|approved|cleared)\b/i,
    );
  });

  it('hold the further limits that were typed independently, and no others', () => {
    const lines = limitSets.flatMap((set) => [
      ...(set.houseLimits ?? []).map(
        (one) => `${set.id} house ${one.id} ${String(-one.limitPa)} Pa ${one.source.status}`,
      ),
      ...(set.extractLimits ?? []).map(
        (one) =>
          `${set.id} extract ${one.id} ${(one.largestFlowM3PerS * 1000).toFixed(0)} L/s ${one.source.status}`,
      ),
      ...(set.draftLimits ?? []).map(
        (one) =>
          `${set.id} draft ${one.corners
            .map((c) => `${((c.outdoorTemperatureC * 9) / 5 + 32).toFixed(0)} F ${c.draftPa} Pa`)
            .join(
              ', ',
            )}${one.strongestPa === undefined ? '' : ` to ${one.strongestPa} Pa`} ${one.source.status}`,
      ),
      ...(set.spillageTimes ?? []).map(
        (one) => `${set.id} spillage ${one.vent} ${one.limitS} s ${one.source.status}`,
      ),
      ...(set.ambientCo ?? []).map(
        (one) =>
          `${set.id} room ${one.fromPpm} ppm${one.leave ? ' leave' : ''} ${one.source.status}`,
      ),
      ...(set.flueCo ?? []).map(
        (one) => `${set.id} gas ${one.id} ${one.limitPpm} ppm ${one.basis} ${one.source.status}`,
      ),
    ]);
    expect(lines.join('\n')).toBe(
      `
vent-type-table draft 10 F -2.5 Pa, 90 F -0.5 Pa memory
vent-type-table spillage either 60 s found second-hand
vent-type-table room 35 ppm found second-hand
vent-type-table gas tune 25 ppm as measured memory
vent-type-table gas stop-and-repair 100 ppm as measured memory
vent-type-table gas emergency 400 ppm as measured memory
model-code-2015 draft 10 F -2.5 Pa, 90 F -0.5 Pa memory
canada-5-pa house continuous-ventilation 10 Pa found
canada-5-pa house depressurization-test 25 Pa found
spillage-and-co-2015 spillage warm 120 s memory
spillage-and-co-2015 spillage cold 300 s memory
spillage-and-co-2015 room 9 ppm memory
spillage-and-co-2015 room 36 ppm memory
spillage-and-co-2015 room 70 ppm leave memory
fuel-gas-code-2012 spillage either 300 s found
fuel-gas-code-2012 room 30 ppm memory
fuel-gas-code-2012 room 70 ppm leave memory
fuel-gas-code-2012 gas furnace 400 ppm air-free memory
fuel-gas-code-2012 gas boiler 400 ppm air-free memory
fuel-gas-code-2012 gas wall-furnace 200 ppm air-free memory
fuel-gas-code-2012 gas wall-furnace-direct-vent 400 ppm air-free memory
fuel-gas-code-2012 gas room-heater 200 ppm air-free memory
fuel-gas-code-2012 gas water-heater 200 ppm air-free memory
fuel-gas-code-2012 gas oven 225 ppm as measured memory
fuel-gas-code-2012 gas top-burner 25 ppm as measured memory
fuel-gas-code-2012 gas dryer 400 ppm air-free memory
fuel-gas-code-2012 gas refrigerator 25 ppm as measured memory
fuel-gas-code-2012 gas gas-log-in-gas-fireplace 25 ppm as measured memory
fuel-gas-code-2012 gas gas-log-in-wood-fireplace 400 ppm air-free memory
canada-f326-1991 house continuous 10 Pa memory
canada-f326-1991 house ceiling 20 Pa memory
canada-venting-screen spillage either 30 s found second-hand
oil-heat-manual draft 32 F -2.5 Pa to -5 Pa found
oil-heat-manual room 35 ppm found
united-kingdom-extract extract open-flued-gas-same-room 20 L/s found
united-kingdom-extract extract solid-fuel-same-room 0 L/s found
united-kingdom-extract extract open-flued-oil-pressure-jet 40 L/s memory
united-kingdom-extract extract open-flued-oil-vaporising 20 L/s memory
appliance-standards spillage cold 300 s found second-hand
appliance-standards spillage either 600 s found second-hand
appliance-standards room 9 ppm found second-hand
appliance-standards room 35 ppm found second-hand
appliance-standards gas furnace-blocked-vent 400 ppm air-free found second-hand
`.trim(),
    );
  });
});
