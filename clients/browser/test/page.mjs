// The demo page in a real browser, on a shop's origin, with the built service on another.
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before } from 'node:test';
import { freePort, startBetween, startBrowser, startService, startShop } from './harness.mjs';

const AXE = createRequire(import.meta.url).resolve('axe-core');
export const PICTURES = 'target/screenshots';
export const WIDE = { width: 1280, height: 1000 };
export const PHONE = { width: 360, height: 780 };
export const offer = JSON.parse(readFileSync('demo/offer.json', 'utf8'));
export const guide = readFileSync('../../docs/booking-site.md', 'utf8');

export let service;
export let between;
export let shop;
export let stranger;
export let secondPort;
export let browser;

before(async () => {
  mkdirSync(PICTURES, { recursive: true });
  const port = await freePort();
  secondPort = await freePort();
  service = await startService([`http://localhost:${port}`, `http://localhost:${secondPort}`]);
  between = await startBetween(service.address);
  shop = await startShop(port, between.address);
  shop.pages['/docs.html'] = guide.match(/```html\n([^]*?)```/)[1];
  stranger = await startShop(await freePort(), service.address);
  browser = await startBrowser();
});

after(async () => {
  await browser?.close();
  for (const started of [stranger, shop, between, service]) started?.stop();
});

/** The demo page with whatever a test changes about it before the element asks. */
export async function open({ at = shop, page = '/demo/', viewport = WIDE, locale = 'en-GB', change, state = 'answer' } = {}) {
  const tab = await browser.newPage({ viewport, locale });
  tab.hosts = new Set();
  tab.errors = [];
  tab.console = [];
  tab.on('console', (message) => tab.console.push(message.text()));
  tab.on('request', (request) => tab.hosts.add(new URL(request.url()).origin));
  tab.on('pageerror', (error) => tab.errors.push(String(error)));
  if (change) {
    page = '/demo/changed.html';
    at.pages[page] = change(readFileSync('demo/index.html', 'utf8'));
  }
  await tab.goto(at.address + page);
  await settled(tab, state);
  return tab;
}

export const element = (tab) => tab.locator(':is(footwell-booking, footwell-comparison, footwell-packages, footwell-review)');
export const settled = (tab, state) => tab.locator(`[data-state=${state}]`).waitFor();
export const seen = (text) => text.replace(/[\u2068\u2069]/g, '');
export const status = async (tab) => seen(await element(tab).getByRole('status').textContent());
export const measurement = (tab, group, label) => tab.getByRole('group', { name: group }).getByLabel(label);
export const unfold = (tab, name = 'Distances in your vehicle') => tab.getByText(name).click();
export const unfoldParts = (tab) => unfold(tab, /^For those who have measured/);

/** Another offer in the same page, once its own has been shown. */
export async function offering(tab, mutate) {
  const other = structuredClone(offer);
  mutate(other);
  await element(tab).evaluate((booking, data) => {
    booking.dataset.state = 'replaced';
    booking.data = data;
  }, other);
}

export async function accessible(tab) {
  await tab.addScriptTag({ path: AXE }).catch(() => tab.evaluate(readFileSync(AXE, 'utf8')));
  for (const colorScheme of ['dark', 'light']) {
    await tab.emulateMedia({ colorScheme });
    const { violations, passes } = await tab.evaluate(() => window.axe.run({ rules: { 'target-size': { enabled: true } } }));
    assert.ok(passes.length > 15, `${passes.length} rules passed`);
    assert.deepEqual(violations.map(({ id, nodes }) => [colorScheme, id, nodes.map(({ html }) => html)]), []);
  }
}

export async function fits(tab) {
  const [content, window] = await tab.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  assert.ok(content <= window, `${content} px wide in ${window}`);
}

/** Words, numbers and units that are cut in two without a hyphen. */
export function brokenWords(tab) {
  return element(tab).evaluate(({ shadowRoot }) => {
    const walker = document.createTreeWalker(shadowRoot, NodeFilter.SHOW_TEXT);
    const broken = [];
    for (let text; (text = walker.nextNode()); ) {
      // A hyphen and a slash are places to end a line at; so is the space that is not of a number.
      for (const { 0: word, index } of text.data.matchAll(/[^ \n\t\-–/]+/g)) {
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top / 4)));
        if (lines.size > 1) broken.push(word);
      }
    }
    return broken;
  });
}

/** How many delays the drawing has, and how many of them stand on a dot or on one another. */
export function delaysOf(tab) {
  return element(tab).evaluate(({ shadowRoot }) => {
    const boxes = (name) => [...shadowRoot.querySelectorAll(name)].map((one) => one.getBoundingClientRect());
    const [delays, dots] = [boxes('.drawing text'), boxes('.driver')];
    const meet = (a, b) => a !== b && a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
    return [delays.length, delays.filter((delay) => [...dots, ...delays].some((other) => meet(delay, other))).length];
  });
}

export const picture = (tab, name) => tab.screenshot({ path: `${PICTURES}/${name}.png`, fullPage: true });
