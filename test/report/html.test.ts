import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { renderHtml } from '../../src/report/index.ts';
import { makeReport } from './make-report.ts';

const kinds = [
  'traces',
  'ratio',
  'efforts',
  'curve',
  'response',
  'dependence',
  'agreement',
  'coverage',
  'totals',
];
const everything = makeReport();
/** Three hours on two meters, with the charts that such a submission has. */
const pair = { ...everything, charts: everything.charts.filter(({ kind }) => kinds.includes(kind)) };
let page: string;

beforeAll(async () => {
  page = await renderHtml(pair);
});

/** What a reader reads, without elements. */
const words = (html: string) =>
  html
    .replace(/<(script|style)[^>]*>.*?<\/\1>/gs, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

describe('renderHtml', () => {
  it('tells its parts in the order in which a reader needs them', () => {
    const headings = [...page.matchAll(/<h2 id="[^"]*">([^<]*)<\/h2>/g)].map(([, heading]) => heading);
    expect(headings).toEqual([
      'Before you read on',
      'What to do next',
      'The ride at a glance',
      'To put before the jury',
      'To ask the rider about',
      'Worth knowing',
      'Checked and found fine',
      'What could not be checked, and why',
      'The data’s own story',
      'How each number was worked out',
      'Checksums, to run it again',
    ]);
    expect(page.indexOf('<h1>Refer. Put this before the jury.</h1>')).toBeLessThan(page.indexOf('<h2'));
  });

  it('gives a finding its claim, number, limits, explanations, what settles it, and where the limits come from', () => {
    const text = words(page.slice(page.indexOf('id="finding-1"'), page.indexOf('id="finding-2"'))).replaceAll(
      '\u00a0',
      ' ',
    );
    for (const part of [
      'In 4 sprints the primary reads 15.2 % above the second',
      '15.2 % (12.4 to 18.1 %); query at least 8 %; refer at least 12 %',
      'where at least 97 of 100 honest submissions lie',
      'It may be innocent',
      'What would settle it',
      '24:31–25:00',
      '1 in 12,000',
      'This does not say how likely this rider is to be honest.',
      '20,000 simulated honest submissions',
      '4 reach query (at most 1 in 1000)',
    ])
      expect(text).toContain(part);
  });

  it('asks once: a finding that another accounts for brings no explanations of its own', () => {
    const text = words(page.slice(page.indexOf('id="finding-2"'), page.indexOf('id="finding-3"')));
    expect(text).toContain('Accounted for by another finding: Sprints read higher');
    expect(text).not.toContain('It may be innocent');
  });

  it('lets in its one style and its one script by their hashes, and nothing else', () => {
    const [, policy] = /Content-Security-Policy" content="([^"]*)"/.exec(page)!;
    const hash = (element: string) => {
      const [, inside] = new RegExp(`<${element}>(.*?)</${element}>`, 's').exec(page)!;
      return `'sha256-${createHash('sha256').update(inside!).digest('base64')}'`;
    };
    expect(policy).toBe(
      `default-src 'none'; style-src ${hash('style')}; script-src ${hash('script')}; base-uri 'none'; form-action 'none'`,
    );
    expect(page).not.toMatch(/ style="|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
  });

  it('draws every chart once, and links to it from elsewhere', () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    for (const [, target] of page.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(target);
    expect(page.match(/<figure id="chart-/g)).toHaveLength(pair.charts.length);
  });

  it('is the same page every time', async () => {
    expect(await renderHtml(pair)).toBe(page);
  });

  it('is of a size that can be mailed: three hours on two meters in 400 kB', () => {
    expect(new TextEncoder().encode(page).length).toBeLessThan(400_000);
  });

  it('keeps statistics’ names to the part that says how numbers were worked out', () => {
    const before = words(page.slice(0, page.indexOf('id="story"')));
    expect(before).not.toMatch(
      /\b(standard deviation|variance|correlation|regression|likelihood|p-value|bootstrap|quantile)\b/i,
    );
  });
});
