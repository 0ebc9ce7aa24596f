import {
  checkFlowLaw,
  flowAt,
  referenceAir,
  typicalFanCurve,
  type FlowLawDescription,
} from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import type { CurvePointInFile, DeviceInFile, SpeedInFile } from '../file/device-file.js';
import type { DeviceKind, DeviceSpeed } from '../house.js';
import { assumeStandardAir, fanAtAltitude } from './fan-at-altitude.js';
import { hasDuct, hasPath } from './read-device-path.js';
import { readFanPressures } from './read-fan-pressures.js';
import { readConstantFlow } from './read-constant-flow.js';
import { checkLaw } from './read-law.js';
import { withReverseFlow } from './reverse-flow.js';
import { originOf, report, warn, type Reading } from './reading.js';
import { commonPractice } from './sources.js';

/** One speed as it stands in the file. */
export interface NamedSpeed {
  readonly name: string;
  readonly path: IssuePath;
  readonly inFile: SpeedInFile;
}

/** What a device's laws are made from. */
export interface TypedLaws {
  readonly inFile: DeviceInFile;
  readonly speeds: readonly NamedSpeed[];
  readonly kind: DeviceKind;
  readonly path: IssuePath;
  /** Altitude of the house [m]. */
  readonly altitudeM: number;
}

/** The most points of a fan curve; our choice. */
const mostPoints = 100;

/**
 * The speeds of a device, slowest first, each with its law.
 *
 * A bare flow is a rated point on a typical curve; only a control that is declared holds a flow constant.
 *
 * @param reading - where issues and assumptions are collected
 * @param device - what the file says
 * @returns the speeds; `undefined` where something is wrong, which is then reported
 */
export function readDeviceLaws(
  reading: Reading,
  device: TypedLaws,
): readonly DeviceSpeed[] | undefined {
  const { speeds, kind, path } = device;
  if (kind === 'condensing dryer') {
    if (speeds.length === 0) return [];
    const [first] = speeds;
    report(reading, first?.path ?? path, { code: 'device.flow-not-wanted', parameters: { kind } });
    return undefined;
  }
  if (speeds.length === 0) {
    report(reading, path, {
      code: 'device.flow-missing',
      parameters: { accepted: ['flow: 150 cfm', 'speeds: { low: 250 cfm, high: 900 cfm }'] },
    });
    return undefined;
  }
  const bare = speeds.filter((speed) => flowOf(speed) !== undefined);
  for (const speed of speeds) {
    const ways = [flowOf(speed), curveOf(speed)].filter((way) => way !== undefined).length;
    if (ways === 1) continue;
    const parameters = { accepted: ['flow: 150 cfm', 'curve: [[0 cfm, 0.9 in. w.c.], …]'] };
    const code = ways === 0 ? 'device.flow-missing' : 'device.several-flows';
    report(reading, speed.path, { code, parameters: { ...parameters, keys: ['flow', 'curve'] } });
    return undefined;
  }
  reportKeysWithoutEffect(reading, device, bare.length > 0);

  const lawOf =
    bare.length === 0 ? undefined : bareFlowLaw(reading, device, Math.max(...bare.map(flowNumber)));
  if (bare.length > 0 && lawOf === undefined) return undefined;
  // A flow held against everything never comes to its shut-off.
  const own = hasPath(device.inFile);
  if (device.inFile.constantFlow !== true && !own) assumeDamper(reading, path);
  // The range of a control is what its maker holds it to; all else is rated in standard air.
  const controlled = (device.inFile.constantFlow ?? false) !== false;
  if (bare.length < speeds.length || !controlled) {
    assumeStandardAir(reading, path, device.altitudeM);
  }

  const made = speeds.map((speed): DeviceSpeed | undefined => {
    const curve = curveOf(speed);
    const flow = flowOf(speed);
    if (curve !== undefined && curve.length > mostPoints) {
      const parameters = { found: curve.length, allowed: mostPoints };
      report(reading, speed.path, { code: 'section.too-many', parameters });
      return undefined;
    }
    const law = curve === undefined ? lawOf?.(flow ?? 0) : curveLaw(curve, device.inFile.stall);
    const asRated = law === undefined ? undefined : checkLaw(reading, speed.path, law);
    if (asRated === undefined) return undefined;
    const held = curve === undefined && controlled;
    const blocked = held ? asRated : fanAtAltitude(asRated, device.altitudeM);
    const stalls = checkFlowLaw(blocked).some(({ code }) => code === 'RisingFanCurve');
    const everyFlow = stalls && device.inFile.stall === 'every flow';
    if (stalls && !everyFlow) {
      warn(reading, speed.path, { code: 'device.curve-envelope', parameters: {} });
    }
    // What stops reverse flow is then a damper of its own, or nothing.
    const checked = own ? withReverseFlow(blocked) : blocked;
    const ratedFlowM3PerS = flow ?? freeDelivery(blocked);
    if (!(ratedFlowM3PerS > 0)) {
      report(reading, speed.path, { code: 'device.curve-without-flow', parameters: {} });
      return undefined;
    }
    return { name: speed.name, ratedFlowM3PerS, law: checked, ...(everyFlow && { everyFlow }) };
  });
  if (made.some((speed) => speed === undefined)) return undefined;
  const complete = made as readonly DeviceSpeed[];
  return reportOrder(reading, speeds, complete) ? complete : undefined;
}

function flowOf({ inFile }: NamedSpeed): number | undefined {
  return typeof inFile === 'number' ? inFile : inFile.flow;
}

function flowNumber(speed: NamedSpeed): number {
  return flowOf(speed) ?? 0;
}

function curveOf({ inFile }: NamedSpeed): readonly CurvePointInFile[] | undefined {
  return typeof inFile === 'number' ? undefined : inFile.curve;
}

function curveLaw(
  curve: readonly CurvePointInFile[],
  stall: 'envelope' | 'every flow' | undefined,
): FlowLawDescription {
  const points = curve.map(({ flow, rise }) => ({ volumeFlowM3PerS: flow, pressureRisePa: rise }));
  const law = { kind: 'fanCurve', points, beyondShutOff: 'blocked' } as const;
  return stall === undefined ? law : { ...law, risingPart: 'envelope' };
}

/** Flow of a fan between rooms of the same pressure, in reference air [m3/s]. */
function freeDelivery(law: FlowLawDescription): number {
  return flowAt(law, 0).massFlowKgPerS / referenceAir.densityKgPerM3;
}

/** The law of each bare flow of a device, by flow. */
function bareFlowLaw(
  reading: Reading,
  device: TypedLaws,
  ratedFlowM3PerS: number,
): ((flow: number) => FlowLawDescription) | undefined {
  const { inFile, kind, path, speeds } = device;
  if (kind === 'condensing dryer') return undefined;
  const { constantFlow } = inFile;
  if (constantFlow !== undefined && constantFlow !== false) {
    return readConstantFlow(reading, {
      constantFlow,
      shutOffPressure: inFile.shutOffPressure,
      path,
    });
  }
  const pressures = readFanPressures(reading, { inFile, kind, path });
  if (pressures === undefined) return undefined;
  const origin = originOf(path);
  const bare = hasDuct(inFile);
  reading.assumptions.push(
    bare
      ? {
          origin,
          what: 'rated flow',
          value: 'that of the bare fan at its rating pressure, without the duct that is described',
          source: commonPractice('fans are rated on a test bench'),
        }
      : {
          origin,
          what: 'duct',
          value: 'takes the rating pressure at rated flow',
          source: commonPractice(
            'the rating pressure stands for the duct that a device is installed with',
          ),
        },
  );
  if (speeds.length > 1) {
    reading.assumptions.push({
      origin,
      what: 'lower speeds',
      value: 'the same fan slowed down: flow with the speed, pressure with its square',
      source: { document: 'fan laws', status: 'memory' },
    });
  }
  return (speedFlowM3PerS) => ({
    kind: 'fanCurve',
    points: typicalFanCurve({
      ratedFlowM3PerS,
      speedFlowM3PerS,
      ...pressures,
      ...(bare ? { ductPressurePa: 0 } : {}),
    }),
    beyondShutOff: 'blocked',
  });
}

function assumeDamper(reading: Reading, path: IssuePath): void {
  reading.assumptions.push({
    origin: originOf(path),
    what: 'backdraft damper while it runs',
    value: 'stops reverse flow beyond shut-off',
    source: commonPractice('such devices have a backdraft damper'),
  });
}

function reportKeysWithoutEffect(
  reading: Reading,
  { inFile, path }: TypedLaws,
  hasBareFlow: boolean,
): void {
  if (hasBareFlow && inFile.stall !== undefined) {
    const parameters = { key: 'stall', way: 'flow' };
    report(reading, [...path, 'stall'], { code: 'key.without-effect', parameters });
  }
  const way = !hasBareFlow
    ? 'curve'
    : inFile.constantFlow !== undefined
      ? 'constantFlow'
      : undefined;
  if (way === undefined) return;
  const keys = ['ratingPressure', ...(hasBareFlow ? [] : ['shutOffPressure', 'constantFlow'])] as (
    'ratingPressure' | 'shutOffPressure' | 'constantFlow'
  )[];
  for (const key of keys) {
    if (inFile[key] === undefined || inFile[key] === false) continue;
    report(reading, [...path, key], { code: 'key.without-effect', parameters: { key, way } });
  }
}

function reportOrder(
  reading: Reading,
  typed: readonly NamedSpeed[],
  speeds: readonly DeviceSpeed[],
): boolean {
  const wrong = speeds.findIndex(
    (speed, index) => index > 0 && speed.ratedFlowM3PerS <= speeds[index - 1]!.ratedFlowM3PerS,
  );
  if (wrong < 0) return true;
  report(reading, typed[wrong]!.path, {
    code: 'device.speeds-not-ascending',
    parameters: { speed: speeds[wrong]!.name, before: speeds[wrong - 1]!.name },
  });
  return false;
}
