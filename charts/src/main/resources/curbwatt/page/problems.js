// What is wrong with a scenario, in the program's words: at the field where it can be mended, else in a list.

import { el } from "./dom.js";

/** Shows messages under a field and ties them to it; takes them away where there are none. */
export function messageAt(holder, input, problems) {
  holder.querySelector(".message")?.remove();
  const errors = problems.filter((problem) => problem.severity === "error");
  if (errors.length > 0) {
    input.setAttribute("aria-invalid", "true");
  } else {
    input.removeAttribute("aria-invalid");
  }
  if (problems.length === 0) {
    input.removeAttribute("aria-describedby");
    return;
  }
  const id = input.id + "-message";
  input.setAttribute("aria-describedby", id);
  holder.append(el("p", { class: "message " + (errors.length > 0 ? "error" : "warning"), id }, problems.map(sentence).join(" ")));
}

function sentence(problem) {
  return problem.message + (problem.remedy ? " " + problem.remedy : "");
}

/** A list of problems; `act` is called with the one that is chosen, if they can be gone to. */
export function problemList(problems, act) {
  return el(
    "ul",
    { class: "problems" },
    ...problems.map((problem) => {
      const place = [problem.line > 0 ? "line " + problem.line + ", column " + problem.column : "", problem.path].filter((text) => text !== "").join(": ");
      const head = place === "" ? null : act && problem.line > 0 ? el("button", { type: "button", class: "place", onclick: () => act(problem) }, place) : el("span", { class: "place" }, place);
      return el("li", { class: problem.severity }, head, el("span", {}, problem.message), problem.remedy ? el("span", { class: "remedy" }, problem.remedy) : null);
    }),
  );
}

/** The offset in a text of a line and column, both from 1. */
export function offsetOf(text, line, column) {
  const lines = text.split("\n");
  const before = lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0);
  return Math.min(text.length, before + Math.max(0, column - 1));
}
