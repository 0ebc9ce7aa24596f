/** What the command's exit code says. */
export const exitCode = {
  /** The work is done. */
  done: 0,
  /** A finding is beyond its limit and the caller asked to fail on that. */
  beyondLimit: 1,
  /** The file or the usage is wrong. */
  wrongInput: 2,
  /** A solve failed. */
  notSolved: 3,
  /** The user stopped the work; what was printed or written is marked as incomplete where it is. */
  stopped: 130,
} as const;

/** One of the exit codes. */
export type ExitCode = (typeof exitCode)[keyof typeof exitCode];
