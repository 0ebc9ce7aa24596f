import { join } from 'node:path';
import { ESLint } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, expect, it } from 'vitest';
import { repositoryRoot } from '../../tools/repository.mjs';

// The rules that ask the compiler are left out here: they need the planted file on the disk.
const eslint = new ESLint({
  cwd: repositoryRoot,
  overrideConfigFile: join(repositoryRoot, 'packages/checks/tools/eslint.config.mjs'),
  overrideConfig: [{ files: ['**/*.ts'], ...tseslint.configs.disableTypeChecked }],
});

/** The rules that a file of a library would break with this text. */
async function brokenRules(text: string, path = 'packages/airflow/src/laws/planted.ts') {
  const [result] = await eslint.lintText(text, { filePath: join(repositoryRoot, path) });
  return result?.messages.map(({ ruleId, message }) => ruleId ?? message) ?? [];
}

const documented =
  '/** Twice a number [-]. */\nexport const twice = (x: number): number => 2 * x;\n';

describe('lint', () => {
  it('accepts a documented export', async () => {
    expect(await brokenRules(documented)).toEqual([]);
  });

  it.each([
    { what: 'a constant', text: 'export const area = 1;\n' },
    { what: 'a function', text: 'export function area(): number {\n  return 1;\n}\n' },
    { what: 'an interface', text: 'export interface Area {\n  readonly areaM2: number;\n}\n' },
    { what: 'a type', text: 'export type Area = number;\n' },
    { what: 'a class', text: "export class Wrong extends Error {\n  code = 'wrong';\n}\n" },
  ])('rejects $what that is exported without a comment', async ({ text }) => {
    expect(await brokenRules(text)).toEqual(['jsdoc/require-jsdoc']);
  });

  it('rejects a comment that names a parameter which does not exist', async () => {
    const text = '/**\n * Twice.\n *\n * @param y - a number [-]\n */\n';
    expect(
      await brokenRules(`${text}export function twice(x: number) {\n  return 2 * x;\n}\n`),
    ).toContain('jsdoc/check-param-names');
  });

  it('rejects printing from a library, and leaves it to the command', async () => {
    const text = `${documented}console.log(twice(1));\n`;
    expect(await brokenRules(text)).toEqual(['no-console']);
    expect(await brokenRules(text, 'packages/cli/src/planted.ts')).toEqual([]);
  });

  it.each([
    '/** One. */\nexport default 1;\n',
    "export * from './power-law.js';\n",
    "export { twice as default } from './twice.js';\n",
  ])('rejects exports without a name: %j', async (text) => {
    expect(await brokenRules(text)).toEqual(['no-restricted-syntax']);
  });

  it.each(['powerLaw.ts', 'Power.ts', 'power_law.ts', 'utils.ts', 'helpers.test.ts'])(
    'rejects the file name %s',
    async (name) => {
      expect(await brokenRules(documented, `packages/airflow/src/${name}`)).toEqual([
        'evendraft/file-name',
      ]);
    },
  );

  it('rejects a file of more than 400 lines', async () => {
    expect(await brokenRules(documented + '// One more line.\n'.repeat(400))).toEqual([
      'max-lines',
    ]);
  });
});
