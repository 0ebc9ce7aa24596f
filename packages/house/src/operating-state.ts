/** Which devices run at which speed and which doors are shut. Interlocked things are not in it: they follow. */
export interface OperatingState {
  /** Device or ventilator id to the name of its speed; a ventilator's are its modes, the usual one `on`. What is absent is off. */
  readonly running: Readonly<Record<string, string>>;
  /** Door id to its position. */
  readonly doors: Readonly<Record<string, 'open' | 'shut'>>;
}
