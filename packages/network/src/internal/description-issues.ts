import type { AirState } from '@evendraft/airflow';
import { checkFlowLaw } from '@evendraft/airflow';
import type { LinkDescription, NetworkDescription } from '../network-description.js';
import type { NetworkIssue, NetworkIssueCode } from '../network-issue.js';

/** Ranges outside which a number is a mistake, not a building. */
const ranges = {
  heightM: [-1e4, 1e4],
  pressurePa: [-1e6, 1e6],
  temperatureC: [-100, 1500],
  densityKgPerM3: [0.05, 10],
} as const;

const mostItems = 1_000_000;

/** Every issue of a description, of whatever shape it came in. */
export function descriptionIssues(description: NetworkDescription): NetworkIssue[] {
  const shape = description as Partial<NetworkDescription> | null | undefined;
  const lists = [shape?.zones, shape?.boundaries, shape?.links];
  if (!lists.every((list) => Array.isArray(list) && list.every(isObject))) {
    return [issue('NotANetwork', 'network', { allowed: 'lists of zones, boundaries and links' })];
  }
  const { zones, boundaries, links, outdoorAir } = description;
  const size = zones.length + boundaries.length + links.length;
  if (size > mostItems) {
    return [issue('NetworkTooLarge', 'network', { found: size, allowed: mostItems })];
  }
  const issues: NetworkIssue[] = [];
  if (zones.length === 0)
    issues.push(issue('NetworkEmpty', 'network', { allowed: 'one zone or more' }));

  issues.push(...duplicates([...zones, ...boundaries]), ...duplicates(links));
  issues.push(...airIssues(outdoorAir, 'network', 'outdoorAir.'));
  for (const node of zones) {
    issues.push(...range(node, 'heightM'), ...airIssues(node.air, node.origin, 'air.'));
  }
  for (const node of boundaries) {
    issues.push(
      ...range(node, 'heightM'),
      ...range(node, 'pressurePa'),
      ...airIssues(node.air, node.origin, 'air.'),
    );
  }
  const ids = new Set([...zones, ...boundaries].map((node) => node.id));
  for (const link of links) issues.push(...linkIssues(link, ids));
  return issues;
}

function linkIssues(link: LinkDescription, ids: ReadonlySet<string>): NetworkIssue[] {
  const issues: NetworkIssue[] = [];
  for (const end of ['from', 'to'] as const) {
    if (!ids.has(link[end])) {
      issues.push(issue('UnknownEnd', link.origin, { field: end, found: String(link[end]) }));
    }
  }
  if (link.from === link.to) {
    issues.push(issue('LinkToItself', link.origin, { found: String(link.from) }));
  }
  for (const end of ['fromHeightM', 'toHeightM'] as const) {
    issues.push(...within(link[end], ranges.heightM, link.origin, end));
  }
  if (link.columnAir !== undefined) {
    issues.push(...airIssues(link.columnAir, link.origin, 'columnAir.'));
  } else if (link.fromHeightM !== link.toHeightM) {
    issues.push(
      issue('ColumnAirMissing', link.origin, {
        from: String(link.fromHeightM),
        to: String(link.toHeightM),
      }),
    );
  }
  for (const problem of checkFlowLaw(link.law)) {
    issues.push({
      code: problem.code,
      severity: problem.severity,
      origin: link.origin,
      parameters: {
        field: `law.${problem.field}`,
        found: problem.found,
        allowed: problem.allowed,
      },
    });
  }
  return issues;
}

function duplicates(
  items: readonly { readonly id: string; readonly origin: string }[],
): NetworkIssue[] {
  const seen = new Set<string>();
  return items.flatMap((item) => {
    const known = seen.has(item.id);
    seen.add(item.id);
    return known ? [issue('DuplicateId', item.origin, { found: String(item.id) })] : [];
  });
}

function airIssues(air: AirState | undefined, origin: string, prefix: string): NetworkIssue[] {
  return (['temperatureC', 'densityKgPerM3'] as const).flatMap((field) =>
    within(air?.[field], ranges[field], origin, `${prefix}${field}`),
  );
}

function range<Field extends 'heightM' | 'pressurePa'>(
  node: { readonly origin: string } & Readonly<Record<Field, number>>,
  field: Field,
): NetworkIssue[] {
  return within(node[field], ranges[field], node.origin, field);
}

// eslint-disable-next-line max-params -- one line a field of the description
function within(
  value: unknown,
  [least, most]: readonly [number, number],
  origin: string,
  field: string,
): NetworkIssue[] {
  if (typeof value === 'number' && value >= least && value <= most) return [];
  const found = typeof value === 'number' && Number.isFinite(value) ? value : String(value);
  return [issue('ValueOutOfRange', origin, { field, found, allowed: `${least} to ${most}` })];
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
