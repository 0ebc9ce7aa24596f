import type { FuelName } from '@evendraft/airflow';
import type { Appliance } from './house.js';

/**
 * The fuel by whose combustion an appliance is studied. What is not stated is taken as the usual of its kind.
 *
 * @param fuel - as the house file says
 * @param isFire - whether it is a hearth or a stove, which usually burns wood; others burn gas
 * @returns its name in the table of fuels of `@evendraft/airflow`
 */
export function fuelName(fuel: Appliance['fuel'], isFire: boolean): FuelName {
  switch (fuel) {
    case 'oil':
      return 'fuel oil';
    case 'wood':
    case 'pellets':
      return 'wood';
    case 'gas':
      return 'natural gas';
    case 'not stated':
      return isFire ? 'wood' : 'natural gas';
  }
}
