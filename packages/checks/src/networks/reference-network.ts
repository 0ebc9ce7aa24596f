import type { FlowLawDescription } from '@evendraft/airflow';
import { referenceAir } from '@evendraft/airflow';
import type { NetworkDescription, Scenario } from '@evendraft/network';

/** A network with its solution at 50 digits, as its file holds it; the format is in networks/README.md. */
export interface ReferenceNetwork {
  readonly id: string;
  readonly zones: readonly string[];
  readonly boundaries: readonly { readonly id: string; readonly pressurePa: number }[];
  readonly edges: readonly ReferenceEdge[];
  readonly solution?: ReferenceSolution;
  readonly solutions?: readonly (ReferenceSolution & { readonly stable: boolean })[];
  readonly nonMonotoneEdge?: string;
  readonly expect?: { readonly verdict: string; readonly zones: readonly string[] };
}

/** Pressures and flows of a reference network. */
export interface ReferenceSolution {
  readonly pressuresPa: Readonly<Record<string, number>>;
  readonly flowsKgPerS: Readonly<Record<string, number>>;
}

/** A link of a reference network. */
export type ReferenceEdge = {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly dpOffsetPa?: number;
} & (
  | { readonly kind: 'powerLaw'; readonly C: number; readonly n: number }
  | {
      readonly kind: 'orifice';
      readonly areaM2: number;
      readonly cd: number;
      readonly rhoKgPerM3: number;
    }
  | { readonly kind: 'quadratic'; readonly aPaSPerKg: number; readonly bPaS2PerKg2: number }
  | {
      readonly kind: 'duct';
      readonly diameterM: number;
      readonly frictionFactor: number;
      readonly lengthM: number;
      readonly rhoKgPerM3: number;
      readonly sumK: number;
    }
  | { readonly kind: 'fixedFlow'; readonly mKgPerS: number }
  | {
      readonly kind: 'fanQuadratic';
      readonly shutoffPa: number;
      readonly aPaSPerKg: number;
      readonly bPaS2PerKg2: number;
    }
  | { readonly kind: 'fanTable'; readonly points: readonly (readonly [number, number])[] }
  | {
      readonly kind: 'damper';
      readonly C: number;
      readonly n: number;
      readonly crackPa: number;
      readonly leakC?: number;
      readonly leakN?: number;
    }
);

/** A reference network in our terms: the description, and the offsets as a scenario. */
export interface TranslatedNetwork {
  readonly description: NetworkDescription;
  readonly scenario: Scenario;
}

const rho = referenceAir.densityKgPerM3;

/** All air is reference air, so that a mass flow of the file is our volume flow times its density. */
const air = { temperatureC: referenceAir.temperatureC, densityKgPerM3: rho };

/**
 * Translates a reference network.
 *
 * @param network - as read from its file
 * @returns its description and scenario
 */
export function translateNetwork(network: ReferenceNetwork): TranslatedNetwork {
  const offsets = network.edges.map(
    (edge) => (edge.dpOffsetPa ?? 0) + (edge.kind === 'fanQuadratic' ? edge.shutoffPa : 0),
  );
  return {
    description: {
      outdoorAir: air,
      zones: network.zones.map((id) => ({ id, origin: id, heightM: 0, air })),
      boundaries: network.boundaries.map(({ id, pressurePa }) => ({
        id,
        origin: id,
        heightM: 0,
        pressurePa,
        air,
      })),
      links: network.edges.map((edge) => ({
        id: edge.id,
        origin: edge.id,
        from: edge.from,
        to: edge.to,
        fromHeightM: 0,
        toHeightM: 0,
        law: lawOf(edge),
      })),
    },
    scenario: { linkOffsetPa: Float64Array.from(offsets) },
  };
}

function lawOf(edge: ReferenceEdge): FlowLawDescription {
  switch (edge.kind) {
    case 'powerLaw':
      return { kind: 'powerLaw', coefficientM3PerSPaN: edge.C / rho, exponent: edge.n };
    case 'orifice':
      return {
        kind: 'orifice',
        areaM2: edge.areaM2 * Math.sqrt(edge.rhoKgPerM3 / rho),
        dischargeCoefficient: edge.cd,
      };
    case 'quadratic':
    case 'fanQuadratic':
      return {
        kind: 'quadratic',
        linearPaSPerM3: edge.aPaSPerKg * rho,
        quadraticPaS2PerM6: edge.bPaS2PerKg2 * rho * rho,
      };
    case 'duct': {
      const area = (Math.PI / 4) * edge.diameterM ** 2;
      const loss = (edge.frictionFactor * edge.lengthM) / edge.diameterM + edge.sumK;
      return {
        kind: 'quadratic',
        linearPaSPerM3: 0,
        quadraticPaS2PerM6: (loss * rho * rho) / (2 * edge.rhoKgPerM3 * area ** 2),
      };
    }
    case 'fixedFlow':
      return { kind: 'fixedFlow', massFlowKgPerS: edge.mKgPerS };
    case 'fanTable':
      return {
        kind: 'fanCurve',
        points: edge.points.map(([flow, rise]) => ({
          volumeFlowM3PerS: flow / rho,
          pressureRisePa: rise,
        })),
        beyondShutOff: 'extended',
        interpolation: 'linear',
      };
    case 'damper':
      return {
        kind: 'oneWayDamper',
        coefficientM3PerSPaN: edge.C / rho,
        exponent: edge.n,
        crackingPressurePa: edge.crackPa,
        ...(edge.leakC === undefined
          ? {}
          : {
              closedLeakage: {
                coefficientM3PerSPaN: edge.leakC / rho,
                exponent: edge.leakN ?? 0.65,
              },
            }),
      };
  }
}
