import type { Provenance } from '../provenance.js';

/** Leakage classes of closed dampers. */
export type DamperLeakageClass =
  | 'AMCA 1A'
  | 'AMCA 1'
  | 'AMCA 2'
  | 'AMCA 3'
  | 'EN 1751 class 1'
  | 'EN 1751 class 2'
  | 'EN 1751 class 3'
  | 'EN 1751 class 4';

/** What a closed damper may leak: a flow by its area, at a pressure. */
export interface DamperLeakage {
  /** Greatest leakage by area of the damper [m3/(s m2)]. */
  readonly leakageM3PerSM2: number;
  /** Pressure difference at which that is stated [Pa]. */
  readonly pressurePa: number;
}

/** A published class. */
export interface DamperLeakageLimit extends DamperLeakage, Provenance {}

/**
 * Leakage classes of closed dampers as published.
 *
 * A class is an upper bound by test of one new damper; an old one with a worn gasket has none. Class 0 of
 * EN 1751 has no requirement and is left out.
 */
export const damperLeakageClasses: Readonly<Record<DamperLeakageClass, DamperLeakageLimit>> =
  Object.freeze({
    'AMCA 1A': amca(3),
    'AMCA 1': amca(4),
    'AMCA 2': amca(10),
    'AMCA 3': amca(40),
    'EN 1751 class 1': en(0.2),
    'EN 1751 class 2': en(0.04),
    'EN 1751 class 3': en(0.008),
    'EN 1751 class 4': en(0.0015),
  });

/** From cfm/ft2, at 1 in. w.c. */
function amca(leakageCfmPerFt2: number): DamperLeakageLimit {
  return Object.freeze({
    // 1 cfm/ft2 is a foot a minute.
    leakageM3PerSM2: (leakageCfmPerFt2 * 0.3048) / 60,
    pressurePa: 249.08891,
    source: 'AMCA Publication 511, leakage classes at 1 in. w.c.',
    status: 'memory',
  } as const);
}

function en(leakageM3PerSM2: number): DamperLeakageLimit {
  return Object.freeze({
    leakageM3PerSM2,
    pressurePa: 100,
    source: 'EN 1751:1999, Annex C, as restated in public (engineeringtoolbox.com, dampers)',
    status: 'found',
  } as const);
}
