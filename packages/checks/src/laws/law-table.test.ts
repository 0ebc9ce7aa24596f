import { readFileSync } from 'node:fs';
import { flowLaws } from '@evendraft/airflow';
import { expect, it } from 'vitest';

it('the README lists every law with its equation, and no other', () => {
  const readme = readFileSync(new URL('../../../../README.md', import.meta.url), 'utf8');
  const section = readme.slice(
    readme.indexOf('## The laws'),
    readme.indexOf('## What it does not'),
  );
  const rows = [...section.matchAll(/^\| `(\w+)` +\| `([^`]+)`/gm)].map(([, kind, equation]) => [
    kind,
    equation?.replaceAll('\\|', '|'),
  ]);
  expect(rows).toEqual(Object.entries(flowLaws).map(([kind, law]) => [kind, law.equation]));
});
