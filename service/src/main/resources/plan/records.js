// The fields of one record: those that are needed or given first, the rest where they are asked for.
import { field, help, isScalar } from "./controls.js";
import { button, element, own } from "./dom.js";
import { fold } from "./folds.js";
import { get, pointer, record, number, string, list, write } from "./json-text.js";
import { listBody, listCount } from "./lists.js";
import { digest, placeId } from "./places.js";
import { badges, slot } from "./remarks.js";
import { fieldName, say } from "./words.js";

/** What shows of the record at a path; `only` some of its fields, and all of those at once. */
export function recordBody(form, path, only) {
  const node = form.job.at(path);
  if (node && node.kind !== "object") return [unreadable(form, path)];
  const { properties, record: name } = form.contract.at(path);
  const has = (key) => get(node, [key]) !== undefined;
  const choices = form.contract.choices(path);
  const asked = new Set(choices.filter(({ needed, names }) => needed && !names.some(has)).flatMap(({ names }) => names));
  const known = (key) => Object.hasOwn(properties, key);
  const keys = (only ?? Object.keys(properties)).filter((key) => known(key) && (has(key) || !form.contract.isShut([...path, key])));
  const first = keys.filter((key) => only || has(key) || asked.has(key) || form.contract.isRequired([...path, key]));
  const more = keys.filter((key) => !first.includes(key));
  const unknown = (node?.entries ?? []).map(([key]) => key).filter((key) => !known(key) && (!only || only.includes(key)));
  return [
    ...choices.filter(({ names }) => !only && names.every((key) => keys.includes(key))).map((one) => choiceNote(one, name)),
    ...parts(form, path, first),
    ...(more.length === 0 ? [] : [fold({ class: "more", "data-key": `${pointer(path)}:more` }, say("form.more", { count: more.length }), () => parts(form, path, more))]),
    ...unknown.map((key) => unreadable(form, [...path, key])),
  ];
}

const choiceNote = ({ needed, names }, record) =>
  element("p", { class: "choice" }, say(needed ? "form.exactly-one" : "form.at-most-one", { names: names.map((key) => fieldName(key, record)).join(", ") }));

function parts(form, path, keys) {
  const schemas = keys.map((key) => [[...path, key], form.contract.at([...path, key])]);
  const scalars = schemas.filter(([, schema]) => isScalar(schema));
  return [
    ...(scalars.length === 0 ? [] : [element("div", { class: "fields" }, scalars.map(([at]) => field(form, at)))]),
    ...schemas.filter(([, schema]) => !isScalar(schema)).map(([at]) => (form.job.at(at) === undefined ? absent(form, at) : nested(form, at))),
  ];
}

/** A record or a list of the plan that opens. */
export function nested(form, path, open = false) {
  const schema = form.contract.at(path);
  const at = pointer(path);
  const isList = schema.type === "array";
  const about = element("span", { class: "digest", "data-live": true });
  about.refresh = () => (about.textContent = isList ? listCount(form, path) : digest(form.job.at(path)));
  about.refresh();
  const made = fold(
    { "data-key": at, "data-place": at },
    [element("span", { class: "title" }, nameOf(form, path)), " ", about, " ", badges(form.remarks, [at])],
    () => [
      help(form.contract, path, `${placeId(path)}:help`),
      slot(form.remarks, at, `${placeId(path)}:said`),
      ...(isList ? listBody(form, path) : recordBody(form, path)),
      ...(form.contract.isRequired(path) ? [] : [element("p", { class: "actions" }, removal(form, path))]),
    ],
  );
  if (open) made.unfold();
  return made;
}

const nameOf = (form, path) => fieldName(path.at(-1), form.contract.at(path.slice(0, -1)).record);

export const removal = (form, path, text = say("form.remove", { name: nameOf(form, path) })) =>
  button(text, () => form.remove(path), { class: "remove" });

/** What could be there, with all that is said of its absence. */
function absent(form, path) {
  const at = pointer(path);
  return element(
    "div",
    { class: "absent", "data-place": at },
    button(say("form.add", { name: nameOf(form, path) }), () => form.add(path, skeleton(form, path))),
    help(form.contract, path, `${placeId(path)}:help`),
    slot(form.remarks, at, `${placeId(path)}:said`, true),
  );
}

/** What the contract does not know, or not in this form: kept, shown, and taken away on request. */
function unreadable(form, path) {
  const at = pointer(path);
  const text = write({ before: "", root: form.job.at(path), after: "" });
  return element(
    "div",
    { class: "unknown", "data-place": at },
    element("p", {}, element("strong", {}, own(String(path.at(-1)))), " ", element("small", {}, say("form.unknown"))),
    element("pre", { tabindex: "0", dir: "auto" }, text),
    slot(form.remarks, at, `${placeId(path)}:said`, true),
    element("p", { class: "actions" }, removal(form, path, say("form.remove", { name: String(path.at(-1)) }))),
  );
}

/** A new value with what it cannot be without, as far as that can be known. */
export function skeleton(form, path) {
  const schema = form.contract.at(path);
  if (schema.type === "array") {
    return list(...(isScalar(schema.items) && !schema.items.$ref ? [] : Array.from({ length: schema.minItems ?? 0 }, () => skeleton(form, [...path, 0]))));
  }
  const needed = Object.keys(schema.properties).filter((key) => form.contract.isRequired([...path, key]));
  const entries = needed.flatMap((key) => {
    const inner = form.contract.at([...path, key]);
    if (schema.record === "Position") return [[key, number("0")]];
    if (key === "id") return [[key, string(freshId(form, path))]];
    return isScalar(inner) ? [] : [[key, skeleton(form, [...path, key])]];
  });
  return record(entries);
}

/** An id that no entry of the list has: its name and a number. */
function freshId(form, path) {
  const listPath = path.slice(0, path.findLastIndex((step) => typeof step === "number"));
  const taken = (form.job.at(listPath)?.items ?? []).map((item) => get(item, ["id"])?.value);
  return unused(String(listPath.at(-1)).replace(/s$/, ""), taken);
}

/** A text with a number that makes it one of its own. */
export function unused(text, taken) {
  const stem = text.replace(/_\d+$/, "");
  for (let count = taken.length + 1; ; count++) if (!taken.includes(`${stem}_${count}`)) return `${stem}_${count}`;
}

