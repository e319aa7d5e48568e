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

/** Numbers as a reader of one language writes them. */
export class Numbers {
  constructor(
    readonly locale: string,
    readonly currency?: string,
  ) {}

  number(value: number, digits = 1): string {
    return isolated(this.plain(value, digits, 'auto'));
  }

  unit(value: number, unit: string, digits = 1): string {
    return isolated(this.plain(value, digits, 'auto') + THIN + unit);
  }

  change(value: number, unit: string, digits = 1): string {
    return isolated(this.plain(value, digits, 'exceptZero') + THIN + unit);
  }

  mass(grams: number): string {
    return Math.abs(grams) < 1000 ? this.unit(grams, 'g', 0) : this.unit(grams / 1000, 'kg', 1);
  }

  massChange(grams: number): string {
    return Math.abs(grams) < 1000 ? this.change(grams, 'g', 0) : this.change(grams / 1000, 'kg', 1);
  }

  /** Without a currency, which no request must state, the bare amount. */
  money(amount: number): string {
    if (!this.currency) return this.number(amount, 2);
    return this.format(amount, { style: 'currency', currency: this.currency });
  }

  hours(hours: number): string {
    const [value, unit] = hours >= 1 ? [hours, 'hour'] : hours >= 1 / 60 ? [hours * 60, 'minute'] : [hours * 3600, 'second'];
    return this.format(value, { style: 'unit', unit, unitDisplay: 'short', maximumFractionDigits: value < 10 ? 1 : 0 });
  }

  /** As it stands in a field: no grouping, so that it can be read back. */
  field(value: number): string {
    return this.format(value, { useGrouping: false, maximumFractionDigits: 6 }).replace(MARKS, '');
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

  private plain(value: number, digits: number, signDisplay: 'auto' | 'exceptZero'): string {
    const shown = Number(value.toFixed(digits)) === 0 ? 0 : value; // Without the sign that a small negative number keeps.
    return this.format(shown, { maximumFractionDigits: digits, minimumFractionDigits: digits, signDisplay }).replace(MARKS, '');
  }

  private format(value: number, options: Intl.NumberFormatOptions): string {
    return new Intl.NumberFormat(this.locale, options).format(value).replace('-', '−');
  }
}

/** What keeps its own direction in a sentence of another, as number and unit do. */
export function isolated(text: string): string {
  return `\u2068${text}\u2069`;
}
