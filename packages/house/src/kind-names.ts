import type { ApplianceKind, DeviceKind, ZoneKind } from './house.js';

/** The kind that each published name stands for. */
export type KindTable<Kind extends string> = Readonly<Record<string, Kind>>;

/**
 * The published list of names that say by themselves what a thing is, section by section.
 *
 * An item with one of these names needs no `kind:`; that its kind was taken from its name is listed
 * under assumed. Any other name needs `kind:`, and a near miss is an error with a suggestion. Case,
 * hyphens and underlines in a name do not matter.
 */
export const kindNames: {
  readonly exhaust: KindTable<DeviceKind>;
  readonly supply: KindTable<DeviceKind>;
  readonly appliances: KindTable<ApplianceKind>;
  readonly zones: KindTable<ZoneKind>;
} = {
  exhaust: {
    hood: 'hood',
    'kitchen hood': 'hood',
    'range hood': 'hood',
    'cooker hood': 'hood',
    'island hood': 'hood',
    downdraft: 'downdraft',
    'downdraft cooktop': 'downdraft',
    dryer: 'dryer',
    'clothes dryer': 'dryer',
    'condensing dryer': 'condensing dryer',
    'heat pump dryer': 'condensing dryer',
    'bath fan': 'bath fan',
    'bathroom fan': 'bath fan',
    'toilet fan': 'bath fan',
    'central vacuum': 'central vacuum',
    'exhaust fan': 'exhaust fan',
    'attic fan': 'attic fan',
    'attic exhaust fan': 'attic fan',
    'summer cooling fan': 'summer cooling fan',
    'whole-house fan': 'summer cooling fan',
    'subslab fan': 'subslab fan',
    'sub-slab fan': 'subslab fan',
    'radon fan': 'subslab fan',
    'utility fan': 'exhaust fan',
  },
  supply: {
    'supply fan': 'supply fan',
    'make-up fan': 'supply fan',
    'make-up air fan': 'supply fan',
    'fresh air fan': 'supply fan',
    'evaporative cooler': 'evaporative cooler',
    'swamp cooler': 'evaporative cooler',
  },
  appliances: {
    'water heater': 'water heater',
    furnace: 'furnace',
    boiler: 'boiler',
    fireplace: 'fireplace',
    'open fireplace': 'fireplace',
    'wood stove': 'wood stove',
    'pellet stove': 'wood stove',
    'room heater': 'room heater',
    'space heater': 'room heater',
    'gas log': 'decorative gas appliance',
    'gas logs': 'decorative gas appliance',
    'gas fireplace': 'decorative gas appliance',
    'decorative gas appliance': 'decorative gas appliance',
  },
  zones: {
    house: 'living',
    apartment: 'living',
    flat: 'living',
    living: 'living',
    'living room': 'living',
    kitchen: 'living',
    bedroom: 'living',
    bathroom: 'living',
    bath: 'living',
    laundry: 'living',
    'utility room': 'living',
    'mechanical room': 'living',
    main: 'living',
    'main floor': 'living',
    'ground floor': 'living',
    'first floor': 'living',
    'second floor': 'living',
    'third floor': 'living',
    'upper floor': 'living',
    'lower floor': 'living',
    upstairs: 'living',
    downstairs: 'living',
    basement: 'basement',
    cellar: 'basement',
    closet: 'closet',
    'furnace closet': 'closet',
    attic: 'attic',
    loft: 'attic',
    garage: 'garage',
    'crawl space': 'crawl space',
    crawlspace: 'crawl space',
    shaft: 'shaft',
  },
};

/**
 * The kinds of a section, each once.
 *
 * @param table - names with the kind each stands for
 * @returns the kinds
 */
export function distinctKinds<Kind extends string>(table: KindTable<Kind>): readonly Kind[] {
  return [...new Set(Object.values(table))];
}
