// Words, roundings, prices, distances and who decides, without a browser.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { languages } from '../dist/languages.js';
import { Names } from '../dist/names.js';
import { Numbers } from '../dist/numbers.js';
import { priceOf } from '../dist/prices.js';
import { distance, placed } from '../dist/tape.js';
import { english, textsOf } from '../dist/texts.js';
import { DECIDED_BY_THE_CUSTOMER, told } from '../dist/verdict.js';

const offer = JSON.parse(readFileSync('demo/offer.json', 'utf8'));
const [lumen] = offer.vehicles;
const [front, four, bass] = offer.packages;
const seen = (text) => text.replace(/[\u2068\u2069]/g, '');

/** Words that are the same in both languages. */
const ALIKE = { de: ['bass', 'replaced', 'coil', 'done'] };

test('every language has every word, with the places that are filled, and none left in English', () => {
  assert.deepEqual(Object.keys(languages).sort(), readdirSync('src/words').map((file) => file.replace('.ts', '')).sort());
  const places = (text) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();
  for (const [language, words] of Object.entries(languages)) {
    assert.equal(words.lang, language);
    assert.deepEqual(Object.keys(words), Object.keys(english), language);
    for (const [key, text] of Object.entries(english)) {
      if (key === 'fields') {
        for (const field of Object.keys(text)) assert.ok(words.fields[field], `${language} ${field}`);
        continue;
      }
      assert.ok(words[key].trim(), `${language} ${key}`);
      assert.deepEqual(places(words[key]), places(text), `${language} ${key}`);
      if (words !== english && !ALIKE[language]?.includes(key)) assert.notEqual(words[key], text, `${language} ${key}`);
    }
  }
  assert.deepEqual(['de-AT', 'en-GB', 'fr', 'ar-EG'].map((locale) => textsOf(locale).lang), ['de', 'en', 'en', 'en']);
});

test('fields in a German sentence are said in German words', () => {
  const said = new Names({}, languages.de).in('factory.peak_power_w fehlt, replacement.xmax_mm auch');
  assert.equal(said, 'die Spitzenleistung des Teils ab Werk fehlt, der Hub des neuen Teils auch');
});

test('figures are rounded as on the sheets: three digits, the decimals of the unit, half away from zero', () => {
  const en = new Numbers('en');
  const cases = [
    [100.05, 'dB', '100.1'], [1.005, 'ms', '1.01'], [42.53, 'Hz', '42.5'], [1046.5, 'Hz', '1047'], [12_500, 'Hz', '12,500'], [53.55, 'W', '53.6'], [236.4, 'W', '236'],
    [8, 'W', '8'], [23.15, 'kg', '23.2'], [6.75, 'kg', '6.75'], [0.35, 'octaves', '0.4'], [0.05, 'dB', '0.1'], [-0.04, 'dB', '0.0'], [0, 'Hz', '0'],
  ];
  for (const [value, unit, text] of cases) assert.equal(seen(en.bare(value, unit)), text, `${value} ${unit}`);
});

test('sums of prices are exact, and none where a price is not known', () => {
  const priced = (...prices) => ({ additions: prices.map((price) => ({ price })) });
  assert.equal(priceOf(priced(0.1, 0.2)), 0.3);
  assert.equal(priceOf(priced(1.005, 2.0001, 9_999_999.9999)), 10_000_003.005);
  assert.equal(seen(new Numbers('en', 'EUR').money(priceOf(priced(1.005, 2)))), '3.005\u00a0EUR', 'no decimal is lost');
  assert.equal(seen(new Numbers('en', 'JPY').money(1800)), '1,800\u00a0JPY');
  assert.equal(priceOf(priced(1, undefined)), undefined);
  assert.deepEqual([front, four, bass].map(priceOf), [410.5, 1046.5, 1810.5]);
});

test('a loudspeaker is put where two tapes meet, and nowhere if they do not', () => {
  const [driver, passenger] = lumen.seats.map(({ position }) => position);
  const start = lumen.places[0].position;
  const meant = { x_m: 0.7, y_m: 0.65, z_m: 0.6 };
  const measured = [driver, passenger].map((from) => ({ from, distance_m: distance(from, meant) }));
  const found = placed(start, measured);
  for (const { from, distance_m } of measured) assert.ok(Math.abs(distance(from, found) - distance_m) < 1e-5);
  assert.ok(distance(found, meant) < 0.2, 'near where it was set');
  assert.deepEqual(placed(start, [{ from: driver, distance_m: distance(driver, start) }]), start);
  assert.equal(placed(start, [{ from: driver, distance_m: 0.2 }, { from: passenger, distance_m: 2 }]), undefined);
});

test('what a customer decides upon are findings the service has, and only they warn', () => {
  const known = readFileSync('../../service/src/main/resources/org/footwell/languages/de.properties', 'utf8');
  for (const code of DECIDED_BY_THE_CUSTOMER) assert.match(known, new RegExp(`^[a-z.]+\\.${code}=`, 'm'), code);
  assert.equal(told('warning', [{ code: 'heavy-part' }]), 'workshop');
  assert.equal(told('warning', [{ code: 'heavy-part' }, { code: 'exposure-exceeded' }]), 'warning');
  assert.deepEqual(['ok', 'note', 'stop'].map((verdict) => told(verdict, [])), ['ok', 'note', 'stop']);
});
