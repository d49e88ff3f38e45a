// "What if we switch this off now?": the phase is parted at the instant, and the load stays on only before it.

import { loads } from "./document.js";
import { clock } from "./words.js";

const LEAST_S = 2;
const LONGEST_NAME = 80;

/** The phase at a time, by its place, with how far into it the time lies (s). */
export function phaseAt(document, timeS) {
  let startS = 0;
  const phases = document.scene.phases;
  for (let i = 0; i < phases.length; i++) {
    const lengthS = 60 * phases[i].durationMin;
    if (timeS < startS + lengthS || i === phases.length - 1) {
      return { index: i, intoS: Math.min(Math.max(0, timeS - startS), lengthS), lengthS };
    }
    startS += lengthS;
  }
  return null;
}

/** The document with loads switched off from an instant to the end of the scene. */
export function switchedOff(document, names, timeS, what) {
  const copy = structuredClone(document);
  const from = part(copy, timeS, what);
  const before = copy.scene.phases.slice(0, from);
  for (const { load } of loads(copy).filter((each) => names.includes(each.load.name))) {
    const always = (load.stages ?? []).length === 0;
    const lit = before.filter((phase) => always || load.stages.some((stage) => (phase.stages ?? []).includes(stage)));
    const stage = (load.name + " until " + clock(timeS)).slice(-LONGEST_NAME);
    load.stages = [lit.length > 0 ? stage : "switched off (" + (always ? "always" : load.stages[0]) + ")"];
    lit.forEach((phase) => (phase.stages = [...(phase.stages ?? []), stage]));
  }
  return dropUnknown(copy);
}

/** Parts the phase at the instant in two; returns the place of the second half. */
function part(document, timeS, what) {
  const { index, intoS, lengthS } = phaseAt(document, timeS);
  if (intoS < LEAST_S) {
    return index;
  }
  if (lengthS - intoS < LEAST_S) {
    return index + 1;
  }
  const first = document.scene.phases[index];
  const second = structuredClone(first);
  second.name = unique(document, (first.name + ", " + what + " off").slice(0, LONGEST_NAME - 4));
  first.durationMin = intoS / 60;
  second.durationMin = (lengthS - intoS) / 60;
  cutProfile(first, second, "airProfile", "airC", intoS / 60);
  cutProfile(first, second, "speedProfile", "engineRpm", intoS / 60);
  document.scene.phases.splice(index + 1, 0, second);
  return index + 1;
}

function unique(document, name) {
  const taken = document.scene.phases.map((phase) => phase.name);
  for (let n = 1; ; n++) {
    const candidate = n === 1 ? name : name + " " + n;
    if (!taken.includes(candidate)) {
      return candidate;
    }
  }
}

/** Shares a profile of straight lines between the two halves. */
function cutProfile(first, second, key, value, atMin) {
  const points = first[key];
  if (!Array.isArray(points)) {
    return;
  }
  const at = interpolated(points, value, atMin);
  first[key] = [...points.filter((point) => point.atMin < atMin), { atMin, [value]: at }];
  second[key] = [
    { atMin: 0, [value]: at },
    ...points.filter((point) => point.atMin > atMin).map((point) => ({ ...point, atMin: point.atMin - atMin })),
  ];
}

function interpolated(points, value, atMin) {
  const after = points.findIndex((point) => point.atMin >= atMin);
  if (after <= 0) {
    return points[after === 0 ? 0 : points.length - 1][value];
  }
  const [a, b] = [points[after - 1], points[after]];
  return a[value] + ((b[value] - a[value]) * (atMin - a.atMin)) / (b.atMin - a.atMin);
}

function dropUnknown(document) {
  const known = new Set(loads(document).flatMap(({ load }) => load.stages ?? []));
  document.scene.phases.forEach((phase) => {
    phase.stages = (phase.stages ?? []).filter((stage) => known.has(stage));
  });
  return document;
}
