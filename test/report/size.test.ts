import { describe, expect, it } from 'vitest';
import { audit, renderHtml, ruleSet } from '../../src/index.ts';
import { writeFit } from '../make/fit-writer.ts';
import { drawSubmission, faults, type Submission } from '../make/index.ts';

/** Bytes of the page on a pair of three hours at most, as a mail or a forum takes it without complaint. */
const most = 400_000;

async function pageOf({ primary, seconds, rider, race }: Submission): Promise<string> {
  const files = {
    primary: { name: 'primary.fit', bytes: writeFit(primary) },
    seconds: seconds.map((one) => ({ name: 'second.fit', bytes: writeFit(one) })),
  };
  const facts = { rider, race, profile: null, otherInputs: [] };
  return renderHtml(await audit({ ...files, ...facts }, await ruleSet()));
}

describe('the page on a pair of three hours', () => {
  it.each([
    ['an honest pair', []],
    ['a meter that warms up', [{ fault: faults.warming, strength: 0.1 }]],
  ])('is small: %s', async (_, planted) => {
    const wish = { kind: 'bunch race', minutes: 180, faults: planted } as const;
    const page = await pageOf(drawSubmission('bench 3 h', wish));
    expect(Buffer.byteLength(page)).toBeLessThanOrEqual(most);
    // So is a page without its charts.
    expect(page.match(/<svg /g)!.length).toBeGreaterThan(10);
    expect(page).toContain('id="live-data"');
  });
});
