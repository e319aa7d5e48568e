import { h, type Child } from './dom.js';

/** Where an element says what it is doing, and shows the answer. */
export class Panel {
  /** Spoken by screen readers; what is seen stands in the notice. */
  private readonly status = h('p', { role: 'status', class: 'unseen' });
  private readonly notice = h('div', { class: 'notice', part: 'notice', hidden: true });
  private readonly result = h('div', { class: 'result', part: 'result' });
  readonly element = h('div', {}, this.status, this.notice, this.result);

  /** While a new answer is awaited the old one can be seen, but nothing can be done with it. */
  busy(busy: boolean): void {
    this.result.setAttribute('aria-busy', String(busy));
    this.result.inert = busy;
  }

  tell(text: string, ...seen: HTMLElement[]): void {
    this.speak(text);
    this.see(...seen);
  }

  /** The seconds that pass are seen, not spoken. */
  count(text: string, ...more: HTMLElement[]): void {
    if (!this.notice.querySelector('.waiting')) this.speak(text);
    this.see(h('p', { class: 'waiting' }, text), ...more);
  }

  /** What was shown before must not pass for the answer. */
  fail(text: string, ...more: HTMLElement[]): void {
    this.result.replaceChildren();
    this.tell(text, h('p', { class: 'failure' }, text), ...more);
  }

  answer(text: string, views: Child): void {
    this.result.replaceChildren(...([views].flat(9).filter(Boolean) as (Node | string)[]));
    this.notice.hidden = true;
    this.speak(text);
  }

  clear(): void {
    this.result.replaceChildren();
    this.notice.hidden = true;
    this.speak('');
  }

  /** The same words again are not said again. */
  private speak(text: string): void {
    if (this.status.textContent !== text) this.status.textContent = text;
  }

  private see(...seen: HTMLElement[]): void {
    const focused = this.notice.contains((this.notice.getRootNode() as ShadowRoot).activeElement);
    this.notice.replaceChildren(...seen);
    this.notice.hidden = false;
    if (focused) this.notice.querySelector('button')?.focus();
  }
}
