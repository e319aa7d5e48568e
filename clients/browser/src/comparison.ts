import { ask, type Comparison, type ComparisonAnswer, type Outcome } from './client.js';
import { Calculating } from './calculating.js';
import { h, type Child } from './dom.js';
import { figure, findingsView, safetyView, verdictView, type Reading } from './figures.js';
import { fill } from './texts.js';

type Position = NonNullable<ComparisonAnswer['result']['positions']>[number];

export function askComparison(
  service: string,
  timeout_s: number,
  comparison: Comparison,
  signal: AbortSignal,
): Promise<Outcome<ComparisonAnswer>> {
  return ask(service, timeout_s, signal, (client, signal) => client.POST('/v1/driver-comparison', { body: comparison, signal }));
}

/** Figures of the whole vehicle that the booking element shows as well. */
export function totalFigures({ result }: ComparisonAnswer, { texts, numbers }: Reading) {
  const { level_change_db, mass_change_g, door_mass_change_g, price, price_per_db } = result.totals ?? {};
  return [
    figure(
      (level_change_db ?? 0) < 0 ? texts.quieter : texts.louder,
      level_change_db === undefined ? undefined : numbers.change(level_change_db, 'dB'),
      texts.louderText,
    ),
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

function positionView({ name, driver_count, before, after, change }: Position, { texts, numbers }: Reading) {
  const show = <T>(value: T | undefined, format: (value: T) => string) => (value === undefined ? undefined : format(value));
  const level = (value: number) => numbers.unit(value, 'dB', 1);
  const decibels = (value: number) => numbers.change(value, 'dB');
  const watts = (value: number) => numbers.unit(value, 'W', 0);
  const hertz = (value: number) => numbers.unit(value, 'Hz', 0);
  const atLeast = change?.limits_of_factory_unknown ? '≥\u202f' : '';
  const reason = (side?: Position['before']) => side?.limited_by && h('small', {}, texts[side.limited_by]);
  const row = (label: Child, now?: string, after?: string, changed?: string, ...small: Child[]) =>
    (now || after || changed) &&
    h(
      'tr',
      {},
      h('th', { scope: 'row' }, label),
      h('td', {}, now ?? '–', small[0]),
      h('td', {}, after ?? '–', small[1]),
      h('td', {}, changed),
    );
  return h(
    'table',
    { class: 'position', part: 'position' },
    h(
      'caption',
      {},
      name,
      h('small', {}, `${driver_count} × ${before?.name ?? texts.nothing} → ${driver_count} × ${after?.name ?? ''}`),
    ),
    h(
      'thead',
      {},
      h('tr', {}, h('td'), [texts.before, texts.after, texts.change].map((text) => h('th', { scope: 'col' }, text))),
    ),
    h(
      'tbody',
      {},
      row(
        [texts.largestLevel, h('small', {}, texts.largestLevelText)],
        show(before?.largest_level_db_spl, level),
        show(after?.largest_level_db_spl, level),
        show(change?.largest_level_db, (value) => atLeast + decibels(value)),
        reason(before),
        reason(after),
      ),
      row(texts.sameSetting, '', '', show(change?.sensitivity_at_equal_voltage_db, decibels)),
      row(texts.bears, show(before?.continuous_power_w, watts), show(after?.continuous_power_w, watts), show(change?.continuous_power_db, decibels)),
      row(texts.amplifierPower, show(before?.amplifier_power_w, watts), show(after?.amplifier_power_w, watts)),
      row(
        texts.lowest,
        show(before?.lowest_useful_hz, hertz),
        show(after?.lowest_useful_hz, hertz),
        show(change?.lower_reach_octaves, (value) => numbers.change(-value, texts.octaves)),
      ),
      row(
        texts.mass,
        show(before?.mass_g, (value) => numbers.mass(value)),
        show(after?.mass_g, (value) => numbers.mass(value)),
        show(change?.mass_g, (value) => numbers.massChange(value)),
      ),
      row(texts.price, '', show(after?.price, (value) => numbers.money(value))),
      row(texts.priceEachDb, '', show(change?.price_per_db, (value) => numbers.money(value))),
    ),
  );
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
