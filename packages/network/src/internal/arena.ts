import type { LoopMemory, Loops } from './loops.js';
import { createLoopMemory } from './loops.js';

/** Arrays that lie side by side in one memory, in the order in which they are asked for, all zero. */
export interface Arena {
  floats(length: number): Float64Array;
  ints(length: number): Int32Array;
  /** The loops that work on this memory; an array is given to them by its `byteOffset`. */
  readonly loops: Loops;
}

/** Networks share a memory of this size until it is full: several hundred houses of some rooms [bytes]. */
const usualBytes = 2 ** 23;
const bytesANumber = 8;

let current: LoopMemory | undefined;

class MemoryFull extends Error {
  readonly code = 'MemoryFull';
}

/**
 * Makes something whose arrays all lie in one memory, beside the compiled loops: what a solve reads and writes together
 * is fetched together. A memory goes when everything that was made in it has gone.
 *
 * @param bytes - how much will be asked for, about [bytes]
 * @param make - asks for the arrays; is called again with a larger memory where they do not fit
 * @returns what it made
 */
export function inOneMemory<Made>(bytes: number, make: (arena: Arena) => Made): Made {
  current ??= createLoopMemory(usualBytes);
  let memory = current;
  for (let room = Math.max(usualBytes, 2 * bytes); ; room *= 2) {
    if (memory.used + bytes <= memory.buffer.byteLength) {
      try {
        return make(arenaIn(memory));
      } catch (error) {
        if (!(error instanceof MemoryFull)) throw error;
      }
    }
    memory = createLoopMemory(room);
    // What is larger has a memory of its own.
    if (room === usualBytes) current = memory;
  }
}

function arenaIn(memory: LoopMemory): Arena {
  const { buffer, loops } = memory;
  const room = (bytes: number): number => {
    const at = memory.used;
    if (at + bytes > buffer.byteLength) throw new MemoryFull();
    memory.used += bytesANumber * Math.ceil(bytes / bytesANumber);
    return at;
  };
  return {
    floats: (length) => new Float64Array(buffer, room(8 * length), length),
    ints: (length) => new Int32Array(buffer, room(4 * length), length),
    loops,
  };
}
