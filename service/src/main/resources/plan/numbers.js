// What people type where a number belongs, as JSON.
import { number, string } from "./json-text.js";
import { unitEnding, unitWorth } from "./words.js";

const JSON_NUMBER = /^-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?$/;
const TYPED = /^([-+\u2212]?)(\d*)(?:[.,](\d*))?$/;
/** 3.5 in, 3 1/2 in, 1/2 in: sign, decimal number or whole, part and of, and the unit. */
const WITH_UNIT = /^([-+\u2212]?)(?:(\d+(?:[.,]\d+)?)|(?:(\d+)[ -])?(\d+)\/([1-9]\d*)) ?([^\d\s.,/-]\S*)$/;
/** Beyond these digits is what converting leaves of nothing. */
const DIGITS = 12;

/**
 * The value of what was typed into a field: a number in its own digits, nothing where there is nothing. A length, an
 * area or a volume may come with its unit and is put into the field's. What is no number stays as text, so that it is
 * kept and the service says what is wrong with it.
 */
export function fromTyped(text, field) {
  const typed = text.trim();
  if (typed === "") return undefined;
  if (JSON_NUMBER.test(typed)) return number(typed);
  const [, sign, whole, part = ""] = TYPED.exec(typed) ?? [];
  if (whole === undefined || whole + part === "") return converted(typed, field) ?? string(text);
  const digits = (whole.replace(/^0+(?=\d)/, "") || "0") + (part ? `.${part}` : "");
  return number((sign && sign !== "+" ? "-" : "") + digits);
}

function converted(typed, field) {
  const own = unitWorth(unitEnding(String(field)));
  const [count, worth] = quantity(typed);
  if (!own || worth?.dimension !== own.dimension) return undefined;
  return number(String(Number(((count * worth.metres) / own.metres).toPrecision(DIGITS))));
}

/** How many of what; a gauge of wire is one of itself. */
function quantity(typed) {
  const gauge = unitWorth(typed.replace(" ", "").toUpperCase());
  if (gauge) return [1, gauge];
  const [, sign, decimal, whole = "0", part, of, unit] = WITH_UNIT.exec(typed) ?? [];
  if (unit === undefined) return [];
  const count = decimal === undefined ? Number(whole) + part / of : Number(decimal.replace(",", "."));
  return [sign && sign !== "+" ? -count : count, unitWorth(unit)];
}
