import { describe, expect, it } from 'vitest';
import { crowded, hostile, manyZones, oneZone } from '../../fixtures/invented-assessments.js';
import { everyExtra, hostileExtras } from '../../fixtures/invented-extras.js';
import { ladderData, stripData, windRoseData } from '../internal/drawing-data.js';
import type { Assessment } from '../assessment.js';
import type { ReportExtras } from '../report-extras.js';
import { drawDeviceShares } from './device-shares.js';
import type { DrawingOptions } from './drawing-options.js';
import { drawExceedance } from './exceedance.js';
import { drawExhaustCurve } from './exhaust-curve.js';
import { drawFanAndSystem } from './fan-and-system.js';
import { drawFlueDraft } from './flue-draft.js';
import { drawHouseSection } from './house-section.js';
import { drawMakeUpOptions } from './make-up-options.js';
import { drawPressureLadder } from './pressure-ladder.js';
import { drawStateStrip } from './state-strip.js';
import { drawWindRose } from './wind-rose.js';

const wide: DrawingOptions = { width: 680, system: 'us', id: 'it' };

type Drawn = (options: DrawingOptions) => string;

function given<T>(data: T | undefined): T {
  if (data === undefined) throw new Error('the fixture lacks this part');
  return data;
}

function everyDrawing(
  assessment: Assessment,
  extras: ReportExtras,
): Readonly<Record<string, Drawn>> {
  return {
    ladder: (options) => drawPressureLadder(given(ladderData(assessment)), options),
    strip: (options) => drawStateStrip(given(stripData(assessment)), options),
    winds: (options) => drawWindRose(given(windRoseData(manyZones)), options),
    section: (options) => drawHouseSection(given(extras.section), options),
    exhaust: (options) => drawExhaustCurve(given(extras.exhaustCurve), options),
    fan: (options) => drawFanAndSystem(given(extras.fans?.[0]), options),
    shares: (options) => drawDeviceShares(given(extras.shares), options),
    flue: (options) => drawFlueDraft(given(extras.flues?.[0]), options),
    exceedance: (options) => drawExceedance(given(extras.exceedance), options),
    options: (options) => drawMakeUpOptions(given(extras.makeUpOptions), options),
  };
}

/** What is wrong with an SVG as XML: tags that do not close, numbers that are none. */
function xmlFaults(svg: string): readonly string[] {
  const open: string[] = [];
  const faults = [...(svg.match(/.{0,30}(?:NaN|undefined|Infinity|\[object).{0,30}/gu) ?? [])];
  for (const [tag, closing, name = '', rest = ''] of svg.matchAll(
    /<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*\/?>/gu,
  )) {
    if (closing === '/') {
      if (open.pop() !== name) faults.push(`${tag} closes nothing`);
    } else if (!tag.endsWith('/>')) open.push(name);
    if (rest.includes('=""')) faults.push(`${tag} has an empty attribute`);
  }
  const left = svg.replace(/<\/?[a-zA-Z]+(?:\s+[\w:-]+="[^"<]*")*\s*\/?>/gu, '');
  if (/[<>]/u.test(left)) faults.push('an angle bracket outside a tag');
  if (open.length > 0) faults.push(`left open: ${open.join(' ')}`);
  return faults;
}

/** All that is written in a drawing, without the ends of lines. */
function written(svg: string): string {
  const texts = [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/gu)].map((match) => match[1] ?? '');
  return texts.join('').replace(/\s/gu, '');
}

/** Names as long as they come: with blanks, without, wide letters, and letters that run to the left. */
const longNames = [
  'the range hood over the six-burner cooktop in the kitchen, with its duct to the north',
  'Dunstabzugshaubenabluftventilatorgehäuseverlängerungsstückanschlussrohrleitungsende',
  '厨房の換気扇と長い名前のダクトファンと屋外排気口までの非常に長い名前の装置で台所の北側の壁の上にあるものと、その隣の食堂の天井の中を通る排気の管と書斎の小さな扇',
  'مروحة شفط المطبخ الكبيرة فوق الموقد مع قناة طويلة إلى الجدار الشمالي من البيت القديم',
] as const;

/** The invented data with every name replaced by a long one, each by one of its own. */
function withLongNames<T>(data: T, names = new Map<string, string>()): T {
  const renamed = (name: string): string => {
    const known = names.get(name);
    if (known !== undefined) return known;
    const long = `${longNames[names.size % longNames.length]} ${names.size + 1}`;
    names.set(name, long);
    return long;
  };
  if (Array.isArray(data)) return data.map((each: unknown) => withLongNames(each, names)) as T;
  if (typeof data !== 'object' || data === null) return data;
  const keys = ['name', 'zone', 'from', 'to', 'device', 'appliance', 'weather', 'label'];
  return Object.fromEntries(
    Object.entries(data).map(([key, value]: [string, unknown]) => [
      key,
      typeof value === 'string' && keys.includes(key)
        ? renamed(value)
        : withLongNames(value, names),
    ]),
  ) as T;
}

function attributes(svg: string, element: string): readonly Readonly<Record<string, string>>[] {
  return [...svg.matchAll(new RegExp(`<${element}((?:\\s+[\\w:-]+="[^"]*")*)`, 'gu'))].map(
    (match) =>
      Object.fromEntries(
        [...(match[1] ?? '').matchAll(/([\w:-]+)="([^"]*)"/gu)].map((pair) => [pair[1], pair[2]]),
      ),
  );
}

function placeOf(svg: string, text: string): { x: number; y: number } {
  const found = new RegExp(`<text x="([\\d.-]+)" y="([\\d.-]+)"[^>]*>${text}</text>`, 'u').exec(
    svg,
  );
  if (found === null) throw new Error(`${text} is not drawn`);
  return { x: Number(found[1]), y: Number(found[2]) };
}

describe('every drawing', () => {
  const all = Object.entries({
    invented: everyDrawing(manyZones, everyExtra),
    hostile: everyDrawing(hostile, hostileExtras),
    crowded: everyDrawing(crowded, everyExtra),
  }).flatMap(([kind, drawings]) =>
    Object.entries(drawings).map(([name, draw]) => [name, kind, draw] as const),
  );

  it.each(all)('%s of %s data is whole XML with words, at any width', (_name, _kind, draw) => {
    for (const width of [300, 328, 519, 680, 1000]) {
      const svg = draw({ ...wide, width });
      expect(xmlFaults(svg)).toEqual([]);
      expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*><title id="it-title">[^<]+<\/title><desc /u);
      for (const { y } of attributes(svg, 'text')) {
        expect(Number(y)).toBeGreaterThan(0);
        expect(Number(y)).toBeLessThanOrEqual(Number(attributes(svg, 'svg')[0]?.['height']) + 1);
      }
    }
  });

  it.each(all.filter(([, kind]) => kind === 'invented'))(
    '%s prints both systems of units',
    (...row) => {
      const draw = row[2];
      const [us, si] = [draw(wide), draw({ ...wide, system: 'si' })];
      expect(si).not.toMatch(/\d cfm<|, cfm<|°F</u);
      expect(us).not.toMatch(/ L\/s<|°C</u);
    },
  );

  it.each([328, 680])('cuts no name, however long and in whatever script, %i px wide', (width) => {
    const dress = { ...wide, width };
    const extras = withLongNames(everyExtra);
    const section = given(extras.section);
    const flows = [...section.baseline.flows, ...section.worst.flows];
    const exhaust = given(extras.exhaustCurve);
    const options = given(extras.makeUpOptions);
    const shares = given(extras.shares);
    const exceedance = given(extras.exceedance);
    const ladder = withLongNames(given(ladderData(manyZones)));
    const strip = withLongNames(given(stripData(manyZones)));
    const winds = withLongNames(given(windRoseData(manyZones)));
    const drawn: readonly (readonly [string, readonly string[]])[] = [
      [drawHouseSection(section, dress), section.zones.map(({ zone }) => zone)],
      [drawHouseSection(section, dress), flows.map(({ name }) => name)],
      [
        drawExhaustCurve(exhaust, dress),
        [...exhaust.curves, ...exhaust.operatingPoints].map(({ name }) => name),
      ],
      [drawExhaustCurve(exhaust, dress), exhaust.limits.map(({ appliance }) => appliance)],
      [drawMakeUpOptions(options, dress), options.options.map(({ name }) => name)],
      [drawDeviceShares(shares, dress), shares.shares.map(({ device }) => device)],
      [drawExceedance(exceedance, dress), exceedance.limits.map(({ appliance }) => appliance)],
      [drawPressureLadder(ladder, dress), ladder.zones.map(({ zone }) => zone)],
      [drawPressureLadder(ladder, dress), ladder.appliances.map(({ appliance }) => appliance)],
      [drawStateStrip(strip, dress), [strip.situations[0]?.label ?? 'none']],
      [drawWindRose(winds, dress), winds.winds.map(({ weather }) => weather)],
    ];
    for (const [svg, names] of drawn) {
      const words = written(svg);
      expect(names.length).toBeGreaterThan(0);
      for (const name of names) expect(words).toContain(name.replace(/\s/gu, ''));
      expect(words).not.toContain('…');
    }
  });

  it('finds faults in XML that has some', () => {
    expect(xmlFaults('<svg><g></svg>')).not.toEqual([]);
    expect(xmlFaults('<svg><text x="NaN">1 < 2</text></svg>')).toHaveLength(2);
  });
});

describe('drawPressureLadder', () => {
  it('puts limit and value at their places on one even scale', () => {
    const svg = drawPressureLadder(given(ladderData(manyZones)), wide);
    const circle = attributes(svg, 'circle')[0];
    const thick = attributes(svg, 'line').find(
      (each) => each['stroke-width'] === '3' && each['stroke'] === '#1c2126',
    );
    const at = (label: string): number => placeOf(svg, label).y - 4;
    const perPa = (at('\u221215') - at('0')) / 15;
    // Places are rounded to tenths of a pixel.
    expect(Number(circle?.['cy'])).toBeCloseTo(at('0') + 12.56 * perPa, 0);
    expect(Number(thick?.['y1'])).toBeCloseTo(at('0') + 2 * perPa, 0);
  });

  it('stretches the scale and says so where a limit would vanish beside the value', () => {
    const svg = drawPressureLadder(given(ladderData(oneZone)), wide);
    expect(svg).toContain('The scale is stretched towards zero.');
    const at = (label: string): number => placeOf(svg, label).y - 4;
    // Distance goes with the root: 20 Pa lie twice as far down as 5 Pa.
    expect((at('\u221220') - at('0')) / (at('\u22125') - at('0'))).toBeCloseTo(2, 1);
    expect(drawPressureLadder(given(ladderData(manyZones)), wide)).not.toContain('stretched');
  });

  it('counts what it does not draw', () => {
    const svg = drawPressureLadder(given(ladderData(crowded)), wide);
    expect(svg).toContain('32 more in the table.');
    expect(svg).toContain('and 20 more zones');
  });
});

describe('drawWindRose', () => {
  it('points each spoke to where the wind comes from, as long as the house is deep', () => {
    const svg = drawWindRose(
      {
        winds: [
          { weather: 'west', windFromDeg: 270, windSpeedMPerS: 7, pressurePa: -10 },
          { weather: 'north', windFromDeg: 0, windSpeedMPerS: 7, pressurePa: -5 },
        ],
      },
      wide,
    );
    const [west, north] = attributes(svg, 'line').filter((each) => each['stroke-width'] === '3');
    const span = (spoke: typeof west): readonly number[] => [
      Number(spoke?.['x2']) - Number(spoke?.['x1']),
      Number(spoke?.['y2']) - Number(spoke?.['y1']),
    ];
    expect(span(west)[0]).toBeLessThan(-40);
    // Sines of whole turns are not exactly zero; places are in tenths of a pixel.
    expect(span(west)[1]).toBeCloseTo(0, 0);
    expect(span(north)[1]! * 2).toBeCloseTo(span(west)[0]!, 0);
  });
});

describe('drawHouseSection', () => {
  it('turns the arrow of a flue that runs backwards', () => {
    const svg = drawHouseSection(given(everyExtra.section), wide);
    const turns = attributes(svg, 'polygon').map(
      (each) => /rotate\((-?\d+)/u.exec(each['transform'] ?? '')?.[1],
    );
    expect(turns).toContain('0');
    expect(turns).toContain('180');
    const forward = { ...given(everyExtra.section), worst: given(everyExtra.section).baseline };
    const flue = (data: typeof forward): number =>
      attributes(drawHouseSection(data, wide), 'polygon').filter((each) =>
        (each['transform'] ?? '').includes('rotate(180)'),
      ).length;
    expect(flue(given(everyExtra.section))).toBeGreaterThan(flue(forward));
  });

  it('hatches the deeper state more closely', () => {
    const svg = drawHouseSection(given(everyExtra.section), wide);
    const count = (hatch: string): number => svg.split(`fill="url(#it-${hatch})"`).length - 1;
    // One box of each hatch stands in the key.
    expect(count('dark')).toBe(1 + 2);
    expect(count('medium')).toBe(1 + 2);
    expect(count('light')).toBe(1 + 3);
  });
});

describe('drawExhaustCurve', () => {
  it('sets operating points on their curve', () => {
    const data = given(everyExtra.exhaustCurve);
    const svg = drawExhaustCurve(
      { ...data, operatingPoints: [{ name: 'here', ...given(data.curves[0]?.points[10]) }] },
      wide,
    );
    const curve = attributes(svg, 'polyline')[0]?.['points']?.split(' ')[10];
    const circle = attributes(svg, 'circle').find(({ r }) => r === '8.5');
    expect(`${circle?.['cx']},${circle?.['cy']}`).toBe(curve);
  });

  it('tells curves apart by dashes and by marks, and draws no limit on another quantity', () => {
    const data = given(everyExtra.exhaustCurve);
    const svg = drawExhaustCurve({ ...data, operatingPoints: [] }, wide);
    const dashes = attributes(svg, 'polyline').map((each) => each['stroke-dasharray']);
    expect(new Set(dashes).size).toBe(data.curves.length);
    const corners = attributes(svg, 'polygon').map((each) => each['points']?.split(' ').length);
    // Discs on the first curve, squares on the second, triangles on the third.
    expect(new Set(corners)).toEqual(new Set([4, 3]));
    expect(svg).toContain('limit \u22122, water heater');
    expect(svg).toContain('fall from baseline');
  });
});

describe('drawExceedance', () => {
  it('never calls certain or impossible what is neither', () => {
    const svg = drawExceedance(given(everyExtra.exceedance), wide);
    for (const words of ['over 99\u00a0%', '46\u00a0%', 'under 1\u00a0%'])
      expect(svg).toContain(`>${words}</text>`);
  });
});

describe('drawStateStrip', () => {
  it('draws 2,000 situations and names the worst of six states', () => {
    const situations = Array.from({ length: 2000 }, (_, index) => ({
      label: `state ${index}`,
      condition: 'cold',
      pressurePa: -100 + index / 20,
    }));
    const svg = drawStateStrip({ situations }, wide);
    expect(svg.match(/Pa<\/text>/gu)).toHaveLength(6);
    expect(svg).toContain('2000 situations from \u2212100.0\u00a0Pa to 0.0\u00a0Pa');
  });
});
