import { describe, expect, it } from 'vitest';
import { npmEnvironment } from '../../tools/npm-command.mjs';

describe('the environment of an inner npm', () => {
  it('loses what would leave out development dependencies or change the folder', () => {
    const outer = {
      NODE_ENV: 'production',
      npm_config_omit: 'dev',
      NPM_CONFIG_PRODUCTION: 'true',
      npm_config_local_prefix: '/elsewhere',
      npm_config_workspace: 'bench',
    };
    expect(npmEnvironment(outer)).toEqual({});
  });

  it('keeps what says where packages come from', () => {
    const outer = {
      PATH: '/usr/bin',
      npm_config_registry: 'https://packages.example/',
      CI: 'true',
    };
    expect(npmEnvironment(outer)).toEqual(outer);
  });
});
