import { existsSync } from 'node:fs';

/** Where Linux systems put a browser that runs without a window. */
const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
];

/**
 * @typedef {{ path: string, reason?: undefined } | { path?: undefined, reason: string }} FoundBrowser
 * the browser's program, or why there is none
 */

/**
 * A browser for checks that need one: the one that CHROMIUM_PATH names, or an installed one.
 *
 * @param {string | undefined} named - the value of CHROMIUM_PATH
 * @param {(path: string) => boolean} [exists] - whether a file exists
 * @returns {FoundBrowser} the program, or why there is none
 */
export function findBrowser(named, exists = existsSync) {
  if (named !== undefined && named !== '') {
    return exists(named)
      ? { path: named }
      : { reason: `CHROMIUM_PATH names ${named}, which does not exist` };
  }
  const path = usualPlaces.find((place) => exists(place));
  return path === undefined
    ? { reason: 'no browser was found; to run it, set CHROMIUM_PATH to a Chromium' }
    : { path };
}
