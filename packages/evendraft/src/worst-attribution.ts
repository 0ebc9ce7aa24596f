import { insideZoneKinds, type CompiledHouse } from '@evendraft/house';
import type { Attribution } from '@evendraft/report';
import type { Finding } from '@evendraft/rules';
import {
  attributionStudy,
  type AttributionStudy,
  type WhenStopped,
  questionOf,
  type WorstCaseStudy,
  type WorstPressure,
} from '@evendraft/studies';

/** Where more than ten things run, orders are sampled: so many, to stay quick. */
const sampledOrders = 100;

/** What is attributed. */
export interface WorstAttributionInput {
  readonly compiled: CompiledHouse;
  readonly worstCase: WorstCaseStudy;
  readonly findings: readonly Finding[];
}

/**
 * Shares the worst pressure among what runs: that of the appliance with the least margin, or that of the deepest
 * zone where nothing is judged.
 *
 * @param input - compiled house, its worst case, findings
 * @param options - signal, and what a stop gives
 * @returns the attribution with its situation; undefined where nothing runs in it or it could not be solved; the
 *   word `stopped` where it was stopped and is not to reject
 */
export async function worstAttribution(
  input: WorstAttributionInput,
  {
    signal,
    whenStopped,
  }: { readonly signal: AbortSignal | undefined; readonly whenStopped: WhenStopped },
): Promise<Attribution | 'stopped' | undefined> {
  const { compiled } = input;
  const place = worstPlace(input);
  if (place === undefined || Object.keys(place.worst.state.running).length === 0) return undefined;
  if (whenStopped === 'keep' && signal?.aborted === true) return 'stopped';
  const { worst, zone } = place;
  let study: AttributionStudy | undefined;
  try {
    study = await attributionStudy(
      compiled,
      { ...questionOf(compiled, worst), zone },
      { orders: sampledOrders, ...(signal === undefined ? {} : { signal }) },
    );
  } catch (error) {
    if (whenStopped === 'keep' && signal?.aborted === true) return 'stopped';
    throw error;
  }
  if (study === undefined) return undefined;
  return { ...study, label: worst.label, airtightness: worst.airtightness };
}

function worstPlace({
  compiled,
  worstCase,
  findings,
}: WorstAttributionInput): { readonly worst: WorstPressure; readonly zone: string } | undefined {
  const [finding] = findings
    .filter(({ judged }) => judged !== undefined)
    .sort((a, b) => a.judged!.marginPa - b.judged!.marginPa);
  const appliance = worstCase.appliances.find((each) => each.appliance === finding?.appliance);
  if (appliance !== undefined) {
    const fall = finding?.judged?.quantity === 'change from baseline';
    return { worst: fall ? appliance.largestFall : appliance.lowest, zone: appliance.zone };
  }
  const inside = new Set(
    compiled.house.zones.filter(({ kind }) => insideZoneKinds.includes(kind)).map(({ id }) => id),
  );
  const [deepest] = worstCase.zones
    .filter(({ zone }) => inside.has(zone))
    .sort((a, b) => a.lowest.pressurePa - b.lowest.pressurePa);
  return deepest === undefined ? undefined : { worst: deepest.lowest, zone: deepest.zone };
}
