import {
  buildNetwork,
  linkReading,
  neutralLevelOf,
  pressureAt,
  solveNetwork,
  type LinkReading,
  type NetworkDescription,
} from '@evendraft/network';

/** Numbers of a solved network by the ids of its zones and links. */
export type SolvedNetwork = Readonly<{
  zones: Readonly<
    Record<string, { readonly pressurePa: number; readonly neutralLevelM: number | undefined }>
  >;
  links: Readonly<
    Record<string, Readonly<Record<keyof LinkReading | 'forwardKgPerS' | 'backwardKgPerS', number>>>
  >;
}>;

/**
 * Builds and solves a network, as numbers by the ids of its zones and links.
 *
 * @param description - a network in SI
 * @returns `zones` with pressure and neutral level, `links` with flows and pressure differences
 * @throws Error when the network is rejected, not solved, or solved without its proof
 */
export function solvedNetwork(description: NetworkDescription): SolvedNetwork {
  const built = buildNetwork(description);
  if (built.status === 'rejected') throw new Error(JSON.stringify(built.issues, undefined, 2));
  const balance = solveNetwork(built.network);
  if (balance.status !== 'solved') throw new Error(`${balance.status}: ${balance.hint}`);
  if (!balance.proof.enclosed || !balance.proof.unique) throw new Error('solved without a proof');
  return {
    zones: Object.fromEntries(
      description.zones.map((zone) => {
        const pressurePa = pressureAt(built.network, balance, { zoneId: zone.id });
        const neutralLevelM = neutralLevelOf(built.network, balance, { zoneId: zone.id });
        return [zone.id, { pressurePa, neutralLevelM }];
      }),
    ),
    links: Object.fromEntries(
      description.links.map(({ id }, index) => [
        id,
        {
          ...linkReading(built.network, balance, id),
          forwardKgPerS: balance.links.forwardKgPerS[index]!,
          backwardKgPerS: balance.links.backwardKgPerS[index]!,
        },
      ]),
    ),
  };
}
