import type { Finding, Verdict } from './client.js';
import { h } from './dom.js';
import type { Names } from './names.js';
import type { Numbers } from './numbers.js';
import { fill, type Texts } from './texts.js';

/** What every view needs beside the answer. */
export interface Reading {
  numbers: Numbers;
  texts: Texts;
  names: Names;
}

interface Said {
  text: string;
  subjects: string[];
}

const ORDER: Verdict[] = ['ok', 'note', 'warning', 'stop'];
/** The service speaks English, whatever the page does. */
const AS_THE_SERVICE = { lang: 'en', dir: 'ltr' };

const SIGN: Record<Verdict, string> = { ok: '✓', note: '✓', warning: '!', stop: '✕' };

export function worst(verdicts: Verdict[]): Verdict {
  return ORDER[Math.max(...verdicts.map((verdict) => ORDER.indexOf(verdict)))];
}

export function verdictView(verdict: Verdict, { texts }: Reading): HTMLElement {
  return h(
    'div',
    { class: `verdict ${verdict}`, part: `verdict ${verdict}` },
    h('span', { class: 'sign', 'aria-hidden': 'true' }, SIGN[verdict]),
    h('div', {}, h('h2', {}, texts[verdict]), h('p', {}, texts[`${verdict}Text`])),
  );
}

/** One large figure; absent where the answer has none. */
export function figure(label: string, value: string | undefined, ...small: (string | undefined)[]) {
  return (
    value !== undefined &&
    h(
      'div',
      { class: 'figure', part: 'figure' },
      h('dt', {}, label),
      h('dd', {}, h('strong', {}, value), small.filter(Boolean).map((line) => h('small', {}, line!))),
    )
  );
}

/** Stops and warnings stand open; notes, which are for the fitter, can be unfolded. */
export function findingsView(findings: Finding[], reading: Reading) {
  const { texts } = reading;
  const group = (level: Verdict) => merged(findings.filter((finding) => finding.level === level), reading);
  const line = ({ text, subjects }: Said) => h('li', {}, subjects.length > 0 && [h('b', {}, subjects.join(', ')), ': '], text);
  const list = (items: Said[]) => h('ul', AS_THE_SERVICE, items.map(line));
  const open = (level: Verdict, title: string) => {
    const items = group(level);
    return items.length > 0 && h('section', { class: `findings ${level}`, part: `findings ${level}` }, h('h2', {}, title), list(items));
  };
  const notes = group('note');
  return [
    open('stop', texts.stops),
    open('warning', texts.warnings),
    notes.length > 0 &&
      h(
        'details',
        { class: 'findings note', part: 'findings note' },
        h('summary', {}, fill(texts.notes, { count: notes.length })),
        list(notes),
      ),
  ];
}

/** Cautions are always shown. */
export function safetyView(safety: string[], { texts }: Reading) {
  return (
    safety.length > 0 &&
    h(
      'section',
      { class: 'safety', part: 'safety' },
      h('h2', {}, texts.safety),
      h('ul', AS_THE_SERVICE, [...new Set(safety)].map((caution) => h('li', {}, caution))),
    )
  );
}

/** What is said of several parts in the same words is said once. */
function merged(findings: Finding[], { names }: Reading): Said[] {
  const said = new Map<string, string[]>();
  for (const { text, advice, subject } of findings) {
    const sentence = names.in(advice ? `${text} ${advice}` : text);
    const subjects = said.get(sentence) ?? [];
    said.set(sentence, subjects);
    const name = subject && names.in(subject);
    if (name && !subjects.includes(name)) subjects.push(name);
  }
  return [...said].map(([text, subjects]) => ({ text, subjects }));
}
