import { assessHouse } from './assess-house.js';

globalThis.evendraftReport = assessHouse().catch(
  (error) => `failed: ${error instanceof Error ? error.stack : String(error)}`,
);
