import { airAsFlueGas, flueHeatTransfer, flueSurface, gravity } from '@evendraft/airflow';
import { inletSuction } from '../inlet-suction.js';
import { airOfTemperature, lossOf, riseOf } from '../vent-gas.js';
import type { Vent, VentMember, VentSystem } from '../vent-system.js';
import { hull, plus, point, scaled, timesShare, weightedMean, type Interval } from './interval.js';

/**
 * Bounds on the pressures that a system of vents asks of its rooms, for all flows of a box [Pa].
 *
 * Interval arithmetic over the same formulas as `ventsAtFlows`: what it leaves out cannot be. No member's interval may
 * hold flows of both signs.
 *
 * @param system - the vents
 * @param flows - by member [kg/s]
 * @returns by member, room minus place where the flue ends [Pa]
 */
export function ventBounds(system: VentSystem, flows: readonly Interval[]): readonly Interval[] {
  return flows.map((flow, place) => memberBounds(system, { flows, place })(flow));
}

/**
 * Bounds on the pressure that one member of a system asks of its room, by its own flow, the others as in a box [Pa].
 *
 * @param system - the vents
 * @param of - flows by member, and place of the one that is asked about [kg/s]
 * @returns from a flow of that member to room minus place where the flue ends [Pa]
 */
export function memberBounds(
  system: VentSystem,
  { flows, place }: { readonly flows: readonly Interval[]; readonly place: number },
): (flow: Interval) => Interval {
  const { members, chimney, topAir } = system;
  const top = point(topAir.temperatureC);
  const member = members[place]!;
  const rising = (k: number, flow: Interval): GasBounds | undefined =>
    isDown(flow)
      ? undefined
      : gasBounds(members[k]!.vent, { flow, inletC: dilutedBounds(members[k]!, flow) }, system);
  const own = (flow: Interval, up: GasBounds | undefined, fromC: Interval): Interval => {
    const gas = up ?? gasBounds(member.vent, { flow, inletC: fromC }, system);
    return asked(member, { flow, gas, system });
  };
  if (chimney === undefined) return (flow) => own(flow, rising(place, flow), top);
  const others = members.flatMap((_, k) => {
    const gas = k === place ? undefined : rising(k, flows[k]!);
    return gas === undefined ? [] : [{ value: gas.outletC, weight: flows[k]! }];
  });
  const otherFlows = flows.filter((_, k) => k !== place).reduce(plus, point(0));
  return (flow) => {
    const total = plus(otherFlows, flow);
    const up = rising(place, flow);
    const fallen =
      total.low < 0
        ? gasBounds(
            chimney,
            { flow: { low: total.low, high: Math.min(0, total.high) }, inletC: top },
            system,
          )
        : undefined;
    const falling = fallen && {
      value: fallen.outletC,
      weight: { low: Math.max(0, -total.high), high: -total.low },
    };
    const parts = [falling, ...others, up && { value: up.outletC, weight: flow }];
    const junction = weightedMean(parts.filter((part) => part !== undefined)) ?? top;
    const risen =
      total.high >= 0
        ? gasBounds(
            chimney,
            { flow: { low: Math.max(0, total.low), high: total.high }, inletC: junction },
            system,
          )
        : undefined;
    const states = [fallen, risen].filter((state) => state !== undefined);
    const beyond = hull(states.map(({ lossPa, draftPa }) => plus(lossPa, scaled(draftPa, -1))));
    return plus(own(flow, up, junction), beyond);
  };
}

interface GasBounds {
  readonly outletC: Interval;
  readonly draftPa: Interval;
  readonly lossPa: Interval;
}

function isDown({ low }: Interval): boolean {
  return low < 0;
}

function dilutedBounds(
  { gasFlowKgPerS, gasTemperatureC, roomAir }: VentMember,
  flow: Interval,
): Interval {
  const at = (massFlow: number): number => {
    const share = massFlow > gasFlowKgPerS ? gasFlowKgPerS / massFlow : 1;
    const excess = gasFlowKgPerS === 0 ? 0 : share * (gasTemperatureC - roomAir.temperatureC);
    return roomAir.temperatureC + excess;
  };
  return hull([point(at(flow.low)), point(at(flow.high))]);
}

function gasBounds(
  vent: Vent,
  entering: { readonly flow: Interval; readonly inletC: Interval },
  { outdoorAir, pressurePa }: VentSystem,
): GasBounds {
  const { flow, inletC } = entering;
  const falls = isDown(flow);
  // Sizes, without the sign of a zero.
  const least = Math.abs(falls ? flow.high : flow.low);
  const most = Math.abs(falls ? flow.low : flow.high);
  const pieces = falls ? [...vent.pieces].reverse() : vent.pieces;
  let gasC = inletC;
  let weightPa = point(0);
  let lengths = 0;
  let lengthC = point(0);
  for (const piece of pieces) {
    const around = point(piece.ambientTemperatureC);
    const excess = plus(gasC, scaled(around, -1));
    const conductance =
      flueHeatTransfer(piece.construction, piece.surroundings) * flueSurface(piece);
    const few = conductance / (least * airAsFlueGas.specificHeatJPerKgK);
    const many = conductance / (most * airAsFlueGas.specificHeatJPerKgK);
    const left = { low: Math.exp(-few), high: Math.exp(-many) };
    const meanC = plus(around, timesShare(excess, { low: meanShare(few), high: meanShare(many) }));
    const density = densityBounds(meanC, pressurePa);
    weightPa = plus(weightPa, scaled(density, gravity * piece.riseM));
    lengths += piece.lengthM;
    lengthC = plus(lengthC, scaled(meanC, piece.lengthM));
    gasC = plus(around, timesShare(excess, left));
  }
  const outdoorsPa = outdoorAir.densityKgPerM3 * gravity * riseOf(vent);
  // A longer way through thinner and more viscous gas loses more: the warmer, the more.
  const lawC = falls ? inletC : lengths > 0 ? scaled(lengthC, 1 / lengths) : inletC;
  const loss = (massFlow: number, temperatureC: number): number =>
    massFlow === 0 ? 0 : lossOf(vent, massFlow, airOfTemperature(temperatureC, pressurePa));
  return {
    outletC: gasC,
    draftPa: plus(point(outdoorsPa), scaled(weightPa, -1)),
    lossPa: falls
      ? { low: loss(flow.low, lawC.high), high: loss(flow.high, lawC.low) }
      : { low: loss(flow.low, lawC.low), high: loss(flow.high, lawC.high) },
  };
}

/** Mean excess by excess at the inlet, (1 − e^−K)/K [-]. */
function meanShare(coolingNumber: number): number {
  if (coolingNumber === 0) return 1;
  return coolingNumber === Infinity ? 0 : -Math.expm1(-coolingNumber) / coolingNumber;
}

function densityBounds({ low, high }: Interval, pressurePa: number): Interval {
  return {
    low: airOfTemperature(high, pressurePa).densityKgPerM3,
    high: airOfTemperature(low, pressurePa).densityKgPerM3,
  };
}

/** What a member asks of its room, without what a chimney asks beyond. */
function asked(
  member: VentMember,
  at: { readonly flow: Interval; readonly gas: GasBounds; readonly system: VentSystem },
): Interval {
  const { flow, gas, system } = at;
  const { inlets, injectedKgPerS, gasTemperatureC, gasFlowKgPerS, roomAir } = member;
  const { pressurePa } = system;
  const enters = plus(flow, point(-injectedKgPerS));
  // What comes out at the collar is gas of the flame, what came down, or a mixture.
  const leavingC = isDown(flow)
    ? (weightedMean([
        { value: gas.outletC, weight: { low: -flow.high, high: -flow.low } },
        { value: point(gasTemperatureC), weight: point(gasFlowKgPerS) },
      ]) ?? gas.outletC)
    : dilutedBounds(member, flow);
  const suction = (massFlow: number, collarC: number): number =>
    inletSuction(inlets, massFlow, {
      room: roomAir,
      collar: airOfTemperature(collarC, pressurePa),
    });
  const inlet = {
    low: suction(enters.low, leavingC.high),
    high: suction(enters.high, leavingC.low),
  };
  return plus(plus(inlet, gas.lossPa), scaled(gas.draftPa, -1));
}
