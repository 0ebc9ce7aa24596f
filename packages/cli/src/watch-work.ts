import type { CommandStreams } from './command-streams.js';
import { progressBar, type ProgressBar } from './progress-bar.js';

/** What long work is given, so that it can be watched and stopped. */
export interface Watch {
  readonly signal?: AbortSignal;
  readonly onProgress: (done: number, of: number, noun?: string) => void;
}

/**
 * Runs long work with a bar for each of its parts; Ctrl-C stops it and says how far it is.
 *
 * @param work - the work
 * @param noun - what it counts, in the plural, unless it says so itself
 * @param streams - where the bar is drawn, and the signal
 * @returns what the work gives; nothing where the user stopped it, which is said
 */
export async function watchWork<Result>(
  work: (watch: Watch) => Promise<Result>,
  noun: string,
  streams: CommandStreams,
): Promise<Result | undefined> {
  const { signal } = streams;
  let soFar = 'nothing was solved yet';
  let drawn: { readonly noun: string; readonly bar: ProgressBar } | undefined;
  const barFor = (counted: string): ProgressBar => {
    if (drawn?.noun === counted) return drawn.bar;
    drawn?.bar.clear();
    const width = streams.progressWidth ?? streams.width;
    drawn = { noun: counted, bar: progressBar({ write: streams.err, width, noun: counted }) };
    return drawn.bar;
  };
  try {
    return await work({
      ...(signal === undefined ? {} : { signal }),
      onProgress: (done, of, counted = noun) => {
        soFar = `${Math.floor(done)} of ${of} ${counted} were solved`;
        if (streams.progress) barFor(counted).update(done, of);
      },
    });
  } catch (error) {
    if (signal?.aborted !== true) throw error;
    drawn?.bar.clear();
    streams.err(`Stopped: ${soFar}. There is no result and nothing was written.\n`);
    return undefined;
  } finally {
    drawn?.bar.clear();
  }
}
