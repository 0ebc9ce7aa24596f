import { access, constants } from 'node:fs/promises';
import { delimiter, join } from 'node:path';

/** Names under which a browser that prints lies on the path. */
const names = [
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'chrome',
  'microsoft-edge',
  'msedge',
];

/** Places that are on no path. */
const places = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** What is asked of the system. */
export interface BrowserSearch {
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly isProgram: (path: string) => Promise<boolean>;
}

/** The browser's program, or what to do as there is none. */
export type FoundBrowser = { readonly path: string } | { readonly problem: string };

/**
 * A browser that can print a page: the one that CHROMIUM_PATH names, else one on the PATH or in a
 * usual place.
 *
 * @param search - environment and a look at the disk
 * @returns the program, or a sentence that says how to get the PDF
 */
export async function findBrowser(search: BrowserSearch = thisSystem): Promise<FoundBrowser> {
  const { environment, isProgram } = search;
  const named = environment['CHROMIUM_PATH'];
  if (named !== undefined && named !== '') {
    return (await isProgram(named))
      ? { path: named }
      : { problem: `CHROMIUM_PATH names ${named}, which is no program.` };
  }
  const folders = (environment['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  const suffix = environment['OS'] === 'Windows_NT' ? '.exe' : '';
  const candidates = names.flatMap((name) => folders.map((folder) => join(folder, name + suffix)));
  for (const path of [...candidates, ...places]) {
    if (await isProgram(path)) return { path };
  }
  return {
    problem:
      'no browser was found to print with. Install Chromium or set CHROMIUM_PATH to one, or ' +
      'write the page with --report, open it and print it to a PDF.',
  };
}

const thisSystem: BrowserSearch = {
  environment: process.env,
  isProgram: async (path) => {
    try {
      await access(path, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  },
};
