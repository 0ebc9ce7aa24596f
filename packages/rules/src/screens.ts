import type { Screen } from './internal/screen.js';
import { britishExtract } from './screens/british-extract.js';
import { britishVentForOpenFlue } from './screens/british-vent-for-open-flue.js';
import { canadaHouseLimits } from './screens/canada-house-limits.js';
import { canadaMakeUpInterlock } from './screens/canada-make-up-interlock.js';
import { canadaVentingTest } from './screens/canada-venting-test.js';
import { coAlarms } from './screens/co-alarms.js';
import { combustionAirCombined } from './screens/combustion-air-combined.js';
import { combustionAirIndoorOpenings } from './screens/combustion-air-indoor-openings.js';
import { combustionAirKnownRate } from './screens/combustion-air-known-rate.js';
import { combustionAirMechanical } from './screens/combustion-air-mechanical.js';
import { combustionAirOutdoorOpenings } from './screens/combustion-air-outdoor-openings.js';
import { combustionAirVolume } from './screens/combustion-air-volume.js';
import { dryerClosetOpening } from './screens/dryer-closet-opening.js';
import { dryerDuctLength } from './screens/dryer-duct-length.js';
import { dryerDuctLengthCalifornia } from './screens/dryer-duct-length-california.js';
import { dryerOver200Cfm } from './screens/dryer-over-200-cfm.js';
import { exhaustOver400Cfm } from './screens/exhaust-over-400-cfm.js';
import { flueExitDewPoint } from './screens/flue-exit-dew-point.js';
import { germanCombustionAir } from './screens/german-combustion-air.js';
import { germanOpening } from './screens/german-opening.js';
import { germanRoomVolume } from './screens/german-room-volume.js';
import { hearthAir } from './screens/hearth-air.js';
import { hearthOpeningCanada } from './screens/hearth-opening-canada.js';
import { hoodMakeUpLocalAmendment } from './screens/hood-make-up-local-amendment.js';
import { hoodOver400CfmOlder } from './screens/hood-over-400-cfm-older.js';
import { intakeSeparation } from './screens/intake-separation.js';
import { makeUpOutletRoom } from './screens/make-up-outlet-room.js';
import { minnesotaExistingDwelling } from './screens/minnesota-existing-dwelling.js';
import { minnesotaMakeUpAir } from './screens/minnesota-make-up-air.js';
import { minnesotaVentilationRate } from './screens/minnesota-ventilation-rate.js';
import { orphanedFlueArea } from './screens/orphaned-flue-area.js';
import { passiveDamperRating } from './screens/passive-damper-rating.js';
import { returnNearDraftHood } from './screens/return-near-draft-hood.js';
import { twoLargestFans } from './screens/two-largest-fans.js';

/** Every code screen, in the order in which findings are listed: exhaust, make-up air, combustion air, vents, countries. */
export const screens: readonly Screen[] = [
  twoLargestFans,
  exhaustOver400Cfm,
  hoodOver400CfmOlder,
  hoodMakeUpLocalAmendment,
  dryerOver200Cfm,
  dryerClosetOpening,
  dryerDuctLength,
  dryerDuctLengthCalifornia,
  makeUpOutletRoom,
  passiveDamperRating,
  intakeSeparation,
  combustionAirVolume,
  combustionAirKnownRate,
  combustionAirIndoorOpenings,
  combustionAirOutdoorOpenings,
  combustionAirCombined,
  combustionAirMechanical,
  hearthAir,
  returnNearDraftHood,
  orphanedFlueArea,
  flueExitDewPoint,
  coAlarms,
  minnesotaMakeUpAir,
  minnesotaExistingDwelling,
  minnesotaVentilationRate,
  canadaMakeUpInterlock,
  canadaVentingTest,
  canadaHouseLimits,
  hearthOpeningCanada,
  britishExtract,
  britishVentForOpenFlue,
  germanRoomVolume,
  germanCombustionAir,
  germanOpening,
];
