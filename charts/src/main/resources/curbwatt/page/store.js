// What the page is about: the document and how it is looked at. Survives a reload of the tab, and nothing longer.

const KEY = "curbwatt";

/** State with listeners. */
export class Store {
  #state;
  #listeners = [];
  #saving = null;

  constructor() {
    this.#state = { doc: null, opened: null, name: "", parts: [], cutoff: 0, view: "scene", ghosts: [], flashes: null, timeS: 0 };
    addEventListener("pagehide", () => this.#save());
  }

  get state() {
    return this.#state;
  }

  /** Changes some of the state; listeners hear the new state and which keys changed. */
  change(changes) {
    this.#state = { ...this.#state, ...changes };
    this.#listeners.forEach((listener) => listener(this.#state, changes));
    clearTimeout(this.#saving);
    this.#saving = setTimeout(() => this.#save(), 300);
  }

  listen(listener) {
    this.#listeners.push(listener);
  }

  /** What an earlier load of this tab left, or null. */
  static left() {
    try {
      return JSON.parse(sessionStorage.getItem(KEY));
    } catch {
      return null;
    }
  }

  #save() {
    const { parts, ...kept } = this.#state;
    if (kept.doc === null) {
      return;
    }
    try {
      sessionStorage.setItem(KEY, JSON.stringify(kept));
    } catch {
      // a tab without room forgets on reload
    }
  }
}
