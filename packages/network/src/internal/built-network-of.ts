import type { BuiltNetwork } from '../built-network.js';
import type { NetworkDescription } from '../network-description.js';
import { createKernel } from './create-kernel.js';
import type { DescriptionIndex } from './index-description.js';
import { indexById } from './index-description.js';

/** A network laid out from a checked description; its links are indexed when someone first asks. */
export function builtNetworkOf(
  description: NetworkDescription,
  index: DescriptionIndex,
): BuiltNetwork {
  const { zoneIndex, boundaryIndex } = index;
  let linkIndex: ReadonlyMap<string, number> | undefined;
  return {
    description,
    zoneIndex,
    boundaryIndex,
    get linkIndex() {
      linkIndex ??= indexById(description.links);
      return linkIndex;
    },
    kernel: createKernel(description, index),
  };
}
