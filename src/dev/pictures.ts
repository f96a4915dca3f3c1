/** `npm run pictures`: the pictures in the README, taken of the sample event's reports in a browser. */
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { startBrowser } from '../../test/browser/browser.ts';

const rider = path.join('samples', 'event', 'riders', '14');
const page = path.resolve('out', 'pictures', 'report.html');
const pictures = path.join('.github', 'pictures');

mkdirSync(path.dirname(page), { recursive: true });
mkdirSync(pictures, { recursive: true });
const facts = [
  '--rider',
  path.join(rider, 'rider.json'),
  '--race',
  path.join('samples', 'event', 'race.json'),
];
const recordings = [path.join(rider, 'primary.fit'), '--second', path.join(rider, 'second.fit')];
const audit = ['dist/cli.js', 'audit', ...recordings, ...facts, '--out', page, '--fail-on', 'never'];
const { status } = spawnSync(process.execPath, audit, { stdio: 'inherit' });
if (status !== 0) throw new Error('the sample could not be audited');

const browser = await startBrowser();
if (browser === null) throw new Error('there is no browser to take pictures with');
const tab = await browser.newPage({ viewport: { width: 840, height: 1000 }, colorScheme: 'light' });
await tab.goto(pathToFileURL(page).href);
await take('header', 'grade.png');
await take('article', 'finding.png');
await browser.close();

/** A part of the page with some paper around it. */
async function take(selector: string, name: string): Promise<void> {
  const margin = 12;
  const box = await tab.locator(selector).first().boundingBox();
  if (box === null) throw new Error(`the page shows no ${selector}`);
  const clip = {
    x: Math.max(0, box.x - margin),
    y: Math.max(0, box.y - margin),
    width: box.width + 2 * margin,
    height: box.height + 2 * margin,
  };
  await tab.screenshot({ path: path.join(pictures, name), fullPage: true, clip });
}
