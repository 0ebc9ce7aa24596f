import { describe, expect, it } from 'vitest';
import { installReason } from '../../tools/install-decision.mjs';

const locked = {
  packages: {
    '': {},
    'packages/units': { version: '0.1.0' },
    'node_modules/@evendraft/units': { link: true },
    'node_modules/zod': { version: '4.6.7' },
    'packages/cli/node_modules/commander': { version: '14.0.3' },
    'node_modules/binding-linux': { version: '1.0.0', optional: true, os: ['linux'] },
    'node_modules/binding-darwin': { version: '1.0.0', optional: true, os: ['darwin'] },
  },
};
const onDisk: Readonly<Record<string, string>> = {
  'node_modules/@evendraft/units': '0.1.0',
  'node_modules/zod': '4.6.7',
  'packages/cli/node_modules/commander': '14.0.3',
  'node_modules/binding-linux': '1.0.0',
};
const { 'node_modules/binding-darwin': _elsewhere, ...here } = locked.packages;
const installed = { packages: here };

/** The decision when everything is in place but for what the case changes. */
function decide(change: {
  locked?: Parameters<typeof installReason>[0]['locked'];
  installed?: Parameters<typeof installReason>[0]['installed'];
  disk?: Readonly<Record<string, string | undefined>>;
}): string | undefined {
  const disk = { ...onDisk, ...change.disk };
  return installReason({
    locked: 'locked' in change ? change.locked : locked,
    installed: 'installed' in change ? change.installed : installed,
    versionAt: (path) => disk[path],
  });
}

/** The installed list without one package. */
function installedWithout(path: string): { packages: Record<string, object> } {
  return { packages: Object.fromEntries(Object.entries(here).filter(([key]) => key !== path)) };
}

describe('whether an install is needed', () => {
  it('is no when all that is locked is there, though the binary of another system is not', () => {
    expect(decide({})).toBeUndefined();
  });

  it('is yes when nothing is installed', () => {
    expect(decide({ installed: undefined })).toBe('nothing is installed yet');
  });

  it('is yes when an install ended before npm wrote its list', () => {
    expect(decide({ installed: {} })).toBe('nothing is installed yet');
  });

  it('is yes when a development dependency was left out', () => {
    expect(decide({ installed: installedWithout('node_modules/zod') })).toBe('zod is missing');
  });

  it('is yes when the lock file asks for another version than the one installed', () => {
    const newer = { packages: { ...locked.packages, 'node_modules/zod': { version: '4.7.0' } } };
    expect(decide({ locked: newer })).toBe('zod is 4.6.7, and 4.7.0 is asked for');
  });

  it('is yes when a folder that npm lists was deleted', () => {
    expect(decide({ disk: { 'node_modules/zod': undefined } })).toBe('zod is only half there');
  });

  it('is yes when a folder inside a package of ours was deleted', () => {
    expect(decide({ disk: { 'packages/cli/node_modules/commander': undefined } })).toBe(
      'commander is only half there',
    );
  });

  it('is yes when another version lies in the folder than npm lists', () => {
    expect(decide({ disk: { 'node_modules/zod': '3.0.0' } })).toBe('zod is only half there');
  });

  it('is yes when a binary for this system was installed and then deleted', () => {
    expect(decide({ disk: { 'node_modules/binding-linux': undefined } })).toBe(
      'binding-linux is only half there',
    );
  });

  it('is yes when a package of ours is not linked', () => {
    expect(decide({ disk: { 'node_modules/@evendraft/units': undefined } })).toBe(
      '@evendraft/units is not linked',
    );
  });

  it('is no without a lock file once something is installed', () => {
    expect(decide({ locked: undefined })).toBeUndefined();
  });
});
