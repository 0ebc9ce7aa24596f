// Holds every import to `layer-table.cjs`. Followed from source to source, so that nothing is hidden
// behind a package that is not built; an import that leads nowhere is an error for the same reason.
const { readdirSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const { layers, nodePackages, testLibraries } = require('./layer-table.cjs');

const packagesFolder = join(__dirname, '../..');
const sourceCondition = '@evendraft/source';
const test = '\\.test\\.ts$';
const node = `^packages/(${nodePackages.join('|')})/`;

for (const name of readdirSync(packagesFolder, { withFileTypes: true })) {
  if (name.isDirectory() && !(name.name in layers)) {
    throw new Error(`packages/${name.name} has no row in packages/checks/tools/layer-table.cjs.`);
  }
}

/**
 * @param {string} text - any text
 * @returns {string} a pattern that matches only this text
 */
function literal(text) {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/**
 * @param {string} name - a package's folder
 * @returns {string[]} patterns of the files that others may import, from its own list of exports
 */
function entries(name) {
  /** @type {{ exports?: Record<string, string | Record<string, string>> }} */
  let manifest;
  try {
    manifest = JSON.parse(readFileSync(join(packagesFolder, name, 'package.json'), 'utf8'));
  } catch {
    return [];
  }
  return Object.values(manifest.exports ?? {}).map((target) => {
    const file =
      typeof target === 'string' ? target : (target[sourceCondition] ?? target['default']);
    return `^packages/${name}/${literal((file ?? '').replace(/^\.\//, ''))}$`;
  });
}

/**
 * @param {string} name - a package's folder or a library
 * @returns {string[]} patterns of what an import of it may lead to
 */
function importable(name) {
  return name in layers ? entries(name) : [`(^|/)node_modules/(@types/)?${literal(name)}/`];
}

/** One rule a package: what its sources import is its own or is in its row. */
const layerRules = Object.entries(layers).flatMap(([name, allowed]) => {
  if (allowed === 'anything') return [];
  const own = [`^packages/${name}/`, ...allowed.flatMap(importable)];
  const comment =
    `packages/${name} may import ${allowed.length === 0 ? 'nothing' : allowed.join(', ')}; ` +
    'see packages/checks/tools/layer-table.cjs.';
  const from = `^packages/${name}/src/`;
  const to = { couldNotResolve: false, dependencyTypesNot: ['core'] };
  return [
    {
      name: `${name}-imports-its-layer`,
      comment,
      severity: 'error',
      from: { path: from, pathNot: test },
      to: { ...to, pathNot: own },
    },
    {
      name: `${name}-tests-import-its-layer`,
      comment: `${comment} Its tests may also import ${testLibraries.join(', ')}.`,
      severity: 'error',
      from: { path: `${from}.*${test}` },
      to: { ...to, pathNot: [...own, ...testLibraries.flatMap(importable)] },
    },
  ];
});

/** What another package, an example or a benchmark may reach: entries, never a file behind one. */
const everyEntry = Object.keys(layers).flatMap(entries);

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...layerRules,
    {
      name: 'import-leads-nowhere',
      comment: 'The file or package does not exist, or is not installed.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'no-cycle',
      comment: 'Files that import each other cannot be understood one at a time.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'runs-in-a-browser',
      comment: `Only ${nodePackages.join(', ')} and tests may import what only Node offers.`,
      severity: 'error',
      from: { path: '^packages/', pathNot: [test, node] },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-way-behind-an-entry',
      comment: 'Import another package by its name, from what it exports.',
      severity: 'error',
      from: { path: '^packages/([^/]+)/' },
      to: { path: '^packages/', pathNot: ['^packages/$1/', ...everyEntry] },
    },
    {
      name: 'examples-use-entries',
      comment: 'An example shows what an embedder can write: imports by name only.',
      severity: 'error',
      from: { path: '^examples/' },
      to: { path: '^packages/', pathNot: everyEntry },
    },
    {
      name: 'bench-uses-entries',
      comment:
        'A benchmark measures what an embedder gets; only the networks of checks are shared.',
      severity: 'error',
      from: { path: '^bench/' },
      to: { path: '^packages/', pathNot: [...everyEntry, '^packages/checks/src/'] },
    },
    {
      name: 'house-carries-no-parser',
      comment: 'An embedder with an object must not get a parser of texts with it.',
      severity: 'error',
      from: { path: '^packages/house/src/index\\.ts$' },
      to: { path: '(^|/)node_modules/yaml/', reachable: true },
    },
    {
      name: 'source-imports-no-test',
      comment: 'Tests are not packed.',
      severity: 'error',
      from: { pathNot: test },
      to: { path: test },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^packages/[^/]+/dist/' },
    // Imports of types alone count as well: they bind a package just as firmly.
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      conditionNames: [sourceCondition, 'types', 'import', 'node', 'default'],
      exportsFields: ['exports'],
      mainFields: ['main', 'types'],
    },
  },
};
