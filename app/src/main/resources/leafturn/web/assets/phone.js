// On every page: keeps the site usable without a connection, sends what waits on this phone, and
// says so as long as something does.

import { Again } from "./again.js";
import * as queue from "./queue.js";
import { refreshLawns, send } from "./send.js";
import { entryWords, momentWords } from "./words.js";

const LAWNS_GOOD_FOR_MS = 12 * 60 * 60_000;

const sending = new Again(send);
const refreshing = new Again(refreshLawns);

/** Sends now; where that fails, again after a while. */
export function sendNow() {
  return sending.now();
}

/** Keeps the lawns as the book tells them; where it does not answer, it is asked again after a while. */
export function refreshNow() {
  return refreshing.now();
}

/** Asks the browser to send in the background where it can, even when the page is closed. */
export async function sendInTheBackground() {
  const registration = await navigator.serviceWorker?.getRegistration();
  await registration?.sync?.register("leafturn-send").catch(() => undefined);
}

/** There may be a connection again, or somebody who waits for one. */
function tryAfresh() {
  sending.afresh();
  refreshing.ifWaiting();
}

async function refreshOldLawns() {
  const lawns = await queue.known();
  if (!lawns || Date.now() - Date.parse(lawns.toldAt) > LAWNS_GOOD_FOR_MS) {
    await refreshNow();
  }
}

/** Pages of the log show what waits in full; all others how much it is, and a lawn's page its own. */
async function showCount() {
  const main = document.getElementById("content");
  if (main.querySelector("[data-unsent]")) {
    return;
  }
  const person = document.body.dataset.logs;
  const waiting = (await queue.entries()).filter((entry) => !person || entry.person.id === person);
  main.querySelector(":scope > .unsent-note")?.remove();
  if (waiting.length > 0) {
    main.prepend(noteOf(waiting));
  }
}

function noteOf(waiting) {
  const note = document.createElement("div");
  note.className = "unsent-note";
  note.setAttribute("role", "status");
  const link = document.createElement("a");
  link.href = "/log";
  link.textContent = `${waiting.length === 1 ? "1 entry is" : `${waiting.length} entries are`} not sent yet`;
  const here = waiting.filter((entry) => location.pathname === `/lawns/${entry.lawn.address}`);
  note.append(link, ...here.map(lineOf));
  return note;
}

function lineOf(entry) {
  const line = document.createElement("p");
  line.className = "detail";
  line.textContent = `${entryWords(entry)} · kept on this phone since ${momentWords(entry.keptAt)}`;
  return line;
}

/** A page that was on its way while the worker was made would stay outside its care until the next one. */
function askForCare(registration) {
  if (!navigator.serviceWorker.controller) {
    registration.active?.postMessage("claim");
  }
}

/** Only somebody who may log needs the worker and the lawns; strangers get neither. */
async function prepareForTheLawn() {
  if (!document.body.dataset.logs) {
    return;
  }
  await navigator.serviceWorker?.register("/worker.js", { type: "module", scope: "/" }).catch(() => undefined);
  navigator.serviceWorker?.ready.then(askForCare);
  if (!document.querySelector("[data-log]")) {
    await refreshOldLawns();
  }
}

async function start() {
  addEventListener("online", tryAfresh);
  document.addEventListener("visibilitychange", () => document.hidden || tryAfresh());
  queue.onChange(showCount);
  await showCount();
  await prepareForTheLawn();
  await sendNow();
}

// Plain HTTP beyond this machine gives a page neither a queue nor locks; its forms still work.
if (globalThis.isSecureContext) {
  start();
}
