import type { MakeUpCurves, SolvedCure } from '@evendraft/remedies';

/** Cures with the numbers of the house that has them, or why there are none. */
export type CureResults =
  | { readonly status: 'nothing to cure' }
  /** Left out, with the reason as a sentence. */
  | { readonly status: 'not solved'; readonly why: string }
  | {
      readonly status: 'solved';
      /** Why flues were not solved again with the cures, as a sentence; absent where they were, or none is to be cured. */
      readonly fluesNotSolved?: string;
      /** By appliance, in the order of the findings; those without cures are left out. */
      readonly appliances: readonly {
        readonly appliance: string;
        readonly cures: readonly SolvedCure[];
      }[];
      /** Present where make-up air was sized. */
      readonly makeUpCurves?: MakeUpCurves;
    };
