// Keeps the picture in step with the document: one run at a time, the newest document always last.

import { run, Refusal } from "./api.js";

/** A run that takes longer than this gives way to a newer document at once (ms). */
const PATIENCE_MS = 150;

export class Runner {
  #waiting = null;
  #current = null;
  #heard;

  /** @param heard functions `done(answer, ms)`, `refused(refusal)`, `busy(yes)` */
  constructor(heard) {
    this.#heard = heard;
  }

  /** Asks for a run of a document's text. What was asked before and has not begun is forgotten. */
  ask(text) {
    this.#waiting = text;
    if (this.#current === null) {
      this.#next();
    } else if (performance.now() - this.#current.startMs > PATIENCE_MS) {
      this.#current.abort.abort();
    } else {
      const overdue = this.#current;
      setTimeout(() => {
        if (this.#current === overdue && this.#waiting !== null) {
          overdue.abort.abort();
        }
      }, PATIENCE_MS);
    }
  }

  async #next() {
    const text = this.#waiting;
    this.#waiting = null;
    const current = { abort: new AbortController(), startMs: performance.now() };
    this.#current = current;
    this.#heard.busy(true);
    try {
      const answer = await run(text, current.abort.signal);
      this.#heard.done(answer, performance.now() - current.startMs);
    } catch (failure) {
      if (this.#waiting === null || !current.abort.signal.aborted) {
        this.#fail(failure);
      }
    }
    this.#current = null;
    if (this.#waiting !== null) {
      this.#next();
    } else {
      this.#heard.busy(false);
    }
  }

  #fail(failure) {
    if (failure instanceof Refusal && failure.status === 409) {
      return;
    }
    this.#heard.refused(
      failure instanceof Refusal
        ? failure
        : new Refusal(0, { message: "The program behind this page does not answer. Is it still running?" }),
    );
  }
}
