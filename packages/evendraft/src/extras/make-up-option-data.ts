import { makeUpWords, type Assessment, type MakeUpOptionsDrawingData } from '@evendraft/report';
import type { Finding, Verdict } from '@evendraft/rules';

/** The least favourable first. */
const order: readonly Verdict[] = [
  'beyond the limit',
  'near the limit',
  'not judged',
  'within the limit',
];

/**
 * Make-up air that was solved as a cure, beside the house as it is.
 *
 * @param assessment - what was found
 * @param system - units in which sizes are printed
 * @returns what the drawing needs; undefined where no make-up air was sized
 */
export function makeUpOptionData(
  { cures, findings }: Assessment,
  system: 'us' | 'si',
): MakeUpOptionsDrawingData | undefined {
  if (cures.status !== 'solved') return undefined;
  const [worst] = findings
    .filter(({ judged }) => judged !== undefined)
    .sort((a, b) => a.judged!.marginPa - b.judged!.marginPa);
  const own = cures.appliances.find(({ appliance }) => appliance === worst?.appliance);
  const made = (own?.cures ?? []).filter(
    ({ makeUp, together }) => makeUp !== undefined && together !== true,
  );
  if (worst?.judged === undefined || made.length === 0) return undefined;
  const first = made.find(({ makeUp }) => makeUp?.keepsLimits);
  const withIt = (cure: string): readonly Finding[] =>
    cures.appliances.flatMap(({ cures: each }) =>
      each.filter((solved) => solved.cure === cure).map(({ after }) => after),
    );
  return {
    situation: `worst case for the ${worst.appliance}, ${worst.judged.quantity}`,
    limitPa: worst.judged.limitPa,
    options: [
      { name: 'as it is', worstPressurePa: worst.judged.valuePa, verdict: worst.verdict },
      ...made.flatMap((solved) => {
        const { cure, makeUp, after } = solved;
        if (after.judged === undefined || makeUp === undefined) return [];
        return [
          {
            name: makeUpWords(makeUp, system),
            ...(solved === first
              ? { recommended: 'the smallest found that keeps the limits of the set alone.' }
              : {}),
            worstPressurePa: after.judged.valuePa,
            verdict: leastFavourable(withIt(cure)),
            ...(makeUp.dimension === 'volume flow' ? { makeUpFlowM3PerS: makeUp.size } : {}),
            ...(makeUp.dimension === 'diameter'
              ? { openingAreaM2: (Math.PI / 4) * makeUp.size ** 2 }
              : {}),
          },
        ];
      }),
    ],
  };
}

function leastFavourable(findings: readonly Finding[]): Verdict {
  return order.find((verdict) => findings.some((each) => each.verdict === verdict)) ?? 'not judged';
}
