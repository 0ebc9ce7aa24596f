import type { UnitSystem } from '@evendraft/units';

/** How a drawing is made. Text keeps its size: a narrower drawing has fewer things side by side. */
export interface DrawingOptions {
  /** Width of the drawing, at least 300 [px]. */
  readonly width: number;
  /** Units of the reader. Pressures are in pascals in both. */
  readonly system: UnitSystem;
  /** Begins the ids inside the drawing; unique on its page, letters, digits and hyphens. */
  readonly id: string;
}
