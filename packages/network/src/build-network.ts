import type { BuiltNetwork } from './built-network.js';
import { builtNetworkOf } from './internal/built-network-of.js';
import { descriptionIssues } from './internal/description-issues.js';
import type { NetworkDescription } from './network-description.js';
import type { NetworkIssue } from './network-issue.js';

/** A network that can be solved, perhaps with warnings, or all issues of its description. */
export type BuildResult =
  | {
      readonly status: 'built';
      readonly network: BuiltNetwork;
      readonly warnings: readonly NetworkIssue[];
    }
  | { readonly status: 'rejected'; readonly issues: readonly NetworkIssue[] };

/**
 * Checks a description and lays it out for solving. It never throws for what a description contains.
 *
 * @param description - zones, boundaries and links in SI; it is kept, so do not change it afterwards
 * @returns the built network, or every issue with code, origin and parameters
 */
export function buildNetwork(description: NetworkDescription): BuildResult {
  const { issues, index } = descriptionIssues(description);
  if (index === undefined || issues.some((issue) => issue.severity === 'error')) {
    return { status: 'rejected', issues };
  }
  return { status: 'built', network: builtNetworkOf(description, index), warnings: issues };
}
