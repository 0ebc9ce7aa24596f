import type { UnitSystem } from '@evendraft/units';
import type { Assessment } from '../assessment.js';
import { assumptionGroups } from '../internal/assumption-groups.js';
import { numberPrinter } from '../internal/number-printer.js';
import type { ReportTable } from './report-table.js';

/**
 * The devices of the house.
 *
 * @param assessment - what was assessed
 * @returns one row a device
 */
export function deviceTable({ house }: Assessment): ReportTable {
  return {
    id: 'devices',
    caption: 'Devices',
    columns: [{ header: 'Device' }, { header: 'Kind' }, { header: 'Moves air' }, { header: 'In' }],
    rows: house.devices.map(({ id, kind, direction, zone }) => [
      id,
      kind,
      direction === 'exhaust' ? 'out of the zone' : 'into the zone',
      zone,
    ]),
  };
}

/**
 * The appliances of the house.
 *
 * @param assessment - what was assessed
 * @returns one row an appliance
 */
export function applianceTable({ house }: Assessment): ReportTable {
  return {
    id: 'appliances',
    caption: 'Combustion appliances and hearths',
    columns: [{ header: 'Appliance' }, { header: 'Kind' }, { header: 'Vent' }, { header: 'In' }],
    rows: house.appliances.map(({ id, kind, vent, zone }) => [id, kind, vent, zone]),
  };
}

/**
 * The airtightness that was studied.
 *
 * @param assessment - what was assessed
 * @returns one row a case
 */
export function airtightnessTable({ house }: Assessment): ReportTable {
  const { cases, exponent } = house.airtightness;
  return {
    id: 'airtightness',
    caption: 'Airtightness',
    note:
      `Direction of the test: ${house.airtightness.direction}. Neighbours held at the same ` +
      `pressure: ${house.airtightness.guarded ? 'yes' : 'no'}.`,
    columns: [
      { header: 'Case' },
      { header: 'Flow', quantity: 'volumeFlow' },
      { header: 'At', quantity: 'pressure' },
      { header: 'Flow exponent', quantity: 'factor' },
    ],
    rows: cases.map(({ name, volumeFlowM3PerS, pressurePa }) => [
      name,
      volumeFlowM3PerS,
      pressurePa,
      exponent,
    ]),
  };
}

/**
 * How openings, devices and dampers stood during the airtightness test.
 *
 * @param assessment - what was assessed
 * @returns one row an item; none where the assessment does not tell
 */
export function preparationTable({ house }: Assessment): ReportTable {
  return {
    id: 'test-preparation',
    caption: 'During the airtightness test',
    columns: [{ header: 'Item' }, { header: 'Stood' }],
    rows: (house.testPreparation ?? []).map(({ item, duringTest }) => [item, duringTest]),
  };
}

/**
 * The weathers that were studied.
 *
 * @param assessment - what was assessed
 * @returns one row a weather
 */
export function weatherTable({ house }: Assessment): ReportTable {
  return {
    id: 'weather',
    caption: 'Weather',
    columns: [
      { header: 'Weather' },
      { header: 'Outdoors', quantity: 'temperature' },
      { header: 'Wind', quantity: 'speed' },
      { header: 'From', quantity: 'angle' },
    ],
    rows: house.weathers.map((each) => [
      each.name,
      each.outdoorTemperatureC,
      each.windSpeedMPerS,
      each.windSpeedMPerS === 0 ? undefined : each.windFromDeg,
    ]),
  };
}

/**
 * Every value that was used and not given, what moves the answer most first.
 *
 * @param assessment - what was assessed
 * @param system - units in which the values are printed
 * @returns one row a value from one source
 */
export function assumptionTable(assessment: Assessment, system: UnitSystem): ReportTable {
  return {
    id: 'assumptions',
    caption: 'Assumed values and their sources',
    note: 'The house file did not give these. What moves the answer most comes first.',
    columns: [{ header: 'What' }, { header: 'Value' }, { header: 'For' }, { header: 'Source' }],
    rows: assumptionGroups(assessment.assumptions, numberPrinter(system)).map(
      ({ what, value, origins, source }) => [what, value, origins.join(', '), source],
    ),
  };
}
