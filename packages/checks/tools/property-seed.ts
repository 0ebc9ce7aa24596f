import fc from 'fast-check';

/** The seed of every property test that does not state its own, so that each run tries the same cases. */
export const propertySeed = 20240229;

fc.configureGlobal({ seed: propertySeed });
