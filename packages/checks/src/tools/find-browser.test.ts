import { describe, expect, it } from 'vitest';
import { findBrowser } from '../../tools/find-browser.mjs';

describe('the browser for the checks', () => {
  it('is the one that is named, whatever else is installed', () => {
    expect(findBrowser('/opt/chromium', () => true)).toEqual({ path: '/opt/chromium' });
  });

  it('is an installed one if none is named', () => {
    expect(findBrowser(undefined, (path) => path === '/usr/bin/chromium')).toEqual({
      path: '/usr/bin/chromium',
    });
  });

  it('is missing with a reason that says what to do', () => {
    expect(findBrowser('', () => false).reason).toContain('set CHROMIUM_PATH');
    expect(findBrowser('/opt/gone', () => false).reason).toContain('/opt/gone');
  });
});
