import type { FanPoint, FlowLawDescription } from '@evendraft/airflow';
import type { IssuePath } from '@evendraft/text';
import { originOf, report, warn, type Reading } from './reading.js';
import { ourChoice } from './sources.js';

/** Beyond the range of its control a constant-flow fan is taken to move nothing at this multiple of the range's end. */
const shutOffBeyondControl = 1.25;

/** A fan whose flow a control holds, as the file says it. */
export interface TypedConstantFlow {
  /** True where no range is given. */
  readonly constantFlow: true | { readonly upTo: number };
  readonly shutOffPressure?: number | undefined;
  readonly path: IssuePath;
}

/**
 * The law of a fan whose flow a control holds: against everything, or up to a pressure and then falling.
 *
 * @param reading - where issues and assumptions are collected
 * @param typed - what the file says
 * @returns the law by the flow that is held; `undefined` where something is wrong, which is then reported
 */
export function readConstantFlow(
  reading: Reading,
  { constantFlow, shutOffPressure, path }: TypedConstantFlow,
): ((flow: number) => FlowLawDescription) | undefined {
  if (constantFlow === true) {
    warn(reading, [...path, 'constantFlow'], {
      code: 'device.constant-flow-without-range',
      parameters: {},
    });
    reading.assumptions.push({
      origin: originOf(path),
      what: 'pressure range of the constant-flow control',
      value: 'without end',
      source: ourChoice('the file declares a constant flow and gives no range'),
    });
    return (volumeFlowM3PerS) => ({ kind: 'fixedFlow', volumeFlowM3PerS });
  }
  const upToPa = constantFlow.upTo;
  const shutOffPa = shutOffPressure ?? shutOffBeyondControl * upToPa;
  if (shutOffPa <= upToPa) {
    report(reading, [...path, 'shutOffPressure'], {
      code: 'device.rating-above-shut-off',
      parameters: { ratingPa: upToPa, shutOffPa },
    });
    return undefined;
  }
  if (shutOffPressure === undefined) {
    reading.assumptions.push({
      origin: originOf(path),
      what: 'shut-off pressure beyond the range of the constant-flow control',
      value: { si: shutOffPa, dimension: 'pressure' },
      source: ourChoice('a quarter above the end of the range'),
    });
  }
  return (flow) => {
    const points: FanPoint[] = [
      { pressureRisePa: -upToPa, volumeFlowM3PerS: flow },
      { pressureRisePa: upToPa, volumeFlowM3PerS: flow },
      { pressureRisePa: shutOffPa, volumeFlowM3PerS: 0 },
    ];
    return { kind: 'fanCurve', points, beyondShutOff: 'blocked', interpolation: 'linear' };
  };
}
