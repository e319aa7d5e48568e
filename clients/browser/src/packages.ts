import type { components } from './contract.js';
import { ask, type Outcome, type Plan, type Verdict } from './client.js';
import { Calculating } from './calculating.js';
import { h } from './dom.js';
import { figure, findingsView, safetyView, type Reading } from './figures.js';
import { nameOf, spoken } from './names.js';
import { fill } from './texts.js';
import { told } from './verdict.js';

type Schemas = components['schemas'];
export type PackageQuestion = Schemas['PackageOptionsRequest'];
export type PackagesAnswer = Schemas['PackageOptionsAnswer'];
type Offered = NonNullable<PackagesAnswer['result']['packages']>[number];
type Relaxed = NonNullable<PackagesAnswer['result']['relaxed']>[number];
type Aim = NonNullable<Relaxed['wishes']>[number];
type Options = boolean | AddEventListenerOptions;

/** What the event `footwell-book` of a package that was found carries. */
export interface BookedPackage {
  package: Offered;
  /** It as a whole, as plan-review takes it */
  plan: Plan;
  verdict: Verdict;
  answer: PackagesAnswer;
}

/** Its events, typed. */
export interface FootwellPackages {
  addEventListener(type: 'footwell-book', listener: (event: CustomEvent<BookedPackage>) => unknown, options?: Options): void;
  addEventListener(type: 'footwell-result', listener: (event: CustomEvent<PackagesAnswer>) => unknown, options?: Options): void;
  addEventListener<K extends keyof HTMLElementEventMap>(type: K, listener: (event: HTMLElementEventMap[K]) => unknown, options?: Options): void;
  addEventListener(type: string, listener: EventListenerOrEventListenerObject, options?: Options): void;
}

/** `<footwell-packages>`: what package-options finds in an offer for a plan and its wishes; a customer takes one of it. */
export class FootwellPackages extends Calculating<PackageQuestion, PackagesAnswer> {
  static override observedAttributes = [...super.observedAttributes, 'currency'];

  protected question(signal: AbortSignal): Promise<Outcome<PackagesAnswer>> {
    const body = this.data!;
    return ask(this.asking, signal, (client, sent) => client.POST('/v1/package-options', { ...sent, body }));
  }

  protected override detail(answer: PackagesAnswer): PackagesAnswer {
    return answer;
  }

  protected summary({ result }: PackagesAnswer, { texts, numbers }: Reading): string {
    const count = result.packages?.length ?? 0;
    if (count === 0) return texts.noPackage;
    return count === 1 ? texts.onePackage : fill(texts.packagesFound, { count: numbers.number(count) });
  }

  protected view(answer: PackagesAnswer, reading: Reading) {
    const cards = (answer.result.packages ?? []).map((offered, index) => this.card(offered, index, answer, reading));
    return [
      h('h2', {}, this.summary(answer, reading)),
      cards.length > 0 && h('div', { class: 'offered', part: 'offered' }, cards),
      (answer.result.relaxed ?? []).map((relaxed) => attainableView(relaxed, reading)),
      findingsView(answer.findings, reading),
      safetyView(answer.safety, reading),
    ];
  }

  private card(offered: Offered, index: number, answer: PackagesAnswer, reading: Reading) {
    const { texts, numbers } = reading;
    const { price, level_db_spl, level_reached, lowest_hz, mass_change_g, slots = [] } = offered;
    const verdict = offered.verdict!;
    const seen = told(verdict, (offered.codes ?? []).map((code) => ({ code })));
    const heading = `package-${index}`;
    const book = () => {
      if (this.dataset.state !== 'answer') return;
      const detail: BookedPackage = { package: offered, plan: offered.plan as Plan, verdict, answer };
      this.dispatchEvent(new CustomEvent('footwell-book', { detail, bubbles: true, composed: true }));
    };
    return h(
      'article',
      { part: 'package', 'aria-labelledby': heading },
      h('h3', { id: heading }, fill(texts.packageNumbered, { number: numbers.number(index + 1) }), h('small', { class: seen }, texts[seen])),
      h(
        'dl',
        { class: 'figures', part: 'figures' },
        aimFigure('price', price, reading),
        aimFigure('level', level_db_spl, reading, level_reached === false ? texts.belowWish : undefined),
        aimFigure('reach', lowest_hz, reading),
        aimFigure('mass', mass_change_g, reading),
      ),
      h(
        'ul',
        {},
        slots.map(({ slot, part, box, stays }) => h('li', {}, h('b', {}, spoken(slot!) ?? slot!), ': ', this.partName(part!), box && ` + ${this.boxName(box)}`, stays && ` (${texts.stays})`)),
        this.amplifiers(offered).map((name) => h('li', {}, h('b', {}, texts.amplifierBought), ': ', name)),
      ),
      h('button', { type: 'button', class: 'book', part: 'button book', 'aria-describedby': heading, click: book }, texts.book),
    );
  }

  /** By its name, by an id that says something, or as it is called in the data. */
  private partName(id: string): string {
    const { plan, offer } = this.data!;
    const parts = [...(plan.new_parts ?? []), ...(offer.drivers ?? []).map(({ part }) => part)];
    const index = parts.findIndex((part) => part.id === id);
    return index < 0 ? id : nameOf(parts[index], index, 'new_parts', this.texts);
  }

  private boxName(id: string): string {
    return spoken(id) ?? id;
  }

  /** What is bought: amplifiers that the plan did not have. */
  private amplifiers({ amplifiers = [] }: Offered): string[] {
    const { plan, offer } = this.data!;
    const there = new Set((plan.amplifiers ?? []).map(({ id }) => id));
    return amplifiers
      .filter((id) => !there.has(id))
      .map((id) => {
        const known = (offer.amplifiers ?? []).map(({ amplifier }) => amplifier);
        const index = known.findIndex((one) => one.id === id);
        return index < 0 ? spoken(id) ?? id : nameOf(known[index], index, 'amplifiers', this.texts);
      });
  }
}

/** A figure that packages are judged by. */
function aimFigure(aim: Aim, value: number | undefined, { texts, numbers }: Reading, small?: string) {
  if (value === undefined) return undefined;
  switch (aim) {
    case 'price':
      return figure(texts.priceOfParts, numbers.money(value), small);
    case 'level':
      return figure(texts.level, numbers.unit(value, 'dB'), small);
    case 'reach':
      return figure(texts.reach, numbers.unit(value, 'Hz'), small);
    case 'mass':
      return figure(texts.weight, numbers.massChange(value), small);
  }
}

/** Wishes that cannot all be met: for each, the best there is with the others met. */
function attainableView({ wishes = [], attainable = [] }: Relaxed, reading: Reading) {
  const small = wishes.length > 1 ? reading.texts.othersMet : undefined;
  return h('dl', { class: 'figures', part: 'figures' }, wishes.map((wish, n) => aimFigure(wish, attainable[n], reading, small)));
}
