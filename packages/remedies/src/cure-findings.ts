import { compileHouse, type House } from '@evendraft/house';
import { judge, type Finding, type LimitSet } from '@evendraft/rules';
import { motorizedMakeUp, poweredMakeUp, worstCaseStudy, type DuctRun } from '@evendraft/studies';
import { sizeRemedy } from '@evendraft/studies';
import { targetsOfLimitSet } from './targets-of-limit-set.js';

/** One cure of one finding, with what the finding says of the house that has it. */
export interface SolvedCure {
  readonly cure: string;
  /** Of the appliance once the cure is made, in its own worst case. */
  readonly after: Finding;
}

/** A finding with its cures in the order in which they are tried. */
export interface CuredFinding {
  readonly finding: Finding;
  readonly cures: readonly SolvedCure[];
}

/** How cures are solved. */
export interface CureOptions {
  /** Run of a make-up duct; 3 m with two bends when absent, our choice. */
  readonly run?: DuctRun;
  readonly signal?: AbortSignal;
  readonly onProgress?: (done: number, of: number) => void;
}

const usualRun: DuctRun = { lengthM: 3, elbows: 2 };

/**
 * Solves the house again with each cure of each finding that is beyond or near its limit.
 *
 * The order is that of common practice, no source: replace the dryer, cap speeds, keep devices from running
 * together, bring in make-up air, change the appliance. Each is solved alone, over all states and weathers.
 * A cure that reads `within the limit` is still to be built, assessed and tested; none is a clearance.
 *
 * @param house - the house
 * @param limitSet - the limits
 * @param options - duct run, signal, progress
 * @returns findings of the house with their cures; those within their limit and those not judged have none
 */
export async function cureFindings(
  house: House,
  limitSet: LimitSet,
  options: CureOptions = {},
): Promise<readonly CuredFinding[]> {
  const findings = await findingsOf(house, limitSet, options);
  const cured: CuredFinding[] = [];
  for (const [index, finding] of findings.entries()) {
    const wanted = finding.verdict === 'beyond the limit' || finding.verdict === 'near the limit';
    const cures: SolvedCure[] = [];
    for (const { cure, houses } of wanted
      ? await curesOf(house, { limitSet, finding, options })
      : []) {
      const after = await worstFinding(houses, { limitSet, finding, options });
      if (after !== undefined) cures.push({ cure, after });
    }
    cured.push({ finding, cures });
    options.onProgress?.(index + 1, findings.length);
  }
  return cured;
}

/** A cure as one changed house, or as several of which the worst counts. */
interface Cure {
  readonly cure: string;
  readonly houses: readonly House[];
}

interface About {
  readonly limitSet: LimitSet;
  readonly finding: Finding;
  readonly options: CureOptions;
}

async function curesOf(house: House, about: About): Promise<readonly Cure[]> {
  const exhaust = house.devices.filter(
    ({ direction, speeds }) => direction === 'exhaust' && speeds.length > 0,
  );
  const changed = (id: string, change: Partial<House['devices'][number]>): House => ({
    ...house,
    devices: house.devices.map((each) => (each.id === id ? { ...each, ...change } : each)),
  });
  const byHand = exhaust.filter(({ interlock }) => interlock === undefined);
  return [
    ...exhaust
      .filter(({ kind }) => kind === 'dryer')
      .map(({ id }) => ({
        cure: `Replace the ${id} with one that exhausts no air.`,
        houses: [changed(id, { kind: 'condensing dryer', speeds: [] })],
      })),
    ...exhaust.flatMap(({ id, speeds }) =>
      speeds
        .slice(0, -1)
        .map((_, place) => speeds.slice(0, place + 1))
        .reverse()
        .map((kept) => ({
          cure: `Cap the ${id} at ${kept.at(-1)!.name}.`,
          houses: [changed(id, { speeds: kept })],
        })),
    ),
    ...(byHand.length < 2
      ? []
      : [
          {
            cure: 'Keep exhaust devices from running together, so that only one can run at a time.',
            houses: byHand.map(({ id }) => ({
              ...house,
              devices: house.devices.filter((each) => each.id === id || !byHand.includes(each)),
            })),
          },
        ]),
    ...(await makeUpCures(house, about)),
    {
      cure: `Change the ${about.finding.appliance} to sealed combustion.`,
      houses: [
        {
          ...house,
          appliances: house.appliances.map((each) =>
            each.id === about.finding.appliance
              ? { ...each, vent: 'sealed combustion' as const, sharesVentWith: [] }
              : each,
          ),
        },
      ],
    },
  ];
}

/** Make-up air with the largest exhaust, in the size that the limit of this finding needs. */
async function makeUpCures(
  house: House,
  { limitSet, finding, options }: About,
): Promise<readonly Cure[]> {
  const top = (device: House['devices'][number]): number =>
    Math.max(...device.speeds.map(({ ratedFlowM3PerS }) => ratedFlowM3PerS));
  const [largest] = house.devices
    .filter(({ direction, speeds, interlock }) => {
      return direction === 'exhaust' && speeds.length > 0 && interlock === undefined;
    })
    .sort((a, b) => top(b) - top(a));
  if (largest === undefined) return [];
  const { run = usualRun, signal } = options;
  const zone = largest.zone;
  const remedies = [
    motorizedMakeUp(house, { zone, run, opensWith: { driver: largest.id } }),
    poweredMakeUp(house, { zone, follows: largest.id }),
  ];
  const targets = targetsOfLimitSet(house, limitSet).targets.filter(({ id }) =>
    id.startsWith(`${finding.appliance}: `),
  );
  const cures: Cure[] = [];
  for (const remedy of remedies) {
    if (targets.length === 0) break;
    const sizing = await sizeRemedy(house, { remedy, targets }, signal ? { signal } : {});
    if (sizing.status === 'nothing needed') continue;
    const size = sizing.status === 'sized' ? sizing.size : sizing.best;
    const inches = (size / 0.0254).toFixed(0);
    const litres = (1000 * size).toFixed(0);
    const sized = remedy.dimension === 'diameter' ? `${inches} in. round` : `${litres} L/s`;
    const lacks = sizing.status === 'sized' ? '' : ', the closest of those offered';
    cures.push({
      cure: `Bring in air: ${remedy.what}, ${sized}${lacks}.`,
      houses: [remedy.houseWith(size)],
    });
  }
  return cures;
}

async function findingsOf(
  house: House,
  limitSet: LimitSet,
  { signal }: CureOptions,
): Promise<readonly Finding[]> {
  const result = compileHouse(house);
  if (!result.ok) return [];
  const worstCase = await worstCaseStudy(result.compiled, {
    // Extremes alone are wanted, so that the ordering may save what it can.
    listUpTo: 0,
    ...(signal === undefined ? {} : { signal }),
  });
  return judge({ house, worstCase, limitSet });
}

/** The finding of the appliance in the worst of several houses. */
async function worstFinding(houses: readonly House[], about: About): Promise<Finding | undefined> {
  let worst: Finding | undefined;
  for (const house of houses) {
    const findings = await findingsOf(house, about.limitSet, about.options);
    const found = findings.find(({ appliance }) => appliance === about.finding.appliance);
    const margin = (finding: Finding | undefined): number => finding?.judged?.marginPa ?? Infinity;
    if (worst === undefined || margin(found) < margin(worst)) worst = found ?? worst;
  }
  return worst;
}
