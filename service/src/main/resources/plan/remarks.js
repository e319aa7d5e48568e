// What the service said about places of the plan: faults it cannot calculate with, findings of a fitter.
import { element } from "./dom.js";
import { counted, say } from "./words.js";

export const LEVELS = ["fault", "stop", "warning", "note"];
const SIGNS = { fault: "✕", stop: "✕", warning: "!", note: "i", ok: "✓" };

/** A mark that needs no colour. */
export const sign = (level) => element("span", { class: `sign ${level}`, "aria-hidden": "true" }, SIGNS[level]);

export class Remarks {
  #all = [];

  /** @param all each with its level, its text, and the pointers of what it is about */
  become(all) {
    this.#all = all;
  }

  get all() {
    return this.#all;
  }

  at(pointer) {
    return this.#all.filter(({ pointers }) => pointers.includes(pointer));
  }

  within(pointer) {
    return this.#all.filter(({ pointers }) => pointers.some((one) => one === pointer || one.startsWith(`${pointer}/`)));
  }
}

/** Shows what is said exactly at a place; about all that is within it where nothing of that is shown. */
export function slot(remarks, pointer, id, whole = false) {
  const made = element("div", { class: "remarks", id, "data-live": true });
  made.refresh = () => {
    const said = whole ? remarks.within(pointer) : remarks.at(pointer);
    made.replaceChildren(...said.map(({ level, text }) => element("p", { class: level }, sign(level), " ", element("span", { dir: "auto" }, text))));
  };
  made.refresh();
  return made;
}

/** How many faults and findings stand within some places. */
export function badges(remarks, pointers) {
  const made = element("span", { class: "badges", "data-live": true });
  made.refresh = () => {
    const said = new Set(pointers.flatMap((pointer) => remarks.within(pointer)));
    made.replaceChildren(
      ...LEVELS.flatMap((level) => {
        const count = [...said].filter((one) => one.level === level).length;
        return count === 0 ? [] : [element("span", { class: `badge ${level}`, title: say(`level.${level}`) }, sign(level), counted(`count.${level}`, count))];
      }),
    );
  };
  made.refresh();
  return made;
}
