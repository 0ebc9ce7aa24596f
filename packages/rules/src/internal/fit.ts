import type { Appliance } from '@evendraft/house';
import type { AppliesTo, VentPartner } from '../applies-to.js';

/** A fact about an appliance that the house may lack. */
export type MissingFact = 'fuel' | 'chimney height' | 'whether the chimney stands outside';

/** How one description fits one appliance. */
export interface Fit {
  readonly answer: 'yes' | 'no' | 'unknown';
  /** How many facts the description asks for [-]. */
  readonly facts: number;
  /** Facts that would decide an unknown. */
  readonly missing: readonly MissingFact[];
}

/** One fact: it holds, it does not, or the house does not say. */
type Answer = boolean | MissingFact;

/**
 * How one description of a limit fits one appliance.
 *
 * @param applies - the description; every fact in it must hold
 * @param appliance - the appliance
 * @param partners - the other appliances on the same vent
 * @returns `no` as soon as a fact is false, else `unknown` where the house lacks one
 */
export function fit(applies: AppliesTo, appliance: Appliance, partners: readonly Appliance[]): Fit {
  const answers: Answer[] = [];
  if (applies.kinds !== undefined) answers.push(applies.kinds.includes(appliance.kind));
  if (applies.vents !== undefined) {
    answers.push((applies.vents as readonly string[]).includes(appliance.vent));
  }
  if (applies.fuels !== undefined) {
    answers.push(appliance.fuel === 'not stated' ? 'fuel' : applies.fuels.includes(appliance.fuel));
  }
  if (applies.ventDamper !== undefined) {
    answers.push(appliance.ventDamper === applies.ventDamper);
  }
  if (applies.alone === true) answers.push(partners.length === 0);
  answers.push(...partnerAnswers(applies.sharesVentWith, partners));
  answers.push(...chimneyAnswers(applies.chimney, appliance.chimney));

  const missing = answers.filter((answer) => typeof answer === 'string');
  const answer = answers.includes(false) ? 'no' : missing.length > 0 ? 'unknown' : 'yes';
  return { answer, facts: answers.length, missing };
}

/** Each fact about a partner counts, so that a row that asks more of it is the more specific one. */
function partnerAnswers(
  asked: VentPartner | undefined,
  partners: readonly Appliance[],
): readonly Answer[] {
  if (asked === undefined) return [];
  const found = partners.some(
    (partner) =>
      (asked.kinds?.includes(partner.kind) ?? true) &&
      ((asked.vents as readonly string[] | undefined)?.includes(partner.vent) ?? true) &&
      (asked.ventDamper === undefined || asked.ventDamper === partner.ventDamper),
  );
  const facts = [asked.kinds, asked.vents, asked.ventDamper].filter((fact) => fact !== undefined);
  return [found, ...facts.map(() => found)];
}

function chimneyAnswers(
  asked: AppliesTo['chimney'],
  chimney: Appliance['chimney'],
): readonly Answer[] {
  const answers: Answer[] = [];
  const heightM = chimney?.heightM;
  if (asked?.fromHeightM !== undefined || asked?.belowHeightM !== undefined) {
    const { fromHeightM = 0, belowHeightM = Infinity } = asked;
    answers.push(
      heightM === undefined ? 'chimney height' : heightM >= fromHeightM && heightM < belowHeightM,
    );
  }
  if (asked?.exterior !== undefined) {
    answers.push(
      chimney?.exterior === undefined
        ? 'whether the chimney stands outside'
        : chimney.exterior === asked.exterior,
    );
  }
  return answers;
}
