// Places of a plan as people call them.
import { plain, pointer } from "./json-text.js";
import { fieldName, say, shown, unit, valueName } from "./words.js";

const NAMES = ["id", "name", "channel", "amplifier", "role", "band", "kind", "place"];
const DIGEST = ["name", "part", "role", "frequency_hz"];
/** Those of them whose values have words of ours. */
const OURS = ["role", "kind", "place"];
const LONGEST = 60;

/** Words of a caller, so that their direction ends where they do. */
const own = (text) => `\u2068${short(text)}\u2069`;

const short = (text) => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);

/** What an entry of a list is called: its own name, or its number. */
export function entryName(node, index) {
  const entry = plain(node);
  if (entry?.lower && entry.upper) return `${own(String(entry.lower))} – ${own(String(entry.upper))}`;
  const key = NAMES.find((one) => typeof entry?.[one] === "string" && entry[one] !== "");
  if (key) return own(OURS.includes(key) ? valueName(entry[key]) : entry[key]);
  return say("entry.numbered", { number: shown(index + 1) });
}

/** What tells one entry from the others, beside its name. */
export function digest(node) {
  const entry = plain(node);
  if (entry === null || typeof entry !== "object" || Array.isArray(entry)) return "";
  const all = { ...(entry.driver?.name && { name: entry.driver.name }), ...entry };
  const named = entryName(node, 0);
  return DIGEST.filter((key) => ["string", "number"].includes(typeof all[key]))
    .map((key) => (typeof all[key] === "number" ? `${shown(all[key], 4)} ${unit(key)}`.trim() : own(key === "role" ? valueName(all[key]) : all[key])))
    .filter((text) => text !== named)
    .slice(0, 2)
    .join(" · ");
}

/** The way to a place: the names of its list, its entry, its field. */
export function placeName(job, contract, path) {
  const parts = path.map((step, depth) => {
    const to = path.slice(0, depth + 1);
    if (typeof step === "number") return entryName(job.at(to), step);
    return fieldName(step, contract.at(path.slice(0, depth))?.record);
  });
  return parts.join(" › ") || say("place.whole");
}

/** A place as the id of what shows it. */
export const placeId = (path, prefix = "f") => prefix + pointer(path);
