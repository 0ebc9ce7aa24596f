import { isAbsolute, relative } from 'node:path';

/** The house that is assessed when the reader names none. */
export const bundledHouse = 'examples/tight-new-house.yaml';

/**
 * @typedef {object} StartPlace
 * @property {string} bundledHousePath - absolute path of the bundled house
 * @property {string} outputPath - absolute path of the folder for the full report
 * @property {string} cwd - where the reader typed the command
 */

/**
 * The arguments of the `evendraft` command for what was typed after `npm start --`.
 *
 * @param {readonly string[]} typed - the reader's own arguments
 * @param {StartPlace} place - paths
 * @returns {string[]} arguments for the command
 */
export function startArguments(typed, { bundledHousePath, outputPath, cwd }) {
  const asksForHelp = typed.some((argument) => /^(-h|--help|--version)$/.test(argument));
  if (asksForHelp) return ['assess', ...typed];
  const namesHouse =
    (typed.length > 0 && !typed[0]?.startsWith('-')) ||
    typed.some((argument) => /\.(ya?ml|json)$/i.test(argument));
  const namesOutput = typed.some((argument) => /^--out(=|$)/.test(argument));
  return [
    'assess',
    ...(namesHouse ? [] : [nearPath(cwd, bundledHousePath)]),
    ...typed,
    ...(namesOutput ? [] : ['--out', nearPath(cwd, outputPath)]),
  ];
}

/**
 * @param {string} from - a folder
 * @param {string} path - an absolute path
 * @returns {string} the path as a person in that folder would type it
 */
function nearPath(from, path) {
  const near = relative(from, path);
  return near.startsWith('..') || isAbsolute(near) || near === '' ? path : near;
}
