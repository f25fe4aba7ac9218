// Shows what is wrong with a form: above it all at once, and beside each field.

/** Faults as the book tells them: the path of a field, or none, and a sentence. */
export function showFaults(form, faults) {
  form.querySelectorAll(".faults, .fault").forEach((old) => old.remove());
  form.querySelectorAll("[aria-invalid]").forEach((input) => input.removeAttribute("aria-invalid"));
  if (faults.length === 0) {
    return;
  }
  const list = document.createElement("ul");
  for (const { field, sentence } of faults) {
    list.append(line(inputOf(form, field), sentence));
  }
  const heading = document.createElement("h2");
  heading.textContent = `Not in the book yet: ${faults.length === 1 ? "one thing is" : `${faults.length} things are`} to be put right`;
  const summary = document.createElement("div");
  summary.className = "faults";
  summary.setAttribute("role", "alert");
  summary.tabIndex = -1;
  summary.append(heading, list);
  form.prepend(summary);
  summary.focus();
}

/** What the book counts as a number, a share of it perhaps in per cent. */
const NUMBER = /^[-+]?(\d{1,15}([.,]\d{1,12})?|[.,]\d{1,12})\s*%?$/;

/** What the book would surely refuse in a form, in its own words, which the page brought along. */
export function faultsBeforehand(form, { missing = "{}", noNumber = "{}" }) {
  const typed = (field) => form.elements.namedItem(field)?.value.trim() ?? "";
  const empty = Object.entries(JSON.parse(missing)).filter(([field]) => typed(field) === "");
  const wrong = Object.entries(JSON.parse(noNumber)).filter(([field]) => typed(field) && !NUMBER.test(typed(field)));
  return [
    ...empty.map(([field, sentence]) => ({ field, sentence })),
    ...wrong.map(([field, sentence]) => ({ field, sentence: sentence.replace("?", () => typed(field)) })),
  ];
}

/** The input of a path; a fault of a list's item belongs to the list. */
function inputOf(form, path) {
  const found = path && form.elements.namedItem(path.replace(/\[.*$/, ""));
  return found instanceof RadioNodeList ? found[0] : found;
}

function line(input, sentence) {
  const item = document.createElement("li");
  const capital = sentence.charAt(0).toUpperCase() + sentence.slice(1);
  const field = input?.closest?.(".field");
  if (!field) {
    item.textContent = capital;
    return item;
  }
  const link = document.createElement("a");
  link.href = `#${input.id || field.id}`;
  link.textContent = (field.querySelector("label, legend")?.firstChild?.textContent ?? "").trim();
  item.append(link, `: ${capital}`);
  const note = document.createElement("p");
  note.className = "fault";
  note.id = `${input.id || field.id}-told`;
  note.textContent = capital;
  field.append(note);
  input.setAttribute("aria-invalid", "true");
  input.setAttribute("aria-describedby", note.id);
  return item;
}
