import { readFile, readdir, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownFolder } from '../test-data/own-folder.js';
import { run } from '../test-data/run-written.js';

// Files that try to freeze the program, to fill its memory, to mislead its reader or to command the terminal.

const head = `evendraft: 1
name: Test House
floorArea: 2180 ft2
airtightness: 310 cfm at 50 Pa
`;

function rows(count: number, row: (index: number) => string): string {
  return Array.from({ length: count }, (_, index) => row(index)).join('');
}

const aliasBomb = `${head}a0: &a0 [x, x, x, x, x, x, x, x, x]
${rows(9, (i) => `a${i + 1}: &a${i + 1} [${Array.from({ length: 9 }, () => `*a${i}`).join(', ')}]\n`)}`;

const latin1 = Buffer.from(
  `${head}exhaust: { "K\u00fcche": { kind: bath fan, flow: 30 cfm } }\n`,
  'latin1',
);

/** Name, content, and what the command has to say of it. */
const refused: readonly (readonly [string, string | Uint8Array, string])[] = [
  ['an alias bomb', aliasBomb, '&a0 reads as a YAML reference'],
  ['an alias of itself', `${head}exhaust: &e { hood: *e }\n`, 'reads as a YAML reference'],
  ['a merge key', `${head}exhaust:\n  <<: { hood: 300 cfm }\n  dryer: 150 cfm\n`, 'merge key'],
  [
    'maps five thousand deep',
    `${head}exhaust: ${'{ a: '.repeat(5000)}1${' }'.repeat(5000)}\n`,
    'nested more than 32 deep',
  ],
  ['lists twenty thousand deep', `${'['.repeat(20_000)}${']'.repeat(20_000)}`, 'nested more than'],
  [
    'twenty thousand fans',
    `${head}exhaust:\n${rows(20_000, (i) => `  fan ${i}: { kind: bath fan, flow: 60 cfm }\n`)}`,
    'more than 50,000 keys and values',
  ],
  [
    'five thousand speeds',
    `${head}exhaust:\n  hood:\n    speeds:\n${rows(5000, (i) => `      s${i}: ${i + 10} cfm\n`)}`,
    '5000 items stand here, and 20 are allowed',
  ],
  [
    'five thousand zones',
    `${head}zones:\n${rows(5000, (i) => `  z${i}: { area: 10 ft2 }\n`)}`,
    '5000 items stand here, and 200 are allowed',
  ],
  ['a comment of three megabytes', `${head}# ${'x'.repeat(3_000_000)}\n`, 'larger than'],
  ['a key that stands twice', `${head}name: Another\n`, 'stands here a second time'],
  ['bytes that are not UTF-8', latin1, 'not UTF-8 text'],
  ['UTF-16', Buffer.from(`\ufeff${head}`, 'utf16le'), 'not UTF-8 text'],
  ['a tag that would run code', `${head}exhaust: !!js/function "() => 1"\n`, 'YAML tag'],
  ['a number beyond all numbers', `${head}exhaust: { hood: 1e400 cfm }\n`, 'too large'],
  [
    'a number of five thousand digits',
    `${head}exhaust: { hood: ${'9'.repeat(5000)} cfm }\n`,
    '200',
  ],
  ['a flow of forty thousand parts', `${head}exhaust: { hood: "${'1 '.repeat(20_000)}" }\n`, '200'],
  ['a key that every object has', `${head}exhaust: { __proto__: 300 cfm }\n`, 'reserved'],
  [
    'a name of a thousand letters',
    `${head}exhaust: { ${'h'.repeat(1000)}: 300 cfm }\n`,
    '60 are allowed',
  ],
];

/** Names in a double-quoted key that would command a terminal or turn its line; none may be a name. */
const commanding = [
  ['an escape', '\\u001b[31mred'],
  ['a one-byte escape', '\\u009b31m'],
  ['a title sequence', '\\u001b]0;title\\u0007'],
  ['a bell', '\\u0007'],
  ['NUL', 'a\\u0000b'],
  ['a line end', 'a\\nb'],
  ['a carriage return', 'a\\rb'],
  ['a tab', 'a\\tb'],
  ['an override of direction', '\\u202ecod.exe'],
  ['an isolate', 'a\\u2066b'],
  ['an Arabic letter mark', 'a\\u061cb'],
  ['a line separator', 'a\\u2028b'],
  ['a space without width', 'a\\u200bb'],
  ['a soft hyphen', 'a\\u00adb'],
  ['a byte order mark', 'a\\ufeffb'],
] as const;

/** What a terminal would obey or a reader not see. */
const unseen = /(?!\n)[\p{Cc}\p{Cf}\u2028\u2029]/u;

const own = ownFolder();

describe('a hostile file', () => {
  it.each(refused)('%s is refused at its place, and nothing is written', async (...row) => {
    const [, content, expected] = row;
    const house = await own.file('house.yaml', content);
    const { code, out, err } = await run('assess', house, '--out', join(own.path, 'reports'));
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/house\.yaml:\d+:\d+: /u);
    expect(err).toContain(expected);
    expect(err).not.toMatch(unseen);
    expect(err.length).toBeLessThan(20_000);
    expect(await readdir(own.path)).toEqual(['house.yaml']);
  });

  it.each(commanding)('%s is no name, and never reaches the terminal', async (_, name) => {
    const key = await own.file(
      'key.yaml',
      `${head}exhaust: { "${name}": { kind: hood, flow: 300 cfm } }\n`,
    );
    const title = await own.file('title.yaml', head.replace('Test House', `"${name}"`));
    for (const house of [key, title]) {
      const { code, out, err } = await run('check', house);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain('cannot be seen');
      expect(err).not.toMatch(unseen);
      const json = await run('check', house, '--json');
      expect(json.code).toBe(2);
      expect(json.out).not.toMatch(unseen);
      expect(JSON.parse(json.out)).toMatchObject({ issues: [{ severity: 'error' }] });
    }
  });

  it.skipIf(process.platform === 'win32')('without an end is refused as too large', async () => {
    const endless = join(own.path, 'house.yaml');
    await symlink('/dev/zero', endless);
    const { code, out, err } = await run('check', endless);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('larger than');
  });
});

describe('a hostile path', () => {
  it.skipIf(process.platform === 'win32')(
    'of a house file is printed without its commands',
    async () => {
      const name = 'a\u001b[2Jb\u202ec.yaml';
      const gone = await run('check', join(own.path, name));
      const wrong = await run('check', await own.file(name, 'nonsense'));
      const good = await run('check', await own.file(name, `${head}exhaust: { hood: 300 cfm }\n`));
      expect([gone.code, wrong.code, good.code]).toEqual([2, 2, 0]);
      for (const { out, err } of [gone, wrong, good]) {
        expect(out + err).not.toMatch(unseen);
        expect(out + err).toContain('a\\u001b[2Jb\\u202ec.yaml');
      }
    },
  );

  it.skipIf(process.platform === 'win32')(
    'of a report that cannot be, with NUL in it, is refused',
    async () => {
      const house = await own.file('house.yaml', `${head}exhaust: { hood: 300 cfm }\n`);
      for (const flag of ['--report', '--out', '--csv']) {
        const { code, out, err } = await run('assess', house, flag, join(own.path, 'a\u0000b'));
        expect([code, out]).toEqual([2, '']);
        expect(err).toContain(flag);
        expect(err).not.toMatch(unseen);
        expect(err).not.toMatch(/\n\s+at /u);
      }
      expect(await readdir(own.path)).toEqual(['house.yaml']);
    },
  );
});

describe('a hostile block to sign', () => {
  it.each([
    ['an alias', 'evendraftSignOff: 1\npermit: &p B-1\naddress: *p\n'],
    ['a key that it does not know', 'evendraftSignOff: 1\n"<script>": x\n'],
    [
      'bytes that are not UTF-8',
      Buffer.from('evendraftSignOff: 1\npermit: K\u00fcche\n', 'latin1'),
    ],
  ])('with %s is refused at its place', async (_, content) => {
    const house = await own.file('house.yaml', `${head}exhaust: { hood: 300 cfm }\n`);
    const sign = await own.file('sign.yaml', content);
    const page = join(own.path, 'page.html');
    const { code, out, err } = await run('assess', house, '--report', page, '--sign-off', sign);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/sign\.yaml:\d+:\d+: /u);
    expect(err).not.toMatch(unseen);
    expect((await readdir(own.path)).sort()).toEqual(['house.yaml', 'sign.yaml']);
  });

  it('puts no control character on the page', async () => {
    const house = await own.file('house.yaml', `${head}exhaust: { hood: 300 cfm }\n`);
    const sign = await own.file(
      'sign.yaml',
      'evendraftSignOff: 1\npermit: "B-\\u001b[31m\\u202e<b>7"\n',
    );
    const page = join(own.path, 'page.html');
    const { code } = await run('assess', house, '--report', page, '--sign-off', sign);
    expect(code).toBe(0);
    const html = await readFile(page, 'utf8');
    expect(html).toContain('B-\ufffd[31m\ufffd&lt;b&gt;7');
    expect(html).not.toMatch(unseen);
  });
});
