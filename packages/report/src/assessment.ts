import type {
  Appliance,
  Assumption,
  Device,
  House,
  TestPreparation,
  Weather,
  Zone,
} from '@evendraft/house';
import type { Finding } from '@evendraft/rules';
import type { WorstCaseStudy } from '@evendraft/studies';

/** Everything that one run says about one house; plain JSON, versioned. */
export interface Assessment {
  readonly schema: 'evendraft-assessment';
  readonly schemaVersion: 1;
  readonly libraryVersion: string;
  readonly house: HouseSummary;
  readonly limitSet: {
    readonly id: string;
    readonly name: string;
    /** Edition of this project's data for the set, e.g. `2026-11`. */
    readonly edition: string;
  };
  readonly worstCase: WorstCaseStudy;
  readonly findings: readonly Finding[];
  readonly assumptions: readonly Assumption[];
  /** What this version does not look at, in sentences. */
  readonly notModelled: readonly string[];
  readonly cautions: readonly string[];
}

/** What a report repeats of the house itself. */
export interface HouseSummary extends Pick<
  House,
  'name' | 'floorAreaM2' | 'volumeM3' | 'digest' | 'altitudeM'
> {
  readonly airtightness: House['airtightness'];
  /** How each opening, device and damper stood during the airtightness test; absent where not told. */
  readonly testPreparation?: readonly {
    readonly item: string;
    readonly duringTest: TestPreparation;
  }[];
  readonly zones: readonly Pick<Zone, 'id' | 'kind'>[];
  readonly devices: readonly Pick<Device, 'id' | 'kind' | 'direction' | 'zone'>[];
  readonly appliances: readonly Pick<Appliance, 'id' | 'kind' | 'vent' | 'zone'>[];
  readonly weathers: readonly Weather[];
}
