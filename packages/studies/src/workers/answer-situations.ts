import { compileHouse } from '@evendraft/house';
import { listedSituations, type ListedSituations } from '../internal/listed-situations.js';
import type { SituationReply, SituationRequest } from './situation-pool.js';

/**
 * The worker's side: keeps the house it was given and solves its situations.
 *
 * @returns a function that takes a request and returns its reply; a house needs none
 */
export function situationAnswerer(): (request: SituationRequest) => SituationReply | undefined {
  let situations: ListedSituations | undefined;
  return (request) => {
    if (request.kind === 'house') {
      const result = compileHouse(request.house);
      situations = result.ok ? listedSituations(result.compiled) : undefined;
      return undefined;
    }
    if (situations === undefined) throw new Error('situations were asked for before their house');
    const { solve } = situations;
    const { first, end } = request;
    return Array.from({ length: end - first }, (_, index) => solve(first + index));
  };
}
