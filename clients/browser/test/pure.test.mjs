import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { gzipSync } from 'node:zlib';
import { retryAfter } from '../dist/client.js';
import { drives, names } from '../dist/drawing.js';
import { worst } from '../dist/verdict.js';
import { Names, spoken } from '../dist/names.js';
import { directionOf, localeOf, Numbers } from '../dist/numbers.js';
import { namesOf, packagesFor } from '../dist/offer.js';
import { planOf } from '../dist/asked-plan.js';
import { english } from '../dist/texts.js';
import { at, originOf, put } from '../dist/pointer.js';
import { comparisonOf } from '../dist/asked-comparison.js';

const offer = JSON.parse(readFileSync('demo/offer.json', 'utf8'));
const [lumen, drift] = offer.vehicles;
const [front, four, bass] = offer.packages;
/** What the plan's answer says of the power of drivers. */
const review = ({ channels, drivers }, power_w) => ({
  drivers: drivers.map(({ id }) => ({
    id,
    channel: channels.find((channel) => drives(channel, id)).id,
    clean_power_w: power_w(id),
  })),
});
const seen = (text) => text.replace(/[\u2068\u2069]/g, '');

test('what a shop must load is below 25 kB gzipped', (t) => {
  const size = gzipSync(readFileSync('dist/footwell-booking.js'), { level: 9 }).length;
  t.diagnostic(`${size} bytes gzipped`);
  assert.ok(size < 25_000, `${size} bytes`);
});

test('numbers are written as the reader writes them', () => {
  const en = new Numbers('en', 'EUR');
  const de = new Numbers('de', 'EUR');
  assert.equal(seen(en.money(1046.5)), '1,046.50\u00a0EUR');
  assert.equal(seen(de.money(1046.5)), '1.046,50\u00a0EUR');
  assert.equal(seen(new Numbers('en').money(1046.5)), '1,046.50');
  assert.equal(en.change(-1.25, 'dB'), '\u2068−1.3\u202fdB\u2069', 'isolated from sentences written leftwards');
  assert.equal(seen(en.change(-0.01, 'dB')), '0.0\u202fdB');
  assert.equal(seen(de.change(5.31, 'dB')), '+5,3\u202fdB');
  assert.equal(seen(en.unit(-0.04, 'dB')), '0.0\u202fdB');
  assert.equal(seen(en.mass(960)), '960\u202fg');
  assert.equal(seen(de.massChange(24650)), '+24,7\u202fkg');
  assert.equal(seen(en.mass(1000)), '1\u202fkg');
  assert.equal(seen(en.mass(2360)), '2.36\u202fkg');
  assert.equal(seen(new Numbers('ar-EG').change(-1.25, 'dB')), '−١٫٣\u202fdB');
  assert.deepEqual([8, 0.0511, 0.004].map((hours) => en.hours(hours)), ['8\u00a0hours', '3.1\u00a0minutes', '14\u00a0seconds']);
  assert.equal(de.field(-1234.5), '−1234,5');
});

test('browsers of 2022, which refuse a sign for negative numbers only, write the same', (t) => {
  const Present = Intl.NumberFormat;
  t.mock.method(Intl, 'NumberFormat', function (locale, options) {
    const { signDisplay = 'auto' } = options ?? {};
    if (!['auto', 'always', 'never', 'exceptZero'].includes(signDisplay)) throw new RangeError(signDisplay);
    return new Present(locale, options);
  });
  const en = new Numbers('en');
  assert.deepEqual([-0.04, -0.05, -0, 0, 1046.5].map((value) => seen(en.bare(value, 'dB'))), ['0.0', '−0.1', '0.0', '0.0', '1046.5']);
  assert.equal(seen(en.unit(-0.04, 'g')), '0\u202fg');
  assert.deepEqual([-0.01, 5.31].map((value) => seen(en.change(value, 'dB'))), ['0.0\u202fdB', '+5.3\u202fdB']);
});

test('fields are read in the reader’s language, and never guessed', () => {
  const en = new Numbers('en');
  const de = new Numbers('de');
  const arabic = new Numbers('ar-EG');
  assert.equal(arabic.field(2.6), '٢٫٦');
  for (const [numbers, text, value] of [
    [en, '0.62', 0.62],
    [en, '0,62', 0.62],
    [de, ' −0,62 ', -0.62],
    [de, '0.620', 0.62],
    [de, '.5', 0.5],
    [en, '1250', 1250],
    [en, '1.250', 1.25],
    [de, '1,250', 1.25],
    [de, '1.250', NaN],
    [en, '1,250', NaN],
    [en, '1.2.3', NaN],
    [en, '12 m', NaN],
    [en, '1e3', NaN],
    [en, '.', NaN],
    [arabic, '٢٫٦', 2.6],
    [arabic, '2.6', 2.6],
    [arabic, '2,6', 2.6],
    [arabic, '\u061c−٢٫٦', -2.6],
    [arabic, '١٬٢٥٠', NaN],
    [en, '٢٫٦', NaN],
    [new Numbers('fa'), '۲٫۶', 2.6],
  ]) {
    assert.equal(numbers.parse(text), value, `${numbers.locale} ${text}`);
  }
  for (const value of [0, -2.1, 1234.5, 0.000001]) {
    for (const numbers of [en, de, new Numbers('fr'), new Numbers('ar-EG')]) {
      assert.equal(numbers.parse(numbers.field(value)), value, `${numbers.locale} ${value}`);
    }
  }
});

test('a language is one or another counts; its script has a direction', () => {
  assert.deepEqual(
    [['en_US'], ['de', 'fr'], ['English!', 'fr'], ['', undefined, 'fr'], ['c++', '?']].map((languages) => localeOf(...languages)),
    ['en-US', 'de', 'fr', 'fr', 'en'],
  );
  assert.deepEqual(['en', 'ar', 'he-IL', 'ur_PK', 'az', '?'].map(directionOf), ['ltr', 'rtl', 'rtl', 'rtl', 'ltr', 'ltr']);
});

test('Retry-After is seconds or a date, within reason', () => {
  const now = Date.parse('Wed, 21 Oct 2026 07:28:00 GMT');
  assert.equal(retryAfter('3', now), 3);
  assert.equal(retryAfter('Wed, 21 Oct 2026 07:28:07 GMT', now), 7);
  assert.equal(retryAfter('Wed, 21 Oct 2026 07:00:00 GMT', now), 1);
  assert.equal(retryAfter('999999', now), 120);
  assert.equal(retryAfter('0', now), 1);
  assert.equal(retryAfter('soon', now), 5);
  assert.equal(retryAfter(null, now), 5);
});

test('pointers lead to values and back to where they were stated', () => {
  const document = { a: [{ 'b/c': 1 }] };
  assert.equal(at(document, '/a/0/b~1c'), 1);
  assert.equal(at(document, '/a/7/b'), undefined);
  put(document, '/a/0/b~1c', 2);
  assert.deepEqual(document, { a: [{ 'b/c': 2 }] });
  const origins = new Map([['/drivers', 'package:/drivers'], ['/drivers/3/position', '/places/2/position']]);
  assert.equal(originOf('/drivers/3/position/x_m', origins), '/places/2/position/x_m');
  assert.equal(originOf('/drivers/3/part', origins), 'package:/drivers/3/part');
  assert.equal(originOf('/seats/0/position', origins), '/seats/0/position');
});

test('vehicle and package make a plan of the contract’s fields only', () => {
  const { request, origins } = planOf(lumen, bass);
  assert.deepEqual(Object.keys(request).sort(), [
    'amplifiers', 'channels', 'crossovers', 'drivers', 'extras', 'factory_parts', 'new_parts', 'processor', 'programme', 'seats',
    'supply', 'vehicle',
  ]);
  assert.deepEqual(request.drivers[0], {
    id: 'front_left_woofer', part: 'woofer_16', mounted_in: 'door', replaces: 'factory_door', position: lumen.places[0].position,
  });
  const boot = request.drivers.findIndex((driver) => driver.id === 'subwoofer');
  assert.equal(request.drivers[boot].replaces, undefined);
  assert.equal(originOf(`/drivers/${boot}/position/x_m`, origins), '/places/6/position/x_m');
  assert.doesNotMatch(JSON.stringify(request), /compared|"stays|"place"|"range"/);
  assert.deepEqual(request.extras[0], { name: 'Adapter rings and sealing', mass_g: 780, price: 64 });
  assert.equal(originOf('/extras/0/price', origins), 'package:/additions/0/price');
});

test('equal drivers on both sides make one position of the comparison', () => {
  const { request, origins } = comparisonOf(lumen, bass, review(bass, () => 50), 'EUR');
  assert.deepEqual(
    request.positions.map(({ name, band, driver_count, factory }) => [name, band, driver_count, factory?.name]),
    [
      ['Front doors', 'woofer', 2, 'factory 16 cm'],
      ['Mirror corners', 'tweeter', 2, 'factory tweeter'],
      ['Rear doors', 'full_range', 2, 'factory 13 cm'],
      ['Boot', 'subwoofer', 1, undefined],
    ],
  );
  assert.equal(request.positions[0].replacement.fs_hz, 62);
  assert.equal(request.positions[3].replacement.rated_ohm, 2);
  assert.deepEqual(request.additions.map(({ name }) => name).slice(0, 2), ['Four-channel amplifier', 'Bass amplifier']);
  assert.equal(originOf('/positions/2/factory/mass_g', origins), '/factory_parts/2/mass_g');
  assert.equal(originOf('/positions/3/replacement/mass_g', origins), 'package:/new_parts/3/mass_g');
});

test('an amplifier that stays is no addition; two kinds of drivers in one place are two positions', () => {
  const both = structuredClone(front);
  both.drivers.find((driver) => driver.id === 'front_left_tweeter').place = 'front_door_left';
  const { positions, additions } = comparisonOf(lumen, both, {}).request;
  assert.deepEqual(positions.map(({ name }) => name), ['Front doors', 'Front doors, tweeter', 'Mirror corners']);
  assert.deepEqual(additions.map(({ name }) => name), ['Adapter rings and sealing', 'Fitting']);
});

test('what amplifiers give is stated once: the plan’s answer goes into the comparison', () => {
  const weaker = (id) => (id === 'front_right_woofer' ? 48 : 50);
  const { positions } = comparisonOf(lumen, four, review(four, weaker)).request;
  assert.deepEqual(positions.map(({ amplifier_after }) => amplifier_after), [{ power_w: 48 }, { power_w: 50 }, { power_w: 50 }]);
  const [doors] = comparisonOf(lumen, front, review(front, () => 15.4)).request.positions;
  assert.equal(doors.amplifier_after, undefined, 'the radio stays as it is');
  assert.deepEqual(doors.amplifier_before, { voltage_v: 8 });
});

test('the factory radio gives in the plan what the vehicle says, weighs and costs nothing more', () => {
  const { request, origins } = planOf({ ...lumen, factory_voltage_v: 9 }, front);
  assert.deepEqual([request.amplifiers[0].mass_g, request.amplifiers[0].price], [0, 0]);
  const [{ rails }] = request.amplifiers[0].outputs;
  assert.equal(((rails.rail_v - rails.drop_v) / Math.SQRT2).toFixed(9), '9.000000000');
  assert.equal(originOf('/amplifiers/0/outputs/0/rails/rail_v', origins), '/factory_voltage_v');
  assert.deepEqual(planOf(lumen, four).request.amplifiers[0].outputs, four.amplifiers[0].outputs, 'what is stated stays');
});

test('a package is offered where the vehicle has all its places', () => {
  assert.deepEqual(packagesFor(drift, offer), [front]);
  assert.equal(packagesFor(lumen, offer).length, 3);
  assert.throws(() => planOf(drift, bass), /Halmera Drift, van with two seats has no place rear_door_left/);
  const { channels, ...without } = bass;
  assert.throws(() => planOf(lumen, without), /The package bass has no channels\./);
});

test('ids are asked as marks, said as names and told to the shop as they were', () => {
  const plan = {
    vehicle: { name: 'main' },
    new_parts: [{ id: 'sub', driver: { name: 'Subwoofer 25 cm' } }],
    drivers: [{ id: 'd1', part: 'sub' }, { id: 'main', part: 'none', replaces: 'sub' }],
    amplifiers: [{ id: 'main', name: 'Main "amplifier"' }],
    channels: [
      { id: 'bass', amplifier: 'main', network: '(d1.1+d1.2) || main' },
      { id: 'fl', amplifier: 'main', branches: [{ band: 'low', network: 'd10' }, { band: 'high', network: 'main + 4' }] },
    ],
    settings: [{ channel: 'fl' }],
    crossovers: [{ lower: 'bass', upper: 'fl' }],
  };
  const names = new Names(plan, english);
  const { vehicle, new_parts, drivers, amplifiers, channels, crossovers, settings } = names.marked(plan);
  const [sub, d1, main, amplifier, bass, fl] = [new_parts[0], ...drivers, amplifiers[0], ...channels].map(({ id }) => id);
  assert.equal(new Set([sub, d1, main, amplifier, bass, fl]).size, 6, 'equal ids of two lists are two marks');
  assert.equal(vehicle.name, 'main', 'names stay');
  assert.deepEqual(drivers, [{ id: d1, part: sub }, { id: main, part: 'none', replaces: 'sub' }], 'what names nothing stays');
  assert.equal(channels[0].network, `(${d1}.1+${d1}.2) || ${main}`);
  assert.deepEqual(channels[1].branches.map(({ network }) => network), ['d10', `${main} + 4`]);
  assert.equal(channels[1].network, undefined);
  assert.deepEqual(settings, [{ channel: fl }]);
  assert.deepEqual(crossovers, [{ lower: bass, upper: fl }]);
  const said = `Fuse the main cable of ${amplifier}; at ${fl} the bass of ${bass} and ${main}, ${sub} lose 3 dB. ${d1}.2 takes 60 %.`;
  assert.equal(
    names.in(said),
    'Fuse the main cable of Main "amplifier"; at Channel 2 the bass of Bass and Main, Subwoofer 25 cm lose 3 dB. Loudspeaker 1, coil 2 takes 60 %.',
  );
  const answer = { channels: [{ id: fl }], findings: [{ text: said }] };
  assert.deepEqual(names.restored(answer), {
    channels: [{ id: 'fl' }],
    findings: [{ text: 'Fuse the main cable of main; at fl the bass of bass and main, sub lose 3 dB. d1.2 takes 60 %.' }],
  });
  assert.equal(names.restored(names.marked(plan)).channels[0].network, plan.channels[0].network);
  assert.equal(worst(['ok', 'stop', 'note']), 'stop');
});

test('a driver is called by its place, and an id only if it is made of words', () => {
  const names = namesOf(lumen, bass, english);
  const { drivers, channels } = names.marked(planOf(lumen, bass).request);
  assert.equal(names.in(drivers[0].id), 'Front doors, left');
  assert.equal(names.in(drivers[6].id), 'Boot');
  assert.equal(names.in(channels[4].id), 'Subwoofer');
  assert.deepEqual(['front_left', 'sub_1', 'bass', 'fl', 'd1', 'front_l', 'x_12'].map(spoken), [
    'Front left', 'Sub 1', 'Bass', undefined, undefined, undefined, undefined,
  ]);
});

test('fields are said in words', () => {
  const said = (text) => new Names({}, english).in(text);
  assert.equal(said('That needs sd_cm2 and xmax_mm.'), 'That needs the cone area and the travel.');
  assert.equal(
    said('Doors: not given: factory.peak_power_w, factory.sensitivity, replacement.fs_hz or f3_hz, amplifier_before.'),
    'Doors: not given: peak power of the factory part, sensitivity of the factory part, the resonance of the new part or f3, amplifier before.',
  );
  assert.equal(said('Give le_exponent, 0.7 if full_range, at 1.5 mm2 (IEC 60268-5).'), 'Give the exponent of its rise, 0.7 if full range, at 1.5 mm2 (IEC 60268-5).');
});

test('a network names whole ids, with or without coil', () => {
  const network = '(sub.1 + sub.2) || front_left';
  assert.deepEqual(['sub', 'front_left', 'front', 'su', 'sub_2'].map((id) => names(network, id)), [true, true, false, false, false]);
});
