import { inflateSync } from 'node:zlib';

/**
 * The text of each page of a PDF as a browser prints it, in the order in which it is drawn.
 *
 * Reads only what browsers write: plain objects, deflated streams, fonts with a table to Unicode.
 *
 * @param pdf - the whole file
 * @returns one text a page
 */
export function pdfTexts(pdf: Uint8Array): readonly string[] {
  const objects = objectsOf(Buffer.from(pdf).toString('latin1'));
  const root = [...objects.values()].find(
    ({ dictionary }) => /\/Type\s*\/Pages\b/u.test(dictionary) && !/\/Parent\b/u.test(dictionary),
  );
  if (root === undefined) throw new Error('the PDF has no pages');
  return pagesUnder(root, objects).map((page) => {
    const resources = resolved(page.dictionary, 'Resources', objects) ?? page.dictionary;
    return referencesAfter(page.dictionary, 'Contents')
      .map((id) => textOf(objects.get(id)?.stream ?? '', { resources, objects, depth: 0 }))
      .join('');
  });
}

interface PdfObject {
  readonly dictionary: string;
  /** Inflated; empty for an object without a stream. */
  readonly stream: string;
}

type PdfObjects = ReadonlyMap<number, PdfObject>;

function objectsOf(file: string): PdfObjects {
  const objects = new Map<number, PdfObject>();
  const start = /(\d+) 0 obj\b/gu;
  for (let match = start.exec(file); match !== null; match = start.exec(file)) {
    const from = start.lastIndex;
    const end = file.indexOf('endobj', from);
    const streamAt = file.indexOf('stream', from);
    const id = Number(match[1]);
    if (streamAt < 0 || streamAt > end) {
      objects.set(id, { dictionary: file.slice(from, end), stream: '' });
      start.lastIndex = end;
      continue;
    }
    const dictionary = file.slice(from, streamAt);
    const begin = file.indexOf('\n', streamAt) + 1;
    const length = Number(/\/Length (\d+)(?! 0 R)/u.exec(dictionary)?.[1] ?? 0);
    const raw = Buffer.from(file.slice(begin, begin + length), 'latin1');
    const packed = dictionary.includes('/FlateDecode') && !dictionary.includes('/Image');
    objects.set(id, { dictionary, stream: packed ? inflateSync(raw).toString('latin1') : '' });
    start.lastIndex = begin + length;
  }
  return objects;
}

function pagesUnder(node: PdfObject, objects: PdfObjects): readonly PdfObject[] {
  if (!/\/Type\s*\/Pages\b/u.test(node.dictionary)) return [node];
  return referencesAfter(node.dictionary, 'Kids').flatMap((id) => {
    const kid = objects.get(id);
    return kid === undefined ? [] : pagesUnder(kid, objects);
  });
}

/** Numbers of the objects that a key refers to, one or a list. */
function referencesAfter(dictionary: string, key: string): readonly number[] {
  const found = new RegExp(`/${key}\\s*(\\[[^\\]]*\\]|\\d+ 0 R)`, 'u').exec(dictionary)?.[1] ?? '';
  return [...found.matchAll(/(\d+) 0 R/gu)].map((match) => Number(match[1]));
}

/** A dictionary that stands elsewhere; nothing where it stands in place. */
function resolved(dictionary: string, key: string, objects: PdfObjects): string | undefined {
  const [id] = new RegExp(`/${key}\\s*\\d+ 0 R`, 'u').test(dictionary)
    ? referencesAfter(dictionary, key)
    : [];
  return id === undefined ? undefined : objects.get(id)?.dictionary;
}

interface TextPlace {
  readonly resources: string;
  readonly objects: PdfObjects;
  readonly depth: number;
}

/** Fonts, strings and forms, in the order in which they are drawn. */
const drawn =
  /\/([\w.+-]+)\s+[\d.-]+\s+Tf|\/([\w.+-]+)\s+Do\b|<([0-9A-Fa-f\s]*)>|\((?:\\.|[^\\)])*\)|\bT[Jj]\b/gu;

function textOf(stream: string, place: TextPlace): string {
  const { resources, objects, depth } = place;
  let codes: ReadonlyMap<number, string> = new Map();
  let text = '';
  for (const [token, font, form, hex] of stream.matchAll(drawn)) {
    if (font !== undefined) codes = unicodeOf(namedObject(resources, font), objects);
    else if (form !== undefined) {
      const object = namedObject(resources, form);
      const inside = object === undefined ? undefined : objects.get(object);
      if (inside === undefined || depth > 4) continue;
      const own = resolved(inside.dictionary, 'Resources', objects) ?? inside.dictionary;
      text += textOf(inside.stream, { resources: own, objects, depth: depth + 1 });
    } else if (hex !== undefined) {
      for (const glyph of hex.replace(/\s/gu, '').match(/.{4}/gu) ?? []) {
        text += codes.get(Number.parseInt(glyph, 16)) ?? '';
      }
    } else if (token.startsWith('T')) {
      text += '\u200b';
    }
  }
  return text;
}

function namedObject(resources: string, name: string): number | undefined {
  const escaped = name.replace(/[.+-]/gu, '\\$&');
  const id = new RegExp(`/${escaped}\\s+(\\d+) 0 R`, 'u').exec(resources)?.[1];
  return id === undefined ? undefined : Number(id);
}

/** What each glyph of a font means. */
function unicodeOf(font: number | undefined, objects: PdfObjects): ReadonlyMap<number, string> {
  const codes = new Map<number, string>();
  const dictionary = font === undefined ? '' : (objects.get(font)?.dictionary ?? '');
  const [table] = referencesAfter(dictionary, 'ToUnicode');
  const map = table === undefined ? '' : (objects.get(table)?.stream ?? '');
  const number = (hex = '0'): number => Number.parseInt(hex, 16);
  for (const [, part = ''] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/gu)) {
    for (const [, code, meaning] of part.matchAll(/<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>/gu)) {
      codes.set(number(code), utf16(meaning));
    }
  }
  for (const [, part = ''] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/gu)) {
    for (const [, from, to, first] of part.matchAll(
      /<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>/gu,
    )) {
      for (let code = number(from); code <= number(to); code += 1) {
        codes.set(code, String.fromCodePoint(number(first) + code - number(from)));
      }
    }
  }
  return codes;
}

function utf16(hex = ''): string {
  const units = hex.match(/.{4}/gu) ?? [];
  return String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16)));
}
