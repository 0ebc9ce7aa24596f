import type { RuleFinding } from '@evendraft/rules';
import type { AttributionStudy, UncertaintyStudy } from '@evendraft/studies';
import type { UnitSystem } from '@evendraft/units';
import type { DeviceSharesDrawingData } from './drawings/device-shares.js';
import type { ExceedanceDrawingData } from './drawings/exceedance.js';
import { arithmeticWords } from './internal/arithmetic-words.js';
import { fullStop } from './internal/full-stop.js';
import type { CodeScreenRow } from './report-extras.js';

/**
 * The shares of the devices as the report shows them.
 *
 * @param study - attribution in one situation
 * @param situation - that situation in words
 * @returns devices with their parts, the largest first
 */
export function sharesFromStudy(
  study: AttributionStudy,
  situation: string,
): DeviceSharesDrawingData {
  const whole = study.pressurePa - study.baselinePa;
  return {
    zone: study.zone,
    situation,
    shares: study.shares
      .map(({ device, speed, sharePa }) => ({
        device: `${device} ${speed}`,
        changePa: sharePa,
        share: whole === 0 ? 0 : sharePa / whole,
      }))
      .sort((a, b) => a.changePa - b.changePa),
  };
}

/**
 * The probability of exceeding each target as the report shows it.
 *
 * @param study - uncertainty with targets
 * @returns one entry a target; what was drawn at random, in words
 */
export function exceedanceFromStudy(study: UncertaintyStudy): ExceedanceDrawingData {
  const failed = study.failed === 0 ? '' : `, ${study.failed} of them not solved and left out`;
  return {
    basis: `${study.samples} draws of ${study.ranges.length} uncertain values${failed}`,
    limits: study.targets.map(({ target, probability, between }) => ({
      appliance: target.id,
      limitPa: target.limitPa,
      probability,
      low: between[0],
      high: between[1],
    })),
  };
}

/**
 * Code screens as the report shows them: those that apply or might, each with its arithmetic.
 *
 * @param findings - of all rules that were gone through
 * @param system - units in which the arithmetic is printed
 * @returns one row a finding
 */
export function codeScreensFromFindings(
  findings: readonly RuleFinding[],
  system: UnitSystem,
): readonly CodeScreenRow[] {
  return findings
    .filter(({ applies }) => applies !== 'no')
    .map(({ title, subject, verdict, arithmetic, source, reason, why }) => ({
      rule: title,
      subject: subject ?? 'the house',
      verdict,
      arithmetic: [
        ...arithmetic.map((line) => `${arithmeticWords(line, system)}.`),
        ...(arithmetic.length === 0 ? [fullStop(why)] : []),
        ...(reason === undefined ? [] : [fullStop(reason)]),
      ].join(' '),
      source,
    }));
}
