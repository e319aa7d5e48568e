// What a customer sees, enters and books, in a real browser.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  PICTURES,
  PHONE,
  service,
  between,
  shop,
  open,
  element,
  settled,
  seen,
  status,
  measurement,
  unfold,
  unfoldParts,
  offering,
  accessible,
  fits,
  picture,
} from './page.mjs';

test('a customer sees what the service answers, and the page loads nothing from elsewhere', async () => {
  const tab = await open({ change: (html) => html.replace('package="four"', 'package="bass"') });
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
  assert.ok(shown.includes(`${price.toLocaleString('en', { minimumFractionDigits: 2 })}\u00a0EUR`));
  for (const { delay_ms } of review.result.channels) assert.ok(shown.includes(delay_ms.toFixed(2)), String(delay_ms));
  const cautions = new Set([...review.safety, ...compared.safety]);
  assert.ok(cautions.size > 3);
  for (const caution of cautions) assert.ok(await tab.getByText(caution).isVisible(), caution);
  const warnings = [...review.findings, ...compared.findings].filter(({ level }) => level === 'warning');
  await tab.getByText(/^For the workshop to settle/).click();
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
    vehicles[0].vehicle.name = packages[2].name = new_parts[0].driver.name = additions[0].name = channels[0].name = long;
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
  await next('Distances');
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
  await tab.getByRole('radio', { name: 'Passenger' }).check();
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
  await unfoldParts(tab);
  await measurement(tab, 'Distance to the loudspeaker: Front doors, left', 'Driver’s ear').fill('99');
  assert.equal(await status(tab), 'Calculating …');
  await settled(tab, 'problem');
  assert.equal(await status(tab), 'Please check 1 entry');
  const asked = await element(tab).getByRole('group', { name: /^Please check/ }).textContent();
  assert.match(seen(asked), /Write a distance from 0\.1\u202fm to 10\u202fm\./);
  await measurement(tab, 'Distance to the loudspeaker: Front doors, left', 'Driver’s ear').fill('0.9');
  await measurement(tab, 'Cabin', 'Road noise').fill('999');
  await measurement(tab, 'Factory part: factory 16 cm', 'Impedance').fill('0.01');
  await measurement(tab, 'Cabin', 'Length inside').fill('');
  await tab.getByRole('button', { name: 'Calculate again' }).first().click();
  await settled(tab, 'problem');
  for (const [group, label, fault] of [
    ['Cabin', 'Road noise', /^Must be a number from/],
    ['Factory part: factory 16 cm', 'Impedance', /^Must be a number from 0\.1/],
    ['Cabin', 'Length inside', /^Is required/],
  ]) {
    const input = measurement(tab, group, label);
    assert.equal(await input.getAttribute('aria-invalid'), 'true');
    const described = await input.evaluate((one) => one.getRootNode().getElementById(one.getAttribute('aria-describedby')).textContent);
    assert.match(described, fault);
  }
  assert.equal(await measurement(tab, 'Cabin', 'Factory radio, clean output').getAttribute('aria-invalid'), 'false');
  assert.equal(await status(tab), 'Please check 3 entries');
  assert.equal(await tab.getByText('For your safety').count(), 0, 'no old result beside the faults');
  await accessible(tab);
  await picture(tab, 'faults');
  await tab.getByRole('button', { name: /^Factory part: factory 16 cm, Impedance/ }).click();
  await tab.keyboard.press('Control+A');
  await tab.keyboard.type('4');
  await measurement(tab, 'Cabin', 'Road noise').fill('68');
  await measurement(tab, 'Cabin', 'Length inside').fill('2.6');
  await tab.keyboard.press('Enter');
  await settled(tab, 'answer');
  assert.equal(await element(tab).locator('[aria-invalid=true]').count(), 0);
  await tab.close();
});

test('faults in the package are told as such', async () => {
  const tab = await open();
  await offering(tab, ({ packages }) => {
    packages[1].new_parts[0].driver.rated_ohm = -4;
    packages[1].channels[0].branches[0].network = 'front_left_woofer ||';
  });
  await settled(tab, 'problem');
  assert.equal(await status(tab), 'The calculation service could not work with this.');
  assert.ok(tab.console.some((line) => line.includes('package:/new_parts/0/driver/rated_ohm')), 'why is on the console');
  await unfold(tab);
  await measurement(tab, 'Cabin', 'Length inside').fill('x');
  await settled(tab, 'problem');
  await measurement(tab, 'Cabin', 'Length inside').fill('99');
  const faults = tab.getByRole('group', { name: /^Please check 1 entry/ });
  await faults.getByText('Something in the shop’s own data cannot be used either.').waitFor();
  assert.doesNotMatch(await faults.textContent(), /rated_ohm|\/|front_left/);
  await tab.close();
});

test('German readers see and write German, whatever the browser speaks', async () => {
  const tab = await open({ change: (html) => html.replace('lang="en"', 'lang="de"') });
  const shown = await element(tab).evaluate((booking) => booking.shadowRoot.textContent);
  assert.match(shown, /1\.046,50\sEUR/);
  assert.match(shown, /\+5,3\sdB/);
  assert.match(seen(shown), /spielt 0,3 Oktaven tiefer/);
  const caution = tab.getByText('Lauter Schall schädigt das Gehör');
  assert.equal(await caution.evaluate((one) => one.closest('[lang]').lang), 'de');
  await unfold(tab, 'Abstände in Ihrem Fahrzeug');
  const field = measurement(tab, 'Abstand zum Lautsprecher: Front doors, links', 'Ohr: Driver');
  assert.equal(await field.inputValue(), '0,91');
  await field.fill('1.250');
  await tab.keyboard.press('Enter');
  await settled(tab, 'problem');
  assert.match(await status(tab), /Bitte prüfen Sie 1 Eingabe/);
  assert.ok(await tab.getByText('Schreiben Sie eine Zahl wie 1,25.').first().isVisible());
  await field.fill('0,95');
  await tab.keyboard.press('Enter');
  await settled(tab, 'answer');
  await accessible(tab);
  await picture(tab, 'german');
  await tab.close();
});

test('an English page in a German browser is English throughout', async () => {
  const tab = await open({ locale: 'de-DE' });
  assert.ok(await tab.getByText('Loud sound damages hearing').isVisible());
  assert.equal(await tab.getByText('Lauter Schall').count(), 0);
  assert.ok(await tab.getByText('1,046.50 EUR').first().isVisible());
  await tab.close();
});

test('what is booked is what is entered and answered, and nothing else', async () => {
  const tab = await open();
  await element(tab).evaluate((booking) => {
    window.booked = [];
    booking.addEventListener('footwell-book', ({ detail }) => window.booked.push(detail.plan.vehicle.cabin.length_m));
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
