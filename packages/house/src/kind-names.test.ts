import { describe, expect, it } from 'vitest';
import { plainWord } from './file/schema/word.js';
import { distinctKinds, kindNames } from './kind-names.js';

describe.each(Object.entries(kindNames))('the kind names of %s', (_, table) => {
  it('have every kind under its own name', () => {
    const names: Readonly<Record<string, string>> = table;
    for (const kind of distinctKinds<string>(table)) expect(names[kind]).toBe(kind);
  });

  it('are all different when case, hyphens and spaces are left aside', () => {
    const plain = Object.keys(table).map(plainWord);
    expect(new Set(plain).size).toBe(plain.length);
  });
});
