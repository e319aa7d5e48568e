import type { Asking, Fault, Outcome } from './client.js';
import { h, type Child } from './dom.js';
import type { Reading } from './figures.js';
import { Names } from './names.js';
import { directionOf, localeOf, Numbers } from './numbers.js';
import { Unoffered } from './offer.js';
import { Panel } from './panel.js';
import { Runner, type State } from './runner.js';
import { style } from './style.js';
import { fill, textsOf, type Texts } from './texts.js';
import type { Units } from './units.js';

const sheet = new CSSStyleSheet();
sheet.replaceSync(style);

/** Attributes that change nothing of what is chosen, entered or said. */
const OF_THE_QUESTION = ['service', 'timeout', 'currency'];

type Options = boolean | AddEventListenerOptions;

/** Its events, typed. */
export interface Calculating<D, A, E = A> {
  addEventListener(type: 'footwell-result', listener: (event: CustomEvent<E>) => unknown, options?: Options): void;
  addEventListener<K extends keyof HTMLElementEventMap>(type: K, listener: (event: HTMLElementEventMap[K]) => unknown, options?: Options): void;
  addEventListener(type: string, listener: EventListenerOrEventListenerObject, options?: Options): void;
}

/**
 * An element that asks the service and shows the answer. Its data come from the property `data` or
 * from a child `<script type="application/json">`. Its events carry `E`, made of the answer `A`.
 */
export abstract class Calculating<D, A, E = A> extends HTMLElement {
  static observedAttributes = ['service', 'lang', 'timeout', 'units'];

  protected readonly controls = h('div', { class: 'controls' });
  private readonly panel = new Panel();
  private readonly layout = h('div', { class: 'layout' }, this.controls, this.panel.element);
  private readonly runner = new Runner<A>((state) => this.show(state));
  private given?: D;
  private replaced: Partial<Texts> = {};
  private prepared = false;

  constructor() {
    super();
    const shadow = this.attachShadow({ mode: 'open' });
    shadow.adoptedStyleSheets = [sheet];
    shadow.append(
      h('slot', { name: 'heading' }),
      this.layout,
      h('slot', { name: 'after' }),
    );
  }

  get data(): D | undefined {
    return this.given;
  }

  set data(data: D | undefined) {
    this.given = data;
    this.renew();
  }

  /** Words to say instead of those of the page's language. */
  set texts(texts: Partial<Texts>) {
    this.replaced = texts;
    this.renew();
  }

  get texts(): Texts {
    return { ...textsOf(this.locale), ...this.replaced };
  }

  get service(): string {
    return (this.getAttribute('service') ?? '').replace(/\/+$/, '');
  }

  get timeout_s(): number {
    return Number(this.getAttribute('timeout')) || 15;
  }

  connectedCallback(): void {
    if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', () => this.begin(), { once: true });
    else this.begin();
  }

  disconnectedCallback(): void {
    this.runner.stop();
  }

  attributeChangedCallback(name: string, before: string | null, now: string | null): void {
    if (before === now) return;
    if (OF_THE_QUESTION.includes(name)) this.begin();
    else this.renew();
  }

  /** Asks, shortly after the last of several changes. */
  calculate(after_ms = 0): void {
    this.runner.run((signal) => this.question(signal), after_ms);
  }

  /** Properties that a script set before the element was defined hide those of the element. */
  private adopt(): void {
    const early: { data?: D; texts?: Partial<Texts> } = this;
    if (Object.hasOwn(early, 'data')) this.given = early.data;
    if (Object.hasOwn(early, 'texts')) this.replaced = early.texts!;
    delete early.data;
    delete early.texts;
  }

  /** Data, language, units or words are new: what was entered goes. */
  private renew(): void {
    this.prepared = false;
    this.controls.replaceChildren();
    this.begin();
  }

  private begin(): void {
    if (!this.isConnected) return;
    this.adopt();
    try {
      this.given ??= this.script();
      if (!this.given) return this.clear();
      if (!this.service) throw new Error('The attribute service is missing.');
      if (!this.prepared) this.prepare();
      this.prepared = true;
      this.calculate();
    } catch (failure) {
      this.runner.fail(failure);
    }
  }

  private clear(): void {
    this.runner.stop();
    this.panel.clear();
    delete this.dataset.state;
  }

  protected prepare(): void {}
  protected get currency(): string | undefined {
    return this.getAttribute('currency') ?? undefined;
  }

  protected abstract question(signal: AbortSignal): Promise<Outcome<A>>;
  protected abstract view(answer: A, reading: Reading): Child;
  protected abstract summary(answer: A, reading: Reading): string;

  /** What the events tell of an answer. */
  protected abstract detail(answer: A): E;

  protected get reading(): Reading {
    return { numbers: this.numbers, texts: this.texts, names: this.names };
  }

  protected get names(): Names {
    return new Names({}, this.texts);
  }

  protected get numbers(): Numbers {
    return new Numbers(this.locale, this.currency, this.units);
  }

  /** How the service is asked. */
  protected get asking(): Asking {
    const { service, timeout_s, texts, units } = this;
    return { service, timeout_s, lang: texts.service, units };
  }

  /** What lengths, areas and volumes are shown in; what is no system of units the service refuses. */
  get units(): Units {
    return (this.getAttribute('units') ?? 'metric') as Units;
  }

  /** The page's language, or else the browser's. */
  private get locale(): string {
    return localeOf(this.closest<HTMLElement>('[lang]')?.lang, navigator.language);
  }

  private script(): D | undefined {
    const script = this.querySelector(':scope > script[type="application/json"]');
    return script ? JSON.parse(script.textContent ?? '') : undefined;
  }

  private show(state: State<A>): void {
    const { texts } = this;
    this.layout.lang = texts.lang;
    this.layout.dir = directionOf(texts.lang);
    this.panel.busy(state.kind === 'loading' || state.kind === 'waiting');
    this.dataset.state = state.kind;
    switch (state.kind) {
      case 'loading':
        this.panel.tell(texts.loading, h('p', { class: 'loading' }, texts.loading));
        return;
      case 'waiting': {
        const text = fill(texts.waiting, { seconds: this.numbers.number(state.seconds) });
        this.panel.count(text, this.again());
        return;
      }
      case 'answer': {
        const { reading } = this;
        this.panel.answer(this.summary(state.answer, reading), this.view(state.answer, reading));
        this.dispatchEvent(new CustomEvent('footwell-result', { detail: this.detail(state.answer), bubbles: true, composed: true }));
        return;
      }
      case 'problem':
        console.warn('footwell:', JSON.stringify(this.names.restored(state.problem)));
        this.problem(state.problem.errors ?? []);
        return;
      case 'refused':
        this.fail(texts.refused, h('p', {}, h('small', {}, fill(texts.refusedDetail, { origin: location.origin }))), this.again());
        return;
      case 'unusable':
        this.fail(state.failure instanceof Unoffered ? state.failure.message : texts.data);
        return;
      case 'silent':
      case 'late':
      case 'busy':
        this.fail(texts[state.kind], this.again());
    }
  }

  /** Who looks at the page can mend neither the shop's data nor the service: why is on the console. */
  protected problem(_faults: Fault[]): void {
    this.fail(this.texts.problem, this.again());
  }

  protected fail(text: string, ...more: HTMLElement[]): void {
    this.panel.fail(text, ...more);
  }

  private again(): HTMLElement {
    return h('button', { type: 'button', part: 'button', click: () => this.calculate() }, this.texts.again);
  }
}
