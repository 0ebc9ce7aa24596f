/** A bar on stderr that is drawn over and over. */
export interface ProgressBar {
  /** How far the work is; a part of one that is under way counts for the time left, and is not printed. */
  readonly update: (done: number, of: number) => void;
  /** Takes the bar away. */
  readonly clear: () => void;
}

/** What the bar is drawn with. */
export interface ProgressBarOptions {
  readonly write: (text: string) => void;
  /** Columns of the terminal [-]. */
  readonly width: number;
  /** What is counted, in the plural. */
  readonly noun: string;
  /** Time since any fixed moment [ms]. */
  readonly now?: () => number;
}

/** Short work needs no bar [ms]. */
const silentMs = 400;
/** Between two drawings [ms]. */
const pauseMs = 100;
const clearLine = '\r\u001b[K';

/**
 * A bar with the count and the time left, for long work in a terminal.
 *
 * The time left is that of the work done so far, carried on: for equal parts of work.
 *
 * @param options - where and how it is drawn
 * @returns the bar, not yet visible
 */
export function progressBar(options: ProgressBarOptions): ProgressBar {
  const { write, width, noun, now = () => performance.now() } = options;
  const start = now();
  let last = start;
  let visible = false;
  return {
    update: (done, of) => {
      const time = now();
      if (time - start < silentMs || time - last < pauseMs || of <= 0) return;
      last = time;
      visible = true;
      const leftMs = done === 0 ? undefined : ((time - start) * (of - done)) / done;
      const left = leftMs === undefined ? '' : `, ${timeWords(leftMs)} left`;
      const words = ` ${Math.floor(done)} of ${of} ${noun}${left}`;
      const room = Math.min(30, width - words.length - 4);
      const full = Math.round((room * Math.min(done, of)) / of);
      const bar = room < 5 ? '' : `[${'='.repeat(full)}${' '.repeat(room - full)}]`;
      write(clearLine + (bar + words).slice(0, Math.max(1, width - 1)));
    },
    clear: () => {
      if (visible) write(clearLine);
      visible = false;
    },
  };
}

function timeWords(ms: number): string {
  const seconds = Math.ceil(ms / 1000);
  if (seconds < 90) return `${seconds} s`;
  const minutes = Math.ceil(seconds / 60);
  return minutes < 90 ? `${minutes} min` : `${Math.ceil(minutes / 60)} h`;
}
