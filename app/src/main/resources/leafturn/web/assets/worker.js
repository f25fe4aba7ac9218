// The service worker: answers in place of the book where there is no connection to it. It keeps the
// files and the empty pages of the log, nothing of the book; the lawns are kept by queue.js.

import * as queue from "./queue.js";
import { DONE, send } from "./send.js";

const PAGE = { metric: "/phone/log/metric", us: "/phone/log/us" };
const OFFLINE = "/phone/offline";
const SIGNING_OUT = ["/sign-out", "/me/sign-out-everywhere"];
const LOG_PAGE = /^\/(log|lawns\/[^/]+\/log)$/;

// At the edge of reception a page may load for minutes; whoever stands on the lawn has no patience.
const ANSWER_WITHIN_MS = 3_000;

// Named after the files' version, so that a new worker keeps a set of its own.
const CACHE = `leafturn ${new URL(".", import.meta.url).pathname}`;

/**
 * @param files addresses of the files to keep
 */
export function serve(files) {
  self.addEventListener("install", (event) => event.waitUntil(install(files)));
  self.addEventListener("activate", (event) => event.waitUntil(activate()));
  self.addEventListener("message", (event) => {
    if (event.data === "claim") {
      event.waitUntil(self.clients.claim());
    }
  });
  self.addEventListener("fetch", (event) => answer(event, files));
  self.addEventListener("sync", (event) => event.waitUntil(sendOrTryAgain()));
}

async function install(files) {
  const cache = await caches.open(CACHE);
  const wanted = [...files, PAGE.metric, PAGE.us, OFFLINE];
  await cache.addAll(wanted.map((path) => new Request(path, { cache: "reload" })));
  await self.skipWaiting();
}

async function activate() {
  for (const name of await caches.keys()) {
    if (name !== CACHE) {
      await caches.delete(name);
    }
  }
  await self.clients.claim();
}

function answer(event, files) {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (origin !== self.location.origin) {
    return;
  }
  if (request.method === "POST" && SIGNING_OUT.includes(pathname)) {
    event.waitUntil(queue.forget());
  } else if (request.method === "GET" && files.includes(pathname)) {
    event.respondWith(kept(pathname).then((file) => file ?? fetch(request)));
  } else if (request.method === "GET" && request.mode === "navigate") {
    event.respondWith(LOG_PAGE.test(pathname) ? logPage(request) : page(request));
  }
}

/** The log page of the book, or the kept one where the book is out of reach or out of order. */
async function logPage(request) {
  const asked = fetch(request).catch(() => null);
  const late = new Promise((resolve) => setTimeout(resolve, ANSWER_WITHIN_MS, null));
  const told = await Promise.race([asked, late]);
  if (told && told.status < 500) {
    return told;
  }
  const lawns = await queue.known().catch(() => undefined);
  return (await kept(PAGE[lawns?.units] ?? PAGE.metric)) ?? told ?? asked.then(orError);
}

async function page(request) {
  return fetch(request).catch(async () => (await kept(OFFLINE)) ?? Response.error());
}

function orError(told) {
  return told ?? Response.error();
}

async function kept(path) {
  const cache = await caches.open(CACHE);
  return cache.match(path);
}

/** The browser asks again, later, after an event that failed. */
async function sendOrTryAgain() {
  if ((await send()) !== DONE) {
    throw new Error("not everything could be sent");
  }
}
