const THIN = '\u202f';

/** Numbers as a reader of one language writes them. */
export class Numbers {
  constructor(
    readonly locale: string,
    readonly currency?: string,
  ) {}

  number(value: number, digits = 1): string {
    return this.format(value, { maximumFractionDigits: digits, minimumFractionDigits: digits, signDisplay: 'negative' });
  }

  unit(value: number, unit: string, digits = 1): string {
    return this.number(value, digits) + THIN + unit;
  }

  change(value: number, unit: string, digits = 1): string {
    const shown = { maximumFractionDigits: digits, minimumFractionDigits: digits };
    return this.format(value, { ...shown, signDisplay: 'exceptZero' }) + THIN + unit;
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
    return this.format(value, { useGrouping: false, maximumFractionDigits: 6, numberingSystem: 'latn' });
  }

  /**
   * Reads a field. Comma and point both pass as the decimal mark; what could also be a grouped
   * number, such as 1.250 where thousands are set off with points, is nobody's guess: NaN.
   */
  parse(text: string): number {
    const plain = text.replace(/^\s+|\s+$|[\u200e\u200f\u061c]/g, '').replace('−', '-');
    const group = new Intl.NumberFormat(this.locale).formatToParts(12345678).find((part) => part.type === 'group')?.value;
    const grouped = /^[-+]?[1-9]\d{0,2}([.,])\d{3}$/.exec(plain);
    if (grouped && grouped[1] === group) return NaN;
    return /^[-+]?(\d+[.,]?\d*|[.,]\d+)$/.test(plain) ? Number(plain.replace(',', '.')) : NaN;
  }

  private format(value: number, options: Intl.NumberFormatOptions): string {
    return new Intl.NumberFormat(this.locale, options).format(value).replace('-', '−');
  }
}
