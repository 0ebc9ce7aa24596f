import { word } from './schema/word.js';

/** How an opening stood during the airtightness test. */
export const preparationFile = word(
  { sealed: 'sealed', taped: 'sealed', closed: 'closed', shut: 'closed', open: 'open' },
  'How it stood during the airtightness test; what was closed or open is inside the test result.',
);
