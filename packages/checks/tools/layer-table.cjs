/**
 * Which packages each package may import, lowest first. This is the design's one-way road from a house
 * file to findings: a package knows only what lies before it. Names without a folder in `packages`
 * are libraries from outside. A package that is not here may not exist.
 *
 * @type {Readonly<Record<string, readonly string[] | 'anything'>>}
 */
const layers = {
  units: ['fraction.js'],
  text: ['yaml', '@noble/hashes'],
  airflow: [],
  network: ['airflow'],
  house: ['units', 'text', 'airflow', 'network', 'zod'],
  studies: ['house', 'network', 'airflow', 'ml-matrix'],
  rules: ['studies', 'house', 'airflow', 'units', 'text', 'zod'],
  remedies: ['rules', 'studies', 'house'],
  report: ['remedies', 'rules', 'studies', 'house', 'text', 'units', 'zod'],
  classroom: ['report', 'remedies', 'rules', 'studies', 'house', 'units', 'text'],
  evendraft: [
    'units',
    'text',
    'airflow',
    'network',
    'house',
    'studies',
    'rules',
    'remedies',
    'report',
    'classroom',
  ],
  cli: [
    'units',
    'text',
    'airflow',
    'network',
    'house',
    'studies',
    'rules',
    'remedies',
    'report',
    'classroom',
    'evendraft',
    'commander',
  ],
  workbench: 'anything',
  checks: 'anything',
};

/** Packages that may use what only Node offers; all others also run in a browser. */
const nodePackages = ['cli', 'checks'];

/** What tests may import beside what their package may. */
const testLibraries = ['vitest', 'fast-check', 'ml-matrix', 'simple-statistics'];

module.exports = { layers, nodePackages, testLibraries };
