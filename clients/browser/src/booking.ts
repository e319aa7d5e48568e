import { Calculating } from './calculating.js';
import { Chooser } from './chooser.js';
import type { ComparisonAnswer, Comparison, Fault, Finding, Outcome, Plan, ReviewAnswer, Verdict } from './client.js';
import { askComparison, comparisonView, loudness, totalFigures } from './comparison.js';
import { h } from './dom.js';
import { findingsView, safetyView, verdictView, worst, type Reading } from './figures.js';
import { Names } from './names.js';
import { namesOf, type Offer, type Package, type Vehicle } from './offer.js';
import { planOf } from './asked-plan.js';
import { comparisonOf } from './asked-comparison.js';
import { originOf, type Origins } from './pointer.js';
import { askReview, channelsView, levelFigures } from './review.js';
import { fill } from './texts.js';

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
}

/** `<footwell-booking>`: a customer chooses vehicle and package and sees what changes. */
export class FootwellBooking extends Calculating<Offer, Shown, Booking> {
  static override observedAttributes = [...super.observedAttributes, 'vehicle', 'package', 'preset'];
  private chooser!: Chooser;
  private shownNames?: Names;

  protected override prepare(): void {
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
    const review = traced(await askReview(this.service, this.timeout_s, names.marked(plan.request), signal), plan.origins);
    if (review.kind !== 'answer') return review;
    const review_answer = names.restored(review.answer);
    const comparison = comparisonOf(vehicle, chosen, review_answer.result, this.currency, this.texts);
    const compared = traced(await askComparison(this.service, this.timeout_s, comparison.request, signal), comparison.origins);
    if (compared.kind !== 'answer') return compared;
    const asked = { vehicle, package: chosen, plan: plan.request, comparison: comparison.request };
    const verdict = worst([review.answer.verdict, compared.answer.verdict]);
    const booking = { ...asked, verdict, review_answer, comparison_answer: compared.answer };
    return { kind: 'answer', answer: { booking, review: review.answer } };
  }

  protected detail({ booking }: Shown): Booking {
    return booking;
  }

  protected summary({ booking: { verdict, comparison_answer } }: Shown, reading: Reading): string {
    const { texts, numbers } = reading;
    const { level_change_db, price } = comparison_answer.result.totals ?? {};
    const figures = [
      level_change_db !== undefined && loudness(level_change_db, reading).join(': '),
      price !== undefined && `${texts.price}: ${numbers.money(price)}`,
    ].filter(Boolean);
    return fill(texts.done, { verdict: texts[verdict], figures: figures.join(', ') });
  }

  protected view({ booking, review }: Shown, reading: Reading) {
    const { verdict, comparison_answer } = booking;
    const { texts, names } = reading;
    const book = () => {
      const shown = this.dataset.state === 'answer';
      if (shown) this.dispatchEvent(new CustomEvent('footwell-book', { detail: booking, bubbles: true, composed: true }));
    };
    return [
      this.hasAttribute('preset') && chosenView(booking),
      verdictView(verdict, reading),
      h('dl', { class: 'figures', part: 'figures' }, totalFigures(comparison_answer, reading), levelFigures(review, reading)),
      findingsView(findings(review, comparison_answer), reading),
      comparisonView(comparison_answer, reading),
      channelsView(names.marked(booking.plan), review, reading),
      safetyView([...review.safety, ...comparison_answer.safety], reading),
      h(
        'button',
        { type: 'button', class: 'book', part: 'button book', click: book },
        verdict === 'stop' ? texts.bookStop : texts.book,
      ),
    ];
  }

  protected override problem(faults: Fault[]): void {
    const told = faults.map((fault) => ({ ...fault, detail: this.names.in(fault.detail) }));
    if (this.hasAttribute('preset') || !this.chooser.has(told)) return super.problem(faults);
    this.fail(this.chooser.show(told));
  }
}

/** Where nothing can be chosen, what is chosen stands above the result. */
function chosenView({ vehicle, package: chosen }: Booking) {
  return h('div', { part: 'chosen' }, h('h2', {}, chosen.name), h('p', {}, vehicle.vehicle.name));
}

/**
 * What both say of mass is shown as the comparison says it, which tells doors apart.
 */
function findings(review: ReviewAnswer, comparison: ComparisonAnswer): Finding[] {
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
