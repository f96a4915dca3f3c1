import { describe, expect, it } from 'vitest';
import { pageScript } from '../../../src/dev/page-bundle.ts';
import { script as overview } from '../../../src/report/client/overview-script.ts';
import { script as report } from '../../../src/report/client/script.ts';

describe.each([
  ['report', report],
  ['overview', overview],
] as const)('the script of the page %s', (page, script) => {
  it('is made from its source', async () => {
    const fresh = await pageScript(page);
    expect(script === fresh, 'stale: run `node src/dev/run.mjs src/dev/page-script.ts`').toBe(true);
  });

  it('cannot end its own element, and makes no markup from text', () => {
    expect(script).not.toMatch(/<\/script|<!--/i);
    expect(script).not.toMatch(
      /innerHTML|outerHTML|insertAdjacentHTML|document\.write|eval\(|Function\(|setTimeout\(["'`]/,
    );
  });
});
