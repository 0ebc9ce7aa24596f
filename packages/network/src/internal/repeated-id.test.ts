import { expect, it } from 'vitest';
import { mayRepeatAnId } from './repeated-id.js';

const items = (ids: readonly unknown[]): { readonly id: string }[] =>
  ids.map((id) => ({ id: id as string }));
const many = Array.from({ length: 5000 }, (_, k) => `room ${k} / leak ${k % 7}`);

it('says no for thousands of ids that differ', () => {
  expect(mayRepeatAnId(items([]))).toBe(false);
  expect(mayRepeatAnId(items(['']))).toBe(false);
  expect(mayRepeatAnId(items(many))).toBe(false);
});

it.each([0, 1, 2499, 4999])('finds the id at place %i again at the end', (place) => {
  expect(mayRepeatAnId(items([...many, many[place]]))).toBe(true);
});

it('does not say no where an id is no text', () => {
  expect(mayRepeatAnId(items(['a', undefined, 'b']))).toBe(true);
  expect(mayRepeatAnId(items([1, 2]))).toBe(true);
});
