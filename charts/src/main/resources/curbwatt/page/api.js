// Questions to the program behind the page. The scenario travels with each; the server keeps nothing.

/** Tells this page's work from that of other tabs; a reload begins a new one. */
const TAB = crypto.randomUUID();

/** An answer that says no, with the sentence or the problems that say why. */
export class Refusal extends Error {
  constructor(status, body) {
    super(body.message ?? "");
    this.status = status;
    this.problems = body.problems ?? [];
  }
}

function post(text, signal) {
  return {
    method: "POST",
    headers: { "Content-Type": "application/json", "Curbwatt-Tab": TAB },
    body: text,
    signal,
  };
}

async function answer(path, options) {
  const response = await fetch(path, options);
  const body = await response.json();
  if (!response.ok) {
    throw new Refusal(response.status, body);
  }
  return body;
}

/** The scenario to open on, the demos, the parts. */
export function start() {
  return answer("/start", {});
}

/** A scenario that ships with the program. */
export function demo(name) {
  return answer("/demo?name=" + encodeURIComponent(name), {});
}

/** What is wrong with a file's text, and the document in it. */
export function open(text) {
  return answer("/open", post(text));
}

/** Runs a scenario. */
export function run(text, signal) {
  return answer("/run", post(text, signal));
}

/** Runs a scenario for each pair of settings; hears each outcome as it arrives. Returns whether all arrived. */
export async function map(text, cutoff, tripsV, delaysS, signal, hear) {
  const query = "?cutoff=" + cutoff + "&tripV=" + tripsV.join(",") + "&delayS=" + delaysS.join(",");
  const response = await fetch("/map" + query, post(text, signal));
  if (!response.ok) {
    throw new Refusal(response.status, await response.json());
  }
  let rest = "";
  let finished = false;
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    const lines = (rest + piece.value).split("\n");
    rest = lines.pop();
    for (const line of lines.filter((each) => each !== "")) {
      const heard = JSON.parse(line);
      finished ||= heard.finished === true;
      hear(heard);
    }
  }
  return finished;
}
