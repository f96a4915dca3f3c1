import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeFit } from '../make/fit-writer.ts';
import { drawSubmission } from '../make/index.ts';
import { startBrowser } from './browser.ts';

const { primary, seconds, rider, race } = drawSubmission('in a page', { kind: 'time trial', minutes: 20 });

/** Nothing but the page's own files: no other place, nothing compiled while it runs. */
const policy = "default-src 'none'; script-src 'self'; connect-src 'self'";

const script = `
import { audit, renderHtml, renderJson, ruleSet } from './index.js';
const bytes = async (name) => new Uint8Array(await (await fetch(name)).arrayBuffer());
const facts = await (await fetch('facts.json')).json();
const submission = {
  primary: { name: 'primary.fit', bytes: await bytes('primary.fit') },
  seconds: [{ name: 'second.fit', bytes: await bytes('second.fit') }],
  ...facts, profile: null, otherInputs: [],
};
const report = await audit(submission, await ruleSet());
globalThis.result = { json: renderJson(report), html: await renderHtml(report) };
document.documentElement.dataset.done = '';
`;

const files: Readonly<Record<string, { type: string; body: string | Uint8Array }>> = {
  '/': { type: 'text/html', body: '<!doctype html><script type="module" src="page.js"></script>' },
  '/page.js': { type: 'text/javascript', body: script },
  '/index.js': { type: 'text/javascript', body: readFileSync('dist/index.js', 'utf8') },
  '/facts.json': { type: 'application/json', body: JSON.stringify({ rider, race }) },
  '/primary.fit': { type: 'application/octet-stream', body: writeFit(primary) },
  '/second.fit': { type: 'application/octet-stream', body: writeFit(seconds[0]!) },
};

let server: Server;
let browser: Browser | null;

beforeAll(async () => {
  server = createServer((request, response) => {
    const file = files[request.url ?? ''];
    response.writeHead(file === undefined ? 404 : 200, {
      'content-type': file?.type ?? 'text/plain',
      'content-security-policy': policy,
    });
    response.end(file?.body ?? '');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  browser = await startBrowser();
});

afterAll(async () => {
  await browser?.close();
  server.close();
});

describe('the library in a page', () => {
  it('gives the same bytes as in Node, under a strict content policy', async (context) => {
    if (browser === null) return context.skip();
    const page = await browser.newPage();
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    page.on('requestfailed', (request) => said.push(request.url()));
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    // Waiting for a mark asks nothing to be compiled in the page, which its policy forbids.
    await page.waitForSelector('html[data-done]', { state: 'attached', timeout: 15_000 });
    const inPage = (await page.evaluate('globalThis.result')) as { json: string; html: string };
    // A browser asks for an icon that no page names.
    expect(said.filter((line) => !/favicon|404/.test(line))).toEqual([]);

    const { audit, renderHtml, renderJson, ruleSet } = await import('../../src/index.ts');
    const submission = {
      primary: { name: 'primary.fit', bytes: writeFit(primary) },
      seconds: [{ name: 'second.fit', bytes: writeFit(seconds[0]!) }],
      rider,
      race,
      profile: null,
      otherInputs: [],
    };
    const report = await audit(submission, await ruleSet());
    expect(difference(inPage.json, renderJson(report))).toBeNull();
    expect(difference(inPage.html, await renderHtml(report))).toBeNull();
  });
});

/** Where two long texts part, in a few characters; null when they do not. */
function difference(a: string, b: string): { readonly a: string; readonly b: string } | null {
  if (a === b) return null;
  const at = [...a].findIndex((character, i) => character !== b[i]);
  const around = (text: string) => text.slice(Math.max(0, at - 80), at + 80);
  return { a: around(a), b: around(b) };
}
