import {
  ductRoughnesses,
  fittingLosses,
  freeAreaLossCoefficient,
  roundDuctSize,
  terminalOpenings,
  type FlowLawDescription,
  type Provenance,
} from '@evendraft/airflow';
import type { Assumption, Source } from '@evendraft/house';

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

const elbow = fittingLosses['smooth elbow 90°, r/D 1'];
const hood = terminalOpenings['screened intake hood'];
const metal = ductRoughnesses['galvanised, round, long seam'];

/**
 * The law of a round duct with its hood, bends and end.
 *
 * @param run - its way
 * @param diameterM - inner diameter [m]
 * @returns the law of the whole run
 */
export function ductRunLaw(run: DuctRun, diameterM: number): FlowLawDescription {
  const { areaM2, hydraulicDiameterM } = roundDuctSize(diameterM);
  return {
    kind: 'duct',
    sections: [
      {
        lengthM: run.lengthM,
        hydraulicDiameterM,
        areaM2,
        roughnessM: metal.roughnessM,
        frictionMultiplier: run.frictionMultiplier ?? 1,
        lossCoefficient:
          (run.intakeLoss ?? intakeLoss(areaM2)) +
          run.elbows * elbow.lossCoefficient +
          fittingLosses.exit.lossCoefficient,
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
  return [
    ...(run.intakeLoss === undefined
      ? [
          {
            origin,
            what: 'loss coefficient of a screened intake hood',
            value: { si: intakeLoss(1), dimension: 'ratio' as const },
            source: sourceOf(hood),
          },
        ]
      : []),
    {
      origin,
      what: 'loss coefficient of each bend',
      value: { si: elbow.lossCoefficient, dimension: 'ratio' },
      source: sourceOf(elbow),
    },
    {
      origin,
      what: 'roughness of the duct',
      value: { si: metal.roughnessM, dimension: 'length' },
      source: sourceOf(metal),
    },
  ];
}

/**
 * The source of a number of the laws of air, as an assumption states it.
 *
 * @param provenance - source and status
 * @returns the source
 */
export function sourceOf({ source, status }: Provenance): Source {
  return { document: source, status: status === 'assumed' ? 'our choice' : status };
}

/** Loss of a screened intake hood in velocity pressures of a duct of an area [-]. */
function intakeLoss(ductAreaM2: number): number {
  const { freeShare, dischargeCoefficient } = hood;
  return freeAreaLossCoefficient({
    ductAreaM2,
    freeAreaM2: freeShare * ductAreaM2,
    dischargeCoefficient,
  });
}
