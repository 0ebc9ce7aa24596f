/**
 * The house: schema of the house file, units at the edge, cross-checks, operating states and weather,
 * and the step that compiles a house to a network.
 *
 * Central type: {@link House}, SI data. Read next: `house.ts`, then `compile-house.ts`.
 * Reading text (YAML, positions) is the entry `@evendraft/house/read`, so an embedder who has an object
 * carries no parser.
 */
export type {
  Airtightness,
  AirtightnessCase,
  Appliance,
  ApplianceKind,
  AssumedDimension,
  Assumption,
  Device,
  DeviceKind,
  DevicePath,
  DeviceSpeed,
  Door,
  DoorPart,
  Face,
  House,
  Interlock,
  LeakShare,
  MakeUpOpening,
  Opening,
  Outlet,
  PathPart,
  Source,
  SourceStatus,
  Surrounding,
  TestPreparation,
  Ventilator,
  VentilatorMode,
  VentType,
  Weather,
  Zone,
  ZoneKind,
} from './house.js';
export { afterTest } from './after-test.js';
export { fuelName } from './fuel-name.js';
export { diffuserKinds } from './diffuser.js';
export type { Diffuser, DiffuserKind } from './diffuser.js';
export type { Flue, FlueDamper, FlueInlet, FlueSection, FlueStage } from './flue.js';
export type { DuctLeak, ForcedAirSystem, Register } from './forced-air.js';
export { houseFileJsonSchema } from './house-file-json-schema.js';
export { houseIssues } from './house-issues.js';
export type { HouseIssueCode } from './house-issues.js';
export { kindNames } from './kind-names.js';
export type { KindTable } from './kind-names.js';
export {
  applianceKinds,
  deviceKinds,
  insideZoneKinds,
  sourceStatuses,
  ventTypes,
  zoneKinds,
} from './house.js';
export type { OperatingState } from './operating-state.js';
export { compileHouse, houseScenario, houseWeather } from './compile-house.js';
export type { CompileResult } from './compile-house.js';
export type { CompiledHouse, HouseScenario, HouseWeather, TwoStateLink } from './compiled-house.js';
export { columnDensities } from './compile/column-densities.js';
export type { ColumnDensities } from './compile/column-densities.js';
export { followInterlocks } from './compile/followed-state.js';
export type { FollowedState } from './compile/followed-state.js';
export type { HouseLink, Junction, LinkRole, TwoStateColumn } from './compile/house-link.js';
export { modelledFlows } from './compile/remaining-leakage.js';
export type { ModelledFlow, RemainingLeakage } from './compile/remaining-leakage.js';
export { seriesFlow } from './compile/series-flow.js';
export type { ChainedLaw } from './compile/series-flow.js';
export { baselineOf, countOperatingStates, operatingStates } from './operating-states.js';
export { parseHouse } from './parse-house.js';
export type { HouseResult, ParseHouseOptions } from './parse-house.js';
export { stateLabel } from './state-label.js';
