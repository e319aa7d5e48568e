import type { Fault, Outcome } from './client.js';
import { h, type Child } from './dom.js';
import type { Reading } from './figures.js';
import { Numbers } from './numbers.js';
import { Runner, type State } from './runner.js';
import { style } from './style.js';
import { english, fill, type Texts } from './texts.js';

const sheet = new CSSStyleSheet();
sheet.replaceSync(style);

/**
 * An element that asks the service and shows the answer. Its data come from the property `data` or
 * from a child `<script type="application/json">`.
 */
export abstract class Calculating<D, A> extends HTMLElement {
  static observedAttributes = ['service', 'lang', 'timeout'];

  protected readonly controls = h('div', { hidden: true });
  /** Spoken by screen readers; what is seen stands in the notice. */
  private readonly status = h('p', { role: 'status', class: 'unseen' });
  private readonly notice = h('div', { class: 'notice', part: 'notice', hidden: true });
  private readonly result = h('div', { class: 'result', part: 'result' });
  private readonly layout = h('div', { class: 'layout' }, this.controls, h('div', {}, this.status, this.notice, this.result));
  private readonly runner = new Runner<A>((state) => this.show(state));
  private given?: D;
  private replaced: Partial<Texts> = {};
  private due?: ReturnType<typeof setTimeout>;

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
    if (this.isConnected) this.begin();
  }

  /** Words to say instead of the English ones. */
  set texts(texts: Partial<Texts>) {
    this.replaced = texts;
    if (this.isConnected) this.begin();
  }

  get texts(): Texts {
    return { ...english, ...this.replaced };
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
    clearTimeout(this.due);
    this.runner.stop();
  }

  attributeChangedCallback(): void {
    if (this.isConnected) this.begin();
  }

  /** Called when data, language or words are new. */
  protected begin(): void {
    try {
      this.layout.lang = this.texts.lang;
      this.given ??= this.script();
      if (!this.given) return;
      if (!this.service) throw new Error('The attribute service is missing.');
      this.prepare();
      this.calculate();
    } catch (failure) {
      this.fail(fill(this.texts.data, { detail: (failure as Error).message }));
    }
  }

  /** Shortly after the last of several changes, asks. */
  calculate(after_ms = 0): void {
    clearTimeout(this.due);
    this.due = setTimeout(() => void this.runner.run((signal) => this.question(signal)), after_ms);
  }

  protected prepare(): void {}
  protected get currency(): string | undefined {
    return this.getAttribute('currency') ?? undefined;
  }

  protected abstract question(signal: AbortSignal): Promise<Outcome<A>>;
  protected abstract view(answer: A, reading: Reading): Child;
  protected abstract summary(answer: A, reading: Reading): string;

  protected get reading(): Reading {
    return { numbers: this.numbers, texts: this.texts, names: this.names };
  }

  protected get names(): Map<string, string> {
    return new Map();
  }

  /** Written as the page's language asks, or else the browser's. */
  protected get numbers(): Numbers {
    return new Numbers(this.closest<HTMLElement>('[lang]')?.lang || navigator.language, this.currency);
  }

  private script(): D | undefined {
    const script = this.querySelector(':scope > script[type="application/json"]');
    return script ? JSON.parse(script.textContent ?? '') : undefined;
  }

  private show(state: State<A>): void {
    const { texts } = this;
    const busy = state.kind === 'loading' || state.kind === 'waiting';
    this.result.setAttribute('aria-busy', String(busy));
    this.result.inert = busy;
    this.dataset.state = state.kind;
    switch (state.kind) {
      case 'loading':
        this.tell(texts.loading, h('p', { class: 'loading' }, texts.loading));
        return;
      case 'waiting': {
        const text = fill(texts.waiting, { seconds: this.numbers.number(state.seconds, 0) });
        // The seconds that pass are seen, not spoken.
        this.tell(this.notice.querySelector('.waiting') ? undefined : text, h('p', { class: 'waiting' }, text), this.again());
        return;
      }
      case 'answer': {
        const { reading } = this;
        this.notice.hidden = true;
        this.status.textContent = this.summary(state.answer, reading);
        this.result.replaceChildren(...nodes(this.view(state.answer, reading)));
        this.dispatchEvent(new CustomEvent('footwell-result', { detail: state.answer, bubbles: true, composed: true }));
        return;
      }
      case 'problem':
        this.problem(state.problem.detail || state.problem.title, state.problem.errors ?? []);
        return;
      case 'refused':
        this.fail(texts.refused, h('p', {}, h('small', {}, fill(texts.refusedDetail, { origin: location.origin }))), this.again());
        return;
      case 'silent':
      case 'late':
      case 'busy':
        this.fail(texts[state.kind], this.again());
    }
  }

  protected problem(detail: string, faults: Fault[]): void {
    const list = faults.map((fault) => h('li', {}, fault.detail, ' ', h('code', {}, fault.pointer)));
    this.fail(this.texts.problem, list.length ? h('ul', {}, list) : h('p', {}, detail), this.again());
  }

  /** What was shown before must not pass for the answer. */
  protected fail(text: string, ...more: HTMLElement[]): void {
    this.result.replaceChildren();
    this.tell(text, h('p', { class: 'failure' }, text), ...more);
  }

  private tell(spoken: string | undefined, ...seen: HTMLElement[]): void {
    if (spoken !== undefined) this.status.textContent = spoken;
    const focused = this.notice.contains(this.shadowRoot!.activeElement);
    this.notice.replaceChildren(...seen);
    this.notice.hidden = false;
    if (focused) this.notice.querySelector('button')?.focus();
  }

  private again(): HTMLElement {
    return h('button', { type: 'button', part: 'button', click: () => this.calculate() }, this.texts.again);
  }
}

function nodes(views: Child): (Node | string)[] {
  return [views].flat(9).filter(Boolean) as (Node | string)[];
}
