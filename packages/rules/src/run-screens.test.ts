import { describe, expect, it } from 'vitest';
import { house, study } from '../test-data/invented-study.js';
import { fullHouse, screenedHouse } from '../test-data/screened.js';
import { ruleRegions } from './rule-finding.js';
import { runScreens } from './run-screens.js';
import { screens } from './screens.js';

const full = fullHouse();
const worstCase = (() => {
  const made = study(full.house, { running: { hood: 'high' } });
  return {
    ...made,
    situations: made.situations.map((situation) => ({
      ...situation,
      devices: [
        {
          device: 'hood',
          speed: 'high',
          ratedFlowM3PerS: 0.28,
          deliveredFlowM3PerS: 0.25,
          interlocked: false,
        },
      ],
      makeUp: [{ opening: 'kitchen make-up', damper: 'open' as const, flowM3PerS: 0.1 }],
    })),
  };
})();

const runs = {
  'a house that nothing is known of': runScreens(house({ appliances: [], devices: [] })),
  'a house without further facts': runScreens(screenedHouse()),
  'a house with all facts': runScreens(full.house, { facts: full.facts, worstCase }),
};

describe.each(Object.entries(runs))('the screens of %s', (_, findings) => {
  it('say something of every rule', () => {
    // Rules that are held limit by limit name each limit after its set.
    const stems = findings.map(({ rule }) => rule);
    for (const { rule } of screens) {
      const bySet = {
        'british-extract': 'united-kingdom-extract',
        'canada-house-limits': 'canada-',
      };
      const stem = bySet[rule.id as keyof typeof bySet] ?? rule.id;
      expect(
        stems.some((one) => one.startsWith(stem) || one === rule.id),
        rule.id,
      ).toBe(true);
    }
  });

  it('are plain JSON with finite numbers, and a reason wherever there is no verdict', () => {
    expect(JSON.parse(JSON.stringify(findings))).toEqual(findings);
    for (const finding of findings) {
      expect(finding.why, finding.rule).toMatch(/\.$/);
      expect(finding.source.document, finding.rule).not.toBe('');
      expect(finding.reason === undefined, finding.rule).toBe(finding.verdict !== 'not judged');
      if (finding.applies !== 'yes') expect(finding.verdict, finding.rule).toBe('not judged');
      if (finding.verdict === 'beyond the limit') {
        expect(finding.satisfiedBy, finding.rule).not.toEqual([]);
      }
      for (const { value, label, expression } of finding.arithmetic) {
        expect(label).not.toBe('');
        expect(expression, `${finding.rule} ${label}`).not.toBe('');
        if (typeof value === 'object') expect(Number.isFinite(value.si), label).toBe(true);
      }
    }
  });

  it('never speak of a clearance', () => {
    expect(JSON.stringify(findings).replaceAll('Approved Document', '')).not.toMatch(
      /\b(ok|pass(es|ed)?|safe(ly)?|approved|cleared)\b/i,
    );
  });
});

describe('the screens', () => {
  it('have ids and titles of their own', () => {
    expect(new Set(screens.map(({ rule }) => rule.id)).size).toBe(screens.length);
    expect(new Set(screens.map(({ rule }) => rule.title)).size).toBe(screens.length);
  });

  it('all reach a verdict in a house of which everything is known, but for two that have no limit', () => {
    const judged = new Set(
      runs['a house with all facts'].filter((f) => f.verdict !== 'not judged').map((f) => f.rule),
    );
    const silent = screens
      .map(({ rule }) => rule.id)
      .filter((id) => !judged.has(id))
      // Their findings carry the ids of the limits; their own tests hold them.
      .filter((id) => id !== 'british-extract' && id !== 'canada-house-limits');
    expect(silent).toEqual([
      // The space of this house is large enough, so that no outdoor share is asked for.
      'combustion-air-combined',
      'hearth-air',
      'minnesota-existing-dwelling',
    ]);
  });

  it('can be those of some regions, with those of everywhere', () => {
    const regions = new Set(
      runScreens(full.house, { regions: ['Germany'] }).map(({ region }) => region),
    );
    expect([...regions].sort()).toEqual(['Germany', 'everywhere']);
    expect(ruleRegions).toContain('everywhere');
  });
});
