import type { AirState } from '@evendraft/airflow';

/** What may change between solves of one built network; what is omitted is as described. */
export interface Scenario {
  /** By boundary, in the order of the description [Pa]. */
  readonly boundaryPressuresPa?: Float64Array;
  readonly outdoorAir?: AirState;
  readonly zoneAir?: NodeAir;
  readonly boundaryAir?: NodeAir;
  /** Density of the air in each link's column, by link; read only where its heights differ [kg/m3]. */
  readonly columnDensityKgPerM3?: Float64Array;
  /** Factor on each link's flow, 1e-12 to 1e6; 0 removes the link: a device off, a door shut [-]. */
  readonly linkScale?: Float64Array;
  /** Added to each link's pressure difference [Pa]. */
  readonly linkOffsetPa?: Float64Array;
}

/** Temperature and density by zone or by boundary, in the order of the description. */
export interface NodeAir {
  /** [°C] */
  readonly temperatureC: Float64Array;
  /** [kg/m3] */
  readonly densityKgPerM3: Float64Array;
}

/**
 * Scenarios on one network, a row each: every array holds row after row what a `Scenario` holds once.
 * What is omitted is as described in every row.
 */
export interface ScenarioBatch {
  /** Number of rows. */
  readonly count: number;
  /** Rows of boundary pressures [Pa]. */
  readonly boundaryPressuresPa?: Float64Array;
  /** One number a row. */
  readonly outdoorAir?: NodeAir;
  readonly zoneAir?: NodeAir;
  readonly boundaryAir?: NodeAir;
  readonly columnDensityKgPerM3?: Float64Array;
  readonly linkScale?: Float64Array;
  readonly linkOffsetPa?: Float64Array;
}
