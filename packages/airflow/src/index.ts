/**
 * The laws of air, in SI: what air weighs, what height and wind do to its pressure, how a leak, an
 * opening, a duct, a damper or a fan answers to a pressure difference, what a flame gives and how a
 * flue draws. Imports nothing.
 *
 * Central type: `Air`, the temperature, density and viscosity of one place. Read next:
 * `air/air-at.ts`, then the flow laws in `laws`.
 */

// Air
export type { Air } from './air/air.js';
export { airAt, type AirPlace } from './air/air-at.js';
export { airViscosity } from './air/air-viscosity.js';
export { gravity } from './air/gravity.js';
export { moistAirDensity, type MoistAirState } from './air/moist-air-density.js';
export { referenceAir } from './air/reference-air.js';
export { saturationPressure } from './air/saturation-pressure.js';
export { standardPressure } from './air/standard-pressure.js';

// Stack
export { neutralLevel, type NeutralLevelState } from './stack/neutral-level.js';
export { stackPressure, type StackClimb } from './stack/stack-pressure.js';

// Wind
export {
  infiltrationWithFan,
  type FanRule,
  type InfiltrationAndFan,
} from './wind/infiltration-with-fan.js';
export { localWindSpeed, type WindTransfer } from './wind/local-wind-speed.js';
export { lowRiseCoefficient, type LowRiseSurfaceInWind } from './wind/low-rise-coefficient.js';
export {
  lowRiseSurfaces,
  type FiveDirections,
  type LowRiseCoefficients,
  type LowRiseSurface,
  type Shelter,
} from './wind/low-rise-surfaces.js';
export {
  exposedCapCoefficient,
  lowOutletCoefficient,
  type RoofOutlet,
} from './wind/roof-outlet.js';
export {
  shelterClasses,
  type ShelterClass,
  type ShelterClassData,
} from './wind/shelter-classes.js';
export { superposedInfiltration, type HouseInWeather } from './wind/superposed-infiltration.js';
export { terrains, type Terrain, type TerrainProfile } from './wind/terrains.js';
export { wallPressureCoefficient, type WallInWind } from './wind/wall-pressure-coefficient.js';
export { windIncidence, type WindAndFace } from './wind/wind-incidence.js';
export { windPressure, type WindOnFace } from './wind/wind-pressure.js';

// Leakage
export {
  coefficientAtReferenceAir,
  type MeasuredCoefficient,
} from './leakage/coefficient-at-reference-air.js';
export { coefficientFromFlow, type LeakByFlow } from './leakage/coefficient-from-flow.js';
export {
  coefficientFromLeakageArea,
  type LeakByArea,
} from './leakage/coefficient-from-leakage-area.js';
export { flowAtPressure, type LeakAtPressure } from './leakage/flow-at-pressure.js';
export {
  leakageAreaFromCoefficient,
  type LeakByCoefficient,
} from './leakage/leakage-area-from-coefficient.js';
export {
  effectiveLeakageAreaBasis,
  equivalentLeakageAreaBasis,
  type LeakageAreaBasis,
} from './leakage/leakage-area-basis.js';

// Ducts
export {
  dryerFittingLengths,
  type DryerFitting,
  type FittingLength,
} from './ducts/dryer-fitting-lengths.js';
export { ductLoss, type DuctFlow } from './ducts/duct-loss.js';
export {
  ductRoughnesses,
  type DuctMaterial,
  type DuctRoughness,
} from './ducts/duct-roughnesses.js';
export type { DuctSize } from './ducts/duct-size.js';
export {
  enlargementLoss,
  enlargementLossCoefficient,
  type Enlargement,
} from './ducts/enlargement-loss.js';
export {
  equivalentLength,
  lossFromEquivalentLength,
  type FittedDuct,
} from './ducts/equivalent-length.js';
export { fittingLosses, type DuctFitting, type FittingLoss } from './ducts/fitting-losses.js';
export { flatOvalDuctSize, type FlatOvalAxes } from './ducts/flat-oval-duct-size.js';
export { flexibleDuctFactor, type CompressedDuct } from './ducts/flexible-duct-factor.js';
export { freeAreaLossCoefficient, type OpeningInDuct } from './ducts/free-area-loss-coefficient.js';
export { frictionFactor } from './ducts/friction-factor.js';
export { rectangularDuctSize, type RectangularSides } from './ducts/rectangular-duct-size.js';
export { roundDuctSize } from './ducts/round-duct-size.js';
export { screenLossCoefficient } from './ducts/screen-loss-coefficient.js';
export { nextStandardRoundSize, standardRoundSizes } from './ducts/standard-round-sizes.js';
export {
  terminalOpenings,
  type DuctTerminal,
  type TerminalOpening,
} from './ducts/terminal-openings.js';
export { velocityFromPressure, velocityPressure } from './ducts/velocity-pressure.js';

// Dampers
export { closedDamperLaw, type ClosedDamper } from './dampers/closed-damper-law.js';
export {
  damperLeakageClasses,
  type DamperLeakage,
  type DamperLeakageClass,
  type DamperLeakageLimit,
} from './dampers/damper-leakage-classes.js';
export {
  gravityDamperLaws,
  type GravityDamper,
  type GravityDamperLaws,
} from './dampers/gravity-damper-laws.js';
export {
  motorizedDamperLaws,
  type MotorizedDamper,
  type MotorizedDamperLaws,
} from './dampers/motorized-damper-laws.js';
export { openDamperLaw, type OpenDamper } from './dampers/open-damper-law.js';
export {
  typicalDampers,
  type TypicalDamper,
  type TypicalDamperKind,
} from './dampers/typical-dampers.js';

// Fans
export { constantFlowFan, type ConstantFlowFan } from './fans/constant-flow-fan.js';
export { fanBySimilarity, fanPowerBySimilarity, type FanChange } from './fans/fan-by-similarity.js';
export type { FanPoint } from './fans/fan-point.js';
export { fanRise, type FanInterpolation } from './fans/fan-rise.js';
export { offFanAssumptions, offFanLaw, type OffFan } from './fans/off-fan-law.js';
export {
  operatingPoints,
  type FanAndSystem,
  type OperatingPoint,
} from './fans/operating-points.js';
export { typicalFanCurve, type RatedFan } from './fans/typical-fan-curve.js';
export {
  typicalFans,
  type TypicalFan,
  type TypicalFanKind,
  type TypicalFanPressure,
} from './fans/typical-fans.js';

// Combustion
export { airFreeFraction, type FlueReading } from './combustion/air-free-fraction.js';
export { dewPoint } from './combustion/dew-point.js';
export {
  fuels,
  type AnalysedFuel,
  type Fuel,
  type FuelGas,
  type FuelName,
  type GaseousFuel,
} from './combustion/fuels.js';
export {
  productsOfCombustion,
  type Combustion,
  type CombustionProducts,
} from './combustion/products-of-combustion.js';
export {
  spilledProducts,
  type Spillage,
  type SpilledProducts,
} from './combustion/spilled-products.js';
export {
  typicalFlueGases,
  type FlueGasKind,
  type TypicalFlueGas,
} from './combustion/typical-flue-gases.js';

// Flues
export { barometricRegulator, type BarometricRegulator } from './flues/barometric-regulator.js';
export { draftHoodMixing, type DraftHood, type DraftHoodState } from './flues/draft-hood-mixing.js';
export { draftHoodRelief, typicalReliefArea } from './flues/draft-hood-relief.js';
export {
  flueComponents,
  type FlueComponent,
  type FlueComponentName,
} from './flues/flue-components.js';
export {
  flueConstructions,
  type FlueConstruction,
  type FlueConstructionName,
} from './flues/flue-constructions.js';
export { flueCooling, type CooledGas, type CoolingGas } from './flues/flue-cooling.js';
export { flueDraft, type FlueColumn } from './flues/flue-draft.js';
export { flueDuct } from './flues/flue-duct.js';
export { airAsFlueGas, type FlueGas } from './flues/flue-gas.js';
export {
  flueHeatTransfer,
  outerFilms,
  type FlueSurroundings,
  type OuterFilm,
} from './flues/flue-heat-transfer.js';
export { flueInSteadyState } from './flues/flue-in-steady-state.js';
export { flueLossCoefficient, type FlueComponentCounts } from './flues/flue-loss-coefficient.js';
export { flueLosses } from './flues/flue-losses.js';
export { flueSurface, type FluePiece } from './flues/flue-piece.js';
export type { FlueFlow, FluePieceState, FlueState } from './flues/flue-state.js';
export { flueWallAtRest, type FlueWall } from './flues/flue-wall.js';
export { hearthFlow, type BurningHearth, type HearthFlow } from './flues/hearth-flow.js';
export {
  hearthStages,
  type HearthKind,
  type HearthStage,
  type HearthStageName,
} from './flues/hearth-stages.js';
export { mixFlueGases, type GasStream } from './flues/mix-flue-gases.js';
export { warmFlue, type FlueHeat, type FlueStep, type WarmedFlue } from './flues/warm-flue.js';

// Flow laws of links
export type {
  ClosedLeakage,
  DoorwayDescription,
  DuctDescription,
  DuctSection,
  FanCurveDescription,
  FixedFlowDescription,
  FlowLawDescription,
  GravityDamperDescription,
  OneWayDamperDescription,
  OrificeDescription,
  PowerLawDescription,
  QuadraticDescription,
} from './laws/flow-law-description.js';
export type {
  FlowLaw,
  FlowReach,
  LawBlock,
  LawGroup,
  LawProblem,
  LawProblemCode,
  LawStreams,
  LawWarning,
  LawWarningCode,
  LinkState,
  Preparation,
} from './laws/flow-law.js';
export { exchangeCoefficient } from './laws/exchange-coefficient.js';
export {
  checkFlowLaw,
  flowAt,
  flowLawOf,
  flowLawWarnings,
  flowLaws,
  type FlowLawKind,
  type LinkFlow,
} from './laws/flow-laws.js';
export { inletAir, type AirState, type InletAir } from './laws/inlet-air.js';
export { nearZeroWidthPa } from './laws/near-zero-width.js';
export { powerTable } from './laws/internal/power.js';

// Where numbers come from, and what a wrong argument throws
export { AirflowArgumentError } from './airflow-argument-error.js';
export type { Provenance, SourceStatus } from './provenance.js';
