/** Where the command writes and what its terminal can show. */
export interface CommandStreams {
  /** Results. */
  readonly out: (text: string) => void;
  /** Everything else. */
  readonly err: (text: string) => void;
  /** Columns of the terminal [-]. */
  readonly width: number;
  readonly color: boolean;
  /** Whether a progress line may be drawn over and over on stderr. */
  readonly progress: boolean;
  /** Columns of the terminal that progress is drawn on; those of results if absent [-]. */
  readonly progressWidth?: number;
  /** Stops long work. */
  readonly signal?: AbortSignal;
}
