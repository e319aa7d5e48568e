// The cabin from above, to scale: seats and loudspeakers, moved by pointer, touch or arrow keys.
// Axes are those of ISO 8855: x forward, y to the left, z up; on paper forward is up.
import { field } from "./controls.js";
import { drawn, element } from "./dom.js";
import { get, number, plain, pointer } from "./json-text.js";
import { entryName } from "./places.js";
import { measure, say, shown } from "./words.js";

const MARGIN_M = 0.35;
const SEAT_M = 0.46;
const REACH_M = 0.2;
const STEP_M = 0.01;
const FAR_STEP_M = 0.1;
const MOST_M = 20;
const KEYS = {
  ArrowUp: [1, 0, 0], ArrowDown: [-1, 0, 0], ArrowLeft: [0, 1, 0], ArrowRight: [0, -1, 0], PageUp: [0, 0, 1], PageDown: [0, 0, -1],
};
const AXES = ["x_m", "y_m", "z_m"];

/** The drawing with the fields of what is chosen beside it; `kind` says which list it is drawn for. */
export function cabin(form, kind) {
  let chosen;
  const beside = element("div", { class: "beside" });
  const told = element("p", { class: "unseen", role: "status" });
  const paper = drawn("svg", { class: "cabin", role: "group", "aria-label": say("cabin.label"), "data-live": true });
  const floor = drawn("g", { "aria-hidden": "true" });
  const hint = element("p", { class: "help" }, say("cabin.hint"));
  const whole = element("div", { class: "drawing" }, element("figure", {}, paper, element("figcaption", {}, hint)), beside, told);

  function choose(mark) {
    chosen = mark.at;
    beside.replaceChildren(
      element("h3", {}, element("bdi", {}, nameOf(form, mark))),
      ...mark.positions.map((path) =>
        element("div", { class: "fields" }, AXES.map((axis) => field(form, [...path, axis], { prefix: `${kind}:` })))));
    drawnMarks.forEach((one, at) => one.classList.toggle("chosen", at === chosen));
  }

  function move(mark, by, session) {
    const changes = mark.positions.flatMap((path) =>
      AXES.flatMap((axis, i) => (by[i] === 0 ? [] : [[[...path, axis], moved(form.job.at([...path, axis]), by[i])]])));
    if (changes.length > 0) form.job.editAll(changes, session);
  }

  let box;
  let dragging = false;
  const drawnMarks = new Map();
  function draw() {
    const marks = marksOf(form);
    if (!dragging) box = span(marks.map(({ point }) => point), form);
    paper.setAttribute("viewBox", `${box.left} ${box.top} ${box.width} ${box.height}`);
    const there = [...drawnMarks.keys()];
    if (there.length !== marks.length || marks.some(({ at }, i) => at !== there[i])) {
      drawnMarks.clear();
      marks.forEach((mark) => drawnMarks.set(mark.at, markOf(mark)));
      paper.replaceChildren(floor, ...drawnMarks.values());
    }
    floor.replaceChildren(...surroundings(box));
    for (const mark of marks) place(drawnMarks.get(mark.at), mark);
  }

  function place(made, mark) {
    const { x, y } = onPaper(mark.point);
    made.setAttribute("transform", `translate(${x} ${y})`);
    made.setAttribute("aria-label", say("cabin.mark", { name: nameOf(form, mark), ...where(mark.point) }));
    made.querySelector("title").textContent = nameOf(form, mark);
    made.classList.toggle("chosen", mark.at === chosen);
  }

  function markOf({ kind: shape, at }) {
    const now = () => marksOf(form).find((mark) => mark.at === at);
    return drawn(
      "g",
      {
        class: `mark ${shape}`, tabindex: "0", role: "button", id: `${kind}-mark:${at}`, "data-at": at,
        onfocus: () => at !== chosen && choose(now()), onkeydown: (event) => onKey(event, now()), onpointerdown: onPointer,
      },
      drawn("title"),
      drawn("circle", { class: "reach", r: REACH_M }),
      shape === "seat"
        ? drawn("rect", { class: "shape", x: -SEAT_M / 2, y: -SEAT_M / 2, width: SEAT_M, height: SEAT_M, rx: 0.12 })
        : drawn("circle", { class: "shape", r: 0.06 }),
    );
  }

  let session;
  function onKey(event, mark) {
    const direction = KEYS[event.key];
    if (!direction || event.altKey || event.ctrlKey || event.metaKey) {
      if (event.key === "Enter" || event.key === " ") {
        event.preventDefault();
        beside.querySelector("input")?.focus();
      }
      return;
    }
    event.preventDefault();
    if (session?.at !== mark.at) session = { at: mark.at };
    move(mark, direction.map((one) => one * (event.shiftKey ? FAR_STEP_M : STEP_M)), session);
    const now = marksOf(form).find(({ at }) => at === mark.at);
    told.textContent = say("cabin.mark", { name: nameOf(form, now), ...where(now.point) });
  }

  /** Takes the mark that is nearest, since reaches overlap, and lets it follow the pointer. */
  function onPointer(event) {
    if (event.button !== 0) return;
    event.preventDefault();
    const toMetres = metresOf(paper);
    const from = toMetres(event);
    const far = ({ point }) => Math.hypot(point.x_m - from.x_m, point.y_m - from.y_m);
    const mark = marksOf(form).reduce((one, other) => (far(other) < far(one) ? other : one));
    drawnMarks.get(mark.at).focus({ preventScroll: true });
    dragging = true;
    const step = {};
    let [goneX, goneY] = [0, 0];
    const follow = (moved) => {
      const to = toMetres(moved);
      const [x, y] = [to.x_m - from.x_m, to.y_m - from.y_m].map((one) => Math.round(one / STEP_M) * STEP_M);
      move(mark, [x - goneX, y - goneY, 0], step);
      [goneX, goneY] = [x, y];
    };
    const end = () => {
      window.removeEventListener("pointermove", follow);
      window.removeEventListener("pointerup", end);
      window.removeEventListener("pointercancel", end);
      dragging = false;
      draw();
    };
    window.addEventListener("pointermove", follow);
    window.addEventListener("pointerup", end);
    window.addEventListener("pointercancel", end);
  }

  paper.refresh = draw;
  draw();
  const first = marksOf(form).find((mark) => mark.kind === (kind === "seats" ? "seat" : "driver"));
  if (first) choose(first);
  return whole;
}

/** The same in hundredths of a metre and within what a plan allows. */
function moved(node, by) {
  const to = Math.min(MOST_M, Math.max(-MOST_M, Number(node.value) + by));
  return number(String(Number(to.toFixed(2))));
}

/** From where the pointer is to metres in the vehicle; as it is when the pointer goes down, for the paper follows what is moved. */
function metresOf(paper) {
  const toPaper = paper.getScreenCTM().inverse();
  return ({ clientX, clientY }) => {
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(toPaper);
    return { x_m: -y, y_m: -x };
  };
}

/** All that has a place: seats by their position or both ears, and loudspeakers. */
function marksOf(form) {
  const seats = entries(form, "seats").map((path) => ({ kind: "seat", path, positions: [["position"], ["left_ear"], ["right_ear"]].map((one) => [...path, ...one]) }));
  const drivers = entries(form, "drivers").map((path) => ({ kind: "driver", path, positions: [[...path, "position"]] }));
  return [...seats, ...drivers].flatMap((mark) => {
    const positions = mark.positions.filter((path) => isPlace(form.job.at(path)));
    if (positions.length === 0) return [];
    const all = positions.map((path) => plain(form.job.at(path)));
    const point = Object.fromEntries(AXES.map((axis) => [axis, all.reduce((sum, one) => sum + one[axis], 0) / all.length]));
    return [{ ...mark, positions, point, at: pointer(mark.path) }];
  });
}

const entries = (form, list) => (form.job.at([list])?.items ?? []).map((_, i) => [list, i]);

const isPlace = (node) => AXES.every((axis) => get(node, [axis])?.kind === "number");

const nameOf = (form, { path }) => entryName(form.job.at(path), path.at(-1));

const where = ({ x_m, y_m, z_m }) => ({ x: measure(x_m, "x_m", 2), y: measure(y_m, "y_m", 2), z: measure(z_m, "z_m", 2) });

const onPaper = ({ x_m, y_m }) => ({ x: -y_m, y: -x_m });

function span(points, form) {
  const on = points.map(onPaper);
  const length = Number(form.job.at(["vehicle", "cabin", "length_m"])?.value) || 0;
  const xs = on.length > 0 ? on.map(({ x }) => x) : [-1, 1];
  const ys = on.length > 0 ? on.map(({ y }) => y) : [-1, 1];
  const [left, right] = [Math.min(...xs) - MARGIN_M, Math.max(...xs) + MARGIN_M];
  const [top, bottom] = [Math.min(...ys) - MARGIN_M, Math.max(...ys) + MARGIN_M];
  // Where the cabin begins is not known: its length is laid about the middle of what is in it.
  const spare = Math.max(0, Math.min(length, 20) - (bottom - top)) / 2;
  return { left, top: top - spare, width: right - left, height: bottom - top + 2 * spare };
}

/** Outline, a line each half metre through the origin, windscreen and scale. */
function surroundings({ left, top, width, height }) {
  const [right, bottom] = [left + width, top + height];
  const inset = 0.03;
  const lines = [];
  for (let x = Math.ceil(left * 2) / 2; x < right; x += 0.5) lines.push(drawn("path", { class: x === 0 ? "axis" : "grid", d: `M${x} ${top + inset}V${bottom - inset}` }));
  for (let y = Math.ceil(top * 2) / 2; y < bottom; y += 0.5) lines.push(drawn("path", { class: y === 0 ? "axis" : "grid", d: `M${left + inset} ${y}H${right - inset}` }));
  return [
    drawn("rect", { class: "floor", x: left + inset, y: top + inset, width: width - 2 * inset, height: height - 2 * inset, rx: 0.2 }),
    ...lines,
    drawn("path", { class: "windscreen", d: `M${left + 0.25} ${top + 0.17}Q${left + width / 2} ${top + 0.04} ${right - 0.25} ${top + 0.17}` }),
    drawn("path", { class: "scale", d: `M${left + 0.15} ${bottom - 0.12}h0.5m0 -0.03v0.06m-0.5 -0.06v0.06` }),
    drawn("text", { x: left + 0.4, y: bottom - 0.17, "text-anchor": "middle" }, `${shown(0.5, 1)} m`),
  ];
}
