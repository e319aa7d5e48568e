// Lists of the plan: entries that open, rows of a table of figures, or plain values.
import { field, isScalar } from "./controls.js";
import { button, element } from "./dom.js";
import { fold } from "./folds.js";
import { get, list, literal, number, pointer, put, string } from "./json-text.js";
import { digest, entryName } from "./places.js";
import { recordBody, removal, skeleton, unused } from "./records.js";
import { badges, slot } from "./remarks.js";
import { counted, say, shown } from "./words.js";

const MOST_FIGURES = 3;

export const listCount = (form, path) => counted("count.entries", form.job.at(path)?.items?.length ?? 0);

/** The entries of the list at a path, and what can be done with them. */
export function listBody(form, path) {
  const node = form.job.at(path);
  const schema = form.contract.at(path);
  const entry = form.contract.at([...path, 0]);
  const items = node?.items ?? [];
  const row = isScalar(entry) ? value : isFigures(form, path, entry) ? figures : opening;
  const full = items.length >= (schema.maxItems ?? Infinity);
  return [
    ...items.map((_, i) => row(form, [...path, i], items.length)),
    element(
      "p",
      { class: "actions", "data-place": `${pointer(path)}/-` },
      button(say("form.add-entry"), () => form.append(path, isScalar(entry) ? blank(entry) : skeleton(form, [...path, items.length])), { disabled: full }),
      ...(full ? [element("small", {}, say("form.full", { count: shown(schema.maxItems) }))] : []),
    ),
  ];
}

/** Something to type over; the service says what does not fit. */
const blank = ({ type }) => (type === "number" || type === "integer" ? number("0") : type === "boolean" ? literal(false) : string(""));

/** Whether entries are points of a curve and the like: a few numbers, nothing to open. */
function isFigures(form, path, { properties, required = [] }) {
  const keys = Object.keys(properties);
  return keys.length <= MOST_FIGURES && required.length === keys.length && keys.every((key) => form.contract.at([...path, 0, key]).type === "number");
}

const numbered = (path) => say("entry.numbered", { number: shown(path.at(-1) + 1) });

function value(form, path) {
  return element("div", { class: "row" }, field(form, path, { label: numbered(path) }), removal(form, path, say("form.remove", { name: numbered(path) })));
}

function figures(form, path) {
  const keys = Object.keys(form.contract.at(path).properties);
  return element(
    "div",
    { class: "row", role: "group", "aria-label": numbered(path), "data-place": pointer(path) },
    keys.map((key) => field(form, [...path, key])),
    removal(form, path, say("form.remove", { name: numbered(path) })),
    slot(form.remarks, pointer(path)),
  );
}

function opening(form, path) {
  const at = pointer(path);
  const index = path.at(-1);
  const title = element("span", { class: "title", dir: "auto", "data-live": true });
  title.refresh = () => (title.textContent = entryName(form.job.at(path), index));
  const about = element("span", { class: "digest", dir: "auto", "data-live": true });
  about.refresh = () => (about.textContent = digest(form.job.at(path)));
  [title, about].forEach((live) => live.refresh());
  const name = () => entryName(form.job.at(path), index);
  return fold({ "data-key": at, "data-place": at }, [title, " ", about, " ", badges(form.remarks, [at])], () => [
    slot(form.remarks, at),
    ...recordBody(form, path),
    element(
      "p",
      { class: "actions" },
      button(say("form.duplicate", { name: name() }), () => form.append(path.slice(0, -1), copy(form, path))),
      removal(form, path, say("form.remove", { name: name() })),
    ),
  ]);
}

/** The same again, with names of its own where no two may share one. */
function copy(form, path) {
  const above = path.slice(0, -1);
  return form.contract.uniqueIn(above).reduce((node, key) => {
    const taken = form.job.at(above).items.map((item) => get(item, [key])?.value);
    const old = get(node, [key]);
    const refers = form.contract.referredBy([...path, key]);
    return old?.kind === "string" && !refers ? put(node, [key], string(unused(old.value, taken))) : node;
  }, form.job.at(path));
}

/** A list with one more at its end. */
export const longer = (node, item) => (node?.kind === "array" ? put(node, [node.items.length], item) : list(item));
