import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import {
  audit,
  compileProfile,
  type NamedBytes,
  type Report,
  type RiderFacts,
  ruleSet,
} from '../../src/index.ts';

const event = 'samples/event';

const file = (folder: string, name: string): NamedBytes => ({
  name,
  bytes: new Uint8Array(readFileSync(path.join(folder, name))),
});
const json = (folder: string, name: string) => JSON.parse(readFileSync(path.join(folder, name), 'utf8'));

/** The report on one rider of the sample event, with everything that this rider handed in; facts may be changed. */
export async function auditSample(number: string, facts: RiderFacts = {}): Promise<Report> {
  const folder = path.join(event, 'riders', number);
  const past = path.join(folder, 'history');
  const profile = existsSync(past)
    ? await compileProfile(
        readdirSync(past)
          .sort()
          .map((name) => file(past, name)),
      )
    : null;
  return audit(
    {
      primary: file(folder, 'primary.fit'),
      seconds: existsSync(path.join(folder, 'second.fit')) ? [file(folder, 'second.fit')] : [],
      rider: { ...json(folder, 'rider.json'), ...facts },
      race: json(event, 'race.json'),
      profile,
      otherInputs: [],
    },
    await ruleSet(),
  );
}
