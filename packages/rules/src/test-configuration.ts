import type { DeviceKind, Source } from '@evendraft/house';

/** Which exhaust a programme runs in its test, each device at its highest speed. */
export type TestedExhaust = (typeof testedExhausts)[number];

/** Every selection of exhaust. */
export const testedExhausts = [
  'none',
  'all',
  'two largest',
  'largest',
  'dryers and larger',
  'continuous only',
] as const;

/** How interior doors stand; `where worse` is each combination, of which the worst one counts. */
export type TestedDoors = (typeof testedDoors)[number];

/** Every way the doors may be asked to stand. */
export const testedDoors = ['where worse', 'all shut', 'all open', 'as found'] as const;

/** What is subtracted from the reading. */
export type TestBaseline = (typeof testBaselines)[number];

/** Every baseline. */
export const testBaselines = [
  'everything off, doors open',
  'everything off, same doors',
  'nothing is subtracted',
] as const;

/** In which order appliances fire during the test. */
export type TestFiring = (typeof testFirings)[number];

/** Every order of firing. */
export const testFirings = [
  'nothing',
  'smallest input first, then all',
  'each alone, then all',
  'all',
] as const;

/** A programme's own test as a state of the house that can be run; see `testStates`. */
export interface TestConfiguration {
  /** Unique within its set, kebab-case. */
  readonly id: string;
  /** What the house is like, the programme's words paraphrased. */
  readonly words: string;
  readonly exhaust: TestedExhaust;
  /** For `dryers and larger`: other exhaust runs where its rated flow is above this [m³/s]. */
  readonly largerThanM3PerS?: number;
  /** Kinds of exhaust that stay off whatever was selected. */
  readonly without?: readonly DeviceKind[];
  readonly doors: TestedDoors;
  readonly hearthDamper: 'closed' | 'not stated';
  readonly airHandler: 'off' | 'where it lowers the zone' | 'not stated';
  readonly firing: TestFiring;
  readonly baseline: TestBaseline;
  readonly source: Source;
}
