// The scene as a timeline: voltage above, charge below, phases and trips marked. Drawn as SVG; lines are kept and only
// given new points, so that nothing flickers while a knob turns.

import { band, line, roomyRange, scale, ticks, timeTicks } from "./axes.js";
import { apart, fitted, lanes, width } from "./marks.js";
import { put, refill, svg } from "./dom.js";
import { number, percent, shortClock, volts } from "./words.js";

const LEFT = 46;
const STRIP = 22;
const LANE = 16;
const MOST_LANES = 5;
const MOST_MARKS = 9;
const GAP = 22;
const BELOW = 40;
const MODES = { driving: "driving", idling: "idling", off: "engine off", parked: "parked" };

export class Timeline {
  #root = svg("svg", { class: "timeline", role: "img" });
  #grounds = svg("g", {});
  #grid = svg("g", { class: "grid" });
  #ghosts = svg("g", { class: "ghosts" });
  #lines = {};
  #levels = svg("g", {});
  #words = svg("g", { class: "words" });
  #cursor = svg("g", { class: "cursor" });
  #host;
  #shape = null;
  #answer = null;
  #kept = [];
  #timeS = 0;

  constructor(host) {
    this.#host = host;
    for (const name of ["range", "equipment-range", "charge-line", "equipment-charge", "voltage-line", "equipment-line"]) {
      this.#lines[name] = svg("path", { class: name });
    }
    this.#root.append(this.#grounds, this.#grid, this.#ghosts, ...Object.values(this.#lines), this.#levels, this.#words, this.#cursor);
    host.append(this.#root);
    new ResizeObserver(() => this.#answer && this.draw(this.#answer, this.#kept)).observe(host);
  }

  /** Where a time is, and which time is at a place, in pixels of the host; null before the first drawing. */
  get shape() {
    return this.#shape;
  }

  /** Draws a run, with earlier ones behind it. */
  draw(answer, ghosts) {
    this.#answer = answer;
    this.#kept = ghosts;
    const trace = answer.trace;
    const wide = Math.max(300, this.#host.clientWidth);
    const small = wide < 560;
    const right = wide - (small ? 88 : 138);
    const across = scale(0, 1000 * answer.durationS, LEFT, right);
    const atS = (timeS) => across(1000 * timeS);
    const wishes = answer.marks.slice(0, MOST_MARKS).map((mark) => ({
      anchor: atS(mark.timeS),
      text: mark.words + " " + shortClock(mark.timeS, answer.durationS),
      mark,
    }));
    const places = lanes(wishes, LEFT, right, MOST_LANES);
    const top = STRIP + 6 + lanesUsed(places) * LANE + 6;
    const voltageBottom = top + (small ? 190 : 250);
    const chargeTop = voltageBottom + GAP;
    const chargeBottom = chargeTop + (small ? 70 : 90);
    const high = chargeBottom + BELOW;
    const [lowV, highV] = this.#voltageRange(answer, ghosts);
    const up = scale(1000 * lowV, 1000 * highV, voltageBottom, top);
    const full = scale(0, 10000, chargeBottom, chargeTop);
    this.#shape = { left: LEFT, right, top, bottom: chargeBottom, voltageBottom, atS, up, full, durationS: answer.durationS, high, wide };
    put(this.#root, "viewBox", "0 0 " + wide + " " + high);
    put(this.#root, "width", wide);
    put(this.#root, "height", high);
    put(this.#root, "aria-label", inWords(answer));
    this.#drawPhases(answer, top, voltageBottom, chargeTop, chargeBottom);
    this.#drawGrid(lowV, highV, small);
    this.#drawLines(trace, across, up, full);
    this.#drawGhosts(ghosts, across, up, full);
    this.#drawLevels(answer, small);
    this.#drawWords(answer, places);
    this.point(this.#timeS);
  }

  /** Shows an instant. */
  point(timeS) {
    this.#timeS = timeS;
    if (this.#shape === null) {
      return;
    }
    const { atS, top, bottom } = this.#shape;
    const x = atS(timeS).toFixed(1);
    this.#cursor.replaceChildren(svg("line", { x1: x, x2: x, y1: top - 4, y2: bottom }), svg("path", { d: "M" + x + " " + (top - 3) + "l-5 -7h10z" }));
  }

  #voltageRange(answer, ghosts) {
    const values = answer.levels.filter((level) => level.kind !== "reclose").map((level) => level.levelV);
    for (const trace of [answer.trace, answer.trace.equipment ?? answer.trace]) {
      values.push(low(trace.lowMv) / 1000, top(trace.highMv) / 1000);
    }
    ghosts.forEach((ghost) => values.push(low(ghost.trace.meanMv) / 1000, top(ghost.trace.meanMv) / 1000));
    const [from, to] = roomyRange(values, 0.5);
    return [Math.max(4, from), Math.max(5, to)];
  }

  #drawPhases(answer, top, voltageBottom, chargeTop, chargeBottom) {
    const drawn = [answer.phases, this.#shape, top, voltageBottom, chargeTop, chargeBottom];
    refill(this.#grounds, drawn, () => this.#phases(answer.phases, top, voltageBottom, chargeTop, chargeBottom));
  }

  #phases(phases, top, voltageBottom, chargeTop, chargeBottom) {
    const { atS } = this.#shape;
    const pieces = [];
    for (const phase of phases) {
      const stranded = ["driving", "idling"].includes(phase.mode) && !phase.engineRan;
      const mode = stranded ? "off" : phase.mode;
      const x = atS(phase.startS);
      const wide = Math.max(0, atS(phase.endS) - x);
      pieces.push(svg("rect", { class: "ground " + mode, x, y: 0, width: wide, height: STRIP }));
      for (const [from, to] of [[top, voltageBottom], [chargeTop, chargeBottom]]) {
        pieces.push(svg("rect", { class: "ground " + mode, x, y: from, width: wide, height: to - from }));
      }
      const doing = stranded ? "no start" : MODES[phase.mode];
      const name = fitted(phase.name, wide - 10);
      pieces.push(svg("text", { class: "strong", x: x + 5, y: 15 }, name));
      const left = wide - width(name) - 22;
      if (width(doing, false) < left && !phase.name.toLowerCase().includes(doing)) {
        pieces.push(svg("text", { class: "soft", x: x + 12 + width(name), y: 15 }, doing));
      }
    }
    return pieces;
  }

  #drawGrid(lowV, highV, small) {
    refill(this.#grid, [this.#shape, lowV, highV, small], () => this.#lattice(lowV, highV, small));
  }

  /** Lines and figures of the axes. */
  #lattice(lowV, highV, small) {
    const { left, right, up, full, atS, bottom, durationS, top } = this.#shape;
    const pieces = [];
    const across = (y, text, strong) => {
      pieces.push(svg("line", { x1: left, x2: right, y1: y, y2: y, class: strong ? "base" : "" }));
      pieces.push(svg("text", { x: left - 7, y: y + 4, class: "end" }, text));
    };
    const levels = ticks(lowV, highV, small ? 5 : 7);
    levels.values.forEach((value) => across(up(1000 * value), number(value, levels.decimals), false));
    [0, 50, 100].forEach((value) => across(full(100 * value), String(value), value === 0));
    const times = timeTicks(durationS, small ? 6 : 11);
    times.values.forEach((value) => {
      const x = atS(value * times.unitS);
      pieces.push(svg("line", { x1: x, x2: x, y1: bottom, y2: bottom + 5, class: "base" }));
      pieces.push(svg("text", { x, y: bottom + 18, class: "middle" }, String(value)));
    });
    pieces.push(svg("text", { x: (left + right) / 2, y: bottom + 35, class: "middle" }, "Time since the scene's start, " + times.unit));
    pieces.push(turned("Voltage, V", 11, (top + up(1000 * lowV)) / 2, "voltage-word"));
    pieces.push(turned("Charge, %", 11, (full(0) + full(10000)) / 2, "charge-word"));
    return pieces;
  }

  #drawLines(trace, across, up, full) {
    const t = trace.timeMs;
    const second = trace.equipment;
    const paths = {
      range: band(t, trace.lowMv, trace.highMv, across, up),
      "voltage-line": line(t, trace.meanMv, across, up),
      "charge-line": line(t, trace.chargeTenThousandths, across, full),
      "equipment-range": second ? band(t, second.lowMv, second.highMv, across, up) : "",
      "equipment-line": second ? line(t, second.meanMv, across, up) : "",
      "equipment-charge": second ? line(t, second.chargeTenThousandths, across, full) : "",
    };
    Object.entries(paths).forEach(([name, path]) => put(this.#lines[name], "d", path));
  }

  #drawGhosts(ghosts, across, up, full) {
    refill(this.#ghosts, ghosts.length === 0 ? [] : [ghosts, this.#shape, up(0), up(1)], () =>
      ghosts.flatMap((ghost, i) => [
        svg("path", { class: "ghost g" + i, d: line(ghost.trace.timeMs, ghost.trace.meanMv, across, up) }),
        svg("path", { class: "ghost g" + i, d: line(ghost.trace.timeMs, ghost.trace.chargeTenThousandths, across, full) }),
      ]),
    );
  }

  #drawLevels(answer, small) {
    const { left, right, up, top, full, voltageBottom } = this.#shape;
    const last = answer.trace.timeMs.length - 1;
    const shown = answer.levels.filter((level, i) => answer.levels.findIndex((other) => other.kind === level.kind && other.levelV === level.levelV) === i);
    const labels = shown.map((level) => ({ y: up(1000 * level.levelV), text: level.kind + " " + volts(level.levelV), kind: "level " + level.kind }));
    const lines = labels.filter((label) => label.y > top && label.y < voltageBottom).map((label) => svg("line", { class: label.kind, x1: left, x2: right, y1: label.y, y2: label.y }));
    const side = labels.filter((label) => label.y > top && label.y < voltageBottom);
    side.push({ y: up(answer.trace.meanMv[last]), text: volts(answer.trace.meanMv[last] / 1000) + (small ? "" : " at the end"), kind: "voltage-word strong" });
    const charges = [{ y: full(answer.trace.chargeTenThousandths[last]), text: percent(answer.trace.chargeTenThousandths[last] / 1e4) + (small ? "" : " at the end"), kind: "charge-word strong" }];
    if (answer.trace.equipment) {
      const second = answer.trace.equipment;
      side.push({ y: up(second.meanMv[last]), text: volts(second.meanMv[last] / 1000) + (small ? "" : " equipment"), kind: "equipment-word strong" });
      charges.push({ y: full(second.chargeTenThousandths[last]), text: percent(second.chargeTenThousandths[last] / 1e4) + (small ? "" : " equipment"), kind: "equipment-word strong" });
    }
    apart(side, top + 4, voltageBottom, 15);
    apart(charges, full(10000) + 4, full(0), 15);
    const texts = [...side, ...charges].map((label) => svg("text", { class: label.kind, x: right + 7, y: label.at + 4 }, small ? label.text.replace("reclose", "close").replace("warning", "warn") : label.text));
    this.#levels.replaceChildren(...lines, ...texts);
  }

  #drawWords(answer, places) {
    const { bottom, atS, up } = this.#shape;
    const pieces = answer.marks.map((mark) => svg("line", { class: "mark " + mark.tone, x1: atS(mark.timeS), x2: atS(mark.timeS), y1: bottom - 6, y2: bottom }));
    const texts = [];
    for (const { wish, left, lane } of places) {
      const y = STRIP + 18 + lane * LANE;
      pieces.push(svg("line", { class: "mark " + wish.mark.tone, x1: wish.anchor, x2: wish.anchor, y1: y - 10, y2: bottom }));
      texts.push(svg("text", { class: "strong " + wish.mark.tone, x: left, y }, wish.text));
      if (wish.mark.voltageV !== null) {
        pieces.push(svg("circle", { class: "dot " + wish.mark.tone, cx: wish.anchor, cy: up(1000 * wish.mark.voltageV), r: 4 }));
      }
    }
    // a mark's line may pass where another's words stand: the words lie on top, on ground of their own
    this.#words.replaceChildren(...pieces, ...texts);
  }
}

function lanesUsed(places) {
  return Math.max(1, ...places.map((place) => place.lane + 1));
}

function low(values) {
  return values.reduce((least, value) => (value < least ? value : least), Infinity);
}

function top(values) {
  return values.reduce((most, value) => (value > most ? value : most), -Infinity);
}

function turned(text, x, y, kind) {
  return svg("text", { class: "middle " + kind, transform: "translate(" + x + " " + y + ") rotate(-90)" }, text);
}

function inWords(answer) {
  const { trace } = answer;
  const last = trace.timeMs.length - 1;
  const marks = answer.marks.slice(0, MOST_MARKS).map((mark) => mark.words + " " + shortClock(mark.timeS, answer.durationS)).join("; ");
  return (
    "Voltage and state of charge over time. The voltage is " + volts(trace.meanMv[0] / 1000) + " at the start and " + volts(trace.meanMv[last] / 1000) + " at the end. The charge goes from " +
    percent(trace.chargeTenThousandths[0] / 1e4) + " to " + percent(trace.chargeTenThousandths[last] / 1e4) + ". Events: " + (marks || "none") + "."
  );
}
