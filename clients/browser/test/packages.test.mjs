// The packages that were found, in a real browser with the built service: what is shown, and what choosing one tells the shop.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { PHONE, WIDE, accessible, element, fits, open, picture, seen, service, settled, status } from './page.mjs';

const PAGE = '/demo/packages.html';
const example = (name) => JSON.parse(readFileSync(`../../docs/examples/${name}.json`, 'utf8'));
const question = (more = {}) => ({ plan: example('camper-van'), ...example('camper-van-offer'), ...more });

async function asked(calculation, body) {
  const answer = await fetch(`${service.address}/v1/${calculation}`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
  });
  return answer.json();
}

/** The same page with another question. */
async function asking(tab, data, state) {
  await element(tab).evaluate((packages, data) => {
    packages.dataset.state = 'replaced';
    packages.data = data;
  }, data);
  await settled(tab, state);
}

const cards = (tab) => element(tab).getByRole('article');

test('every package is offered with what the service says of it', async () => {
  const { result } = await asked('package-options', question());
  const tab = await open({ page: PAGE });
  assert.ok(result.packages.length > 3);
  assert.equal(await cards(tab).count(), result.packages.length);
  assert.equal(await status(tab), `${result.packages.length} packages fit`);
  for (const [index, one] of result.packages.entries()) {
    const text = seen(await cards(tab).nth(index).innerText());
    const money = `${one.price.toLocaleString('en', { minimumFractionDigits: 2 })}\u00a0EUR`;
    for (const said of [`Package ${index + 1}`, money, `${one.level_db_spl.toFixed(1)}\u202fdB`, `${Number(one.lowest_hz.toPrecision(3))}\u202fHz`, `+${Number((one.mass_change_g / 1000).toPrecision(3))}\u202fkg`, 'It fits']) {
      assert.ok(text.includes(said), `${said} in ${text}`);
    }
    assert.equal(await cards(tab).nth(index).getByRole('listitem').count(), one.slots.length + 1, 'the slots and the amplifier');
  }
  assert.ok(await element(tab).getByText('Loud sound damages hearing').isVisible());
  assert.deepEqual(tab.errors, []);
  assert.equal(tab.hosts.size, 2, 'the shop and the service');
  await tab.close();
});

test('choosing one tells the shop its plan, and the plan reviews as it was shown', async () => {
  const tab = await open({ page: PAGE });
  await element(tab).evaluate((packages) => {
    window.booked = [];
    packages.addEventListener('footwell-book', ({ detail }) => window.booked.push(detail));
  });
  await cards(tab).nth(1).getByRole('button', { name: 'Book this package' }).click();
  const [booked, ...more] = await tab.evaluate(() => window.booked);
  assert.deepEqual(more, []);
  const review = await asked('plan-review', booked.plan);
  assert.equal(review.verdict, booked.verdict);
  assert.equal(review.result.level_db_spl, booked.package.level_db_spl);
  assert.equal(review.result.price, booked.package.price);
  assert.ok(await tab.getByText(`We have noted ${booked.plan.drivers.length} loudspeakers`).isVisible());
  await tab.close();
});

test('wishes that nothing meets are a sentence, and nothing can be booked', async () => {
  const tab = await open({ page: PAGE });
  await asking(tab, question({ wishes: { budget: 1260, level_db_spl: 113, lowest_hz: 60 } }), 'answer');
  assert.equal(await status(tab), 'No package of this offer fits');
  assert.ok(await element(tab).getByText('No package meets all of these wishes: price, level.').isVisible());
  const instead = seen(await element(tab).locator('.figures').innerText());
  assert.match(instead, /Price of the parts\s+1,306\.60\sEUR\s+the best there is with the other wishes met/);
  assert.match(instead, /Level at the seat\s+112\.7\u202fdB/);
  assert.equal(await cards(tab).count(), 0);
  assert.equal(await element(tab).locator('button.book').count(), 0);
  await accessible(tab);
  await picture(tab, 'packages-none');
  await asking(tab, question({ wishes: { budget: 1247 } }), 'answer');
  assert.equal(await status(tab), 'One package fits');
  await tab.close();
});

test('an offer the service refuses is the shop’s to mend', async () => {
  const tab = await open({ page: PAGE });
  await asking(tab, question({ slots: [{ name: 'front', drivers: ['nowhere'] }] }), 'problem');
  assert.equal(await status(tab), 'The calculation service could not work with this.');
  assert.ok(tab.console.some((line) => line.includes('dangling-reference')), 'the reason is on the console');
  await tab.close();
});

for (const [size, viewport] of [['wide', WIDE], ['phone', PHONE]]) {
  test(`it can be read by everybody, ${size}`, async () => {
    const tab = await open({ page: PAGE, viewport });
    await fits(tab);
    await accessible(tab);
    for (const tone of ['light', 'dark']) {
      await tab.emulateMedia({ colorScheme: tone });
      await picture(tab, `packages-${size}-${tone}`);
    }
    await tab.close();
  });
}
