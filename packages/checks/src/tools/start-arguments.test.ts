import { describe, expect, it } from 'vitest';
import { startArguments } from '../../tools/start-arguments.mjs';

/** What the command gets when this is typed in the repository's top folder. */
function typed(...args: string[]): string[] {
  return startArguments(args, {
    bundledHousePath: '/home/rater/evendraft/examples/tight-new-house.yaml',
    outputPath: '/home/rater/evendraft/output',
    cwd: '/home/rater/evendraft',
  });
}

describe('the arguments of npm start', () => {
  it('choose the bundled house when none is named', () => {
    expect(typed()).toEqual(['assess', 'examples/tight-new-house.yaml', '--out', 'output']);
  });

  it('keep flags for the bundled house', () => {
    expect(typed('--units', 'si')).toEqual([
      'assess',
      'examples/tight-new-house.yaml',
      '--units',
      'si',
      '--out',
      'output',
    ]);
  });

  it("take the reader's own house, also after flags", () => {
    expect(typed('my house.yaml', '--json')).toEqual([
      'assess',
      'my house.yaml',
      '--json',
      '--out',
      'output',
    ]);
    expect(typed('--units', 'si', 'mine.json')).toEqual([
      'assess',
      '--units',
      'si',
      'mine.json',
      '--out',
      'output',
    ]);
  });

  it("leave the reader's own folder for the report alone", () => {
    expect(typed('mine.yaml', '--out', 'elsewhere')).toEqual([
      'assess',
      'mine.yaml',
      '--out',
      'elsewhere',
    ]);
  });

  it('pass a question for help on', () => {
    expect(typed('--help')).toEqual(['assess', '--help']);
  });

  it('name whole paths when called from another folder', () => {
    const args = startArguments([], {
      bundledHousePath: '/home/rater/evendraft/examples/tight-new-house.yaml',
      outputPath: '/home/rater/evendraft/output',
      cwd: '/home/rater/houses',
    });
    expect(args).toEqual([
      'assess',
      '/home/rater/evendraft/examples/tight-new-house.yaml',
      '--out',
      '/home/rater/evendraft/output',
    ]);
  });
});
