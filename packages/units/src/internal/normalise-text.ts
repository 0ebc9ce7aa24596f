const vulgarFractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * The text in plain characters: what phones, word processors and data sheets put in place of them.
 *
 * A thin space between groups of three digits is the SI thousands separator and is dropped; every
 * other kind of space becomes a plain one. `3½` becomes `3 1/2`, `m³` becomes `m3`, `−` becomes `-`.
 */
export function normaliseText(text: string): string {
  return (
    text
      .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (fraction) => ` ${vulgarFractions[fraction] ?? ''}`)
      // A thin or narrow no-break space groups thousands; a plain one may stand between two numbers.
      .replace(/(?<=\d)[\u2009\u202f](?=\d{3}(?!\d))/g, '')
      .replace(/[″“”]/g, '"')
      .replace(/[′‘’]/g, "'")
      .normalize('NFKC')
      .replace(/[\u2010-\u2015\u2212]/g, '-')
      .replace(/\u2044/g, '/')
      .replace(/[·⋅∙×]/g, '*')
      .replace(/\s+/g, ' ')
      .trim()
  );
}
