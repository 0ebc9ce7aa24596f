import { buildNetwork } from '../build-network.js';
import type { BuiltNetwork } from '../built-network.js';
import { solveBatch } from '../solve-batch.js';
import type { WorkerReply, WorkerRequest } from './worker-port.js';

/**
 * The worker's side: keeps the network it was given and solves chunks of scenarios on it.
 *
 * @returns a function that takes a request and returns its reply; a network needs none
 */
export function createAnswerer(): (request: WorkerRequest) => WorkerReply | undefined {
  let network: BuiltNetwork | undefined;
  return (request) => {
    if (request.kind === 'network') {
      const built = buildNetwork(request.description);
      network = built.status === 'built' ? built.network : undefined;
      return undefined;
    }
    if (network === undefined) throw new Error('a chunk came before its network');
    const { ticket, batch, ...options } = request;
    return { ticket, result: solveBatch(network, batch, options) };
  };
}
