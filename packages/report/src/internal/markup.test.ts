import { describe, expect, it } from 'vitest';
import { escapeMarkup, markup } from './markup.js';

describe('markup', () => {
  it('escapes text and keeps finished markup and lists of it', () => {
    const items = ['<b>', '"&\''].map((text) => markup`<li>${text}</li>`);
    expect(markup`<ul title="${'"'}">${items}${undefined}${3}</ul>`.finished).toBe(
      '<ul title="&quot;"><li>&lt;b&gt;</li><li>&quot;&amp;&#39;</li>3</ul>',
    );
  });

  it('does not trust an object that only looks finished to the eye', () => {
    expect(markup`${JSON.stringify({ finished: '<b>' })}`.finished).not.toContain('<b>');
  });
});

describe('escapeMarkup', () => {
  it('leaves no control character, direction mark or code point that XML forbids', () => {
    expect(escapeMarkup('a\u0000\u202e\ud800\ufffe\nb')).toBe('a\ufffd\ufffd\ufffd\ufffd b');
  });
});
