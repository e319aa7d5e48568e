// One value of the plan: a text, a number, one of a list, yes or no, the id of something.
import { element } from "./dom.js";
import { literal, number, plain, pointer, string } from "./json-text.js";
import { fromTyped } from "./numbers.js";
import { digest, placeId } from "./places.js";
import { slot } from "./remarks.js";
import { asked, fieldName, language, meaning, say, shown, unit, valueName } from "./words.js";

const LONG = 200;

export const isScalar = ({ type }) => type !== "object" && type !== "array";

const isNumber = ({ type }) => type === "number" || type === "integer";

/** Label, control, help and remarks of the value at a path. The prefix tells two controls of one value apart. */
export function field(form, path, { prefix = "f", label } = {}) {
  const schema = form.contract.at(path);
  const id = placeId(path, prefix);
  const described = `${id}:help ${id}:said`;
  const input = control(form, path, schema, { id, "aria-describedby": described });
  const name = path.at(-1);
  const record = form.contract.at(path.slice(0, -1)).record;
  const made = element(
    "div",
    { class: `field${isNumber(schema) ? " number" : ""}${(schema.maxLength ?? 0) > LONG ? " wide" : ""}`, "data-place": pointer(path), "data-live": true },
    element("label", { for: id }, label ?? fieldName(name, record), measured(name)),
    input,
    help(form.contract, path, `${id}:help`),
    slot(form.remarks, pointer(path), `${id}:said`),
  );
  made.refresh = () => {
    input.read();
    const wrong = form.remarks.at(pointer(path)).some(({ level }) => level === "fault");
    if (wrong) input.setAttribute("aria-invalid", "true");
    else input.removeAttribute("aria-invalid");
  };
  made.refresh();
  return made;
}

const measured = (name) => {
  const text = typeof name === "string" ? unit(name) : "";
  return text ? element("span", { class: "unit" }, ` ${text}`) : "";
};

/** What a field means, its bounds, and what counts when nothing is given. */
export function help(contract, path, id) {
  const schema = contract.at(path);
  const { minimum: low, maximum: high, default: standard } = schema;
  const bounds = { low: low === undefined ? "" : shown(low, 6), high: high === undefined ? "" : shown(high, 6) };
  const said = [];
  if (typeof path.at(-1) === "string") said.push(...sentence(contract, path, schema));
  if (isNumber(schema) && !schema.enum && low !== undefined && high !== undefined) said.push(say("help.bounds", bounds));
  if (standard !== undefined) said.push(say("help.default", { value: valueText(schema, standard) }));
  return element("small", { class: "help", id }, said.flatMap((one, i) => (i === 0 ? [one] : [" ", one])));
}

/** In the reader's language, else that of the contract, which is in English. What an entry of a list is, the list says. */
function sentence(contract, path, { description }) {
  const translated = meaning(path.at(-1), contract.at(path.slice(0, -1)).record);
  if (translated) return [`${translated}.`];
  return description ? [element("span", { lang: language() === "en" ? undefined : "en" }, `${description}.`)] : [];
}

const valueText = (schema, value) =>
  typeof value === "boolean" ? say(`yes.${value}`) : schema.enum && !isNumber(schema) ? valueName(value) : typeof value === "number" ? shown(value, 6) : value;

function control(form, path, schema, attributes) {
  const referred = form.contract.referredBy(path);
  if (referred) return choice(form, path, attributes, () => entriesOf(form, referred));
  if (schema.type === "boolean") {
    return choice(form, path, attributes, () => [true, false].map((value) => ({ value: literal(value), text: say(`yes.${value}`) })));
  }
  if (schema.enum) {
    const made = isNumber(schema) ? (value) => number(String(value)) : string;
    return choice(form, path, attributes, () => schema.enum.map((value) => ({ value: made(value), text: valueText(schema, value) })));
  }
  return typing(form, path, schema, attributes);
}

/** What a field may name: every entry of a list, by its id, told by what it is. */
function entriesOf(form, pattern) {
  let found = [[]];
  for (const step of pattern) {
    found = found.flatMap((path) =>
      step === "*" ? (form.job.at(path)?.items ?? []).map((_, i) => [...path, i]) : [[...path, step]]);
  }
  return found
    .filter((path) => form.job.at(path)?.kind === "string")
    .map((path) => {
      const about = digest(form.job.at(path.slice(0, -1)));
      const id = form.job.at(path).value;
      return { value: string(id), text: about ? `${id} · ${about}` : id };
    });
}

const key = (node) => (node === undefined ? "" : JSON.stringify(plain(node)));

function choice(form, path, attributes, options) {
  const select = element("select", attributes);
  let offered = [];
  select.read = () => {
    const now = form.job.at(path);
    offered = [{ text: say("choice.none") }, ...options()];
    if (!offered.some(({ value }) => key(value) === key(now))) offered.push({ value: now, text: String(plain(now)) });
    select.replaceChildren(...offered.map(({ value, text }) => element("option", { value: key(value) }, text)));
    select.value = key(now);
  };
  select.addEventListener("change", () => form.job.edit(path, offered[select.selectedIndex].value));
  return select;
}

function typing(form, path, schema, attributes) {
  const numeric = isNumber(schema);
  // Keyboards for decimals lack the minus sign, and the letters of a unit.
  const keyboard = numeric && !(schema.minimum < 0) && !asked.has("units") ? "decimal" : undefined;
  const input = element("input", { type: "text", autocomplete: "off", spellcheck: "false", inputmode: keyboard, dir: numeric ? "ltr" : "auto", ...attributes });
  const typed = () => (numeric ? fromTyped(input.value, path.at(-1)) : input.value === "" ? undefined : string(input.value));
  const text = (node) => (node === undefined ? "" : node.kind === "object" || node.kind === "array" ? JSON.stringify(plain(node)) : String(node.value));
  let session;
  input.read = () => {
    const now = form.job.at(path);
    // What is being typed stays as typed, such as 3, on the way to 3.5.
    if (text(typed()) !== text(now)) input.value = text(now);
  };
  input.addEventListener("focus", () => (session = {}));
  input.addEventListener("input", () => form.job.edit(path, typed(), { session }));
  return input;
}

