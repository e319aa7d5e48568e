// Elements, made short. Text is always put in as text.

const SVG = "http://www.w3.org/2000/svg";

/** @param attributes `on…` listens, false and undefined leave out, true sets it empty */
export const element = (name, attributes = {}, ...children) => fill(document.createElement(name), attributes, children);

export const drawn = (name, attributes = {}, ...children) => fill(document.createElementNS(SVG, name), attributes, children);

function fill(made, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith("on")) made.addEventListener(name.slice(2), value);
    else if (value !== undefined && value !== false) made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...children.flat(Infinity).filter((one) => one !== undefined && one !== false));
  return made;
}

export const button = (text, onclick, attributes = {}) => element("button", { type: "button", onclick, ...attributes }, text);

/** Words of a caller: their own direction, whatever stands around them. */
export const own = (text) => element("bdi", {}, text);
