// The list of entries that are not in the book yet: what they say, why they wait, what can be done.

import * as queue from "./queue.js";
import { entryWords, momentWords } from "./words.js";

/** Shows the entries in a section and keeps it up to date. */
export function showUnsent(section, personId) {
  const show = async () => render(section, await queue.entries(), personId());
  queue.onChange(show);
  return show();
}

function render(section, entries, personId) {
  const own = entries.filter((entry) => entry.person.id === personId);
  const parts = [];
  if (own.length > 0) {
    const heading = element("h2", own.length === 1 ? "1 entry not sent yet" : `${own.length} entries not sent yet`);
    const list = document.createElement("ul");
    list.append(...own.map(line));
    parts.push(heading, list);
  }
  parts.push(...othersLines(entries, personId));
  section.replaceChildren(...parts);
  section.hidden = parts.length === 0;
  section.dataset.unsent = String(own.length);
}

/** Of other people's entries only the number is told. */
function othersLines(entries, personId) {
  const counts = new Map();
  for (const { person } of entries) {
    if (person.id !== personId) {
      counts.set(person.name, (counts.get(person.name) ?? 0) + 1);
    }
  }
  return [...counts].map(([name, count]) =>
    element("p", `${count === 1 ? "1 entry" : `${count} entries`} of ${name} will be sent when ${name} signs in on this phone.`),
  );
}

function line(entry) {
  const item = document.createElement("li");
  item.dataset.id = entry.id;
  item.dataset.state = entry.state;
  item.append(element("p", entry.lawn.title, "what"));
  item.append(element("p", entryWords(entry)));
  item.append(element("p", reason(entry), entry.state === "waiting" ? "detail" : "fault"));
  item.append(actions(entry));
  return item;
}

function reason(entry) {
  if (entry.state === "waiting") {
    return `kept on this phone since ${momentWords(entry.keptAt)}`;
  }
  return entry.faults.map(({ label, sentence }) => (label ? `${label}: ${sentence}` : capital(sentence))).join(" ");
}

function actions(entry) {
  const row = document.createElement("p");
  row.className = "actions";
  if (entry.state !== "taken") {
    const correct = element("a", "Correct it", "button");
    correct.href = `/lawns/${entry.lawn.address}/log#entry-${entry.id}`;
    row.append(correct);
  }
  const discard = element("button", "Discard it");
  discard.type = "button";
  discard.addEventListener("click", () => askBeforeDiscarding(row, entry));
  row.append(discard);
  return row;
}

/** Discarding cannot be undone, so it takes a second tap elsewhere than the first. */
function askBeforeDiscarding(row, entry) {
  const keep = element("button", "Keep it");
  keep.type = "button";
  keep.addEventListener("click", () => row.replaceWith(actions(entry)));
  const discard = element("button", "Yes, discard this entry");
  discard.type = "button";
  discard.addEventListener("click", () => queue.remove(entry));
  row.replaceChildren(keep, discard);
  keep.focus();
}

function element(name, text, className) {
  const made = document.createElement(name);
  made.textContent = text;
  if (className) {
    made.className = className;
  }
  return made;
}

function capital(sentence) {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
