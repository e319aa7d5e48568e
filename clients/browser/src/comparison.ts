import { ask, type Comparison, type ComparisonAnswer, type Outcome } from './client.js';
import { Calculating } from './calculating.js';
import { h, type Child } from './dom.js';
import { figure, findingsView, safetyView, verdictView, type Reading } from './figures.js';
import { isolated } from './numbers.js';
import { fill } from './texts.js';

type Position = NonNullable<ComparisonAnswer['result']['positions']>[number];
type Side = Position['before'];
type Cell = [value?: string, more?: Child];

export function askComparison(
  service: string,
  timeout_s: number,
  comparison: Comparison,
  signal: AbortSignal,
): Promise<Outcome<ComparisonAnswer>> {
  return ask(service, timeout_s, signal, (client, signal) => client.POST('/v1/driver-comparison', { body: comparison, signal }));
}

/** How a change of level is called, and how large it is. */
export function loudness(level_change_db: number, { texts, numbers }: Reading): [label: string, value: string] {
  const quieter = Math.round(level_change_db * 10) < 0;
  return [quieter ? texts.quieter : texts.louder, numbers.unit(Math.abs(level_change_db), 'dB')];
}

/** Figures of the whole vehicle that the booking element shows as well. */
export function totalFigures({ result }: ComparisonAnswer, reading: Reading) {
  const { texts, numbers } = reading;
  const { level_change_db, mass_change_g, door_mass_change_g, price, price_per_db } = result.totals ?? {};
  return [
    level_change_db !== undefined && figure(...loudness(level_change_db, reading), texts.louderText),
    figure(
      texts.weight,
      mass_change_g === undefined ? undefined : numbers.massChange(mass_change_g),
      door_mass_change_g ? fill(texts.doors, { mass: numbers.massChange(door_mass_change_g) }) : undefined,
    ),
    figure(
      texts.price,
      price === undefined ? undefined : numbers.money(price),
      price_per_db === undefined ? undefined : fill(texts.pricePerDb, { price: numbers.money(price_per_db) }),
    ),
  ];
}

export function comparisonView({ result }: ComparisonAnswer, reading: Reading) {
  const { texts, numbers } = reading;
  return h(
    'section',
    { part: 'comparison' },
    h('h2', {}, texts.comparison),
    h('div', { class: 'positions' }, (result.positions ?? []).map((position) => positionView(position, reading))),
    (result.additions ?? []).length > 0 &&
      h(
        'table',
        { class: 'additions', part: 'additions' },
        h('caption', {}, texts.additions),
        h(
          'tbody',
          {},
          result.additions!.map(({ name, mass_g, price }) =>
            h(
              'tr',
              {},
              h('th', { scope: 'row' }, name),
              h('td', {}, mass_g === undefined ? '–' : mass_g > 0 && numbers.mass(mass_g)),
              h('td', {}, price === undefined ? '–' : numbers.money(price)),
            ),
          ),
        ),
      ),
  );
}

function positionView(position: Position, reading: Reading) {
  const { texts, numbers } = reading;
  const { name, driver_count, before, after } = position;
  const parts = {
    count: numbers.number(driver_count, 0),
    before: isolated(before?.name ?? texts.factoryPart),
    after: isolated(after?.name ?? texts.newPart),
  };
  const several = driver_count > 1;
  return h(
    'table',
    { class: 'position', part: 'position' },
    h('caption', {}, name, h('small', {}, fill(before ? texts.replaced : texts.added, parts))),
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

function rowsOfEach({ driver_count, before, after, change }: Position, { texts, numbers }: Reading) {
  const level = (value: number) => numbers.unit(value, 'dB', 1);
  const decibels = (value: number) => numbers.change(value, 'dB');
  const watts = (value: number) => numbers.unit(value, 'W', 0);
  const hertz = (value: number) => numbers.unit(value, 'Hz', 0);
  const bears = (side: Side) => show(side?.continuous_power_w, (value) => watts(value / driver_count));
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
    row(texts.bears, [bears(before)], [bears(after)], show(change?.continuous_power_db, decibels)),
    row(texts.amplifierPower, [show(before?.amplifier_power_w, watts)], [show(after?.amplifier_power_w, watts)]),
    row(
      texts.lowest,
      [show(before?.lowest_useful_hz, hertz)],
      [show(after?.lowest_useful_hz, hertz)],
      show(change?.lower_reach_octaves, (value) => numbers.change(-value, texts.octaves)),
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
    row(texts.priceEachDb, [''], [''], show(change?.price_per_db, money)),
  ];
}

/** Before and after with what belongs to each, and the change; no row where nothing is known. */
function row(label: Child, now: Cell, later: Cell, changed?: string) {
  const cell = ([value, more]: Cell) => h('td', {}, value ?? '–', more);
  return (now[0] || later[0] || changed) && h('tr', {}, h('th', { scope: 'row' }, label), cell(now), cell(later), h('td', {}, changed));
}

function show<T>(value: T | undefined, format: (value: T) => string): string | undefined {
  return value === undefined ? undefined : format(value);
}

/** `<footwell-comparison>`: factory parts against replacements. */
export class FootwellComparison extends Calculating<Comparison, ComparisonAnswer> {
  protected override get currency() {
    return this.data?.currency;
  }

  protected question(signal: AbortSignal) {
    return askComparison(this.service, this.timeout_s, this.data!, signal);
  }

  protected summary(answer: ComparisonAnswer, { texts }: Reading): string {
    return texts[answer.verdict];
  }

  protected view(answer: ComparisonAnswer, reading: Reading) {
    return [
      verdictView(answer.verdict, reading),
      h('dl', { class: 'figures', part: 'figures' }, totalFigures(answer, reading)),
      comparisonView(answer, reading),
      findingsView(answer.findings, reading),
      safetyView(answer.safety, reading),
    ];
  }
}
