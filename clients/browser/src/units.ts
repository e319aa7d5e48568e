import type { paths } from './contract.js';

/** Systems of units the service writes in. */
export type Units = NonNullable<NonNullable<paths['/v1/plan-review']['post']['parameters']['query']>['units']>;

/** Metres in one of each, exactly (NIST Special Publication 811, appendix B). */
export const METRES: Record<string, number> = { m: 1, cm: 0.01, mm: 0.001, ft: 0.3048, "'": 0.3048, '′': 0.3048, in: 0.0254, '"': 0.0254, '″': 0.0254 };

/** A piece of 2 ft 11 1/2 in: decimal number, or whole, part and of, and the unit. */
const PIECE = /^(?:(\d+(?:[.,]\d+)?)|(?:(\d+)[ -])?(\d+)\/([1-9]\d*)) ?([a-z]+|['′"″])\s*/;

/** What a length is shown and entered in. */
export function lengthUnit(units: Units): string {
  return units === 'inch' ? 'ft' : 'm';
}

/** So many of a unit in metres, without what converting leaves behind its digits. */
export function metresOf(count: number, unit: string): number {
  return Number((count * METRES[unit]).toPrecision(12));
}

/** Metres of a length that is written with its units; NaN of anything else. */
export function writtenLength(text: string): number {
  let rest = text.trim();
  let metres = rest ? 0 : NaN;
  while (rest) {
    const [piece, decimal, whole = 0, part, of, unit] = PIECE.exec(rest) ?? [];
    if (!piece) return NaN;
    metres += (decimal ? Number(decimal.replace(',', '.')) : Number(whole) + Number(part) / Number(of)) * METRES[unit];
    rest = rest.slice(piece.length);
  }
  return metresOf(metres, 'm');
}
