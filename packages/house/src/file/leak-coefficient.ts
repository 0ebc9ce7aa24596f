import { accept, refuse } from './schema/file-problem.js';
import { leaf } from './schema/leaf.js';
import { readQuantity } from './schema/quantity.js';
import { shapeOf, shapeWords } from './schema/shape-of.js';

const examples = ['12 cfm/Pa^n', '0.01 m3/s/Pa^n'];
const words = 'more than 0, up to 1000 m3/(s Pa^n)';

/** A flow coefficient C of Q = C dP^n, `12 cfm/Pa^n` [m3/(s Pa^n)]. */
export const leakCoefficient = leaf(
  { description: 'Flow coefficient C of Q = C dP^n, with its exponent beside it.', examples },
  (value) => {
    const shape = shapeOf(value);
    if (shape !== 'text' && shape !== 'number') {
      return refuse('value.wrong-shape', { found: shapeWords[shape], accepted: examples });
    }
    const text = String(value).trim();
    const [, flow] = /^(.*?)\s*\/\s*Pa(?:\s*\^?\s*(?:n|0?\.\d+|1))?$/i.exec(text) ?? [];
    if (flow === undefined) {
      return refuse('value.not-a-coefficient', { found: text.slice(0, 60), accepted: examples });
    }
    const allowed = { above: 0, to: 1000, words };
    const read = readQuantity(flow, { dimension: 'volumeFlow', allowed, examples });
    return read.ok ? accept(read.value) : read;
  },
);
