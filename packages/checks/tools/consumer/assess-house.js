// What an embedder writes. It is run from the packed tarballs: in Node, in a bundle, in a browser.
import { assess, formatIssue, houseIssues, readHouse, renderTerminal } from 'evendraft';

const houseFile = `
evendraft: 1
name: Packed Row 1
floorArea: 2180 ft2
volume: 18500 ft3
airtightness: 310 cfm at 50 Pa
exhaust:
  hood: { low: 250 cfm, high: 900 cfm }
appliances:
  water heater: { vent: natural draft, input: 40 kBtu/h }
`;

/** @returns {Promise<string>} the report of the house, as text */
export async function assessHouse() {
  const read = readHouse(houseFile, { file: 'packed-row.yaml' });
  if (!read.ok) throw new Error(read.issues.map((issue) => formatIssue(issue, houseIssues)).join());
  return renderTerminal(await assess(read.house), { system: 'us', width: 80, color: false });
}
