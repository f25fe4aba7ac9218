// Reads one date of a trial's figure aloud: by pointer, by touch, or by the arrow keys.
// The values come from the table below the figure, so the page says the same without this file.

function words(table, row) {
  const names = [...table.tHead.rows[0].cells].map((cell) => cell.textContent.trim());
  const values = [...row.cells].map((cell) => cell.textContent.trim());
  return `${values[0]}: ${values.slice(1).map((value, i) => `${names[i + 1]} ${value}`).join(", ")}`;
}

function readout(rows) {
  const panel = document.createElement("p");
  panel.className = "day-readout";
  const label = document.createElement("label");
  label.textContent = "Read a date ";
  const slider = document.createElement("input");
  slider.type = "range";
  slider.min = "0";
  slider.max = String(rows.length - 1);
  slider.value = slider.max;
  label.append(slider);
  const output = document.createElement("output");
  panel.append(label, output);
  return { panel, slider, output };
}

function places(svg, count) {
  const marks = [...svg.querySelectorAll(".estimate, .course-mark-0")];
  return marks.slice(0, count).map((mark) => Number(mark.getAttribute("cx")));
}

function follow(figure, table) {
  const rows = [...table.tBodies[0].rows];
  const { panel, slider, output } = readout(rows);
  const show = () => {
    output.textContent = words(table, rows[Number(slider.value)]);
    slider.setAttribute("aria-valuetext", output.textContent);
  };
  slider.addEventListener("input", show);
  for (const svg of figure.querySelectorAll("svg")) {
    const xs = places(svg, rows.length);
    if (xs.length !== rows.length) {
      continue;
    }
    svg.addEventListener("pointermove", (event) => {
      const box = svg.getBoundingClientRect();
      const x = ((event.clientX - box.left) / box.width) * svg.viewBox.baseVal.width;
      const far = xs.map((place) => Math.abs(place - x));
      slider.value = String(far.indexOf(Math.min(...far)));
      show();
    });
  }
  figure.querySelector("figcaption").before(panel);
  show();
}

for (const figure of document.querySelectorAll(".trial-figure[data-table]")) {
  const table = document.getElementById(figure.dataset.table);
  if (table && table.tBodies[0].rows.length > 1) {
    follow(figure, table);
  }
}
