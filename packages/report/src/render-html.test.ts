import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyAssessment } from '../fixtures/assessment-arbitrary.js';
import {
  crowded,
  hostile,
  hostileName,
  manyZones,
  noAppliances,
  oneZone,
} from '../fixtures/invented-assessments.js';
import { everyPart } from '../fixtures/invented-results.js';
import { everyExtra, fullSignOff, hostileExtras } from '../fixtures/invented-extras.js';
import type { Assessment } from './assessment.js';
import { renderHtml } from './render-html.js';

const us = { system: 'us' } as const;
const everything = { ...us, extras: everyExtra, signOff: fullSignOff } as const;

/** Every tag with its attributes, as a browser would see them. */
function tagsOf(html: string): readonly { readonly name: string; readonly text: string }[] {
  const body = html.replace(/<style>[\s\S]*?<\/style>/u, '');
  return [...body.matchAll(/<([!/]?[a-zA-Z][a-zA-Z0-9]*)([^<>]*)>/gu)].map((match) => ({
    name: (match[1] ?? '').toLowerCase(),
    text: match[2] ?? '',
  }));
}

const allowedTags = new Set(
  (
    '!doctype html head meta title style body div header p h1 h2 h3 nav ul li a main section figure ' +
    'figcaption table caption strong span bdi thead tr th tbody td dl dt dd ol footer ' +
    'svg desc defs pattern line rect text path polyline polygon circle g clippath'
  ).split(' '),
);

/** What a name could become if it were not escaped: any tag, handler or address that is not ours. */
function foreignMarkup(html: string): readonly string[] {
  const tags = tagsOf(html).filter(
    ({ name, text }) =>
      !allowedTags.has(name.replace('/', '')) ||
      /\son\w+=|javascript:|\ssrc=|(?<!xmlns)="https?:/u.test(text) ||
      (name === 'a' && !/^ href="#[a-z0-9-]+"$/u.test(text)),
  );
  // Nothing but tags may hold an angle bracket.
  const rest = html.replace(/<style>[\s\S]*?<\/style>/u, '').replace(/<[!/]?[a-zA-Z][^<>]*>/gu, '');
  return [
    ...tags.map(({ name, text }) => `<${name}${text}>`),
    ...(rest.match(/.{0,40}[<>].{0,40}/gu) ?? []),
    ...(html.match(/.{0,40}[\u202a-\u202e\u2066-\u2069]/gu) ?? []),
  ];
}

describe('renderHtml', () => {
  it('has a section on draft where flues were solved or drawn, and none otherwise', () => {
    const solved = renderHtml(everyPart, us);
    expect(solved).toContain('<h2 id="draft">');
    expect(solved).toContain('Three answers on each flue');
    expect(solved).toContain('this is no upper bound');
    const drawn = renderHtml(oneZone, { ...us, extras: { flues: everyExtra.flues ?? [] } });
    expect(drawn).toContain('Outside it is no clearance.');
    expect(renderHtml(oneZone, us)).not.toContain('<h2 id="draft">');
  });

  // Golden: our own output, looked at in a browser when it was recorded; it says nothing about any house.
  it.each([
    ['everything', manyZones, everything],
    ['hostile', hostile, { ...us, extras: hostileExtras }],
    ['crowded', crowded, { system: 'si' } as const],
  ])('writes what is recorded in %s.html', async (name, assessment, options) => {
    const html = renderHtml(assessment, options);
    await expect(html).toMatchFileSnapshot(`../recorded/${name}.html`);
  });

  it('needs nothing beside it: no script, no address, and a policy that forbids both', () => {
    const html = renderHtml(manyZones, everything);
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/u.exec(html)?.[1];
    expect(policy?.replaceAll('&#39;', "'")).toMatch(
      /^default-src 'none'; style-src 'unsafe-inline'; img-src data:;/u,
    );
    const outside = /<script|<link|<img|<iframe|@import|url\((?!#)|https?:/gu;
    expect(html.replaceAll('http://www.w3.org/2000/svg', '').match(outside) ?? []).toEqual([]);
  });

  it('says in three sentences how far down, which appliance and what cures it', () => {
    const leads = [...renderHtml(oneZone, us).matchAll(/<p class="lead">(.*?)<\/p>/gu)];
    expect(leads.map((match) => match[1]?.slice(0, 30))).toEqual([
      'At worst, house stands 48.3\u00a0Pa',
      'Beyond the limit: water heater',
      'What would cure it, tried firs',
    ]);
    expect(
      renderHtml(manyZones, everything).includes(
        '<p class="lead">What cures it, the recommended make-up air: Make-up fan of 600\u00a0cfm, tempered, interlocked with the hood, ',
      ),
    ).toBe(true);
  });

  it('keeps its order of headings, and names each list of contents once', () => {
    const html = renderHtml(manyZones, everything);
    const levels = [...html.matchAll(/<h([1-6])/gu)].map((match) => Number(match[1]));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) => {
      expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
    });
    const targets = [...html.matchAll(/href="#([^"]+)"/gu)].map((match) => match[1]);
    const heads = [...html.matchAll(/<h2 id="([^"]+)"/gu)].map((match) => match[1]);
    expect(targets).toEqual(heads);
  });

  it('gives every table a caption and scopes, every drawing a title and a description', () => {
    const html = renderHtml(manyZones, everything);
    const count = (pattern: RegExp): number => html.match(pattern)?.length ?? 0;
    expect(count(/<table>/gu)).toBeGreaterThan(20);
    expect(count(/<table>\n<caption /gu)).toBe(count(/<table>/gu));
    expect(count(/<th(?! scope=)[\s>]/gu)).toBe(0);
    // Ten drawings, each in two widths.
    expect(count(/<svg /gu)).toBe(20);
    expect(count(/role="img" aria-labelledby="[^"]+"[^>]*><title /gu)).toBe(20);
    expect(count(/<desc /gu)).toBe(20);
  });

  it('uses no id twice, so that titles and hatches belong to their own drawing', () => {
    for (const html of [renderHtml(manyZones, everything), renderHtml(crowded, us)]) {
      const ids = [...html.matchAll(/ id="([^"]+)"/gu)].map((match) => match[1]);
      expect(new Set(ids).size).toBe(ids.length);
      for (const [, used] of html.matchAll(/url\(#([^)]+)\)/gu)) expect(ids).toContain(used);
    }
  });

  it('prints both systems of units', () => {
    const si = renderHtml(manyZones, { ...everything, system: 'si' });
    expect(si.includes('Delivered, L/s')).toBe(true);
    expect(/<th[^>]*>[^<]*, (?:cfm|ft|°F)</u.test(si)).toBe(false);
    expect(renderHtml(manyZones, everything).includes('Delivered, cfm')).toBe(true);
  });

  it('never says what could be read as a clearance', () => {
    const text = renderHtml(manyZones, everything).replace(/<[^>]*>/gu, ' ');
    expect(text.match(/.{0,20}\b(?:safe|pass|passes|passed|ok|OK)\b/gu) ?? []).toEqual([]);
    expect(text.includes('None of this is a clearance')).toBe(true);
  });

  it('puts the block to sign in only where it is given', () => {
    const signed = renderHtml(oneZone, { ...us, signOff: fullSignOff });
    for (const words of ['B-2041-117', '004417', 'credential R-5530', 'Builder: name']) {
      expect(signed.includes(words), words).toBe(true);
    }
    expect(renderHtml(oneZone, us).includes('To sign')).toBe(false);
  });

  it('says what is missing where nothing was solved or judged', () => {
    const nothing: Assessment = {
      ...oneZone,
      findings: [],
      worstCase: { ...oneZone.worstCase, situations: [], zones: [] },
    };
    const html = renderHtml(nothing, us);
    expect(html.includes('No situation could be solved, so there is no answer.')).toBe(true);
    expect(html.includes('<svg')).toBe(false);
    expect(renderHtml(noAppliances, us).includes('describes no combustion appliance')).toBe(true);
  });

  it('shows hostile names letter for letter and never as markup', () => {
    const html = renderHtml(hostile, { ...us, extras: hostileExtras });
    expect(html.includes('|&lt;script&gt;alert(1)&lt;/script&gt;`')).toBe(true);
    expect(foreignMarkup(html)).toEqual([]);
    expect(hostileName).toContain('\u202e');
  });

  it('finds foreign markup where there is some, so that the checks here mean something', () => {
    expect(foreignMarkup('<p><script>1</script><a href="https://x">2</a> 1 < 2</p>')).toHaveLength(
      4,
    );
  });

  it('keeps names of any kind from becoming markup', () => {
    fc.assert(
      fc.property(anyAssessment, (assessment) => {
        expect(foreignMarkup(renderHtml(assessment, us))).toEqual([]);
      }),
      { seed: 7301, numRuns: 60 },
    );
  });

  it('stays a page that opens with 200 devices, 40 appliances and 2,000 situations', () => {
    const [first] = crowded.worstCase.situations;
    if (first === undefined) throw new Error('the fixture has no situation');
    const situations = Array.from({ length: 2000 }, (_, index) => ({
      ...first,
      label: `${first.label} ${index}`,
    }));
    const html = renderHtml({ ...crowded, worstCase: { ...crowded.worstCase, situations } }, us);
    expect(html.length).toBeLessThan(4_000_000);
    expect(html.includes('more rows; the tables as CSV')).toBe(true);
  });
});
