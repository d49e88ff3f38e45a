// The loads as lamps: lit as they flash, dark as they lose their supply. What flashes obeys the limit for people whom
// flashing harms (WCAG 2.3.1): no lamp more than three times in a second, and all of them together a small area.

import { byId, el, put, write } from "./dom.js";

const MOST_FLASHES_PER_S = 3;
const SLOW_S = 2;

/** Whether a rhythm shows its lamp lit at a time of its own clock (s), flashing three times a second at most. */
export function isLit(rhythm, timeS) {
  if (rhythm.everyS === undefined) {
    return true;
  }
  const at = timeS - rhythm.laterS;
  const perS = rhythm.onS.length / rhythm.everyS;
  if (perS <= MOST_FLASHES_PER_S) {
    const into = modulo(at, rhythm.everyS);
    return rhythm.onS.some(([from, to]) => into >= from && into < to);
  }
  // flashes that come too fast are drawn as one, and cycles that come too fast are left out
  const everyS = rhythm.everyS * Math.ceil(1 / (MOST_FLASHES_PER_S * rhythm.everyS));
  const fromS = rhythm.onS[0][0];
  const lengthS = Math.min(rhythm.onS.at(-1)[1] - fromS, everyS / 2);
  const into = modulo(at - fromS, everyS);
  return into < lengthS;
}

function modulo(value, by) {
  return ((value % by) + by) % by;
}

/** Whether a time lies in one of some spans. */
export function inside(spans, timeS) {
  return spans.some(([from, to]) => timeS >= from && timeS < to);
}

/** What a load does at an instant: its state, and the words for it. */
export function stateOf(load, circuit, phaseIndex, timeS) {
  if (inside(circuit.without, timeS)) {
    return { kind: "cut", words: "no supply" };
  }
  if (!load.on[phaseIndex]) {
    return { kind: "off", words: "off" };
  }
  if (inside(load.silent, timeS)) {
    return { kind: "cut", words: "dropped out" };
  }
  const rhythm = load.rhythm;
  return rhythm.share < 1 ? { kind: "rhythm", words: rhythm.everyS < SLOW_S ? "flashing" : "on and off" } : { kind: "on", words: "on" };
}

export class Lamps {
  #host;
  #act;
  #answer = null;
  #tiles = [];
  #signature = "";

  /** @param act called with names of loads and what to call them, when they are to be switched off from here on */
  constructor(host, act) {
    this.#host = host;
    this.#act = act;
  }

  /** Takes a run's loads; the lamps are made anew only where there are others than before. */
  take(answer) {
    this.#answer = answer;
    const signature = JSON.stringify(answer.loads.map((load) => [load.circuit, load.name]));
    if (signature === this.#signature) {
      return;
    }
    this.#signature = signature;
    this.#tiles = [];
    this.#host.replaceChildren(
      ...answer.circuits.map((circuit) => {
        const mine = answer.loads.filter((load) => load.circuit === circuit.name);
        const tiles = mine.map((load) => this.#tile(load.name));
        const all = el("button", { type: "button", class: "off-all", "aria-label": "Switch off " + circuit.name + " from here on", onclick: () => this.#act(mine.map((load) => load.name), circuit.name) }, "off");
        return el("div", { class: "lamp-group" }, el("h3", {}, circuit.name, all), ...tiles);
      }),
    );
  }

  #tile(name) {
    const lamp = el("span", { class: "lamp", "aria-hidden": "true" });
    const words = el("span", { class: "lamp-words" });
    const tile = el("button", { type: "button", class: "tile", title: "Switch off from here on", onclick: () => this.#act([name], name) }, lamp, el("span", { class: "lamp-name" }, name), words);
    this.#tiles.push({ lamp, words, tile, kind: "" });
    return tile;
  }

  /**
   * Shows an instant.
   *
   * @param speed how fast the scene's time passes; 0: it stands
   * @param flashing whether lamps may flash
   * @param wallS a clock that passes as the viewer's own (s)
   */
  point(timeS, phaseIndex, speed, flashing, wallS) {
    const circuits = new Map(this.#answer.circuits.map((circuit) => [circuit.name, circuit]));
    this.#answer.loads.forEach((load, i) => {
      const state = stateOf(load, circuits.get(load.circuit), phaseIndex, timeS);
      const kind = state.kind === "rhythm" ? this.#rhythm(load.rhythm, timeS, speed, flashing, wallS) : state.kind;
      const tile = this.#tiles[i];
      if (tile.kind !== kind) {
        tile.kind = kind;
        put(tile.lamp, "class", "lamp " + kind);
      }
      write(tile.words, state.words);
    });
  }

  #rhythm(rhythm, timeS, speed, flashing, wallS) {
    if (rhythm.everyS === undefined) {
      return "dim";
    }
    const fast = rhythm.everyS < SLOW_S;
    if (speed > 0 && !fast && rhythm.everyS / speed < 1 / MOST_FLASHES_PER_S) {
      return "dim";
    }
    if (fast && (!flashing || speed === 0)) {
      return "dim";
    }
    return isLit(rhythm, fast && speed !== 1 ? wallS : timeS) ? "on" : "dark";
  }
}

/** Whether the viewer asked the system for less movement. */
export function wantsLessMotion() {
  return matchMedia("(prefers-reduced-motion: reduce)").matches;
}

/** The switch that lets lamps flash, off where less movement is wanted. */
export function flashSwitch(store) {
  const box = byId("flash");
  box.checked = store.state.flashes ?? !wantsLessMotion();
  box.addEventListener("change", () => store.change({ flashes: box.checked }));
  return () => box.checked;
}
