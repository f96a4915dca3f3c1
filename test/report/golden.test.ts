import { describe, expect, it } from 'vitest';
import { renderLetter, renderText } from '../../src/report/index.ts';
import { auditSample } from './samples.ts';

/**
 * Whole reports of the sample event as they were last read and approved by eye. A change that alters a word or a
 * number shows here as a difference to read; `npm run unit -- test/report/golden.test.ts -u` writes them anew.
 */
describe.each(['8', '17', '23', '31', '37'])('the report on sample rider %s', (number) => {
  it('reads as approved, with the letter', { timeout: 60_000 }, async () => {
    const report = await auditSample(number);
    const text = renderText(report, { width: 100, colour: false, ascii: false });
    await expect(`${text}\n---\n\n${renderLetter(report)}`).toMatchFileSnapshot(`golden/rider-${number}.txt`);
  });
});
