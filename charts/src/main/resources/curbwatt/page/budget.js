// The load budget: what each load draws in each phase, with the figures that can be written over.

import { byId, el, put, write } from "./dom.js";
import { get, loads, set } from "./document.js";
import { messageAt } from "./problems.js";
import { amperes, number } from "./words.js";

/** Whether a load of a run stands for an entry of the document, alone or as one of several heads. */
function belongs(name, entry) {
  return name === entry || (name.startsWith(entry + " ") && / \d+( to \d+)? of \d+$/.test(name) && name.replace(/ \d+( to \d+)? of \d+$/, "") === entry);
}

export class Budget {
  #store;
  #signature = "";
  #rows = [];

  constructor(store) {
    this.#store = store;
  }

  /** Shows a run's budget. */
  show(doc, parts, answer) {
    const entries = loads(doc);
    const signature = JSON.stringify([entries.map((each) => [each.path, each.load.name]), answer.budgets.map((each) => each.phase)]);
    if (signature !== this.#signature) {
      this.#signature = signature;
      this.#build(entries, answer);
    }
    this.#rows.forEach((row, i) => this.#fill(row, entries[i], parts, answer));
    this.#sums(answer);
  }

  /** Shows messages at the fields; returns those that no field shows. */
  complain(problems) {
    const left = new Set(problems);
    for (const { inputs } of this.#rows) {
      for (const input of inputs) {
        const mine = problems.filter((problem) => problem.path === input.dataset.path);
        mine.forEach((problem) => left.delete(problem));
        messageAt(input.parentElement, input, mine);
      }
    }
    return [...left];
  }

  #build(entries, answer) {
    const phases = answer.budgets.map((budget) => el("th", { scope: "col", class: "n" }, budget.phase + ", A"));
    const head = el("tr", {}, ...["Circuit", "Load"].map((text) => el("th", { scope: "col" }, text)), ...["How many", "Rated, A each"].map((text) => el("th", { scope: "col", class: "n" }, text)), ...phases);
    this.#rows = entries.map((entry, i) => this.#row(entry, i, answer.budgets.length));
    byId("budget-head").replaceChildren(head);
    byId("budget-body").replaceChildren(...this.#rows.map((row) => row.line));
  }

  #row(entry, i, phases) {
    const field = (key, label, min, step) =>
      el("input", { type: "number", id: "budget-" + key + i, min, step, "data-path": entry.path + "." + key, "aria-label": label + " of " + entry.load.name, oninput: (event) => this.#write(event.target) });
    const count = field("count", "How many", 1, 1);
    const rated = field("ratedCurrentA", "Rated current", 0, "any");
    const cells = Array.from({ length: phases }, () => el("td", { class: "n" }));
    const line = el("tr", {}, el("td", {}, entry.circuit), el("th", { scope: "row" }, entry.load.name), el("td", { class: "n" }, count), el("td", { class: "n" }, rated), ...cells);
    return { line, inputs: [count, rated], cells };
  }

  #write(input) {
    if (input.value !== "") {
      this.#store.change({ doc: set(this.#store.state.doc, input.dataset.path, Number(input.value)) });
    }
  }

  #fill(row, entry, parts, answer) {
    const part = parts.find((each) => each.name === entry.load.part)?.figures ?? {};
    row.inputs.forEach((input) => {
      const key = input.dataset.path.split(".").at(-1);
      const figure = get(entry.load, key) ?? (part[key] === undefined ? (key === "count" ? 1 : "") : Number(part[key]));
      if (document.activeElement !== input && Number(input.value) !== figure) {
        input.value = figure;
      }
    });
    const mine = answer.loads.flatMap((load, i) => (belongs(load.name, entry.load.name) && load.circuit === entry.circuit ? [i] : []));
    row.cells.forEach((cell, p) => {
      const meanA = mine.reduce((sum, i) => sum + answer.budgets[p].meansA[i], 0);
      const on = mine.some((i) => answer.loads[i].on[p]);
      write(cell, on || meanA > 0 ? number(meanA, 2) : "off");
      put(cell, "class", "n" + (on ? "" : " soft"));
    });
  }

  #sums(answer) {
    const line = (text, value) => el("tr", {}, el("th", { scope: "row", colspan: 4 }, text), ...answer.budgets.map((budget) => el("td", { class: "n" }, value(budget))));
    byId("budget-foot").replaceChildren(
      line("All loads on average", (budget) => number(budget.meanA, 2)),
      line("All lit at once", (budget) => number(budget.peakA, 2)),
      line("Alternator, hot, at the lowest engine speed", (budget) => (budget.alternatorA === null ? "none" : number(budget.alternatorA, 1))),
      line("Left over", (budget) => (budget.alternatorA === null ? "from the battery" : amperes(budget.alternatorA - budget.meanA))),
      line("Carries the loads from, rpm", (budget) => (budget.alternatorA === null ? "" : budget.balanceRpm === null ? "no speed" : number(Math.ceil(budget.balanceRpm), 0))),
    );
  }
}
