import { readdirSync, readFileSync } from 'node:fs';
import { formatIssue, textIssues, type Issue } from '@evendraft/text';
import { describe, expect, it } from 'vitest';
import { houseIssues, type HouseIssueCode } from './house-issues.js';
import { parseHouse } from './parse-house.js';
import { readHouse } from './read-house.js';

const fixtures = new URL('../fixtures/', import.meta.url);

function read(folder: string, file: string) {
  return readHouse(readFileSync(new URL(`${folder}/${file}`, fixtures)), { file });
}

function files(folder: string): readonly string[] {
  return readdirSync(new URL(`${folder}/`, fixtures)).filter((file) => !file.endsWith('.txt'));
}

function golden(folder: string, file: string): string {
  const name = file.replace(/\.\w+$/, '.issues.txt');
  return readFileSync(new URL(`${folder}/${name}`, fixtures), 'utf8');
}

function lines(issues: readonly Issue[]): string {
  return issues.map((issue) => `${formatIssue(issue, houseIssues)}\n`).join('');
}

describe('a bad house file', () => {
  it.each(files('bad'))('%s is refused with every issue, its place and its remedy', (file) => {
    const result = read('bad', file);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(lines(result.issues)).toBe(golden('bad', file));
    for (const issue of result.issues) {
      expect(issue.file).toBe(file);
      expect(issue.position).toBeDefined();
    }
  });
});

describe('an unusual house file', () => {
  it.each(files('unusual'))('%s is read, with warnings', (file) => {
    const result = read('unusual', file);
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    expect(lines(result.warnings)).toBe(golden('unusual', file));
  });
});

describe('a good house file', () => {
  it.each(files('good'))('%s is read without a warning', (file) => {
    const result = read('good', file);
    expect(result.ok ? lines(result.warnings) : lines(result.issues)).toBe('');
  });

  it('gives the same house as YAML and as JSON, but for the digest of its text', () => {
    const yaml = read('good', 'ten-line-house.yaml');
    const json = read('good', 'ten-line-house.json');
    expect(yaml.ok && json.ok).toBe(true);
    if (!yaml.ok || !json.ok) return;
    expect(json.house.digest).not.toBe(yaml.house.digest);
    expect({ ...json.house, digest: '' }).toEqual({ ...yaml.house, digest: '' });
  });

  it('carries the SHA-256 of its bytes', () => {
    const result = read('good', 'ten-line-house.json');
    // Computed with sha256sum.
    expect(result.ok && result.house.digest).toBe(
      'sha256:2fe3f0f0e93ca43d1c991664cb21cdb4aadc7df3786246326161cd861ed6e91a',
    );
  });
});

describe('the catalogue of issues', () => {
  /** Codes that no file of the fixtures produces, each with its reason. */
  const elsewhere: Readonly<Partial<Record<HouseIssueCode, string>>> = {
    'house.empty': 'a text without data is refused by the reader of texts; data are tested below',
    'airtightness.flow-unknown':
      'cannot come from the laws that a file gives; forced-air.test.ts makes one',
    'house.not-a-network': 'cannot come from a file that was read; compile-house.test.ts makes one',
  };

  it('has every code produced by a fixture', () => {
    const produced = new Set(
      ['bad', 'unusual'].flatMap((folder) =>
        files(folder).flatMap((file) => {
          const result = read(folder, file);
          return (result.ok ? result.warnings : result.issues).map(({ code }) => code);
        }),
      ),
    );
    const own = [...houseIssues.keys()].filter((code) => !textIssues.has(code));
    expect(own.filter((code) => !produced.has(code) && !(code in elsewhere))).toEqual([]);
  });

  it('marks exactly the warnings as warnings', () => {
    for (const folder of ['bad', 'unusual']) {
      for (const file of files(folder)) {
        const result = read(folder, file);
        for (const { code, severity } of result.ok ? result.warnings : result.issues) {
          expect([code, severity]).toEqual([code, houseIssues.get(code)?.severity]);
        }
      }
    }
  });

  it('says that data without a key are an empty house', () => {
    for (const nothing of [undefined, null, {}]) {
      const result = parseHouse(nothing);
      expect(result.ok ? [] : result.issues.map(({ code }) => code)).toEqual(['house.empty']);
    }
  });
});
