// Inches and feet: what is shown, what is entered, and that nothing but metres is ever asked or booked.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { Numbers } from '../dist/numbers.js';
import { PHONE, WIDE, between, service, open, element, settled, seen, status, measurement, unfold, accessible, fits, picture } from './page.mjs';

const inches = (html) => html.replace('package="four"', 'package="bass" units="inch"');
/** A metric length, area or volume; a level is stated at 1 m, and sizes that a name has are the shop's own words. */
const METRIC = /(?<![\d.])(?!1\s?m\b)\d[\d.,]*\s?(mm²?|cm²|cm³|m[²³]?|litres?)(?![\p{L}²³/·])/u;

test('lengths are converted by the exact factors of NIST SP 811, and only where people read and write', () => {
  const [metric, inch, german] = [new Numbers('en'), new Numbers('en', undefined, 'inch'), new Numbers('de', undefined, 'inch')];
  assert.deepEqual([metric, inch, german].map((numbers) => seen(numbers.length(10))), ['10\u202fm', '32.8\u202fft', '32,8\u202fft']);
  assert.deepEqual([metric, inch, german].map((numbers) => numbers.lengthField(2.6)), ['2.6', '8.53', '8,53']);
  for (const [numbers, text, metres] of [
    [inch, '8.5', 2.5908],
    [german, '8,5', 2.5908],
    [inch, '1', 0.3048],
    [metric, '1', 1],
    [inch, '36 in', 0.9144],
    [inch, '35 1/2 in', 0.9017],
    [inch, '35-1/2"', 0.9017],
    [inch, '1/4 in', 0.00635],
    [inch, '2 ft 11 1/2 in', 0.9017],
    [inch, '2\u2032 11\u2033', 0.889],
    [inch, '90 cm', 0.9],
    [metric, '900 mm', 0.9],
    [metric, '3 ft', 0.9144],
    [german, '35,5 in', 0.9017],
    [inch, '3 lb', NaN],
    [inch, '3 ft and more', NaN],
    [inch, '1/0 in', NaN],
    [inch, '-3 ft', NaN],
    [inch, '', NaN],
  ]) {
    assert.equal(numbers.parseLength(text), metres, text);
  }
});

test('a shop that measures in inches shows feet, and the service’s sentences in inches', async () => {
  const tab = await open({ change: inches });
  const asked = [];
  tab.on('request', (request) => request.method() === 'POST' && asked.push(new URL(request.url()).searchParams.get('units')));
  const plan = await element(tab).evaluate(
    (booking) =>
      new Promise((resolve) => {
        booking.addEventListener('footwell-result', ({ detail }) => resolve(detail.plan), { once: true });
        booking.calculate();
      }),
  );
  assert.deepEqual(asked, ['inch', 'inch']);
  assert.equal(plan.vehicle.cabin.length_m, 2.6, 'what nobody touched is the shop’s own figure, not a rounded one');
  for (const folded of await element(tab).locator('summary').all()) await folded.click();
  const shown = seen(await element(tab).evaluate(({ shadowRoot }) => [...shadowRoot.querySelectorAll('.findings, .fields')].map((one) => one.innerText).join('\n')));
  assert.doesNotMatch(shown, METRIC);
  assert.match(shown, /Length inside\s*ft/);
  for (const [viewport, name] of [[WIDE, 'wide'], [PHONE, 'phone']]) {
    await tab.setViewportSize(viewport);
    await fits(tab);
    for (const colorScheme of ['light', 'dark']) {
      await tab.emulateMedia({ colorScheme });
      await picture(tab, `inch-${name}-${colorScheme}`);
    }
  }
  await accessible(tab);
  await tab.close();
});

test('a review says in inches what the service says in inches', async () => {
  const plan = JSON.parse(readFileSync('../../docs/examples/camper-van.json', 'utf8'));
  plan.drivers[0].opening = { cut_out_mm: 100, depth_mm: 30 };
  const tab = await open();
  await tab.evaluate(([data, address]) => {
    const review = Object.assign(document.createElement('footwell-review'), { data });
    review.setAttribute('service', address);
    review.setAttribute('units', 'inch');
    document.querySelector('footwell-booking').replaceWith(review);
  }, [plan, between.address]);
  await settled(tab, 'answer');
  const shown = seen(await element(tab).evaluate(({ shadowRoot }) => shadowRoot.textContent));
  const lengths = async (units, unit) => {
    const body = { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(plan) };
    const { findings } = await (await fetch(`${service.address}/v1/plan-review?units=${units}&findings=beside_tables`, body)).json();
    return findings.flatMap(({ text }) => text.match(unit) ?? []);
  };
  const inch = await lengths('inch', /[\d.]+ (in|ft)\b/g);
  assert.ok(inch.length > 2, String(inch));
  for (const length of inch) assert.ok(shown.includes(length), `${length} in ${shown}`);
  for (const length of await lengths('metric', /[\d.]+ (mm|m)\b/g)) assert.ok(!shown.includes(length), `${length} in ${shown}`);
  await picture(tab, 'inch-review');
  await tab.close();
});

test('what a customer measures in feet and inches is asked and booked in metres, exactly', async () => {
  const tab = await open({ change: inches });
  const booked = () =>
    element(tab).evaluate((booking) => new Promise((resolve) => {
      booking.addEventListener('footwell-book', ({ detail }) => resolve(detail.plan), { once: true });
      booking.shadowRoot.querySelector('button.book').click();
    }));
  await unfold(tab);
  const length = measurement(tab, 'Cabin', 'Length inside');
  const ear = measurement(tab, 'Distance to the loudspeaker: Front doors, left', 'Driver’s ear');
  assert.equal(await length.inputValue(), '8.53');
  assert.equal(await ear.inputValue(), '2.99');
  await length.fill('8 ft 6 in');
  await settled(tab, 'answer');
  assert.equal((await booked()).vehicle.cabin.length_m, 2.5908);
  await ear.fill('36 in');
  await settled(tab, 'answer');
  const { drivers, seats } = await booked();
  const [from, to] = [seats.find(({ name }) => name === 'Driver').position, drivers[0].position];
  const apart = Math.hypot(from.x_m - to.x_m, from.y_m - to.y_m, from.z_m - to.z_m);
  assert.ok(Math.abs(apart - 0.9144) < 1e-5, `${apart} m`);
  await ear.fill('99');
  await settled(tab, 'problem');
  assert.match(seen(await element(tab).getByRole('group', { name: /^Please check/ }).textContent()), /Write a distance from 0\.33\u202fft to 32\.8\u202fft\./);
  await ear.fill('2.99');
  await length.fill('99');
  await element(tab).getByText(/Write a distance from \S*1\.641\sft\S* to \S*65\.61\sft/).first().waitFor();
  await length.fill('8.53');
  await ear.fill('3 lb');
  await settled(tab, 'problem');
  assert.equal(await status(tab), 'Please check 1 entry');
  await picture(tab, 'inch-fault');
  await element(tab).evaluate((booking) => booking.removeAttribute('units'));
  await settled(tab, 'answer');
  await unfold(tab);
  assert.deepEqual([await length.inputValue(), await ear.inputValue()], ['2.6', '0.91']);
  await tab.close();
});

test('units that are none are refused by the service, and nothing is shown in their place', async () => {
  const tab = await open({ change: (html) => html.replace('package="four"', 'units="furlong"'), state: 'problem' });
  assert.ok(tab.console.some((line) => line.includes('/units') && line.includes('metric, inch')));
  await tab.close();
});
