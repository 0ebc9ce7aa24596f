/** Which devices run at which speed and which doors and windows are shut. Interlocked things are not in it: they follow. */
export interface OperatingState {
  /** Device or ventilator id to the name of its speed; a ventilator's only speed is `on`. What is absent is off. */
  readonly running: Readonly<Record<string, string>>;
  /** Id of a door, or of an opening with positions, to its position. */
  readonly doors: Readonly<Record<string, 'open' | 'shut'>>;
}
