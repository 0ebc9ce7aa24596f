import type { FanAndSystemDrawingData } from '@evendraft/report';
import type { FanSystemStudy } from '@evendraft/studies';

/**
 * One fan against its duct and the house.
 *
 * @param study - of one running fan
 * @returns what the drawing needs
 */
export function fanData({
  device,
  speed,
  fanCurve,
  system,
  houseSuctionPa,
  withoutSuction,
  delivered,
}: FanSystemStudy): FanAndSystemDrawingData {
  return {
    device,
    speed,
    fanCurve,
    system,
    systemWithHouse: system.map(({ flowM3PerS, pressurePa }) => ({
      flowM3PerS,
      pressurePa: pressurePa + houseSuctionPa,
    })),
    houseSuctionPa,
    withoutSuction,
    delivered,
  };
}
