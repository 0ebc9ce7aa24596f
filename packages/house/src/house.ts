import type { FlowLawDescription, ShelterClass } from '@evendraft/airflow';
import type { Diffuser } from './diffuser.js';
import type { Flue } from './flue.js';
import type { ForcedAirSystem } from './forced-air.js';
import type { Outlet, TestPreparation } from './outlet.js';
import type { Ventilator } from './ventilator.js';

export type { Face, Outlet, TestPreparation } from './outlet.js';
export type { Ventilator, VentilatorMode } from './ventilator.js';

/** How sure a source is: read in the document, restated by another text, recalled, chosen by this project, or calculated. */
export type SourceStatus = (typeof sourceStatuses)[number];

/** Every source status, the surest first. */
export const sourceStatuses = [
  'found',
  'found second-hand',
  'memory',
  'our choice',
  'derived',
  'common practice, no source',
] as const;

/** Where a number comes from. */
export interface Source {
  readonly document: string;
  readonly edition?: string;
  readonly section?: string;
  readonly status: SourceStatus;
}

/** A value that a study uses and the user did not give. Every one is listed in the report. */
export interface Assumption {
  /** Path in the house file of the item it belongs to, e.g. `exhaust.hood`. */
  readonly origin: string;
  /** What is assumed, e.g. `shut-off pressure`. */
  readonly what: string;
  /** The value: a number in SI with its dimension, or words. */
  readonly value: { readonly si: number; readonly dimension: AssumedDimension } | string;
  readonly source: Source;
}

/** Dimensions in which an assumed number may be printed; names of `@evendraft/units`. */
export type AssumedDimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'volumeFlow'
  | 'pressure'
  | 'temperature'
  | 'speed'
  | 'angle'
  | 'ratio';

/** A room, floor or buffer space with one pressure and one temperature. */
export interface Zone {
  /** The user's own name; unique among zones and surroundings. */
  readonly id: string;
  readonly origin: string;
  readonly kind: ZoneKind;
  /** Floor above the house's datum, the lowest living floor unless the user says otherwise [m]. */
  readonly floorHeightM: number;
  /** Floor to ceiling [m]. */
  readonly heightM: number;
  readonly volumeM3: number;
  /** Air temperature [°C], or `outdoors` where it follows the weather. */
  readonly temperatureC: number | 'outdoors';
}

/** Living zones are inside the tested envelope; the others are buffers outside it, a basement is inside unless said. */
export type ZoneKind = (typeof zoneKinds)[number];

/** Every kind of zone. */
export const zoneKinds = [
  'living',
  'basement',
  'closet',
  'attic',
  'garage',
  'crawl space',
  'shaft',
] as const;

/** Kinds of zones inside the envelope that an airtightness test takes in; the others are buffers around it. */
export const insideZoneKinds: readonly ZoneKind[] = ['living', 'basement', 'closet'];

/** Something beyond the house whose pressure and temperature are given: a neighbour, a corridor, a shaft. */
export interface Surrounding {
  readonly id: string;
  readonly origin: string;
  /** Minus undisturbed outdoors at the house's datum [Pa]. */
  readonly pressurePa: number;
  readonly temperatureC: number;
}

/** A share of the tested leakage, spread over one surface of one zone. Shares add up to one. */
export interface LeakShare {
  readonly origin: string;
  readonly zone: string;
  readonly surface: 'walls' | 'ceiling' | 'floor';
  /** `outdoors` on walls means spread evenly over the four faces. */
  readonly to: Outlet;
  /** Share of the tested leakage [-]. */
  readonly share: number;
}

/** The airtightness result, before separately modelled openings are taken off. */
export interface Airtightness {
  readonly origin: string;
  /** Flow exponent n of the whole envelope [-]. */
  readonly exponent: number;
  /** One case for a test, two ends for a plan; the tight end comes first. */
  readonly cases: readonly AirtightnessCase[];
  /** Whether neighbours were held at the same pressure during the test, so that party walls did not leak. */
  readonly guarded: boolean;
  readonly direction: 'depressurized' | 'pressurized' | 'both' | 'not stated';
  /**
   * Flow coefficients of the leaks by case, where the house was changed since its test; else what the test found less
   * what was open during it [m3/(s Pa^n)].
   */
  readonly remainingM3PerSPaN?: readonly number[];
}

/** One airtightness to study. */
export interface AirtightnessCase {
  readonly name: 'tested' | 'tight end' | 'loose end' | 'planned';
  /** Flow through the envelope at the test pressure, air at 20 °C and 101,325 Pa [m³/s]. */
  readonly volumeFlowM3PerS: number;
  /** Test pressure [Pa]. */
  readonly pressurePa: number;
}

/** A hole that is always there: grille, passive vent, attic vents, barometric inlet. */
export interface Opening {
  readonly id: string;
  readonly origin: string;
  readonly zone: string;
  readonly to: Outlet;
  /** Centre above the zone's floor [m]. */
  readonly heightM: number;
  /** Present on an opening that brings combustion air: whether it stands near the ceiling or near the floor. */
  readonly combustionAir?: 'high' | 'low';
  /** Its law; flow is positive from the zone outwards. */
  readonly law: FlowLawDescription;
  /** Positions that the study goes through, where it can be shut: a window. Without it always open. */
  readonly positions?: readonly ('open' | 'shut')[];
  /** Position in the baseline; shut when absent. */
  readonly baselinePosition?: 'open' | 'shut';
  /** Height that air gains on the way in through its law: a duct that rises [m]. */
  readonly riseM?: number;
  /** What stands in series with it, on the way in: a duct before a flap. */
  readonly parts?: readonly PathPart[];
  readonly duringTest: TestPreparation;
}

/** Something that air passes in series with a fan or an opening: a duct, a damper. */
export interface PathPart {
  /** `duct`, `inlet duct`, `damper`: unique within its item. */
  readonly name: string;
  /** Flow is positive in the direction that air takes when the item does its work. A damper's is that of the open one. */
  readonly law: FlowLawDescription;
  /** Height gained in that direction [m]. */
  readonly riseM: number;
  /** Present on a damper that closes: its law then, or that the tested leakage holds what it lets through. */
  readonly closed?: FlowLawDescription | 'inside the tested leakage';
}

/** An interior door, archway or stair opening: a tall opening that states open or shut. */
export interface Door {
  readonly id: string;
  readonly origin: string;
  readonly between: readonly [string, string];
  /** What stays open when it is shut: the undercut, at the floor. An archway's is that of the open one. */
  readonly shut: FlowLawDescription;
  /** The open doorway, from the floor up. */
  readonly open: FlowLawDescription;
  /** What passes air besides. */
  readonly parts?: readonly DoorPart[];
  /** Positions to study; both unless the user fixes one. */
  readonly positions: readonly ('open' | 'shut')[];
  readonly baselinePosition: 'open' | 'shut';
}

/** A grille, a louvred leaf or a jump duct that belongs to a door. */
export interface DoorPart {
  readonly name: 'grille' | 'louvre' | 'jump duct';
  readonly law: FlowLawDescription;
  /** Centre above the floor; of a louvre, its lower edge [m]. */
  readonly heightM: number;
  /** Its end in the second zone, above the same floor, where that is at another height [m]. */
  readonly endHeightM?: number;
  /** In which positions of the door it passes air. */
  readonly when: 'shut' | 'always';
}

/** Kinds of devices that carry air between a zone and outdoors. */
export type DeviceKind = (typeof deviceKinds)[number];

/** Every kind of device. */
export const deviceKinds = [
  'hood',
  'downdraft',
  'dryer',
  'condensing dryer',
  'bath fan',
  'central vacuum',
  'attic fan',
  'summer cooling fan',
  'subslab fan',
  'exhaust fan',
  'supply fan',
  'evaporative cooler',
] as const;

/** One speed of a device. */
export interface DeviceSpeed {
  readonly name: string;
  /** The flow the user gave, or the curve's free delivery [m³/s]. */
  readonly ratedFlowM3PerS: number;
  /** Flow is positive from the zone outdoors for exhaust, from outdoors into the zone for supply. */
  readonly law: FlowLawDescription;
  /** Its curve rises somewhere, and every flow at which it can work is wanted; its law is then the envelope. */
  readonly everyFlow?: boolean;
}

/** What stands in series with a fan whose law is that of the bare fan. */
export interface DevicePath {
  /** From where the air comes to the fan. */
  readonly before: readonly PathPart[];
  /** From the fan on. */
  readonly after: readonly PathPart[];
  /** The fan that stands still, which air passes both ways. */
  readonly stoppedLaw: FlowLawDescription;
}

/** What makes something run or open: it follows its driver, at all speeds or at the named ones. */
export interface Interlock {
  readonly driver: string;
  readonly speeds?: readonly string[];
}

/** A fan that exhausts air from a zone or supplies air to one. */
export interface Device {
  readonly id: string;
  readonly origin: string;
  readonly kind: DeviceKind;
  readonly direction: 'exhaust' | 'supply';
  readonly zone: string;
  readonly to: Outlet;
  /** Inlet or outlet above the zone's floor [m]. */
  readonly heightM: number;
  /** Slowest first. Empty for a device that exhausts nothing. */
  readonly speeds: readonly DeviceSpeed[];
  /** Leakage through the closed damper while it is off, where the user gave one; else it stays in the tested leakage. */
  readonly offLaw?: FlowLawDescription;
  /** Ducts and dampers in series with its fan; absent where each law is that of the device as installed. */
  readonly path?: DevicePath;
  /** What opens the dampers in its path, where that is not the device itself. */
  readonly damperOpensWith?: Interlock;
  readonly duringTest: TestPreparation;
  /** Of a supply fan: area through which its air enters the room [m2]. */
  readonly faceAreaM2?: number;
  /** Of a supply fan. */
  readonly diffuser?: Diffuser;
  /** Present on a device that starts with another instead of by hand. */
  readonly interlock?: Interlock;
  /** Runs in every state but the baseline. */
  readonly continuous: boolean;
}

/** A make-up air opening behind a damper that opens with its driver. */
export interface MakeUpOpening {
  readonly id: string;
  readonly origin: string;
  readonly zone: string;
  readonly to: Outlet;
  readonly heightM: number;
  readonly openLaw: FlowLawDescription;
  /** Leakage of the closed damper, where the user gave one. */
  readonly closedLaw?: FlowLawDescription;
  /** What stands in series with it, on the way in. */
  readonly parts?: readonly PathPart[];
  readonly duringTest: TestPreparation;
  readonly interlock: Interlock;
  /** Hood beside whose exhaust its air comes out of a plenum. */
  readonly throughHood?: string;
  /** Area through which its air enters the room, for the face velocity [m2]. */
  readonly faceAreaM2?: number;
  readonly diffuser?: Diffuser;
}

/** How an appliance gets rid of its combustion gas. */
export type VentType = (typeof ventTypes)[number];

/** Every vent type. */
export const ventTypes = [
  'natural draft',
  'fan assisted',
  'induced draft',
  'power vented',
  'direct vent',
  'sealed combustion',
  'open hearth',
  'closed stove',
  'unvented',
  'electric',
] as const;

/** Kinds of combustion appliances and hearths. */
export type ApplianceKind = (typeof applianceKinds)[number];

/** Every kind of appliance. */
export const applianceKinds = [
  'water heater',
  'furnace',
  'boiler',
  'fireplace',
  'wood stove',
  'room heater',
  'decorative gas appliance',
] as const;

/** A combustion appliance or hearth that the house's suction may upset. */
export interface Appliance {
  readonly id: string;
  readonly origin: string;
  readonly kind: ApplianceKind;
  readonly vent: VentType;
  readonly fuel: 'gas' | 'oil' | 'wood' | 'pellets' | 'not stated';
  readonly zone: string;
  readonly inputW?: number;
  /** Ids of other appliances on the same vent. */
  readonly sharesVentWith: readonly string[];
  readonly ventDamper: boolean;
  readonly chimney?: { readonly heightM?: number; readonly exterior: boolean | undefined };
  /** Present where the house file describes its flue, which is then an opening of the house. */
  readonly flue?: Flue;
}

/** How the wind meets a house. */
export interface WindExposure {
  /** Class of the shelter around it, 1 none to 5 neighbours close by. */
  readonly shelter: ShelterClass;
  /** Pressure coefficients of its walls: the correlation, or the table of low buildings. */
  readonly walls: 'correlation' | 'table';
  /** How what ends above its roof stands in the wind. */
  readonly outlets: 'clear of the roof' | 'not clear of the roof';
  /** Pitch of its roof, where openings in it meet the wind of its slopes [°]. */
  readonly roofPitchDeg?: number;
}

/** One weather to study. */
export interface Weather {
  readonly name: string;
  readonly origin: string;
  readonly outdoorTemperatureC: number;
  /** Wind at eave height of the house [m/s]. */
  readonly windSpeedMPerS: number;
  /** Direction the wind comes from, clockwise from north [°]. */
  readonly windFromDeg: number;
}

/** A house in SI: everything a study needs and nothing that depends on how it was typed. */
export interface House {
  readonly name: string;
  readonly floorAreaM2: number;
  readonly volumeM3: number;
  /** Above sea level [m]. */
  readonly altitudeM: number;
  /** Azimuth of the front's outward normal, clockwise from north [°]. */
  readonly frontFacesDeg: number;
  /** Length of front and back over length of the sides [-]. */
  readonly sideRatio: number;
  /** Unsheltered, walls by the correlation, when absent. */
  readonly wind?: WindExposure;
  readonly zones: readonly Zone[];
  readonly surroundings: readonly Surrounding[];
  readonly airtightness: Airtightness;
  readonly leakShares: readonly LeakShare[];
  readonly openings: readonly Opening[];
  readonly doors: readonly Door[];
  readonly devices: readonly Device[];
  readonly makeUpOpenings: readonly MakeUpOpening[];
  readonly ventilators: readonly Ventilator[];
  readonly forcedAir?: readonly ForcedAirSystem[];
  readonly appliances: readonly Appliance[];
  readonly weathers: readonly Weather[];
  readonly assumptions: readonly Assumption[];
  /** `sha256:` and the digest of the text it was read from, or of its canonical JSON [-]. */
  readonly digest: string;
}
