// Embeds the library: reads a house from a text, assesses it, prints the answer.
import { readFile } from 'node:fs/promises';
import {
  assess,
  formatIssue,
  houseIssues,
  limitSetById,
  readHouse,
  renderTerminal,
} from 'evendraft';

const file = 'tight-new-house.yaml';
const text = await readFile(new URL(file, import.meta.url), 'utf8');

const read = readHouse(text, { file });
if (!read.ok) {
  for (const issue of read.issues) console.error(formatIssue(issue, houseIssues));
  process.exit(2);
}

const limitSet = limitSetById('model-code-2015');
const assessment = await assess(read.house, {
  ...(limitSet === undefined ? {} : { limitSet }),
  signal: AbortSignal.timeout(60_000),
});

console.log(renderTerminal(assessment, { system: 'si', width: 80, color: false }));
for (const finding of assessment.findings) console.log(`${finding.appliance}: ${finding.verdict}`);
