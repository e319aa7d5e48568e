// Ways to bring a plan: a file, pasted text, something dropped on the page, a demo vehicle.
import { button, element } from "./dom.js";
import { NotJson } from "./json-text.js";
import { listed, say } from "./words.js";

const EXAMPLES = "/plan/examples/";

/** Text that is moved into a field is no plan. */
function isTextForAField(event) {
  return event.dataTransfer.files.length === 0 && event.target.closest?.("input, textarea") != null;
}

/** The panel that opens a plan; `opened` is called when one is. */
export function opening(job, home, opened) {
  const fault = element("p", { class: "fault", role: "alert" });
  const file = element("input", { type: "file", accept: ".json,application/json", id: "file", onchange: () => file.files[0] && fromFile(file.files[0]) });
  const pasted = element("textarea", { id: "pasted", rows: "5", spellcheck: "false" });

  function take(text, name) {
    if (job.isUnsaved && !window.confirm(say("open.replace"))) return;
    try {
      job.open(text, name);
    } catch (error) {
      if (!(error instanceof NotJson)) throw error;
      fault.textContent = say("open.not-json", { line: error.line, column: error.column });
      return;
    }
    fault.textContent = "";
    pasted.value = file.value = "";
    opened();
  }

  const fromFile = async (one) => take(await one.text(), one.name);

  async function example(name) {
    const response = await fetch(EXAMPLES + name).catch(() => undefined);
    if (response?.ok) take(await response.text(), name);
    else fault.textContent = say("review.silent");
  }

  for (const kind of ["dragenter", "dragover"]) {
    window.addEventListener(kind, (event) => {
      if (![...event.dataTransfer.types].some((type) => type === "Files" || type === "text/plain")) return;
      event.preventDefault();
      document.body.classList.add("dropping");
    });
  }
  window.addEventListener("dragleave", (event) => event.relatedTarget || document.body.classList.remove("dropping"));
  window.addEventListener("drop", (event) => {
    if (isTextForAField(event)) return;
    event.preventDefault();
    document.body.classList.remove("dropping");
    const [one] = event.dataTransfer.files;
    if (one) fromFile(one);
    else take(event.dataTransfer.getData("text/plain"), "");
  });

  home.replaceChildren(
    element("h2", {}, say("open.title")),
    element("p", {}, say("open.about")),
    fault,
    element("div", { class: "ways" },
      element("div", {}, element("h3", {}, element("label", { for: "file" }, say("open.file"))), file, element("p", { class: "help" }, say("open.drop"))),
      element("div", {}, element("h3", {}, element("label", { for: "pasted" }, say("open.paste"))), pasted, button(say("open.use"), () => take(pasted.value, ""))),
      element("div", {}, element("h3", {}, say("open.demo")), listed("example.").map((name) => button(say(`example.${name}`), () => example(name), { class: "demo" })))));
}
