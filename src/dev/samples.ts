/** Writes samples/event anew: the recordings, facts and histories of the invented event. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { sampleEvent } from './sample-event.ts';

const files = sampleEvent();
rmSync('samples/event', { recursive: true, force: true });
let bytes = 0;
for (const [name, content] of files) {
  const file = path.join('samples', name);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, content);
  bytes += content.length;
}
process.stdout.write(`samples/event: ${files.size} files, ${(bytes / 1e6).toFixed(1)} MB\n`);
