import { lengthUnit, METRES, metresOf, writtenLength, type Units } from './units.js';

const THIN = '\u202f';
const MARKS = /[\u200e\u200f\u061c\u2066-\u2069]/g;
const WRITTEN_LEFTWARDS = ['Arab', 'Hebr', 'Syrc', 'Thaa', 'Nkoo', 'Adlm', 'Rohg'];

/** The first of some languages that is one; a page may say en_US. */
export function localeOf(...languages: (string | undefined)[]): string {
  for (const language of languages) {
    try {
      const [locale] = Intl.getCanonicalLocales(language?.replaceAll('_', '-'));
      if (locale) return locale;
    } catch {
      // Not the name of a language: the next one counts.
    }
  }
  return 'en';
}

export function directionOf(language: string): 'rtl' | 'ltr' {
  const { script } = new Intl.Locale(localeOf(language)).maximize();
  return WRITTEN_LEFTWARDS.includes(script ?? '') ? 'rtl' : 'ltr';
}

/** Fewest and most decimals of a figure in a unit, as on the service's sheets. */
const DECIMALS: Record<string, [fewest: number, most: number]> = {
  dB: [1, 1],
  'dB SPL': [1, 1],
  dBA: [1, 1],
  octaves: [1, 1],
  Hz: [0, 1],
  W: [0, 2],
  ms: [2, 2],
  m: [0, 2],
  ft: [0, 2],
  g: [0, 1],
  kg: [0, 2],
};
const SIGNIFICANT = 3;

/** From here on the sheets set the thousands of a figure apart; those of money always. */
const GROUPED = 10_000;

type Exact = `${number}`;

/** Numbers as a reader of one language writes them. */
export class Numbers {
  /** What lengths are shown and entered in. */
  readonly lengthUnit: string;

  constructor(
    readonly locale: string,
    readonly currency?: string,
    units: Units = 'metric',
  ) {
    this.lengthUnit = lengthUnit(units);
  }

  /** A count. */
  number(value: number): string {
    return isolated(this.format(value, { maximumFractionDigits: 0 }));
  }

  /** A figure without its unit, for what names the unit itself. */
  bare(value: number, unit: string): string {
    return isolated(this.rounded(value, unit, 'auto'));
  }

  unit(value: number, unit: string): string {
    return isolated(this.rounded(value, unit, 'auto') + THIN + unit);
  }

  change(value: number, unit: string): string {
    return isolated(this.rounded(value, unit, 'exceptZero') + THIN + unit);
  }

  length(metres: number): string {
    return this.unit(metres / METRES[this.lengthUnit], this.lengthUnit);
  }

  mass(grams: number): string {
    return Math.abs(grams) < 1000 ? this.unit(grams, 'g') : this.unit(grams / 1000, 'kg');
  }

  massChange(grams: number): string {
    return Math.abs(grams) < 1000 ? this.change(grams, 'g') : this.change(grams / 1000, 'kg');
  }

  /**
   * A sum of money with all its decimals, as the sheets write it. Without a currency, which no request must state, the
   * bare amount.
   */
  money(amount: number | Exact): string {
    return this.amount(amount, 20);
  }

  /** What is worked out of money and is no sum to pay, in the decimals of the currency. */
  moneyAbout(amount: number): string {
    return this.amount(amount, 0);
  }

  private amount(amount: number | Exact, most: number): string {
    const { currency } = this;
    const least = currency ? new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().minimumFractionDigits! : 2;
    const sum = this.format(amount, { minimumFractionDigits: least, maximumFractionDigits: Math.max(least, most) });
    return isolated(currency ? `${sum}\u00a0${currency}` : sum);
  }

  /** A time in the unit a person would use, to two digits. */
  hours(hours: number): string {
    const [value, unit] = hours >= 1 ? [hours, 'hour'] : hours >= 1 / 60 ? [hours * 60, 'minute'] : [hours * 3600, 'second'];
    return this.format(value, { style: 'unit', unit, unitDisplay: 'long', maximumSignificantDigits: 2 }).replace(' ', '\u00a0');
  }

  /** As it stands in a field: no grouping, so that it can be read back. */
  field(value: number): string {
    return this.format(value, { useGrouping: false, maximumFractionDigits: 6 }).replace(MARKS, '');
  }

  /** A length as it stands in a field, as fine as a tape tells it. */
  lengthField(metres: number): string {
    return this.field(Math.round((metres / METRES[this.lengthUnit]) * 100) / 100);
  }

  /** Metres of a length in a field: a number in its unit, or one with a unit of its own, such as 35 1/2 in. */
  parseLength(text: string): number {
    const number = this.parse(text);
    return Number.isNaN(number) ? writtenLength(text) : metresOf(number, this.lengthUnit);
  }

  /**
   * Reads a field, in the digits of the language or in 0 to 9. Comma and point both pass as the decimal
   * mark; what could also be a grouped number, such as 1.250 where thousands are set off with points,
   * is nobody's guess: NaN.
   */
  parse(text: string): number {
    const { digits, decimal, group } = this.marks();
    const latin = [...text.replace(MARKS, '').trim()].map((one) => (digits.includes(one) ? digits.indexOf(one) : one)).join('');
    const plain = latin.replace('−', '-').replace(decimal, decimal === ',' ? ',' : '.');
    const grouped = /^[-+]?[1-9]\d{0,2}([.,])\d{3}$/.exec(plain);
    if (grouped && grouped[1] === group) return NaN;
    return /^[-+]?(\d+[.,]?\d*|[.,]\d+)$/.test(plain) ? Number(plain.replace(',', '.')) : NaN;
  }

  private marks() {
    const parts = new Intl.NumberFormat(this.locale).formatToParts(12345678.9);
    const mark = (type: string) => parts.find((part) => part.type === type)?.value ?? '';
    const digits = [...new Intl.NumberFormat(this.locale, { useGrouping: false }).format(9876543210)].reverse();
    return { digits, decimal: mark('decimal'), group: mark('group') };
  }

  /**
   * To three significant digits, but no digit before the point is lost, and with no fewer and no more
   * decimals than the unit has; half of the last digit away from zero.
   */
  private rounded(value: number, unit: string, signDisplay: 'auto' | 'exceptZero'): string {
    const [fewest, most] = DECIMALS[unit] ?? [0, 1];
    const before = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1;
    const maximumFractionDigits = Math.max(fewest, Math.min(most, SIGNIFICANT - before));
    const options = { minimumFractionDigits: fewest, maximumFractionDigits, useGrouping: Math.abs(value) >= GROUPED };
    const shown = new Intl.NumberFormat('en', { ...options, useGrouping: false }).format(exact(value));
    const size = Number(shown) === 0 ? 0 : value; // Without the sign that a small negative number keeps.
    return this.format(size, { ...options, signDisplay }).replace(MARKS, '');
  }

  private format(value: number | Exact, options: Intl.NumberFormatOptions): string {
    return new Intl.NumberFormat(this.locale, options).format(exact(value)).replace('-', '−');
  }
}

/** By its shortest decimals, not by the binary fraction next to them: 1.005 is half of a hundredth. */
function exact(value: number | Exact): number {
  return String(value) as unknown as number; // Browsers before 2023 read the text as the number it is.
}

/** What keeps its own direction in a sentence of another, as number and unit do. */
export function isolated(text: string): string {
  return `\u2068${text}\u2069`;
}
