/** What make-up air comes out of in a room. */
export type DiffuserKind = (typeof diffuserKinds)[number];

/** Every kind. */
export const diffuserKinds = [
  'open end',
  'grille',
  'perforated panel',
  'ceiling diffuser',
] as const;

/** Where make-up air comes out in a room; findings on velocity rest on it, the balance does not. */
export interface Diffuser {
  readonly kind?: DiffuserKind;
  /** From its face to the nearest edge of the hood [m]. */
  readonly distanceToHoodM?: number;
  /** Whether it blows away from the hood. */
  readonly directedAway?: boolean;
  /** Air as it leaves it, where it is tempered [°C]. */
  readonly airTemperatureC?: number;
}
