import type { FlowLawDescription } from '@evendraft/airflow';

/**
 * Whether a law of an opening counts its flow inwards: a flap counts it in the direction in which it opens, and
 * a flap in an opening lets air in. Every other law counts it outwards.
 *
 * @param law - law of an opening
 * @returns whether flow into the zone is positive
 */
export function opensInward({ kind }: FlowLawDescription): boolean {
  return kind === 'oneWayDamper' || kind === 'gravityDamper';
}
