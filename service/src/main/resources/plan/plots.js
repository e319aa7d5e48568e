// The plots of the answer that is shown, in the colours of the page.
import { element } from "./dom.js";
import { fold } from "./folds.js";
import { say } from "./words.js";

/** Asked for when opened, and again with every answer while they are open. */
export function plots(reviewing) {
  const paper = element("div", { class: "plots", tabindex: "0", role: "region", "aria-label": say("review.plots") });
  const shadow = paper.attachShadow({ mode: "open" });
  let about;
  async function show() {
    const asked = reviewing.answered;
    if (!made.open || asked === undefined || asked === about) return;
    about = asked;
    const text = await reviewing.plots().catch(() => undefined);
    if (asked !== about) return;
    if (text === undefined) {
      about = undefined;
      shadow.textContent = say("review.no-plots");
      return;
    }
    const svg = document.importNode(new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true);
    svg.querySelectorAll("style, script").forEach((one) => one.remove());
    svg.removeAttribute("color");
    svg.setAttribute("width", "100%");
    svg.removeAttribute("height");
    svg.setAttribute("style", "display: block; min-width: 34rem");
    shadow.replaceChildren(svg);
  }
  const made = fold({ class: "part plots-part" }, element("h3", {}, say("review.plots")), () => [paper]);
  const { unfold } = made;
  made.unfold = () => {
    unfold();
    return show();
  };
  reviewing.addEventListener("step", show);
  return made;
}
