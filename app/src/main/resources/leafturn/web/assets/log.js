// The log at the lawn. Every entry is kept on the phone first and then sent, so that saving is the
// same with a connection and without one. Without this file the forms are sent as plain ones.

import { faultsBeforehand, showFaults } from "./faults.js";
import { fillKeptPage, offerSearch } from "./kept.js";
import { refreshNow, sendInTheBackground, sendNow } from "./phone.js";
import { picture } from "./picture.js";
import * as queue from "./queue.js";
import { SIGN_IN } from "./send.js";
import { showUnsent } from "./unsent.js";
import { dayOfEntry, meaning, today } from "./words.js";

const page = document.querySelector("[data-log]");
const find = (name) => page.querySelector(`[data-${name}]`);
/** By form, the entry that it corrects. While it is corrected it may be sent and leave the phone. */
const correcting = new Map();
/** The entry that the page says is kept for later, or null. */
let toldLater = null;
let person = page.dataset.person ? { id: page.dataset.person, name: page.dataset.personName } : null;

// ---- One entry.

function prepare(details) {
  const form = details.querySelector("form");
  // A page that was left open overnight, or came from the phone, asks the phone what day it is.
  form.elements.day.value ||= page.dataset.fixedDay || today(page.dataset.timeZone);
  const tell = () => {
    const values = new FormData(form);
    form.querySelector("[data-meaning]").textContent = meaning(details.dataset.as, values, page.dataset);
  };
  form.addEventListener("input", tell);
  tell();
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    save(details, form);
  });
  details.addEventListener("toggle", () => details.open && closeOthers(details));
}

/** Browsers that do not know named details leave several open; then one would hide another. */
function closeOthers(opened) {
  for (const details of page.querySelectorAll("details[data-as]")) {
    details.open = details === opened;
  }
  // The fields come below; a choice in the lower part of the screen moves up to show them.
  if (opened.getBoundingClientRect().top > innerHeight / 2) {
    opened.scrollIntoView({ block: "start" });
  }
}

async function save(details, form) {
  const button = form.querySelector("button.main");
  const faults = faultsBeforehand(form, details.dataset);
  if (faults.length > 0) {
    // Without a connection nobody else would say so before the phone is pocketed.
    showFaults(form, faults);
    return;
  }
  const typed = typedIn(form);
  button.disabled = true;
  try {
    const entry = await entryOf(details, form);
    find("doubts").replaceChildren();
    await queue.keep(entry);
    // A browser asked to persist does not clear this site when its disk runs full.
    navigator.storage?.persist?.();
    sendInTheBackground();
    await told(entry, details, form, typed);
  } catch (fault) {
    showFaults(form, [{ field: "", sentence: fault.message }]);
  } finally {
    button.disabled = false;
  }
}

async function entryOf(details, form) {
  const file = form.elements.photograph.files[0];
  const earlier = correcting.get(form);
  // The book keeps a taken id for what it has; of what it never took or took meanwhile this is the correction.
  const corrects = earlier !== undefined && earlier.state !== "taken";
  const given = [...new FormData(form)].filter(([, value]) => typeof value === "string" && value.trim() !== "");
  const fields = given.filter(([name]) => !["_token", "id", "as"].includes(name));
  return {
    id: corrects ? earlier.id : crypto.randomUUID(),
    corrects,
    person,
    lawn: { id: page.dataset.lawn, address: page.dataset.address, title: page.dataset.title },
    as: details.dataset.as,
    units: page.dataset.units,
    fields,
    // A form cannot be given the photograph of the entry that it corrects.
    photograph: file ? await picture(file) : (earlier?.photograph ?? null),
    heading: details.querySelector(".done").textContent,
    day: form.elements.day.value,
    thisYear: (page.dataset.fixedDay || today(page.dataset.timeZone)).slice(0, 4),
    details: [...detailsOf(form), ...(!file && earlier?.photograph ? ["with a photograph"] : [])],
    keptAt: new Date().toISOString(),
    state: "waiting",
    faults: [],
  };
}

/** What was filled in beside the day, with the labels and units of the form. */
function detailsOf(form) {
  const told = [];
  for (const field of form.querySelectorAll(".field")) {
    const name = (field.querySelector("label, legend")?.firstChild?.textContent ?? "").trim();
    const input = field.querySelector("input:not([type=checkbox]):not([type=date]), select, textarea");
    const unit = field.querySelector(".unit")?.textContent.replace(/^in /, "") ?? "";
    const ticked = [...field.querySelectorAll("input:checked")].map((box) => box.nextElementSibling.textContent);
    if (input?.type === "file") {
      told.push(...(input.files.length > 0 ? ["with a photograph"] : []));
    } else if (input?.value.trim()) {
      told.push(`${name}: ${input.value.trim()} ${unit}`.trim());
    }
    told.push(...ticked);
  }
  return told;
}

/** Sends, and tells what became of the entry: in the book, to be corrected, or kept until later. */
async function told(entry, details, form, typed) {
  const sentence = find("outcome");
  const what = `${entry.heading}, ${dayOfEntry(entry)}`;
  sentence.textContent = `Kept on this phone: ${what}. Sending …`;
  sentence.hidden = false;
  const outcome = await sendNow();
  const left = (await queue.entries()).find((one) => one.id === entry.id);
  if (left?.state === "faulty" || left?.state === "taken") {
    sentence.textContent = "";
    sentence.hidden = true;
    correcting.set(form, left);
    showFaults(form, left.faults);
    return;
  }
  tellWhetherKept(left, what, outcome);
  begin(details, form, typed);
}

function tellWhetherKept(left, what, outcome) {
  const sentence = find("outcome");
  sentence.textContent = left ? `Kept on this phone, not sent yet: ${what}.` : `In the book: ${what}.`;
  if (left && outcome === SIGN_IN) {
    sentence.append(" ", wayToSignIn());
  }
  setAdviceAside(Boolean(left));
  toldLater = left ? { id: left.id, what } : null;
}

/** What may be a slip in an entry is told once the book has it, also of one that waited. */
function tellDoubt({ data }) {
  if (!data.doubt) {
    return;
  }
  const sentence = document.createElement("p");
  sentence.className = "against";
  const link = document.createElement("a");
  link.href = `/sheets/${data.sent}`;
  link.textContent = "The entry";
  sentence.append(`${data.doubt} `, link);
  find("doubts").append(sentence);
}

/** While the page stays open an entry that it kept for later may be sent, refused or discarded. */
async function tellWhatBecame({ data }) {
  const last = toldLater;
  if (!last) {
    return;
  }
  if (data.sent === last.id) {
    tellWhetherKept(null, last.what);
    return;
  }
  const left = (await queue.entries()).find((one) => one.id === last.id);
  if (left?.state !== "waiting" && toldLater === last) {
    // The list of what is not in the book says what is wrong with it, if it is still there.
    toldLater = null;
    find("outcome").hidden = true;
  }
}

/** What was advised before this entry no longer holds. */
function setAdviceAside(unsent) {
  const advice = find("advice");
  if (unsent) {
    advice.textContent = "The advice for this lawn will take this entry in once it is sent.";
    return;
  }
  const link = document.createElement("a");
  link.href = `/lawns/${page.dataset.address}`;
  link.textContent = "What comes next here, with this entry";
  advice.replaceChildren(link);
}

function wayToSignIn() {
  const link = document.createElement("a");
  link.href = `/sign-in?to=${encodeURIComponent(location.pathname)}`;
  link.textContent = "Sign in to send it";
  return link;
}

function typedIn(form) {
  return JSON.stringify([...new FormData(form)].map(([name, value]) => [name, value.name ?? value]));
}

/** After saving the form is empty again, and the next lawn one tap away. */
function begin(details, form, typed) {
  correcting.delete(form);
  showFaults(form, []);
  if (typedIn(form) !== typed) {
    // Sending took its time, and the next entry is being typed already.
    return;
  }
  form.reset();
  form.elements.day.value ||= page.dataset.fixedDay || today(page.dataset.timeZone);
  form.dispatchEvent(new Event("input"));
  details.open = false;
  if (!page.querySelector("details[open]")) {
    find("outcome").scrollIntoView({ block: "center" });
  }
}

// ---- An entry that the book did not take opens as it was typed.

async function correct() {
  const id = location.hash.match(/^#entry-(.+)$/)?.[1];
  const entry = id && (await queue.entries()).find((one) => one.id === id && one.person.id === person?.id);
  const details = entry && page.querySelector(`details[data-as="${entry.as}"]`);
  if (!details) {
    return;
  }
  const form = details.querySelector("form");
  const typed = new Map();
  entry.fields.forEach(([name, value]) => typed.set(name, [...(typed.get(name) ?? []), value]));
  for (const input of form.elements) {
    if (input.type === "checkbox") {
      input.checked = typed.get(input.name)?.includes(input.value) ?? false;
    } else if (input.name && !["hidden", "file", "submit"].includes(input.type)) {
      input.value = typed.get(input.name)?.[0] ?? "";
    }
  }
  correcting.set(form, entry);
  form.dispatchEvent(new Event("input"));
  details.open = true;
  showFaults(form, entry.faults);
}

async function start() {
  if (page.dataset.log === "any") {
    person = await fillKeptPage(page);
  }
  page.querySelectorAll("details[data-as]").forEach(prepare);
  offerSearch(page);
  await showUnsent(find("unsent"), () => person?.id);
  queue.onChange((change) => {
    tellDoubt(change);
    tellWhatBecame(change);
  });
  await correct();
}

// Until the forms hold what this phone keeps for them nothing can be typed that it would overwrite.
async function startBeforeAnythingIsTyped() {
  const choices = find("choices");
  if (choices && location.hash.startsWith("#entry-")) {
    choices.inert = true;
  }
  try {
    await start();
  } finally {
    choices?.removeAttribute("inert");
  }
  addEventListener("hashchange", correct);
  await refreshNow();
}

// Where a page may not keep anything the forms are sent as plain ones.
if (globalThis.isSecureContext) {
  startBeforeAnythingIsTyped();
}
