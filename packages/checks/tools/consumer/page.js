import { assessHouse } from './assess-house.js';

try {
  globalThis.evendraftReport = assessHouse();
} catch (error) {
  globalThis.evendraftReport = `failed: ${error instanceof Error ? error.stack : String(error)}`;
}
