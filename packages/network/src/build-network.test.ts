import { expect, it } from 'vitest';
import { buildNetwork } from './build-network.js';
import type { NetworkDescription } from './network-description.js';
import type { NetworkIssueCode } from './network-issue.js';

const air = { temperatureC: 20, densityKgPerM3: 1.2 };
const law = { kind: 'powerLaw', coefficientM3PerSPaN: 0.01, exponent: 0.65 } as const;
const link = { id: 'l', origin: 'l', from: 'z', to: 'o', fromHeightM: 0, toHeightM: 0, law };
const sound: NetworkDescription = {
  outdoorAir: air,
  zones: [{ id: 'z', origin: 'zones.z', heightM: 0, air }],
  boundaries: [{ id: 'o', origin: 'o', heightM: 0, pressurePa: 0, air }],
  links: [link],
};

it('builds a sound description and keeps places by id', () => {
  const result = buildNetwork(sound);
  expect(result.status).toBe('built');
  if (result.status === 'built') expect(result.network.linkIndex.get('l')).toBe(0);
});

it.each<[NetworkIssueCode, NetworkDescription]>([
  ['NotANetwork', null as never],
  ['NotANetwork', { ...sound, links: [3] } as never],
  ['NetworkEmpty', { ...sound, zones: [], links: [] }],
  ['DuplicateId', { ...sound, links: [link, link] }],
  [
    'DuplicateId',
    { ...sound, boundaries: [...sound.boundaries, { ...sound.boundaries[0]!, id: 'z' }] },
  ],
  ['UnknownEnd', { ...sound, links: [{ ...link, to: 'nowhere' }] }],
  ['LinkToItself', { ...sound, links: [{ ...link, to: 'z' }] }],
  ['ValueOutOfRange', { ...sound, outdoorAir: { ...air, densityKgPerM3: NaN } }],
  ['ValueOutOfRange', { ...sound, links: [{ ...link, toHeightM: Infinity, columnAir: air }] }],
  ['ColumnAirMissing', { ...sound, links: [{ ...link, toHeightM: 3 }] }],
  ['LawParameterOutOfRange', { ...sound, links: [{ ...link, law: { ...law, exponent: 0.4 } }] }],
  [
    'LawParameterOutOfRange',
    { ...sound, links: [{ ...link, law: { ...law, coefficientM3PerSPaN: 0 } }] },
  ],
  ['UnknownLaw', { ...sound, links: [{ ...link, law: { kind: 'toString' } as never }] }],
  ['FixedFlowNeedsOneFlow', { ...sound, links: [{ ...link, law: { kind: 'fixedFlow' } }] }],
])('rejects with %s', (code, description) => {
  const result = buildNetwork(description);
  expect(result.status).toBe('rejected');
  if (result.status === 'rejected')
    expect(result.issues.map((issue) => issue.code)).toContain(code);
});

it('names more than a million items as too many', () => {
  const zones = new Array(1_000_001).fill(sound.zones[0]);
  const result = buildNetwork({ ...sound, zones });
  expect(result.status === 'rejected' && result.issues[0]!.code).toBe('NetworkTooLarge');
});

it('reports all issues at once', () => {
  const result = buildNetwork({
    ...sound,
    links: [
      { ...link, from: 'x', to: 'y', law: { ...law, exponent: 2, coefficientM3PerSPaN: -1 } },
    ],
  });
  expect(result.status === 'rejected' && result.issues.length).toBe(4);
});
