import { existsSync } from 'node:fs';
import process from 'node:process';
import { type Browser, chromium } from 'playwright-core';

const debian = '/usr/bin/chromium';

/**
 * Starts a browser that is installed on this machine: Debian's Chromium, else Chrome, else Edge.
 * Null where there is none, so that a contributor without one can still run the other tests; in
 * continuous integration (`CI` is set) that is an error instead.
 */
export async function startBrowser(): Promise<Browser | null> {
  const ways = existsSync(debian)
    ? [{ executablePath: debian }]
    : [{ channel: 'chrome' }, { channel: 'msedge' }];
  let why: unknown;
  for (const way of ways) {
    try {
      return await chromium.launch(way);
    } catch (error) {
      why = error;
    }
  }
  if (process.env.CI) throw new Error('no browser to test the reports in', { cause: why });
  return null;
}
