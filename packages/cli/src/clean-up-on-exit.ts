const waiting = new Set<() => void>();

/**
 * Runs something should the process end before it is done, as by a second Ctrl-C.
 *
 * @param cleanUp - must do all of its work at once
 * @returns takes it back, once the work is done
 */
export function cleanUpOnExit(cleanUp: () => void): () => void {
  if (waiting.size === 0) process.once('exit', runAll);
  waiting.add(cleanUp);
  return () => {
    waiting.delete(cleanUp);
    if (waiting.size === 0) process.off('exit', runAll);
  };
}

function runAll(): void {
  for (const cleanUp of waiting) cleanUp();
}
