// Houses and studies for tests, synthetic, made for this project. The pressures are typed, not solved.
import type { Appliance, Device, House } from '@evendraft/house';
import type {
  StateBalance,
  UnsolvedState,
  WorstCaseStudy,
  WorstPressure,
} from '@evendraft/studies';

/** A gas water heater alone on its vent, but for what is given. */
export function appliance(given: Partial<Appliance> = {}): Appliance {
  return {
    id: 'water heater',
    origin: 'appliances.water heater',
    kind: 'water heater',
    vent: 'natural draft',
    fuel: 'gas',
    zone: 'basement',
    sharesVentWith: [],
    ventDamper: false,
    ...given,
  };
}

/** An exhaust device with the speeds given, slowest first. */
export function device(given: {
  readonly id: string;
  readonly kind: Device['kind'];
  readonly speeds: Readonly<Record<string, number>>;
  readonly direction?: Device['direction'];
  readonly interlock?: Device['interlock'];
}): Device {
  return {
    id: given.id,
    origin: `exhaust.${given.id}`,
    kind: given.kind,
    direction: given.direction ?? 'exhaust',
    zone: 'basement',
    to: { kind: 'outdoors' },
    heightM: 1,
    speeds: Object.entries(given.speeds).map(([name, ratedFlowM3PerS]) => ({
      name,
      ratedFlowM3PerS,
      law: { kind: 'fixedFlow', volumeFlowM3PerS: ratedFlowM3PerS },
    })),
    duringTest: 'closed',
    continuous: false,
    ...(given.interlock === undefined ? {} : { interlock: given.interlock }),
  };
}

/** A hood of three speeds and a dryer over a basement, but for what is given. */
export function house(given: Partial<House> = {}): House {
  return {
    name: 'Test Row 1',
    floorAreaM2: 150,
    volumeM3: 375,
    altitudeM: 0,
    frontFacesDeg: 0,
    sideRatio: 1,
    zones: [zone('basement', 'basement'), zone('living room', 'living')],
    surroundings: [],
    airtightness: {
      origin: 'airtightness',
      exponent: 0.65,
      cases: [{ name: 'tested', volumeFlowM3PerS: 0.15, pressurePa: 50 }],
      guarded: false,
      direction: 'depressurized',
    },
    leakShares: [],
    openings: [],
    doors: [],
    devices: [
      device({ id: 'dryer', kind: 'dryer', speeds: { on: 0.07 } }),
      device({ id: 'hood', kind: 'hood', speeds: { low: 0.1, medium: 0.2, high: 0.4 } }),
    ],
    makeUpOpenings: [],
    ventilators: [],
    appliances: [appliance()],
    weathers: [],
    assumptions: [],
    digest: 'sha256:test',
    ...given,
  };
}

function zone(id: string, kind: House['zones'][number]['kind']): House['zones'][number] {
  return {
    id,
    origin: `zones.${id}`,
    kind,
    floorHeightM: 0,
    heightM: 2.4,
    volumeM3: 180,
    temperatureC: 20,
  };
}

/** What is typed of a study; the rest follows. */
export interface TypedStudy {
  readonly running?: Readonly<Record<string, string>>;
  /** Largest fall below the baseline, of every appliance's zone [Pa]. */
  readonly changePa?: number;
  /** Lowest pressure against outdoors, of every appliance's zone [Pa]. */
  readonly lowestPa?: number;
  readonly baselinePa?: number;
  readonly unsolved?: number;
  readonly noneSolved?: boolean;
  readonly unique?: boolean;
  readonly enclosureRadiusPa?: number | null;
  readonly notEnclosed?: number;
}

/** A worst-case study with one solved situation, `all on`, in which every appliance is at its worst. */
export function study(of: House, typed: TypedStudy = {}): WorstCaseStudy {
  const { changePa = -1, baselinePa = -0.5, unsolved = 0, noneSolved = false } = typed;
  const situation = {
    state: { running: typed.running ?? { hood: 'high', dryer: 'on' }, doors: {} },
    label: 'all on',
    weather: 'cold',
    airtightness: 'tested',
  };
  const fall: WorstPressure = {
    ...situation,
    pressurePa: baselinePa + changePa,
    changeFromBaselinePa: changePa,
    baselinePa,
  };
  const lowest: WorstPressure = { ...fall, pressurePa: typed.lowestPa ?? fall.pressurePa };
  const balance: StateBalance = {
    ...situation,
    status: 'solved',
    zones: [],
    devices: [],
    makeUp: [],
    proof: {
      iterations: 5,
      largestRelativeResidual: 1e-12,
      unique: typed.unique ?? true,
      regularisationPa: 0.001,
    },
  };
  const failed: UnsolvedState = {
    ...situation,
    label: 'not solved',
    status: 'not solved',
    reason: 'infeasible',
    concerns: [],
    hint: 'add an opening',
  };
  return {
    question: 'worst case',
    situations: noneSolved ? [] : [balance],
    unsolved: Array.from({ length: unsolved }, () => failed),
    zones: [],
    appliances: noneSolved
      ? []
      : of.appliances.map((one) => ({
          appliance: one.id,
          zone: one.zone,
          lowest,
          largestFall: fall,
        })),
    counts: { states: 1, weathers: 1, airtightnessCases: 1, solves: 2 },
    proof: {
      largestRelativeResidual: 1e-12,
      largestEnclosureRadiusPa:
        typed.enclosureRadiusPa === undefined ? 1e-9 : typed.enclosureRadiusPa,
      notEnclosed: typed.notEnclosed ?? 0,
      mostIterations: 5,
    },
  };
}
