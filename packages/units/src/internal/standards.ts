import { exact } from './exact.js';

/*
 * The defining numbers of every unit in the table that is not decimal. Each stands here once; the
 * table only multiplies and divides them, exactly.
 */

/** The foot [m]. Source: international yard and pound agreement, 1959 (exact). */
export const foot = exact('0.3048');

/** The inch [m]: one twelfth of a foot. */
export const inch = foot.div(12);

/** The statute mile [m]: 5280 feet. */
export const mile = foot.mul(5280);

/** The nautical mile [m]. Source: First International Extraordinary Hydrographic Conference, 1929 (exact). */
export const nauticalMile = exact('1852');

/** The avoirdupois pound [kg]. Source: international yard and pound agreement, 1959 (exact). */
export const pound = exact('0.45359237');

/** Standard gravity [m/s2]. Source: 3rd General Conference on Weights and Measures, 1901 (exact). */
export const standardGravity = exact('9.80665');

/** The pound-force [N]: a pound under standard gravity. */
export const poundForce = pound.mul(standardGravity);

/** The inch of water, conventional [Pa]: 25.4 mm of 1000 kg/m3 under standard gravity, 249.08891 Pa. */
export const inchOfWater = inch.mul(1000).mul(standardGravity);

/** The inch of mercury, conventional [Pa]: 25.4 mm of 13595.1 kg/m3 under standard gravity. */
export const inchOfMercury = inch.mul('13595.1').mul(standardGravity);

/**
 * The British thermal unit of the International Table [J].
 *
 * Source: Fifth International Conference on the Properties of Steam, 1956 (exact, by way of the
 * calorie of 4.1868 J).
 */
export const btu = exact('1055.05585262');

/** The US therm [J]: 100,000 Btu at 59 °F. Source: Federal Register, 27 July 1968 (exact). */
export const usTherm = exact('105480400');

/**
 * The density that turns a standard volume flow into a mass flow [kg/m3].
 *
 * Dry air at 20 °C and 101,325 Pa. Our convention: standards differ in what they call standard air.
 */
export const standardAirDensity = exact('1.2041');

/** Seconds in a minute [s]. */
export const minute = exact('60');

/** Seconds in an hour [s]. */
export const hour = exact('3600');
