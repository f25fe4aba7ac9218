// Tries something until it is done: after a failure again after a while, each time a longer one.

import { LATER } from "./send.js";

const FIRST_WAIT_MS = 4_000;
const LONGEST_WAIT_MS = 5 * 60_000;

export class Again {
  #step;
  #waitMs = FIRST_WAIT_MS;
  #timer;

  /**
   * @param step tries once and answers LATER where it is to be tried again
   */
  constructor(step) {
    this.#step = step;
  }

  /** Tries now; answers what came of it, though it may be tried again later. */
  async now() {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const outcome = await this.#step();
    if (outcome === LATER) {
      this.#timer = setTimeout(() => this.now(), this.#waitMs);
      this.#waitMs = Math.min(2 * this.#waitMs, LONGEST_WAIT_MS);
    } else {
      this.#waitMs = FIRST_WAIT_MS;
    }
    return outcome;
  }

  /** Tries now, for what was in the way may be gone. */
  afresh() {
    this.#waitMs = FIRST_WAIT_MS;
    return this.now();
  }

  /** Tries now where it failed before and waits to be tried again. */
  ifWaiting() {
    if (this.#timer) {
      this.afresh();
    }
  }
}
