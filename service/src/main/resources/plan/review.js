// What the service says of the plan: verdict, headline, faults, findings, the setup, plots, cautions.
import { button, element, own } from "./dom.js";
import { fold } from "./folds.js";
import { path } from "./json-text.js";
import { placeName } from "./places.js";
import { plots } from "./plots.js";
import { LEVELS, sign } from "./remarks.js";
import { counted, figure, measure, money, say, unit, valueName } from "./words.js";

/** Shows every step of a review in the elements given to it; `reveal` leads to a place of the form. */
export function showReview({ reviewing, job, contract, remarks, form, status, short, home }) {
  const parts = Object.fromEntries(["verdict", "faults", "figures", "findings", "setup", "safety"].map((name) => [name, element("section", { class: `part ${name}` })]));
  const [faults, ...others] = ["faults", "verdict", "figures", "findings", "setup"].map((name) => parts[name]);
  home.replaceChildren(faults, ...others, plots(reviewing), parts.safety);
  let shownAnswer;

  function step() {
    const { state, answer, problem } = reviewing;
    remarks.become([...faultsOf(state, problem), ...findingsOf(answer)]);
    home.classList.toggle("stale", !reviewing.isCurrent && answer !== undefined);
    home.setAttribute("aria-busy", String(state === "asking" || state === "waiting"));
    status.replaceChildren(said());
    short.replaceChildren(...brief());
    const wrong = remarks.all.filter(({ level }) => level === "fault");
    parts.faults.replaceChildren(...(wrong.length === 0 ? [] : [element("h3", {}, counted("review.faults", wrong.length)), remarkList(wrong)]));
    if (answer !== shownAnswer) {
      shownAnswer = answer;
      show(answer);
    }
    form.refresh();
  }

  function said() {
    const { state, answer, problem } = reviewing;
    const again = button(say("review.again"), () => reviewing.again());
    if (state === "failed") return element("span", {}, problem?.detail ?? problem?.title ?? say("review.silent"), " ", again);
    if (state === "refused") return say(answer ? "review.refused-stale" : "review.refused");
    if (state === "answered") return say("review.current");
    return say(answer ? "review.stale" : "review.asking");
  }

  /** The line a phone shows below while the form is worked on. */
  function brief() {
    const wrong = remarks.all.filter(({ level }) => level === "fault").length;
    if (wrong > 0) return [sign("fault"), ` ${counted("review.faults", wrong)}`];
    const { answer } = reviewing;
    if (!answer) return [say("review.asking")];
    const level = answer.result.level_db_spl;
    return [
      sign(answer.verdict), ` ${say(`verdict.${answer.verdict}`)}`,
      ...(level === undefined ? [] : [` · ${measure(level, "level_db_spl")}`]),
      ...(reviewing.isCurrent ? [] : [` · ${say("review.stale-short")}`]),
    ];
  }

  function show(answer) {
    if (!answer) {
      Object.values(parts).forEach((part) => part.replaceChildren());
      return;
    }
    const { verdict, result, findings, safety } = answer;
    parts.verdict.className = `part verdict ${verdict}`;
    parts.verdict.replaceChildren(sign(verdict), element("h3", {}, say(`verdict.${verdict}`)));
    parts.figures.replaceChildren(element("dl", {}, figures(result, job.at(["quote", "currency"])?.value)));
    parts.findings.replaceChildren(
      element("h3", {}, findings.length === 0 ? say("review.no-findings") : counted("review.findings", findings.length)),
      remarkList(findingsOf(answer)));
    parts.setup.replaceChildren(...(result.setup_sheet?.length ? [setup(result.setup_sheet)] : []));
    parts.safety.replaceChildren(fold({}, element("h3", {}, say("review.safety")), () => [element("ul", {}, safety.map((one) => element("li", {}, one)))]));
  }

  function remarkList(all) {
    const sorted = LEVELS.flatMap((level) => all.filter((one) => one.level === level));
    return element("ul", { class: "said" }, sorted.map(({ level, text, pointers }) =>
      element("li", { class: level }, sign(level), element("div", {}, element("p", {}, element("strong", {}, say(`level.${level}`)), " ", own(text)), links(pointers)))));
  }

  function links(pointers) {
    const places = pointers.filter((one) => one !== "");
    if (places.length === 0) return [];
    return element("p", { class: "links" }, places.map((one) => button(own(placeName(job, contract, path(one))), () => form.reveal(one), { class: "link" })));
  }

  reviewing.addEventListener("step", step);
}

const faultsOf = (state, problem) =>
  (state === "answered" ? [] : problem?.errors ?? []).map(({ pointer: at = "", detail }) => ({ level: "fault", text: detail, pointers: [at] }));

const findingsOf = (answer) =>
  (answer?.findings ?? []).map(({ level, text, pointer: at, places }) => ({ level, text, pointers: places ?? [at ?? ""] }));

/** Level now, the largest and what ends it, price, mass. */
function figures({ level_db_spl: level, level_dba: dba, largest, main_seat: seat, price, mass_change_g: mass }, currency) {
  const one = (name, value, about) => {
    if (value === undefined) return [];
    const [number, measured] = value.split("\u202f");
    const big = element("strong", {}, number, measured && element("span", {}, `\u202f${measured}`));
    return [element("div", {}, element("dt", {}, name), element("dd", {}, big, about && element("small", {}, about)))];
  };
  const sound = (value) => (value === undefined ? undefined : measure(value, "level_db_spl", 1, 1));
  return [
    ...one(say("figure.level"), sound(level), seat && [say("figure.at"), " ", own(seat), dba === undefined ? "" : `, ${measure(dba, "level_dba", 1, 1)}`]),
    ...one(say("figure.largest"), sound(largest?.level_db_spl), largest && [say("figure.held-by", { limit: valueName(largest.held_by) }), ...[largest.driver ?? largest.channel].filter(Boolean).flatMap((id) => [", ", own(id)])]),
    ...one(say("figure.price"), price === undefined ? undefined : money(price, currency), say("figure.price-about")),
    ...one(say("figure.mass"), mass === undefined ? undefined : massOf(mass), say("figure.mass-about")),
  ];
}

const massOf = (grams) => (Math.abs(grams) >= 1000 ? `${figure(grams / 1000, 0, 2)}\u202fkg` : `${figure(grams, 0, 1)}\u202f${unit("mass_g")}`);

/** Columns of the setup with the fewest and most decimals of their unit. */
const COLUMNS = [["gain_target_v", 0, 2], ["trim_db", 1, 1], ["delay_ms", 2, 2], ["polarity", 0, 0]];

function setup(rows) {
  const filter = (one) => (one ? `${figure(one.frequency_hz, 0, 1)}\u202f${unit("frequency_hz")}` : "–");
  return element("div", { class: "wide-table", tabindex: "0", role: "region", "aria-label": say("review.setup") },
    element("table", {},
      element("caption", {}, element("h3", {}, say("review.setup"))),
      element("thead", {}, element("tr", {},
        element("th", { scope: "col" }, say("setup.channel")),
        COLUMNS.map(([key]) => element("th", { scope: "col" }, say(`setup.${key}`), unit(key) && element("small", {}, ` ${unit(key)}`))),
        ["high_pass", "low_pass"].map((key) => element("th", { scope: "col" }, say(`setup.${key}`))))),
      element("tbody", {}, rows.map((row) => element("tr", {},
        element("th", { scope: "row" }, own(row.id)),
        COLUMNS.map(([key, fewest, most]) => element("td", {}, row[key] === undefined ? "–" : key === "polarity" ? (row[key] < 0 ? "\u2212" : "+") : figure(row[key], fewest, most))),
        [row.high_pass, row.low_pass].map((one) => element("td", {}, filter(one))))))));
}
