// The plan that is worked on: its document, what was done to it, and who wants to know of changes.
import { get, put, read, write } from "./json-text.js";

const MOST_STEPS = 200;

/** Tells of "opened" and of "changed"; the detail of the latter says whether a form must be made anew. */
export class Job extends EventTarget {
  #document;
  #saved;
  #past = [];
  #future = [];
  #session;

  name = "";

  /** @throws {NotJson} and leaves all as it was */
  open(text, name) {
    const document = read(text);
    this.#document = this.#saved = document;
    this.#past = [];
    this.#future = [];
    this.#session = undefined;
    this.name = name;
    this.dispatchEvent(new Event("opened"));
  }

  get isOpen() {
    return this.#document !== undefined;
  }

  get root() {
    return this.#document.root;
  }

  get text() {
    return write(this.#document);
  }

  at(path) {
    return get(this.root, path);
  }

  /**
   * Puts a value at a path; undefined takes it away. Changes of one `session`, such as what is typed into a
   * field while it has the focus, are one step to undo. `anew` where more than a value changes.
   */
  edit(path, value, { session, anew = false } = {}) {
    this.#become(put(this.root, path, value), session, { anew, path });
  }

  /** Several values at once, one step to undo. */
  editAll(changes, session) {
    this.#become(changes.reduce((root, [path, value]) => put(root, path, value), this.root), session, { anew: false });
  }

  #become(root, session, detail) {
    if (!session || session !== this.#session) {
      this.#past = [...this.#past.slice(1 - MOST_STEPS), this.#document];
    }
    this.#session = session;
    this.#future = [];
    this.#show({ ...this.#document, root }, detail);
  }

  #show(document, detail) {
    this.#document = document;
    this.dispatchEvent(new CustomEvent("changed", { detail }));
  }

  get canUndo() {
    return this.#past.length > 0;
  }

  get canRedo() {
    return this.#future.length > 0;
  }

  undo() {
    this.#step(this.#past, this.#future);
  }

  redo() {
    this.#step(this.#future, this.#past);
  }

  #step(from, to) {
    const document = from.pop();
    if (!document) return;
    to.push(this.#document);
    this.#session = undefined;
    this.#show(document, { anew: true });
  }

  /** Whether leaving would lose something. */
  get isUnsaved() {
    return this.isOpen && this.#document !== this.#saved;
  }

  saved() {
    this.#saved = this.#document;
    this.dispatchEvent(new Event("saved"));
  }
}
