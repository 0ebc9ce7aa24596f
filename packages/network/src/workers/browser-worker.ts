/** What runs inside a module worker of a browser. */
import { createAnswerer } from './answer-request.js';
import type { WorkerReply, WorkerRequest } from './worker-port.js';

declare const self: {
  onmessage: ((event: { readonly data: WorkerRequest }) => void) | null;
  postMessage(message: WorkerReply): void;
};

const answer = createAnswerer();
self.onmessage = ({ data }) => {
  const reply = answer(data);
  if (reply !== undefined) self.postMessage(reply);
};
