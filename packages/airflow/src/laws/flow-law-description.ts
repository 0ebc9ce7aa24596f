/** What an opening, damper, duct or fan is, as plain SI data; the `kind` names its law. */
export type FlowLawDescription =
  | PowerLawDescription
  | OrificeDescription
  | QuadraticDescription
  | DuctDescription
  | FixedFlowDescription
  | FanCurveDescription
  | OneWayDamperDescription
  | GravityDamperDescription
  | DoorwayDescription;

/** A leak or crack: Q = C dP^n at reference air. */
export interface PowerLawDescription {
  readonly kind: 'powerLaw';
  /** Flow coefficient at 20 °C and 101,325 Pa [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow exponent, 0.5 to 1 [-]. */
  readonly exponent: number;
}

/** A sharp-edged opening: m = Cd A sqrt(2 rho dP). */
export interface OrificeDescription {
  readonly kind: 'orifice';
  /** Free area [m2]. */
  readonly areaM2: number;
  /** Discharge coefficient, typically 0.6 [-]. */
  readonly dischargeCoefficient: number;
}

/** A duct or crack with a laminar and a turbulent part: dP = a Q + b Q|Q| at reference air. */
export interface QuadraticDescription {
  readonly kind: 'quadratic';
  /** Laminar part a, proportional to viscosity [Pa s/m3]. */
  readonly linearPaSPerM3: number;
  /** Turbulent part b, proportional to density [Pa s2/m6]. */
  readonly quadraticPaS2PerM6: number;
}

/** A duct: sections of different size, roughness and fittings, one behind the other. */
export interface DuctDescription {
  readonly kind: 'duct';
  /** One section or more, in any order; air passes through all of them. */
  readonly sections: readonly DuctSection[];
}

/** A stretch of duct of one size, with the fittings whose losses are stated for that size. */
export interface DuctSection {
  /** Length, without its fittings [m]. */
  readonly lengthM: number;
  /** Four times the area by the perimeter; the diameter of a round duct [m]. */
  readonly hydraulicDiameterM: number;
  /** Area of the cross-section [m2]. */
  readonly areaM2: number;
  /** Roughness of the wall [m]. */
  readonly roughnessM: number;
  /** Factor on the friction, 1 or more; above 1 for flexible duct that is not pulled tight [-]. */
  readonly frictionMultiplier: number;
  /** Sum over fittings, entry, exit, cap and screen, in velocity pressures of this area [-]. */
  readonly lossCoefficient: number;
}

/** A declared constant flow: exactly one of the two fields is given; positive is from → to. */
export interface FixedFlowDescription {
  readonly kind: 'fixedFlow';
  /** Actual volume flow at its inlet [m3/s]. */
  readonly volumeFlowM3PerS?: number;
  /** Mass flow [kg/s]. */
  readonly massFlowKgPerS?: number;
}

/** One point of a fan's characteristic. */
export interface FanPoint {
  /** Pressure behind the fan minus pressure before it; negative when the fan is helped [Pa]. */
  readonly pressureRisePa: number;
  /** Actual volume flow at the fan's inlet [m3/s]. */
  readonly volumeFlowM3PerS: number;
}

/** A fan that blows from → to by a characteristic given as points, in any order. */
export interface FanCurveDescription {
  readonly kind: 'fanCurve';
  readonly points: readonly FanPoint[];
  /** Above shut-off: a backdraft damper stops reverse flow, or the first slope continues. */
  readonly beyondShutOff: 'blocked' | 'extended';
  /** Between points: a monotone cubic (default) or straight lines. */
  readonly interpolation?: 'monotoneCubic' | 'linear';
  /** A part where the rise grows with flow is an error unless its upper monotone envelope is asked. */
  readonly risingPart?: 'envelope';
}

/** A flap that opens from → to above a cracking pressure and, closed, leaks both ways or not at all. */
export interface OneWayDamperDescription {
  readonly kind: 'oneWayDamper';
  /** Flow coefficient of the open flap on the pressure above cracking [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow exponent of the open flap, 0.5 to 1 [-]. */
  readonly exponent: number;
  /** Pressure difference at which the flap starts to open [Pa]. */
  readonly crackingPressurePa: number;
  readonly closedLeakage?: ClosedLeakage;
}

/** What passes a closed damper either way: Q = C dP^n at reference air. */
export interface ClosedLeakage {
  /** Flow coefficient [m3/(s Pa^n)]. */
  readonly coefficientM3PerSPaN: number;
  /** Flow exponent, 0.5 to 1 [-]. */
  readonly exponent: number;
}

/** A blade that opens from → to: shut up to a pressure, then ever wider, fully open from another on. */
export interface GravityDamperDescription {
  readonly kind: 'gravityDamper';
  /** Area of the frame, to which the loss coefficient refers [m2]. */
  readonly areaM2: number;
  /** Loss of the fully open damper in velocity pressures [-]. */
  readonly openLossCoefficient: number;
  /** Pressure difference at which the blade starts to open [Pa]. */
  readonly crackingPressurePa: number;
  /** Pressure difference from which it is fully open [Pa]. */
  readonly fullyOpenPressurePa: number;
  readonly closedLeakage?: ClosedLeakage;
}

/** A doorway or other tall opening, through which air flows both ways where the airs differ in density. */
export interface DoorwayDescription {
  readonly kind: 'doorway';
  /** Clear width [m]. */
  readonly widthM: number;
  /** Clear height from sill to head; the link's heights are those of the sill [m]. */
  readonly heightM: number;
  /** Discharge coefficient; `exchangeCoefficient` gives that of pure exchange [-]. */
  readonly dischargeCoefficient: number;
}
