import { choices, enumeration, quoted, textOf, writeInstead, type IssueWords } from './words.js';

/** Codes of what can be wrong with an item, its name, or how items belong together. */
export type ItemIssueCode =
  | 'section.too-many'
  | 'name.empty'
  | 'name.too-long'
  | 'name.invisible'
  | 'name.reserved'
  | 'name.duplicate'
  | 'kind.missing'
  | 'kind.near-miss'
  | 'reference.unknown'
  | 'reference.own-zone'
  | 'zone.size-missing'
  | 'zone.no-leak'
  | 'zone.not-connected'
  | 'zone.closed-buffer'
  | 'leakage.sum'
  | 'leakage.outside-envelope'
  | 'airtightness.natural-rate'
  | 'airtightness.two-pressures'
  | 'airtightness.volume-needed'
  | 'airtightness.range-upside-down'
  | 'airtightness.preparation-without-effect'
  | 'airtightness.preparation-disagrees'
  | 'airtightness.nothing-left'
  | 'airtightness.flow-unknown'
  | 'opening.law-missing'
  | 'opening.several-laws'
  | 'door.same-zone'
  | 'device.flow-missing'
  | 'device.flow-not-wanted'
  | 'device.several-flows'
  | 'device.speeds-not-ascending'
  | 'device.rating-above-shut-off'
  | 'device.curve-too-short'
  | 'device.curve-rising'
  | 'device.curve-flat'
  | 'device.curve-envelope'
  | 'device.curve-without-flow'
  | 'device.constant-flow-without-range'
  | 'interlock.self'
  | 'interlock.cycle'
  | 'interlock.driver-without-flow'
  | 'interlock.and-continuous'
  | 'appliance.own-vent'
  | 'weather.direction-missing'
  | 'weather.no-terrain'
  | 'size.unusual'
  | 'size.areas-disagree'
  | 'states.too-many'
  | 'house.not-a-network';

/** Words for the codes of items. */
export const itemIssues: Readonly<Record<ItemIssueCode, IssueWords>> = {
  'section.too-many': {
    atKey: true,
    message: ({ found, allowed }) =>
      `${textOf(found)} items stand here, and ${textOf(allowed)} are allowed`,
    hint: () => 'Join items that behave alike.',
    remedy: 'Join items that behave alike, or split the building into several files.',
  },
  'name.empty': {
    atKey: true,
    message: () => 'a name is empty',
    hint: () => 'Write a name that a report can show.',
    remedy: 'Give the item a name.',
  },
  'name.too-long': {
    atKey: true,
    message: ({ found, length }) =>
      `the name ${quoted(found)} has ${textOf(length)} characters, and 60 are allowed`,
    hint: () => 'Shorten it.',
    remedy: 'Shorten the name to 60 characters.',
  },
  'name.invisible': {
    atKey: true,
    message: () => 'a name holds characters that cannot be seen',
    hint: () => 'Type the name again with plain letters.',
    remedy: 'Type the name again; line breaks, control and format characters are not allowed.',
  },
  'name.reserved': {
    atKey: true,
    message: ({ name, reason }) => `${quoted(name)} cannot be a name: ${textOf(reason)}`,
    hint: () => 'Choose another name.',
    remedy: 'Choose a name without a meaning of its own.',
  },
  'name.duplicate': {
    atKey: true,
    message: ({ name, other }) => `the name ${quoted(name)} is already taken by ${textOf(other)}`,
    hint: () => 'Give each its own name.',
    remedy: 'Give each item its own name, so that interlocks and reports can tell them apart.',
  },
  'kind.missing': {
    atKey: true,
    message: ({ name }) => `the name ${quoted(name)} does not say what it is`,
    hint: ({ kinds }) => `Add "kind:" with one of ${choices(kinds)}.`,
    remedy: 'Add `kind:`, or use a name of the published list of kind names.',
  },
  'kind.near-miss': {
    atKey: true,
    message: ({ name }) => `the name ${quoted(name)} does not say what it is`,
    hint: ({ suggestion, kinds }) =>
      `Did you mean ${quoted(suggestion)}? If not, add "kind:" with one of ${choices(kinds)}.`,
    remedy: 'Correct the name, or add `kind:` if it is meant as it stands.',
  },
  'reference.unknown': {
    message: ({ what, found }) => `there is no ${textOf(what)} ${quoted(found)}`,
    hint: ({ suggestion, known }) =>
      suggestion !== undefined
        ? `Did you mean ${quoted(suggestion)}?`
        : Array.isArray(known) && known.length > 0
          ? `Known here: ${textOf(known)}.`
          : 'There is none in this file; add it first.',
    remedy: 'Use a name that stands in the file, letter by letter, or add the item.',
  },
  'reference.own-zone': {
    message: ({ what, zone }) => `the ${textOf(what)} leads from ${quoted(zone)} to itself`,
    hint: () => 'Write where the air goes: outdoors, a face, the roof, another zone.',
    remedy: 'Write another place under `to`.',
  },
  'zone.size-missing': {
    atKey: true,
    message: ({ name }) => `${quoted(name)} has neither area nor volume, and is not the only zone`,
    hint: () => 'Write "area: 1200 ft2" or "volume: 280 m3".',
    remedy: 'Write the floor area or the volume of each zone of a house with several.',
  },
  'zone.no-leak': {
    severity: 'warning',
    atKey: true,
    message: ({ name }) => `${quoted(name)} has no share of the tested leakage`,
    hint: () => 'Write its share under "leakage:", or "walls: 0 %" if it truly has none.',
    remedy: 'Write the share of each zone inside the envelope; 0 % says that it is meant.',
  },
  'zone.not-connected': {
    atKey: true,
    message: ({ name, neighbours }) =>
      Array.isArray(neighbours) && neighbours.length > 0
        ? `${quoted(name)} and what it is connected to (${textOf(neighbours)}) have no way to outdoors`
        : `nothing connects ${quoted(name)} to outdoors or to another zone`,
    hint: () => 'Add a leakage share, an opening to outdoors, or a door to a zone that has one.',
    remedy: 'Add what really connects the zone: a leakage share, an opening, a door.',
  },
  'zone.closed-buffer': {
    severity: 'warning',
    atKey: true,
    message: ({ name }) =>
      `${quoted(name)} has no opening to outdoors and breathes only through the house`,
    hint: ({ name }) =>
      `Add its vents: "vents: { zone: ${textOf(name)}, to: outdoors, area: 300 in2 }".`,
    remedy: 'Add the vents or leaks of the attic, garage, crawl space or shaft under `openings`.',
  },
  'leakage.sum': {
    atKey: true,
    message: ({ sumPercent }) =>
      `the leakage shares of all zones make ${textOf(sumPercent)} % together, not 100 %`,
    hint: () =>
      'Every share is one of the whole tested leakage; change them until they make 100 %.',
    remedy: 'Write shares of the whole tested leakage that make 100 % over all zones.',
  },
  'leakage.outside-envelope': {
    message: ({ name, kind }) =>
      `${quoted(name)} (${textOf(kind)}) lies outside the tested envelope, so no tested leakage is in it`,
    hint: ({ name }) => `Describe its own openings under "openings:" with "zone: ${textOf(name)}".`,
    remedy: 'Give leakage shares to zones inside the envelope, and openings to the others.',
  },
  'airtightness.natural-rate': {
    message: ({ found }) =>
      `${quoted(found)} is no blower-door result, because it says no pressure`,
    hint: (parameters) =>
      `${writeInstead(parameters)} A natural air change rate says nothing here.`,
    remedy: 'Write the result at 50 Pa, `1.2 ACH50`.',
  },
  'airtightness.two-pressures': {
    message: ({ found }) => `${quoted(found)} names two pressures`,
    hint: () => 'ACH50 already says 50 Pa.',
    remedy: 'Write `1.2 ACH50` without a pressure.',
  },
  'airtightness.volume-needed': {
    message: () => 'air changes are no flow until the volume of the house is known',
    hint: () => 'Add "volume: 18500 ft3" or "ceilingHeight: 8.5 ft", or write the flow at 50 Pa.',
    remedy: 'Give the volume or the ceiling height, or the result as a flow at 50 Pa.',
  },
  'airtightness.range-upside-down': {
    message: () => 'the planned range does not run from tight to loose',
    hint: () => 'Write the smaller leakage first: "0.8 to 3 ACH50 (planned)".',
    remedy: 'Write the tight end first.',
  },
  'airtightness.preparation-without-effect': {
    severity: 'warning',
    message: ({ name }) =>
      `no opening of ${quoted(name)} is modelled, so its preparation changes nothing`,
    hint: () => 'Add the opening under "openings:" if its leakage is known.',
    remedy: 'Model the opening, or remove the line.',
  },
  'airtightness.preparation-disagrees': {
    message: ({ name, own, prepared }) =>
      `${quoted(name)} was ${textOf(own)} here and ${textOf(prepared)} in the test’s preparation`,
    hint: () => 'Keep one of both.',
    remedy: 'State once how the thing stood during the test.',
  },
  'airtightness.nothing-left': {
    message: ({ modelled, tested }) =>
      `at the test pressure the openings that were not sealed pass ${textOf(modelled)}, and the test found ${textOf(tested)} in all, so nothing is left for leaks`,
    hint: () =>
      'Check their sizes, or say under "preparation:" which of them were sealed during the test.',
    remedy:
      'Check the sizes of the separately modelled openings and how each stood during the test; a test contains every opening that was not sealed.',
  },
  'airtightness.flow-unknown': {
    message: ({ item }) =>
      `no pressures balance in ${quoted(item)} at the test pressure, so it cannot be told what it carried of the tested flow`,
    hint: () => 'Check its sizes, or say under "preparation:" that it was sealed during the test.',
    remedy:
      'Check the sizes and dampers of the item, or say that it was sealed during the test if it was.',
  },
  'opening.law-missing': {
    atKey: true,
    message: () => 'nothing says how much air it passes',
    hint: ({ accepted }) => `Write one of ${choices(accepted)}.`,
    remedy:
      'Write an area, a diameter, a flow at a pressure, a leakage area or a flow coefficient.',
  },
  'opening.several-laws': {
    atKey: true,
    message: ({ keys }) => `${enumeration(keys)} each say how much air it passes`,
    hint: () => 'Keep one of them.',
    remedy: 'Keep the one that is known best.',
  },
  'door.same-zone': {
    message: ({ zone }) => `the door leads from ${quoted(zone)} to itself`,
    hint: () => 'Write two different zones: "between: [main, bedroom]".',
    remedy: 'Write the two zones that the door connects.',
  },
  'device.flow-missing': {
    atKey: true,
    message: () => 'no flow is given',
    hint: writeInstead,
    remedy: 'Write the rated flow, a flow for each speed, or a fan curve.',
  },
  'device.flow-not-wanted': {
    message: ({ kind }) => `a ${textOf(kind)} exhausts no air, so it has no flow`,
    hint: () => 'Remove the flow, or write the kind that it really is.',
    remedy: 'Remove the flow of a device that does not exhaust.',
  },
  'device.several-flows': {
    message: ({ keys }) => `${enumeration(keys)} each say what it moves`,
    hint: () => 'Keep one of them.',
    remedy: 'Keep the flow, the speeds or the curve.',
  },
  'device.speeds-not-ascending': {
    message: ({ speed, before }) =>
      `the speed ${quoted(speed)} does not move more than ${quoted(before)} before it`,
    hint: () => 'Write the slowest speed first.',
    remedy: 'Order the speeds from slow to fast, each with a greater flow.',
  },
  'device.rating-above-shut-off': {
    message: ({ ratingPa, shutOffPa }) =>
      `it would move its flow at ${pascals(ratingPa)}, at or above its shut-off pressure of ${pascals(shutOffPa)}`,
    hint: () => 'At shut-off a fan moves nothing; its flow is rated at a lower pressure.',
    remedy: 'Check both pressures; the shut-off pressure is the higher one.',
  },
  'device.curve-too-short': {
    message: () => 'a fan curve has at least two points',
    hint: () =>
      'Add the points at shut-off and at free delivery: "[[0 cfm, 0.9 in. w.c.], [600 cfm, 0 Pa]]".',
    remedy: 'Write the points of the curve from shut-off to free delivery.',
  },
  'device.curve-rising': {
    message: () => 'the fan curve rises: more flow at more pressure',
    hint: () =>
      'Leave out the stall, or write "stall: envelope" or "stall: every flow" beside the curve.',
    remedy: 'Leave out the stalled part of the curve, or check the order of flow and pressure.',
  },
  'device.curve-flat': {
    message: ({ risePa }) => `the fan curve does not fall: two points have ${pascals(risePa)}`,
    hint: () => 'Write points whose pressure falls as the flow grows.',
    remedy: 'Give each point of the curve its own pressure, falling as the flow grows.',
  },
  'device.curve-envelope': {
    severity: 'warning',
    message: () => 'the stalled part of the fan curve is replaced by the level above it',
    hint: () =>
      'In that part the fan may move less, and may have several flows: "stall: every flow" finds them.',
    remedy:
      'Nothing is to be done if the fan never works in its stall; else write `stall: every flow`.',
  },
  'device.curve-without-flow': {
    message: () => 'the fan curve moves nothing even without back pressure',
    hint: () => 'Add a point at free delivery: "[600 cfm, 0 Pa]".',
    remedy: 'Add the point of free delivery.',
  },
  'device.constant-flow-without-range': {
    severity: 'warning',
    message: () => 'no control holds a flow against any suction',
    hint: () => 'Say how far it can: "constantFlow: { upTo: 150 Pa }".',
    remedy: 'Write the pressure up to which the control holds the flow.',
  },
  'interlock.self': {
    message: ({ name }) => `${quoted(name)} would be driven by itself`,
    hint: () => 'Write the device that it follows.',
    remedy: 'Write another device as the driver.',
  },
  'interlock.cycle': {
    message: ({ cycle }) =>
      `these drive each other in a circle: ${Array.isArray(cycle) ? cycle.join(' → ') : textOf(cycle)}`,
    hint: () => 'Remove one of the interlocks, so that one device is switched by hand.',
    remedy: 'Break the circle: one device must be switched by hand.',
  },
  'interlock.driver-without-flow': {
    message: ({ driver }) => `${quoted(driver)} has no speeds, so nothing can follow it`,
    hint: () => 'Write a device that moves air.',
    remedy: 'Follow a device that runs.',
  },
  'interlock.and-continuous': {
    atKey: true,
    message: ({ name }) => `${quoted(name)} cannot both follow another device and run all the time`,
    hint: () => 'Keep "interlock:" or "continuous:".',
    remedy: 'Keep one of both keys.',
  },
  'appliance.own-vent': {
    message: ({ name }) => `${quoted(name)} shares its vent with itself`,
    hint: () => 'Write the other appliance.',
    remedy: 'Write the name of the other appliance on the same vent.',
  },
  'weather.direction-missing': {
    message: () => 'the wind has a speed and no direction',
    hint: writeInstead,
    remedy: 'Write where the wind comes from: a compass point, degrees, or a face of the house.',
  },
  'weather.no-terrain': {
    message: () =>
      'the wind is that of a weather station, but nothing says what it meets on its way',
    hint: () => 'Add wind: { terrain: suburban }, or write at: eaves.',
    remedy:
      'Add the key `wind` to the house with the terrain around it, or give the wind at the eaves.',
  },
  'size.unusual': {
    severity: 'warning',
    message: ({ what, found, from, to }) =>
      `${textOf(what)} is ${textOf(found)}; usual is ${textOf(from)} to ${textOf(to)}`,
    hint: () => 'Check the number and its unit.',
    remedy: 'Check the number and its unit; if it is right, nothing is to be done.',
  },
  'size.areas-disagree': {
    severity: 'warning',
    message: ({ house, zones }) =>
      `the floor area is ${textOf(house)}, but the zones inside the envelope make ${textOf(zones)}`,
    hint: () => 'Check which floors are counted.',
    remedy: 'Check the floor area of the house against the areas of its zones.',
  },
  'states.too-many': {
    atKey: true,
    message: ({ found, allowed }) =>
      `doors, windows, weathers, airtightness and what other things follow make ${textOf(found)} situations, and ${textOf(allowed)} are gone through at most`,
    hint: () => 'Fix doors or windows with "positions:", join interlocks, or drop a weather.',
    remedy:
      'Fix the position of doors or windows, let fewer things follow a device, or study fewer weathers. Exhaust and supply that nothing follows does not count here, however many speeds it has.',
  },
  'house.not-a-network': {
    message: ({ problem }) => `the house does not make a network (${textOf(problem)})`,
    hint: () => 'Check the values of this item.',
    remedy:
      'Check the values of the item named; a house that was read from a file should not do this.',
  },
};

function pascals(value: string | number | readonly string[] | undefined): string {
  return `${Number(Number(value).toFixed(1))} Pa`;
}
