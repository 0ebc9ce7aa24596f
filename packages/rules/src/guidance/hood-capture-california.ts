import { judgedBy } from '../internal/answer.js';
import { amount, line } from '../internal/arithmetic-line.js';
import { siOf } from '../internal/si-of.js';
import type { RuleFinding } from '../rule-finding.js';

/** One row of the table, by the floor area of the dwelling. */
interface Row {
  /** Floor area from which the row holds [m²]. */
  readonly fromM2: number;
  readonly electric: { readonly capture: number; readonly flowM3PerS: number };
  readonly gas: { readonly capture: number; readonly flowM3PerS: number };
}

const row = (
  fromFt2: number,
  electric: readonly [number, number],
  gas: readonly [number, number],
): Row => ({
  fromM2: siOf(`${fromFt2} ft2`, 'area'),
  electric: { capture: electric[0], flowM3PerS: siOf(`${electric[1]} cfm`, 'volumeFlow') },
  gas: { capture: gas[0], flowM3PerS: siOf(`${gas[1]} cfm`, 'volumeFlow') },
});

/** From the largest dwelling to the smallest: capture efficiency or flow, for electric and for gas ranges. */
const rows: readonly Row[] = [
  row(1500, [0.5, 110], [0.7, 180]),
  row(1000, [0.5, 110], [0.8, 250]),
  row(750, [0.55, 130], [0.85, 280]),
  row(0, [0.65, 160], [0.85, 280]),
];

/** What is known of a hood over a range. */
export interface JudgeHoodCaptureInput {
  readonly device: string;
  readonly range: 'electric' | 'gas';
  readonly floorAreaM2: number;
  readonly deliveredFlowM3PerS: number;
  /** Capture efficiency by test, where it is known [-]. */
  readonly captureEfficiency?: number;
}

/**
 * A hood over a range by capture efficiency, or by flow in its place, by the floor area of the dwelling.
 *
 * Source: California Energy Code 2022, Table 150.0-G; from memory.
 *
 * @param input - range, floor area, flow and efficiency where known
 * @returns the finding
 */
export function judgeHoodCapture(input: JudgeHoodCaptureInput): RuleFinding {
  const { device, range, floorAreaM2, deliveredFlowM3PerS, captureEfficiency } = input;
  const found = rows.find(({ fromM2 }) => floorAreaM2 > fromM2) ?? rows.at(-1);
  const { capture, flowM3PerS } = found?.[range] ?? { capture: Number.NaN, flowM3PerS: Number.NaN };
  const byCapture = captureEfficiency !== undefined && captureEfficiency >= capture;
  return judgedBy(
    {
      id: 'hood-capture-california',
      title: 'Capture efficiency or flow of a hood over a range',
      region: 'California',
      source: {
        document: 'California Energy Code',
        edition: '2022',
        section: 'Table 150.0-G',
        status: 'memory',
      },
      notes: ['Either the efficiency or the flow is enough.'],
    },
    {
      subject: device,
      why: `It hangs over a range, ${range}.`,
      arithmetic: [
        line('floor area', 'of the dwelling', amount.area(floorAreaM2)),
        line('least capture', 'of the table', amount.ratio(capture)),
        line('or least flow', 'of the table', amount.flow(flowM3PerS)),
        line(
          'capture',
          'by test',
          captureEfficiency === undefined ? 'not stated' : amount.ratio(captureEfficiency),
        ),
        line('delivered', 'flow', amount.flow(deliveredFlowM3PerS)),
      ],
    },
    {
      held: byCapture
        ? { value: captureEfficiency, limit: capture, sense: 'at least', nearBand: 0.01 }
        : { value: deliveredFlowM3PerS, limit: flowM3PerS, sense: 'at least' },
      satisfiedBy: ['A hood of that tested efficiency, or of that flow.'],
    },
  );
}
