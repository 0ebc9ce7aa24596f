/**
 * An argument that makes no sense, such as an uncertainty below zero or a set that does not exist.
 *
 * A programmer's mistake. What a person wrote in a file is checked before it gets here.
 */
export class RulesArgumentError extends Error {
  override readonly name = 'RulesArgumentError';
  readonly code = 'rules.argument';
  /** The argument's name. */
  readonly argument: string;
  /** What was passed. */
  readonly value: unknown;

  /**
   * @param argument - name of the argument
   * @param value - what was passed
   * @param allowed - what is allowed, in words
   */
  constructor(argument: string, value: unknown, allowed: string) {
    super(`${argument} is ${String(value)}; allowed is ${allowed}`);
    this.argument = argument;
    this.value = value;
  }
}
