// What tests of the screens share: one house that every rule is meant for, and short ways to ask. Invented.
import type { House } from '@evendraft/house';
import { convert } from '@evendraft/units';
import type { ArithmeticLine, RuleFinding } from '../src/rule-finding.js';
import { runScreens, type ScreenOptions } from '../src/run-screens.js';
import type { ScreenFacts } from '../src/screen-facts.js';
import { appliance, device, house } from './invented-study.js';

/** A number of another unit in SI, exactly. */
export const si = {
  cfm: (value: number): number => convert(String(value), 'cfm', 'm3/s').value,
  ft2: (value: number): number => convert(String(value), 'ft2', 'm2').value,
  in2: (value: number): number => convert(String(value), 'in2', 'm2').value,
  ft3: (value: number): number => convert(String(value), 'ft3', 'm3').value,
  ft: (value: number): number => convert(String(value), 'ft', 'm').value,
  btuPerHour: (value: number): number => convert(String(value), 'Btu/h', 'W').value,
};

/** Findings of one rule. */
export function screen(
  rule: string,
  of: House,
  options: ScreenOptions = {},
): readonly RuleFinding[] {
  return runScreens(of, options).filter((finding) => finding.rule === rule);
}

/** `subject: verdict` of each finding of one rule. */
export function verdicts(rule: string, of: House, options: ScreenOptions = {}): readonly string[] {
  return screen(rule, of, options).map(({ subject, verdict }) =>
    subject === undefined ? verdict : `${subject}: ${verdict}`,
  );
}

/** The value of a line by its label, in SI. */
export function valueOf(
  finding: RuleFinding | undefined,
  label: string,
): number | string | undefined {
  const found: ArithmeticLine | undefined = finding?.arithmetic.find((one) => one.label === label);
  return typeof found?.value === 'object' ? found.value.si : found?.value;
}

/** A house of 2,000 ft² with a hood of 600 cfm, a dryer, a bath fan and a natural-draft water heater. */
export function screenedHouse(given: Partial<House> = {}): House {
  return house({
    floorAreaM2: si.ft2(2000),
    appliances: [appliance({ inputW: si.btuPerHour(40000) })],
    devices: [
      device({ id: 'hood', kind: 'hood', speeds: { low: si.cfm(200), high: si.cfm(600) } }),
      device({ id: 'dryer', kind: 'dryer', speeds: { on: si.cfm(150) } }),
      device({ id: 'bath fan', kind: 'bath fan', speeds: { on: si.cfm(80) } }),
    ],
    ...given,
  });
}

/** A house and facts with which every rule that can be judged is. */
export function fullHouse(): { readonly house: House; readonly facts: ScreenFacts } {
  const closet = {
    id: 'laundry closet',
    origin: 'zones.laundry closet',
    kind: 'closet' as const,
    floorHeightM: 0,
    heightM: 2.4,
    volumeM3: 5,
    temperatureC: 20,
  };
  const plain = screenedHouse();
  return {
    house: {
      ...plain,
      zones: [...plain.zones, closet],
      appliances: [
        appliance({ inputW: si.btuPerHour(40000) }),
        appliance({
          id: 'stove',
          kind: 'wood stove',
          vent: 'closed stove',
          fuel: 'wood',
          zone: 'living room',
          inputW: 8000,
        }),
      ],
      devices: plain.devices.map((one) =>
        one.kind === 'dryer' ? { ...one, zone: closet.id } : one,
      ),
      makeUpOpenings: [
        {
          id: 'kitchen make-up',
          origin: 'makeUp.kitchen make-up',
          zone: 'basement',
          to: { kind: 'outdoors' },
          heightM: 1,
          openLaw: { kind: 'orifice', areaM2: 0.05, dischargeCoefficient: 0.6 },
          duringTest: 'closed',
          interlock: { driver: 'hood' },
        },
      ],
    },
    facts: {
      builtInYear: 1985,
      bedrooms: 3,
      naturalAirChangePerS: 0.5 / 3600,
      appliances: {
        'water heater': {
          draftHoodOutletAreaM2: si.in2(7),
          ventConnectorAreaM2: si.in2(7),
          flueAreaM2: si.in2(100),
          nearestReturnM: si.ft(6),
          flueExitTemperatureC: 40,
          flueDewPointC: 50,
        },
        stove: { flueCollarAreaM2: si.in2(28), airOpeningAreaM2: si.in2(10), nearestReturnM: 6 },
      },
      devices: {
        dryer: {
          ductLengthM: si.ft(20),
          ductFittings: ['4 in. mitered 90', '4 in. mitered 90'],
          closetOpeningAreaM2: si.in2(60),
        },
      },
      makeUp: { 'kitchen make-up': { damper: 'gravity', designPressurePa: 12 } },
      zones: {
        basement: {
          coAlarm: true,
          opensToOutdoors: true,
          combustionSupplyM3PerS: si.cfm(10),
          combustionOpenings: [
            { to: 'outdoors', areaM2: si.in2(20) },
            { to: 'room on the same storey', areaM2: si.in2(100) },
          ],
        },
        'living room': { coAlarm: false, opensToOutdoors: true, combustionOpenings: [] },
      },
      intakes: {
        'kitchen make-up': [{ name: 'dryer outlet', distanceM: si.ft(5), aboveIntakeM: 0 }],
      },
    },
  };
}
