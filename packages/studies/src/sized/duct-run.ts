import type { FlowLawDescription } from '@evendraft/airflow';
import type { Assumption } from '@evendraft/house';

/** The way of a round make-up duct from outdoors to the room. */
export interface DuctRun {
  readonly lengthM: number;
  /** Bends of 90°, smooth, with a radius of one diameter on the axis. */
  readonly elbows: number;
  /** Of flexible duct as it hangs, against smooth metal; 1 for rigid duct [-]. */
  readonly frictionMultiplier?: number;
  /** Loss of intake hood and screen in velocity pressures of the duct [-]. */
  readonly intakeLoss?: number;
}

/**
 * Diameters of round duct that are commonly sold, 3 to 12 in. and on to 18 in. [m]. Common practice, no source.
 */
export const commonDuctDiametersM: readonly number[] = [
  3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18,
].map((inches) => inches * 0.0254);

/** Roughness of galvanized sheet metal [m]. Source: ASHRAE Handbook Fundamentals, duct design, from memory. */
const roughnessM = 0.00009;
/** Loss of a smooth 90° bend, radius one diameter [-]. Source: SMACNA HVAC Systems Duct Design, from memory. */
const elbowLoss = 0.22;
/** A screened intake hood as a sharp opening of 0.75 of the duct's area, coefficient 0.6; our choice [-]. */
const usualIntakeLoss = (1 / (0.75 * 0.6)) ** 2;
/** Velocity pressure that is lost where the duct ends in the room [-]. */
const exitLoss = 1;

/**
 * The law of a round duct with its hood, bends and end.
 *
 * @param run - its way
 * @param diameterM - inner diameter [m]
 * @param moreLoss - what else it passes, such as an open damper, in velocity pressures [-]
 * @returns the law of the whole run
 */
export function ductRunLaw(run: DuctRun, diameterM: number, moreLoss = 0): FlowLawDescription {
  return {
    kind: 'duct',
    sections: [
      {
        lengthM: run.lengthM,
        hydraulicDiameterM: diameterM,
        areaM2: (Math.PI / 4) * diameterM ** 2,
        roughnessM,
        frictionMultiplier: run.frictionMultiplier ?? 1,
        lossCoefficient:
          (run.intakeLoss ?? usualIntakeLoss) + run.elbows * elbowLoss + exitLoss + moreLoss,
      },
    ],
  };
}

/**
 * What a duct run rests on beside what was given.
 *
 * @param run - its way
 * @param origin - what it belongs to
 * @returns assumptions, to be listed
 */
export function ductRunAssumptions(run: DuctRun, origin: string): readonly Assumption[] {
  const ratio = (what: string, si: number, source: Assumption['source']): Assumption => ({
    origin,
    what,
    value: { si, dimension: 'ratio' },
    source,
  });
  return [
    ...(run.intakeLoss === undefined
      ? [
          ratio('loss coefficient of a screened intake hood', usualIntakeLoss, {
            document: 'this project',
            status: 'our choice',
          }),
        ]
      : []),
    ratio('loss coefficient of each bend', elbowLoss, {
      document: 'SMACNA HVAC Systems Duct Design, smooth elbow, radius one diameter',
      status: 'memory',
    }),
    {
      origin,
      what: 'roughness of the duct',
      value: { si: roughnessM, dimension: 'length' },
      source: { document: 'ASHRAE Handbook Fundamentals, duct design', status: 'memory' },
    },
  ];
}
