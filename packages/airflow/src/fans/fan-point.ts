/** One point of a fan's curve. */
export interface FanPoint {
  /** Pressure behind the fan minus pressure before it; negative when the fan is helped [Pa]. */
  readonly pressureRisePa: number;
  /** Actual volume flow at the fan's inlet [m3/s]. */
  readonly volumeFlowM3PerS: number;
}
