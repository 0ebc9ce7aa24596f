import type { Diffuser, DiffuserKind } from '../diffuser.js';

/** Where make-up air comes out, as it stands in the file. */
interface DiffuserInFile {
  readonly faceArea?: number | undefined;
  readonly diffuser?:
    | {
        readonly kind?: DiffuserKind | undefined;
        readonly distanceToHood?: number | undefined;
        readonly directedAway?: boolean | undefined;
        readonly airTemperature?: number | undefined;
      }
    | undefined;
}

/**
 * Where make-up air comes out in its room; nothing that was not given is set.
 *
 * @param inFile - face and diffuser as typed
 * @returns face area and diffuser
 */
export function readDiffuser({ faceArea, diffuser }: DiffuserInFile): {
  readonly faceAreaM2?: number;
  readonly diffuser?: Diffuser;
} {
  const { kind, distanceToHood, directedAway, airTemperature } = diffuser ?? {};
  return {
    ...(faceArea === undefined ? {} : { faceAreaM2: faceArea }),
    ...(diffuser === undefined
      ? {}
      : {
          diffuser: {
            ...(kind === undefined ? {} : { kind }),
            ...(distanceToHood === undefined ? {} : { distanceToHoodM: distanceToHood }),
            ...(directedAway === undefined ? {} : { directedAway }),
            ...(airTemperature === undefined ? {} : { airTemperatureC: airTemperature }),
          },
        }),
  };
}
