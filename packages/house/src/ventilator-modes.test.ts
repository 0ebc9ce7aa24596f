import { solveNetwork } from '@evendraft/network';
import { describe, expect, it } from 'vitest';
import { compileHouse, houseScenario, houseWeather } from './compile-house.js';
import type { House } from './house.js';
import { operatingStates } from './operating-states.js';
import { parseHouse } from './parse-house.js';
import { stateLabel } from './state-label.js';

function house(ventilator: unknown): House {
  const result = parseHouse({
    evendraft: 1,
    name: 'Rowan Lane 3',
    floorArea: '120 m2',
    airtightness: '100 L/s at 50 Pa',
    weather: [{ name: 'still', outdoorTemperature: '20 C', wind: 'calm' }],
    ventilators: { hrv: ventilator },
  });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.house;
}

/** Net flow from outdoors through the ventilator in one of its modes [m3/s]. */
function netSupply(of: House, mode: string): number {
  const result = compileHouse(of);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const { compiled } = result;
  const { scenario } = houseScenario(compiled, {
    state: { running: { hrv: mode }, doors: {} },
    weather: houseWeather(of, of.weathers[0]!),
    airtightnessCase: 0,
  });
  const balance = solveNetwork(compiled.network, scenario);
  if (balance.status !== 'solved') throw new Error(balance.hint);
  return compiled.links.reduce((sum, { role, description }, i) => {
    if (role.kind !== 'ventilator') return sum;
    const flow = balance.links.volumeFlowM3PerS[i]!;
    return description.to === '@outdoors' ? sum - flow : sum + flow;
  }, 0);
}

const full = {
  supply: '60 L/s',
  exhaust: '50 L/s',
  defrost: 'supply stopped',
  dirtyFilter: '40 %',
};

describe('modes of a balanced ventilator', () => {
  it('are states of the house, named where they are not the usual one', () => {
    const read = house(full);
    expect(operatingStates(read).map((state) => stateLabel(read, state))).toEqual([
      'everything off',
      'hrv',
      'hrv defrost',
      'hrv dirty filter',
    ]);
    expect(operatingStates(house({ ...full, continuous: true }))).toHaveLength(3);
    expect(operatingStates(house('60 L/s'))).toHaveLength(2);
  });

  it('supply what each leaves of the flows', () => {
    const read = house(full);
    // Both ends stand at 20 °C, so that the flows are those of the file whatever the pressure.
    expect(netSupply(read, 'on')).toBeCloseTo(0.06 - 0.05, 9);
    expect(netSupply(read, 'defrost')).toBeCloseTo(-0.05, 9);
    expect(netSupply(read, 'dirty filter')).toBeCloseTo(0.06 * 0.6 - 0.05, 9);
    expect(netSupply(house({ ...full, defrost: 'supply only' }), 'defrost')).toBeCloseTo(0.06, 9);
  });

  it('are listed as assumed where the file says nothing of frost and filters', () => {
    const what = (ventilator: unknown) =>
      house(ventilator)
        .assumptions.filter(({ origin }) => origin === 'ventilators.hrv')
        .map((each) => each.what);
    expect(what('60 L/s')).toEqual([
      'its flows against the pressure of the house',
      'frost protection',
      'filters',
    ]);
    expect(what(full)).toEqual([
      'its flows against the pressure of the house',
      'weathers in which it defrosts',
    ]);
  });
});
