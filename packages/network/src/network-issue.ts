import type { LawProblemCode } from '@evendraft/airflow';

/** Something in a description that cannot be built, or can with a warning. */
export interface NetworkIssue {
  readonly code: NetworkIssueCode;
  readonly severity: 'error' | 'warning';
  /** Origin of the zone, boundary or link it concerns; `network` for the whole. */
  readonly origin: string;
  /** What was found and what is allowed, to be put into words by whoever shows it. */
  readonly parameters: Readonly<Record<string, string | number>>;
}

/** Codes of issues: those of the laws, and those of the graph. */
export type NetworkIssueCode =
  | LawProblemCode
  | 'NotANetwork'
  | 'NetworkEmpty'
  | 'NetworkTooLarge'
  | 'DuplicateId'
  | 'UnknownEnd'
  | 'LinkToItself'
  | 'ValueOutOfRange'
  | 'ColumnAirMissing';
