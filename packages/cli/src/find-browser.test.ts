import { delimiter, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findBrowser } from './find-browser.js';

function search(environment: Readonly<Record<string, string>>, programs: readonly string[]) {
  return findBrowser({
    environment,
    isProgram: (path) => Promise.resolve(programs.includes(path)),
  });
}

describe('findBrowser', () => {
  it('takes the one that is named, whatever else there is', async () => {
    const named = { CHROMIUM_PATH: '/opt/mine', PATH: '/usr/bin' };
    const programs = ['/opt/mine', join('/usr/bin', 'chromium')];
    expect(await search(named, programs)).toEqual({ path: '/opt/mine' });
  });

  it('does not look further where the one that is named is missing', async () => {
    const found = await search({ CHROMIUM_PATH: '/opt/gone', PATH: '/usr/bin' }, [
      join('/usr/bin', 'chromium'),
    ]);
    expect(found).toEqual({ problem: expect.stringContaining('/opt/gone') });
  });

  it('takes one on the path by its usual names, the folders in their order', async () => {
    const path = ['/a', '/b'].join(delimiter);
    expect(await search({ PATH: path }, [join('/b', 'google-chrome')])).toEqual({
      path: join('/b', 'google-chrome'),
    });
    expect(await search({ PATH: path }, [join('/b', 'chromium'), join('/a', 'chromium')])).toEqual({
      path: join('/a', 'chromium'),
    });
  });

  it('says how to get the print where there is none', async () => {
    const found = await search({}, []);
    expect(found).toEqual({ problem: expect.stringMatching(/CHROMIUM_PATH[\s\S]*--report/u) });
  });
});
