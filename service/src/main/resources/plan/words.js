// What the page says: words from the service in the reader's language, numbers as that language writes them.
let lang = "en";
let texts = {};
let units = {};
let formats = new Map();

/** What the address of the page asks for. */
export const asked = new URLSearchParams(location.search);

/** @param said what the service answers: the language, texts by their keys, and what units are worth */
export function speak(said) {
  ({ lang, texts, units } = said);
  formats = new Map();
}

export const language = () => lang;

export const has = (key) => key in texts;

/** A text with `{name}` filled in; a key without a text is seen as it is. */
export const say = (key, values = {}) =>
  (texts[key] ?? key).replace(/\{(\w+)\}/g, (slot, name) => values[name] ?? slot);

/** Keys that begin so, without that beginning. */
export const listed = (beginning) =>
  Object.keys(texts).filter((key) => key.startsWith(beginning)).map((key) => key.slice(beginning.length));

/** One or several: the key with `.one` or `.other`, as the language counts. */
export const counted = (key, count) => {
  const kind = new Intl.PluralRules(lang).select(count);
  return say(has(`${key}.${kind}`) ? `${key}.${kind}` : `${key}.other`, { count: shown(count) });
};

/** Name of a field for people; its record may call it otherwise. A name without words is spelt out. */
export const fieldName = (field, record = "") =>
  texts[`field.${record}.${field}`] ?? texts[`field.${field}`] ?? sentence(withoutUnit(field));

/** What a field means, where the reader's language has it. */
export const meaning = (field, record) => texts[`meaning.${record}.${field}`] ?? texts[`meaning.${field}`];

/** Name of one value out of a list. */
export const valueName = (value) => texts[`value.${value}`] ?? sentence(String(value));

const sentence = (name) => name.charAt(0).toUpperCase() + name.slice(1).replaceAll("_", " ");

/** The unit a field's name ends in: the longest ending that is one. */
export function unit(field) {
  const ending = unitEnding(field);
  return ending ? texts[`unit.${ending}`] : "";
}

/** The end of a field's name that is its unit, if one is. */
export function unitEnding(field) {
  const parts = field.split("_");
  return parts.map((_, i) => parts.slice(i).join("_")).find((end, i) => i > 0 && `unit.${end}` in texts);
}

/** Dimension and metres of a length, an area or a volume as it is written, if it is one. */
export const unitWorth = (written) => (Object.hasOwn(units, written) ? units[written] : undefined);

function withoutUnit(field) {
  const ending = unitEnding(field);
  return ending ? field.slice(0, -ending.length - 1) : field;
}

/** From here on the sheets set the thousands of a figure apart; those of money always. */
const GROUPED = 10_000;

/** A number as people read it, with a real minus sign. */
export function shown(value, digits = 0, least = 0, grouped = GROUPED) {
  const rounded = Number(value.toFixed(digits)) || 0;
  const useGrouping = Math.abs(rounded) >= grouped;
  const key = `${digits}/${least}/${useGrouping}`;
  if (!formats.has(key)) {
    formats.set(key, new Intl.NumberFormat(lang, { maximumFractionDigits: digits, minimumFractionDigits: least, useGrouping }));
  }
  return formats.get(key).format(rounded).replace("-", "\u2212");
}

const SIGNIFICANT = 3;

/**
 * A figure as the sheets have it: three significant digits, but no digit before the point is lost, and no
 * fewer and no more decimals than its unit has.
 */
export function figure(value, fewest, most) {
  const before = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1;
  return shown(value, Math.max(fewest, Math.min(most, SIGNIFICANT - before)), fewest);
}

/** A number with its unit, which does not part from it. */
export const measure = (value, field, digits = 1, least = 0) => `${shown(value, digits, least)}\u202f${unit(field)}`;

/**
 * A price with its currency, an ISO 4217 code, as the sheets write it: with as many decimals as that has; two where none
 * is known.
 */
export const money = (value, currency) =>
  /^[A-Z]{3}$/.test(currency ?? "")
    ? `${shown(value, 20, new Intl.NumberFormat(lang, { style: "currency", currency }).resolvedOptions().minimumFractionDigits, 0)}\u00a0${currency}`
    : shown(value, 2, 2, 0);
