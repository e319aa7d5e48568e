import { ask, type Asking, type Comparison, type ComparisonAnswer, type Outcome } from './client.js';
import { Calculating } from './calculating.js';
import { h } from './dom.js';
import { figure, findingsView, safetyView, type Reading } from './figures.js';
import type { Picture } from './picture.js';
import { told, verdictView } from './verdict.js';
import { positionView } from './position.js';
import { fill } from './texts.js';

export function askComparison(asking: Asking, body: Comparison, signal: AbortSignal): Promise<Outcome<ComparisonAnswer>> {
  return ask(asking, signal, (client, sent) => client.POST('/v1/driver-comparison', { ...sent, body }));
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
      price_per_db === undefined ? undefined : fill(texts.pricePerDb, { price: numbers.moneyAbout(price_per_db) }),
    ),
  ];
}

/** Pictures of the new parts, position by position, where the shop has some. */
export function comparisonView({ result }: ComparisonAnswer, reading: Reading, pictures: (Picture | undefined)[] = []) {
  const { texts, numbers } = reading;
  return h(
    'section',
    { part: 'comparison' },
    h('h2', {}, texts.comparison),
    h('div', { class: 'positions' }, (result.positions ?? []).map((position, index) => positionView(position, reading, pictures[index]))),
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

/** `<footwell-comparison>`: factory parts against replacements. */
export class FootwellComparison extends Calculating<Comparison, ComparisonAnswer> {
  protected override get currency() {
    return this.data?.currency;
  }

  protected question(signal: AbortSignal) {
    return askComparison(this.asking, this.data!, signal);
  }

  protected detail(answer: ComparisonAnswer) {
    return answer;
  }

  protected summary(answer: ComparisonAnswer, { texts }: Reading): string {
    return texts[told(answer.verdict, answer.findings)];
  }

  protected view(answer: ComparisonAnswer, reading: Reading) {
    return [
      verdictView(told(answer.verdict, answer.findings), reading),
      h('dl', { class: 'figures', part: 'figures' }, totalFigures(answer, reading)),
      comparisonView(answer, reading),
      findingsView(answer.findings, reading),
      safetyView(answer.safety, reading),
    ];
  }
}
