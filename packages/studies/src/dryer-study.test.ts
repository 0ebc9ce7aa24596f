import { beforeAll, describe, expect, it } from 'vitest';
import { constantFlow, device, fan, inventedHouse, weather } from '../test-data/invented-house.js';
import { dryerStudy, type DryerRow } from './dryer-study.js';

const tight = (law = fan(0.08)) =>
  inventedHouse(
    {
      devices: [
        device('dryer', { on: law }, { zone: 'hall', kind: 'dryer' }),
        device('hood', { on: fan(0.15) }, { zone: 'hall' }),
      ],
      weathers: [weather('still', 20)],
    },
    ['hall'],
  );

describe('a dryer in its arrangements', () => {
  let rows: Readonly<Record<DryerRow['arrangement'], DryerRow>>;
  beforeAll(async () => {
    const study = await dryerStudy(tight(), { dryer: 'dryer' });
    expect(study.notSolved).toEqual([]);
    rows = Object.fromEntries(study.rows.map((row) => [row.arrangement, row])) as typeof rows;
  });

  it('delivers more with its own make-up duct, and its room stands less low', () => {
    const [bare, fed] = [rows['as it is'], rows['with its own make-up duct']];
    expect(fed.deliveredFlowM3PerS).toBeGreaterThan(bare.deliveredFlowM3PerS);
    expect(fed.alonePa).toBeGreaterThan(bare.alonePa + 1);
    expect(fed.lowestPa).toBeGreaterThan(bare.lowestPa);
  });

  it('leaves the house to the other devices where it condenses', () => {
    const condensing = rows['condensing or heat-pump dryer'];
    expect(condensing.deliveredFlowM3PerS).toBe(0);
    expect(condensing.alonePa).toBeCloseTo(0, 9);
    expect(condensing.doorForceN).toBeCloseTo(0, 9);
    expect(condensing.lowestPa).toBeGreaterThan(rows['as it is'].lowestPa);
    expect(condensing.lowestPa).toBeLessThan(-1);
  });

  it('starves in a closet, the less the more its door lets through', () => {
    const none = rows['closet, door shut, no opening'];
    const code = rows['closet, door shut, 100 in² opening'];
    const louvred = rows['closet, louvred door shut'];
    const order = [none, code, louvred, rows['as it is']];
    const rising = (of: (row: DryerRow) => number) => {
      const values = order.map(of);
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect(values[0]!).toBeLessThan(values[1]!);
    };
    rising((row) => row.deliveredFlowM3PerS);
    rising((row) => row.alonePa);
    expect(none.zone).toBe('dryer closet');
    expect(none.doorForceN).toBeGreaterThan(code.doorForceN);
    expect(order.every(({ proved }) => proved)).toBe(true);
  });

  it('pulls on the closet door what the orifice law says for a constant flow, worked by hand', async () => {
    const { rows: fixed } = await dryerStudy(tight(constantFlow(0.06)), { dryer: 'dryer' });
    const code = fixed.find(({ arrangement }) => arrangement.includes('100 in²'))!;
    // 100 in² and a gap of 1 cm below 0.81 m of door.
    const areaM2 = 0.064516 + 0.0081;
    const pressurePa = -(1.2041 / 2) * (0.06 / (0.6 * areaM2)) ** 2;
    expect(Math.abs(code.doorPa / pressurePa - 1)).toBeLessThan(1e-3);
    const force = (-pressurePa * 0.81 * 2.03 * 0.81) / (2 * 0.74);
    expect(Math.abs(code.doorForceN / force - 1)).toBeLessThan(1e-3);
  });

  it('is refused for what exhausts nothing', async () => {
    await expect(dryerStudy(tight(), { dryer: 'washer' })).rejects.toMatchObject({
      code: 'StudyArgument',
      argument: 'dryer',
    });
  });
});
