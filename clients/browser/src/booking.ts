import { Calculating } from './calculating.js';
import { Chooser } from './chooser.js';
import type { ComparisonAnswer, Comparison, Fault, Finding, Outcome, Plan, ReviewAnswer, Verdict } from './client.js';
import { askComparison, comparisonView, loudness, totalFigures } from './comparison.js';
import { h } from './dom.js';
import { bassFigure, bassGain } from './bass.js';
import { findingsView, safetyView, type Reading } from './figures.js';
import { Names } from './names.js';
import { checkPictures, namesOf, type Offer, type Package, type Vehicle } from './offer.js';
import { pictureView, type Picture } from './picture.js';
import { planOf } from './asked-plan.js';
import { comparisonOf } from './asked-comparison.js';
import { originOf, type Origins } from './pointer.js';
import { askReview, channelsView, levelFigures } from './review.js';
import { fill } from './texts.js';
import { told, verdictView, worst, type Told } from './verdict.js';

/** What the events `footwell-result` and `footwell-book` carry. */
export interface Booking {
  vehicle: Vehicle;
  package: Package;
  plan: Plan;
  comparison: Comparison;
  verdict: Verdict;
  review_answer: ReviewAnswer;
  comparison_answer: ComparisonAnswer;
}

/** What is shown: the answer to the plan still has marks in the place of ids. */
interface Shown {
  booking: Booking;
  review: ReviewAnswer;
  /** Of the new part of each position */
  pictures: (Picture | undefined)[];
}

/** `<footwell-booking>`: a customer chooses vehicle and package and sees what changes. */
export class FootwellBooking extends Calculating<Offer, Shown, Booking> {
  static override observedAttributes = [...super.observedAttributes, 'vehicle', 'package', 'preset'];
  private chooser!: Chooser;
  private shownNames?: Names;

  protected override prepare(): void {
    checkPictures(this.data!);
    const fixed = this.hasAttribute('preset');
    const start = { vehicle: this.getAttribute('vehicle'), package: this.getAttribute('package'), fixed };
    this.chooser = new Chooser(this.data!, this.texts, this.numbers, start, (after_ms) => this.calculate(after_ms));
    this.controls.hidden = fixed;
    this.controls.replaceChildren(this.chooser.form);
  }

  protected override get currency() {
    return this.data?.currency;
  }

  protected override get names() {
    return this.shownNames ?? super.names;
  }

  /** The plan comes first: what its amplifiers give each driver goes into the comparison. */
  protected async question(signal: AbortSignal): Promise<Outcome<Shown>> {
    const { vehicle, package: chosen, faults } = this.chooser.read();
    this.chooser.show(faults);
    if (faults.length > 0) return { kind: 'problem', problem: { type: 'about:blank', title: '', status: 0, detail: '', errors: faults } };
    const plan = planOf(vehicle, chosen);
    const names = (this.shownNames = namesOf(vehicle, chosen, this.texts));
    const review = traced(await askReview(this.asking, names.marked(plan.request), signal), plan.origins);
    if (review.kind !== 'answer') return review;
    const review_answer = names.restored(review.answer);
    const comparison = comparisonOf(vehicle, chosen, review_answer.result, this.currency, this.texts);
    const compared = traced(await askComparison(this.asking, comparison.request, signal), comparison.origins);
    if (compared.kind !== 'answer') return compared;
    const asked = { vehicle, package: chosen, plan: plan.request, comparison: comparison.request };
    const verdict = worst([review.answer.verdict, compared.answer.verdict]);
    const booking = { ...asked, verdict, review_answer, comparison_answer: compared.answer };
    return { kind: 'answer', answer: { booking, review: review.answer, pictures: comparison.pictures } };
  }

  protected detail({ booking }: Shown): Booking {
    return booking;
  }

  protected summary(shown: Shown, reading: Reading): string {
    const figures = inShort(shown.booking, reading).map((pair) => pair.join(': '));
    return fill(reading.texts.done, { verdict: reading.texts[toldOf(shown)], figures: figures.join(', ') });
  }

  protected view(shown: Shown, reading: Reading) {
    const { booking, review, pictures } = shown;
    const { comparison_answer } = booking;
    const { names } = reading;
    const [loudest, ...others] = totalFigures(comparison_answer, reading);
    return [
      chosenView(booking, this.hasAttribute('preset')),
      verdictView(toldOf(shown), reading),
      h(
        'dl',
        { class: 'figures', part: 'figures' },
        loudest,
        bassFigure(comparison_answer, review, reading),
        others,
        levelFigures(review, reading),
      ),
      findingsView(findings(shown), reading),
      comparisonView(comparison_answer, reading, pictures),
      channelsView(names.marked(booking.plan), review, reading),
      safetyView([...review.safety, ...comparison_answer.safety], reading),
      this.bookView(shown, reading),
    ];
  }

  /** What is booked stands beside the button. */
  private bookView(shown: Shown, reading: Reading) {
    const { booking } = shown;
    const { texts } = reading;
    const seen = toldOf(shown);
    const book = () => {
      const current = this.dataset.state === 'answer';
      if (current) this.dispatchEvent(new CustomEvent('footwell-book', { detail: booking, bubbles: true, composed: true }));
    };
    return h(
      'section',
      { class: 'booking', part: 'summary', 'aria-label': texts.booking },
      h(
        'div',
        {},
        h('b', {}, booking.package.name),
        h('span', { class: seen }, texts[seen]),
        h('dl', {}, inShort(booking, reading).map(([label, value]) => h('div', {}, h('dt', {}, label), h('dd', {}, value)))),
      ),
      h('button', { type: 'button', class: 'book', part: 'button book', click: book }, seen === 'stop' ? texts.bookStop : texts.book),
    );
  }

  protected override problem(faults: Fault[]): void {
    const told = faults.map((fault) => ({ ...fault, detail: this.names.in(fault.detail) }));
    if (this.hasAttribute('preset') || !this.chooser.has(told)) return super.problem(faults);
    this.fail(this.chooser.show(told));
  }
}

/** Where nothing can be chosen, and on paper, what is chosen stands above the result. */
function chosenView({ vehicle, package: chosen }: Booking, preset: boolean) {
  return h(
    'div',
    { part: 'chosen', class: preset ? 'chosen' : 'chosen paper' },
    pictureView(chosen.image ?? vehicle.image),
    h('div', {}, h('h2', {}, chosen.name), h('p', {}, vehicle.vehicle.name)),
  );
}

/** What matters most, as far as it is known. */
function inShort({ comparison_answer }: Booking, reading: Reading): [label: string, value: string][] {
  const { texts, numbers } = reading;
  const { level_change_db, price } = comparison_answer.result.totals ?? {};
  const bass = bassGain(comparison_answer, reading);
  const known: ([string, string] | false)[] = [
    price !== undefined && [texts.price, numbers.money(price)],
    level_change_db !== undefined && loudness(level_change_db, reading),
    bass !== undefined && [texts.bass, bass],
  ];
  return known.filter((pair) => pair !== false);
}

function toldOf(shown: Shown): Told {
  return told(shown.booking.verdict, findings(shown));
}

/**
 * What both say of mass is shown as the comparison says it, which tells doors apart.
 */
function findings({ review, booking: { comparison_answer: comparison } }: Shown): Finding[] {
  const said = new Set(comparison.findings.map(({ code }) => code));
  const fuller: Record<string, boolean> = {
    heavier: said.has('vehicle-heavier'),
    'heavy-parts': said.has('heavy-part'),
  };
  return [...review.findings.filter(({ code }) => !fuller[code]), ...comparison.findings];
}

/** The same outcome with faults that point, once each, to where the customer or the shop stated it. */
function traced<A>(outcome: Outcome<A>, origins: Origins): Outcome<A> {
  if (outcome.kind !== 'problem') return outcome;
  const faults = (outcome.problem.errors ?? []).map((fault) => ({
    ...fault,
    pointer: originOf(fault.pointer, origins),
    detail: withoutPath(fault),
  }));
  const errors = [...new Map(faults.map((fault) => [`${fault.pointer} ${fault.code}`, fault])).values()];
  return { kind: 'problem', problem: { ...outcome.problem, errors } };
}

/** The sentence begins with the field's path, which says nothing beside the field itself. */
function withoutPath({ pointer, detail }: Fault): string {
  const path = `${pointer.slice(1).replaceAll('/', '.')} `;
  return detail.startsWith(path) ? detail.charAt(path.length).toUpperCase() + detail.slice(path.length + 1) : detail;
}
