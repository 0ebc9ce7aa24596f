/** What runs inside a worker thread of Node. */
import { createAnswerer } from './answer-request.js';
import type { WorkerReply, WorkerRequest } from './worker-port.js';

declare const process: { getBuiltinModule(name: string): unknown };

interface WorkerThreads {
  readonly parentPort: {
    on(event: 'message', listener: (message: WorkerRequest) => void): void;
    postMessage(message: WorkerReply): void;
  };
}

const { parentPort } = process.getBuiltinModule('node:worker_threads') as WorkerThreads;
const answer = createAnswerer();
parentPort.on('message', (request) => {
  const reply = answer(request);
  if (reply !== undefined) parentPort.postMessage(reply);
});
