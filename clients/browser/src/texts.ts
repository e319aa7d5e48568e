import type { paths } from './contract.js';
import { languages } from './languages.js';
import english from './words/en.js';

type Words = typeof english;

/** Every word the elements say of their own. A shop replaces what it wants through `texts`. */
export type Texts = Omit<Words, 'service'> & { service: ServiceLanguage };

/** Languages the service speaks */
export type ServiceLanguage = NonNullable<NonNullable<paths['/v1/plan-review']['post']['parameters']['query']>['lang']>;

export { english };

/** The words of a language, or else the English ones. */
export function textsOf(locale: string): Texts {
  const known: Partial<Record<string, Texts>> = languages;
  return known[new Intl.Locale(locale).language] ?? english;
}

export function fill(text: string, values: Record<string, string | number>): string {
  return text.replace(/\{(\w+)\}/g, (_, key: string) => String(values[key]));
}
