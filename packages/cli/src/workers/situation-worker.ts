/** What runs inside a thread that solves situations of a house. */
import { parentPort } from 'node:worker_threads';
import { situationAnswerer, type SituationRequest } from '@evendraft/studies';

const answer = situationAnswerer();
parentPort?.on('message', (request: SituationRequest) => {
  const reply = answer(request);
  if (reply !== undefined) parentPort?.postMessage(reply);
});
