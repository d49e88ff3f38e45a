// Puts the page together: the document in the middle, everything else follows it.

import { Refusal, start } from "./api.js";
import { Budget } from "./budget.js";
import { opening, settled } from "./document.js";
import { byId, el, write } from "./dom.js";
import { Files } from "./files.js";
import { Knobs } from "./knobs.js";
import { SettingMap } from "./map.js";
import { Play } from "./play.js";
import { problemList } from "./problems.js";
import { Runner } from "./runner.js";
import { ghostLabel, showAnswer, showGhosts } from "./scene.js";
import { linked } from "./share.js";
import { Store } from "./store.js";
import { Switches } from "./switches.js";
import { Timeline } from "./timeline.js";
import { switchedOff } from "./whatif.js";

const VIEWS = ["scene", "map", "loads", "file"];
const MOST_GHOSTS = 3;

const store = new Store();
const left = Store.left();
if (left !== null) {
  store.change({ flashes: left.flashes, timeS: left.timeS });
}
const timeline = new Timeline(byId("timeline"));
const knobs = new Knobs(byId("knob-groups"), store);
const switches = new Switches(byId("switches"), byId("stages"), store);
const budget = new Budget(store);
const settingMap = new SettingMap(store);
const files = new Files(store);
const play = new Play(timeline, store, whatIf);
let answer = null;

const runner = new Runner({
  busy: (yes) => byId("answer").classList.toggle("busy", yes),
  done: (heard, ms) => {
    answer = heard;
    byId("stage").classList.remove("stale");
    complain([]);
    // the chart first: it asks for its width, which is quick as long as no word on the page has changed
    draw();
    showAnswer(answer);
    document.documentElement.dataset.runMs = ms.toFixed(1);
    document.documentElement.dataset.runs = Number(document.documentElement.dataset.runs ?? 0) + 1;
  },
  refused: (refusal) => {
    byId("stage").classList.add("stale");
    complain(refusal.problems.length > 0 ? refusal.problems : [{ severity: "error", path: "", line: 0, column: 0, message: refusal.message, remedy: "" }]);
  },
});

function draw() {
  timeline.draw(answer, store.state.ghosts);
  play.take(answer);
  showBudget();
}

/** The table of loads is filled where somebody looks at it: a hand on a knob need not wait for it. */
function showBudget() {
  const { doc, parts, view } = store.state;
  if (view === "loads" && answer !== null) {
    budget.show(doc, parts, answer);
  }
}

/** Shows problems at their fields; what has no field on the page stands above the chart. */
function complain(problems) {
  const rest = budget.complain(knobs.complain(problems).concat(problems.filter((problem) => problem.path.includes("loads["))));
  const shown = rest.filter((problem, i) => rest.indexOf(problem) === i).map((problem) => ({ ...problem, line: 0 }));
  byId("troubles").replaceChildren(...(shown.length > 0 ? [problemList(shown)] : []));
}

function whatIf(names, what, timeS) {
  pin();
  const entries = [...new Set(names.map((name) => name.replace(/ \d+( to \d+)? of \d+$/, "")))];
  store.change({ doc: switchedOff(settled(store.state.doc), [...names, ...entries], timeS, what) });
}

function pin() {
  if (answer !== null) {
    const { timeMs, meanMv, chargeTenThousandths } = answer.trace;
    const ghost = { label: ghostLabel(answer), sentence: answer.sentence, trace: { timeMs, meanMv, chargeTenThousandths } };
    store.change({ ghosts: [ghost, ...store.state.ghosts].slice(0, MOST_GHOSTS) });
  }
}

store.listen((state, changes) => {
  if ("doc" in changes) {
    // asked first, so that the run begins while the page moves its knobs
    runner.ask(JSON.stringify(settled(state.doc)));
    switches.show(state);
  }
  if ("doc" in changes || "cutoff" in changes) {
    knobs.show(state);
    settingMap.changed(state.doc);
  }
  if ("ghosts" in changes) {
    showGhosts(state.ghosts, (i) => store.change({ ghosts: state.ghosts.filter((unused, at) => at !== i) }));
    if (answer !== null) {
      timeline.draw(answer, state.ghosts);
      timeline.point(play.timeS);
    }
  }
  if ("view" in changes) {
    show(state.view);
  }
  if ("name" in changes) {
    byId("demos").value = state.name.startsWith("demo:") ? state.name.slice("demo:".length) : "";
    write(byId("own"), state.name.startsWith("demo:") ? "own scenario" : state.name);
  }
});

function show(view) {
  for (const each of VIEWS) {
    const tab = byId("tab-" + each);
    tab.setAttribute("aria-selected", String(each === view));
    tab.tabIndex = each === view ? 0 : -1;
    byId("view-" + each).hidden = each !== view;
  }
  document.body.dataset.view = view;
  if (view === "file") {
    files.show();
  }
  showBudget();
}

for (const view of VIEWS) {
  byId("tab-" + view).addEventListener("click", () => store.change({ view }));
}
byId("tabs").addEventListener("keydown", (event) => {
  const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
  if (step !== undefined) {
    const next = VIEWS[(VIEWS.indexOf(store.state.view) + step + VIEWS.length) % VIEWS.length];
    store.change({ view: next });
    byId("tab-" + next).focus();
  }
});
byId("pin").addEventListener("click", pin);
byId("reset").addEventListener("click", () => begin(false));

/** The scenario to begin with: that of a link, that of this tab before a reload, or the one the program was started on. */
async function begin(remember) {
  const first = await start();
  byId("demos").replaceChildren(el("option", { value: "", id: "own" }, "own scenario"), ...first.demos.map((demo) => el("option", { value: demo.name }, demo.title)));
  store.change({ parts: first.parts });
  const shared = await linked(location.hash).catch(() => "damaged");
  if (shared !== null) {
    history.replaceState(null, "", "/");
    if (await files.take("the link", shared, true)) {
      return;
    }
  }
  if (remember && left?.doc) {
    store.change({ doc: left.doc, opened: left.opened ?? null, name: left.name, cutoff: left.cutoff, ghosts: left.ghosts, view: shared === null ? left.view : "file" });
  } else {
    store.change({ ...opening(first, first.text), name: first.name, cutoff: 0, ghosts: [], view: shared === null ? "scene" : "file" });
  }
}

begin(true).catch((failure) => {
  write(byId("verdict"), failure instanceof Refusal && failure.message ? failure.message : "The program behind this page does not answer. Is it still running?");
});
