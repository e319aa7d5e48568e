// The form: sections of the plan, each made when it is opened.
import { cabin } from "./cabin.js";
import { help, isScalar } from "./controls.js";
import { element } from "./dom.js";
import { fold, unfoldAround } from "./folds.js";
import { path as steps, pointer } from "./json-text.js";
import { listBody, listCount, longer } from "./lists.js";
import { placeId } from "./places.js";
import { nested, recordBody } from "./records.js";
import { badges, slot } from "./remarks.js";
import { say } from "./words.js";

/** What of a plan belongs together. What the contract has beside this makes a section at the end. */
const SECTIONS = {
  vehicle: ["date", "vehicle"],
  seats: ["seats"],
  parts: ["new_parts", "factory_parts"],
  positions: ["drivers"],
  amplifiers: ["amplifiers"],
  channels: ["channels"],
  crossovers: ["crossovers"],
  signal: ["processor", "signal", "factory_signal", "programme"],
  supply: ["supply"],
  target: ["target"],
  extras: ["extras"],
  quote: ["quote"],
  settings: ["settings"],
  measured: ["measured", "measured_supply", "measuring_errors"],
};

const ROOT = [];

export class Form {
  #sections;

  /** @param home the element that holds it */
  constructor(job, contract, remarks, home) {
    Object.assign(this, { job, contract, remarks, home });
    job.addEventListener("opened", () => this.#make());
    job.addEventListener("changed", ({ detail }) => (detail.anew ? this.#anew() : this.refresh()));
  }

  #make() {
    const known = Object.keys(this.contract.at(ROOT).properties);
    const inDocument = this.job.root.entries?.map(([key]) => key) ?? [];
    const there = new Set([...known, ...inDocument]);
    const placed = new Set(Object.values(SECTIONS).flat());
    const all = { ...SECTIONS, others: [...there].filter((key) => !placed.has(key)) };
    this.#sections = Object.entries(all)
      .map(([name, keys]) => [name, keys.filter((key) => there.has(key))])
      .filter(([, keys]) => keys.length > 0)
      .map(([name, keys]) => this.#section(name, keys));
    this.home.replaceChildren(...this.#sections);
  }

  #section(name, keys) {
    const count = element("span", { class: "digest", "data-live": true });
    count.refresh = () => (count.textContent = this.#count(keys));
    count.refresh();
    const heading = [element("h2", {}, say(`section.${name}`)), " ", count, " ", badges(this.remarks, keys.map((key) => `/${key}`))];
    const made = fold({ class: "section", "data-key": name, id: `section-${name}` }, heading, () => this.#body(name, keys));
    made.keys = keys;
    return made;
  }

  #count(keys) {
    const lists = keys.filter((key) => this.contract.at([key])?.type === "array" && this.job.at([key]));
    if (lists.length > 0) return listCount(this, [lists[0]]);
    return keys.some((key) => this.job.at([key])) ? "" : say("section.empty");
  }

  #body(name, keys) {
    const compound = keys.filter((key) => this.contract.at([key]) && !isScalar(this.contract.at([key])));
    const [single] = compound.length === 1 ? compound : [];
    const only = single && (this.job.at([single]) || this.contract.at([single]).type === "array") ? [single] : undefined;
    const drawing = name === "positions" || name === "seats" ? [cabin(this, name)] : [];
    if (!only) return [...drawing, ...recordBody(this, ROOT, keys)];
    const at = pointer(only);
    const isList = this.contract.at(only).type === "array";
    const plain = keys.filter((key) => !only.includes(key));
    return [
      ...drawing,
      ...(plain.length > 0 ? recordBody(this, ROOT, plain) : []),
      element("div", { "data-place": at }, help(this.contract, only, placeId(only)), slot(this.remarks, at)),
      ...(isList ? listBody(this, only) : recordBody(this, only)),
    ];
  }

  /** Shows the values and remarks of now. */
  refresh(root = this.home) {
    root.querySelectorAll("[data-live]").forEach((live) => live.refresh());
  }

  /** Makes what is open again, keeps open what was and the focus where it was. */
  #anew() {
    const focused = document.activeElement?.id;
    const open = [...this.home.querySelectorAll("details[open]")].map((one) => one.dataset.key);
    const scrolled = window.scrollY;
    this.#make();
    for (const key of open) this.home.querySelector(`details[data-key="${CSS.escape(key)}"]`)?.unfold();
    if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
    window.scrollTo({ top: scrolled, behavior: "instant" });
  }

  add(path, value) {
    this.job.edit(path, value, { anew: true });
    this.reveal(pointer(path), true);
  }

  append(path, item) {
    const node = longer(this.job.at(path), item);
    this.job.edit(path, node, { anew: true });
    this.reveal(pointer([...path, node.items.length - 1]), true);
  }

  /** Takes a value away; entries behind it move up, and so does what of them is open. */
  remove(path) {
    const index = path.at(-1);
    const open = [...this.home.querySelectorAll("details[open]")].map((one) => one.dataset.key);
    this.job.edit(path, undefined, { anew: true });
    if (typeof index === "number") this.#reopen(open, path.slice(0, -1), index);
    this.reveal(pointer(typeof index === "number" ? [...path.slice(0, -1), "-"] : path));
  }

  #reopen(open, listPath, removed) {
    const start = `${pointer(listPath)}/`;
    this.home.querySelectorAll("details[open]").forEach((one) => one.dataset.key.startsWith(start) && (one.open = false));
    for (const key of open.filter((one) => one.startsWith(start))) {
      const [index, ...rest] = key.slice(start.length).split(/(?=[/:])/);
      if (Number(index) === removed) continue;
      const moved = start + (index > removed ? index - 1 : index) + rest.join("");
      this.home.querySelector(`details[data-key="${CSS.escape(moved)}"]`)?.unfold();
    }
  }

  /** Opens the way to a place and puts the focus there, or as near as something shows. */
  reveal(at, open = false) {
    const path = steps(at);
    this.#sections.find(({ keys }) => keys.includes(path[0]))?.unfold();
    let shown;
    for (let depth = 1; depth <= path.length; depth++) {
      const place = this.#place(pointer(path.slice(0, depth)));
      if (!place) continue;
      shown = place;
      unfoldAround(place);
      if (place.unfold && (open || depth < path.length)) place.unfold();
    }
    shown ??= this.#sections.find(({ keys }) => keys.includes(path[0])) ?? this.#sections[0];
    const target = shown.matches("details") ? shown.querySelector("summary") : shown.querySelector("input, select, button, summary, pre");
    target?.focus({ preventScroll: true });
    shown.scrollIntoView({ block: "center" });
  }

  /** What shows a place; fields that are asked for only have to be made first. */
  #place(at) {
    const find = () => this.home.querySelector(`[data-place="${CSS.escape(at)}"]`);
    const found = find();
    if (found) return found;
    const above = at.slice(0, at.lastIndexOf("/"));
    const more = this.home.querySelector(`details[data-key="${CSS.escape(`${above}:more`)}"]`);
    if (!more) return undefined;
    const wasOpen = more.open;
    more.unfold();
    if (!find()) more.open = wasOpen;
    return find();
  }
}
