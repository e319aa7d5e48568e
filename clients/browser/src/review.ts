import { ask, type Asking, type Outcome, type Plan, type ReviewAnswer } from './client.js';
import { h } from './dom.js';
import { drawingView } from './drawing.js';
import { Calculating } from './calculating.js';
import { figure, findingsView, safetyView, type Reading } from './figures.js';
import { Names } from './names.js';
import { fill } from './texts.js';
import { told, verdictView } from './verdict.js';

export function askReview(asking: Asking, body: Plan, signal: AbortSignal): Promise<Outcome<ReviewAnswer>> {
  return ask(asking, signal, (client, sent) => client.POST('/v1/plan-review', { ...sent, body }));
}

/** Figures of a plan that the booking element shows as well. */
export function levelFigures({ result }: ReviewAnswer, { texts, numbers }: Reading) {
  const { level_db_spl, level_dba, exposure_allowed_h, largest } = result;
  return [
    figure(
      texts.level,
      level_db_spl === undefined ? undefined : numbers.unit(level_db_spl, 'dB'),
      level_dba === undefined ? undefined : fill(texts.levelText, { dba: numbers.unit(level_dba, 'dBA') }),
      largest === undefined || largest.drive_db > -0.05
        ? undefined
        : fill(texts.largestText, { level: numbers.unit(largest.level_db_spl!, 'dB') }),
    ),
    figure(
      texts.listening,
      exposure_allowed_h === undefined ? undefined : numbers.hours(exposure_allowed_h),
      texts.listeningText,
    ),
  ];
}

export function channelsView(plan: Plan, answer: ReviewAnswer, reading: Reading) {
  const { result } = answer;
  const { texts, numbers, names } = reading;
  const head = (text: string, unit?: string) => h('th', { scope: 'col' }, text, unit && h('small', {}, unit));
  const cell = (value: number | undefined, unit: string) => h('td', {}, value === undefined ? '–' : numbers.bare(value, unit));
  return h(
    'section',
    { part: 'channels' },
    h('h2', { id: 'channels' }, texts.channels),
    result.main_seat && h('p', {}, fill(texts.channelsAt, { seat: result.main_seat })),
    h(
      'div',
      { class: 'beside' },
      drawingView(plan, answer, reading),
      h(
        'table',
        { class: 'channels', 'aria-labelledby': 'channels' },
        h(
          'thead',
          {},
          h('tr', {}, head(texts.channel), head(texts.channelLevel, 'dB SPL'), head(texts.delay, 'ms'), head(texts.trim, 'dB'), head(texts.cleanPower, 'W')),
        ),
        h(
          'tbody',
          {},
          (result.channels ?? []).map(({ id, level_db_spl, delay_ms, trim_db, clean_power_w }) =>
            h(
              'tr',
              {},
              h('th', { scope: 'row' }, names.in(id!)),
              cell(level_db_spl, 'dB'),
              cell(delay_ms, 'ms'),
              cell(trim_db, 'dB'),
              cell(clean_power_w, 'W'),
            ),
          ),
        ),
      ),
    ),
  );
}

/** `<footwell-review>`: what plan-review says of one plan. */
export class FootwellReview extends Calculating<Plan, ReviewAnswer> {
  private planNames?: Names;

  static override observedAttributes = [...super.observedAttributes, 'currency'];

  protected override prepare(): void {
    this.planNames = new Names(this.data!, this.texts);
  }

  protected override get names() {
    return this.planNames ?? super.names;
  }

  protected question(signal: AbortSignal) {
    return askReview(this.asking, this.names.marked(this.data!), signal);
  }

  protected override detail(answer: ReviewAnswer) {
    return this.names.restored(answer);
  }

  protected summary(answer: ReviewAnswer, { texts }: Reading): string {
    return texts[told(answer.verdict, answer.findings)];
  }

  protected view(answer: ReviewAnswer, reading: Reading) {
    const { texts, numbers } = reading;
    const { mass_change_g, price } = answer.result;
    return [
      verdictView(told(answer.verdict, answer.findings), reading),
      h(
        'dl',
        { class: 'figures', part: 'figures' },
        levelFigures(answer, reading),
        figure(texts.weight, mass_change_g === undefined ? undefined : numbers.massChange(mass_change_g)),
        figure(texts.price, price === undefined ? undefined : numbers.money(price)),
      ),
      channelsView(this.names.marked(this.data!), answer, reading),
      findingsView(answer.findings, reading),
      safetyView(answer.safety, reading),
    ];
  }
}
