import type { AirState } from '@evendraft/airflow';
import { checkFlowLaw } from '@evendraft/airflow';
import type {
  LinkDescription,
  NetworkDescription,
  ZoneDescription,
} from '../network-description.js';
import type { NetworkIssue, NetworkIssueCode } from '../network-issue.js';
import type { DescriptionIndex } from './index-description.js';
import { indexDescription } from './index-description.js';
import { mayRepeatAnId } from './repeated-id.js';

/** Ranges outside which a number is a mistake, not a building. */
const ranges = {
  heightM: [-1e4, 1e4],
  pressurePa: [-1e6, 1e6],
  temperatureC: [-100, 1500],
  densityKgPerM3: [0.05, 10],
} as const;

const mostItems = 1_000_000;

/** A description that was looked through. */
export interface LookedThrough {
  readonly issues: readonly NetworkIssue[];
  /** Places of what it names; undefined where it has not the shape of a network. */
  readonly index: DescriptionIndex | undefined;
}

/** Every issue of a description, of whatever shape it came in, and the places of what it names. */
export function descriptionIssues(description: NetworkDescription): LookedThrough {
  const shape = description as Partial<NetworkDescription> | null | undefined;
  const lists = [shape?.zones, shape?.boundaries, shape?.links];
  if (!lists.every((list) => Array.isArray(list) && list.every(isObject))) {
    const allowed = 'lists of zones, boundaries and links';
    return { issues: [issue('NotANetwork', 'network', { allowed })], index: undefined };
  }
  const { zones, boundaries, links, outdoorAir } = description;
  const size = zones.length + boundaries.length + links.length;
  if (size > mostItems) {
    const tooLarge = issue('NetworkTooLarge', 'network', { found: size, allowed: mostItems });
    return { issues: [tooLarge], index: undefined };
  }
  const index = indexDescription(description);
  const issues: NetworkIssue[] = [];
  if (zones.length === 0) {
    issues.push(issue('NetworkEmpty', 'network', { allowed: 'one zone or more' }));
  }
  const { zoneIndex, boundaryIndex } = index;
  const shared = boundaries.some(({ id }) => zoneIndex.has(id));
  if (shared || zoneIndex.size + boundaryIndex.size < zones.length + boundaries.length) {
    pushDuplicates(issues, [...zones, ...boundaries]);
  }
  if (mayRepeatAnId(links)) pushDuplicates(issues, links);
  pushAirIssues(issues, outdoorAir, { origin: 'network', prefix: 'outdoorAir.' });
  for (const node of zones) pushNodeIssues(issues, node);
  for (const node of boundaries) {
    pushNodeIssues(issues, node);
    pushOutside(issues, node.pressurePa, { origin: node.origin, field: 'pressurePa' });
  }
  for (let link = 0; link < links.length; link++) {
    if (index.from[link]! < 0) issues.push(unknownEnd(links[link]!, 'from'));
    if (index.to[link]! < 0) issues.push(unknownEnd(links[link]!, 'to'));
    pushLinkIssues(issues, links[link]!);
  }
  return { issues, index };
}

// Each of these adds to the list what it finds and makes nothing where all is well, so that thousands of links
// are checked in a few milliseconds.

function pushNodeIssues(issues: NetworkIssue[], node: ZoneDescription): void {
  pushOutside(issues, node.heightM, { origin: node.origin, field: 'heightM' });
  pushAirIssues(issues, node.air, { origin: node.origin, prefix: 'air.' });
}

function unknownEnd(link: LinkDescription, field: 'from' | 'to'): NetworkIssue {
  return issue('UnknownEnd', link.origin, { field, found: String(link[field]) });
}

function pushLinkIssues(issues: NetworkIssue[], link: LinkDescription): void {
  const { origin, from, to, fromHeightM, toHeightM, columnAir } = link;
  if (from === to) issues.push(issue('LinkToItself', origin, { found: String(from) }));
  // Looked at first, as naming the place of every number of every link takes longer than looking.
  if (!isWithin(fromHeightM, ranges.heightM)) {
    pushOutside(issues, fromHeightM, { origin, field: 'fromHeightM', range: 'heightM' });
  }
  if (!isWithin(toHeightM, ranges.heightM)) {
    pushOutside(issues, toHeightM, { origin, field: 'toHeightM', range: 'heightM' });
  }
  if (columnAir !== undefined) {
    pushAirIssues(issues, columnAir, { origin, prefix: 'columnAir.' });
  } else if (fromHeightM !== toHeightM) {
    const heights = { from: String(fromHeightM), to: String(toHeightM) };
    issues.push(issue('ColumnAirMissing', origin, heights));
  }
  for (const { code, severity, field, found, allowed } of checkFlowLaw(link.law)) {
    issues.push({ code, severity, origin, parameters: { field: `law.${field}`, found, allowed } });
  }
}

function pushDuplicates(
  issues: NetworkIssue[],
  items: readonly { readonly id: string; readonly origin: string }[],
): void {
  const seen = new Set<string>();
  for (const { id, origin } of items) {
    if (seen.has(id)) issues.push(issue('DuplicateId', origin, { found: String(id) }));
    seen.add(id);
  }
}

function pushAirIssues(
  issues: NetworkIssue[],
  air: AirState | undefined,
  { origin, prefix }: { readonly origin: string; readonly prefix: string },
): void {
  for (const field of airFields) {
    const value = air?.[field];
    if (isWithin(value, ranges[field])) continue;
    pushOutside(issues, value, { origin, field: `${prefix}${field}`, range: field });
  }
}

const airFields = ['temperatureC', 'densityKgPerM3'] as const;

function pushOutside(
  issues: NetworkIssue[],
  value: unknown,
  place: { readonly origin: string; readonly field: string; readonly range?: keyof typeof ranges },
): void {
  const { origin, field, range = field as keyof typeof ranges } = place;
  const [least, most] = ranges[range];
  if (isWithin(value, ranges[range])) return;
  const found = typeof value === 'number' && Number.isFinite(value) ? value : String(value);
  issues.push(issue('ValueOutOfRange', origin, { field, found, allowed: `${least} to ${most}` }));
}

function isWithin(value: unknown, range: readonly [number, number]): boolean {
  return typeof value === 'number' && value >= range[0] && value <= range[1];
}

function issue(
  code: NetworkIssueCode,
  origin: string | undefined,
  parameters: NetworkIssue['parameters'],
): NetworkIssue {
  return { code, severity: 'error', origin: String(origin), parameters };
}

function isObject(value: unknown): boolean {
  return typeof value === 'object' && value !== null;
}
