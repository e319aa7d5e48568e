// What the elements say while they wait, when something fails, and of mistakes in what they are given.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { freePort, pause, startBetween, startShop } from './harness.mjs';
import {
  offer,
  service,
  between,
  shop,
  stranger,
  secondPort,
  open,
  element,
  settled,
  status,
  offering,
  accessible,
  picture,
} from './page.mjs';

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
  await element(tab).locator('.figures').getByText('410.50 EUR').waitFor();
  await pause(1000);
  assert.equal(await tab.getByText('Subwoofer 25 cm').count(), 0);
  assert.deepEqual(aborted, ['net::ERR_ABORTED']);
  await tab.close();
});

test('a busy service is asked again when it says, and then by the customer', async () => {
  let times = [];
  const busy = (status, most) => async (answer, { headers, url }) => {
    if (!url.includes('plan-review') || times.length >= most) return false;
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
    assert.equal(await status(tab), 'The shop’s data cannot be used. Please tell the shop.');
    assert.ok(tab.console.some((line) => line.includes(detail)), `${detail} in ${tab.console}`);
    assert.equal(await element(tab).locator('.result').textContent(), '');
  };
  await unusable(({ packages }) => delete packages[1].channels, 'The package four has no channels.');
  await unusable(({ packages }) => delete packages[1].drivers, 'The package four has no drivers.');
  await offering(tab, ({ packages }) => (packages[1].drivers[0].part = 'woofer_17'));
  await settled(tab, 'problem');
  assert.ok(tab.console.some((line) => line.includes('package:/drivers/0/part') && line.includes('woofer_17')));
  await offering(tab, ({ vehicles }) => (vehicles[1].places = []));
  await settled(tab, 'answer');
  await tab.getByLabel('Your vehicle').selectOption('Halmera Drift, van with two seats');
  await settled(tab, 'unusable');
  assert.equal(await status(tab), 'Nothing is offered for Halmera Drift, van with two seats yet.');
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
  assert.ok(await element(tab).locator('.figures').getByText('1,046.50 EUR').isVisible());
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
