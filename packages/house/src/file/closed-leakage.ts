import { measuredLeak } from './schema/measured-leak.js';

/** Leakage through a closed damper. */
export const closedLeakage = measuredLeak(['flow', 'area'], {
  description: 'Leakage through the closed damper.',
  examples: ['5 cm2 at 4 Pa', '3 cfm at 50 Pa'],
});
