import { parseHouse } from '@evendraft/house';
import { expect, test } from 'vitest';
import { notModelled } from './not-modelled.js';

function said(parts: object): string {
  const read = parseHouse({
    evendraft: 1,
    name: 'Synthetic, made for this project',
    floorArea: '150 m2',
    airtightness: '100 L/s at 50 Pa',
    ...parts,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return notModelled(read.house).join('\n');
}

test('says whose flows are held against any pressure', () => {
  const exhaust = (more: object) => ({ exhaust: { hood: { flow: '200 L/s', ...more } } });
  expect(said(exhaust({ constantFlow: 'yes' }))).toContain('The flows of hood are held against');
  expect(said(exhaust({ constantFlow: { upTo: '150 Pa' } }))).not.toContain('are held against');
  expect(said({ ventilators: { hrv: '60 L/s' } })).toContain('The flows of hrv are held against');
  expect(said(exhaust({}))).not.toContain('are held against');
});
