import type { Finding, Verdict } from './client.js';
import { h } from './dom.js';
import type { Reading } from './figures.js';

/** What a customer is told: that only the workshop has something to settle is no warning to them. */
export type Told = Verdict | 'workshop';

const ORDER: Verdict[] = ['ok', 'note', 'warning', 'stop'];
const SIGN: Record<Told, string> = { ok: '✓', note: '✓', workshop: '✓', warning: '!', stop: '✕' };

/**
 * Warnings a customer decides upon: that it gets less loud, and how long it may be heard so loud.
 * Everything else at that level is about how the work is done.
 */
export const DECIDED_BY_THE_CUSTOMER = ['largest-level-lower', 'exposure-exceeded'];

export function worst(verdicts: Verdict[]): Verdict {
  return ORDER[Math.max(...verdicts.map((verdict) => ORDER.indexOf(verdict)))];
}

export function decides({ code }: Pick<Finding, 'code'>): boolean {
  return DECIDED_BY_THE_CUSTOMER.includes(code);
}

/** How the service's verdict is told to a customer, by the codes of its findings. */
export function told(verdict: Verdict, findings: Pick<Finding, 'code'>[]): Told {
  return verdict === 'warning' && !findings.some(decides) ? 'workshop' : verdict;
}

export function verdictView(verdict: Told, { texts }: Reading): HTMLElement {
  return h(
    'div',
    { class: `verdict ${verdict}`, part: `verdict ${verdict}` },
    h('span', { class: 'sign', 'aria-hidden': 'true' }, SIGN[verdict]),
    h('div', {}, h('h2', {}, texts[verdict]), h('p', {}, texts[`${verdict}Text`])),
  );
}
