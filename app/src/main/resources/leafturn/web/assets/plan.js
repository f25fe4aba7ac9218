// Shows of a trial's plan the fields that the chosen layout takes. Without this file all are shown,
// and the hints say which layout each is for.

const TAKES = {
  sides: ["split-yard"],
  blocks: ["randomised-block", "split-plot", "strip-plot", "listed"],
  pairs: ["paired-strips"],
  allowedLayouts: ["listed"],
  secondFactor: ["split-plot", "strip-plot"],
};

// A part that is not taken is not sent either, so that the plan cannot hold what nobody sees.
function show(part, shown) {
  part.hidden = !shown;
  for (const entry of part.querySelectorAll("input, select, textarea")) {
    entry.disabled = !shown;
  }
}

function partOf(form, name) {
  const entry = form.elements.namedItem(name);
  return name === "secondFactor"
    ? (entry.closest("details") ?? entry.closest("fieldset"))
    : entry.closest(".field");
}

function follow(form) {
  const design = form.elements.namedItem("design");
  const parts = Object.keys(TAKES).map((name) => [name, partOf(form, name)]);
  const update = () => {
    for (const [name, part] of parts) {
      const faulty = part.querySelector("[aria-invalid='true']") !== null;
      show(part, faulty || TAKES[name].includes(design.value));
    }
  };
  design.addEventListener("change", update);
  update();
}

for (const form of document.querySelectorAll("form.entry")) {
  if (form.elements.namedItem("design")) {
    follow(form);
  }
}
