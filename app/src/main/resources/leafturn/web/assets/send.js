// Sends what waits on this phone. An entry is removed only once the book has acknowledged it: what
// was sent and not acknowledged is sent again under the same id, and the book keeps it once.

import * as queue from "./queue.js";

const ANSWER_WITHIN_MS = 20_000;
const PHOTOGRAPH_WITHIN_MS = 90_000;

export const DONE = "done";
export const LATER = "later";
export const SIGN_IN = "sign in";

/** Sends all entries of the person who is signed in; tells whether that is done. */
export function send() {
  // One sender at a time, whichever tab or worker it runs in. It would do no harm without.
  return navigator.locks.request("leafturn-send", sendAll);
}

async function sendAll() {
  const waiting = (await queue.entries()).filter((entry) => entry.state === "waiting");
  if (waiting.length === 0) {
    return DONE;
  }
  try {
    const who = await whoIsThere();
    if (!who) {
      return SIGN_IN;
    }
    const own = waiting.filter((entry) => entry.person.id === who.person.id);
    for (const entry of own) {
      const answer = await sendOne(entry, who.token);
      if (answer !== DONE) {
        return answer;
      }
    }
    return own.length === waiting.length ? DONE : SIGN_IN;
  } catch {
    // No connection, no answer in time, or an answer that is not from the book.
    return LATER;
  }
}

/** Who is signed in, with the token that shows the book that a request is ours; or null. */
async function whoIsThere() {
  const answer = await ask("/queue/who", { signal: AbortSignal.timeout(ANSWER_WITHIN_MS) });
  if (isSignedOut(answer)) {
    return null;
  }
  return (await fromTheBook(answer)) ?? Promise.reject(new Error("not an answer of the book"));
}

async function sendOne(entry, token) {
  const within = entry.photograph ? PHOTOGRAPH_WITHIN_MS : ANSWER_WITHIN_MS;
  const signal = AbortSignal.timeout(within);
  const answer = await ask("/queue", { method: "POST", body: form(entry, token), signal });
  if (isSignedOut(answer)) {
    return SIGN_IN;
  }
  const said = await fromTheBook(answer);
  if (answer.status === 200 && said?.id === entry.id) {
    await queue.sent(entry, said.doubt);
    return DONE;
  }
  if (answer.status === 409 && said) {
    await queue.note(entry, { state: "taken", faults: said.faults });
    return DONE;
  }
  if (answer.status === 422 && said) {
    await queue.note(entry, { state: "faulty", faults: said.faults });
    return DONE;
  }
  return LATER;
}

function form(entry, token) {
  const data = new FormData();
  data.append("_token", token);
  data.append("id", entry.id);
  data.append("lawn", entry.lawn.id);
  data.append("as", entry.as);
  data.append("units", entry.units);
  data.append("corrects", String(entry.corrects ?? false));
  for (const [name, value] of entry.fields) {
    data.append(name, value);
  }
  if (entry.photograph) {
    const { bytes, type } = entry.photograph;
    data.append("photograph", new Blob([bytes], { type }), "photograph");
  }
  return data;
}

function ask(path, options) {
  return fetch(path, { ...options, cache: "no-store", redirect: "manual" });
}

/** A book that wants a sign-in first answers 401, or leads to the page for it. */
export function isSignedOut(answer) {
  return answer.status === 401 || answer.type === "opaqueredirect";
}

/** A hotspot that wants to be paid answers everything with a page of its own; that is no answer. */
async function fromTheBook(answer) {
  const type = answer.headers.get("Content-Type") ?? "";
  return type.startsWith("application/json") ? answer.json() : null;
}

/** Asks the book for the lawns and keeps them; what was kept stays where there is no answer. */
export async function refreshLawns() {
  try {
    const answer = await ask("/queue/lawns", { signal: AbortSignal.timeout(ANSWER_WITHIN_MS) });
    if (isSignedOut(answer)) {
      await queue.forget();
      return SIGN_IN;
    }
    const lawns = answer.ok ? await fromTheBook(answer) : null;
    if (!lawns) {
      return LATER;
    }
    await queue.remember({ ...lawns, toldAt: new Date().toISOString() });
    return DONE;
  } catch {
    // Without a connection what is kept has to do.
    return LATER;
  }
}
