import {
  airViscosity,
  ductLoss,
  ductRoughnesses,
  enlargementLoss,
  flatOvalDuctSize,
  flexibleDuctFactor,
  flowAt,
  frictionFactor,
  lossFromEquivalentLength,
  rectangularDuctSize,
  roundDuctSize,
  velocityPressure,
  type DuctDescription,
  type DuctMaterial,
  type DuctSize,
} from '@evendraft/airflow';
import { expect, test } from 'vitest';
import * as z from 'zod';
import { disagreements } from './disagreements.js';
import { publishedCases } from './published-cases.js';

const sizeSchema = z.union([
  z.strictObject({ diameterM: z.number() }),
  z.strictObject({ widthM: z.number(), heightM: z.number() }),
  z.strictObject({ majorAxisM: z.number(), minorAxisM: z.number() }),
]);
const ductSchema = z.strictObject({
  air: z.strictObject({ temperatureC: z.number(), densityKgPerM3: z.number() }),
  size: sizeSchema,
  lengthM: z.number(),
  roughnessM: z.number(),
  lossCoefficient: z.number(),
  /** Exactly one of the two drives it. */
  volumeFlowM3PerS: z.number().exactOptional(),
  pressurePa: z.number().exactOptional(),
});
const flowSchema = z.strictObject({
  size: sizeSchema,
  volumeFlowM3PerS: z.number(),
  densityKgPerM3: z.number(),
  /** Friction of a stretch of duct that the source states. */
  given: z.strictObject({ lengthM: z.number(), frictionFactor: z.number() }).exactOptional(),
});
const enlargementSchema = z.strictObject({
  velocityBeforeMPerS: z.number(),
  velocityBehindMPerS: z.number(),
  densityKgPerM3: z.number(),
});
const input = z.strictObject({
  frictionFactors: z
    .record(z.string(), z.strictObject({ reynolds: z.number(), relativeRoughness: z.number() }))
    .exactOptional(),
  ducts: z.record(z.string(), ductSchema).exactOptional(),
  flows: z.record(z.string(), flowSchema).exactOptional(),
  enlargements: z.record(z.string(), enlargementSchema).exactOptional(),
  flexibleDucts: z
    .record(z.string(), z.strictObject({ diameterM: z.number(), compression: z.number() }))
    .exactOptional(),
  sizes: z.record(z.string(), sizeSchema).exactOptional(),
  roughnesses: z.array(z.string()).exactOptional(),
});

for (const { name, input: given, expected } of publishedCases('ducts', input)) {
  test(`ducts: ${name}`, () => {
    const computed = {
      frictionFactors: each(given.frictionFactors, ({ reynolds, relativeRoughness }) => ({
        frictionFactor: frictionFactor(reynolds, relativeRoughness),
      })),
      ducts: each(given.ducts, solvedDuct),
      flows: each(given.flows, ({ size, volumeFlowM3PerS, densityKgPerM3, given: friction }) => {
        const { areaM2, hydraulicDiameterM } = sizeOf(size);
        const velocityMPerS = volumeFlowM3PerS / areaM2;
        const velocityPressurePa = velocityPressure(velocityMPerS, densityKgPerM3);
        if (friction === undefined) return { velocityMPerS, velocityPressurePa };
        const loss = lossFromEquivalentLength(friction.lengthM, {
          frictionFactor: friction.frictionFactor,
          hydraulicDiameterM,
        });
        return { velocityMPerS, velocityPressurePa, lossPa: loss * velocityPressurePa };
      }),
      enlargements: each(given.enlargements, (enlargement) => {
        const { velocityBeforeMPerS, velocityBehindMPerS, densityKgPerM3 } = enlargement;
        const lossPa = enlargementLoss(enlargement);
        const regained =
          velocityPressure(velocityBeforeMPerS, densityKgPerM3) -
          velocityPressure(velocityBehindMPerS, densityKgPerM3);
        return { lossPa, staticRisePa: regained - lossPa };
      }),
      flexibleDucts: each(given.flexibleDucts, (duct) => ({ factor: flexibleDuctFactor(duct) })),
      sizes: each(given.sizes, (size) => ({ ...sizeOf(size) })),
      roughnesses: Object.fromEntries(
        (given.roughnesses ?? []).map((material) => [
          material,
          { roughnessM: ductRoughnesses[material as DuctMaterial].roughnessM },
        ]),
      ),
    };
    expect(disagreements(computed, expected)).toEqual([]);
  });
}

function each<Item, Result>(
  items: Readonly<Record<string, Item>> | undefined,
  compute: (item: Item) => Result,
): Record<string, Result> {
  return Object.fromEntries(Object.entries(items ?? {}).map(([id, item]) => [id, compute(item)]));
}

function sizeOf(size: z.infer<typeof sizeSchema>): DuctSize {
  if ('diameterM' in size) return roundDuctSize(size.diameterM);
  return 'widthM' in size ? rectangularDuctSize(size) : flatOvalDuctSize(size);
}

/** A duct by our law: driven by a flow it gives a loss, driven by a pressure it gives a flow. */
function solvedDuct(given: z.infer<typeof ductSchema>) {
  const { air, lengthM, roughnessM, lossCoefficient, volumeFlowM3PerS, pressurePa } = given;
  const { areaM2, hydraulicDiameterM } = sizeOf(given.size);
  const section = { lengthM, areaM2, hydraulicDiameterM, roughnessM, lossCoefficient };
  const duct: DuctDescription = { kind: 'duct', sections: [{ ...section, frictionMultiplier: 1 }] };
  const flow =
    volumeFlowM3PerS ??
    flowAt(duct, pressurePa!, { from: air, to: air }).massFlowKgPerS / air.densityKgPerM3;
  const lossPa = ductLoss(duct, { volumeFlowM3PerS: flow, air });
  const velocityMPerS = flow / areaM2;
  const viscosityPaS = airViscosity(air.temperatureC);
  const reynolds = (velocityMPerS * hydraulicDiameterM * air.densityKgPerM3) / viscosityPaS;
  return {
    volumeFlowM3PerS: flow,
    velocityMPerS,
    reynolds,
    frictionFactor: frictionFactor(reynolds, roughnessM / hydraulicDiameterM),
    lossPa,
  };
}
