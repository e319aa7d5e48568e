import type { Finding, Verdict } from './client.js';
import { h } from './dom.js';
import type { Names } from './names.js';
import { directionOf, type Numbers } from './numbers.js';
import { fill, type Texts } from './texts.js';
import { decides, type Told } from './verdict.js';

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

/** Findings and cautions are in the language the service was asked for. */
export function inServiceLanguage({ service }: Texts) {
  return { lang: service, dir: directionOf(service) };
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

/** What stops the work and what the customer decides stands open; what is for the workshop can be unfolded. */
export function findingsView(findings: Finding[], reading: Reading) {
  const { texts } = reading;
  const line = ({ text, subjects }: Said) => h('li', {}, subjects.length > 0 && [h('b', {}, subjects.join(', ')), ': '], text);
  const list = (items: Said[]) => h('ul', inServiceLanguage(texts), items.map(line));
  const open = (kind: Verdict, title: string, some: Finding[]) =>
    some.length > 0 &&
    h('section', { class: `findings ${kind}`, part: `findings ${kind}` }, h('h2', {}, title), list(merged(some, reading)));
  const folded = (kind: Told, title: string, some: Finding[]) => {
    const items = merged(some, reading);
    const summary = fill(title, { count: reading.numbers.number(items.length) });
    return items.length > 0 && h('details', { class: `findings ${kind}`, part: `findings ${kind}` }, h('summary', {}, summary), list(items));
  };
  const of = (level: Verdict) => findings.filter((finding) => finding.level === level);
  const warnings = of('warning');
  return [
    open('stop', texts.stops, of('stop')),
    open('warning', texts.warnings, warnings.filter(decides).map(({ advice, ...finding }) => finding)), // Advice is for the fitter.
    folded('workshop', texts.open, warnings.filter((finding) => !decides(finding))),
    folded('note', texts.notes, of('note')),
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
      h('ul', inServiceLanguage(texts), [...new Set(safety)].map((caution) => h('li', {}, caution))),
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
