import { describe, expect, it } from 'vitest';
import { escapeMarkup, markup } from './markup.js';

describe('markup', () => {
  it('escapes text and keeps finished markup and lists of it', () => {
    const items = ['<b>', '"&\''].map((text) => markup`<li>${text}</li>`);
    expect(markup`<ul title="${'"'}">${items}${undefined}${3}</ul>`.finished).toBe(
      '<ul title="&quot;"><li>&lt;b&gt;</li><li>&quot;&amp;&#39;</li>3</ul>',
    );
  });

  it('keeps a number in its place behind a name that runs to the left', () => {
    const name = 'غرفة الغسيل';
    expect(markup`<p>${`${name} 108.2 Pa`}</p>`.finished).toBe(
      `<p><bdi>${name}</bdi> 108.2\u00a0Pa</p>`,
    );
    // What holds text alone, and an attribute, takes no element.
    expect(markup`<text x="${'1'}">${name}</text>`.finished).toBe(`<text x="1">${name}</text>`);
    expect(markup`<a title="${name}">${'b'}</a>`.finished).toBe(`<a title="${name}">b</a>`);
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
