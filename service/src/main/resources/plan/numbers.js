// What people type where a number belongs, as JSON.
import { number, string } from "./json-text.js";

const JSON_NUMBER = /^-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?$/;
const TYPED = /^([-+\u2212]?)(\d*)(?:[.,](\d*))?$/;

/**
 * The value of what was typed: a number in its own digits, nothing where there is nothing. What is no number
 * stays as text, so that it is kept and the service says what is wrong with it.
 */
export function fromTyped(text) {
  const typed = text.trim();
  if (typed === "") return undefined;
  if (JSON_NUMBER.test(typed)) return number(typed);
  const [, sign, whole, part = ""] = TYPED.exec(typed) ?? [];
  if (whole === undefined || whole + part === "") return string(text);
  const digits = (whole.replace(/^0+(?=\d)/, "") || "0") + (part ? `.${part}` : "");
  return number((sign && sign !== "+" ? "-" : "") + digits);
}
