// The log page that the phone keeps: it learns from what is kept which lawn it is for.

import * as queue from "./queue.js";
import { dayWords, today } from "./words.js";

const MANY = 12;

const find = (page, name) => page.querySelector(`[data-${name}]`);

// Fills the page. Returns the person whose lawns are kept, or null where nothing is.
export async function fillKeptPage(page) {
  const lawns = await queue.known();
  if (!lawns) {
    find(page, "headline").textContent = "Nothing is known of the lawns yet.";
    find(page, "advice").textContent = "Open this page once with a connection; from then on it works without.";
    find(page, "choices").hidden = true;
    return null;
  }
  const address = location.pathname.match(/^\/lawns\/([^/]+)\/log$/)?.[1];
  const lawn = lawns.lawns.find((one) => one.address === address);
  if (lawn) {
    fillLawn(page, lawn, lawns);
  } else {
    const waiting = new Set((await queue.entries()).map((entry) => entry.lawn.address));
    fillLawns(page, lawns, waiting);
  }
  return lawns.person;
}

// What was advised before an entry that is not sent yet no longer holds.
function fillLawns(page, lawns, waiting) {
  find(page, "headline").textContent = "Which lawn?";
  find(page, "choices").hidden = true;
  find(page, "elsewhere").hidden = true;
  const list = find(page, "lawns");
  for (const lawn of lawns.lawns) {
    const link = document.createElement("a");
    link.href = `/lawns/${lawn.address}/log`;
    const advice = waiting.has(lawn.address) ? "An entry waits to be sent; the advice will take it in." : lawn.advice;
    for (const [className, text] of [["name", lawn.name], ["at", lawn.property], ["detail", advice]]) {
      const part = document.createElement("span");
      part.className = className;
      part.textContent = text;
      link.append(part, " ");
    }
    const item = document.createElement("li");
    item.append(link);
    list.append(item);
  }
  list.hidden = false;
}

function fillLawn(page, lawn, lawns) {
  const title = `${lawn.name}, ${lawn.property}`;
  Object.assign(page.dataset, { lawn: lawn.id, address: lawn.address, title, timeZone: lawn.timeZone });
  if (lawns.fixedDay) {
    page.dataset.fixedDay = lawns.fixedDay;
  }
  find(page, "headline").textContent = title;
  const toldOn = lawns.fixedDay ?? today(lawn.timeZone, new Date(lawns.toldAt));
  find(page, "advice").textContent = lawn.advice ? `As told on ${dayWords(toldOn)}: ${lawn.advice}` : "";
  for (const form of page.querySelectorAll("[data-entry]")) {
    const height = form.elements.heightAfterMm;
    if (height) {
      height.value = lawn.cutHeight;
    }
  }
  markUsual(page, lawn.returnedShare);
}

function markUsual(page, share) {
  const as = share >= 1 ? "returned" : share <= 0 ? "collected" : "part-returned";
  const usual = page.querySelector(`[data-as="${as}"]`);
  const words = document.createElement("span");
  words.className = "detail";
  words.textContent = "as usual";
  usual.querySelector("summary").append(" ", words);
  find(page, "choices").prepend(usual);
  if (as === "part-returned") {
    usual.querySelector("form").elements.returnedShare.value = String(share);
  }
}

// Where there are many lawns, typing part of a name finds one.
export function offerSearch(page) {
  const list = find(page, "lawns");
  if (!list || list.children.length < MANY) {
    return;
  }
  const label = document.createElement("label");
  label.className = "find";
  label.textContent = "Find a lawn";
  const input = document.createElement("input");
  input.type = "search";
  input.autocomplete = "off";
  label.append(input);
  input.addEventListener("input", () => {
    const wanted = input.value.trim().toLowerCase();
    for (const item of list.children) {
      item.hidden = !item.textContent.toLowerCase().includes(wanted);
    }
  });
  list.before(label);
}
