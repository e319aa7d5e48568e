// JSON as it was written. Every value remembers its own text, so that a document is given back letter for
// letter where nothing was changed: numbers with all their digits, spaces and line ends as they were.
// Values are never changed; `put` answers another document that shares what stayed the same.

const DEEPEST = 50;

/** What is not JSON, with the place it was found at. */
export class NotJson extends Error {
  constructor(line, column) {
    super(`line ${line}, column ${column}`);
    Object.assign(this, { line, column });
  }
}

/** @returns {{before: string, root: object, after: string}} a document to `put` into and to `write` */
export function read(text) {
  let at = 0;

  function fail() {
    const lines = text.slice(0, at).split("\n");
    throw new NotJson(lines.length, lines.at(-1).length + 1);
  }
  function token(pattern) {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (!found) fail();
    at = pattern.lastIndex;
    return found[0];
  }
  const space = () => token(/[ \t\r\n]*/y);

  function value(depth) {
    if (depth > DEEPEST) fail();
    const start = at;
    const first = text[at];
    const made =
      first === "{" ? { kind: "object", entries: members(depth) }
      : first === "[" ? { kind: "array", items: several("]", () => value(depth + 1)) }
      : first === '"' ? { kind: "string", value: string() }
      : /[-0-9]/.test(first ?? "") ? { kind: "number", value: token(/-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?/y) }
      : { kind: "literal", value: JSON.parse(token(/true|false|null/y)) };
    made.source = text.slice(start, at);
    return made;
  }

  function members(depth) {
    const seen = new Set();
    return several("}", () => {
      const name = string();
      if (seen.has(name)) fail();
      seen.add(name);
      space();
      token(/:/y);
      space();
      return [name, value(depth + 1)];
    });
  }

  function several(end, one) {
    const all = [];
    at++;
    space();
    while (text[at] !== end || all.length > 0) {
      all.push(one());
      space();
      if (text[at] === end) break;
      token(/,/y);
      space();
    }
    at++;
    return all;
  }

  function string() {
    const start = at;
    const source = token(/"([^"\\\u0000-\u001f]|\\.)*"/y);
    try {
      return JSON.parse(source);
    } catch {
      at = start;
      return fail();
    }
  }

  const before = token(/\ufeff?[ \t\r\n]*/y);
  const root = value(1);
  const after = space();
  if (at < text.length) fail();
  return { before, root, after };
}

/** The text of a document. */
export function write({ before, root, after }) {
  const step = /\n([ \t]+)["\[{]/.exec(root.source ?? "")?.[1] ?? root.step ?? "  ";
  return before + written(root, "", step) + after;
}

function written(node, indent, step) {
  if (node.source !== undefined) return node.source;
  if (node.kind === "number") return node.value;
  if (node.kind !== "object" && node.kind !== "array") return JSON.stringify(node.value);
  const [open, close] = node.kind === "object" ? "{}" : "[]";
  const parts = (further) =>
    node.kind === "object"
      ? node.entries.map(([name, child]) => `${JSON.stringify(name)}: ${written(child, further, step)}`)
      : node.items.map((child) => written(child, further, step));
  const together = parts(indent);
  if (together.length === 0) return open + close;
  if (node.inline && together.every((part) => !part.includes("\n"))) return open + together.join(", ") + close;
  const further = indent + step;
  return `${open}\n${further}${parts(further).join(`,\n${further}`)}\n${indent}${close}`;
}

/** The value at a path of names and indices, or undefined. */
export function get(node, path) {
  return path.reduce((here, step) => child(here, step), node);
}

function child(node, step) {
  if (node?.kind === "object") return node.entries.find(([name]) => name === String(step))?.[1];
  return node?.kind === "array" ? node.items[step] : undefined;
}

/** The same with another value at a path, or without one there; what is missing on the way is made. */
export function put(node, path, value) {
  if (path.length === 0) return value;
  const [step, ...rest] = path;
  const wanted = value === undefined && rest.length > 0 && !child(node, step) ? undefined : put(child(node, step), rest, value);
  if (node?.kind === "array") {
    const items = [...node.items];
    if (wanted === undefined) items.splice(step, 1);
    else items[step] = wanted;
    return { kind: "array", items, ...form(node) };
  }
  const entries = node?.kind === "object" ? [...node.entries] : [];
  const index = entries.findIndex(([name]) => name === String(step));
  if (wanted === undefined) {
    if (index >= 0) entries.splice(index, 1);
  } else if (index >= 0) entries[index] = [String(step), wanted];
  else entries.push([String(step), wanted]);
  return { kind: "object", entries, ...form(node) };
}

/** What is kept of how a value was written when something in it changes. */
function form(node) {
  if (!node) return { inline: true };
  const { source, inline, step } = node;
  if (source === undefined) return { inline, step };
  return { inline: !source.includes("\n") && source.length > 2, step: /\n([ \t]+)["\[{]/.exec(source)?.[1] };
}

export const string = (value) => ({ kind: "string", value });
export const number = (text) => ({ kind: "number", value: text });
export const literal = (value) => ({ kind: "literal", value });
export const list = (...items) => ({ kind: "array", items, inline: items.every(({ kind }) => kind !== "object" && kind !== "array") });
export const record = (entries) => ({ kind: "object", entries, inline: entries.every(([, one]) => one.kind !== "object" && one.kind !== "array") });

/** A value as a program sees it. */
export function plain(node) {
  if (node === undefined) return undefined;
  if (node.kind === "object") return Object.fromEntries(node.entries.map(([name, one]) => [name, plain(one)]));
  if (node.kind === "array") return node.items.map(plain);
  return node.kind === "number" ? Number(node.value) : node.value;
}

/** A JSON Pointer (RFC 6901) as a path, indices as numbers. */
export const path = (pointer) =>
  pointer.split("/").slice(1).map((step) => (/^\d+$/.test(step) ? Number(step) : step.replaceAll("~1", "/").replaceAll("~0", "~")));

export const pointer = (path) => path.map((step) => "/" + String(step).replaceAll("~", "~0").replaceAll("/", "~1")).join("");
