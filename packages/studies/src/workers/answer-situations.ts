import { compileHouse } from '@evendraft/house';
import { situationAnswers, type AnswerSituations } from '../internal/situation-answers.js';
import type { SituationReply, SituationRequest } from './situation-request.js';

/**
 * The worker's side: keeps the house it was given and answers what is asked of it.
 *
 * @returns a function that takes a request and returns its reply; a house needs none
 */
export function situationAnswerer(): (request: SituationRequest) => SituationReply | undefined {
  let answer: AnswerSituations | undefined;
  return (request) => {
    if (request.kind === 'house') {
      const result = compileHouse(request.house);
      answer = result.ok ? situationAnswers(result.compiled) : undefined;
      return undefined;
    }
    if (answer === undefined) throw new Error('situations were asked for before their house');
    return answer(request);
  };
}
