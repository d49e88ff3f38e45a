// Switches for loads and circuits, and for the stages of each phase.

import { el } from "./dom.js";
import { loads, set, switched, unswitched } from "./document.js";

const ALWAYS = "always";

/** Whether a load is switched off by hand. */
export function isOff(load) {
  return (load.stages ?? []).length > 0 && load.stages.every((stage) => unswitched(stage) !== null);
}

/** The document with some of its loads switched off, or on again. */
export function flipped(document, paths, off) {
  return paths.reduce((doc, path) => {
    const load = loads(doc).find((each) => each.path === path).load;
    if (isOff(load) === off) {
      return doc;
    }
    const stages = off
      ? ((load.stages ?? []).length > 0 ? load.stages : [ALWAYS]).map(switched)
      : load.stages.map(unswitched).filter((stage) => stage !== ALWAYS);
    return set(doc, path + ".stages", stages.length > 0 ? stages : undefined);
  }, document);
}

export class Switches {
  #host;
  #stagesHost;
  #store;
  #signature = "";

  constructor(host, stagesHost, store) {
    this.#host = host;
    this.#stagesHost = stagesHost;
    this.#store = store;
  }

  /** Shows the document's switches; makes them anew only where one of them, or its name, differs from before. */
  show({ doc }) {
    const signature = JSON.stringify([loads(doc).map(({ load, circuit }) => [circuit, load.name, load.stages]), doc.scene.phases.map((phase) => [phase.name, phase.stages])]);
    if (signature === this.#signature) {
      return;
    }
    this.#signature = signature;
    const focused = document.activeElement?.id;
    this.#host.replaceChildren(...this.#circuits(doc));
    this.#stagesHost.replaceChildren(this.#stages(doc));
    if (focused?.startsWith("switch-")) {
      document.getElementById(focused)?.focus();
    }
  }

  #circuits(doc) {
    const all = loads(doc);
    return doc.vehicle.circuits.map((circuit, c) => {
      const mine = all.filter((each) => each.circuit === circuit.name);
      const on = mine.filter((each) => !isOff(each.load)).length;
      const box = this.#box("switch-c" + c, on > 0, circuit.name, () => this.#flip(mine, on > 0));
      box.querySelector("input").indeterminate = on > 0 && on < mine.length;
      const single = mine.map((each, l) => this.#box("switch-c" + c + "l" + l, !isOff(each.load), each.load.name, () => this.#flip([each], !isOff(each.load))));
      return el("fieldset", { class: "circuit" }, el("legend", {}, box), ...single);
    });
  }

  #flip(entries, off) {
    this.#store.change({ doc: flipped(this.#store.state.doc, entries.map((each) => each.path), off) });
  }

  #stages(doc) {
    const stages = [...new Set(loads(doc).flatMap(({ load }) => load.stages ?? []))].filter((stage) => unswitched(stage) === null);
    const phases = doc.scene.phases;
    return el(
      "table",
      { class: "stages" },
      el("thead", {}, el("tr", {}, el("th", { scope: "col" }, "Stage"), ...phases.map((phase) => el("th", { scope: "col" }, phase.name)))),
      el("tbody", {}, ...stages.map((stage, s) => el("tr", {}, el("th", { scope: "row" }, stage), ...phases.map((phase, p) => el("td", {}, this.#stageBox(doc, stage, s, phase, p)))))),
    );
  }

  #stageBox(doc, stage, s, phase, p) {
    const on = (phase.stages ?? []).includes(stage);
    const next = on ? phase.stages.filter((each) => each !== stage) : [...(phase.stages ?? []), stage];
    return el("input", {
      type: "checkbox",
      id: "switch-s" + s + "p" + p,
      "aria-label": stage + " in " + phase.name,
      checked: on,
      onchange: () => this.#store.change({ doc: set(this.#store.state.doc, "scene.phases[" + p + "].stages", next) }),
    });
  }

  #box(id, on, text, act) {
    return el("label", { class: "switch" }, el("input", { type: "checkbox", id, checked: on, onchange: act }), text);
  }
}
