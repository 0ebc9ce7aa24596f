import { airAsFlueGas } from '@evendraft/airflow';
import { inletSuction } from './inlet-suction.js';
import { airOfTemperature, ventGas, type VentGas } from './vent-gas.js';
import type { VentMember, VentSystem } from './vent-system.js';

/** One appliance's part of a system at given flows. */
export interface MemberAtFlow {
  readonly gas: VentGas;
  /** Gas at the collar: what enters the vent, or what spills while air comes down [°C]. */
  readonly collarTemperatureC: number;
  /** Room minus collar [Pa]. */
  readonly inletSuctionPa: number;
  /** Room at the collar's height minus the place where the flue ends, both minus outdoors there, that the flow asks [Pa]. */
  readonly neededPa: number;
}

/** A system of vents at given flows, walls at rest. */
export interface VentsAtFlows {
  readonly members: readonly MemberAtFlow[];
  readonly chimney?: VentGas;
  /** Gas where the vents meet [°C]. */
  readonly junctionTemperatureC?: number;
  /** Heat that comes in less heat that leaves, by the heat that comes in [-]. */
  readonly heatImbalance: number;
}

/**
 * A system of vents at the flows of its members: temperatures, drafts, losses, and the pressure that each asks of its
 * room [Pa].
 *
 * A burner's gas is diluted by what the vent takes beyond it. Gas that comes down in a connector has the temperature
 * of what meets in the chimney's foot. Every part is continuous in the flows; the pressure asked is not monotone in
 * them, because little flow cools and much flow dilutes: that is why a flue can have two stable states.
 *
 * @param system - the vents
 * @param flows - by member, upwards positive [kg/s]
 * @returns the state of every part, and the pressures asked [Pa]
 *
 * Source: mass and heat balances with the laws of flues in `airflow` (derived).
 */
export function ventsAtFlows(system: VentSystem, flows: readonly number[]): VentsAtFlows {
  const { members, chimney, topAir } = system;
  const up = members.map((member, k) => {
    const flow = flows[k]!;
    if (flow < 0) return undefined;
    const inletTemperatureC = dilutedTemperature(member, flow);
    return ventGas(member.vent, { massFlowKgPerS: flow, inletTemperatureC }, system);
  });
  if (chimney === undefined) {
    const gases = members.map(
      (member, k) => up[k] ?? comingDown(member, flows[k]!, { system, fromC: topAir.temperatureC }),
    );
    const parts = members.map((member, k) => memberAt(member, gases[k]!, { system, beyondPa: 0 }));
    return { members: parts, heatImbalance: heatImbalance(system, { gases }) };
  }
  const total = flows.reduce((sum, flow) => sum + flow, 0);
  const fallen =
    total < 0
      ? ventGas(chimney, { massFlowKgPerS: total, inletTemperatureC: topAir.temperatureC }, system)
      : undefined;
  let arriving = fallen === undefined ? 0 : -total;
  let heat = arriving * (fallen?.outletTemperatureC ?? 0);
  up.forEach((gas) => {
    if (gas === undefined) return;
    arriving += gas.massFlowKgPerS;
    heat += gas.massFlowKgPerS * gas.outletTemperatureC;
  });
  const junctionTemperatureC = arriving > 0 ? heat / arriving : topAir.temperatureC;
  const chimneyGas =
    fallen ??
    ventGas(chimney, { massFlowKgPerS: total, inletTemperatureC: junctionTemperatureC }, system);
  const gases = members.map(
    (member, k) => up[k] ?? comingDown(member, flows[k]!, { system, fromC: junctionTemperatureC }),
  );
  const beyondPa = chimneyGas.lossPa - chimneyGas.draftPa;
  const parts = members.map((member, k) => memberAt(member, gases[k]!, { system, beyondPa }));
  return {
    members: parts,
    chimney: chimneyGas,
    junctionTemperatureC,
    heatImbalance: heatImbalance(system, { gases, chimney: chimneyGas }),
  };
}

/**
 * Temperature of what enters a vent at a flow upwards [°C].
 *
 * @param member - gas of the flame and room
 * @param massFlowKgPerS - what the vent takes [kg/s]
 * @returns gas diluted by room air; undiluted where the vent takes no more than the gas [°C]
 */
export function dilutedTemperature(member: VentMember, massFlowKgPerS: number): number {
  const { gasFlowKgPerS, gasTemperatureC, roomAir } = member;
  if (gasFlowKgPerS === 0) return roomAir.temperatureC;
  const share = massFlowKgPerS > gasFlowKgPerS ? gasFlowKgPerS / massFlowKgPerS : 1;
  return roomAir.temperatureC + share * (gasTemperatureC - roomAir.temperatureC);
}

function comingDown(
  { vent }: VentMember,
  massFlowKgPerS: number,
  { system, fromC }: { readonly system: VentSystem; readonly fromC: number },
): VentGas {
  return ventGas(vent, { massFlowKgPerS, inletTemperatureC: fromC }, system);
}

function memberAt(
  member: VentMember,
  gas: VentGas,
  { system, beyondPa }: { readonly system: VentSystem; readonly beyondPa: number },
): MemberAtFlow {
  const { massFlowKgPerS } = gas;
  const collarTemperatureC =
    massFlowKgPerS < 0 ? mixedAtCollar(member, gas) : gas.inletTemperatureC;
  // Where nothing is open the burner's fan holds the flow, whatever the collar's pressure.
  const inletSuctionPa =
    member.inlets.length === 0
      ? 0
      : inletSuction(member.inlets, massFlowKgPerS - member.injectedKgPerS, {
          room: member.roomAir,
          collar: airOfTemperature(collarTemperatureC, system.pressurePa),
        });
  return {
    gas,
    collarTemperatureC,
    inletSuctionPa,
    neededPa: inletSuctionPa + gas.lossPa - gas.draftPa + beyondPa,
  };
}

/** What comes down meets the gas of the flame at the collar. */
function mixedAtCollar(
  { gasFlowKgPerS, gasTemperatureC }: VentMember,
  { massFlowKgPerS, outletTemperatureC }: VentGas,
): number {
  const down = -massFlowKgPerS;
  return (down * outletTemperatureC + gasFlowKgPerS * gasTemperatureC) / (down + gasFlowKgPerS);
}

/** Heat of all that enters vents, less what leaves them and what their walls lose, by the heat that enters. */
function heatImbalance(
  { topAir }: VentSystem,
  at: { readonly gases: readonly VentGas[]; readonly chimney?: VentGas },
): number {
  const { specificHeatJPerKgK } = airAsFlueGas;
  const { gases, chimney } = at;
  // Against the temperature at the top, so that what enters there brings none.
  const heat = (massFlowKgPerS: number, temperatureC: number): number =>
    specificHeatJPerKgK * Math.abs(massFlowKgPerS) * (temperatureC - topAir.temperatureC);
  let net = 0;
  let size = 0;
  const count = (heatW: number): void => {
    net += heatW;
    size += Math.abs(heatW);
  };
  for (const gas of gases) {
    const { massFlowKgPerS, inletTemperatureC, outletTemperatureC } = gas;
    if (massFlowKgPerS >= 0) count(heat(massFlowKgPerS, inletTemperatureC));
    else count(-heat(massFlowKgPerS, outletTemperatureC));
    if (chimney === undefined && massFlowKgPerS > 0) {
      count(-heat(massFlowKgPerS, outletTemperatureC));
    }
    count(-gas.heatLossW);
  }
  if (chimney !== undefined) {
    count(-chimney.heatLossW);
    if (chimney.massFlowKgPerS > 0) {
      count(-heat(chimney.massFlowKgPerS, chimney.outletTemperatureC));
    }
  }
  return size > 0 ? net / size : 0;
}
