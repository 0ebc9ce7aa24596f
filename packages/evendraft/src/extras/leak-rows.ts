import type { CompiledHouse, Outlet } from '@evendraft/house';
import type { LeakRow } from '@evendraft/report';

/**
 * The tested leakage by the surfaces that it is spread over, and what is modelled apart as one row.
 *
 * @param compiled - the compiled house; of several airtightness cases the first
 * @returns rows in the order of the house file
 */
export function leakRows({ house, leakage }: CompiledHouse): readonly LeakRow[] {
  const [remaining] = leakage;
  if (remaining === undefined) return [];
  const { testedFlowM3PerS: tested, modelledFlowM3PerS: apart } = remaining;
  const spread = tested - apart;
  return [
    ...house.leakShares
      .filter(({ share }) => share > 0)
      .map(({ zone, surface, to, share }) => {
        const found = house.zones.find(({ id }) => id === zone);
        const floor = found?.floorHeightM ?? 0;
        const height = found?.heightM ?? 0;
        return {
          item: surface,
          zone,
          to: placeWords(to),
          heightM: floor + (surface === 'ceiling' ? height : surface === 'walls' ? height / 2 : 0),
          volumeFlowM3PerS: spread * share,
          share: (spread * share) / tested,
        };
      }),
    ...(apart > 0
      ? [
          {
            item: 'openings, dampers and flues that are modelled apart',
            zone: '',
            to: 'outdoors',
            heightM: 0,
            volumeFlowM3PerS: apart,
            share: apart / tested,
          },
        ]
      : []),
  ];
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
