// Rules of style that a tool can hold. Formatting is Prettier's, types are the compiler's, and the
// ways between packages are in `dependency-cruiser.config.cjs`.
import { fileURLToPath } from 'node:url';
import jsdoc from 'eslint-plugin-jsdoc';
import tseslint from 'typescript-eslint';
import { fileNameRule } from './file-name-rule.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const tests = ['**/*.test.ts'];
const tools = ['packages/checks/tools/**', '**/*.config.{ts,mjs,cjs}'];

/** What is exported where it is declared, and so needs a comment that says what it is. */
const exportedThings = ['ExportNamedDeclaration[declaration.type]'];

export default tseslint.config(
  {
    ignores: [
      '**/node_modules/',
      '**/dist/',
      'output/',
      'coverage/',
      '**/recorded/',
      // AssemblyScript, whose compiler judges it.
      'packages/network/loops/*.ts',
    ],
  },
  {
    files: ['**/*.{ts,mjs,cjs,js}'],
    plugins: {
      '@typescript-eslint': tseslint.plugin,
      evendraft: { rules: { 'file-name': fileNameRule } },
    },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      'evendraft/file-name': 'error',
      'max-lines': ['error', { max: 400 }],
      'no-var': 'error',
      'prefer-const': 'error',
      'object-shorthand': 'error',
      eqeqeq: 'error',
      'use-isnan': 'error',
      'no-self-compare': 'error',
      'no-loss-of-precision': 'error',
      'no-cond-assign': 'error',
      'no-constant-condition': 'error',
      'no-useless-escape': 'error',
      'no-unsafe-finally': 'error',
      'no-sparse-arrays': 'error',
      'no-irregular-whitespace': 'error',
      // More than two arguments belong in one options object; a third is left to inner loops.
      'max-params': ['error', { max: 3 }],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'ExportDefaultDeclaration',
          message: 'Export by name, so that a thing has the same name everywhere.',
        },
        {
          selector: 'ExportSpecifier[exported.name="default"]',
          message: 'Export by name, so that a thing has the same name everywhere.',
        },
        {
          selector: 'ExportAllDeclaration',
          message: 'Name what is exported, so that nothing becomes public by accident.',
        },
        { selector: 'TSEnumDeclaration', message: 'Use a union of literals.' },
      ],
    },
  },
  {
    files: ['**/*.ts'],
    extends: [...tseslint.configs.strict],
    languageOptions: {
      parserOptions: {
        project: ['packages/checks/tools/tsconfig.lint.json'],
        tsconfigRootDir: root,
      },
    },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/no-unused-vars': [
        'error',
        { varsIgnorePattern: '^_', argsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      // An index into a typed array is known to exist, and the compiler cannot know it.
      '@typescript-eslint/no-non-null-assertion': 'off',
      'no-console': 'error',
    },
  },
  {
    files: ['packages/*/src/**/*.ts'],
    ignores: tests,
    plugins: { jsdoc },
    settings: { jsdoc: { mode: 'typescript' } },
    rules: {
      'jsdoc/require-jsdoc': [
        'error',
        { contexts: exportedThings, require: { FunctionDeclaration: false }, enableFixer: false },
      ],
      'jsdoc/require-description': ['error', { contexts: exportedThings }],
      'jsdoc/check-param-names': ['error', { checkDestructured: false }],
      'jsdoc/check-tag-names': ['error', { typed: true, definedTags: ['remarks', 'typeParam'] }],
      'jsdoc/require-param-description': 'error',
      'jsdoc/require-returns-description': 'error',
      'jsdoc/require-hyphen-before-param-description': ['error', 'always'],
      'jsdoc/no-types': 'error',
      'jsdoc/empty-tags': 'error',
    },
  },
  {
    files: ['packages/cli/**', 'examples/**', 'bench/**', ...tools],
    rules: { 'no-console': 'off' },
  },
  {
    files: [...tests],
    rules: { 'max-lines': 'off', 'max-params': 'off' },
  },
  {
    // These are read by tools that ask for a default export.
    files: ['**/*.config.{ts,mjs,cjs}'],
    rules: { 'no-restricted-syntax': 'off' },
  },
);
