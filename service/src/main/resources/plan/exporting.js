// The plan and its sheets as files, and on paper.
import { button, element } from "./dom.js";
import { has, say } from "./words.js";

/** Answers for programs; the rest of the contract's formats is for people. */
const FOR_PROGRAMS = ["json", "xml"];

/** What a browser shows by itself. */
const SHOWN = "text/html";

/** A button for each format of a review that the contract has, so that a new one shows by itself. */
export function sheets({ job, reviewing, contract, home, status }) {
  async function give(format) {
    // Opened at once: a window that opens after an answer is one a browser keeps shut.
    const page = format.endsWith("html") ? window.open("", "_blank") : undefined;
    status.textContent = say("sheet.asking");
    const response = await reviewing.inFormat(format).catch(() => undefined);
    if (!response?.ok) {
      page?.close();
      const problem = await response?.json().catch(() => undefined);
      status.textContent = problem?.detail ?? say("review.silent");
      return;
    }
    const blob = await response.blob();
    status.textContent = "";
    if (page && blob.type.startsWith(SHOWN)) page.location = URL.createObjectURL(blob);
    else download(blob, nameGiven(response) ?? `${stem(job)}-${format}`);
  }
  home.replaceChildren(
    ...contract.formats
      .filter((format) => !FOR_PROGRAMS.includes(format))
      .map((format) => button(has(`format.${format}`) ? say(`format.${format}`) : format, () => give(format), { "data-format": format })));
}

const nameGiven = (response) => /filename="([^"]+)"/.exec(response.headers.get("Content-Disposition") ?? "")?.[1];

/** The document as it stands; what nobody changed comes back letter for letter. */
export function save(job) {
  download(new Blob([job.text], { type: "application/json" }), job.name || `${stem(job)}.json`);
  job.saved();
}

function download(blob, name) {
  const link = element("a", { href: URL.createObjectURL(blob), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A name for files, out of the vehicle's. */
function stem(job) {
  const name = job.at(["vehicle", "name"])?.value;
  const plain = typeof name === "string" ? name.normalize("NFKD").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "").slice(0, 40) : "";
  return plain || "plan";
}
