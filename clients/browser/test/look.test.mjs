// How the elements look: in the dark, on paper, on a phone, from right to left; what is amber, and what has a picture.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { colours } from '../dist/style.js';
import { PHONE, WIDE, accessible, brokenWords, element, fits, guide, offering, open, picture, seen, service, settled, status, unfold } from './page.mjs';

const packaged = (id, lang = 'en') => (html) => html.replace('package="four"', `package="${id}"`).replace('lang="en"', `lang="${lang}"`);
const styleOf = (locator, property) => locator.evaluate((one, property) => getComputedStyle(one)[property], property);
const rgb = (hex) => {
  const long = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit).join('') : hex.slice(1);
  return `rgb(${long.match(/../g).map((pair) => Number.parseInt(pair, 16)).join(', ')})`;
};

test('in a dark page the elements are dark, and the shop’s own colours still win', async () => {
  const tab = await open();
  const title = element(tab).locator('.verdict h2');
  const book = element(tab).locator('button.book');
  const body = element(tab).locator('.layout');
  assert.equal(await styleOf(body, 'color'), rgb(colours.text[0]));
  await tab.emulateMedia({ colorScheme: 'dark' });
  assert.equal(await styleOf(body, 'color'), rgb(colours.text[1]));
  assert.equal(await styleOf(title, 'color'), rgb(colours.ok[1]));
  assert.equal(await styleOf(book, 'backgroundColor'), rgb(colours.accent[1]));
  await element(tab).evaluate((booking) => booking.style.setProperty('--footwell-accent', 'rgb(250, 200, 10)'));
  assert.equal(await styleOf(book, 'backgroundColor'), 'rgb(250, 200, 10)');
  await tab.evaluate(() => (document.documentElement.style.colorScheme = 'light'));
  assert.equal(await styleOf(body, 'color'), rgb(colours.text[0]), 'a page that stays light has light elements');
  await tab.close();
});

test('the guide lists the colours, light and dark', () => {
  for (const [name, [light, dark]] of Object.entries(colours)) assert.ok(guide.includes(`  --footwell-${name}: ${light}; /* dark: ${dark} */\n`), name);
});

test('on paper stand the choice and its figures, in dark ink, and nothing to press', async () => {
  const tab = await open({ change: packaged('bass') });
  await tab.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await tab.setViewportSize({ width: 720, height: 1000 });
  for (const gone of ['form', 'button.book', 'details.note summary']) assert.ok(!(await element(tab).locator(gone).isVisible()), gone);
  const chosen = element(tab).locator('.chosen');
  assert.equal(seen(await chosen.innerText()).replace(/\s+/g, ' ').trim(), 'All doors, amplifiers and bass Halmera Lumen, five-door');
  assert.equal(await styleOf(element(tab).locator('.layout'), 'color'), rgb(colours.text[0]));
  assert.equal(await styleOf(element(tab).locator('table.position').first(), 'breakInside'), 'avoid');
  assert.ok(await element(tab).locator('.figures').isVisible());
  assert.ok(await tab.getByRole('heading', { name: 'For your safety' }).isVisible());
  await fits(tab);
  await picture(tab, 'print');
  assert.ok((await tab.pdf({ format: 'A4' })).length > 10_000);
  await tab.close();
});

for (const lang of ['en', 'de']) {
  for (const [size, viewport] of Object.entries({ phone: PHONE, wide: WIDE })) {
    test(`no word, number or unit is cut in two, and every target is 44 px, ${lang}, ${size}`, async () => {
      const tab = await open({ change: packaged('bass', lang), viewport });
      for (const summary of await element(tab).locator('summary').all()) await summary.click();
      assert.deepEqual(await brokenWords(tab), []);
      await fits(tab);
      const small = await element(tab).evaluate(({ shadowRoot }) =>
        [...shadowRoot.querySelectorAll('button, select, input:not([type=radio]), label:has([type=radio]), summary')]
          .map((one) => [one.textContent.trim() || one.id, one.getBoundingClientRect()])
          .filter(([, { width, height }]) => height < 43.9 || width < 43.9)
          .map(([name, { width, height }]) => `${name}: ${width} × ${height}`),
      );
      assert.deepEqual(small, []);
      await accessible(tab);
      for (const colorScheme of ['light', 'dark']) {
        await tab.emulateMedia({ colorScheme });
        await picture(tab, `all-${lang}-${size}-${colorScheme}`);
      }
      await tab.close();
    });
  }
}

test('what points, points the way the words are read', async () => {
  const captions = async (tab) => seen(await element(tab).locator('table.position caption').first().textContent());
  const tab = await open();
  assert.match(await captions(tab), / → 2 × /);
  await element(tab).evaluate((booking) => {
    booking.dataset.state = 'replaced';
    booking.texts = { lang: 'he' };
  });
  await settled(tab, 'answer');
  assert.match(await captions(tab), / ← 2 × /);
  assert.equal(await styleOf(element(tab).locator('.layout'), 'direction'), 'rtl');
  await tab.close();
});

test('every package has its price beside its name, that of its answer to the cent', async () => {
  const tab = await open();
  const group = tab.getByRole('group', { name: 'Package' });
  for (const id of ['front', 'four', 'bass']) {
    await group.locator(`[value=${id}]`).check();
    await settled(tab, 'answer');
    const answered = await element(tab).evaluate(
      (booking) =>
        new Promise((resolve) => {
          booking.addEventListener('footwell-result', ({ detail }) => resolve(detail.comparison_answer.result.totals.price), { once: true });
          booking.calculate();
        }),
    );
    await settled(tab, 'answer');
    const money = `${answered.toLocaleString('en', { minimumFractionDigits: 2 })}\u00a0EUR`;
    const label = group.locator('label', { has: tab.locator(`[value=${id}]`) });
    assert.ok((await label.textContent()).includes(money), `${money} at ${id}`);
    assert.ok((await element(tab).locator('.booking').textContent()).includes(money));
  }
  await offering(tab, ({ packages }) => delete packages[0].additions[0].price);
  await settled(tab, 'answer');
  assert.ok((await group.textContent()).includes('price on request'));
  await tab.close();
});

test('beside the button stand the verdict in words, the price, the level and what the bass gains', async () => {
  const tab = await open({ change: packaged('bass') });
  const summary = element(tab).locator('.booking');
  assert.ok(await summary.getByRole('button', { name: 'Book this package' }).isVisible());
  const said = seen(await summary.textContent());
  for (const part of ['All doors, amplifiers and bass', 'It can be fitted', 'Price1,810.50\u00a0EUR', 'Louder than now5.3\u202fdB', 'Bassplays 0.8 octaves lower']) {
    assert.ok(said.includes(part), `${part} in ${said}`);
  }
  await tab.close();
});

test('a package that adds bass says in its headline what that gains', async () => {
  const bassOf = async (id) => {
    const tab = await open({ change: packaged(id) });
    const text = seen(await element(tab).locator('.figure', { hasText: /^Bass/ }).textContent());
    assert.ok((await status(tab)).includes('Bass: plays'), 'spoken as well');
    await tab.close();
    return text;
  };
  const [without, added] = [await bassOf('four'), await bassOf('bass')];
  assert.equal(without, 'Bassplays 0.3 octaves lowerdown to 62\u202fHz instead of 75\u202fHz80.3\u202fdB from 20 to 63\u202fHz, at the seat');
  assert.match(added, /^Bassplays 0\.8 octaves lowerdown to 44\u202fHz instead of 75\u202fHz9\d\.\d\u202fdB from 20/);
});

test('amber is only what a customer decides; what the workshop settles is neither hidden nor amber', async () => {
  const amber = rgb(colours.warning[0]);
  const ambers = (tab) =>
    element(tab).evaluate(
      ({ shadowRoot }, amber) =>
        [...shadowRoot.querySelectorAll('*')].filter((one) => [getComputedStyle(one).color, getComputedStyle(one).backgroundColor].includes(amber)).length,
      amber,
    );
  const tab = await open();
  for (const id of ['front', 'four', 'bass']) {
    await element(tab).locator(`[value=${id}]`).check();
    await settled(tab, 'loading');
    await settled(tab, 'answer');
    assert.equal(await ambers(tab), 0, id);
  }
  assert.ok(await tab.getByRole('heading', { name: 'It can be fitted', exact: true }).isVisible());
  const settles = element(tab).locator('details.workshop summary');
  assert.equal(seen(await settles.textContent()), 'For the workshop to settle (2)');
  await settles.click();
  assert.ok(await tab.getByText('Bass amplifier weighs 2.3 kg.').isVisible());
  await offering(tab, ({ packages }) => packages[1].new_parts.forEach(({ driver }) => (driver.sensitivity.level_db_spl = 75)));
  await settled(tab, 'answer');
  assert.ok((await ambers(tab)) > 3, 'it gets quieter: that is for the customer');
  assert.ok(await tab.getByRole('heading', { name: 'For you to decide', exact: true }).isVisible());
  assert.doesNotMatch(await element(tab).locator('section.warning').textContent(), /The customer should know/, 'that is said to the shop');
  assert.match(await status(tab), /^It can be fitted; something is for you to decide/);
  await accessible(tab);
  await picture(tab, 'amber');
  await tab.close();
});

test('only distances are asked of who has a tape; they move the loudspeaker and nothing else', async () => {
  const tab = await open();
  await element(tab).evaluate((booking) => booking.addEventListener('footwell-result', ({ detail }) => (window.plan = detail.plan)));
  await unfold(tab);
  const group = tab.getByRole('group', { name: 'Distance to the loudspeaker: Front doors, left' });
  const driver = group.getByLabel('Driver’s ear');
  assert.equal(await driver.inputValue(), '0.91', 'hypot(0.62, 0.35, 0.57)');
  await driver.fill('1.1');
  await settled(tab, 'loading');
  await settled(tab, 'answer');
  const plan = await tab.evaluate(() => window.plan);
  const between = (a, b) => Math.hypot(a.x_m - b.x_m, a.y_m - b.y_m, a.z_m - b.z_m);
  const [left, right] = ['front_left_woofer', 'front_right_woofer'].map((id) => plan.drivers.find((one) => one.id === id).position);
  const [at, beside] = plan.seats.map(({ position }) => position);
  assert.ok(Math.abs(between(at, left) - 1.1) < 0.001);
  assert.ok(Math.abs(between(beside, left) - Math.hypot(0.62, 1.09, 0.57)) < 0.001, 'the other distance stays');
  assert.deepEqual(right, { x_m: 0.62, y_m: -0.72, z_m: 0.55 });
  await driver.fill('0.2');
  await settled(tab, 'problem');
  assert.match(seen(await group.textContent()), /These distances do not go together: Driver and Passenger are 0\.74\u202fm apart\./);
  const shown = await element(tab).locator('details').first().textContent();
  assert.doesNotMatch(shown, /negative|fixed point|Forward/);
  const values = await element(tab).locator('details').first().locator('input').evaluateAll((inputs) => inputs.map(({ value }) => Number(value)));
  assert.ok(values.length > 10 && values.every((value) => value > 0));
  await tab.close();
});

test('pictures are the shop’s own, have words, keep their room and come when they are near', async () => {
  const tab = await open();
  const pictures = element(tab).locator('img');
  assert.equal(await pictures.count(), 3, 'vehicle, vehicle on paper, woofer');
  const vehicle = tab.getByRole('img', { name: 'Drawing of the Halmera Lumen from the side' }).first();
  assert.ok(await vehicle.evaluate((one) => one.loading === 'lazy' && one.naturalWidth > 0));
  await offering(tab, ({ vehicles, packages }) => {
    vehicles[0].image.src = 'missing.png';
    for (const one of packages) for (const part of one.new_parts) delete part.image;
  });
  await settled(tab, 'answer');
  const { width, height } = await vehicle.boundingBox();
  assert.ok(width > 200 && height > 100, 'its room is kept');
  await offering(tab, ({ vehicles }) => delete vehicles[0].image);
  await settled(tab, 'answer');
  assert.equal(await tab.getByRole('img', { name: /^Drawing of the Halmera/ }).count(), 0);
  for (const [image, reason] of [
    [{ src: 'lumen.svg' }, 'The picture lumen.svg has no alt.'],
    [{ src: 'https://elsewhere.example/a.png', alt: 'A door' }, 'The picture https://elsewhere.example/a.png is of another origin.'],
  ]) {
    await element(tab).evaluate((booking, image) => {
      booking.dataset.state = 'replaced';
      booking.data = { ...booking.data, packages: booking.data.packages.map((one) => ({ ...one, image })) };
    }, image);
    await settled(tab, 'unusable');
    assert.ok(tab.console.some((line) => line.includes(reason)), reason);
  }
  await tab.close();
});

test('figures are rounded and said as on the customer’s sheet of the service', async () => {
  const tab = await open({ change: packaged('four') });
  const plan = await element(tab).evaluate(
    (booking) =>
      new Promise((resolve) => {
        booking.addEventListener('footwell-result', ({ detail }) => resolve(detail.plan));
        booking.calculate();
      }),
  );
  await settled(tab, 'answer');
  const headers = { 'Content-Type': 'application/json' };
  const answer = await fetch(`${service.address}/v1/plan-review?format=html&lang=en`, { method: 'POST', headers, body: JSON.stringify(plan) });
  const sheet = (await answer.text()).replace(/[\u00a0\u202f]/g, ' ');
  const shown = seen(await element(tab).evaluate(({ shadowRoot }) => [...shadowRoot.querySelectorAll('strong, td')].map((one) => one.firstChild?.textContent).join('\n'))).replace(/[\u00a0\u202f]/g, ' ');
  const level = /Level at the seat(\d+\.\d)/.exec(seen(await element(tab).locator('.figures').textContent()))[1];
  for (const said of ['+6.75 kg', /(\d\.\d minutes)/.exec(shown)[1], 'plays 0.3 octaves lower']) {
    assert.ok(shown.includes(said), `${said} in ${shown}`);
    assert.ok(sheet.includes(said), `${said} on the sheet`);
  }
  assert.ok(sheet.includes(`${level} dB SPL`), level);
  await tab.close();
});
