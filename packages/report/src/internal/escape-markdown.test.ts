import { describe, expect, it } from 'vitest';
import { escapeMarkdown } from './escape-markdown.js';

describe('escapeMarkdown', () => {
  it.each([
    ['hood | dryer', 'hood \\| dryer'],
    ['<script>alert(1)</script>', '&lt;script&gt;alert(1)&lt;/script&gt;'],
    ['a &lt; b', 'a &amp;lt; b'],
    ['`rm`', '\\`rm\\`'],
    ['**bold** _it_', '\\*\\*bold\\*\\* \\_it\\_'],
    ['[x](javascript:alert(1))', '\\[x\\](javascript:alert(1))'],
    ['![x](y)', '!\\[x\\](y)'],
    ['~~gone~~ $x$ ^1', '\\~\\~gone\\~\\~ \\$x\\$ \\^1'],
    ['# title #', '\\# title \\#'],
    ['- item', '\\- item'],
    ['---', '\\---'],
    ['+ item', '\\+ item'],
    ['12. item', '12\\. item'],
    ['a\\', 'a\\\\'],
    ['one\n\n# two', 'one \\# two'],
    ['https://example.org www.example.org', 'https:&#47;&#47;example.org www&#46;example.org'],
    ['me@example.org', 'me&#64;example.org'],
  ])('shows %j letter for letter', (text, escaped) => {
    expect(escapeMarkdown(text)).toBe(escaped);
  });

  it.each(['\u221212.3', '0.65', '12.3 Pa below outdoors', 'hood high + dryer; door shut'])(
    'leaves %j as it is, so that the source can be read too',
    (text) => {
      expect(escapeMarkdown(text)).toBe(text);
    },
  );
});
