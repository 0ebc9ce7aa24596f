import * as z from 'zod';
import { dryerFittings, type ScreenFacts } from './screen-facts.js';

const of = (unit: string, lowest: number, highest: number) =>
  z.exactOptional(z.number().min(lowest).max(highest).meta({ unit }));
const area = z.number().min(0).max(100).meta({ unit: 'm2' });

const appliance = z.strictObject({
  draftHoodOutletAreaM2: z.exactOptional(area),
  ventConnectorAreaM2: z.exactOptional(area),
  flueAreaM2: z.exactOptional(area),
  flueCollarAreaM2: z.exactOptional(area),
  nearestReturnM: of('m', 0, 100),
  flueExitTemperatureC: of('C', -90, 1200),
  flueDewPointC: of('C', -90, 100),
  airOpeningAreaM2: z.exactOptional(area),
});

const device = z.strictObject({
  ductLengthM: of('m', 0, 100),
  ductFittings: z.exactOptional(z.array(z.enum(dryerFittings))),
  closetOpeningAreaM2: z.exactOptional(area),
});

const makeUp = z.strictObject({
  damper: z.exactOptional(z.enum(['electric', 'gravity', 'barometric', 'none'])),
  designPressurePa: of('Pa', 0, 1000),
  ductDiameterM: of('m', 0, 3),
});

const opening = z.strictObject({
  to: z.enum(['room on the same storey', 'room on another storey', 'outdoors']),
  areaM2: area,
  cover: z.exactOptional(z.enum(['none', 'wood louvre', 'metal louvre'])),
  freeAreaM2: z.exactOptional(area),
  path: z.exactOptional(z.enum(['direct', 'vertical duct', 'horizontal duct'])),
});

const zone = z.strictObject({
  combustionOpenings: z.exactOptional(z.array(opening)),
  combustionSupplyM3PerS: of('m3/s', 0, 100),
  opensToOutdoors: z.exactOptional(z.boolean()),
  coAlarm: z.exactOptional(z.boolean()),
});

const nearby = z.strictObject({
  name: z.string().trim().min(1),
  distanceM: z.number().min(0).max(1000).meta({ unit: 'm' }),
  aboveIntakeM: z.number().min(-1000).max(1000).meta({ unit: 'm' }),
});

const doorShape = {
  leaf: z.exactOptional(
    z.strictObject({
      widthM: z.number().min(0.3).max(5).meta({ unit: 'm' }),
      heightM: z.number().min(0.3).max(5).meta({ unit: 'm' }),
      handleToEdgeM: z.number().min(0).max(0.25).meta({ unit: 'm' }),
      closerN: z.number().min(0).max(500).meta({ unit: 'N' }),
    }),
  ),
  opensInto: z.exactOptional(z.string().trim().min(1)),
};

const hood = z.strictObject({
  widthM: of('m', 0.1, 5),
  place: z.exactOptional(z.enum(['at a wall', 'over an island'])),
  burnerInputW: of('W', 1, 200_000),
  kitchenVolumeM3: of('m3', 1, 2000),
});

const perWidth = z.number().min(0.001).max(2).meta({ unit: 'm2/s' });

const hoodGuidance = z.strictObject({
  perWidthM2PerS: z.strictObject({ 'at a wall': perWidth, 'over an island': perWidth }),
  leastPerWidthM2PerS: perWidth,
  perInputM3PerSW: z.number().min(1e-7).max(1e-3).meta({ unit: 'm3/(s W)' }),
  kitchenAirChangePerS: z.number().min(1e-5).max(0.1).meta({ unit: '1/s' }),
});

const velocity = of('m/s', 0.01, 30);

const byName = <Value extends z.ZodType>(value: Value) =>
  z.exactOptional(z.record(z.string(), value));

/**
 * Shape of the facts that rules ask for and a house file does not hold, for facts that come from a file.
 *
 * Strict: an unknown key is an issue. Bounds are against numbers in another unit, our choice. That names
 * are those of the house is left to {@link readScreenFacts}.
 */
export const screenFactsSchema: z.ZodType<ScreenFacts> = z.strictObject({
  bedrooms: z.exactOptional(z.number().int().min(0).max(30)),
  builtInYear: z.exactOptional(z.number().int().min(1000).max(9999)),
  naturalAirChangePerS: of('1/s', 0, 0.01),
  stuccoed: z.exactOptional(z.boolean()),
  appliances: byName(appliance),
  devices: byName(device),
  makeUp: byName(makeUp),
  zones: byName(zone),
  intakes: byName(z.array(nearby)),
  climate: z.exactOptional(z.enum(['hot and humid', 'very cold', 'other'])),
  doors: byName(z.strictObject(doorShape)),
  outsideDoors: byName(z.strictObject({ ...doorShape, zone: z.string() })),
  hoods: byName(hood),
  hoodFlowGuidance: z.exactOptional(hoodGuidance),
  largestVelocitiesMPerS: z.exactOptional(
    z.strictObject({
      'at the hood': velocity,
      'at a diffuser': velocity,
      'in a quiet duct': velocity,
      'in a hood duct': velocity,
    }),
  ),
});
