import { doorway } from './doorway.js';
import { duct } from './duct.js';
import { fanCurve } from './fan-curve.js';
import { fixedFlow } from './fixed-flow.js';
import type { FlowLawDescription } from './flow-law-description.js';
import type { FlowLaw, LawProblem, LawWarning } from './flow-law.js';
import { gravityDamper } from './gravity-damper.js';
import type { AirState } from './inlet-air.js';
import { inletAir } from './inlet-air.js';
import { oneWayDamper } from './one-way-damper.js';
import { orifice } from './orifice.js';
import { powerLaw } from './power-law.js';
import { quadratic } from './quadratic.js';

/** Kinds of law. */
export type FlowLawKind = FlowLawDescription['kind'];

/** The table of laws, by kind. A law joins with one file and one line here. */
export const flowLaws: {
  readonly [Kind in FlowLawKind]: FlowLaw<Extract<FlowLawDescription, { kind: Kind }>>;
} = {
  powerLaw,
  orifice,
  quadratic,
  duct,
  fixedFlow,
  fanCurve,
  oneWayDamper,
  gravityDamper,
  doorway,
};

/**
 * The law of a description.
 *
 * @param description - a description that `checkFlowLaw` found free of errors
 * @returns its row in the table of laws
 */
export function flowLawOf(description: FlowLawDescription): FlowLaw<FlowLawDescription> {
  return flowLaws[description.kind] as unknown as FlowLaw<FlowLawDescription>;
}

/**
 * Problems of a description, all at once.
 *
 * @param description - any data that claims to be a law
 * @returns problems with code, field, what was found and what is allowed; empty if there is none
 */
export function checkFlowLaw(description: FlowLawDescription): LawProblem[] {
  const kind: unknown = (description as FlowLawDescription | null | undefined)?.kind;
  if (typeof kind !== 'string' || !Object.hasOwn(flowLaws, kind)) {
    return [
      {
        code: 'UnknownLaw',
        severity: 'error',
        field: 'kind',
        found: String(kind),
        allowed: Object.keys(flowLaws).join(', '),
      },
    ];
  }
  return flowLawOf(description).check(description);
}

/**
 * Where a flow lies beyond the range in which its law is trusted.
 *
 * @param description - the link's law
 * @param massFlowKgPerS - flow of one such part, either sign [kg/s]
 * @param air - air that enters it
 * @returns a warning for each range that is left, with the field of the description; empty if none is
 */
export function flowLawWarnings(
  description: FlowLawDescription,
  massFlowKgPerS: number,
  air: AirState,
): LawWarning[] {
  return flowLawOf(description).limits?.(description, massFlowKgPerS, inletAir(air)) ?? [];
}

/** The flow of one link at one pressure difference. */
export interface LinkFlow {
  /** Mass flow, positive from → to [kg/s]. */
  readonly massFlowKgPerS: number;
  /** Slope of the mass flow in the pressure difference [kg/(s Pa)]. */
  readonly slopeKgPerSPa: number;
}

/**
 * Mass flow of one link at one pressure difference: its law's block, of length one [kg/s].
 *
 * @param description - the link's law
 * @param pressureDifferencePa - pressure at `from` minus pressure at `to` [Pa]
 * @param air - air at both ends; reference air, 20 °C and 1.2041 kg/m3, where omitted
 * @returns flow and slope
 * @example
 * flowAt({ kind: 'fixedFlow', massFlowKgPerS: 0.1 }, 5).massFlowKgPerS; // => 0.1
 */
export function flowAt(
  description: FlowLawDescription,
  pressureDifferencePa: number,
  air: { readonly from: AirState; readonly to: AirState } = { from: reference, to: reference },
): LinkFlow {
  const law = flowLawOf(description);
  const recordLength = law.recordLength(description);
  const records = new Float64Array(recordLength);
  const state = {
    pressureDifferencePa: Float64Array.of(pressureDifferencePa),
    massFlowKgPerS: new Float64Array(1),
    slopeKgPerSPa: new Float64Array(1),
  };
  const from = inletAir(air.from);
  const to = inletAir(air.to);
  law.prepare(description, { from, to, scale: 1, records, at: 0 });
  law.block({ records, recordLength, begin: 0, end: 1 }, state);
  return { massFlowKgPerS: state.massFlowKgPerS[0]!, slopeKgPerSPa: state.slopeKgPerSPa[0]! };
}

const reference: AirState = { temperatureC: 20, densityKgPerM3: 1.2041 };
