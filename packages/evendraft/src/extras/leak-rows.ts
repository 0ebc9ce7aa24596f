import { modelledFlows, type CompiledHouse, type LeakShare, type Outlet } from '@evendraft/house';
import type { LeakRow } from '@evendraft/report';
import type { SectionStudy } from '@evendraft/studies';

/** Pressures at which leakage is told: that of a test, and about what a house sees [Pa]. */
const toldPa = { high: 50, low: 4 };

/**
 * Every leak of the model, and every opening that is modelled apart, each in a row of its own.
 *
 * @param compiled - the compiled house; of several airtightness cases the first
 * @param flows - of the baseline and of the worst situation, where they were solved
 * @returns leaks in the order of the network, then openings in that of the house
 */
export function leakRows(
  compiled: CompiledHouse,
  flows: { readonly baseline: SectionStudy | undefined; readonly worst: SectionStudy | undefined },
): readonly LeakRow[] {
  const { house } = compiled;
  const { exponent } = house.airtightness;
  const { baseline, worst } = flows;
  return [
    ...compiled.links.flatMap(({ role, description }): readonly LeakRow[] => {
      const { id, law, from, to, fromHeightM } = description;
      if (role.kind !== 'leak' || law.kind !== 'powerLaw') return [];
      const share = house.leakShares[role.share];
      const ofLeak = (study: SectionStudy): number =>
        study.flows.find(({ link }) => link === id)?.volumeFlowM3PerS ?? 0;
      return [
        {
          item: share?.surface ?? 'leak',
          zone: from,
          to: placeOf(to, share),
          heightM: fromHeightM,
          given: share === undefined ? '' : givenWords(share),
          at50PaM3PerS: law.coefficientM3PerSPaN * toldPa.high ** exponent,
          at4PaM3PerS: law.coefficientM3PerSPaN * toldPa.low ** exponent,
          ...(baseline === undefined ? {} : { baselineFlowM3PerS: ofLeak(baseline) }),
          ...(worst === undefined ? {} : { worstFlowM3PerS: ofLeak(worst) }),
        },
      ];
    }),
    ...openingRows(compiled, flows),
  ];
}

type SolvedFlow = Extract<ReturnType<typeof modelledFlows>[number], { readonly status: 'solved' }>;

/** Openings with a law of their own; what passes several ends of one item is added up. */
function openingRows(
  { house }: CompiledHouse,
  { baseline, worst }: Parameters<typeof leakRows>[1],
): readonly LeakRow[] {
  const told = (pressurePa: number): readonly SolvedFlow[] =>
    modelledFlows(house, pressurePa).flatMap((flow) => (flow.status === 'solved' ? [flow] : []));
  const low = told(toldPa.low);
  const high = told(toldPa.high);
  const added = (all: typeof low, item: string): number =>
    all.reduce((sum, each) => sum + (each.item === item ? each.volumeFlowM3PerS : 0), 0);
  return [...new Set(high.map(({ item }) => item))].map((item): LeakRow => {
    const parts = house.openings.filter(({ id }) => id === item);
    const found =
      parts[0] ?? [...house.makeUpOpenings, ...house.devices].find(({ id }) => id === item);
    const ofItem = ({ flows }: SectionStudy): number =>
      flows.reduce((sum, { role, volumeFlowM3PerS }) => {
        const own = item === 'flues' ? role.kind === 'flue' : 'id' in role && role.id === item;
        return own ? sum + volumeFlowM3PerS : sum;
      }, 0);
    return {
      item,
      zone: found?.zone ?? '',
      to: found === undefined ? '' : placeWords(found.to),
      given: 'a law of its own, taken off the tested leakage',
      at50PaM3PerS: added(high, item),
      at4PaM3PerS: added(low, item),
      ...(baseline === undefined ? {} : { baselineFlowM3PerS: ofItem(baseline) }),
      ...(worst === undefined ? {} : { worstFlowM3PerS: ofItem(worst) }),
    };
  });
}

function givenWords({ surface, share, to }: LeakShare): string {
  const spread =
    surface !== 'walls'
      ? ''
      : to.kind === 'outdoors'
        ? ', even over four faces and three heights'
        : ', even over three heights';
  return `${Number((100 * share).toFixed(1))} % of the tested leakage${spread}`;
}

/** Nodes of faces begin with `@`, as no name of a user can. */
function placeOf(node: string, share: LeakShare | undefined): string {
  if (share !== undefined && share.to.kind !== 'outdoors') return placeWords(share.to);
  if (share?.surface === 'walls') return `${node.slice(1)} face`;
  return node === '@roof' ? 'roof' : 'outdoors';
}

function placeWords(to: Outlet): string {
  switch (to.kind) {
    case 'outdoors':
      return 'outdoors';
    case 'face':
      return `${to.face} face`;
    case 'roof':
      return 'roof';
    case 'zone':
      return to.zone;
    case 'surrounding':
      return to.surrounding;
  }
}
