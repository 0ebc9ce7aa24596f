import { describe, expect, it } from 'vitest';

import type { Issue, IssuePath } from './issue.js';
import { readDocument } from './read-document.js';
import { withPosition } from './with-position.js';

describe('withPosition', () => {
  const result = readDocument('name: x\nexhaust:\n  hood: { high: 900 }\n  list: [1, 2]\n', {
    file: 'house.yaml',
  });
  const place = (path: IssuePath, part?: 'key' | 'value'): string => {
    if (!result.ok) throw new Error('The text is read.');
    const issue: Issue = { code: 'x', severity: 'error', path, parameters: {} };
    const { file, position } = withPosition(issue, result.document, part);
    return `${file}:${position?.line}:${position?.column}`;
  };

  it('places an issue at its value', () => {
    expect(place(['exhaust', 'hood', 'high'])).toBe('house.yaml:3:17');
  });

  it('places an issue with a key at the key', () => {
    expect(place(['exhaust', 'hood', 'high'], 'key')).toBe('house.yaml:3:11');
  });

  it('places what is missing at the key of its nearest parent', () => {
    expect(place(['exhaust', 'hood', 'low'])).toBe('house.yaml:3:3');
    expect(place(['exhaust', 'list', 7, 'area'])).toBe('house.yaml:4:3');
    expect(place(['airtightness', 'at'])).toBe('house.yaml:1:1');
  });
});
