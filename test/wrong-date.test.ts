import { expect, it } from 'vitest';
import { audit } from '../src/audit.ts';
import { renderText } from '../src/report/index.ts';
import { ruleSet } from '../src/rules.ts';
import { writeFit } from './make/fit-writer.ts';
import { drawSubmission } from './make/index.ts';

it('tells to a tenth of a second how far a clock is off that is a month ahead', async () => {
  const { primary, seconds } = drawSubmission('wrong date', { kind: 'bunch race', minutes: 25 });
  const month = 31 * 86_400 + 1830;
  const second = { ...seconds[0]!, time: seconds[0]!.time.map((clock) => clock + month) };
  const report = await audit(
    {
      rider: {},
      race: {},
      profile: null,
      otherInputs: [],
      primary: { name: 'primary.fit', bytes: writeFit(primary) },
      seconds: [{ name: 'second.fit', bytes: writeFit(second) }],
    },
    await ruleSet(),
  );
  const { offset, segments } = report.alignment[0]!;
  expect(Math.abs(offset!.value + month)).toBeLessThan(4);
  // Six figures of a month are ten seconds.
  expect(offset!.high - offset!.low).toBeGreaterThan(0.01);
  expect(offset!.high - offset!.low).toBeLessThan(2);
  expect(segments[0]!.offset).toBeCloseTo(offset!.value, 3);

  const text = renderText(report, { width: 100, colour: false, ascii: true }).replace(/\s+/g, ' ');
  expect(text).toMatch(/Its clock is 31 days 30 min [\d.]+ s ahead of the primary's \(\+\/- 0\.\d s\)/);
  expect(text).toMatch(/UTC by the primary's clock/);
  expect(text).toMatch(/Both recorded (99|100)(\.\d)? % of the race\./);
});
