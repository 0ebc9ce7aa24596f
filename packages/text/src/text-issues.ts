import { defineIssues, type IssueCatalogue, type IssueCatalogueEntry } from './issue-catalogue.js';
import type { IssueParameters } from './issue.js';
import type { TextIssueCode } from './text-issue-code.js';

type Words = Omit<IssueCatalogueEntry, 'code' | 'severity'> & {
  readonly severity?: 'warning';
};

const words: Readonly<Record<TextIssueCode, Words>> = {
  'text.too-large': {
    message: ({ maxBytes }) => `the file is larger than ${number(maxBytes)} bytes`,
    remedy: 'Check that this is the right file; a house file has a few kilobytes.',
  },
  'text.too-deep': {
    message: ({ maxDepth }) => `lists and maps are nested more than ${number(maxDepth)} deep`,
    remedy: 'Remove levels of nesting; often a bracket that was never closed causes this.',
  },
  'text.too-many-values': {
    message: ({ maxNodes }) => `there are more than ${number(maxNodes)} keys and values`,
    remedy: 'Check that this is the right file, or split it.',
  },
  'text.too-long-value': {
    message: ({ maxScalarLength }) =>
      `a value is longer than ${number(maxScalarLength)} characters`,
    remedy: 'Shorten the value; often a quote that was never closed causes this.',
  },
  'text.not-utf-8': {
    message: () => 'the file is not UTF-8 text from here on',
    remedy: 'Save the file as UTF-8; a spreadsheet, a picture or a PDF cannot be read.',
  },
  'text.control-character': {
    message: ({ character }) => `the character ${text(character)} has no place in a text`,
    remedy: 'Remove the character; if there are many, the file is not a text file.',
  },
  'text.more-issues': {
    message: ({ count }) => `at least ${number(count)} more issues follow from here on`,
    remedy: 'Mend the issues that are listed and read the file again.',
  },
  'text.empty': {
    message: () => 'the file holds nothing but space and comments',
    remedy: 'Write at least the keys that are required.',
  },
  'text.bare-value': {
    message: ({ found }) => `found only the value ${quoted(found)}, expected keys and values`,
    hint: () => 'Write a key, a colon, a space and a value on each line: "name: Alder Row 14".',
    remedy: 'Write `key: value`, with a space after the colon.',
  },
  'text.tag': {
    message: ({ found }) => `${text(found)} reads as a YAML tag, and tags are not accepted`,
    hint: () => 'If it is part of a text, put the text in quotes.',
    remedy: 'Remove the tag, or quote a text that begins with `!`.',
  },
  'text.anchor': {
    message: ({ found }) => `${text(found)} reads as a YAML reference, and those are not accepted`,
    hint: () => 'Write the value out; if it is part of a text, put the text in quotes.',
    remedy: 'Repeat the value where it is needed, or quote a text that begins with `&` or `*`.',
  },
  'text.merge-key': {
    message: () => 'the merge key << is not accepted',
    hint: () => 'Write the keys out.',
    remedy: 'Repeat the keys where they are needed.',
  },
  'text.several-documents': {
    message: () => 'a second document begins here, and a file holds one',
    hint: () => 'Remove the line ---, or put what follows in a file of its own.',
    remedy: 'Keep one document in a file; put further ones in files of their own.',
  },
  'text.directive': {
    message: ({ found }) => `the directive ${quoted(found)} is not accepted`,
    remedy: 'Remove the line that begins with `%`, or quote a text that begins so.',
  },
  'text.duplicate-key': {
    message: ({ key, firstLine }) =>
      `the key ${quoted(key)} stands here a second time; the first is on line ${text(firstLine)}`,
    hint: () => 'Give each its own name, or remove one.',
    remedy: 'Use each key once in a map; two devices of a kind need two names.',
  },
  'text.reserved-key': {
    message: ({ key }) => `the key ${quoted(key)} is reserved by the language this is written in`,
    hint: () => 'Choose another name.',
    remedy: 'Rename the key; `__proto__`, `constructor` and `prototype` cannot be used.',
  },
  'text.empty-key': {
    message: () => 'there is a value without a key',
    hint: () => 'Write the key before the colon.',
    remedy: 'Write a name before the colon.',
  },
  'text.complex-key': {
    message: () => 'a list or a map cannot be a key',
    hint: () => 'If the key begins with [, { or ?, put it in quotes.',
    remedy: 'Use a word or a quoted text as the key.',
  },
  'text.key-too-long': {
    message: () => 'the colon comes more than 1024 characters after the start of its key',
    remedy: 'Shorten the key; often a quote or a colon is missing before.',
  },
  'text.key-spans-lines': {
    message: () => 'a key spans several lines',
    hint: () => 'Often the line before lacks its colon, or the indent is off.',
    remedy: 'Write the key and its colon on one line; check the line before it.',
  },
  'text.number-form': {
    message: ({ found }) =>
      `found ${quoted(found)}, which some readers take as octal, hexadecimal or binary`,
    hint: ({ plain }) =>
      plain === undefined
        ? 'Write the number in decimal, or put it in quotes if it is text.'
        : `Write ${text(plain)}, or put it in quotes if it is text.`,
    remedy: 'Write numbers in decimal without leading zeros, and put texts of digits in quotes.',
  },
  'text.not-finite': {
    message: ({ found }) => `found ${quoted(found)}, expected a finite number`,
    hint: () => 'If it is text, put it in quotes.',
    remedy: 'Write a finite number, or leave the key out if there is no value.',
  },
  'text.inexact-number': {
    severity: 'warning',
    message: ({ found, read }) => `${text(found)} has too many digits and is read as ${text(read)}`,
    hint: () => 'If it is text, such as a serial number, put it in quotes.',
    remedy: 'Put long identifiers in quotes; shorten numbers to at most 15 digits.',
  },
  'text.number-split-by-comma': {
    message: ({ found }) => `the comma in ${quoted(found)} ends the value inside { } and [ ]`,
    hint: ({ found, joined }) => `Write "${text(found)}" in quotes, or ${text(joined)}.`,
    remedy: 'Inside { } and [ ], quote a number with thousands commas or leave the commas out.',
  },
  'text.space-after-colon': {
    message: ({ found }) => `${quoted(found)} has no space after its colon, so it is one word`,
    hint: ({ mended }) => `Write ${text(mended)}, or put it in quotes if it is text.`,
    remedy: 'Write a space after the colon between key and value.',
  },
  'text.colon-in-value': {
    message: () => 'a second colon stands on this line',
    hint: () => 'Put a value that holds a colon in quotes, or begin a new line for a new key.',
    remedy: 'Put one key on a line; quote a value that holds a colon and a space.',
  },
  'text.tab': {
    message: () => 'a tab is used to indent',
    hint: () => 'Use spaces.',
    remedy: 'Indent with spaces; most editors can convert tabs.',
  },
  'text.indent': {
    message: () => 'the indent fits none of the lines above',
    hint: () => 'Let keys of the same map begin in the same column, and nested ones further right.',
    remedy: 'Align keys of the same map; indent what belongs to a key further than the key.',
  },
  'text.unclosed': {
    message: ({ opened }) => `the opening ${text(opened)} is not closed`,
    hint: ({ expected }) => `Write the closing ${text(expected)} where it ends.`,
    remedy:
      'Close every quote, bracket and brace; a closing one stands further right than its key.',
  },
  'text.comma-missing': {
    message: () => 'a comma is missing between two items',
    remedy: 'Separate the items in { } and [ ] by commas.',
  },
  'text.comma-unexpected': {
    message: () => 'a comma has nothing before it',
    hint: () => 'Remove it, or write what is missing.',
    remedy: 'Remove the comma, or write the item that it should follow.',
  },
  'text.colon-missing': {
    message: ({ found }) => `${quoted(found)} stands among keys and has no colon`,
    hint: () =>
      'Write a key, a colon, a space and a value, or indent it to continue the line before.',
    remedy: 'Write `key: value`, with a space after the colon.',
  },
  'text.reserved-start': {
    message: ({ found }) => `a value cannot begin with ${text(found)}`,
    hint: () => 'Put the value in quotes.',
    remedy: 'Quote a value that begins with a character that YAML reserves.',
  },
  'text.escape': {
    message: ({ found }) => `${text(found)} is no escape sequence`,
    hint: () => 'Write two backslashes for one.',
    remedy: 'In double quotes write `\\\\` for a backslash, or use single quotes in YAML.',
  },
  'text.comment-space': {
    message: () =>
      'a # stands directly after a value, so it is unclear whether it begins a comment',
    hint: () => 'Write a space before the #.',
    remedy: 'Write a space before a comment.',
  },
  'text.block-in-flow': {
    message: () => 'inside { } and [ ] lists and maps are written with brackets too',
    hint: () => 'Write [a, b] or {key: value}, or take the outer brackets away.',
    remedy: 'Do not mix lines that begin with `-` or keys by indent into { } or [ ].',
  },
  'text.syntax': {
    message: ({ found }) =>
      found === undefined || found === ''
        ? 'something is missing here'
        : `${quoted(found)} is not expected here`,
    hint: () => 'Look for a missing quote, colon, comma or bracket here or just before.',
    remedy: 'Look for a missing quote, colon, comma or bracket at this place or just before.',
  },
  'text.csv-quote': {
    message: () => 'a quote stands inside a cell',
    hint: () => 'Put quotes around the whole cell, and write "" for a quote inside it.',
    remedy: 'Quote whole cells only; inside a quoted cell a quote is written twice.',
  },
  'text.csv-cells': {
    message: ({ found, expected }) =>
      `this row has ${text(found)} ${found === 1 ? 'cell' : 'cells'}, the head has ${text(expected)}`,
    hint: () => 'Quote a cell that holds a comma; write decimal points, not commas.',
    remedy: 'Give every row as many cells as the first row; commas separate cells.',
  },
  'text.csv-column': {
    message: ({ column }) => `the column ${quoted(column)} stands here a second time`,
    hint: () => 'Give each column its own name.',
    remedy: 'Name each column once.',
  },
  'text.json-comment': {
    message: () => 'JSON has no comments',
    hint: () => 'Remove it, or name the file .yaml and begin comments with #.',
    remedy: 'Remove comments from a JSON file, or write the house in YAML.',
  },
  'text.json-trailing-comma': {
    message: () => 'a comma stands after the last item',
    hint: () => 'Remove it.',
    remedy: 'JSON has commas only between items.',
  },
  'text.json-quotes': {
    message: ({ found }) => `${text(found)} is not in double quotes`,
    hint: () => 'Put keys and texts in double quotes.',
    remedy: 'JSON writes every key and every text in double quotes.',
  },
  'text.json-word': {
    message: ({ found }) => `found ${text(found)}, expected a value`,
    hint: () => 'Put a text in double quotes; the only words without are true, false and null.',
    remedy: 'Put texts in double quotes; write true, false and null in small letters.',
  },
  'text.json-number': {
    message: ({ found }) => `${text(found)} is not a number in JSON`,
    hint: () =>
      'Write digits, with at least one on each side of the point, and no leading zero or +.',
    remedy: 'Write numbers in decimal: 0.5 and not .5, 10 and not 010 or 0x0A.',
  },
  'text.json-syntax': {
    message: ({ found, expected }) =>
      `found ${found === '' ? 'the end of the file' : quoted(found)}, expected ${text(expected)}`,
    remedy: 'Look for a missing quote, colon, comma or bracket at this place or just before.',
  },
};

/** Every issue that reading a text can raise, with its words and remedy. */
export const textIssues: IssueCatalogue = defineIssues(
  Object.entries(words).map(([code, entry]) => ({ severity: 'error' as const, ...entry, code })),
);

type Parameter = IssueParameters[string] | undefined;

function text(parameter: Parameter): string {
  return typeof parameter === 'object' ? parameter.join(', ') : String(parameter ?? '');
}

function quoted(parameter: Parameter): string {
  return `"${text(parameter)}"`;
}

function number(parameter: Parameter): string {
  return text(parameter).replace(/\B(?=(?:\d{3})+$)/g, ',');
}
