// Words, figures, directions and styles as they are shown, the review alone, and what the guide promises.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import { freePort } from './harness.mjs';
import {
  PHONE,
  guide,
  service,
  between,
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
  delaysOf,
  picture,
} from './page.mjs';

test('quieter is said as it is shown, without a second minus', async () => {
  const tab = await open();
  await offering(tab, ({ packages }) => packages[1].new_parts.forEach(({ driver }) => (driver.sensitivity.level_db_spl = 75)));
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
  assert.match(await row(doors, /^Power it can take/), /^20\u202fW\|80\u202fW\|\+6\.0/);
  assert.match(await row(doors, /^Power it gets/), /^16\u202fW\|16\u202fW\|$/);
  assert.match(await row(doors, /^Mass/), /^960\u202fg\|2\.36\u202fkg/);
  const heads = await doors.locator('thead th, th.together').allTextContents();
  assert.deepEqual(heads.map(seen), ['Each one', 'Before', 'After', 'Change', '2 together']);
  const channels = element(tab).getByRole('table', { name: 'Channels' });
  assert.match(await row(channels, /^Front left/), /\|15\.7$/);
  await unfoldParts(tab);
  const voltage = measurement(tab, 'Cabin', 'Factory radio, clean output');
  await voltage.fill('10');
  await settled(tab, 'answer');
  assert.match(await row(doors, /^Power it gets/), /^25\u202fW\|25\u202fW\|$/);
  assert.match(await row(channels, /^Front left/), /\|24\.5$/, 'the radio of the plan is the same');
  await voltage.fill('');
  await settled(tab, 'problem');
  assert.equal(await status(tab), 'Please check 1 entry');
  await tab.close();
});

const arabic = {
  lang: 'ar', vehicle: 'مركبتك', package: 'الباقة', level: 'المستوى عند المقعد', louder: 'أعلى من الآن', weight: 'الوزن', price: 'السعر',
  comparison: 'قبل وبعد', before: 'قبل', after: 'بعد', change: 'الفرق', each: 'كل واحد', together: '{count} معًا', 
  largestLevel: 'الأعلى عند متر',
  bears: 'القدرة المحتملة', mass: 'الكتلة', channels: 'القنوات', channel: 'القناة', delay: 'التأخير', doors: '{mass} منها في الأبواب',
  distances: 'المسافات في مركبتك', cabin: 'المقصورة', cabinLength: 'الطول من الداخل', book: 'احجز',
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
  await tab.getByText(arabic.distances).click();
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
  await tab.getByText('The shop’s data cannot be used. Please tell the shop.').last().waitFor();
  await offering(tab, ({ packages }) => (packages[0].name = packages[1].new_parts[0].driver.name = '<img src=x onerror=alert(1)>'));
  await settled(tab, 'answer');
  assert.equal(await element(tab).locator('img[src=x]').count(), 0);
  await tab.close();
});

test('a preset vehicle and package leave nothing to choose', async () => {
  const tab = await open({ change: (html) => html.replace('package="four"', 'preset vehicle="lumen" package="bass"') });
  assert.ok(await element(tab).locator('.figures').getByText('1,810.50 EUR').isVisible());
  assert.equal(await tab.getByRole('radio').count(), 0);
  assert.ok(!(await tab.getByLabel('Your vehicle').isVisible()));
  assert.ok(await tab.getByRole('heading', { name: 'All doors, amplifiers and bass' }).isVisible());
  assert.ok(await tab.getByText('Halmera Lumen, five-door', { exact: true }).last().isVisible());
  await accessible(tab);
  await picture(tab, 'preset');
  await tab.close();
});

test('a preset that is not offered is a fault, and nothing is booked in its place', async () => {
  const cases = [
    ['vehicle="lumin" package="four"', 'lumin is not of the vehicles.'],
    ['vehicle="lumen" package="fours"', 'fours is not offered for lumen.'],
    ['vehicle="drift" package="bass"', 'bass is not offered for drift.'],
    ['package=""', ' is not offered for lumen.'],
  ];
  for (const [attributes, reason] of cases) {
    const tab = await open({ change: (html) => html.replace('package="four"', `preset ${attributes}`), state: 'unusable' });
    assert.equal(await status(tab), 'The shop’s data cannot be used. Please tell the shop.');
    assert.equal(await element(tab).locator('.result').textContent(), '');
    assert.equal(await element(tab).locator('button.book').count(), 0);
    assert.ok(tab.console.some((line) => line.includes(reason)), `${reason} in ${tab.console}`);
    await tab.close();
  }
});

test('ids and field names do not reach a customer', async () => {
  const tab = await open();
  await offering(tab, ({ vehicles, packages }) => {
    const ids = { front_left: 'fl', front_right: 'fr', front_left_woofer: 'd1', woofer_16: 'w6', four_channel: 'amp_x4' };
    packages[1] = JSON.parse(JSON.stringify(packages[1]).replace(/\w+/g, (word) => ids[word] ?? word));
    for (const one of [...packages[1].channels, ...packages[1].amplifiers, ...packages[1].new_parts]) delete (one.driver ?? one).name;
    delete packages[1].new_parts[0].compared;
    delete packages[1].new_parts[0].driver.xmax_mm;
    packages[1].channels[0].high_pass.frequency_hz = 400;
    packages[1].crossovers = [{ lower: 'fl', upper: 'fr', frequency_hz: 100 }];
    delete vehicles[0].factory_parts[0].compared;
    delete vehicles[0].factory_parts[0].driver.name;
  });
  await settled(tab, 'answer');
  const shown = seen(await element(tab).evaluate((booking) => booking.shadowRoot.textContent));
  assert.doesNotMatch(shown, /\b(fl|fr|d1|w6|amp_x4|amp)\b/i);
  assert.doesNotMatch(shown, /[a-z0-9]_[a-z]|\bZid\d/i);
  assert.match(shown, /not given: peak power of the factory part, .*the travel of the new part/);
  assert.match(shown, /Channel 1/);
  const detail = await element(tab).evaluate(
    (booking) =>
      new Promise((resolve) => {
        booking.addEventListener('footwell-result', ({ detail }) => resolve(detail));
        booking.calculate();
      }),
  );
  assert.equal(detail.review_answer.result.channels[0].id, 'fl', 'the shop gets its own ids');
  assert.equal(detail.plan.channels[0].id, 'fl');
  assert.doesNotMatch(JSON.stringify(detail), /Zid\d+Z/);
  await picture(tab, 'ids');
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
  assert.ok(await tab.getByText('1,600.00 EUR').isVisible());
  assert.equal(await element(tab).locator('table.channels tbody tr').count(), 6);
  assert.ok(await tab.getByRole('heading', { name: 'For your safety' }).isVisible());
  assert.deepEqual(await delaysOf(tab), [6, 0]);
  await tab.getByText(/^Notes for the fitting/).click();
  assert.ok(await tab.getByText(/: Subwoofer 25 cm, two 4 ohm voice coils, Five-channel amplifier, Two-channel bass amplifier\./).isVisible());
  await accessible(tab);
  await picture(tab, 'review');
  await element(tab).evaluate((review) => review.setAttribute('currency', 'SEK'));
  await tab.getByText('1,600.00 SEK').waitFor();
  await element(tab).evaluate((review) => review.setAttribute('currency', 'EURO'));
  await settled(tab, 'unusable');
  assert.equal(await status(tab), 'The shop’s data cannot be used. Please tell the shop.');
  assert.ok(tab.console.some((line) => line.includes('EURO')));
  await tab.close();
});

test('the page of the guide works as it is printed', async () => {
  const tab = await open({ page: '/docs.html', viewport: PHONE });
  assert.ok(await tab.getByText('118.00 EUR').first().isVisible());
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
