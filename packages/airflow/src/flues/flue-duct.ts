import type { DuctDescription } from '../laws/flow-law-description.js';
import type { FluePiece } from './flue-piece.js';

/**
 * The flow law of a flue: a duct with a section for each piece, friction by its roughness.
 *
 * The law takes the density of the air that enters. The link's node on the appliance's side should therefore have the
 * gas of the flue's mean (`meanGas`), and the link's column the density of its draft (`columnDensityKgPerM3`).
 *
 * @param pieces - from the appliance to the top
 * @returns description of the link's law
 *
 * Source: EN 13384-1, section 8 (from memory), without its factor for flow safety, which belongs to a rule.
 */
export function flueDuct(pieces: readonly FluePiece[]): DuctDescription {
  return {
    kind: 'duct',
    sections: pieces.map((piece) => ({
      lengthM: piece.lengthM,
      hydraulicDiameterM: piece.hydraulicDiameterM,
      areaM2: piece.areaM2,
      roughnessM: piece.construction.roughnessM,
      frictionMultiplier: 1,
      lossCoefficient: piece.lossCoefficient,
    })),
  };
}
