// The loops in which a solve spends its time, in AssemblyScript, a part of TypeScript that compiles to WebAssembly:
// half the time of the same loops in JavaScript, whose arrays are checked at every use. They work on a network that
// `@evendraft/network` lays out in memory; what calls them, and why they are right, is there, in TypeScript.
//
// After a change: `npm run build:loops` compiles them into `src/internal/loops-code.ts`.
export { chords, differences } from './links';
export { factorize, fill, solve } from './matrix';
export { powerLaw, powerLawInverse } from './power-law';
export { bendOfStep, bendOfTrial, goAlong, newtonStep, residualStep, tangentStep } from './steps';
export { greatestResidual, greatestThrough, slopeAlong, sums } from './zones';
