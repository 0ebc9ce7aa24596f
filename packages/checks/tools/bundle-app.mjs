import { join } from 'node:path';
import vm from 'node:vm';

/**
 * @typedef {object} Bundle
 * @property {string} code - one classic script
 * @property {string[]} modules - the files whose code is really in it
 */

/**
 * Bundles one entry of an application for browsers, all in one script.
 *
 * @param {string} folder - the application
 * @param {string} entry - a file in it
 * @returns {Promise<Bundle>} the script and what is in it
 */
export async function bundleApp(folder, entry) {
  // Imported late: this file must load before anything is installed.
  const { build } = await import('vite');
  const result = await build({
    root: folder,
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: { entry: join(folder, entry), formats: ['iife'], name: 'packedApp' },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  if (first === undefined || !('output' in first)) throw new Error('vite returned no bundle');
  const chunks = first.output.filter((part) => part.type === 'chunk');
  const [chunk] = chunks;
  if (chunk === undefined || chunks.length !== 1) throw new Error('the bundle is not one script');
  return {
    code: chunk.code,
    modules: Object.entries(chunk.modules)
      .filter(([, module]) => (module.code ?? '').trim() !== '')
      .map(([id]) => id.replaceAll('\\', '/')),
  };
}

/**
 * Runs a bundle with the globals that browsers and Node share, and none of Node's own.
 *
 * @param {string} code - a classic script
 * @returns {Promise<string>} the text that it left, or promised, in `evendraftReport`
 */
export async function runBundleWithoutNode(code) {
  const globals = {
    TextEncoder,
    TextDecoder,
    URL,
    AbortController,
    AbortSignal,
    structuredClone,
    performance,
    setTimeout,
    clearTimeout,
    queueMicrotask,
    console: { log() {}, warn() {}, error() {} },
  };
  const context = vm.createContext(globals);
  vm.runInContext(code, context, { timeout: 60_000, filename: 'bundle.js' });
  return String(await vm.runInContext('globalThis.evendraftReport', context));
}
