// Asks the service for reviews of the plan as it changes. A later question ends an earlier one, so that an old
// answer never stands in for a newer; what was answered stays until there is something better.
import { asked, language } from "./words.js";

const QUIET_MS = 500;
const REVIEW = "/v1/plan-review";
const CURVES = "/v1/plan-curves";

/** Tells of every "step": waiting, asking, answered, refused (with faults), failed. */
export class Reviewing extends EventTarget {
  #job;
  #query;
  #timer;
  #asking;
  #asked;

  state = "idle";
  /** What was answered last, and the text it is about. */
  answer;
  answered;
  /** What the service said is wrong with the text it was asked about last. */
  problem;

  constructor(job, contract) {
    super();
    this.#job = job;
    // Whoever chose a language or units by the address reads the answers in them.
    const wanted = { lang: language(), units: asked.get("units") };
    this.#query = Object.fromEntries(Object.entries(wanted).filter(([name, value]) => value && contract.parameters.some((one) => one.name === name)));
    job.addEventListener("opened", () => {
      this.answer = this.answered = this.problem = this.#asked = undefined;
      this.#later(0);
    });
    job.addEventListener("changed", () => this.#later(QUIET_MS));
  }

  /** Whether what is shown is about the plan as it stands. */
  get isCurrent() {
    return this.answered === this.#job.text;
  }

  again() {
    this.#asked = undefined;
    this.#later(0);
  }

  #later(wait) {
    clearTimeout(this.#timer);
    if (this.#asked === this.#job.text) return;
    this.#asking?.abort();
    this.#asked = undefined;
    this.#become("waiting");
    this.#timer = setTimeout(() => this.#ask(), wait);
  }

  async #ask() {
    const text = (this.#asked = this.#job.text);
    const asking = (this.#asking = new AbortController());
    this.#become("asking");
    try {
      // Its sentences stand beside tables, here and on the sheets.
      const response = await this.#post(REVIEW, { findings: "beside_tables" }, text, asking.signal);
      const said = await response.json();
      if (asking.signal.aborted) return;
      this.problem = response.ok ? undefined : said;
      if (response.ok) [this.answer, this.answered] = [said, text];
      this.#become(response.ok ? "answered" : said.errors ? "refused" : "failed");
    } catch (error) {
      if (asking.signal.aborted) return;
      this.problem = undefined;
      this.#become("failed");
    }
  }

  #become(state) {
    this.state = state;
    this.dispatchEvent(new Event("step"));
  }

  #post(path, query, text, signal) {
    const asked = new URLSearchParams({ ...this.#query, ...query });
    const address = asked.size > 0 ? `${path}?${asked}` : path;
    return fetch(address, { method: "POST", headers: { "Content-Type": "application/json" }, body: text, signal });
  }

  /** The plan in another format of a review. */
  inFormat(format) {
    return this.#post(REVIEW, { format }, this.#job.text);
  }

  /** The plots of the plan that was answered last. */
  async plots() {
    const response = await this.#post(CURVES, { format: "svg" }, this.answered);
    return response.ok ? response.text() : undefined;
  }
}
