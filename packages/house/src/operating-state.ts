/** Which devices run at which speed and which doors and windows are shut. Interlocked things are not in it: they follow. */
export interface OperatingState {
  /**
   * Id of a device, ventilator or forced-air system to the name of its speed. A ventilator's speeds are its modes,
   * the usual one `on`; that of an air handler is `on`. What is absent is off.
   */
  readonly running: Readonly<Record<string, string>>;
  /** Id of a door, or of an opening with positions, to its position. */
  readonly doors: Readonly<Record<string, 'open' | 'shut'>>;
  /** Id of an appliance to the stage that its flue is in, such as `firing`. What is absent is off. */
  readonly firing?: Readonly<Record<string, string>>;
}
