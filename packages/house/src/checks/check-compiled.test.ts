import { describe, expect, it } from 'vitest';
import { parseHouse } from '../parse-house.js';

const named = (count: number, name: string, of: unknown) =>
  Object.fromEntries(Array.from({ length: count }, (_, index) => [`${name} ${index + 1}`, of]));
const fans = (count: number) => named(count, 'bath', { kind: 'bath fan', flow: '50 cfm' });
const file = (given: object) => ({
  evendraft: 1,
  name: 'Test Row 4',
  floorArea: '3000 ft2',
  airtightness: '900 cfm at 50 Pa',
  ...given,
});

describe('how many situations a house may have', () => {
  it('leaves out exhaust that nothing follows: twenty fans, over a million states, are read', () => {
    expect(parseHouse(file({ exhaust: fans(20) }))).toMatchObject({ ok: true });
  });

  it('counts what cannot be ordered: eighteen dampers that each follow a fan', () => {
    const makeUp = Object.fromEntries(
      Object.keys(fans(18)).map((driver, index) => [
        `inlet ${index + 1}`,
        { area: '10 in2', opensWith: driver },
      ]),
    );
    const read = parseHouse(file({ exhaust: fans(18), makeUp }));
    expect(read).toMatchObject({
      ok: false,
      issues: [{ code: 'states.too-many', path: ['exhaust'] }],
    });
    if (read.ok) throw new Error('read without an issue');
    expect(read.issues[0]?.parameters).toMatchObject({ allowed: 200_000 });
  });

  it('names the section that makes most of them', () => {
    const room = { kind: 'living', area: '100 ft2' };
    const zones = { main: { ...room, area: '3000 ft2' }, ...named(18, 'room', room) };
    const doors = Object.fromEntries(
      Array.from({ length: 18 }, (_, index) => [
        `door ${index + 1}`,
        { between: ['main', `room ${index + 1}`] },
      ]),
    );
    const read = parseHouse(file({ floorArea: '4800 ft2', zones, doors, exhaust: fans(1) }));
    if (read.ok) throw new Error('read without an issue');
    expect(read.issues.map(({ code, path }) => [code, path])).toContainEqual([
      'states.too-many',
      ['doors'],
    ]);
  });
});
