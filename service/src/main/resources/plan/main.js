// The page to work on a plan: everything happens here in the browser, and nothing is kept.
import { Contract } from "./contract.js";
import { button, element } from "./dom.js";
import { save, sheets } from "./exporting.js";
import { Job } from "./job.js";
import { opening } from "./opening.js";
import { Remarks } from "./remarks.js";
import { showReview } from "./review.js";
import { Reviewing } from "./reviewing.js";
import { Form } from "./sections.js";
import { language, say, speak } from "./words.js";

const one = (id) => document.getElementById(id);

async function fetched(address) {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  return response.json();
}

function nameParts() {
  document.documentElement.lang = language();
  document.title = say("page.title");
  document.querySelectorAll("[data-say]").forEach((part) => (part.textContent = say(part.dataset.say)));
  document.querySelectorAll("[data-label]").forEach((part) => part.setAttribute("aria-label", say(part.dataset.label)));
}

function start(contract) {
  const job = new Job();
  const remarks = new Remarks();
  const reviewing = new Reviewing(job, contract);
  const form = new Form(job, contract, remarks, one("form"));
  showReview({ reviewing, job, contract, remarks, form, status: one("status"), short: one("short"), home: one("answer") });
  sheets({ job, reviewing, contract, home: one("sheets"), status: one("sheet-status") });
  opening(job, one("opening"), () => showOpening(false));

  const showOpening = (shown) => {
    one("opening").hidden = !shown;
    one("work").hidden = !job.isOpen;
    if (!shown) one("form").querySelector("summary").focus();
  };
  const undo = button(say("do.undo"), () => job.undo());
  const redo = button(say("do.redo"), () => job.redo());
  const write = button(say("do.save"), () => save(job), { class: "main" });
  const explain = element("input", { type: "checkbox", id: "explain", checked: true, onchange: () => document.body.classList.toggle("terse", !explain.checked) });
  one("tools").replaceChildren(
    button(say("do.open"), () => showOpening(one("opening").hidden), { id: "open" }), undo, redo,
    button(say("do.print"), print), write,
    element("label", { class: "explain", for: "explain" }, explain, " ", say("do.explain")));

  // Everything that is said belongs on paper too.
  async function print() {
    await Promise.all([...one("answer").querySelectorAll("details")].map((fold) => fold.unfold()));
    window.print();
  }

  const refresh = () => {
    undo.disabled = !job.canUndo;
    redo.disabled = !job.canRedo;
    [...one("tools").children].forEach((tool) => (tool.hidden = !job.isOpen));
    const name = job.isOpen ? job.at(["vehicle", "name"])?.value : undefined;
    one("vehicle").textContent = typeof name === "string" ? name : "";
    one("unsaved").textContent = job.isUnsaved ? say("page.unsaved") : "";
  };
  for (const kind of ["opened", "changed", "saved"]) job.addEventListener(kind, refresh);
  refresh();
  showOpening(true);

  window.addEventListener("beforeunload", (event) => job.isUnsaved && event.preventDefault());
  window.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const step = { z: event.shiftKey ? "redo" : "undo", y: "redo" }[event.key.toLowerCase()];
    if (event.key.toLowerCase() === "s" && job.isOpen) {
      event.preventDefault();
      save(job);
    } else if (step && !event.target.matches("textarea")) {
      event.preventDefault();
      job[step]();
    }
  });
  window.addEventListener("beforeprint", () => one("answer").querySelectorAll("details").forEach((fold) => fold.unfold()));
}

try {
  const [said, contract] = await Promise.all([fetched(`/plan/texts.json${location.search}`), fetched("/openapi.json")]);
  speak(said);
  nameParts();
  start(new Contract(contract));
} catch (error) {
  one("failed").hidden = false;
  console.error(error);
}
