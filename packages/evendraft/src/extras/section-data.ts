import type { CompiledHouse, House } from '@evendraft/house';
import type { HouseSectionDrawingData, SectionFlow, SectionState } from '@evendraft/report';
import type { SectionLinkFlow, SectionStudy, Situation } from '@evendraft/studies';

/**
 * The house in section, in the baseline and in a situation.
 *
 * @param compiled - the compiled house
 * @param of - the situation, and what was solved of it
 * @returns what the drawing needs; undefined where one of the two could not be solved
 */
export function sectionData(
  compiled: CompiledHouse,
  of: {
    readonly situation: Situation;
    readonly baseline: SectionStudy | undefined;
    readonly worst: SectionStudy | undefined;
  },
): HouseSectionDrawingData | undefined {
  const { situation, baseline, worst } = of;
  if (baseline === undefined || worst === undefined) return undefined;
  const { house } = compiled;
  return {
    zones: house.zones.map(({ id, kind, floorHeightM, heightM }) => ({
      zone: id,
      kind,
      floorHeightM,
      heightM,
    })),
    baseline: stateOf(house, baseline, `Baseline: everything off, ${situation.weather}`),
    worst: stateOf(house, worst, `Worst: ${situation.label}, ${situation.weather}`),
  };
}

function stateOf(house: House, study: SectionStudy, title: string): SectionState {
  const { pressures, neutralLevels } = study;
  const leaks = study.flows.filter(({ role }) => role.kind === 'leak');
  const others = study.flows.filter(({ role }) => role.kind !== 'leak');
  return {
    title,
    pressures,
    neutralLevels,
    flows: [
      ...others.map((flow) => flowOf(flow, nameAndKind(house, flow.role))),
      ...joinedLeaks(house, leaks),
    ],
  };
}

/** Leaks of one surface at one height, in and out apart: four faces make one arrow. */
function joinedLeaks(house: House, leaks: readonly SectionLinkFlow[]): readonly SectionFlow[] {
  const joined = new Map<string, SectionLinkFlow>();
  for (const leak of leaks) {
    const { zone, otherZone, heightM, volumeFlowM3PerS } = leak;
    const key = JSON.stringify([zone, otherZone, heightM, volumeFlowM3PerS > 0]);
    const before = joined.get(key)?.volumeFlowM3PerS ?? 0;
    joined.set(key, { ...leak, volumeFlowM3PerS: before + volumeFlowM3PerS });
  }
  return [...joined.values()].map((leak) =>
    flowOf(leak, { name: surfaceOf(house, leak), kind: 'leakage' }),
  );
}

function surfaceOf(house: House, { zone, heightM }: SectionLinkFlow): string {
  const found = house.zones.find(({ id }) => id === zone);
  if (found === undefined || heightM <= found.floorHeightM) return 'floor';
  return heightM >= found.floorHeightM + found.heightM ? 'ceiling' : 'walls';
}

function flowOf(
  { zone, otherZone, heightM, volumeFlowM3PerS }: SectionLinkFlow,
  named: Pick<SectionFlow, 'name' | 'kind'>,
): SectionFlow {
  return {
    ...named,
    from: zone,
    ...(otherZone === undefined ? {} : { to: otherZone }),
    heightM,
    volumeFlowM3PerS,
  };
}

function nameAndKind(
  house: House,
  role: SectionLinkFlow['role'],
): Pick<SectionFlow, 'name' | 'kind'> {
  const name = 'id' in role ? role.id : 'leak';
  const has = (items: readonly { readonly id: string }[]): boolean =>
    items.some(({ id }) => id === name);
  if (role.kind === 'flue') return { name, kind: 'flue' };
  if (role.kind === 'door' || has(house.doors)) return { name, kind: 'door' };
  if (role.kind === 'make-up' || has(house.makeUpOpenings)) return { name, kind: 'make-up' };
  if (role.kind === 'opening' || has(house.openings)) return { name, kind: 'opening' };
  return { name, kind: 'device' };
}
