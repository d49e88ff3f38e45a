// The scenario document: reading and changing it by path, and spelling it as a file.

const STEP = /[^.[\]]+/g;

function steps(path) {
  return (path.match(STEP) ?? []).map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** The value at a path such as `vehicle.cutoffs[0].tripV`; undefined where there is none. */
export function get(document, path) {
  return steps(path).reduce((value, step) => (value === undefined || value === null ? undefined : value[step]), document);
}

/** A copy with another value at a path; undefined takes the key out. Objects on the way are made. */
export function set(document, path, value) {
  const copy = structuredClone(document);
  const all = steps(path);
  const last = all.pop();
  let at = copy;
  for (const step of all) {
    at[step] ??= {};
    at = at[step];
  }
  if (value === undefined) {
    delete at[last];
  } else {
    at[last] = value;
  }
  return copy;
}

/** What an answer of the program opens: the document, and the text that it came from, to be saved as long as nothing is changed. */
export function opening(answer, text) {
  const doc = JSON.parse(answer.document);
  return { doc, opened: { text, document: JSON.stringify(doc) } };
}

/** All loads with their circuit and path, in the document's order. */
export function loads(document) {
  return (document.vehicle?.circuits ?? []).flatMap((circuit, c) =>
    (circuit.loads ?? []).map((load, l) => ({
      load,
      circuit: circuit.name,
      path: "vehicle.circuits[" + c + "].loads[" + l + "]",
    })),
  );
}

/**
 * The document as it runs and is saved: without stages of phases that no load has any more, because its loads are
 * switched off.
 */
export function settled(document) {
  const known = new Set(loads(document).flatMap(({ load }) => load.stages ?? []));
  const phases = document.scene?.phases;
  if (!Array.isArray(phases)) {
    return document;
  }
  const off = new Set([...known].map(unswitched).filter((stage) => stage !== null));
  const copy = structuredClone(document);
  for (const phase of copy.scene.phases) {
    if (Array.isArray(phase.stages)) {
      phase.stages = phase.stages.filter((stage) => known.has(stage) || !off.has(stage));
    }
  }
  return copy;
}

const OFF = /^switched off \((.*)\)$/;

/** The stage that a switched-off load had; null where it is not switched off. */
export function unswitched(stage) {
  return stage.match(OFF)?.[1] ?? null;
}

/** The stage of a load that is switched off, from which the one before can be read again. */
export function switched(stage) {
  return "switched off (" + stage + ")";
}

/** The document as a text for a file: two spaces a level, what is short on one line. */
export function spell(value, indent = "") {
  const tight = JSON.stringify(value, null, 1).replace(/\n\s*/g, " ");
  if (value === null || typeof value !== "object") {
    return tight;
  }
  if (isPlain(value) && indent.length + tight.length <= 110) {
    return tight.replace(/\[ /g, "[").replace(/ \]/g, "]");
  }
  const inner = indent + "  ";
  const entries = Array.isArray(value)
    ? value.map((item) => inner + spell(item, inner))
    : Object.entries(value).map(([key, item]) => inner + JSON.stringify(key) + ": " + spell(item, inner));
  const [open, close] = Array.isArray(value) ? "[]" : "{}";
  return open + "\n" + entries.join(",\n") + "\n" + indent + close;
}

/** Whether an object or list holds little enough that it reads well on one line. */
function isPlain(value) {
  return Object.values(value).every(
    (item) => item === null || typeof item !== "object" || (Array.isArray(item) && item.every((x) => typeof x !== "object")),
  );
}
