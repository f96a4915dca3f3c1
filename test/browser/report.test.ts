import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, type TestContext } from 'vitest';
import { renderCharts, renderHtml } from '../../src/report/index.ts';
import { withName } from '../report/hostile.ts';
import { makeReport } from '../report/make-report.ts';
import { payloads } from '../report/payloads.ts';
import { startBrowser } from './browser.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'report-'));
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const report = makeReport({}, 3600);
let browser: Browser | null;

beforeAll(async () => {
  writeFileSync(path.join(folder, 'report.html'), await renderHtml(report));
  browser = await startBrowser();
});

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true });
});

/** The section that shows the whole ride. */
const ride = 'section[aria-labelledby=ride]';

interface Opened {
  readonly page: Page;
  /** What the page complained of, and what it asked the network for. */
  readonly faults: readonly string[];
}

/** A page opened from disk, as its reader opens it; skips where there is no browser. */
async function open(
  context: TestContext,
  options: BrowserContextOptions = {},
  file = 'report.html',
): Promise<Opened> {
  if (browser === null) return context.skip('no browser is installed to look at reports with');
  const page = await (
    await browser.newContext({ viewport: { width: 1180, height: 900 }, ...options })
  ).newPage();
  page.setDefaultTimeout(5000);
  const faults: string[] = [];
  page.on('console', (message) => faults.push(message.text()));
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => {
    if (!request.url().startsWith('file:')) faults.push(request.url());
  });
  await page.goto(pathToFileURL(path.join(folder, file)).href);
  return { page, faults };
}

/** Runs in the page: what the checker of accessibility objects to. */
async function violations(): Promise<string[]> {
  interface Found {
    readonly violations: readonly {
      readonly id: string;
      readonly nodes: readonly { readonly html: string }[];
    }[];
  }
  const found = await (globalThis as unknown as { axe: { run(): Promise<Found> } }).axe.run();
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`,
  );
}

const close = (page: Page) => page.context().close();

describe('a report from disk', () => {
  it('opens without a complaint, a policy broken or a request made', async (context) => {
    const { page, faults } = await open(context);
    expect(await page.locator('h1').textContent()).toBe('Refer. Put this before the jury.');
    expect(await page.locator('.live svg').count()).toBe(3);
    expect(faults).toEqual([]);
    await close(page);
  });

  it('says everything without scripts', async (context) => {
    const { page, faults } = await open(context, { javaScriptEnabled: false });
    expect(await page.locator(`${ride} svg`).first().isVisible()).toBe(true);
    expect(await page.locator('.tools').isVisible()).toBe(false);
    expect(await page.locator('.live').first().isVisible()).toBe(false);
    expect(faults).toEqual([]);
    await close(page);
  });

  it.for([360, 768, 1180])('is read without scrolling sideways at %i px', async (width, context) => {
    for (const javaScriptEnabled of [true, false]) {
      const { page } = await open(context, {
        viewport: { width, height: 900 },
        javaScriptEnabled,
      });
      const over = await page
        .locator('body *')
        .evaluateAll(
          (all, most) =>
            all
              .filter(
                (one) =>
                  one.closest('.scroll, svg') === null && one.getBoundingClientRect().right > most + 0.5,
              )
              .map((one) => one.outerHTML.slice(0, 80)),
          width,
        );
      expect(over).toEqual([]);
      await close(page);
    }
  });

  it('is set in letters of a size that can be read, drawings too', async (context) => {
    const { page } = await open(context, { viewport: { width: 360, height: 900 }, javaScriptEnabled: false });
    const heights = await page
      .locator('.narrow svg text')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    // Drawings in closed parts of the page have no height.
    expect(Math.min(...heights.filter((height) => height > 0))).toBeGreaterThan(9);
    await close(page);
  });
});

describe('a report read by everyone', () => {
  it.for([
    ['light', 1180],
    ['dark', 360],
  ] as const)(
    'breaks no rule of accessibility in %s colours at %i px',
    async ([colorScheme, width], context) => {
      const { page } = await open(context, {
        colorScheme,
        viewport: { width, height: 900 },
        bypassCSP: true,
      });
      await page.locator('details').evaluateAll((all) => all.map((one) => one.setAttribute('open', '')));
      await page.evaluate(axe);
      expect(await page.evaluate(violations)).toEqual([]);
      await close(page);
    },
  );

  it('turns dark on a dark screen and light on paper', async (context) => {
    const { page } = await open(context, { colorScheme: 'dark' });
    const colours = () =>
      page.evaluate(() => {
        const colour = (of: string, what: string) =>
          getComputedStyle(document.querySelector(of)!).getPropertyValue(what);
        return [
          colour('body', 'background-color'),
          colour('svg .s-a', 'stroke'),
          colour('svg .f-ink', 'fill'),
        ];
      });
    expect(await colours()).toEqual(['rgb(22, 24, 27)', 'rgb(125, 184, 242)', 'rgb(235, 231, 222)']);
    await page.emulateMedia({ media: 'print' });
    expect(await colours()).toEqual(['rgb(255, 253, 248)', 'rgb(11, 83, 148)', 'rgb(29, 33, 38)']);
    await close(page);
  });

  it('prints', async (context) => {
    const { page } = await open(context, { colorScheme: 'dark' });
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    expect(pdf.length).toBeGreaterThan(50_000);
    await close(page);
  });

  it('leaves out on paper what is folded away, says so, and prints what its reader unfolded', async (context) => {
    const { page } = await open(context);
    const workings = page.locator('section[aria-labelledby=workings]');
    const first = workings.locator('details').first();
    const saidOnPaper = workings.locator('p.paper');
    expect(await saidOnPaper.isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await saidOnPaper.isVisible()).toBe(true);
    expect(await saidOnPaper.textContent()).toMatch(/left out on paper/);
    expect(await first.isVisible()).toBe(false);
    await first.evaluate((one) => one.setAttribute('open', ''));
    expect(await first.locator('dl').isVisible()).toBe(true);
    await close(page);
  });

  it('cuts no drawing and no finding in two on paper', async (context) => {
    const { page } = await open(context);
    await page.emulateMedia({ media: 'print' });
    const breaks = await page.evaluate(() =>
      [...document.querySelectorAll('figure, .finding, .sides, tr')].map(
        (one) => getComputedStyle(one).breakInside,
      ),
    );
    expect(new Set(breaks)).toEqual(new Set(['avoid']));
    await close(page);
  });
});

describe('looking closer', () => {
  const output = (page: Page) => page.locator('output').textContent();
  const ticks = (page: Page) => page.locator(`${ride} .live svg text`).allTextContents();

  it('reads every meter under the pointer, from the data itself', async (context) => {
    const { page } = await open(context);
    const host = page.locator(`${ride} .live`);
    await host.scrollIntoViewIfNeeded();
    const box = (await host.boundingBox())!;
    await page.mouse.move(box.x + 400, box.y + 60);
    const [, time, primary, second] =
      /^([\d:]+) · primary (\d+)\u00a0W · second (\d+)\u00a0W · cadence \d+\u00a0rpm · heart rate \d+\u00a0bpm$/.exec(
        (await output(page))!,
      )!;
    const traces = report.charts.find((chart) => chart.kind === 'traces')!;
    const at = time!.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);
    expect([traces.primary[at], traces.seconds[0]!.power[at]]).toEqual([Number(primary), Number(second)]);
    await close(page);
  });

  it('zooms into what is dragged across, on every drawing with the same axis, and back', async (context) => {
    const { page } = await open(context);
    const host = page.locator(`${ride} .live`);
    await host.scrollIntoViewIfNeeded();
    const whole = await ticks(page);
    const box = (await host.boundingBox())!;
    await page.mouse.move(box.x + 200, box.y + 60);
    await page.mouse.down();
    await page.mouse.move(box.x + 240, box.y + 60);
    await page.mouse.up();
    expect(await output(page)).toMatch(/^(Showing|\d)/);
    const near = await ticks(page);
    expect(near).not.toEqual(whole);
    const ratio = await page
      .locator('figure:has-text("Ratio of the meters through the ride") .live svg text')
      .allTextContents();
    expect(ratio.filter((text) => near.includes(text) && /:/.test(text)).length).toBeGreaterThan(2);
    await page.getByRole('button', { name: 'Whole ride' }).click();
    expect(await ticks(page)).toEqual(whole);
    await close(page);
  });

  it('shows a finding’s own seconds', async (context) => {
    const { page } = await open(context);
    await page.locator('a[data-from]').first().click();
    expect(await output(page)).toBe('Showing 24:16–25:15.');
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('live');
    await close(page);
  });

  it('averages as each rule judged the ride', async (context) => {
    const { page } = await open(context);
    const drawing = () => page.locator(`${ride} .live svg`).innerHTML();
    const recorded = await drawing();
    const choice = page.getByLabel('How power is drawn');
    const values = await choice
      .locator('option')
      .evaluateAll((all) => all.map((one) => one.getAttribute('value')!));
    expect(values).toEqual(['', '30', '60']);
    const drawn = new Set<string>();
    for (const value of values) {
      await choice.selectOption(value);
      drawn.add(await drawing());
    }
    expect(drawn.size).toBe(values.length);
    const finding = page.locator('a[data-from]').first();
    await finding.click();
    expect(await choice.inputValue()).toBe(await finding.getAttribute('data-averaged'));
    await choice.selectOption('');
    await page.getByRole('button', { name: 'Whole ride' }).click();
    expect(await drawing()).toBe(recorded);
    await close(page);
  });

  it('is worked by keyboard alone', async (context) => {
    const { page } = await open(context);
    await page.locator(`${ride} .live`).focus();
    const press = async (...keys: string[]) => {
      for (const key of keys) await page.keyboard.press(key);
      return (await output(page))!.split(' · ')[0];
    };
    expect(await press('ArrowRight')).toBe('0:00');
    expect(await press('ArrowRight', 'Shift+ArrowRight')).toBe('0:11');
    expect(await press('End')).toBe('59:59');
    expect(await press('+')).toMatch(/^Showing \d\d:\d\d–1:00:00\.$/);
    expect(await press('0')).toBe('Showing 0:00–1:00:00.');
    await close(page);
  });
});

describe('a stranger’s names', () => {
  it('run nothing in a page or a drawing', async (context) => {
    // One name a field, so that a few pages hold every name in several places.
    for (const offset of [0, 5, 11]) {
      const names = [...payloads.slice(offset), ...payloads.slice(0, offset)];
      writeFileSync(
        path.join(folder, 'hostile.html'),
        await renderHtml(withName(makeReport({}, 600), names)),
      );
      const { page, faults } = await open(context, {}, 'hostile.html');
      const found = await page.evaluate(() => ({
        ran: 'breached' in globalThis,
        scripts: document.scripts.length,
        images: document.images.length,
        handlers: [...document.querySelectorAll('*')].flatMap((one) =>
          one.getAttributeNames().filter((attribute) => attribute.startsWith('on')),
        ),
      }));
      expect(found).toEqual({ ran: false, scripts: 2, images: 0, handlers: [] });
      expect(faults).toEqual([]);
      await close(page);
    }
  });

  it('leave a drawing of its own an image that loads', async (context) => {
    const charts = renderCharts(withName(makeReport({}, 600), payloads[0]!), { width: 760 });
    for (const { name, svg } of charts) writeFileSync(path.join(folder, name), svg);
    const { page } = await open(context, {}, charts[0]!.name);
    expect(await page.evaluate(() => document.documentElement.nodeName)).toBe('svg');
    expect(await page.evaluate(() => 'breached' in globalThis)).toBe(false);
    await close(page);
  });
});
