import {
  airAt,
  flueConstructions,
  flueDuct,
  type FlueConstructionName,
  type FluePiece,
} from '@evendraft/airflow';
import type { Vent, VentMember, VentSystem } from '../vent-system.js';

/** Random flues and houses for checks: every kind of wall, size and weather that a house may have. */
export interface RandomVents {
  readonly system: VentSystem;
  /** Pressure of the room when so much air leaves through flues; one leak, an exhaust and a shift by stack [kg/s → Pa]. */
  readonly roomPa: (massFlowKgPerS: number) => number;
}

const pressurePa = 101325;

/**
 * A random chimney with one appliance or several, and a house of one room.
 *
 * @param random - numbers from 0 to 1
 * @param members - number of appliances
 * @returns vents and house
 */
export function randomVents(random: () => number, members = 1): RandomVents {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const spread = (low: number, high: number): number =>
    Math.exp(between(Math.log(low), Math.log(high)));
  const names = Object.keys(flueConstructions) as FlueConstructionName[];
  const outdoorC = between(-30, 35);
  const roomC = between(15, 26);
  const outdoorAir = airAt({ temperatureC: outdoorC, pressurePa });
  const roomAir = airAt({ temperatureC: roomC, pressurePa });
  const piece = (lengthM: number, riseM: number, outdoors: boolean): FluePiece => {
    const diameterM = spread(0.075, 0.3);
    return {
      lengthM,
      riseM,
      hydraulicDiameterM: diameterM,
      areaM2: (Math.PI / 4) * diameterM ** 2,
      construction: flueConstructions[names[Math.floor(random() * names.length)]!],
      surroundings: outdoors ? 'outdoors' : 'indoors',
      ambientTemperatureC: outdoors ? outdoorC : roomC,
      lossCoefficient: between(0.5, 6),
    };
  };
  const vent = (link: string, pieces: readonly FluePiece[]): Vent => ({
    link,
    pieces,
    duct: flueDuct(pieces),
  });
  const connector = (): FluePiece => {
    const lengthM = between(0.5, 4);
    return piece(lengthM, lengthM * between(0, 1), false);
  };
  const stack = (): readonly FluePiece[] => {
    const insideM = between(1, 6);
    const outsideM = between(0.5, 6);
    return [piece(insideM, insideM, false), piece(outsideM, outsideM, true)];
  };
  const appliance = (k: number): VentMember => {
    const fires = random() < 0.8;
    const burner = random() < 0.7;
    const gasFlowKgPerS = fires ? spread(0.001, 0.03) : 0;
    return {
      appliance: `appliance ${k}`,
      roomAir,
      inlets: [
        {
          link: `inlet ${k}`,
          law: { kind: 'orifice', areaM2: spread(0.002, 0.2), dischargeCoefficient: 0.6 },
        },
      ],
      injectedKgPerS: burner ? gasFlowKgPerS : 0,
      gasFlowKgPerS,
      gasTemperatureC: fires ? between(60, 500) : roomC,
      vent: vent(`vent ${k}`, members === 1 ? [connector(), ...stack()] : [connector()]),
    };
  };
  const coefficient = spread(0.003, 0.1);
  const exponent = between(0.5, 0.8);
  const exhaustKgPerS = between(-0.1, 0.4) * between(0, 1);
  const shiftPa = between(-6, 2);
  return {
    system: {
      members: Array.from({ length: members }, (_, k) => appliance(k)),
      ...(members === 1 ? {} : { chimney: vent('chimney', stack()) }),
      outdoorAir,
      topAir: outdoorAir,
      pressurePa,
    },
    roomPa(massFlowKgPerS) {
      const leaving = exhaustKgPerS + massFlowKgPerS;
      return shiftPa - Math.sign(leaving) * (Math.abs(leaving) / coefficient) ** (1 / exponent);
    },
  };
}
