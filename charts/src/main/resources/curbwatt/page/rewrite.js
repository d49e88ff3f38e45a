// Writing a changed document into the text that it came from, so that comments and lay-out stay where nothing changed.

import { spell } from "./document.js";

const GAP = /(?:\s|\/\/[^\n]*|\/\*[\s\S]*?\*\/)*/y;
const TEXT = /"(?:[^"\\]|\\.)*"/y;
const WORD = /[^\s,\]}/]+/y;
const COMMENT = /"(?:[^"\\]|\\.)*"|(\/\/[^\n]*|\/\*[\s\S]*?\*\/)/g;

/** How many comments a text has. */
export function comments(text) {
  return [...text.matchAll(COMMENT)].filter((found) => found[1] !== undefined).length;
}

/** The text with its document changed from one to another; null where that can't be written into it. */
export function rewritten(text, before, after) {
  const edits = [];
  change(text, value(text, skip(text, 0)), before, after, edits);
  edits.sort((one, other) => other.from - one.from || other.to - one.to);
  const result = edits.reduce((all, edit) => all.slice(0, edit.from) + edit.text + all.slice(edit.to), text);
  return holds(result, after) ? result : null;
}

/** Whether a text says what a document says: what could not be written in place must not be saved wrong. */
function holds(text, document) {
  try {
    return same(JSON.parse(text.replace(COMMENT, (all, comment) => (comment === undefined ? all : " "))), document);
  } catch {
    return false;
  }
}

function same(one, other) {
  return JSON.stringify(sorted(one)) === JSON.stringify(sorted(other));
}

function sorted(any) {
  if (Array.isArray(any)) {
    return any.map(sorted);
  }
  return any !== null && typeof any === "object" ? Object.fromEntries(Object.keys(any).sort().map((key) => [key, sorted(any[key])])) : any;
}

function end(pattern, text, at) {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

function skip(text, at) {
  return end(GAP, text, at);
}

/** Where a value stands in a text that is known to be JSON with comments: `{from, to, entries}`, each entry `{key, from, value}`. */
function value(text, from) {
  const open = text[from];
  if (open !== "{" && open !== "[") {
    return { from, to: end(open === '"' ? TEXT : WORD, text, from), entries: [] };
  }
  const entries = [];
  let at = skip(text, from + 1);
  while (text[at] !== "}" && text[at] !== "]") {
    const start = at;
    let key = entries.length;
    if (open === "{") {
      at = end(TEXT, text, at);
      key = JSON.parse(text.slice(start, at));
      at = skip(text, skip(text, at) + 1);
    }
    const inner = value(text, at);
    entries.push({ key, from: start, value: inner });
    at = skip(text, inner.to);
    at = text[at] === "," ? skip(text, at + 1) : at;
  }
  return { from, to: at + 1, entries };
}

function change(text, span, before, after, edits) {
  if (same(before, after)) {
    return;
  }
  const lists = Array.isArray(before) && Array.isArray(after) && before.length === after.length;
  const objects = [before, after].every((each) => each !== null && typeof each === "object" && !Array.isArray(each));
  const gone = objects ? span.entries.filter((entry) => !(entry.key in after)) : [];
  const added = objects ? Object.keys(after).filter((key) => !(key in before)) : [];
  const last = span.entries.at(-1);
  if (!(lists || objects) || gone.length > 1 || last === undefined || (gone.includes(last) && added.length > 0)) {
    edits.push({ from: span.from, to: span.to, text: spell(after, indentAt(text, span.from)) });
    return;
  }
  span.entries.filter((entry) => !gone.includes(entry)).forEach((entry) => change(text, entry.value, before[entry.key], after[entry.key], edits));
  gone.forEach((entry) => edits.push(removal(text, span, entry)));
  if (added.length > 0) {
    const line = text.slice(span.from, span.to).includes("\n");
    const indent = line ? indentAt(text, last.from) : "";
    const close = text.slice(0, span.to - 1).trimEnd().length;
    // of two at one place the later one ends up before the earlier
    edits.push({ from: close, to: close, text: added.map((key) => (line ? "\n" + indent : " ") + JSON.stringify(key) + ": " + spell(after[key], indent)).join(",") });
    edits.push({ from: last.value.to, to: last.value.to, text: "," });
  }
}

/** An entry and the comma that parts it from its neighbour; what stands beside it stays. */
function removal(text, span, entry) {
  const place = span.entries.indexOf(entry);
  const comma = skip(text, entry.value.to);
  if (text[comma] === ",") {
    const line = text.lastIndexOf("\n", entry.from - 1) + 1;
    const after = comma + 1 + text.slice(comma + 1).match(/^[ \t]*/)[0].length;
    const alone = text.slice(line, entry.from).trim() === "" && text[after] === "\n";
    return { from: alone ? line : entry.from, to: alone ? after + 1 : after, text: "" };
  }
  return place === 0 ? { from: entry.from, to: entry.value.to, text: "" } : { from: span.entries[place - 1].value.to, to: entry.value.to, text: "" };
}

/** The blanks at the start of the line that a place is in. */
function indentAt(text, at) {
  return text.slice(text.lastIndexOf("\n", at - 1) + 1).match(/^[ \t]*/)[0];
}
