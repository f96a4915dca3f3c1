/** `npm run demo`: audits two riders of the sample event, as an organiser would, with the committed bundle. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';

const event = path.join('samples', 'event');
const pages = path.join('out', 'demo');

const riders = [
  { number: '14', about: 'a trainer that raced, and a pedal meter on the same bike' },
  { number: '31', about: 'a trainer, a pedal meter, and the rides of the last months' },
];

mkdirSync(pages, { recursive: true });
for (const { number, about } of riders) {
  const folder = path.join(event, 'riders', number);
  const page = path.join(pages, `rider-${number}.html`);
  const history = path.join(folder, 'history');
  const args = [
    path.join('dist', 'cli.js'),
    'audit',
    path.join(folder, 'primary.fit'),
    ...['--second', path.join(folder, 'second.fit')],
    ...(existsSync(history) ? ['--history', history] : []),
    ...['--rider', path.join(folder, 'rider.json'), '--race', path.join(event, 'race.json')],
    ...['--out', page, '--format', 'text', '--fail-on', 'never'],
  ];
  say(`Rider ${number}: ${about}\n\n$ node ${args.join(' ')}\n`);
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
  if (status !== 0) throw new Error(`the audit of rider ${number} ended with status ${status}`);
  say(`\nThe report as a page, with the evidence charts: ${pathToFileURL(path.resolve(page)).href}\n\n`);
}

function say(text: string): void {
  process.stdout.write(`${text}\n`);
}
