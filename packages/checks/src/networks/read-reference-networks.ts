import { readdirSync, readFileSync } from 'node:fs';
import type { ReferenceNetwork } from './reference-network.js';

const root = new URL('../../networks/', import.meta.url);

/**
 * Reads the reference networks of one folder of `networks`.
 *
 * @param folder - `solved`, `hard-for-others`, `several-answers`, `verdicts` or `large`
 * @returns its networks in the order of their file names
 */
export function readReferenceNetworks(folder: string): ReferenceNetwork[] {
  const directory = new URL(`${folder}/`, root);
  return readdirSync(directory)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => JSON.parse(readFileSync(new URL(name, directory), 'utf8')) as ReferenceNetwork);
}
