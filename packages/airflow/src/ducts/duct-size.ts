/** Cross-section of a duct, as friction and fittings see it. */
export interface DuctSize {
  /** Area of the cross-section [m2]. */
  readonly areaM2: number;
  /** Perimeter of the cross-section [m]. */
  readonly perimeterM: number;
  /** Four times the area by the perimeter: the length of the friction law [m]. */
  readonly hydraulicDiameterM: number;
  /**
   * Diameter of the round duct that loses the same at the same volume flow [m].
   * For choosing from charts of round ducts; a duct law takes the area and the hydraulic diameter.
   */
  readonly equalFrictionDiameterM: number;
}
