// Which knobs there are: what a planner turns, where it stands in the document, and how far it goes by hand.

import { get, set } from "./document.js";

/** How far a slider goes; the field beside it takes what the file format allows. */
const SLIDERS = {
  tripV: [10.5, 13, 0.05], tripDelayS: [0, 300, 5], warningV: [10.5, 13.5, 0.05], filterS: [0, 60, 1],
  aboveV: [12, 14.5, 0.05], delayS: [0, 300, 5], c20Ah: [30, 250, 1], reserveMin: [40, 500, 5], coldCrankingA: [200, 1500, 10],
  capacityAh: [20, 400, 5], capacityHealthPercent: [40, 110, 1], resistanceGrowthFactor: [0.8, 4, 0.1], chargePercent: [20, 100, 1],
  auxiliaryChargePercent: [20, 100, 1], batteryC: [-40, 50, 1], airC: [-40, 50, 1], engineRpm: [500, 3000, 25], durationMin: [1, 480, 1],
  openV: [11.5, 13.5, 0.05], closeV: [12.5, 14, 0.05],
};

const UNITS = { V: "V", S: "s", A: "A", Ah: "Ah", Min: "min", Percent: "%", C: "°C", Rpm: "rpm", Factor: "×" };

/** The groups of knobs for a document: `{title, knobs}`, each knob with its path, its figure and where that comes from. */
export function knobGroups(document, parts, cutoff) {
  const partOf = (path) => parts.find((part) => part.name === get(document, path + ".part"))?.figures ?? {};
  const knob = (label, path, key, usual) => {
    const own = get(document, path + "." + key);
    const lent = partOf(path)[key];
    const figure = own ?? (lent === undefined ? usual : Number(lent));
    return figure === undefined ? null : { label, key, path: path + "." + key, figure, unit: unitOf(key), slider: SLIDERS[key] };
  };
  return [
    cutoffGroup(document, cutoff, knob),
    batteryGroup("Battery", "vehicle.battery", document, knob),
    get(document, "vehicle.auxiliary") ? batteryGroup("Auxiliary battery", "vehicle.auxiliary.battery", document, knob) : null,
    phaseGroup(document, knob),
  ].filter((group) => group !== null);
}

function unitOf(key) {
  return UNITS[key.match(/(Ah|[A-Z][a-z]*)$/)?.[1]] ?? "";
}

function cutoffGroup(document, index, knob) {
  const cutoffs = get(document, "vehicle.cutoffs") ?? [];
  if (cutoffs.length === 0) {
    return null;
  }
  const path = "vehicle.cutoffs[" + Math.min(index, cutoffs.length - 1) + "]";
  const when = get(document, path + ".reclose.when") ?? "engine running";
  const steps = (get(document, path + ".steps") ?? []).flatMap((step, i) => [
    knob(step.name + ": trips below", path + ".steps[" + i + "]", "tripV"),
    knob(step.name + ": after", path + ".steps[" + i + "]", "tripDelayS", 0),
  ]);
  return {
    title: "Cutoff",
    knobs: [
      cutoffs.length > 1 ? { label: "Which", choose: cutoffs.map((each) => each.name), chosen: index, cutoff: true, path: "cutoff" } : null,
      knob("Trips below", path, "tripV"),
      knob("After", path, "tripDelayS", 0),
      knob("Filter", path, "filterS", 0),
      { label: "Closes again", path: path + ".reclose.when", figure: when, options: ["engine running", "above voltage", "by hand"] },
      when === "above voltage" ? knob("Closes above", path + ".reclose", "aboveV", 13.2) : null,
      when === "above voltage" ? knob("After", path + ".reclose", "delayS", 0) : null,
      ...steps,
    ].filter((each) => each !== null),
  };
}

function batteryGroup(title, path, document, knob) {
  const auxiliary = path.includes("auxiliary");
  const start = "scene.start";
  const firstAirC = get(document, "scene.phases[0].airC") ?? get(document, "scene.phases[0].airProfile[0].airC");
  return {
    title,
    knobs: [
      { label: "Part", path: path + ".part", figure: get(document, path + ".part") ?? "", parts: "battery", lead: !auxiliary },
      knob("Capacity, 20 h", path, "c20Ah"),
      knob("Capacity", path, "capacityAh"),
      knob("Reserve", path, "reserveMin"),
      knob("Cold cranking", path, "coldCrankingA"),
      knob("Capacity left", path, "capacityHealthPercent", 100),
      knob("Resistance grown", path, "resistanceGrowthFactor", 1),
      auxiliary ? knob("Charge at start", start, "auxiliaryChargePercent", 100) : knob("Charge at start", start, "chargePercent", 100),
      auxiliary ? null : knob("Temperature at start", start, "batteryC", firstAirC),
    ].filter((each) => each !== null),
  };
}

function phaseGroup(document, knob) {
  const phases = get(document, "scene.phases") ?? [];
  const knobs = [];
  if (phases.some((phase) => phase.airC !== undefined)) {
    const first = phases.find((phase) => phase.airC !== undefined).airC;
    knobs.push({ label: "Air, all phases", key: "airC", path: "scene.phases", figure: first, unit: "°C", slider: SLIDERS.airC, all: "airC" });
  }
  phases.forEach((phase, i) => {
    const path = "scene.phases[" + i + "]";
    knobs.push({ label: phase.name, path: path + ".engine", figure: phase.engine, options: ["driving", "idling", "off", "parked"], heading: true });
    knobs.push(knob("Lasts", path, "durationMin"));
    knobs.push(["driving", "idling"].includes(phase.engine) ? knob(phase.engine === "idling" ? "Idle speed" : "Engine speed", path, "engineRpm") : null);
  });
  return { title: "Phases", knobs: knobs.filter((each) => each !== null) };
}

/** The document after a knob was turned. */
export function turned(document, knob, value) {
  if (knob.all !== undefined) {
    const copy = structuredClone(document);
    copy.scene.phases.forEach((phase) => {
      delete phase.airProfile;
      phase[knob.all] = value;
    });
    return copy;
  }
  if (knob.path.endsWith(".engine")) {
    return engineTurned(document, knob.path.slice(0, -".engine".length), value);
  }
  if (knob.path.endsWith(".reclose.when")) {
    const above = value === "above voltage" ? { aboveV: 13.2, delayS: 30 } : {};
    return set(document, knob.path.slice(0, -".when".length), { when: value, ...above });
  }
  if (knob.parts !== undefined) {
    return partTurned(document, knob.path, value);
  }
  return set(document, knob.path, value);
}

/** A running engine has a speed; a standing one has none. */
function engineTurned(document, path, engine) {
  const phase = { ...get(document, path), engine };
  const runs = ["driving", "idling"].includes(engine);
  if (!runs) {
    delete phase.engineRpm;
    delete phase.speedProfile;
  } else if (phase.engineRpm === undefined && phase.speedProfile === undefined) {
    phase.engineRpm = engine === "idling" ? 700 : 1900;
  }
  return set(document, path, phase);
}

/** Another part brings its own label: what was written beside the one before goes. */
function partTurned(document, path, value) {
  const owner = path.slice(0, -".part".length);
  const { part, chemistry, c20Ah, reserveMin, coldCrankingA, capacityAh, resistanceMilliohm, ...kept } = get(document, owner);
  return set(document, owner, { part: value, ...kept });
}
