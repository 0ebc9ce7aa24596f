import type { Assumption, House, Source } from '@evendraft/house';
import type { DraftResults } from '@evendraft/report';

/** What combustion gas brings that is not measured. */
const ofBurners: Source = {
  document:
    'International Fuel Gas Code, appendix D, table of carbon monoxide levels: the most it has for central furnaces and several other appliances',
  status: 'memory',
};
const ourChoice = (document: string): Source => ({ document, status: 'our choice' });

/**
 * What the concentrations of spilled gas assume, to be listed beside the house's own assumptions.
 *
 * @param house - the house
 * @param draft - what was found of flues
 * @returns the assumptions; none where no gas was found to stay in a room
 */
export function spilledGasAssumptions(
  house: Pick<House, 'appliances'>,
  draft: DraftResults | undefined,
): readonly Assumption[] {
  if (draft?.status !== 'solved') return [];
  const spilling = draft.appliances.filter(({ spilled }) => spilled !== undefined);
  if (spilling.length === 0) return [];
  const general = (what: string, value: string, why: string): Assumption => {
    return { origin: 'spilled gas', what, value, source: ourChoice(why) };
  };
  return [
    ...spilling.map(({ appliance, spilled }): Assumption => {
      const {
        origin = appliance,
        vent,
        fuel,
      } = house.appliances.find(({ id }) => id === appliance) ?? {};
      const fire =
        fuel === 'wood' || fuel === 'pellets' || vent === 'open hearth' || vent === 'closed stove';
      return {
        origin,
        what: 'carbon monoxide in its dry gas without excess air',
        value: `${spilled!.carbonMonoxideAirFreePpm} ppm`,
        source: fire ? ourChoice('a wood fire; no source, and fires differ widely') : ofBurners,
      };
    }),
    general(
      'share of the gas that stays in the room',
      'all while air comes down; else what the flue does not take of it',
      'by the solved flows at rest, from cold',
    ),
    general(
      'mixing of spilled gas',
      'each zone well mixed at once',
      'air near the appliance holds more than the zone on its mean',
    ),
    general(
      'burner or fire while it spills',
      'goes on unchanged',
      'one that takes in its own gas makes far more carbon monoxide',
    ),
  ];
}
