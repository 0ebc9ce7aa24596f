/**
 * An argument that no air can have: not finite, below absolute zero, a negative pressure or area.
 *
 * A programmer's mistake. Data that a person wrote is checked before it gets here.
 */
export class AirflowArgumentError extends Error {
  override readonly name = 'AirflowArgumentError';
  readonly code = 'airflow.argument';
  /** The argument's name. */
  readonly argument: string;
  /** What was passed. */
  readonly value: unknown;
  /** What is allowed, in words. */
  readonly allowed: string;

  /**
   * @param argument - name of the argument
   * @param value - what was passed
   * @param allowed - what is allowed, in words
   */
  constructor(argument: string, value: unknown, allowed: string) {
    super(`${argument} is ${String(value)}; allowed is ${allowed}`);
    this.argument = argument;
    this.value = value;
    this.allowed = allowed;
  }
}
