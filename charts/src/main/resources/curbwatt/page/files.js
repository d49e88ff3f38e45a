// Opening, checking, saving and sharing a scenario. A file is read by the browser and checked by the program; no path
// ever leaves the page.

import { demo, open } from "./api.js";
import { opening, settled, spell } from "./document.js";
import { byId, write } from "./dom.js";
import { offsetOf, problemList } from "./problems.js";
import { comments, rewritten } from "./rewrite.js";
import { link } from "./share.js";

const MOST_BYTES = 4_000_000;

export class Files {
  #store;

  constructor(store) {
    this.#store = store;
    byId("open").addEventListener("click", () => byId("file").click());
    byId("file").addEventListener("change", (event) => this.#picked(event.target));
    byId("save").addEventListener("click", () => this.#save());
    byId("download").addEventListener("click", () => this.#download());
    byId("share").addEventListener("click", () => this.#share());
    byId("print").addEventListener("click", () => print());
    byId("check").addEventListener("click", () => this.take("the text", byId("text").value, false));
    byId("use").addEventListener("click", () => this.take(this.#store.state.name, byId("text").value, true));
    for (const id of ["save", "download"]) {
      byId(id).title = "A file that every other command reads, with the comments of the one that was opened.";
    }
    byId("demos").addEventListener("change", (event) => this.#demo(event.target.value));
  }

  /** The document's text, as it runs and is saved: the file's own, what was changed written into it, comments and all. */
  text() {
    const { doc, opened } = this.#store.state;
    if (this.#isUntouched()) {
      return opened.text;
    }
    const after = settled(doc);
    return (opened === null ? null : rewritten(opened.text, JSON.parse(opened.document), after)) ?? spell(after) + "\n";
  }

  #isUntouched() {
    const { doc, opened } = this.#store.state;
    return opened !== null && JSON.stringify(doc) === opened.document;
  }

  /** Says what saving loses: comments inside something that was made anew; null: nothing. */
  #loses() {
    const { opened } = this.#store.state;
    const lost = opened === null ? 0 : comments(opened.text) - comments(this.text());
    return lost <= 0 ? null : (lost === 1 ? "One comment" : lost + " comments") + " of the file that was opened stood in what was changed here, and " + (lost === 1 ? "is" : "are") + " not kept.";
  }

  /** Shows the document's text in the editor. */
  show() {
    byId("text").value = this.text();
    write(byId("file-note"), this.#isUntouched() ? "The file as it was opened." : this.#loses() ?? "The file as it was opened, with what was changed here.");
    byId("file-problems").replaceChildren();
  }

  /**
   * Has a text checked, and takes its scenario if it runs.
   *
   * @param use whether to take it; otherwise it is only checked
   * @return whether it runs
   */
  async take(name, text, use) {
    const answer = await open(text);
    if (answer.runs && use) {
      this.#store.change({ ...opening(answer, text), name, cutoff: 0, ghosts: [], timeS: 0, view: "scene" });
      write(byId("file-note"), "");
      byId("file-problems").replaceChildren();
      return true;
    }
    if (use) {
      this.#store.change({ view: "file" });
    }
    byId("text").value = text;
    const errors = answer.problems.filter((problem) => problem.severity === "error").length;
    const warnings = answer.problems.length - errors;
    write(byId("file-note"), answer.runs ? "No error" + (warnings > 0 ? ", but something to look at." : ".") : "Not opened: " + name + " has " + errors + (errors === 1 ? " error" : " errors") + ". The scene before it is still there.");
    byId("file-problems").replaceChildren(problemList(answer.problems, (problem) => this.#goTo(problem)));
    return answer.runs;
  }

  async #picked(input) {
    const file = input.files[0];
    if (file === undefined) {
      return;
    }
    if (file.size > MOST_BYTES) {
      this.#store.change({ view: "file" });
      write(byId("file-note"), "The file has " + Math.floor(file.size / 1e6) + " MB; a scenario has at most 4 MB. Is this the right file?");
    } else {
      await this.take(file.name, await file.text(), true);
    }
    input.value = "";
  }

  async #demo(name) {
    if (name !== "") {
      const answer = await demo(name);
      this.#store.change({ ...opening(answer, answer.text), name: "demo:" + name, cutoff: 0, ghosts: [], timeS: 0 });
    }
  }

  #goTo(problem) {
    const text = byId("text");
    const at = offsetOf(text.value, problem.line, problem.column);
    text.focus();
    text.setSelectionRange(at, Math.min(text.value.length, at + 1));
    text.scrollTop = (problem.line - 4) * parseFloat(getComputedStyle(text).lineHeight);
  }

  #fileName() {
    const name = this.#store.state.name.replace(/^demo:/, "").replace(/\.json$/, "") || "scenario";
    return name + ".json";
  }

  async #save() {
    if (!("showSaveFilePicker" in window)) {
      this.#download();
      return;
    }
    try {
      const handle = await window.showSaveFilePicker({ suggestedName: this.#fileName(), types: [{ description: "Scenario", accept: { "application/json": [".json"] } }] });
      const stream = await handle.createWritable();
      await stream.write(this.text());
      await stream.close();
      this.#tell(["Saved as " + handle.name + ".", this.#loses()].filter(Boolean).join(" "));
    } catch (failure) {
      if (failure.name !== "AbortError") {
        this.#tell("The file could not be written: " + failure.message);
      }
    }
  }

  #download() {
    const address = URL.createObjectURL(new Blob([this.text()], { type: "application/json" }));
    const anchor = document.createElement("a");
    anchor.href = address;
    anchor.download = this.#fileName();
    anchor.click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
    this.#tell(["Downloaded as " + anchor.download + ".", this.#loses()].filter(Boolean).join(" "));
  }

  async #share() {
    const address = await link(JSON.stringify(settled(this.#store.state.doc)));
    const field = byId("link");
    field.value = address;
    byId("link-holder").hidden = false;
    field.select();
    try {
      await navigator.clipboard.writeText(address);
      this.#tell("The link is on the clipboard. It holds the whole scenario; nothing was sent.");
    } catch {
      this.#tell("Copy the link below. It holds the whole scenario; nothing was sent.");
    }
  }

  #tell(text) {
    write(byId("notice"), text);
  }
}
