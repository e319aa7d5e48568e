// Parts of the page that are made when they are opened.
import { element } from "./dom.js";

/**
 * A part that opens and closes.
 *
 * @param heading what always shows
 * @param make gives what shows when open; asked once
 */
export function fold(attributes, heading, make) {
  const body = element("div", { class: "body" });
  let filled = false;
  function fill() {
    if (filled) return;
    filled = true;
    body.append(...make());
  }
  // Filled before it opens, so that whoever goes on at once goes on into it.
  const made = element("details", attributes, element("summary", { onclick: fill }, heading), body);
  made.unfold = () => {
    fill();
    made.open = true;
  };
  made.addEventListener("toggle", () => made.open && made.unfold());
  return made;
}

/** Opens a part and all it lies in. */
export function unfoldAround(node) {
  for (let fold = node.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.unfold();
}
