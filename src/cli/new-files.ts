/** The files of a results repository, by path. Texts for organisers and riders; nothing in them is law. */
export function repositoryFiles(name: string): Readonly<Record<string, string>> {
  return {
    'README.md': readme(name),
    '.gitignore': ignored,
    '.gitattributes': attributes,
    'rules/grades.json': grades,
    'rules/README.md': rules,
    'events/round-1/round-1.event.json': eventFile,
    'events/round-1/submissions/README.md': submissions,
    'profiles/README.md': profiles,
    'riders/how-to-hand-in.md': handIn,
    'riders/consent-and-your-rights.md': consent,
    '.github/workflows/audit.yml': workflow,
    '.github/workflows/pull-request.yml': proposals,
  };
}

/** Actions of the workflows that are laid out, each by the digest of the release that was looked at. */
const actions = {
  checkout: 'actions/checkout@3d3c42e5aac5ba805825da76410c181273ba90b1 # v7.0.1',
  upload: 'actions/upload-artifact@bbbca2ddaa5d8feaa63e36b76fdaad77386f024f # v7.0.0',
  node: 'actions/setup-node@820762786026740c76f36085b0efc47a31fe5020 # v7.0.0',
  download: 'actions/download-artifact@3e5f45b2cfb9172054b4087a40e8e0b5a5461e7c # v8.0.1',
} as const;

const readme = (name: string) => `# ${name}

Results of our events, checked with [wattassay](https://github.com/OWNER/wattassay): recordings, what was asked and
answered, what was decided.

**Keep this repository private.** A recording holds where and when a person rides, often from the front door, and the
heart rate, which is health data. Committed to a public repository it is published for good: deleting it later removes
it neither from the history nor from the copies that others made. If this repository was ever public with a recording
in it, tell the riders.

## Where things are

| folder | what is in it |
| --- | --- |
| \`events/round-1/\` | an event: its file, the submissions, \`decisions.json\` |
| \`rules/\` | what we do differently from the shipped rules |
| \`profiles/\` | riders' earlier rides, compiled: bests, heart rate and mass, no traces |
| \`riders/\` | texts for riders: how to hand in, consent and rights |

## An evening

1. Put each rider's files into a folder that begins with the rider's number, or put the number first in the names:
   \`events/round-1/submissions/17/primary.fit\` and \`second.fit\`.
2. \`wattassay event events/round-1 --rules rules --check\` says what is missing or doubtful, with the fix, and audits nothing.
3. \`wattassay event events/round-1 --rules rules --out audited/round-1\` audits. Open
   \`audited/round-1/overview.html\`.
4. Ask: \`reports/rider-17/letter.txt\` is a draft of the letter to rider 17. Keep it on record:
   \`wattassay decide events/round-1 17 late-drift --asked 2026-03-15 --due 2026-03-18\`
5. When the answer is there, people decide; \`wattassay decide\` keeps what, by which role, and why. Step 3 once more
   takes a moment, and puts answers that are overdue first.
6. For a jury or an appeal: \`wattassay case events/round-1 17 --rules rules --from audited/round-1 --out case-17\`
   packs what both sides argue from; \`wattassay verify\` lets either make the report again.

Before the next round, keep \`audited/round-1/fingerprints.json\` (it holds no rider and no sample) and name it with
\`--earlier\`: a recording that is handed in again is then found.

Two workflows do this on GitHub: \`audit.yml\` audits an event as a whole when it is started by hand,
\`pull-request.yml\` what a pull request changes. In both, put the owner of the tool and the digest of the commit that you
reviewed in place of OWNER and COMMIT; for each round, name its folder in the second.

## Ways to hand files in that are not public

- A private form or a private upload folder that only the organisers can read.
- Mail to a mailbox that only the organisers read; delete the mail when the files are here.
- A pull request **to this private repository**, where every rider who can read it may read every other's files:
  only with riders who agreed to that.

Never: a public repository, an issue, a forum, a group chat.

## How long

Delete a recording when the time for appeals is over. Git keeps what was committed: keep recordings outside git
(\`.gitignore\` does so here unless you change it) or start a new repository each season and delete the old one.
`;

const ignored = `# What was audited can be made again, and holds health data.
audited/
case-*/
# Recordings stay on the machine of whoever audits. Delete these lines only if every rider agreed.
events/*/submissions/**
!events/*/submissions/README.md
`;

const attributes = `* text=auto eol=lf
*.fit binary
*.zip binary
*.gz binary
`;

const grades = `{
  "queriesThatRefer": null,
  "why": "Several queries about one rider are weighed by people, not added up."
}
`;

const rules = `# Our own rules

Files here are laid over the shipped rules: a file bears the name of the rule that it changes and says only what
differs. \`wattassay rules\` lists the rules, \`wattassay rules check rules/\` says what this folder changes. To switch a
rule off, say why; the reason stands in every report:

    late-drift.rule.json
    { "id": "late-drift", "off": "No rider can spin down at this venue." }

They speak where \`--rules rules\` names them, as the README and the workflows do. Rules for one event or category alone
lie in a folder beside its event file, which names it with \`"rules"\`.
`;

const eventFile = `{
  "name": "Round 1",
  "start": "2026-03-14T19:00:00+01:00",
  "finish": "2026-03-14T20:00:00+01:00",
  "kind": "race",
  "required": ["power", "heartRate"],
  "secondRecordings": { "top": 10 },
  "submissions": "submissions"
}
`;

const submissions = `# Submissions

One folder a rider, beginning with the rider's number:

    17/primary.fit    the recording that the result rests on
    17/second.fit     the same ride by another meter
    17/rider.json     body mass, class, meters; see \`riders/how-to-hand-in.md\`
    17/history/       earlier rides, or profile.json from \`profiles/\`

A ZIP named 17.zip with the same names in it works as well. What leaves a doubt is listed and belongs to nobody.
`;

const profiles = `# Profiles

\`wattassay profile rides/ --out profiles/17.json\` compiles a rider's earlier rides into a small file: best powers,
heart rate and the mass that climbs show, no traces, no positions. It is health data all the same. Copy it to the
event as \`submissions/17/profile.json\`.
`;

const handIn = `# How to hand in your recordings

1. **The primary recording** is the one that your result rests on, most often from the trainer. Export the original
   file (FIT is best) from the app that you raced with: look for "export original" or "download file". Do not edit,
   crop or convert it; another app's copy of it has lost things.
2. **A second recording**, where asked for, is the same ride by another meter: pedals, crank or hub, recorded by a
   head unit or watch **by itself**, not by the app that records the trainer. Start it before the race, stop it after,
   and let it record every second.
3. Do the zero offset of your meters and the spin-down of your trainer, warm, before the race, and note that you did.
4. Name the files with your number: \`17-primary.fit\`, \`17-second.fit\`. A ZIP of both is fine.
5. Tell us, if asked: body mass in kg, your class, and for each meter where it measures (crank, pedal, hub, trainer),
   whether it measures one side or two, and the accuracy that its maker states:

       {
         "massKg": 68,
         "recordClass": "open",
         "devices": [
           { "name": "primary", "place": "trainer", "sides": 2, "tolerancePercent": 2 },
           { "name": "second", "place": "pedal", "sides": 2, "tolerancePercent": 1 }
         ]
       }

Hand them in only by the private way that the organiser named, never in public: the files show where you live, when
you are out, and your heart rate. You can run the same check yourself before you hand in:
\`wattassay audit 17-primary.fit --second 17-second.fit\`.
`;

const consent = `# Consent and your rights

To be filled in by the organiser, who should have it read by someone who knows the law of the place:

- **Who** keeps your data: NAME AND ADDRESS OF THE ORGANISER; write to ADDRESS.
- **What**: your recordings (power, cadence, heart rate, speed, time; positions are in the file, and the check drops
  them as it reads), your body mass if you tell us, your earlier rides if you hand them in, what we asked, what you
  answered, what was decided. Heart rate and body mass are health data: we use them only with your explicit consent.
- **What for**: to decide whether a result that was earned on measured power can stand. For nothing else.
- **Who sees it**: those who decide, and on appeal those who hear it. It is not published. The result list shows a
  place, never a grade or a finding.
- **How long**: until the time for appeals is over, at the latest DATE.

You may see everything that we hold about you, and get a copy: \`wattassay case\` makes one. You may have mistakes
corrected, answer every question before anything is decided, withdraw your consent, have your data deleted (a result
that can no longer be checked may then not stand), and complain to the data protection authority of your country.
No computer decides about you: the program asks questions, people decide.

> I have read this. I hand in my recordings for this purpose and agree that my heart rate, and my body mass if I give
> it, are used for it.
>
> Name, date, signature; for riders under age, a parent or guardian
`;

/** Two parts: more are a number in two places. The tool is checked out at a reviewed commit, nothing is installed. */
const workflow = `# Audits an event of this PRIVATE repository. Reports are redacted; nothing fails the job.
# It sees what is committed: recordings only where .gitignore lets them in, which every rider must have agreed to.
name: audit
on:
  workflow_dispatch:
    inputs:
      event:
        description: Folder of the event
        default: events/round-1
        required: true
permissions:
  contents: read
jobs:
  part:
    runs-on: ubuntu-latest
    timeout-minutes: 60
    strategy:
      fail-fast: false
      matrix:
        part: [1, 2]
    steps:
      - uses: ${actions.checkout}
        with:
          persist-credentials: false
      - uses: ${actions.checkout}
        with:
          repository: OWNER/wattassay
          ref: COMMIT # the full digest of the commit that you reviewed
          path: .wattassay
          persist-credentials: false
      - uses: ./.wattassay
        with:
          event: \${{ inputs.event }}
          changed-only: false
          rules: rules
          part: \${{ matrix.part }}/2
          report-folder: part-\${{ matrix.part }}
      - uses: ${actions.upload}
        with:
          name: part-\${{ matrix.part }}
          path: part-\${{ matrix.part }}
          retention-days: 1
  whole:
    needs: part
    runs-on: ubuntu-latest
    timeout-minutes: 20
    steps:
      - uses: ${actions.checkout}
        with:
          persist-credentials: false
      - uses: ${actions.checkout}
        with:
          repository: OWNER/wattassay
          ref: COMMIT # the same commit
          path: .wattassay
          persist-credentials: false
      - uses: ${actions.node}
        with:
          node-version: 24
      - uses: ${actions.download}
        with:
          pattern: part-*
      - run: node .wattassay/dist/cli.js merge "$EVENT" part-1 part-2 --rules rules --out audited --redact --fail-on never
        env:
          EVENT: \${{ inputs.event }}
      - uses: ${actions.upload}
        with:
          name: audited
          path: audited
          retention-days: 14
`;

/** Every input that an organiser may want to change is written out, though most stand as they would by themselves. */
const proposals = `# Audits what a pull request to this PRIVATE repository changes, and shows a summary that goes by numbers.
# It sees what is committed: recordings only where .gitignore lets them in, which every rider must have agreed to.
name: pull request
on: pull_request
permissions:
  contents: read
concurrency:
  group: pull-request-\${{ github.ref }}
  cancel-in-progress: true
jobs:
  audit:
    runs-on: ubuntu-latest
    timeout-minutes: 30
    steps:
      - uses: ${actions.checkout}
        with:
          persist-credentials: false
          fetch-depth: 2 # the base branch as well: its rules judge, and what changed is told from it
      - uses: OWNER/wattassay@COMMIT # the full digest of the commit that you reviewed, never a branch or tag
        with:
          event: events/round-1 # the event for which files are handed in now
          changed-only: true # false: everybody's submission, each time
          terms-from: base # event file, results and rules of the base branch: no change judges itself
          rules: rules
          fail-on: never # a red cross beside a name is an accusation
          report-folder: audited
          redact: true # numbers only: no names, heart rate or mass
      - uses: ${actions.upload}
        if: \${{ !cancelled() }} # also where fail-on failed the job
        with:
          name: audited
          path: audited
          retention-days: 14
`;
