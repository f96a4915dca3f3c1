/**
 * What a run of `npm run truth` costs: submissions a second by one processor, and where their time goes. Time
 * is the processor's, so that a busy machine matters little.
 */
import process from 'node:process';
import { auditRecordings } from '../../src/audit.ts';
import { ruleSet } from '../../src/rules.ts';
import { faults } from '../make/faults/index.ts';
import { honestKinds } from '../make/honest.ts';
import { submissionsOf } from '../truth/draw.ts';
import { handedIn } from '../truth/evidence.ts';
import { cohorts, planOf, strengthNames } from '../truth/plan.ts';

const rules = await ruleSet();
const plan = planOf({
  build: 'tuning',
  seed: 'bench',
  scale: { honest: 0.02, faults: 0.003 },
  kinds: honestKinds.map(({ name }) => name),
  faults,
  strengths: strengthNames,
  cohorts,
  rides: [],
});

interface Cost {
  submissions: number;
  drawing: number;
  past: number;
  audit: number;
}
const costs = {
  honest: { submissions: 0, drawing: 0, past: 0, audit: 0 },
  fault: { submissions: 0, drawing: 0, past: 0, audit: 0 },
} satisfies { readonly [sort: string]: Cost };
let memory = 0;

const now = () => process.cpuUsage().user / 1e6;

for (const lot of plan.lots) {
  if (lot.sort === 'coverage') continue;
  const cost = costs[lot.sort];
  // The first draw of each lot warms up.
  for (let draw = 0; draw < lot.count; draw++) {
    const from = now();
    const drawn = submissionsOf(plan, lot, draw);
    const made = now();
    const times = drawn.map(({ submission }) => {
      const start = now();
      const read = handedIn(submission);
      const compiled = now();
      auditRecordings(read, rules);
      return { past: compiled - start, audit: now() - compiled };
    });
    memory = Math.max(memory, process.memoryUsage().rss);
    if (draw === 0) continue;
    cost.drawing += made - from;
    cost.submissions += drawn.length;
    for (const { past, audit } of times) {
      cost.past += past;
      cost.audit += audit;
    }
  }
}

for (const [sort, { submissions, drawing, past, audit }] of Object.entries(costs)) {
  const all = drawing + past + audit;
  const part = (seconds: number) => `${Math.round((1000 * seconds) / submissions)} ms`;
  process.stdout.write(
    `${sort.padEnd(8)}${(submissions / all).toFixed(1).padStart(7)} a second: drawing ${part(drawing)}, past rides ${part(past)}, audit ${part(audit)}\n`,
  );
}
process.stdout.write(`memory  ${Math.round(memory / 1e6)} MB at most\n`);
