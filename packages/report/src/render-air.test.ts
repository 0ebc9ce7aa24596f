import { describe, expect, it } from 'vitest';
import { everyPart } from '../fixtures/invented-results.js';
import { oneZone } from '../fixtures/invented-assessments.js';
import type { Assessment } from './assessment.js';
import { renderCsv } from './render-csv.js';
import { renderHtml } from './render-html.js';
import { renderMarkdown } from './render-markdown.js';
import { renderTerminal } from './render-terminal.js';

const terminal = (assessment: Assessment, system: 'us' | 'si') =>
  renderTerminal(assessment, { system, width: 100 })
    .replace(/\s+/gu, ' ')
    .replaceAll('\u2212', '-');

describe('the air beside the appliances', () => {
  it('is told in a terminal in the units of the reader: how far, what fails, dryers', () => {
    const us = terminal(everyPart, 'us');
    expect(us).toContain(
      'water heater, airtightness: reaches its limit at 2400 cfm at 50 Pa, with hood high + dryer, cold; a tighter house is beyond it. Some flows farther inside fail again.',
    );
    expect(us).toContain('boiler, airtightness: within its limit down to 200 cfm at 50 Pa');
    expect(us).toContain('Not every situation is covered by proof.');
    expect(us).toContain('stove, airtightness: beyond its limit at every airtightness from 200');
    expect(us).toContain('each at its highest speed: dryer + bath fan; nothing.');
    expect(us).toContain('Smallest sets that break a limit: hood.');
    expect(us).toContain('beyond the limit: Suction on the ground, basement.');
    expect(us).toContain('pressure: -9.3 Pa (lowest)');
    expect(us).toMatch(/make-up damper stuck shut -48\.3 0\.4/u);
    // 120 cfm are 56.6 L/s, 2 lbf are 8.9 N.
    expect(us).toMatch(/as it is 120 -48\.3 2\.0/u);
    const si = terminal(everyPart, 'si');
    expect(si).toContain('reaches its limit at 1133 L/s at 50 Pa');
    expect(si).toMatch(/as it is 57 -48\.3 9/u);
  });

  it('stands with sources in the full report, on the page and in tables', () => {
    const markdown = renderMarkdown(everyPart, { system: 'us' });
    expect(markdown).toContain('## How far the house may go without make-up air');
    expect(markdown).toContain('## What closed make-up dampers add to the airtightness test');
    expect(markdown).toContain('| make-up | AMCA 1 | 50.2 | 2 | 0.3 |');
    expect(markdown).toContain('Not solved: dryer, closet, door shut, no opening.');
    const html = renderHtml(everyPart, { system: 'us' });
    expect(html).toContain('How far, what fails, guidance</h2>');
    expect(html).toContain('id="table-failures"');
    const files = renderCsv(everyPart, { system: 'si' });
    const names = files.map(({ name }) => name);
    for (const id of ['how-far', 'air-guidance', 'failures', 'closed-dampers', 'dryers']) {
      expect(names).toContain(`${id}.csv`);
    }
  });

  it('says why it was not solved, and nothing where it was not asked for', () => {
    const why = 'It takes long: ask for it.';
    const unsolved: Assessment = { ...oneZone, air: { status: 'not solved', why } };
    expect(terminal(unsolved, 'us')).toContain(why);
    expect(renderMarkdown(unsolved, { system: 'us' })).toContain(why);
    expect(renderHtml(unsolved, { system: 'us' })).toContain(why);
    expect(terminal(oneZone, 'us')).not.toContain('The air beside');
    expect(renderMarkdown(oneZone, { system: 'us' })).not.toContain('The air beside');
  });
});
