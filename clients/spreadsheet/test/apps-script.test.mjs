// Runs the functions for web spreadsheets. Only the spreadsheet's fetch is stood in for, by curl, so the
// answers are those of the service at FOOTWELL_URL.
import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import {test} from 'node:test';
import vm from 'node:vm';

const SERVICE = process.env.FOOTWELL_URL;
let fetched = [];

function curl(url, options) {
  assert.equal(options.muteHttpExceptions, true);
  fetched.push(url);
  const sent = options.payload === undefined ? [] :
    ['-X', options.method.toUpperCase(), '-H', `Content-Type: ${options.contentType}`, '--data-binary', '@-'];
  const out = execFileSync('curl', ['-sSg', '--max-time', '20', '-w', '\n%{http_code} %{content_type}', ...sent, url],
      {input: options.payload ?? '', encoding: 'utf8', stdio: ['pipe', 'pipe', 'ignore']});
  const end = out.lastIndexOf('\n');
  const [status, type] = out.slice(end + 1).split(/ (.*)/);
  return response(Number(status), type, out.slice(0, end));
}

function response(status, type, text) {
  return {getResponseCode: () => status, getHeaders: () => ({'Content-Type': type}), getContentText: () => text};
}

function load(service = SERVICE, fetch = curl) {
  const sheet = vm.createContext({UrlFetchApp: {fetch}});
  vm.runInContext(readFileSync(new URL('../apps-script/footwell.js', import.meta.url), 'utf8'), sheet);
  sheet.SERVICE = service;
  fetched = [];
  // Values of the sheet's world in that of the test.
  const here = (call) => (...values) => JSON.parse(JSON.stringify(call(...values)));
  return {one: here(sheet.FOOTWELL), rows: here(sheet.FOOTWELL_ROWS)};
}

async function post(calculation, question) {
  const response = await fetch(`${SERVICE}/v1/${calculation}`,
      {method: 'POST', headers: {'Content-Type': 'application/json'}, body: JSON.stringify(question)});
  assert.equal(response.status, 200);
  return response.json();
}

const QUESTION = [['driver.rated_ohm', 4], ['power_w', 50], ['driver.sensitivity.level_db_spl', 90.5], ['driver.sensitivity.basis', 'one_watt'], ['distance_m', ''], ['', '']];
const SAME = {driver: {rated_ohm: 4, sensitivity: {level_db_spl: 90.5, basis: 'one_watt'}}, power_w: 50};

test('a range of names and values gives the number', async () => {
  const {result, verdict} = await post('sound-level', SAME);
  assert.equal(load().one('sound-level', 'level_db_spl', QUESTION), result.level_db_spl);
  assert.equal(load().one('sound-level', 'verdict', QUESTION), verdict);
});

test('names and values in turn do too, with signs that addresses treat apart', async () => {
  const {result} = await post('wiring-load', {network: '(4+4)||(4+4)', amplifier: {minimum_ohm: 4}, bridged: true});
  assert.equal(load().one('wiring-load', 'half_load_ohm', 'network', '(4+4)||(4+4)', [['amplifier.minimum_ohm', 4]], 'bridged', true), result.half_load_ohm);
});

test('the caution of an answer can be had', async () => {
  const {safety} = await post('sound-level', SAME);
  assert.equal(load().one('sound-level', 'safety', QUESTION), safety.join('; '));
});

test('a fault is a short sentence', () => {
  assert.equal(load().one('sound-level', 'level_db_spl', [['driver.rated_ohm', 'four'], ['power_w', 50]]),
      'driver.rated_ohm must be a number from 0.1 to 1000. driver.sensitivity is required.');
});

test('a table is answered in one call, row by row, empty rows and faults in their place', async () => {
  const table = [
    ['driver.rated_ohm', 'power_w', 'driver.sensitivity.level_db_spl', 'driver.sensitivity.basis'],
    [4, 50, 90.5, 'one_watt'], ['', '', '', ''], [4, 50, 900, 'one_watt'], [8, 20, 88, 'two_point_eight_three_volt']];
  const found = load().rows('sound-level', 'level_db_spl, verdict, findings.0.code', table);
  assert.equal(fetched.length, 1);
  const first = await post('sound-level', SAME);
  const last = await post('sound-level', {driver: {rated_ohm: 8, sensitivity: {level_db_spl: 88, basis: 'two_point_eight_three_volt'}}, power_w: 20});
  assert.deepEqual(found, [
    [first.result.level_db_spl, first.verdict, first.findings[0].code],
    ['', '', ''],
    ['driver.sensitivity.level_db_spl must be a number from 40 to 130.', '', ''],
    [last.result.level_db_spl, last.verdict, last.findings[0].code]]);
});

test('repeated groups go into a table as well', async () => {
  const {result} = await post('rail-match', {load_ohm: 3, amplifier: {ratings: {supply_v: 14.4, basis: 'clean',
    points: [{load_ohm: 4, power_w: 75}, {load_ohm: 2, power_w: 120}]}}});
  assert.deepEqual(load().rows('rail-match', 'clean_power_w', [
    ['load_ohm', 'amplifier.ratings.supply_v', 'amplifier.ratings.basis', 'amplifier.ratings.points.0.load_ohm', 'amplifier.ratings.points.0.power_w', 'amplifier.ratings.points.1.load_ohm', 'amplifier.ratings.points.1.power_w'],
    [3, 14.4, 'clean', 4, 75, 2, 120]]), [[result.clean_power_w]]);
});

test('a calculation that is none is told', () => {
  assert.match(load().rows('sound-levels', 'level_db_spl', [['driver.rated_ohm'], [4]])[0][0], /^There is no such calculation/);
});

test('a page that is not of the service is a sentence, whatever its status', () => {
  for (const status of [502, 200]) {
    const {one, rows} = load(SERVICE, () => response(status, 'text/html; charset=utf-8', '<html><h1>Bad Gateway</h1></html>'));
    const told = `${SERVICE} does not answer as the service does (status ${status}, text/html).`;
    assert.equal(one('sound-level', 'level_db_spl', QUESTION), told);
    assert.deepEqual(rows('sound-level', 'level_db_spl', [['driver.rated_ohm'], [4]]), [[told]]);
  }
  const broken = load(SERVICE, () => response(503, 'text/plain', 'try again later'));
  assert.match(broken.one('sound-level', 'level_db_spl', QUESTION), /does not answer as the service does \(status 503, text\/plain\)/);
});

const TABLE = [['driver.rated_ohm', 'power_w', 'driver.sensitivity.level_db_spl', 'driver.sensitivity.basis'], [4, 50, 90.5, 'one_watt'], [4, 50, 900, 'one_watt']];

test('the values wanted may stand in cells, in a row or below each other', () => {
  const wanted = load().rows('sound-level', 'level_db_spl, verdict', TABLE);
  assert.equal(wanted[0][1], 'note');
  assert.deepEqual(load().rows('sound-level', [['level_db_spl', 'verdict']], TABLE), wanted);
  assert.deepEqual(load().rows('sound-level', [['level_db_spl'], ['verdict'], ['']], TABLE), wanted);
});

test('a value that there is not is told as in a single cell, and one that is only missing is an empty cell', () => {
  const told = load().one('sound-level', 'levl', QUESTION);
  assert.equal(told, 'levl is not a known field.');
  const rows = load().rows('sound-level', 'level_db_spl, levl, limits.holds, findings.9.code', TABLE);
  assert.equal(typeof rows[0][0], 'number');
  assert.deepEqual(rows[0].slice(1), [told, '', '']);
  assert.deepEqual(rows[1].slice(1), ['', '', '']);
});

test('an answer that breaks off is a sentence', () => {
  const cut = (url, options) => {
    const {getContentText, ...rest} = curl(url, options);
    return {...rest, getContentText: () => getContentText().slice(0, -20)};
  };
  assert.match(load(SERVICE, cut).rows('sound-level', 'level_db_spl', TABLE)[0][0], /^The answer of the service broke off/);
});

test('a single cell is no table, and says so', () => {
  for (const table of ['driver.rated_ohm', [['driver.rated_ohm', 'power_w']]]) {
    assert.deepEqual(load().rows('sound-level', 'level_db_spl', table), [['Name the values wanted, and a table with names in its first row.']]);
  }
  assert.deepEqual(load().rows('sound-level', 'level_db_spl', [['driver.rated_ohm'], ['']]), [['']]);
});

test('no service is a sentence', () => {
  const {one, rows} = load('http://127.0.0.1:9');
  assert.match(one('sound-level', 'level_db_spl', QUESTION), /^No answer from http:\/\/127.0.0.1:9\. Is the service running/);
  assert.match(rows('sound-level', 'level_db_spl', [['driver.rated_ohm'], [4]])[0][0], /^No answer/);
});
