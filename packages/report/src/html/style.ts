import { leastRoom, mostRoom } from './column-rooms.js';

/** Columns that leave room for a word of so many letters, so that a narrow screen scrolls instead. */
const columnRooms = Array.from(
  { length: mostRoom - leastRoom + 1 },
  (_, index) => `.c${index + leastRoom} { min-width: calc(${index + leastRoom}ch + 0.8rem); }`,
).join('\n');

/** Colours, type and print of the page. Nothing is fetched: fonts are those the reader has. */
export const pageStyle = `
${columnRooms}
:root { --ink: #1c2126; --soft: #545c64; --rule: #c9cdd1; --fill: #f3f5f6; --deep: #1f5060; --beyond: #7d2816; }
* { box-sizing: border-box; }
html { font-size: 100%; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0; color: var(--ink); background: #fff; font: 1rem/1.5 'Iowan Old Style', 'Palatino Linotype', Palatino, Georgia, 'Liberation Serif', serif; overflow-wrap: anywhere; }
.page { max-width: 55rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; }
header { border-bottom: 3px solid var(--ink); padding-bottom: 0.75rem; margin-bottom: 1rem; }
.kicker, nav, table, dt, .note, footer, .tag { font-family: 'Helvetica Neue', Arial, 'Liberation Sans', sans-serif; }
.kicker { margin: 0; font-size: 0.875rem; color: var(--soft); letter-spacing: 0.02em; }
h1, h2, h3 { line-height: 1.2; font-weight: 600; break-after: avoid; }
h1 { font-size: 1.8rem; margin: 0.2rem 0 0.3rem; }
h2 { font-size: 1.3rem; margin: 2.2rem 0 0.6rem; padding-top: 0.5rem; border-top: 1px solid var(--rule); }
h3 { font-size: 1.05rem; margin: 1.3rem 0 0.4rem; }
p, ul, ol, dl { margin: 0.5rem 0; max-width: 45rem; }
p, li, dd { orphans: 3; widows: 3; }
.lead { font-size: 1.2rem; line-height: 1.4; }
.note { font-size: 0.875rem; color: var(--soft); }
nav { font-size: 0.875rem; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 0.25rem 1.1rem; }
a { color: var(--deep); display: inline-block; padding: 0.15rem 0; }
:focus-visible { outline: 3px solid var(--deep); outline-offset: 2px; }
figure { margin: 1.2rem 0; max-width: 45rem; break-inside: avoid; }
figcaption { font-size: 0.9375rem; color: var(--soft); margin-top: 0.4rem; }
figure svg { display: block; width: 100%; height: auto; }
.narrow { display: none; max-width: 27rem; }
.scroll { overflow-x: auto; margin: 1rem 0; }
table { border-collapse: collapse; width: 100%; font-size: 0.875rem; line-height: 1.35; font-variant-numeric: tabular-nums; }
caption { text-align: left; padding-bottom: 0.4rem; break-after: avoid; }
caption strong, caption .note { display: block; position: sticky; left: 0; max-width: calc(100vw - 2rem); }
caption strong { font-size: 0.9375rem; }
caption .note { font-size: 0.8125rem; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { text-align: left; vertical-align: top; padding: 0.3rem 0.8rem 0.3rem 0; border-bottom: 1px solid var(--rule); font-weight: 400; unicode-bidi: isolate; }
thead th { font-weight: 600; vertical-align: bottom; border-bottom: 2px solid var(--ink); }
.n { text-align: right; white-space: nowrap; overflow-wrap: normal; }
thead .n { white-space: normal; }
th:last-child, td:last-child { padding-right: 0; }
.tag { display: inline-block; font-size: 0.8125rem; padding: 0 0.45rem; border: 1.5px solid var(--ink); white-space: nowrap; }
.beyond { background: var(--beyond); border-color: var(--beyond); color: #fff; }
.near { border-width: 2.5px; font-weight: 600; }
.unjudged { border-style: dashed; }
dl { display: grid; grid-template-columns: minmax(7rem, 11rem) 1fr; gap: 0.2rem 1rem; }
dt { font-size: 0.875rem; color: var(--soft); padding-top: 0.1rem; }
dd { margin: 0; }
.box { border: 1.5px solid var(--ink); padding: 0.2rem 0.9rem 0.5rem; margin: 1.2rem 0; break-inside: avoid; }
.warning { border-width: 3px; }
.warning p:first-child { font-weight: 600; }
.signatures { display: grid; grid-template-columns: repeat(auto-fit, minmax(13rem, 1fr)); gap: 2.6rem 2rem; margin-top: 2.6rem; break-inside: avoid; }
.signatures p { border-top: 1px solid var(--ink); margin: 0; padding-top: 0.2rem; font-size: 0.875rem; }
footer { border-top: 1px solid var(--rule); margin-top: 2.5rem; padding-top: 0.6rem; font-size: 0.8125rem; color: var(--soft); }
@media (max-width: 44rem) {
  .wide { display: none; }
  .narrow { display: block; }
  dl { grid-template-columns: 1fr; gap: 0 1rem; }
  dd { margin-bottom: 0.4rem; }
}
@media print {
  .page { max-width: none; padding: 0; }
  p, ul, ol, dl, figure { max-width: none; }
  nav { display: none; }
  header { border-bottom-width: 2px; padding-bottom: 3pt; margin-bottom: 0; }
  main > section:first-child h2 { border-top: 0; margin-top: 3pt; padding-top: 0; }
  figure { margin: 8pt 0; }
  figure svg { max-height: 222mm; }
  dl { break-inside: avoid; }
  body { font-size: 10pt; }
  .lead { font-size: 11pt; margin: 3pt 0; }
  h1 { font-size: 17pt; }
  h2 { font-size: 13pt; margin-top: 14pt; }
  table { font-size: 8.5pt; }
  figcaption { font-size: 9pt; }
  dt { font-size: 9pt; padding-top: 0; }
  caption .note, .note, .tag { font-size: 8pt; }
  .scroll { overflow: visible; }
  .wide { display: block; }
  .narrow { display: none; }
  caption { break-inside: avoid; }
  thead { break-after: avoid; }
  tbody tr:first-child { break-before: avoid; }
  caption strong, caption .note { position: static; max-width: none; }
  .short { break-inside: avoid; }
  .alone { break-before: page; }
  .beyond { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`;

/**
 * Margins of the printed page, with what identifies the report and the number of the page.
 *
 * @param identity - letters, digits and plain marks only; anything else is left out
 * @returns a style rule
 */
export function printedMargins(identity: string): string {
  const plain = identity.replace(/[^\w .,:+-]/gu, '');
  const dress = "font: 8pt 'Helvetica Neue', Arial, 'Liberation Sans', sans-serif; color: #545c64;";
  return `
@page {
  margin: 16mm 16mm 20mm;
  @bottom-left { content: "${plain}"; ${dress} }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); ${dress} }
}
`;
}
