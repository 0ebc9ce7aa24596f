import { itemName } from './schema/item-name.js';

/** Where an opening or device ends: outdoors, a face, the roof, a zone or a surrounding. */
export const outletFile = itemName(
  'Where it ends: outdoors (calm air), front, right, back, left, the compass point that a wall faces, roof, or the name of a zone or surrounding.',
  ['outdoors', 'back', 'roof', 'attic'],
);
