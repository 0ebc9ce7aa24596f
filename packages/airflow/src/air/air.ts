/** The air of one place, as far as a flow through an opening can tell. */
export interface Air {
  /** Temperature [°C]. */
  readonly temperatureC: number;
  /** Density [kg/m3]. */
  readonly densityKgPerM3: number;
  /** Dynamic viscosity [Pa s]. */
  readonly viscosityPaS: number;
}
