// The elements in a real browser, on a shop's origin, with the built service on another.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { after, before, test } from 'node:test';
import { freePort, pause, startBetween, startBrowser, startService, startShop } from './harness.mjs';

const AXE = createRequire(import.meta.url).resolve('axe-core');
const PICTURES = 'target/screenshots';
const WIDE = { width: 1280, height: 1000 };
const PHONE = { width: 360, height: 780 };
const offer = JSON.parse(readFileSync('demo/offer.json', 'utf8'));
const guide = readFileSync('../../docs/booking-site.md', 'utf8');

let service;
let between;
let shop;
let stranger;
let secondPort;
let browser;

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
async function open({ at = shop, page = '/demo/', viewport = WIDE, locale = 'en-GB', change, state = 'answer' } = {}) {
  const tab = await browser.newPage({ viewport, locale });
  tab.hosts = new Set();
  tab.errors = [];
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

const element = (tab) => tab.locator(':is(footwell-booking, footwell-comparison, footwell-review)');
const settled = (tab, state) => tab.locator(`[data-state=${state}]`).waitFor();
const seen = (text) => text.replace(/[\u2068\u2069]/g, '');
const status = async (tab) => seen(await element(tab).getByRole('status').textContent());
const measurement = (tab, group, label) => tab.getByRole('group', { name: group }).getByLabel(label);
const unfold = (tab) => tab.getByText('Measurements of your vehicle').click();

/** Another offer in the same page, once its own has been shown. */
async function offering(tab, mutate) {
  const other = structuredClone(offer);
  mutate(other);
  await element(tab).evaluate((booking, data) => {
    booking.dataset.state = 'replaced';
    booking.data = data;
  }, other);
}

async function accessible(tab) {
  await tab.addScriptTag({ path: AXE }).catch(() => tab.evaluate(readFileSync(AXE, 'utf8')));
  const { violations, passes } = await tab.evaluate(() => window.axe.run());
  assert.ok(passes.length > 15, `${passes.length} rules passed`);
  assert.deepEqual(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]), []);
}

async function fits(tab) {
  const [content, window] = await tab.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  assert.ok(content <= window, `${content} px wide in ${window}`);
}

/** How many delays the drawing has, and how many of them stand on a dot or on one another. */
function delaysOf(tab) {
  return element(tab).evaluate(({ shadowRoot }) => {
    const boxes = (name) => [...shadowRoot.querySelectorAll(name)].map((one) => one.getBoundingClientRect());
    const [delays, dots] = [boxes('.drawing text'), boxes('.driver')];
    const meet = (a, b) => a !== b && a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
    return [delays.length, delays.filter((delay) => [...dots, ...delays].some((other) => meet(delay, other))).length];
  });
}

const picture = (tab, name) => tab.screenshot({ path: `${PICTURES}/${name}.png`, fullPage: true });

test('a customer sees what the service answers, and the page loads nothing from elsewhere', async () => {
  const tab = await open();
  const { plan, comparison } = await tab.evaluate(
    () =>
      new Promise((resolve) => {
        const booking = document.querySelector('footwell-booking');
        booking.addEventListener('footwell-result', ({ detail }) => resolve({ plan: detail.plan, comparison: detail.comparison }));
        booking.calculate();
      }),
  );
  const post = async (path, body) => {
    const headers = { 'Content-Type': 'application/json' };
    return (await fetch(service.address + path, { method: 'POST', headers, body: JSON.stringify(body) })).json();
  };
  const review = await post('/v1/plan-review', plan);
  const compared = await post('/v1/driver-comparison', comparison);
  const { level_change_db, price } = compared.result.totals;
  const shown = seen(await element(tab).evaluate((booking) => booking.shadowRoot.textContent));
  assert.ok(shown.includes(`Louder than now${level_change_db.toFixed(1)}\u202fdB`), shown);
  assert.ok(shown.includes(`€${price.toLocaleString('en', { minimumFractionDigits: 2 })}`));
  for (const { delay_ms } of review.result.channels) assert.ok(shown.includes(delay_ms.toFixed(2)), String(delay_ms));
  const cautions = new Set([...review.safety, ...compared.safety]);
  assert.ok(cautions.size > 3);
  for (const caution of cautions) assert.ok(await tab.getByText(caution).isVisible(), caution);
  const warnings = [...review.findings, ...compared.findings].filter(({ level }) => level === 'warning');
  assert.ok(warnings.length > 0);
  for (const { text } of warnings) assert.ok(await tab.getByText(text).isVisible(), text);
  assert.deepEqual([...tab.hosts].sort(), [shop.address, between.address].sort());
  assert.deepEqual(tab.errors, []);
  await accessible(tab);
  await tab.screenshot({ path: `${PICTURES}/guide.png` });
  await picture(tab, 'wide');
  await tab.close();
});

test('nothing stands beyond the edge of a phone', async () => {
  const tab = await open({ viewport: PHONE, change: (html) => html.replace('package="four"', 'package="bass"') });
  await fits(tab);
  const outside = await element(tab).evaluate((booking) =>
    [...booking.shadowRoot.querySelectorAll('td, th, dd, strong, label, button')]
      .filter((one) => one.scrollWidth > one.clientWidth + 1 || one.getBoundingClientRect().right > innerWidth)
      .map((one) => one.textContent),
  );
  assert.deepEqual(outside, []);
  await unfold(tab);
  await fits(tab);
  await accessible(tab);
  await picture(tab, 'phone');
  const long = 'Loudspeakers_and_amplifiers_for_all_doors_with_everything_that_belongs_to_them';
  await offering(tab, ({ vehicles, packages }) => {
    const { new_parts, additions, channels } = packages[2];
    vehicles[0].vehicle.name = packages[2].name = new_parts[0].name = additions[0].name = channels[0].name = long;
  });
  await settled(tab, 'answer');
  await fits(tab);
  const caption = await element(tab).getByRole('table', { name: /^Boot/ }).locator('caption').textContent();
  assert.equal(seen(caption), 'Boot1 × Subwoofer 25 cm in a closed box, where nothing was');
  await tab.close();
});

test('everything can be done from the keyboard', async () => {
  const tab = await open();
  const focused = () =>
    element(tab).evaluate(({ shadowRoot: { activeElement: one } }) => one && (one.labels?.[0] ?? one).textContent.trim());
  const next = async (name) => {
    for (let tries = 0; tries < 60; tries++) {
      await tab.keyboard.press('Tab');
      if ((await focused())?.startsWith(name)) return;
    }
    assert.fail(`Tab does not reach ${name}`);
  };
  const before = await status(tab);
  await next('Your vehicle');
  await next('All doors and an amplifier');
  await tab.keyboard.press('ArrowDown');
  await tab.getByText('Subwoofer 25 cm').first().waitFor();
  assert.match(await focused(), /^All doors, amplifiers and bass/);
  assert.notEqual(await status(tab), before);
  await next('Measurements');
  await tab.keyboard.press('Enter');
  await next('Length inside');
  await tab.keyboard.type('x');
  await tab.keyboard.press('Enter');
  await settled(tab, 'problem');
  assert.equal(await element(tab).evaluate((booking) => booking.shadowRoot.activeElement.className), 'faults');
  await next('Cabin, Length inside: Write a number such as 1.25.');
  await tab.keyboard.press('Enter');
  assert.match(await focused(), /^Length inside/);
  await tab.keyboard.press('Control+A');
  await tab.keyboard.type('2.4');
  await tab.keyboard.press('Enter');
  await settled(tab, 'answer');
  await next('Book this package');
  await tab.keyboard.press('Enter');
  assert.equal(
    await tab.locator('#booked').textContent(),
    'Thank you. We have noted “All doors, amplifiers and bass” for your Halmera Lumen, five-door.',
  );
  await tab.close();
});

test('levels and delays follow the seat, packages follow the vehicle', async () => {
  const tab = await open();
  const firstDelay = () => element(tab).locator('table.channels tbody tr').first().locator('td').nth(1).textContent();
  const driver = await firstDelay();
  await tab.getByLabel('Passenger').check();
  await tab.getByText('Levels at the seat: Passenger').waitFor();
  assert.notEqual(await firstDelay(), driver);
  await tab.getByLabel('Your vehicle').selectOption('Halmera Drift, van with two seats');
  await tab.getByText('factory 13 cm').first().waitFor({ state: 'detached' });
  assert.equal(await tab.getByRole('group', { name: 'Package' }).getByRole('radio').count(), 1);
  await tab.close();
});

test('what the service refuses stands at the field, wherever in the request it was', async () => {
  const tab = await open();
  await unfold(tab);
  await measurement(tab, 'Loudspeaker: Front doors, left', 'Up').fill('99');
  await measurement(tab, 'Factory part: factory 16 cm', 'Impedance').fill('0.1');
  await measurement(tab, 'Cabin', 'Length inside').fill('');
  await tab.getByRole('button', { name: 'Calculate again' }).click();
  await settled(tab, 'problem');
  for (const [group, label, fault] of [
    ['Loudspeaker: Front doors, left', 'Up', /^Must be a number from -20 to 20/],
    ['Factory part: factory 16 cm', 'Impedance', /^Must be a number from 0\.5/],
    ['Cabin', 'Length inside', /^Is required/],
  ]) {
    const input = measurement(tab, group, label);
    assert.equal(await input.getAttribute('aria-invalid'), 'true');
    const described = await input.evaluate((one) => one.getRootNode().getElementById(one.getAttribute('aria-describedby')).textContent);
    assert.match(described, fault);
  }
  assert.equal(await measurement(tab, 'Cabin', 'Road noise').getAttribute('aria-invalid'), 'false');
  assert.equal(await status(tab), 'Please check 3 entries');
  assert.equal(await tab.getByText('For your safety').count(), 0, 'no old result beside the faults');
  await accessible(tab);
  await picture(tab, 'faults');
  await tab.getByRole('button', { name: /^Factory part: factory 16 cm, Impedance/ }).click();
  await tab.keyboard.press('Control+A');
  await tab.keyboard.type('4');
  await measurement(tab, 'Loudspeaker: Front doors, left', 'Up').fill('0.5');
  await measurement(tab, 'Cabin', 'Length inside').fill('2.6');
  await tab.keyboard.press('Enter');
  await settled(tab, 'answer');
  assert.equal(await element(tab).locator('[aria-invalid=true]').count(), 0);
  await tab.close();
});

test('faults in the package are told as such', async () => {
  const tab = await open();
  await offering(tab, ({ packages }) => {
    packages[1].new_parts[0].rated_ohm = -4;
    packages[1].channels[0].network = 'front_left_woofer ||';
  });
  await settled(tab, 'problem');
  const faults = tab.getByRole('group', { name: /^Please check/ });
  assert.match(await faults.textContent(), /In the data of the package: .*\/new_parts\/0\/rated_ohm/);
  await tab.close();
});

test('German readers see and write German numbers', async () => {
  const tab = await open({ change: (html) => html.replace('lang="en"', 'lang="de"') });
  const shown = await element(tab).evaluate((booking) => booking.shadowRoot.textContent);
  assert.match(shown, /1\.046,50\s€/);
  assert.match(shown, /\+5,3\sdB/);
  const english = await tab.getByText('Loud sound damages hearing').evaluate((caution) => caution.closest('[lang]').lang);
  assert.equal(english, 'en', 'screen readers speak English sentences as English');
  await unfold(tab);
  const field = measurement(tab, 'Loudspeaker: Front doors, left', 'Forward');
  assert.equal(await field.inputValue(), '0,62');
  await field.fill('1.250');
  await tab.keyboard.press('Enter');
  await settled(tab, 'problem');
  assert.match(await status(tab), /Please check 1 entry/);
  assert.ok(await tab.getByText('Write a number such as 1,25.').first().isVisible());
  await field.fill('0,70');
  await tab.keyboard.press('Enter');
  await settled(tab, 'answer');
  await accessible(tab);
  await picture(tab, 'german');
  await tab.close();
});

test('what is booked is what is entered and answered, and nothing else', async () => {
  const tab = await open();
  await element(tab).evaluate((booking) => {
    window.booked = [];
    booking.addEventListener('footwell-book', ({ detail }) => window.booked.push(detail.plan.vehicle.cabin_length_m));
  });
  await unfold(tab);
  const field = measurement(tab, 'Cabin', 'Length inside');
  const book = element(tab).locator('button.book');
  await field.fill('3.1');
  await book.evaluate((button) => button.click());
  assert.deepEqual(await tab.evaluate(() => window.booked), [], 'the answer is out of date as soon as a field is');
  assert.equal(await element(tab).locator('.result').evaluate((result) => result.inert), true);
  await settled(tab, 'answer');
  await book.click();
  assert.deepEqual(await tab.evaluate(() => window.booked), [3.1]);
  await field.fill('abc');
  await settled(tab, 'problem');
  assert.equal(await field.getAttribute('aria-invalid'), 'true');
  assert.equal(await field.evaluate((one) => one === one.getRootNode().activeElement), true, 'who types stays there');
  assert.equal(await book.count(), 0);
  await tab.close();
});

test('choice and measurements outlive a move of the element and a new timeout', async () => {
  const tab = await open();
  await tab.getByLabel('New voices in front').check();
  await unfold(tab);
  const field = measurement(tab, 'Cabin', 'Length inside');
  await field.fill('2.9');
  for (const change of [
    (booking) => document.querySelector('main').append(booking),
    (booking) => booking.setAttribute('timeout', '20'),
    (booking) => booking.setAttribute('package', booking.getAttribute('package')),
  ]) {
    await element(tab).evaluate(change);
    await settled(tab, 'answer');
    assert.equal(await field.inputValue(), '2.9');
    assert.ok(await tab.getByLabel('New voices in front').isChecked());
  }
  await element(tab).evaluate((booking) => booking.setAttribute('package', 'bass'));
  assert.ok(await tab.getByLabel('All doors, amplifiers and bass').isChecked());
  await unfold(tab);
  assert.equal(await field.inputValue(), '2.6');
  await tab.close();
});

test('while the service calculates, the element says so', async () => {
  const waiting = Promise.withResolvers?.() ?? deferred();
  between.fault = () => waiting.promise;
  const tab = await open({ state: 'loading' });
  assert.equal(await status(tab), 'Calculating …');
  assert.equal(await element(tab).locator('[aria-busy=true]').count(), 1);
  await accessible(tab);
  await picture(tab, 'loading');
  waiting.resolve(false);
  await settled(tab, 'answer');
  assert.equal(await element(tab).locator('[aria-busy=true]').count(), 0);
  between.fault = async () => false;
  await tab.close();
});

function deferred() {
  const made = {};
  made.promise = new Promise((resolve) => (made.resolve = resolve));
  return made;
}

test('a newer choice aborts the older question, whose answer never shows', async () => {
  const tab = await open();
  const aborted = [];
  tab.on('requestfailed', (request) => aborted.push(request.failure().errorText));
  between.fault = async () => (await pause(900), false);
  await tab.getByLabel('All doors, amplifiers and bass').check();
  await pause(500);
  between.fault = async () => false;
  await tab.getByLabel('New voices in front').check();
  await tab.getByText('€410.50', { exact: true }).waitFor();
  await pause(1000);
  assert.equal(await tab.getByText('Subwoofer 25 cm').count(), 0);
  assert.deepEqual(aborted, ['net::ERR_ABORTED']);
  await tab.close();
});

test('a busy service is asked again when it says, and then by the customer', async () => {
  let times = [];
  const busy = (status, most) => async (answer, { headers, url }) => {
    if (!url.endsWith('plan-review') || times.length >= most) return false;
    times.push(Date.now());
    const cors = { 'Access-Control-Allow-Origin': headers.origin, 'Access-Control-Expose-Headers': 'Retry-After' };
    answer.writeHead(status, { ...cors, 'Retry-After': '1', 'Content-Type': 'application/problem+json' });
    answer.end(JSON.stringify({ type: 'about:blank', title: 'Busy', status, detail: 'Try again.' }));
    return true;
  };
  between.fault = busy(503, 2);
  const tab = await open({ state: 'waiting' });
  assert.equal(await status(tab), 'The calculation service is busy. Asking again in 1 s.');
  await accessible(tab);
  await settled(tab, 'answer');
  assert.equal(times.length, 2);
  assert.ok(times[1] - times[0] >= 990, `${times[1] - times[0]} ms`);
  times = [];
  between.fault = busy(429, Infinity);
  await tab.getByLabel('New voices in front').check();
  await settled(tab, 'busy');
  assert.equal(times.length, 3);
  assert.equal(await tab.getByText('For your safety').count(), 0);
  between.fault = async () => false;
  await tab.getByRole('button', { name: 'Try again' }).click();
  await settled(tab, 'answer');
  await tab.close();
});

test('when the service is down the customer is told, and may try again', async () => {
  const port = await freePort();
  const down = `http://localhost:${port}`;
  const elsewhere = await startShop(secondPort, down);
  const tab = await open({ at: elsewhere, state: 'silent' });
  assert.equal(await status(tab), 'The calculation service cannot be reached. Check your connection, then try again.');
  await accessible(tab);
  await picture(tab, 'down');
  const back = await startBetween(service.address, port);
  await tab.getByRole('button', { name: 'Try again' }).click();
  await settled(tab, 'answer');
  back.stop();
  elsewhere.stop();
  await tab.close();
});

test('a page whose origin is not on the list is refused, and says so', async () => {
  const tab = await open({ at: stranger, state: 'refused' });
  assert.equal(await status(tab), 'The calculation service gives this page no answer. Please try again later, or tell the shop.');
  assert.ok(await tab.getByText(`It can be reached, but ${stranger.address} is not on its list, or it is out of order.`).isVisible());
  assert.equal(await tab.getByText('For your safety').count(), 0);
  await accessible(tab);
  await picture(tab, 'refused');
  await tab.close();
});

test('an answer that does not come in time is given up', async () => {
  between.fault = async () => (await pause(3000), false);
  const tab = await open({ change: (html) => html.replace('package="four"', 'timeout="1"'), state: 'late' });
  assert.equal(await status(tab), 'The calculation took too long. Please try again.');
  between.fault = async () => false;
  await tab.close();
});

test('an answer of something else is no answer', async () => {
  between.fault = async (answer, { headers }) => {
    answer.writeHead(200, { 'Access-Control-Allow-Origin': headers.origin, 'Content-Type': 'text/html' });
    answer.end('<h1>Welcome</h1>');
    return true;
  };
  const tab = await open({ state: 'problem' });
  assert.equal(await status(tab), 'The calculation service could not work with this.');
  between.fault = async (answer, { headers }) => {
    answer.writeHead(200, { 'Access-Control-Allow-Origin': headers.origin, 'Content-Type': 'application/json' });
    answer.end('{}');
    return true;
  };
  await element(tab).evaluate((booking) => booking.calculate());
  await settled(tab, 'problem');
  assert.equal(await tab.getByRole('button', { name: 'Book this package' }).count(), 0);
  between.fault = async () => false;
  await tab.close();
});

test('mistakes in an offer are told, whatever the element was doing, and never answered', async () => {
  const tab = await open();
  const unusable = async (mutate, detail) => {
    await offering(tab, mutate);
    await settled(tab, 'unusable');
    assert.equal(await status(tab), `The shop’s data cannot be used: ${detail}`);
    assert.equal(await element(tab).locator('.result').textContent(), '');
  };
  await unusable(({ packages }) => delete packages[1].channels, 'The package four has no channels.');
  await unusable(({ packages }) => delete packages[1].drivers, 'The package four has no drivers.');
  await offering(tab, ({ packages }) => (packages[1].drivers[0].part = 'woofer_17'));
  await settled(tab, 'problem');
  assert.match(await tab.getByRole('group', { name: /^Please check/ }).textContent(), /In the data of the package: .*\/drivers\/0\/part/);
  await offering(tab, ({ vehicles }) => (vehicles[1].places = []));
  await settled(tab, 'answer');
  await tab.getByLabel('Your vehicle').selectOption('Halmera Drift, van with two seats');
  await settled(tab, 'unusable');
  assert.equal(await status(tab), 'The shop’s data cannot be used: It has no package for Halmera Drift, van with two seats.');
  await tab.getByLabel('Your vehicle').selectOption('Halmera Lumen, five-door');
  await settled(tab, 'answer');
  between.fault = async () => (await pause(700), false);
  await offering(tab, () => {});
  await pause(200);
  await unusable((other) => (other.vehicles = []), 'It has no vehicles.');
  between.fault = async () => false;
  await pause(1500);
  assert.equal(await element(tab).getAttribute('data-state'), 'unusable', 'the older question is not answered any more');
  assert.equal(await tab.getByLabel('Your vehicle').count(), 0);
  await accessible(tab);
  await element(tab).evaluate((booking) => (booking.data = undefined));
  assert.equal(await element(tab).getAttribute('data-state'), null);
  assert.ok(!(await tab.getByText('The shop’s data').last().isVisible()));
  assert.deepEqual(tab.errors, []);
  await tab.close();
});

test('a language that is none is passed over', async () => {
  const tab = await open({ change: (html) => html.replace('lang="en"', 'lang="en_US"') });
  assert.ok(await tab.getByText('€1,046.50', { exact: true }).isVisible());
  await tab.close();
});

test('data and words may be there before the element is', async () => {
  const given = `{ data: ${JSON.stringify(offer)}, texts: { book: 'Reserve' } }`;
  shop.pages['/demo/early.js'] = `Object.assign(document.querySelector('footwell-booking'), ${given});`;
  const early = (html) => html.replace(/<script type="module" src="shop.js">.*/, '').replace('</body>', '<script src="early.js"></script></body>');
  const tab = await open({ change: early });
  assert.ok(await tab.getByRole('button', { name: 'Reserve' }).isVisible());
  assert.equal(await element(tab).evaluate((booking) => booking.data.vehicles.length), offer.vehicles.length);
  await tab.close();
});

test('an element that is hidden is not seen', async () => {
  const tab = await open();
  await element(tab).evaluate((booking) => (booking.hidden = true));
  assert.ok(!(await element(tab).isVisible()));
  await tab.close();
});

test('quieter is said as it is shown, without a second minus', async () => {
  const tab = await open();
  await offering(tab, ({ packages }) => packages[1].new_parts.forEach(({ sensitivity }) => (sensitivity.level_db_spl = 75)));
  await settled(tab, 'answer');
  const [, said] = /(Quieter than now: \d+\.\d\u202fdB),/.exec(await status(tab));
  const figures = seen(await element(tab).locator('.figures').textContent());
  assert.ok(figures.includes(said.replace(': ', '')), figures);
  await tab.close();
});

test('power of one driver stands beside power of one, in the comparison as at the amplifier', async () => {
  const tab = await open({ change: (html) => html.replace('package="four"', 'package="front"') });
  const doors = element(tab).getByRole('table', { name: /^Front doors/ });
  const row = async (table, name) => seen((await table.getByRole('row', { name }).locator('td').allTextContents()).join('|'));
  assert.match(await row(doors, /^Power it bears/), /^20\u202fW\|80\u202fW\|\+6\.0/);
  assert.match(await row(doors, /^Power it gets/), /^16\u202fW\|16\u202fW\|$/);
  assert.match(await row(doors, /^Mass/), /^960\u202fg\|2\.4\u202fkg/);
  const heads = await doors.locator('thead th, th.together').allTextContents();
  assert.deepEqual(heads.map(seen), ['Each one', 'Before', 'After', 'Change', '2 together']);
  const channels = element(tab).getByRole('table', { name: 'Channels' });
  assert.match(await row(channels, /^Front left/), /\|16$/);
  await unfold(tab);
  const voltage = measurement(tab, 'Cabin', 'Factory radio, clean output');
  await voltage.fill('10');
  await settled(tab, 'answer');
  assert.match(await row(doors, /^Power it gets/), /^25\u202fW\|25\u202fW\|$/);
  assert.match(await row(channels, /^Front left/), /\|25$/, 'the radio of the plan is the same');
  await voltage.fill('');
  await settled(tab, 'problem');
  assert.equal(await status(tab), 'Please check 1 entry');
  await tab.close();
});

const arabic = {
  lang: 'ar', vehicle: 'مركبتك', package: 'الباقة', level: 'المستوى عند المقعد', louder: 'أعلى من الآن', weight: 'الوزن', price: 'السعر',
  comparison: 'قبل وبعد', before: 'قبل', after: 'بعد', change: 'الفرق', each: 'كل واحد', together: '{count} معًا', replaced: '{count} × {before} ← {count} × {after}',
  largestLevel: 'الأعلى عند متر',
  bears: 'القدرة المحتملة', mass: 'الكتلة', channels: 'القنوات', channel: 'القناة', delay: 'التأخير', doors: '{mass} منها في الأبواب',
  measurements: 'قياسات مركبتك', cabin: 'المقصورة', cabinLength: 'الطول من الداخل', book: 'احجز',
};

test('Arabic is written from right to left, in its own digits', async () => {
  const tab = await open({ change: (html) => html.replace('lang="en"', 'lang="ar-EG" dir="rtl"') });
  await element(tab).evaluate((booking, texts) => {
    booking.dataset.state = 'replaced';
    booking.texts = texts;
  }, arabic);
  await settled(tab, 'answer');
  const { text, gap, unitAfter } = await element(tab).evaluate(({ shadowRoot }) => {
    const box = (node, start = 0, end = node.length) => {
      const range = document.createRange();
      range.setStart(node, start);
      range.setEnd(node, end);
      return range.getBoundingClientRect();
    };
    const [label, value] = [...shadowRoot.querySelector('table.position tbody tr').cells].map(({ firstChild }) => firstChild);
    return {
      text: value.data,
      gap: box(label).left - box(value).right,
      unitAfter: box(value, value.length - 3, value.length - 1).left > box(value, 1, 3).left,
    };
  });
  assert.match(seen(text), /^[٠-٩]+٫[٠-٩]\u202fdB$/);
  assert.ok(gap >= 4, `${gap} px between label and value`);
  assert.ok(unitAfter, 'the unit stands after the number');
  assert.deepEqual(await delaysOf(tab), [4, 0], 'delays beside the dots');
  await fits(tab);
  await accessible(tab);
  await picture(tab, 'arabic');
  await tab.getByText(arabic.measurements).click();
  const field = measurement(tab, arabic.cabin, arabic.cabinLength);
  assert.equal(await field.inputValue(), '٢٫٦');
  for (const text of ['٢٫٧', '2.8']) {
    await field.fill(text);
    await settled(tab, 'answer');
  }
  assert.equal(await field.getAttribute('aria-invalid'), 'false');
  await tab.close();
});

test('a stop is shown first and changes what the button offers', async () => {
  const tab = await open();
  await offering(tab, ({ packages }) => packages[1].amplifiers[0].outputs.forEach((output) => (output.minimum_ohm = 8)));
  await settled(tab, 'answer');
  assert.ok(await tab.getByRole('heading', { name: 'Not to be fitted like this' }).isVisible());
  const reasons = element(tab).locator('section.findings.stop');
  assert.ok(await reasons.isVisible());
  assert.match(await reasons.textContent(), /8 ohm/);
  assert.equal(await tab.getByRole('button', { name: 'Book this package' }).count(), 0);
  assert.ok(await tab.getByRole('button', { name: 'Ask the workshop' }).isVisible());
  await accessible(tab);
  await picture(tab, 'stop');
  await tab.close();
});

test('data that cannot be used are told, and names are never read as markup', async () => {
  const tab = await open();
  await offering(tab, ({ packages }) => (packages[1].drivers[0].place = 'roof'));
  await tab.getByRole('group', { name: 'Package' }).waitFor();
  await settled(tab, 'answer');
  assert.equal(await tab.getByRole('group', { name: 'Package' }).getByRole('radio').count(), 2, 'no place, no package');
  await offering(tab, (other) => (other.vehicles = []));
  await tab.getByText('The shop’s data cannot be used: It has no vehicles.').last().waitFor();
  await offering(tab, ({ packages }) => (packages[0].name = packages[1].new_parts[0].name = '<img src=x onerror=alert(1)>'));
  await settled(tab, 'answer');
  assert.equal(await element(tab).locator('img').count(), 0);
  await tab.close();
});

test('a preset vehicle and package leave nothing to choose', async () => {
  const tab = await open({ change: (html) => html.replace('package="four"', 'preset vehicle="lumen" package="bass"') });
  assert.ok(await tab.getByText('€1,810.50', { exact: true }).isVisible());
  assert.equal(await tab.getByRole('radio').count(), 0);
  assert.ok(!(await tab.getByLabel('Your vehicle').isVisible()));
  await tab.close();
});

test('the shop styles what it sees: properties, parts, slots and words', async () => {
  const tab = await open();
  await element(tab).evaluate((booking) => {
    const style = new CSSStyleSheet();
    style.replaceSync('footwell-booking { --footwell-accent: rgb(10, 20, 130); } footwell-booking::part(verdict) { border-style: dotted; }');
    document.adoptedStyleSheets = [style];
    booking.dataset.state = 'replaced';
    booking.texts = { book: 'Reserve a day' };
  });
  await settled(tab, 'answer');
  const book = tab.getByRole('button', { name: 'Reserve a day' });
  assert.equal(await book.evaluate((one) => getComputedStyle(one).backgroundColor), 'rgb(10, 20, 130)');
  assert.equal(await element(tab).locator('.verdict').evaluate((one) => getComputedStyle(one).borderStyle), 'dotted');
  assert.ok(await tab.getByRole('heading', { name: 'Hear your vehicle anew' }).isVisible());
  await tab.close();
});

test('a review alone shows a plan', async () => {
  const tab = await open();
  const plan = readFileSync('../../docs/examples/camper-van.json', 'utf8');
  await tab.evaluate(([data, address]) => {
    const review = document.createElement('footwell-review');
    review.setAttribute('service', address);
    review.setAttribute('currency', 'EUR');
    review.data = JSON.parse(data);
    const booking = document.querySelector('footwell-booking');
    review.append(...booking.children);
    booking.replaceWith(review);
  }, [plan, between.address]);
  await settled(tab, 'answer');
  assert.ok(await tab.getByText('€1,600.00', { exact: true }).isVisible());
  assert.equal(await element(tab).locator('table.channels tbody tr').count(), 6);
  assert.ok(await tab.getByRole('heading', { name: 'For your safety' }).isVisible());
  assert.deepEqual(await delaysOf(tab), [6, 0]);
  assert.ok(await tab.getByText('Subwoofer 25 cm, two 4 ohm voice coils, Five-channel amplifier, Two-channel bass amplifier weigh 2 kg').isVisible());
  await accessible(tab);
  await picture(tab, 'review');
  await element(tab).evaluate((review) => review.setAttribute('currency', 'SEK'));
  await tab.getByText('SEK\u00a01,600.00', { exact: true }).waitFor();
  await element(tab).evaluate((review) => review.setAttribute('currency', 'EURO'));
  await settled(tab, 'unusable');
  assert.match(await status(tab), /^The shop’s data cannot be used: .*EURO/);
  await tab.close();
});

test('the page of the guide works as it is printed', async () => {
  const tab = await open({ page: '/docs.html', viewport: PHONE });
  assert.ok(await tab.getByText('€118.00').first().isVisible());
  assert.ok(await tab.getByRole('heading', { name: 'New front doors' }).isVisible());
  await fits(tab);
  await accessible(tab);
  await tab.close();
});

test('the packed package has what the guide says: elements and client are typed, and the client asks', () => {
  const run = (command, options) => execFileSync('sh', ['-c', command], { encoding: 'utf8', ...options });
  const project = 'target/shop';
  const installed = `${project}/node_modules/@footwell/booking`;
  const packed = run('npm pack --silent --pack-destination target').trim().split('\n').at(-1);
  assert.match(guide, new RegExp(`npm pack\nnpm install .*/${packed}\n`));
  run(`rm -rf ${project} && mkdir -p ${installed} && tar -xzf target/${packed} -C ${installed} --strip-components=1`);
  for (const file of ['README.md', 'LICENSE', 'dist/index.js', 'dist/offer.d.ts', 'dist/footwell-booking.js']) {
    assert.ok(existsSync(`${installed}/${file}`), file);
  }
  const [elements, client] = [...guide.matchAll(/```ts\n([^]*?)```/g)].map(([, code]) => code);
  const wrong = (code) => `// @ts-expect-error\n${code}\n`;
  writeFileSync(`${project}/package.json`, '{"type": "module"}');
  writeFileSync(
    `${project}/elements.ts`,
    elements +
      "booking.addEventListener('footwell-result', ({ detail }) => console.log(detail.plan.seats));\n" +
      wrong("booking.addEventListener('footwell-book', ({ detail }) => detail.pakage);") +
      wrong('booking.data = { vehicles: [] };'),
  );
  writeFileSync(`${project}/client.ts`, client + wrong("void footwell('').POST('/v1/wiring-load', { body: { netwrok: '4' } });"));
  run('../../node_modules/.bin/tsc --noEmit --strict --module nodenext --target es2022 --skipLibCheck elements.ts client.ts', { cwd: project });
  writeFileSync(`${project}/client.js`, client.replace('http://localhost:8080', service.address));
  assert.equal(run('node client.js', { cwd: project }), '4\n');
});

test('the commands of the guide are those of the package, and the demo is where it says', async () => {
  const [, commands] = guide.match(/```sh\n([^]*?)```/);
  assert.equal(commands, 'cd clients/browser\nnpm ci\nnpm run build\nnpm run demo\n');
  assert.match(guide, /http:\/\/localhost:8090\/demo\//);
  assert.match(readFileSync('demo/serve.mjs', 'utf8'), /PORT = '8090'/);
  const port = await freePort();
  const demo = spawn('npm', ['run', 'demo', '--silent'], { env: { ...process.env, PORT: String(port) }, detached: true });
  const [line] = await once(demo.stdout, 'data');
  const page = await (await fetch(String(line).trim())).text();
  process.kill(-demo.pid);
  assert.equal(String(line), `http://localhost:${port}/demo/\n`);
  assert.match(page, /<footwell-booking service="http:\/\/localhost:8080"/);
});
