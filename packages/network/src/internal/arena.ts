/** Arrays that lie side by side in memory, in the order in which they are asked for. */
export interface Arena {
  floats(length: number): Float64Array;
  ints(length: number): Int32Array;
}

/** Arrays from this length on have memory of their own. */
const longArray = 4096;
const bytesANumber = 8;

/**
 * An arena: what a solve reads and writes together is fetched together, and a network of some rooms takes one
 * piece of memory instead of fifty.
 *
 * @param numbers - how many numbers will be asked for, about
 */
export function createArena(numbers: number): Arena {
  const chunk = bytesANumber * Math.max(64, Math.min(numbers, 16 * longArray));
  let buffer = new ArrayBuffer(chunk);
  let used = 0;
  const room = (bytes: number): number => {
    if (used + bytes > buffer.byteLength) {
      buffer = new ArrayBuffer(Math.max(chunk, bytes));
      used = 0;
    }
    const at = used;
    used += bytesANumber * Math.ceil(bytes / bytesANumber);
    return at;
  };
  return {
    floats(length) {
      if (length >= longArray) return new Float64Array(length);
      const at = room(8 * length);
      return new Float64Array(buffer, at, length);
    },
    ints(length) {
      if (length >= longArray) return new Int32Array(length);
      const at = room(4 * length);
      return new Int32Array(buffer, at, length);
    },
  };
}
