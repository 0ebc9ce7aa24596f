import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type * as z from 'zod';
import { expectedSchema, expectedValues, type ExpectedValue } from './expected-values.js';

/** Where the cases lie: a folder a family, and in it a folder a case. */
export const publishedFolder = fileURLToPath(new URL('../../published/', import.meta.url));

/** One case: what goes in, and what must come out. */
export interface PublishedCase<Input> {
  /** Name of its folder. */
  readonly name: string;
  readonly input: Input;
  readonly expected: readonly ExpectedValue[];
}

/** Names of the folders in a folder, in order. */
export function foldersIn(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

/**
 * Reads all cases of a family.
 *
 * @param family - name of the family's folder
 * @param inputSchema - shape of the input of its cases
 * @returns every case of the folder
 */
export function publishedCases<Schema extends z.ZodType>(
  family: string,
  inputSchema: Schema,
): readonly PublishedCase<z.infer<Schema>>[] {
  const folder = join(publishedFolder, family);
  return foldersIn(folder).map((name) => ({
    name,
    input: inputSchema.parse(readJson(join(folder, name, 'input.json'))),
    expected: expectedValues(expectedSchema.parse(readJson(join(folder, name, 'expected.json')))),
  }));
}

/** Reads a JSON file. */
export function readJson(path: string): unknown {
  return JSON.parse(readFileSync(path, 'utf8'));
}
