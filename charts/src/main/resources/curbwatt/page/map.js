// The setting map: what comes of each pair of trip level and delay, filled in as it is computed.

import { map, Refusal } from "./api.js";
import { settled, set, get } from "./document.js";
import { byId, el, write } from "./dom.js";
import { glued, number, percent, time } from "./words.js";

const DELAYS_S = [0, 5, 10, 30, 60, 120, 300];

export class SettingMap {
  #store;
  #abort = null;
  #cells = [];
  #made = null;

  constructor(store) {
    this.#store = store;
    byId("map-fill").addEventListener("click", () => this.#fill());
    byId("map-stop").addEventListener("click", () => this.#abort?.abort());
    byId("map-grid").addEventListener("keydown", (event) => this.#walk(event));
  }

  /** Hears that the document is another one: a map of other figures is marked as old, and work on it stops. */
  changed(doc) {
    if (this.#made !== null && this.#made !== this.#fingerprint(doc)) {
      byId("map-grid").classList.add("old");
      write(byId("map-note"), "The scene has changed since: fill the map anew.");
      this.#abort?.abort();
    }
    this.#mark(doc);
  }

  /** Everything but the two settings that the map is about. */
  #fingerprint(doc) {
    const path = this.#path();
    return JSON.stringify(settled(set(set(doc, path + ".tripV", 0), path + ".tripDelayS", 0)));
  }

  #path() {
    return "vehicle.cutoffs[" + this.#store.state.cutoff + "]";
  }

  #axes() {
    const from = Number(byId("map-from").value);
    const to = Number(byId("map-to").value);
    const step = Number(byId("map-step").value);
    const count = Math.min(24, Math.max(2, Math.floor((to - from) / step + 1 + 1e-9)));
    return { tripsV: Array.from({ length: count }, (unused, i) => Math.round(1000 * (from + i * step)) / 1000), delaysS: DELAYS_S };
  }

  async #fill() {
    const { doc, cutoff } = this.#store.state;
    if (get(doc, this.#path()) === undefined) {
      write(byId("map-note"), "This vehicle has no cutoff, so there is nothing to set.");
      return;
    }
    this.#abort?.abort();
    const abort = new AbortController();
    this.#abort = abort;
    const { tripsV, delaysS } = this.#axes();
    this.#made = this.#fingerprint(doc);
    this.#build(tripsV, delaysS);
    this.#mark(doc);
    this.#busy(true, 0, tripsV.length * delaysS.length);
    const before = performance.now();
    try {
      const finished = await map(JSON.stringify(settled(doc)), deviceIndex(doc, cutoff), tripsV, delaysS, abort.signal, (line) => this.#hear(line));
      write(byId("map-note"), finished ? "Filled in " + number((performance.now() - before) / 1000, 1) + " s." : "Stopped before all was tried.");
    } catch (failure) {
      write(byId("map-note"), abort.signal.aborted ? byId("map-grid").classList.contains("old") ? byId("map-note").textContent : "Stopped." : failure instanceof Refusal && failure.problems.length > 0 ? failure.problems[0].message : failure.message || "The program does not answer.");
    }
    if (this.#abort === abort) {
      this.#busy(false);
    }
  }

  #busy(yes, done = 0, all = 1) {
    byId("map-stop").hidden = !yes;
    const bar = byId("map-progress");
    bar.hidden = !yes;
    bar.max = all;
    bar.value = done;
  }

  #hear(line) {
    if (line.all !== undefined) {
      byId("map-progress").max = line.all;
      byId("map-progress").value = line.done;
      const empty = this.#cells.flat().filter((cell) => cell.classList.contains("empty")).length;
      write(byId("map-note"), empty > 0 ? this.#cells.flat().length - empty + " of " + this.#cells.flat().length : "All squares are there. Trying how much error those that hold can stand: " + percent(line.done / line.all));
    }
    if (line.row !== undefined) {
      this.#fillIn(this.#cells[line.row][line.column], line);
    }
    if (line.headline !== undefined) {
      this.#conclude(line);
    }
  }

  #fillIn(cell, line) {
    if (line.room !== undefined) {
      cell.textContent = line.room + " ×";
      cell.classList.toggle("roomy", Number(line.room) >= 1);
      cell.title = cell.dataset.sentence + " Room for " + line.room + " times the spread.";
    } else {
      cell.classList.remove("empty");
      cell.classList.add(line.outcome);
      cell.textContent = line.short;
      cell.dataset.words = line.words;
      cell.dataset.sentence = line.sentence;
      cell.title = line.sentence;
      cell.disabled = false;
    }
    cell.setAttribute("aria-label", cell.dataset.at + ": " + cell.dataset.words + ". " + cell.title);
  }

  /** What the search found: a sentence, its reasons, and the square it recommends. */
  #conclude(line) {
    if (line.best !== undefined) {
      const cell = this.#cells[line.best.row][line.best.column];
      cell.classList.add("best");
      cell.setAttribute("aria-label", "Recommended: " + cell.getAttribute("aria-label"));
    }
    this.#say(line.headline, line.reasons);
  }

  /** The sentence above the map, and below it why: so that the map stays where it is, and in sight. */
  #say(headline, reasons) {
    write(byId("map-finding"), glued(headline));
    byId("map-reasons").replaceChildren(...reasons.map((reason) => el("li", {}, glued(reason))));
  }

  #build(tripsV, delaysS) {
    this.#cells = delaysS.map((delayS, row) =>
      tripsV.map((tripV, column) =>
        el("button", { type: "button", class: "cell empty", disabled: true, tabindex: row === 0 && column === 0 ? 0 : -1, "data-trip": tripV, "data-delay": delayS, "data-at": number(tripV, 2) + " V, " + time(delayS), "aria-label": number(tripV, 2) + " V, " + time(delayS) + ": not yet computed", onclick: () => this.#choose(tripV, delayS) }, ""),
      ),
    );
    const head = el("tr", {}, el("th", { scope: "col" }, "delay"), ...tripsV.map((tripV) => el("th", { scope: "col" }, number(tripV, 2))));
    const rows = this.#cells.map((cells, row) => el("tr", {}, el("th", { scope: "row" }, time(delaysS[row])), ...cells.map((cell) => el("td", {}, cell)))).reverse();
    const grid = byId("map-grid");
    grid.classList.remove("old");
    this.#say("", []);
    grid.replaceChildren(el("caption", {}, "Trip level in volts across, delay upwards"), el("thead", {}, head), el("tbody", {}, ...rows));
  }

  #choose(tripV, delayS) {
    const path = this.#path();
    this.#store.change({ doc: set(set(this.#store.state.doc, path + ".tripV", tripV), path + ".tripDelayS", delayS), view: "scene" });
  }

  /** Frames the cell of the settings as they are. */
  #mark(doc) {
    const at = get(doc, this.#path());
    this.#cells.flat().forEach((cell) => cell.classList.toggle("here", Number(cell.dataset.trip) === at?.tripV && Number(cell.dataset.delay) === (at?.tripDelayS ?? 0)));
  }

  #walk(event) {
    const step = { ArrowLeft: [0, -1], ArrowRight: [0, 1], ArrowUp: [1, 0], ArrowDown: [-1, 0] }[event.key];
    const row = this.#cells.findIndex((cells) => cells.includes(event.target));
    if (step === undefined || row < 0) {
      return;
    }
    const next = this.#cells[row + step[0]]?.[this.#cells[row].indexOf(event.target) + step[1]];
    if (next) {
      event.preventDefault();
      event.target.tabIndex = -1;
      next.tabIndex = 0;
      next.focus();
    }
  }
}

/** The place of a cutoff among the vehicle's devices, where each shedding step stands before its cutoff. */
function deviceIndex(doc, cutoff) {
  return doc.vehicle.cutoffs.slice(0, cutoff + 1).reduce((sum, each) => sum + (each.steps ?? []).length, cutoff);
}
