import type { ComparisonAnswer } from './client.js';
import { h, type Child } from './dom.js';
import type { Reading } from './figures.js';
import { octaves } from './bass.js';
import { directionOf, isolated } from './numbers.js';
import { pictureView, type Picture } from './picture.js';
import { fill } from './texts.js';

type Position = NonNullable<ComparisonAnswer['result']['positions']>[number];
type Side = Position['before'];
type Cell = [value?: string, more?: Child];

/** What is of one driver stands above, what is of all drivers of the position below. */
export function positionView(position: Position, reading: Reading, picture?: Picture) {
  const { texts, numbers } = reading;
  const { name, driver_count, before, after } = position;
  const parts = {
    count: numbers.number(driver_count),
    before: isolated(before?.name ?? texts.factoryPart),
    after: isolated(after?.name ?? texts.newPart),
    arrow: directionOf(texts.lang) === 'rtl' ? '←' : '→',
  };
  const several = driver_count > 1;
  return h(
    'table',
    { class: 'position', part: 'position' },
    h('caption', {}, name, pictureView(picture), h('small', {}, fill(before ? texts.replaced : texts.added, parts))),
    h(
      'thead',
      {},
      h(
        'tr',
        {},
        several ? h('th', { scope: 'col' }, texts.each) : h('td'),
        [texts.before, texts.after, texts.change].map((text) => h('th', { scope: 'col' }, text)),
      ),
    ),
    h('tbody', {}, rowsOfEach(position, reading)),
    h(
      'tbody',
      {},
      several && h('tr', {}, h('th', { class: 'together', scope: 'rowgroup', colspan: 4 }, fill(texts.together, parts))),
      rowsTogether(position, reading),
    ),
  );
}

function rowsOfEach({ driver_count, before, after, change }: Position, reading: Reading) {
  const { texts, numbers } = reading;
  const level = (value: number) => numbers.unit(value, 'dB');
  const decibels = (value: number) => numbers.change(value, 'dB');
  const watts = (value: number) => numbers.unit(value, 'W');
  const hertz = (value: number) => numbers.unit(value, 'Hz');
  const canTake = (side: Side) => show(side?.continuous_power_w, (value) => watts(value / driver_count));
  const reason = (side: Side) => side?.limited_by && h('small', {}, texts[side.limited_by]);
  const atLeast = change?.limits_of_factory_unknown ? '≥\u202f' : '';
  return [
    row(
      [texts.largestLevel, h('small', {}, texts.largestLevelText)],
      [show(before?.largest_level_db_spl, level), reason(before)],
      [show(after?.largest_level_db_spl, level), reason(after)],
      show(change?.largest_level_db, (value) => atLeast + decibels(value)),
    ),
    row(texts.sameSetting, [''], [''], show(change?.sensitivity_at_equal_voltage_db, decibels)),
    row(texts.canTake, [canTake(before)], [canTake(after)], show(change?.continuous_power_db, decibels)),
    row(texts.amplifierPower, [show(before?.amplifier_power_w, watts)], [show(after?.amplifier_power_w, watts)]),
    row(
      texts.lowest,
      [show(before?.lowest_useful_hz, hertz)],
      [show(after?.lowest_useful_hz, hertz)],
      show(change?.lower_reach_octaves, (value) => octaves(value, reading)),
      'words',
    ),
  ];
}

function rowsTogether({ before, after, change }: Position, { texts, numbers }: Reading) {
  const mass = (value: number) => numbers.mass(value);
  const money = (value: number) => numbers.money(value);
  return [
    row(
      texts.mass,
      [show(before?.mass_g, mass)],
      [show(after?.mass_g, mass)],
      show(change?.mass_g, (value) => numbers.massChange(value)),
    ),
    row(texts.price, [''], [show(after?.price, money)]),
    row(texts.priceEachDb, [''], [''], show(change?.price_per_db, (value) => numbers.moneyAbout(value))),
  ];
}

/** Before and after with what belongs to each, and the change; no row where nothing is known. */
function row(label: Child, now: Cell, later: Cell, changed?: string, kind?: string) {
  const cell = ([value, more]: Cell) => h('td', {}, value ?? '–', more);
  return (now[0] || later[0] || changed) && h('tr', {}, h('th', { scope: 'row' }, label), cell(now), cell(later), h('td', { class: kind }, changed));
}

function show<T>(value: T | undefined, format: (value: T) => string): string | undefined {
  return value === undefined ? undefined : format(value);
}
