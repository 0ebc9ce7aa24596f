import type { FlowLawDescription } from '@evendraft/airflow';
import { baselineOf, insideZoneKinds, type CompiledHouse } from '@evendraft/house';
import type { Balance } from '@evendraft/network';
import { resolveColumns } from './resolve-columns.js';
import { airSpecificHeat, sensibleHeat } from './air-heat.js';
import type { BalanceQuestion } from './balance-study.js';

/** Air that comes in through one opening, duct or fan. */
export interface AirEntry {
  /** Name in the house file, and the part of it where it has several. */
  readonly item: string;
  /** Into the house [m³/s]. */
  readonly volumeFlowM3PerS: number;
  /** Free area or cross-section, where its law has one [m²]. */
  readonly areaM2?: number;
  /** Flow by area [m/s]. */
  readonly velocityMPerS?: number;
}

/** The outdoor air that enters the heated house in one situation, and what it takes to condition it. */
export interface SituationAir {
  readonly question: 'air of a situation';
  /** Air from outdoors and from buffer spaces [kg/s]. */
  readonly inflowKgPerS: number;
  /** The same in the baseline [kg/s]. */
  readonly baselineInflowKgPerS: number;
  /** Heat that brings the inflow to the temperature of the zones, negative where it is cooled [W]. */
  readonly heatW: number;
  /** Part of it that the devices cause, against the baseline [W]. */
  readonly inducedHeatW: number;
  /** Heat that brings the air of make-up openings and supply fans up to a limit before it is delivered [W]. */
  readonly temperingW: number;
  readonly entries: readonly AirEntry[];
}

/** Least temperature of air delivered to a room; 10 °C, our choice [°C]. */
export const usualDeliveryC = 10;

/**
 * The air that enters in one situation: flows, face velocities, heat.
 *
 * Source of the heat: q = m cp dT, see {@link sensibleHeat}.
 *
 * @param compiled - the compiled house
 * @param question - the situation
 * @param options - least temperature of delivered make-up air [°C], {@link usualDeliveryC} when absent; ids of openings
 * whose air is delivered too, beside that of make-up openings and supply fans
 * @returns the air; undefined where the situation or its baseline could not be solved
 */
export function situationAirStudy(
  compiled: CompiledHouse,
  question: BalanceQuestion,
  options: { readonly deliveryC?: number; readonly made?: readonly string[] } = {},
): SituationAir | undefined {
  const { deliveryC = usualDeliveryC, made = [] } = options;
  const balance = solve(compiled, question, 'lowest');
  const before = { ...question, state: baselineOf(question.state) };
  const baseline = solve(compiled, before, 'highest');
  if (balance === undefined || baseline === undefined) return undefined;
  const now = crossing(compiled, question, balance);
  const earlier = crossing(compiled, question, baseline);
  const entries = entriesOf(compiled, balance);
  const outdoorC = question.weather.outdoorAir.temperatureC;
  const delivered = entries
    .filter((found) => found.made || made.includes(found.entry.item))
    .reduce((sum, { massFlowKgPerS }) => sum + massFlowKgPerS, 0);
  return {
    question: 'air of a situation',
    inflowKgPerS: now.inflowKgPerS,
    baselineInflowKgPerS: earlier.inflowKgPerS,
    heatW: now.heatW,
    inducedHeatW: now.heatW - earlier.heatW,
    temperingW: Math.max(0, sensibleHeat(delivered, { from: outdoorC, to: deliveryC })),
    entries: entries.map(({ entry }) => entry),
  };
}

function solve(
  compiled: CompiledHouse,
  question: BalanceQuestion,
  shown: 'lowest' | 'highest',
): Balance | undefined {
  const { state, weather, airtightnessCase = 0 } = question;
  const { result } = resolveColumns(compiled, { state, weather, airtightnessCase }, shown);
  return result.status === 'solved' ? result : undefined;
}

/** Air that crosses into zones inside the envelope from anywhere else, and its heat. */
function crossing(
  { house, network, links, junctions }: CompiledHouse,
  { weather }: BalanceQuestion,
  balance: Balance,
): { readonly inflowKgPerS: number; readonly heatW: number } {
  const inside = new Set(
    house.zones.filter(({ kind }) => insideZoneKinds.includes(kind)).map(({ id }) => id),
  );
  // Air that ducts or flues hold belongs to the room that it comes from: what only circulates does not enter.
  for (const { id, airOf } of junctions) if (inside.has(airOf)) inside.add(id);
  const temperature = (node: string): number => {
    const zone = network.zoneIndex.get(node);
    return zone === undefined
      ? weather.boundaryAir.temperatureC[network.boundaryIndex.get(node) ?? 0]!
      : weather.zoneAir.temperatureC[zone]!;
  };
  let inflowKgPerS = 0;
  let heatW = 0;
  links.forEach(({ description: { from, to } }, index) => {
    const ways = [
      [from, to, balance.links.forwardKgPerS[index]!],
      [to, from, balance.links.backwardKgPerS[index]!],
    ] as const;
    for (const [source, zone, flow] of ways) {
      if (!inside.has(zone) || inside.has(source)) continue;
      inflowKgPerS += flow;
      heatW += flow * airSpecificHeat * (temperature(zone) - temperature(source));
    }
  });
  return { inflowKgPerS, heatW };
}

interface FoundEntry {
  readonly entry: AirEntry;
  readonly massFlowKgPerS: number;
  /** Air that a make-up opening or a supply fan brings, which may be tempered. */
  readonly made: boolean;
}

function entriesOf({ house, links }: CompiledHouse, balance: Balance): readonly FoundEntry[] {
  const zones = new Set(house.zones.map(({ id }) => id));
  const supplies = new Set(
    house.devices.filter(({ direction }) => direction === 'supply').map(({ id }) => id),
  );
  return links.flatMap(({ role, description: { from, to, law } }, index): readonly FoundEntry[] => {
    if (!('id' in role) || role.kind === 'door' || role.kind === 'device off') return [];
    if (role.kind === 'device' && !supplies.has(role.id)) return [];
    // Of a chain the link at the room counts; one between two rooms brings nothing in.
    const [one, other] = [zones.has(from), zones.has(to)];
    if (one === other) return [];
    const sign = other ? 1 : -1;
    const massFlowKgPerS = sign * balance.links.massFlowKgPerS[index]!;
    if (!(massFlowKgPerS > 0)) return [];
    const volumeFlowM3PerS = sign * balance.links.volumeFlowM3PerS[index]!;
    const areaM2 = areaOf(law);
    return [
      {
        massFlowKgPerS,
        made: role.kind === 'make-up' || role.kind === 'device',
        entry: {
          item: role.kind === 'part' ? `${role.id}, ${role.part}` : role.id,
          volumeFlowM3PerS,
          ...(areaM2 === undefined ? {} : { areaM2, velocityMPerS: volumeFlowM3PerS / areaM2 }),
        },
      },
    ];
  });
}

function areaOf(law: FlowLawDescription): number | undefined {
  if (law.kind === 'orifice' || law.kind === 'gravityDamper') return law.areaM2;
  return law.kind === 'duct' ? law.sections.at(-1)?.areaM2 : undefined;
}
