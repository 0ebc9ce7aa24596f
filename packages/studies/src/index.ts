/**
 * Questions asked of a house with numeric answers: repeated solves, no limits, no formatting.
 *
 * Central type: {@link StateBalance}, one solved situation. Read next: `worst-case-study.ts`.
 */
export type {
  ColumnFindings,
  DeliveredFlow,
  LawRangeWarning,
  MakeUpFlow,
  ProofSummary,
  Situation,
  StateBalance,
  UnsolvedState,
  ZonePressure,
} from './state-balance.js';
export { balanceStudy, baselineStudy } from './balance-study.js';
export type { BalanceQuestion, BaselineResult } from './balance-study.js';
export { resolveColumns } from './resolve-columns.js';
export type { ResolvedSituation } from './resolve-columns.js';
export { airSpecificHeat, sensibleHeat, yearlyAirHeat, yearlyFanEnergy } from './air-heat.js';
export type { YearlyAirHeat, YearOfWeather } from './air-heat.js';
export { attributionStudy } from './attribution-study.js';
export type {
  AttributionOptions,
  AttributionStudy,
  DeviceShare,
  LadderStep,
} from './attribution-study.js';
export { doorForce, usualDoorLeaf } from './door-force.js';
export type { DoorLeaf } from './door-force.js';
export { closedDamperLeakage } from './closed-damper-leakage.js';
export type { ClosedDamperLeakage, LeakageInTest } from './closed-damper-leakage.js';
export { dryerStudy } from './dryer-study.js';
export type { DryerArrangement, DryerQuestion, DryerRow, DryerStudy } from './dryer-study.js';
export { exhaustCurveStudy } from './exhaust-curve-study.js';
export type { ExhaustCurveStudy, ExhaustPoint } from './exhaust-curve-study.js';
export { exhaustCurveOfRemedy } from './exhaust-curve-of-remedy.js';
export { failureStudy } from './failure-study.js';
export type { FailureResult, Infiltration } from './failure-study.js';
export { failureCases } from './failures/failure-cases.js';
export type { FailureCase, FailureFactors } from './failures/failure-cases.js';
export { fanSystemStudy } from './fan-system-study.js';
export type { FanPressurePoint, FanSystemStudy } from './fan-system-study.js';
export { pressureRangeStudy } from './pressure-range-study.js';
export type { PressureRangeStudy, ZoneRange } from './pressure-range-study.js';
export type { PressureTarget, TargetQuantity } from './pressure-target.js';
export { questionOf } from './question-of.js';
export type { MakeUpBuilt, OfferedSizes, Remedy, RemedyKind, SizeDimension } from './remedy.js';
export { sectionStudy } from './section-study.js';
export type { SectionLinkFlow, SectionStudy } from './section-study.js';
export { situationAirStudy, usualDeliveryC } from './situation-air-study.js';
export type { AirEntry, SituationAir } from './situation-air-study.js';
export { sizeRemedy, sizeUntilStopped } from './size-remedy.js';
export type {
  JudgedSize,
  SizeQuestion,
  SizingObstacle,
  SizingOptions,
  SizingResult,
  TargetMargin,
  TriedSize,
  UnfinishedSizing,
} from './size-remedy.js';
export type { DuctRun } from './sized/duct-run.js';
export { airtightness, exhaustFlow, speedCap, transferOpening } from './sized/house-remedies.js';
export {
  barometricMakeUp,
  makeUpDuct,
  motorizedMakeUp,
  passiveOpening,
  poweredMakeUp,
} from './sized/make-up-remedies.js';
export type { MakeUpDuct, MakeUpFlap, MakeUpPlace } from './sized/make-up-remedies.js';
export { StudyArgumentError } from './study-argument-error.js';
export { togetherStudy } from './together-study.js';
export type { TogetherStudy } from './together-study.js';
export { uncertainInputIssues, usualUncertainty } from './uncertain-input.js';
export type { UncertainInput, UncertainInputIssue, UncertainInputKind } from './uncertain-input.js';
export type {
  InputImportance,
  Spread,
  TargetProbability,
  UncertaintyStudy,
  ZoneSpread,
} from './uncertain-pressures.js';
export { uncertaintyStudy, usualSamples } from './uncertainty-study.js';
export type { UncertaintyOptions, UncertaintyQuestion } from './uncertainty-study.js';
export { zoneDifferenceStudy } from './zone-difference-study.js';
export type {
  DifferenceRange,
  ZoneDifference,
  ZoneDifferenceStudy,
} from './zone-difference-study.js';
export { worstCaseStudy } from './worst-case-study.js';
export type { WorstCaseCoverage, WorstCaseStudy } from './worst-case-study.js';
export type {
  PooledOptions,
  Stopped,
  StudyOptions,
  WhenStopped,
  WorstCaseOptions,
} from './study-options.js';
export { createSituationPool } from './workers/situation-pool.js';
export type { SituationPool, SituationWorker } from './workers/situation-pool.js';
export type {
  Asked,
  AskedKind,
  ExtremeState,
  SituationAnswers,
  SituationPlace,
  SituationReply,
  SituationRequest,
} from './workers/situation-request.js';
export { situationAnswerer } from './workers/answer-situations.js';
export { combustionStudy } from './combustion/combustion-study.js';
export type {
  ApplianceCombustion,
  CombustionOptions,
  CombustionStudy,
  SituationReason,
  StudiedSituation,
  UnjudgedSituation,
} from './combustion/combustion-study.js';
export { draftVerdicts } from './combustion/combustion-situation.js';
export type {
  CombustionSituation,
  DraftVerdict,
  FlueState,
} from './combustion/combustion-situation.js';
export type { DraftAtTemperature } from './combustion/draft-by-temperature.js';
export type { DraftThreshold, DraftThresholds } from './combustion/draft-thresholds.js';
export { findDraftRoots } from './combustion/find-draft-roots.js';
export type { DraftQuestion, DraftRoot, DraftRoots } from './combustion/find-draft-roots.js';
export type { FlueReading } from './combustion/flue-readings.js';
export { roomProducts } from './combustion/room-products.js';
export type {
  ProductSource,
  RoomProducts,
  RoomProductsQuestion,
} from './combustion/room-products.js';
export type { RoomAir, SpilledInRooms } from './combustion/spilled-in-rooms.js';
export type { StartCourse, StartCourseRow } from './combustion/start-course.js';
export type { CollarInlet, Vent, VentMember, VentSystem } from './combustion/vent-system.js';
export type { MemberAtFlow, VentsAtFlows } from './combustion/vents-at-flows.js';
export type { VentGas } from './combustion/vent-gas.js';
export type { CourseFlue } from './combustion/warm-up-course.js';
export { yearlyAirStudy } from './yearly-air-study.js';
export type { HourlyYear, YearlyAirStudy } from './yearly-air-study.js';
export { worstOfBalances } from './worst-of-balances.js';
export type {
  ApplianceWorst,
  WorstOfBalances,
  WorstPressure,
  ZoneWorst,
} from './worst-of-balances.js';
