// The knobs beside the picture: a slider and a field for each figure, made once and only moved after that.

import { el, put, write } from "./dom.js";
import { knobGroups, turned } from "./knobset.js";
import { messageAt } from "./problems.js";

export class Knobs {
  #host;
  #store;
  #signature = "";
  #fields = [];

  constructor(host, store) {
    this.#host = host;
    this.#store = store;
  }

  /** Shows the document's figures; makes the knobs anew only where there are others than before. */
  show({ doc, parts, cutoff }) {
    const groups = knobGroups(doc, parts, cutoff);
    const signature = JSON.stringify(groups.map((group) => [group.title, group.knobs.map((knob) => [knob.path, knob.label, knob.options, knob.choose])]));
    if (signature !== this.#signature) {
      this.#signature = signature;
      this.#build(groups, parts);
    }
    const knobs = groups.flatMap((group) => group.knobs);
    this.#fields.forEach((field, i) => field.show(knobs[i]));
  }

  /** Shows each message at the knob whose figure it is about; returns those that no knob shows. */
  complain(problems) {
    const left = new Set(problems);
    for (const field of this.#fields) {
      const mine = problems.filter((problem) => problem.path === field.path());
      mine.forEach((problem) => left.delete(problem));
      messageAt(field.holder, field.input, mine);
    }
    return [...left];
  }

  #build(groups, parts) {
    const kept = new Set([...this.#host.querySelectorAll("details:not([open])")].map((group) => group.dataset.title));
    this.#fields = [];
    this.#host.replaceChildren(
      ...groups.map((group) =>
        el("details", { class: "group", open: !kept.has(group.title), "data-title": group.title }, el("summary", {}, group.title), ...group.knobs.map((knob) => this.#field(knob, parts))),
      ),
    );
  }

  #field(knob, parts) {
    if (knob.choose !== undefined) {
      return this.#choice(knob, knob.choose.map((name, i) => [String(i), name]), (value) => this.#store.change({ cutoff: Number(value) }), (at) => String(at.chosen));
    }
    if (knob.options !== undefined) {
      return this.#choice(knob, knob.options.map((word) => [word, word === "off" ? "engine off" : word]), null, (at) => at.figure);
    }
    if (knob.parts !== undefined) {
      const fitting = parts.filter((part) => part.kind === knob.parts && (!knob.lead || part.figures.chemistry !== "lfp"));
      return this.#choice(knob, [["", "own figures"], ...fitting.map((part) => [part.name, part.title])], null, (at) => at.figure);
    }
    return this.#slider(knob);
  }

  #choice(knob, options, act, shown) {
    const id = idOf(knob);
    const input = el("select", { id }, ...options.map(([value, text]) => el("option", { value }, text)));
    const state = { knob };
    input.addEventListener("change", () => (act ? act(input.value) : input.value !== "" && this.#turn(state.knob, input.value)));
    const holder = el("div", { class: "knob choice" + (knob.heading ? " heading" : "") }, el("label", { for: id }, knob.label), input);
    this.#fields.push({
      holder,
      input,
      path: () => state.knob.path,
      show: (at) => {
        state.knob = at;
        input.value = shown(at);
      },
    });
    return holder;
  }

  #slider(knob) {
    const id = idOf(knob);
    const [min, max, step] = knob.slider ?? [0, 100, 1];
    const range = el("input", { type: "range", id, min, max, step });
    const input = el("input", { type: "number", step: "any", "aria-label": knob.label + ", " + knob.unit, id: id + "-number" });
    const state = { knob };
    range.addEventListener("input", () => this.#turn(state.knob, Number(range.value)));
    input.addEventListener("input", () => input.value !== "" && this.#turn(state.knob, Number(input.value)));
    const holder = el("div", { class: "knob" }, el("label", { for: id }, knob.label), range, el("span", { class: "figure" }, input, el("span", { class: "unit" }, knob.unit)));
    this.#fields.push({
      holder,
      input,
      path: () => state.knob.path,
      show: (at) => {
        state.knob = at;
        put(range, "min", Math.min(min, at.figure));
        put(range, "max", Math.max(max, at.figure));
        range.value = at.figure;
        put(range, "aria-valuetext", at.figure + " " + at.unit);
        if (Number(input.value) !== at.figure || input.value === "") {
          input.value = Math.round(1e6 * at.figure) / 1e6;
        }
        write(holder.querySelector("label"), at.label);
      },
    });
    return holder;
  }

  #turn(knob, value) {
    this.#store.change({ doc: turned(this.#store.state.doc, knob, value) });
  }
}

function idOf(knob) {
  return "knob-" + knob.path.replace(/[^A-Za-z0-9]+/g, "-");
}
