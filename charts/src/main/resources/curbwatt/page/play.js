// The scene's time: playing, pausing, scrubbing, and switching something off at an instant.

import { valueAt } from "./axes.js";
import { byId, put, write } from "./dom.js";
import { flashSwitch, Lamps } from "./lamps.js";
import { Meter } from "./meter.js";
import { clock, percent, volts } from "./words.js";

export class Play {
  #timeline;
  #store;
  #lamps;
  #meter;
  #flashes;
  #answer = null;
  #timeS = 0;
  #running = false;
  #lastMs = 0;
  #startMs = 0;

  /** @param switchOff called with the names of loads, what to call them, and the instant (s) */
  constructor(timeline, store, switchOff) {
    this.#timeline = timeline;
    this.#store = store;
    this.#timeS = store.state.timeS ?? 0;
    this.#lamps = new Lamps(byId("lamps"), (names, what) => switchOff(names, what, this.#timeS));
    this.#meter = new Meter(byId("meter"));
    this.#flashes = flashSwitch(store);
    byId("play").addEventListener("click", () => this.#toggle());
    byId("scrub").addEventListener("input", (event) => this.go(Number(event.target.value)));
    this.#listenToChart(byId("timeline"));
  }

  /** Takes another run; the instant stays. */
  take(answer) {
    this.#answer = answer;
    this.#timeS = Math.min(this.#timeS, answer.durationS);
    this.#lamps.take(answer);
    const scrub = byId("scrub");
    put(scrub, "max", answer.durationS);
    put(scrub, "step", answer.durationS > 7200 ? 10 : 1);
    this.#place();
    this.#show();
  }

  /** Places the slider under the chart's own axis. */
  #place() {
    const shape = this.#timeline.shape;
    byId("scrub-holder").style.setProperty("--left", shape.left + "px");
    byId("scrub-holder").style.setProperty("--right", shape.wide - shape.right + "px");
  }

  /** Goes to an instant. */
  go(timeS) {
    this.#timeS = Math.min(Math.max(0, timeS), this.#answer.durationS);
    this.#show();
  }

  get timeS() {
    return this.#timeS;
  }

  #toggle() {
    this.#running = !this.#running;
    if (this.#running) {
      if (this.#timeS >= this.#answer.durationS) {
        this.#timeS = 0;
      }
      this.#startMs = performance.now();
      this.#lastMs = this.#startMs;
      requestAnimationFrame((ms) => this.#frame(ms));
    } else {
      this.#store.change({ timeS: this.#timeS });
    }
    this.#show();
  }

  #frame(ms) {
    if (!this.#running) {
      return;
    }
    // a tab that was in the background goes on from where it was
    const passedS = Math.min(0.25, Math.max(0, ms - this.#lastMs) / 1000);
    this.#lastMs = ms;
    this.#timeS += passedS * this.#speed();
    if (this.#timeS >= this.#answer.durationS) {
      this.#timeS = this.#answer.durationS;
      this.#running = false;
    }
    this.#show();
    requestAnimationFrame((next) => this.#frame(next));
  }

  #speed() {
    return Number(byId("speed").value);
  }

  #show() {
    if (this.#answer === null) {
      return;
    }
    const { trace, phases, levels } = this.#answer;
    const atMs = 1000 * this.#timeS;
    const pick = (column) => valueAt(trace.timeMs, trace[column], atMs);
    const meanV = pick("meanMv") / 1000;
    const charge = pick("chargeTenThousandths") / 1e4;
    const trips = levels.filter((level) => level.kind === "trip").map((level) => level.levelV);
    this.#timeline.point(this.#timeS);
    this.#meter.point({ lowV: pick("lowMv") / 1000, meanV, highV: pick("highMv") / 1000, charge, tripV: trips.length > 0 ? Math.max(...trips) : null });
    const phase = phases.findIndex((each) => this.#timeS < each.endS);
    const index = phase < 0 ? phases.length - 1 : phase;
    this.#lamps.point(this.#timeS, index, this.#running ? this.#speed() : 0, this.#flashes(), (performance.now() - this.#startMs) / 1000);
    const scrub = byId("scrub");
    scrub.value = this.#timeS;
    put(scrub, "aria-valuetext", clock(this.#timeS) + ", " + phases[index].name + ", " + volts(meanV) + ", " + percent(charge));
    write(byId("play"), this.#running ? "Pause" : "Play");
    write(byId("clock"), clock(this.#timeS));
    write(byId("now"), phases[index].name + ": " + this.#lately());
  }

  /** What happened last before the instant. */
  #lately() {
    const before = this.#answer.events.filter((event) => event.timeS <= this.#timeS + 1e-6 && !event.sentence.startsWith("Phase "));
    return before.length === 0 ? "nothing has happened yet." : before.at(-1).at + ", " + before.at(-1).sentence;
  }

  #listenToChart(host) {
    const go = (event) => {
      const shape = this.#timeline.shape;
      const x = event.clientX - host.getBoundingClientRect().left;
      if (shape !== null && (event.buttons & 1) === 1) {
        this.go(((x - shape.left) / (shape.right - shape.left)) * shape.durationS);
      }
    };
    host.addEventListener("pointerdown", (event) => {
      host.setPointerCapture(event.pointerId);
      go(event);
    });
    host.addEventListener("pointermove", go);
    host.addEventListener("pointerup", () => this.#store.change({ timeS: this.#timeS }));
    byId("scrub").addEventListener("change", () => this.#store.change({ timeS: this.#timeS }));
  }
}
