import { fileURLToPath } from 'node:url';
import { readHouse } from '@evendraft/house/read';
import { readFileSync } from 'node:fs';
import { assessmentSchema, renderJson, renderTerminal } from '@evendraft/report';
import { defaultLimitSet } from '@evendraft/rules';
import { beforeAll, describe, expect, it } from 'vitest';
import { assess } from './assess.js';
import type { Assessment, House } from './index.js';
import { reportExtras } from './report-extras.js';

function houseIn(path: string): House {
  const file = fileURLToPath(new URL(`../../../${path}`, import.meta.url));
  const read = readHouse(readFileSync(file, 'utf8'), { file });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.house;
}

const house = houseIn('packages/house/fixtures/good/furnace-and-water-heater-on-one-vent.yaml');

describe('the assessment of a furnace and a water heater on one vent', () => {
  let assessment: Assessment;
  const works = new Set<string>();
  beforeAll(async () => {
    assessment = await assess(house, {
      cures: 'never',
      onProgress: (_done, _of, work) => works.add(work),
    });
  });

  function solved() {
    const { draft } = assessment;
    if (draft?.status !== 'solved') throw new Error('its flues are quick to solve');
    return draft;
  }

  it('solves both flues and is what the schema says', () => {
    expect(solved().appliances.map(({ appliance }) => appliance)).toEqual([
      'furnace',
      'water heater',
    ]);
    expect(works).toContain('flue states');
    const checked = assessmentSchema.safeParse(JSON.parse(renderJson(assessment)));
    expect(checked.error?.issues ?? []).toEqual([]);
  });

  it('has thresholds that agree with the verdict: what reverses gets less than a hot flue needs', () => {
    for (const { worst } of solved().appliances) {
      if (worst?.thresholds === undefined) throw new Error('no fan holds their flow');
      const { coldEstablishes, hotReverses } = worst.thresholds;
      expect(worst.verdict).toBe('reversed');
      expect(hotReverses.houseGivesPa).toBeLessThan(hotReverses.roomPa);
      // A cold flue never starts under more suction than a hot one bears.
      expect(coldEstablishes.roomPa).toBeGreaterThanOrEqual(hotReverses.roomPa);
    }
  });

  it('holds draft, spillage and carbon monoxide against limits, with the 2 and 5 minutes', () => {
    const { limitSets, appliances } = solved();
    expect(limitSets.map(({ id }) => id)).toEqual([defaultLimitSet.id, 'spillage-and-co-2015']);
    for (const { findings, starts } of appliances) {
      const rules = findings.map(({ finding }) => finding.rule);
      expect(rules).toContain('spillage-and-co-2015-cold-vent');
      expect(rules).toContain('spillage-and-co-2015-warm-vent');
      expect(findings.some(({ about }) => about === 'draft')).toBe(true);
      expect(findings.some(({ about }) => about === 'carbon monoxide')).toBe(true);
      expect(starts.map(({ start }) => start)).toEqual(['cold', 'warm']);
    }
  });

  it('counts each situation once, by verdict', () => {
    const { appliances, situations } = solved();
    const counted = appliances.flatMap(({ verdicts, unjudged }) => [...verdicts, ...unjudged]);
    expect(counted.reduce((sum, each) => sum + each.situations, 0)).toBe(situations);
  });

  it('says no longer that their spillage is not judged, and names them in the caution', () => {
    expect(assessment.notModelled.join(' ')).not.toContain('spillage itself, is not judged');
    expect(assessment.notModelled[0]).toContain('The flues of furnace, water heater are solved');
    expect(assessment.cautions.join(' ')).toContain(
      'do not use these, with exhaust or without: furnace, water heater',
    );
  });

  it('prints it in 80 columns', () => {
    const text = renderTerminal(assessment, { system: 'us' });
    expect(text).toContain('Draft, spillage and spilled gas');
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('draws draft by temperature, twice a flue, drawing counted as positive', async () => {
    const { flues = [] } = await reportExtras(house, assessment, { system: 'us' });
    expect(flues).toHaveLength(4);
    const still = solved().appliances[0]!.byTemperature.find(
      ({ what }) => what === 'nothing running',
    )!;
    const [first] = still.rows;
    const point = flues[0]!.warm.find(
      ({ outdoorTemperatureC }) => outdoorTemperatureC === first!.outdoorTemperatureC,
    );
    expect(point!.draftPa).toBe(-first!.hotPa!);
    expect(flues[0]!.weakest.every(({ draftPa }) => draftPa > 0)).toBe(true);
  });
});

describe('whether flues are solved', () => {
  it('leaves them out where that was asked, and says in what is not modelled that they are not judged', async () => {
    const { draft, notModelled } = await assess(house, { cures: 'never', draft: 'never' });
    expect(draft).toEqual({ status: 'not solved', why: 'Flues were not asked for.' });
    expect(notModelled[0]).toContain('spillage itself, is not judged');
  });

  it('has no such part for a house whose appliances have no flue in the file', async () => {
    const leaky = houseIn('examples/leaky-old-house.yaml');
    expect(await assess(leaky, { cures: 'never' })).not.toHaveProperty('draft');
  });

  it('stops when the signal is given', async () => {
    const controller = new AbortController();
    const stopped = assess(house, {
      cures: 'never',
      signal: controller.signal,
      onProgress: (_done, _of, work) => {
        if (work === 'flue states') controller.abort(new Error('stopped by hand'));
      },
    });
    await expect(stopped).rejects.toThrow('stopped by hand');
  });
});
