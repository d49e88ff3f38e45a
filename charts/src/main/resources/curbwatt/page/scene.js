// The answer: verdict, figures, what was asked, what happened, what to doubt.

import { byId, el, refill, write } from "./dom.js";
import { problemList } from "./problems.js";
import { glued, number, volts } from "./words.js";

let telling = null;

/** Shows a run in words. */
export function showAnswer(answer) {
  const verdict = byId("verdict");
  write(verdict, glued(answer.sentence));
  verdict.className = !answer.asked ? "" : answer.met ? "yes" : "no";
  write(byId("title"), answer.title + ", " + answer.vehicle);
  refill(byId("figures"), answer.figures, (figures) =>
    figures.map((figure) => el("div", {}, el("dt", {}, figure.name), el("dd", {}, figure.value, figure.remark ? el("small", {}, figure.remark) : null))),
  );
  refill(byId("asked"), answer.requirements, (requirements) =>
    requirements.map((asked) =>
      el("li", { class: asked.met ? "yes" : "no" }, el("b", {}, asked.met ? "met" : "not met"), el("span", {}, glued(sentence(asked.asked) + (asked.reason ? " " + asked.reason : ""))), el("span", { class: "found" }, asked.found)),
    ),
  );
  refill(byId("events"), answer.events, (events) => events.map((event) => el("tr", {}, el("td", {}, event.at), el("td", {}, event.sentence), el("td", { class: "n" }, event.charge))));
  write(byId("more-events"), answer.eventCount > answer.events.length ? "The first " + answer.events.length + " of " + answer.eventCount + " events." : "");
  list("doubts", answer.doubts);
  list("assumptions", answer.assumptions);
  list("cautions", answer.cautions);
  refill(byId("warnings"), answer.warnings, (warnings) => (warnings.length > 0 ? [problemList(warnings)] : []));
  // a reader who hears the page gets the sentence once the knob rests, not at every step of it
  clearTimeout(telling);
  telling = setTimeout(() => write(byId("spoken"), answer.sentence), 700);
}

function list(id, sentences) {
  refill(byId(id), sentences, () => sentences.map((text) => el("li", {}, text)));
}

function sentence(text) {
  return text.charAt(0).toUpperCase() + text.slice(1) + ".";
}

/** The list of pinned runs, each with its way out. */
export function showGhosts(ghosts, drop) {
  byId("ghosts").replaceChildren(
    ...ghosts.map((ghost, i) =>
      el("li", { class: "g" + i }, el("span", { class: "swatch" }), el("span", {}, ghost.label + ": " + ghost.sentence), el("button", { type: "button", "aria-label": "Unpin " + ghost.label, onclick: () => drop(i) }, "unpin")),
    ),
  );
}

/** A short name for a pinned run: what its cutoff does. */
export function ghostLabel(answer) {
  const trip = answer.levels.find((level) => level.kind === "trip");
  const first = answer.marks.find((mark) => mark.words.startsWith("trip"));
  return (trip ? "trip " + volts(trip.levelV) : "no cutoff") + (first ? " at " + number(first.timeS / 60, 1) + " min" : "");
}
