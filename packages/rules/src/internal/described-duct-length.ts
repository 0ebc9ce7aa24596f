import type { Device } from '@evendraft/house';

/**
 * Straight lengths of the ducts that a house describes after the fan of a device [m].
 *
 * @param device - the device
 * @returns the length; nothing where no duct is described [m]
 */
export function describedDuctLength({ path }: Device): number | undefined {
  const lengths = (path?.after ?? []).flatMap(({ law }) =>
    law.kind === 'duct' ? law.sections.map(({ lengthM }) => lengthM) : [],
  );
  return lengths.length === 0 ? undefined : lengths.reduce((sum, length) => sum + length, 0);
}
