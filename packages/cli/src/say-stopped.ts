import type { CommandStreams } from './command-streams.js';

/**
 * Says that the user stopped the work, and whether there is anything to show.
 *
 * @param streams - where messages go
 * @param known - whether anything was found by then
 */
export function sayStopped(streams: CommandStreams, known: boolean): void {
  streams.err(
    known
      ? 'Stopped: what follows holds what was done by then.\n'
      : 'Stopped: nothing was solved yet. There is no result and nothing was written.\n',
  );
}
