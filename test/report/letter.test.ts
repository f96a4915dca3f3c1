import { describe, expect, it } from 'vitest';
import { redact, renderLetter } from '../../src/report/index.ts';
import { makeReport } from './make-report.ts';
import { payloads } from './payloads.ts';

const report = makeReport({}, 600);
const frame = {
  rider: 'A. Rider',
  organiser: 'The jury',
  event: 'round 3',
  by: 'Friday, 20 March',
  reply: 'jury@example.org',
};

describe('renderLetter', () => {
  const text = renderLetter(report, frame);

  it('says what was seen, what it may innocently be, what to send, where and by when', () => {
    expect(text).toContain('Dear A. Rider,');
    expect(text.replaceAll('\n', ' ')).toContain(
      'In 4 sprints the primary reads 15.2\u00a0% above the second',
    );
    expect(text).toContain('What it may innocently be:');
    expect(text).toContain('- The original file from the head unit.');
    expect(text.replaceAll('\n', ' ')).toContain('to jury@example.org by Friday, 20 March');
    expect(text.replaceAll('\n', ' ')).toContain('nothing will be decided before we have read your answer');
    expect(text).toContain('Kind regards\nThe jury');
  });

  it('asks about queries and referrals that stand alone, and of nothing else', () => {
    expect(text.match(/^\d+\. /gm)).toEqual(['1. ']);
    expect(text).not.toContain('Beyond what earlier rides allow');
  });

  it('asks nothing where nothing was found, and for what the event requires', () => {
    const clear = makeReport({ grade: 'clear', findings: [], missing: [] }, 600);
    expect(renderLetter(clear)).toContain('nothing that needs an answer');
    const incomplete = makeReport({ grade: 'incomplete', findings: [], missing: ['second recording'] }, 600);
    expect(renderLetter(incomplete).replaceAll('\n', ' ')).toContain(
      'requires a second recording, which we did not find',
    );
  });

  it('asks again for a second recording that could not be read', () => {
    const { submission } = report;
    const unreadable = [{ name: 'pedals.fit', sha256: null, why: 'pedals.fit: it is empty. Send it again.' }];
    const torn = makeReport({ grade: 'incomplete', findings: [], missing: [] }, 600);
    const asks = renderLetter({ ...torn, submission: { ...submission, unreadable } }).replaceAll('\n', ' ');
    expect(asks).toContain('could not be read. pedals.fit: it is empty.');
    expect(asks).not.toContain('nothing that needs an answer');
  });

  it('never convicts, and shows no health data that was redacted', () => {
    expect(text).not.toMatch(/cheat|fraud|guilt|suspect|dop(ed|ing)|offen[cs]e/i);
    expect(renderLetter(redact(report), frame)).not.toMatch(/\d[\s\u00a0]*(bpm|kg)\b/);
  });

  it('keeps to its width, and lets no name begin a line or a command', () => {
    for (const name of payloads) {
      const made = renderLetter(report, {
        rider: name,
        organiser: name,
        event: name,
        by: name,
        reply: name,
        note: name,
      });
      expect(made).not.toMatch(/[^\P{Cc}\n]|::|##\[/u);
      for (const line of made.split('\n')) expect([...line].length).toBeLessThanOrEqual(76);
    }
  });
});
