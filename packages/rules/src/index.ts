/**
 * Published limits as data with document, edition and status, and the step that turns a study into findings.
 *
 * Central type: {@link Finding}. Read next: `finding.ts`, then `judge.ts`; the data is in `limit-sets/`.
 */
export type { AirFacts, DoorFacts, HoodFacts } from './air-facts.js';
export { cautions } from './cautions.js';
export { chooseLimit } from './choose-limit.js';
export type { LimitChoice, MissingFact } from './choose-limit.js';
export { cureKinds, cureOrders, cureOrderSource } from './cures/cure-orders.js';
export type { CuredFinding, CureKind, CureOrder } from './cures/cure-orders.js';
export { verdictsByUrgency } from './finding.js';
export type { Finding, FindingSituation, LimitedQuantity, Verdict } from './finding.js';
export type {
  AmbientCoLevel,
  DraftCorner,
  DraftLimit,
  ExtractLimit,
  FlueCoLimit,
  HouseLimit,
  SpillageTimeLimit,
} from './further-limits.js';
export { doorForceGuides, judgeDoorForce } from './guidance/door-force.js';
export type { DoorForceGuide, DoorForceInput } from './guidance/door-force.js';
export { judgeHoodCapture } from './guidance/hood-capture-california.js';
export type { JudgeHoodCaptureInput } from './guidance/hood-capture-california.js';
export { hoodFlowGuidance, judgeHoodFlow } from './guidance/hood-flow.js';
export type { HoodFlowGuidance, HoodPlace, JudgeHoodFlowInput } from './guidance/hood-flow.js';
export { judgeDiffuser } from './guidance/make-up-diffuser.js';
export type { JudgeDiffuserInput } from './guidance/make-up-diffuser.js';
export { jetConstants, judgeJetAtHood } from './guidance/make-up-jet.js';
export type { JudgeJetInput } from './guidance/make-up-jet.js';
export { judgeVelocity, velocityGuidance } from './guidance/make-up-velocity.js';
export type {
  JudgeVelocityInput,
  VelocityGuidance,
  VelocityPlace,
} from './guidance/make-up-velocity.js';
export { judgeNetFlow } from './guidance/net-flow-by-climate.js';
export type { JudgeNetFlowInput, WallClimate } from './guidance/net-flow-by-climate.js';
export {
  garageGuidePa,
  judgeGarageWall,
  judgeSoilGasSuction,
  soilGasGuidePa,
} from './guidance/suction-on-ground-and-garage.js';
export { judge } from './judge.js';
export type { JudgeInput } from './judge.js';
export { judgeAmbientCo } from './judge-ambient-co.js';
export type { JudgeAmbientCoInput } from './judge-ambient-co.js';
export { judgeCombustion } from './judge-combustion.js';
export type {
  CombustionFinding,
  CombustionSubject,
  JudgeCombustionInput,
} from './judge-combustion.js';
export { judgeDraft, weakestDraft } from './judge-draft.js';
export type { JudgeDraftInput } from './judge-draft.js';
export { judgeExtract } from './judge-extract.js';
export { airFreeCo, judgeFlueCo } from './judge-flue-co.js';
export type { JudgeFlueCoInput } from './judge-flue-co.js';
export { judgeHouse } from './judge-house.js';
export type { JudgeHouseInput } from './judge-house.js';
export { judgeSpillageTime } from './judge-spillage-time.js';
export type { JudgeSpillageTimeInput } from './judge-spillage-time.js';
export type { JudgedStudy } from './judged-study.js';
export { limitSetIssues } from './limit-set-issues.js';
export type { LimitSetIssueCode } from './limit-set-issues.js';
export { limitSetJsonSchema } from './limit-set-json-schema.js';
export { limitSetSchema } from './limit-set-schema.js';
export { limitSetById } from './limit-set-by-id.js';
export { defaultLimitSet, limitSets } from './limit-sets.js';
export type {
  AppliesTo,
  ChimneyFacts,
  LimitedFuel,
  LimitedVent,
  VentPartner,
} from './applies-to.js';
export type { Exclusion, Limit, LimitSet } from './limit-set.js';
export {
  judgingAssumptions,
  leastNearBandPa,
  nearBand,
  ruleAssumptions,
  ruleNearShare,
} from './near-band.js';
export { programmeTest } from './programme-test.js';
export type { ProgrammeTest } from './programme-test.js';
export { readLimitSet } from './read-limit-set.js';
export type { ReadLimitSetResult } from './read-limit-set.js';
export { readScreenFacts } from './read-screen-facts.js';
export type { ReadScreenFactsResult } from './read-screen-facts.js';
export { ruleRegions } from './rule-finding.js';
export type { ArithmeticLine, RuleFinding, RuleRegion } from './rule-finding.js';
export { runScreens } from './run-screens.js';
export type { ScreenOptions } from './run-screens.js';
export type {
  ApplianceFacts,
  CombustionOpening,
  DeviceFacts,
  DryerFitting,
  MakeUpFacts,
  NearbySource,
  OpeningCover,
  ScreenFacts,
  ZoneFacts,
} from './screen-facts.js';
export { dryerFittings } from './screen-facts.js';
export { screenFactsIssues } from './screen-facts-issues.js';
export type { ScreenFactsIssueCode } from './screen-facts-issues.js';
export { screenFactsSchema } from './screen-facts-schema.js';
export { freeAreaOf, louvreFreeShare } from './screens/louvre-free-area.js';
export {
  minnesotaColumns,
  minnesotaPassiveOpening,
  minnesotaPassiveOpenings,
} from './screens/minnesota-passive-openings.js';
export type { MinnesotaColumn, PassiveOpeningRow } from './screens/minnesota-passive-openings.js';
export type {
  TestBaseline,
  TestConfiguration,
  TestedDoors,
  TestedExhaust,
  TestFiring,
} from './test-configuration.js';
export { testStates } from './test-states.js';
export type { TestState } from './test-states.js';
export { RulesArgumentError } from './rules-argument-error.js';
export { unknownLimitSet } from './unknown-limit-set.js';
