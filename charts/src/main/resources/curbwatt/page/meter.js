// A voltmeter with a needle, and a column of charge.

import { put, svg, write } from "./dom.js";
import { percent, volts } from "./words.js";

const FROM_V = 9;
const TO_V = 15;
const SWEEP = 120;
const R = 74;
const CX = 100;
const CY = 96;

function angle(voltageV) {
  const share = Math.min(1, Math.max(0, (voltageV - FROM_V) / (TO_V - FROM_V)));
  return -SWEEP / 2 + share * SWEEP;
}

function at(voltageV, radius) {
  const a = ((angle(voltageV) - 90) * Math.PI) / 180;
  return (CX + radius * Math.cos(a)).toFixed(1) + " " + (CY + radius * Math.sin(a)).toFixed(1);
}

function arc(fromV, toV, radius) {
  return "M" + at(fromV, radius) + "A" + radius + " " + radius + " 0 0 1 " + at(toV, radius);
}

export class Meter {
  #needle = svg("path", { class: "needle", d: "M" + CX + " " + CY + "L" + CX + " " + (CY - R + 4) });
  #spread = svg("path", { class: "spread" });
  #low = svg("path", { class: "low" });
  #voltage = svg("text", { class: "reading", x: CX, y: CY + 26 });
  #fill = svg("rect", { class: "fill", x: 212, width: 22, y: 10, height: 94 });
  #charge = svg("text", { class: "reading small", x: 223, y: CY + 26 });
  #root = svg("svg", { class: "meter", viewBox: "0 0 250 130", role: "img" });

  constructor(host) {
    const ticks = [9, 10, 11, 12, 13, 14, 15].flatMap((value) => [
      svg("path", { class: "tick", d: "M" + at(value, R + 2) + "L" + at(value, R + 8) }),
      svg("text", { class: "scale", x: at(value, R + 17).split(" ")[0], y: Number(at(value, R + 17).split(" ")[1]) + 4 }, String(value)),
    ]);
    this.#root.append(
      svg("path", { class: "rim", d: arc(FROM_V, TO_V, R) }),
      this.#low, this.#spread, ...ticks, this.#needle,
      svg("circle", { class: "hub", cx: CX, cy: CY, r: 5 }),
      this.#voltage,
      svg("rect", { class: "tank", x: 212, width: 22, y: 10, height: 94, rx: 3 }),
      this.#fill, this.#charge,
    );
    host.append(this.#root);
  }

  /** Shows an instant: voltages in volts, charge as a share, the highest trip level if there is one. */
  point({ lowV, meanV, highV, charge, tripV }) {
    put(this.#needle, "transform", "rotate(" + angle(meanV).toFixed(2) + " " + CX + " " + CY + ")");
    put(this.#spread, "d", highV - lowV > 0.005 ? arc(Math.max(FROM_V, lowV), Math.min(TO_V, highV), R) : "");
    put(this.#low, "d", tripV === null ? "" : arc(FROM_V, Math.min(TO_V, tripV), R));
    const high = Math.max(0, Math.min(1, charge)) * 94;
    put(this.#fill, "y", 104 - high);
    put(this.#fill, "height", high);
    write(this.#voltage, volts(meanV));
    write(this.#charge, percent(charge));
    put(this.#root, "aria-label", "Voltmeter: " + volts(meanV) + ". Charge: " + percent(charge) + ".");
  }
}
