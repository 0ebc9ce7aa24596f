import type { AllowedRange } from './schema/quantity.js';

/**
 * The numbers that a house file may hold, in SI. They shut out slips of the keyboard and what the laws
 * cannot take; what is only unusual is a warning elsewhere. All are our choice.
 */
export const ranges = {
  floorArea: { above: 0, to: 100_000, words: 'more than 0, up to 100,000 m2' },
  openingArea: { above: 0, to: 1000, words: 'more than 0, up to 1000 m2' },
  volume: { above: 0, to: 1_000_000, words: 'more than 0, up to 1,000,000 m3' },
  height: { above: 0, to: 100, words: 'more than 0, up to 100 m' },
  heightAboveFloor: { from: 0, to: 100, words: '0 to 100 m above the floor of its zone' },
  floorHeight: { from: -50, to: 300, words: '-50 to 300 m' },
  altitude: { from: -500, to: 6000, words: '-500 to 6000 m above sea level' },
  temperature: { from: -70, to: 70, words: '-70 to 70 °C (-94 to 158 °F)' },
  angle: { from: -360, to: 360, words: '-360° to 360°, clockwise from north' },
  flow: { above: 0, to: 50, words: 'more than 0, up to 50 m3/s' },
  pressure: { from: -500, to: 500, words: '-500 to 500 Pa' },
  fanPressure: { above: 0, to: 100_000, words: 'more than 0, up to 100,000 Pa' },
  ratingPressure: { from: 0, to: 100_000, words: '0 to 100,000 Pa' },
  pressureRise: { from: -100_000, to: 100_000, words: '-100,000 to 100,000 Pa' },
  flowOnCurve: { from: 0, to: 50, words: '0 to 50 m3/s' },
  opensAt: { from: 0, to: 500, words: '0 to 500 Pa' },
  power: { above: 0, to: 10_000_000, words: 'more than 0, up to 10 MW' },
  speed: { from: 0, to: 80, words: '0 to 80 m/s' },
  share: { from: 0, to: 1, words: '0 to 100 %' },
  exponent: { from: 0.5, to: 1, words: '0.5 to 1' },
  dischargeCoefficient: { from: 0.1, to: 1, words: '0.1 to 1' },
  ductSide: { above: 0, to: 5, words: 'more than 0, up to 5 m' },
  ductLength: { from: 0, to: 500, words: '0 to 500 m' },
  roughness: { from: 0, to: 0.01, words: '0 to 10 mm' },
  compression: { from: 0, to: 0.3, words: '0 to 30 %' },
  lossCoefficient: { from: 0, to: 1000, words: '0 to 1000' },
  damperLoss: { from: 0.25, to: 1000, words: '0.25 to 1000' },
  fittingCount: { from: 0, to: 100, words: '0 to 100' },
  freeShare: { above: 0, to: 10, words: 'more than 0, up to 1000 %' },
  screenShare: { from: 0.3, to: 1, words: '30 to 100 %' },
  rise: { from: -100, to: 100, words: '-100 to 100 m' },
  storeys: { from: 1, to: 20, words: '1 to 20' },
} as const satisfies Readonly<Record<string, AllowedRange>>;
