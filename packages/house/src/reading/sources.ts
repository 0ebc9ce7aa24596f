import type { Provenance } from '@evendraft/airflow';
import type { Source, SourceStatus } from '../house.js';

/**
 * A default that this project chose, with the reason.
 *
 * @param reason - why this value
 * @returns the source
 */
export function ourChoice(reason: string): Source {
  return { document: reason, status: 'our choice' };
}

/**
 * What the trade does without a document that says so.
 *
 * @param practice - the practice
 * @returns the source
 */
export function commonPractice(practice: string): Source {
  return { document: practice, status: 'common practice, no source' };
}

/**
 * Provenance of a value of `@evendraft/airflow` as a source.
 *
 * @param provenance - where the value comes from
 * @returns the source
 */
export function sourceOf(provenance: Provenance): Source {
  const statuses: Readonly<Record<Provenance['status'], SourceStatus>> = {
    found: 'found',
    memory: 'memory',
    derived: 'derived',
    assumed: 'our choice',
  };
  return { document: provenance.source, status: statuses[provenance.status] };
}

/** Flow exponent of an envelope or leak that was measured at one pressure. */
export const exponentSource: Source = {
  document: 'ASTM E1827 and RESNET 380, exponent for a test at one pressure',
  status: 'memory',
};

/** Discharge coefficient of a sharp-edged opening. */
export const dischargeSource: Source = {
  document: 'sharp-edged orifice, about 0.6 in handbooks',
  status: 'memory',
};

/** Exponent of the leakage of a closed damper. */
export const damperExponentSource: Source = {
  document: 'AMCA supplement on damper leakage: leakage grows about with the root of the pressure',
  status: 'found',
};

/** Pressure at which a one-way flap starts to open. */
export const opensAtSource: Source = {
  document:
    'IRC 2018 and later, M1503.6.2: passive gravity dampers give their flow at 0.01 in. w.c. at most; no measured opening pressure is known',
  status: 'memory',
};

/** Share of a louvre's face that passes air where its maker does not say. */
export const louvreSource: Source = {
  document: 'NFPA 54, net free area of louvres: wood 25 %, metal 75 %',
  edition: '2012',
  section: '9.3.7',
  status: 'found',
};
