import { describe, expect, it } from 'vitest';
import { pageScript } from '../../../src/dev/page-bundle.ts';
import { script } from '../../../src/report/client/script.ts';

describe('the page’s script', () => {
  it('is made from its source', async () => {
    const fresh = await pageScript();
    expect(script === fresh, 'stale: run `node src/dev/run.mjs src/dev/page-script.ts`').toBe(true);
  });

  it('cannot end its own element, and makes no markup from text', () => {
    expect(script).not.toMatch(/<\/script|<!--/i);
    expect(script).not.toMatch(
      /innerHTML|outerHTML|insertAdjacentHTML|document\.write|eval\(|Function\(|setTimeout\(["'`]/,
    );
  });
});
