import { UnitsError } from '../units-error.js';

/** Inches as a tape measure shows them, `3 1/2 in`, or with feet, `8' 6 1/2"`. */
export function formatInches(inches: number, part: number, style: 'inches' | 'feet'): string {
  if (![1, 2, 4, 8, 16, 32, 64].includes(part)) {
    throw new UnitsError('units.invalid-precision', `1/${part} in is not a mark on a tape.`);
  }
  const parts = Math.round(Math.abs(inches) * part);
  const sign = inches < 0 && parts > 0 ? '-' : '';
  if (style === 'inches') return `${sign}${mixed(parts, part)} in`;
  const partsPerFoot = 12 * part;
  const feet = Math.floor(parts / partsPerFoot);
  return `${sign}${feet}' ${mixed(parts - feet * partsPerFoot, part)}"`;
}

function mixed(parts: number, part: number): string {
  const whole = Math.floor(parts / part);
  let upper = parts - whole * part;
  let lower = part;
  while (upper > 0 && upper % 2 === 0) {
    upper /= 2;
    lower /= 2;
  }
  if (upper === 0) return String(whole);
  return whole === 0 ? `${upper}/${lower}` : `${whole} ${upper}/${lower}`;
}
