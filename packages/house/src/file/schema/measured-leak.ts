import type { LeakageAreaBasis } from '@evendraft/airflow';
import { effectiveLeakageAreaBasis, equivalentLeakageAreaBasis } from '@evendraft/airflow';
import { parseQuantity } from '@evendraft/units';
import type * as z from 'zod';
import { accept, refuse, type ValueResult } from './file-problem.js';
import { leaf } from './leaf.js';
import { readQuantity, type AllowedRange } from './quantity.js';
import { shapeOf, shapeWords } from './shape-of.js';

/** A leak as it is measured: a flow at a pressure, or a leakage area with its reference. */
export type MeasuredLeak =
  | { readonly kind: 'flow'; readonly volumeFlowM3PerS: number; readonly pressurePa: number }
  | ({ readonly kind: 'area'; readonly areaM2: number } & LeakageAreaBasis);

/** What a measured leak may be. */
export type LeakMeasure = MeasuredLeak['kind'];

const flowRange: AllowedRange = { above: 0, to: 1000, words: 'more than 0, up to 1000 m3/s' };
const areaRange: AllowedRange = { above: 0, to: 1000, words: 'more than 0, up to 1000 m2' };
const pressureRange: AllowedRange = { above: 0, to: 5000, words: 'more than 0, up to 5000 Pa' };

/**
 * Schema of a leak as it is measured, `40 cfm at 50 Pa` or `12 in2 at 4 Pa`.
 *
 * @param measures - which of both are accepted here
 * @param options - what it means and what may be typed
 * @returns the schema
 */
export function measuredLeak(
  measures: readonly LeakMeasure[],
  options: { readonly description: string; readonly examples: readonly string[] },
): z.ZodType<MeasuredLeak> {
  return leaf(options, (value) => {
    const shape = shapeOf(value);
    if (shape !== 'text' && shape !== 'number') {
      return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: options.examples });
    }
    return readMeasuredLeak(String(value), measures, options.examples);
  });
}

/**
 * Reads a leak as it is measured. `310 cfm50` and `310 cfm @ 50 Pa` are read like `310 cfm at 50 Pa`.
 *
 * @param text - as typed
 * @param measures - which kinds are accepted here
 * @param examples - what may be typed, for messages
 * @returns the leak, or what is wrong
 */
export function readMeasuredLeak(
  text: string,
  measures: readonly LeakMeasure[],
  examples: readonly string[],
): ValueResult<MeasuredLeak> {
  const { amount, pressure } = splitAtPressure(text);
  const isArea = parseQuantity(amount, 'area').ok;
  if (isArea && measures.includes('area')) {
    const area = readQuantity(amount, { dimension: 'area', allowed: areaRange, examples });
    if (!area.ok) return area;
    const basis = leakageAreaBasis(pressure);
    if (basis !== undefined) return accept({ kind: 'area', areaM2: area.value, ...basis });
    const suggestion = `${amount} at 4 Pa`;
    return refuse('leak.area-reference', { found: text.trim().slice(0, 60), suggestion });
  }
  const dimension = measures.includes('flow') ? 'volumeFlow' : 'area';
  const flow = readQuantity(amount, { dimension, allowed: flowRange, examples });
  if (!flow.ok) return flow;
  if (pressure === undefined) {
    return refuse('leak.pressure-missing', { found: amount, suggestion: `${amount} at 50 Pa` });
  }
  const at = readQuantity(pressure, {
    dimension: 'pressure',
    allowed: pressureRange,
    examples: ['50 Pa'],
  });
  if (!at.ok) return at;
  return accept({ kind: 'flow', volumeFlowM3PerS: flow.value, pressurePa: at.value });
}

/**
 * Splits `310 cfm at 50 Pa` into the amount and its pressure.
 *
 * @param text - as typed
 * @returns both, trimmed; no pressure where none stands
 */
export function splitAtPressure(text: string): {
  readonly amount: string;
  readonly pressure: string | undefined;
} {
  const said = /^(.*?)(?:\s+at\s+|\s*@\s*)(.*)$/is.exec(text);
  if (said) return { amount: said[1]!.trim(), pressure: said[2]!.trim() };
  const short = /^(.*\b(?:cfm|m3\/h|l\/s|cmh))\s*([1-9]\d?)\s*$/i.exec(text);
  if (short) return { amount: short[1]!.trim(), pressure: `${short[2]} Pa` };
  return { amount: text.trim(), pressure: undefined };
}

/** The two references in use: 4 Pa with a discharge coefficient of 1, 10 Pa with 0.611. */
function leakageAreaBasis(pressure: string | undefined): LeakageAreaBasis | undefined {
  if (pressure === undefined) return undefined;
  const at = parseQuantity(pressure, 'pressure');
  if (!at.ok) return undefined;
  return [effectiveLeakageAreaBasis, equivalentLeakageAreaBasis].find(
    (basis) => Math.abs(basis.referencePressurePa - at.quantity.valueSi) < 1e-9,
  );
}
