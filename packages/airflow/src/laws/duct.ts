import { airViscosity } from '../air/air-viscosity.js';
import {
  colebrookExponent,
  colebrookRoot,
  laminarEndReynolds,
  laminarFactor,
  turbulentStartReynolds,
  writeFrictionJoin,
} from '../internal/friction.js';
import { ductProblems } from './internal/duct-problems.js';
import type { DuctDescription, DuctSection } from './flow-law-description.js';
import type { FlowLaw, LawGroup, LawWarning, LinkState } from './flow-law.js';
import type { InletAir } from './inlet-air.js';
import { nearZeroWidthPa } from './near-zero-width.js';

/** Numbers ahead of the sections: forward laminar and rough part of the first guess, the same backward. */
const header = 4;
/** Numbers a section: roughness and join, then forward and backward the three below. */
const sectionLength = 9;
/** Numbers a section and direction: Reynolds number per flow, friction and fittings in pascals. */
const directionLength = 3;
/** Reynolds number whose friction serves the first guess. */
const guessReynolds = 1e5;
const referenceViscosityPaS = airViscosity(20);

/** Loss of a duct and its slope in the flow; a place to return two numbers without allocating. */
const loss = new Float64Array(2);

/**
 * A duct of one or more sections in series, each with friction and fittings [kg/s].
 * dP = sum (f F L/Dh + K) m^2/(2 rho A^2), f by `frictionFactor` from the Reynolds number of the section, rho
 * and viscosity of the air that enters, F the friction multiplier of compressed flexible duct. The flow is
 * found from the pressure difference to rounding by Newton on logarithms, kept within a bracket.
 * Source: Darcy-Weisbach with the friction of Colebrook (1939), from memory.
 */
export const duct: FlowLaw<DuctDescription> = {
  kind: 'duct',
  equation: 'dP = sum (f F L/Dh + K) m^2/(2 rho A^2)',
  validity:
    'air of one density along the duct, below 100 m/s; relative roughness up to 0.05, Reynolds numbers up to 1e8; laminar to 2000, turbulent from 4000, a C1 join between; cubic within 1e-6 Pa of zero; where the airs at its ends differ the slope jumps at zero',
  check: ductProblems,
  recordLength: (description) => header + sectionLength * description.sections.length,
  prepare(description, { from, to, scale, records, at }) {
    let next = at + header;
    for (const section of description.sections) {
      const roughness = section.roughnessM / section.hydraulicDiameterM;
      records[next] = roughness;
      writeFrictionJoin(roughness, records, next + 1);
      prepareDirection(section, from, scale, records, next + 3);
      prepareDirection(section, to, scale, records, next + 3 + directionLength);
      next += sectionLength;
    }
    for (let direction = 0; direction < 2; direction++) {
      let laminar = 0;
      let rough = 0;
      for (let section = at + header; section < next; section += sectionLength) {
        const own = section + 3 + direction * directionLength;
        const perFlow = records[own]!;
        const friction = records[own + 1]!;
        const root = colebrookRoot(guessReynolds, records[section]!);
        laminar += friction * laminarFactor * perFlow;
        rough += friction * (perFlow / root) ** 2 + records[own + 2]!;
      }
      records[at + 2 * direction] = laminar;
      records[at + 2 * direction + 1] = rough;
    }
  },
  block({ records, recordLength, begin, end }: LawGroup, state: LinkState): void {
    const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
    for (let link = begin, at = 0; link < end; link++, at += recordLength) {
      const x = pressureDifferencePa[link]!;
      const size = Math.abs(x);
      const direction = x > 0 ? 0 : 1;
      if (size > nearZeroWidthPa) {
        const flow = flowAtLoss(records, at, at + recordLength, direction, size);
        massFlowKgPerS[link] = x > 0 ? flow : -flow;
        slopeKgPerSPa[link] = 1 / loss[1]!;
      } else {
        const s = x / nearZeroWidthPa;
        const flow = flowAtLoss(records, at, at + recordLength, direction, nearZeroWidthPa);
        const n = nearZeroWidthPa / (loss[1]! * flow);
        massFlowKgPerS[link] = 0.5 * flow * s * (3 - n + (n - 1) * s * s);
        slopeKgPerSPa[link] = ((0.5 * flow) / nearZeroWidthPa) * (3 - n + 3 * (n - 1) * s * s);
      }
    }
  },
  inverseBlock({ records, recordLength, begin, end }: LawGroup, state: LinkState): void {
    const { pressureDifferencePa, massFlowKgPerS, slopeKgPerSPa } = state;
    for (let link = begin, at = 0; link < end; link++, at += recordLength) {
      const flow = massFlowKgPerS[link]!;
      const direction = flow > 0 ? 0 : 1;
      const size = Math.abs(flow);
      lossAtFlow(records, at, at + recordLength, direction, size);
      if (loss[0]! > nearZeroWidthPa) {
        pressureDifferencePa[link] = flow > 0 ? loss[0]! : -loss[0]!;
        slopeKgPerSPa[link] = 1 / loss[1]!;
      } else {
        const flowAtWidth = flowAtLoss(records, at, at + recordLength, direction, nearZeroWidthPa);
        slopeKgPerSPa[link] = flowAtWidth / nearZeroWidthPa;
        pressureDifferencePa[link] = flow / slopeKgPerSPa[link]!;
      }
    }
  },
  reach: () => ({ leastKgPerS: -Infinity, mostKgPerS: Infinity, strict: true }),
  limits: ductLimits,
};

// eslint-disable-next-line max-params -- called for both directions of every section without allocating
function prepareDirection(
  section: DuctSection,
  air: InletAir,
  scale: number,
  records: Float64Array,
  at: number,
): void {
  const { lengthM, hydraulicDiameterM: diameterM, areaM2, frictionMultiplier } = section;
  const viscosityPaS = referenceViscosityPaS * Math.exp(air.logViscosityRatio);
  const density = air.densityKgPerM3;
  const kinematic = viscosityPaS / diameterM;
  records[at] = 1 / (kinematic * areaM2 * scale);
  records[at + 1] =
    (frictionMultiplier * lengthM * kinematic * kinematic) / (2 * density * diameterM);
  records[at + 2] = section.lossCoefficient / (2 * density * (areaM2 * scale) ** 2);
}

/**
 * Flow at which the duct loses a pressure [kg/s]; leaves the slope of the loss there in `loss`.
 * Newton on logarithms, where the loss is nearly a line; two to four evaluations are usual.
 */
// eslint-disable-next-line max-params -- runs for every link of every sweep without allocating
function flowAtLoss(
  records: Float64Array,
  at: number,
  end: number,
  direction: number,
  lossPa: number,
): number {
  const laminar = records[at + 2 * direction]!;
  const rough = records[at + 2 * direction + 1]!;
  let flow = (2 * lossPa) / (laminar + Math.sqrt(laminar * laminar + 4 * rough * lossPa));
  let low = 0;
  let high = Infinity;
  let before = Infinity;
  for (let round = 0; round < mostRounds; round++) {
    lossAtFlow(records, at, end, direction, flow);
    const ratio = lossPa / loss[0]!;
    const error = Math.abs(ratio - 1);
    const exponent = (flow * loss[1]!) / loss[0]!;
    if (error <= nearEnough) {
      // The last correction costs no evaluation: the flow comes to rounding, the slope with its exponent.
      const share = (ratio - 1) / exponent;
      loss[1] = loss[1]! * (1 + (exponent - 1) * share);
      return flow * (1 + share);
    }
    if (ratio > 1) low = flow;
    else high = flow;
    const next = flow * ratio ** (1 / exponent);
    // Across the join Newton may circle; then the bracket is halved on logarithms.
    const circles = error > 0.5 * before && low > 0 && high < Infinity;
    flow = !circles && next > low && next < high ? next : middle(low, high);
    before = error;
  }
  return flow;
}

function middle(low: number, high: number): number {
  return low > 0 && high < Infinity ? Math.sqrt(low * high) : 0.5 * (low + high);
}

const mostRounds = 100;
const nearEnough = 1e-9;

/** Leaves in `loss` what the duct loses at a flow [Pa] and the slope of that [Pa s/kg]. */
// eslint-disable-next-line max-params -- runs several times for every link of every sweep without allocating
function lossAtFlow(
  records: Float64Array,
  at: number,
  end: number,
  direction: number,
  flow: number,
): void {
  let sum = 0;
  let slope = 0;
  for (let section = at + header; section < end; section += sectionLength) {
    const own = section + 3 + direction * directionLength;
    const perFlow = records[own]!;
    const friction = records[own + 1]!;
    const fittings = records[own + 2]! * flow;
    sum += fittings * flow;
    slope += 2 * fittings;
    const reynolds = perFlow * flow;
    if (reynolds >= turbulentStartReynolds) {
      const roughness = records[section]!;
      const root = colebrookRoot(reynolds, roughness);
      const chord = (friction * reynolds * perFlow) / (root * root);
      sum += chord * flow;
      slope += chord * colebrookExponent(reynolds, roughness, root);
    } else {
      const t = Math.max(0, reynolds - laminarEndReynolds);
      const second = records[section + 1]!;
      const third = records[section + 2]!;
      sum += friction * (laminarFactor * reynolds + t * t * (second + t * third));
      slope += friction * perFlow * (laminarFactor + t * (2 * second + 3 * t * third));
    }
  }
  loss[0] = sum;
  loss[1] = slope;
}

function ductLimits(
  { sections }: DuctDescription,
  massFlowKgPerS: number,
  air: InletAir,
): LawWarning[] {
  const viscosityPaS = referenceViscosityPaS * Math.exp(air.logViscosityRatio);
  return sections.flatMap((section, index) => {
    const fluxKgPerM2S = Math.abs(massFlowKgPerS) / section.areaM2;
    const found: readonly LawWarning[] = [
      {
        code: 'VelocityBeyondLaw',
        field: `sections.${index}`,
        found: fluxKgPerM2S / air.densityKgPerM3,
        most: 100,
        unit: 'm/s',
      },
      {
        code: 'RoughnessBeyondLaw',
        field: `sections.${index}.roughnessM`,
        found: section.roughnessM / section.hydraulicDiameterM,
        most: 0.05,
        unit: 'of the hydraulic diameter',
      },
      {
        code: 'ReynoldsBeyondLaw',
        field: `sections.${index}`,
        found: (fluxKgPerM2S * section.hydraulicDiameterM) / viscosityPaS,
        most: 1e8,
        unit: '(-)',
      },
    ];
    return found.filter(({ found, most }) => found > most);
  });
}
