import type { NetworkDescription } from '@evendraft/network';

const density = 1.2041;

/**
 * Networks as `peers/harness.c` reads them. Power laws and fixed flows at equal heights in reference air.
 *
 * @param descriptions - the networks
 * @returns the text of the file
 */
export function networksAsText(descriptions: readonly NetworkDescription[]): string {
  const lines = [`${descriptions.length}`];
  for (const { zones, boundaries, links } of descriptions) {
    const place = new Map(zones.map((zone, index) => [zone.id, index]));
    const fixed = new Map(boundaries.map(({ id, pressurePa }) => [id, pressurePa]));
    lines.push(`${zones.length} ${links.length}`);
    for (const { from, to, law } of links) {
      const drive = (fixed.get(from) ?? 0) - (fixed.get(to) ?? 0);
      const [c, n] =
        law.kind === 'powerLaw'
          ? [law.coefficientM3PerSPaN * density, law.exponent]
          : [law.kind === 'fixedFlow' ? law.massFlowKgPerS : undefined, 0];
      lines.push(`${place.get(from) ?? -1} ${place.get(to) ?? -1} ${c} ${n} ${drive}`);
    }
  }
  return `${lines.join('\n')}\n`;
}

/**
 * One network in the format of `packages/checks/networks`, for any other program.
 *
 * @param id - its name
 * @param description - the network
 * @returns data to be written as JSON
 */
export function networkAsReference(
  id: string,
  { zones, boundaries, links }: NetworkDescription,
): object {
  return {
    id,
    zones: zones.map((zone) => zone.id),
    boundaries: boundaries.map((boundary) => ({
      id: boundary.id,
      pressurePa: boundary.pressurePa,
    })),
    edges: links.map(({ id: link, from, to, law }) => ({
      id: link,
      from,
      to,
      ...(law.kind === 'powerLaw'
        ? { kind: 'powerLaw', C: law.coefficientM3PerSPaN * density, n: law.exponent }
        : {
            kind: 'fixedFlow',
            mKgPerS: law.kind === 'fixedFlow' ? law.massFlowKgPerS : undefined,
          }),
    })),
  };
}
