"use strict";
// Draws the table of a sweep: for each output a chart over the first input, one line for each value of
// the second. Lines differ by dashes and are named at their ends, so that no colour is needed.
const sweepChart = (() => {
  const WIDTH = 720, HEIGHT = 320, LEFT = 76, RIGHT = 132, TOP = 12, BOTTOM = 52;
  const MOST_LINES = 12;
  const DASHES = ["", "8 4", "2 3", "10 3 2 3", "14 5", "5 2"];

  function node(name, attributes, ...children) {
    const made = document.createElementNS("http://www.w3.org/2000/svg", name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.append(...children);
    return made;
  }

  /** A number as people read it. */
  const shown = (value) =>
    typeof value === "number" ? String(Number(value.toPrecision(4))) : String(value);

  /** Whether neighbours have equal ratios, as preferred numbers about have, over a wide range. */
  function isRatios(values) {
    if (values.length < 3 || values[0] <= 0 || values.at(-1) < 8 * values[0]) return false;
    const ratios = values.slice(1).map((value, i) => value / values[i]);
    return Math.max(...ratios) < 1.6 * Math.min(...ratios);
  }

  /** Round numbers from low to high: 1, 2, 5 times a power of ten. */
  function ticks(low, high) {
    const rough = (high - low) / 5;
    const power = 10 ** Math.floor(Math.log10(rough));
    const step = [1, 2, 5, 10].map((by) => by * power).find((size) => size >= rough);
    const all = [];
    for (let i = Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i++) all.push(i * step);
    return all;
  }

  function ratioTicks(low, high) {
    const all = [];
    for (let power = Math.floor(Math.log10(low)); 10 ** power <= high; power++) {
      for (const by of [1, 2, 5]) {
        const tick = by * 10 ** power;
        if (tick >= low * (1 - 1e-9) && tick <= high * (1 + 1e-9)) all.push(tick);
      }
    }
    return all;
  }

  /** From values to places between two ends of the paper. */
  function scale(values, ratios, from, to) {
    let low = Math.min(...values), high = Math.max(...values);
    if (low === high) [low, high] = [low - (Math.abs(low) || 1) / 10, high + (Math.abs(high) || 1) / 10];
    const of = ratios ? Math.log : (value) => value;
    return {
      place: (value) => from + ((of(value) - of(low)) / (of(high) - of(low))) * (to - from),
      ticks: ratios ? ratioTicks(low, high) : ticks(low, high),
    };
  }

  function axes(x, y, across, up) {
    const bottom = HEIGHT - BOTTOM, right = WIDTH - RIGHT;
    const parts = [
      node("rect", { x: LEFT, y: TOP, width: right - LEFT, height: bottom - TOP, fill: "none", stroke: "currentColor" }),
      node("text", { x: (LEFT + right) / 2, y: HEIGHT - 8, "text-anchor": "middle" }, across),
      node("text", { transform: `translate(16 ${(TOP + bottom) / 2}) rotate(-90)`, "text-anchor": "middle" }, up),
    ];
    for (const tick of x.ticks) {
      const at = x.place(tick);
      parts.push(
        node("line", { x1: at, x2: at, y1: TOP, y2: bottom, stroke: "currentColor", "stroke-opacity": 0.2 }),
        node("text", { x: at, y: bottom + 18, "text-anchor": "middle" }, shown(tick)));
    }
    for (const tick of y.ticks) {
      const at = y.place(tick);
      parts.push(
        node("line", { x1: LEFT, x2: right, y1: at, y2: at, stroke: "currentColor", "stroke-opacity": 0.2 }),
        node("text", { x: LEFT - 6, y: at + 4, "text-anchor": "end" }, shown(tick)));
    }
    return parts;
  }

  /** A line breaks where a row has no answer. */
  function path(points, x, y) {
    let drawn = "", open = false;
    for (const [across, up] of points) {
      if (typeof up === "number") drawn += `${open ? "L" : "M"}${x.place(across).toFixed(1)} ${y.place(up).toFixed(1)}`;
      open = typeof up === "number";
    }
    return drawn;
  }

  /** Rows by the value of the second input; all together where there is none. */
  function lines(table, output) {
    const [first, second] = table.inputs;
    const byName = new Map();
    for (const row of table.rows) {
      const name = second ? `${second.path} ${shown(row.inputs[second.path])}` : "";
      if (!byName.has(name)) byName.set(name, []);
      byName.get(name).push([row.inputs[first.path], row.outputs?.[output.path]]);
    }
    return [...byName];
  }

  /** Names at the ends of lines, moved apart where they would stand on each other. */
  function names(ends) {
    let lowest = -Infinity;
    return ends
      .sort((one, other) => one.at - other.at)
      .map(({ name, at }) => {
        lowest = Math.max(at + 4, lowest + 14);
        return node("text", { x: WIDTH - RIGHT + 8, y: lowest }, name);
      });
  }

  function chart(table, output) {
    const drawn = lines(table, output).slice(0, MOST_LINES);
    const points = drawn.flatMap(([, some]) => some);
    const known = points.filter(([, up]) => typeof up === "number");
    if (known.length < 2) return null;
    const across = [...new Set(points.map(([value]) => value))];
    const x = scale(across, isRatios(across), LEFT, WIDTH - RIGHT);
    const y = scale(known.map(([, up]) => up), false, HEIGHT - BOTTOM, TOP);
    const ends = [];
    const paths = drawn.map(([name, some], i) => {
      const last = some.filter(([, up]) => typeof up === "number").at(-1);
      if (last && name) ends.push({ name, at: y.place(last[1]) });
      return node("path", { d: path(some, x, y), fill: "none", stroke: "currentColor", "stroke-width": 2,
        "stroke-dasharray": DASHES[i % DASHES.length] });
    });
    const title = `${output.path} over ${table.inputs[0].path}`;
    return node("svg",
      { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-label": title, "font-family": "sans-serif",
        "font-size": 12, fill: "currentColor" },
      node("title", {}, title),
      ...axes(x, y, table.inputs[0].meaning, output.meaning), ...paths, ...names(ends));
  }

  function caption(table) {
    const second = table.inputs[1];
    const unanswered = table.rows.filter((row) => row.problem).length;
    return [
      second ? `One line for each value of ${second.path}: ${second.meaning}.` : "",
      second && new Set(table.rows.map((row) => row.inputs[second.path])).size > MOST_LINES
        ? `The first ${MOST_LINES} are drawn.` : "",
      unanswered ? `${unanswered} of ${table.rows.length} rows have no answer: there is a gap.` : "",
    ].filter(Boolean).join(" ");
  }

  /** A figure with a chart for each output that is a number, or null where there is nothing to draw. */
  return (table) => {
    if (typeof table.rows[0]?.inputs[table.inputs[0].path] !== "number") return null;
    const charts = table.outputs.map((output) => chart(table, output)).filter(Boolean);
    if (charts.length === 0) return null;
    const figure = document.createElement("figure");
    figure.className = "sweep";
    const words = document.createElement("figcaption");
    words.textContent = caption(table);
    figure.append(...charts, words);
    return figure;
  };
})();
