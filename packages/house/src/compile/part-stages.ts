import type { PathPart } from '../house.js';
import type { SeriesLaw, SeriesStage } from './series-path.js';

/**
 * The parts of an item as places of a path: a duct is always there, a damper by its position.
 *
 * @param item - name of the item
 * @param parts - its parts, along the path
 * @returns places in the same order
 */
export function partStages(item: string, parts: readonly PathPart[]): readonly SeriesStage[] {
  return parts.map(({ name, law, closed, riseM }) => {
    const when = closed === undefined ? 'always' : 'open';
    const open: SeriesLaw = { name, law, role: { kind: 'part', id: item, part: name, when } };
    const shut: readonly SeriesLaw[] =
      closed === undefined || closed === 'inside the tested leakage'
        ? []
        : [
            {
              name: `${name} closed`,
              law: closed,
              role: { kind: 'part', id: item, part: name, when: 'closed' },
            },
          ];
    return { riseM, laws: [open, ...shut] };
  });
}
