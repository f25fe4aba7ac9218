// Reads one date of a trial's figure aloud. The values come from the table below the figure, so the
// page says the same without this file.

import { followPointer, readAloud } from "./readout.js";

function words(table, row) {
  const names = [...table.tHead.rows[0].cells].map((cell) => cell.textContent.trim());
  const values = [...row.cells].map((cell) => cell.textContent.trim());
  return `${values[0]}: ${values.slice(1).map((value, i) => `${names[i + 1]} ${value}`).join(", ")}`;
}

function places(svg, count) {
  const marks = [...svg.querySelectorAll(".estimate, .course-mark-0")];
  return marks.slice(0, count).map((mark) => Number(mark.getAttribute("cx")));
}

function follow(figure, table) {
  const rows = [...table.tBodies[0].rows];
  const choose = readAloud(figure, rows.length, "Read a date", (row) => words(table, rows[row]));
  for (const svg of figure.querySelectorAll("svg")) {
    const xs = places(svg, rows.length);
    if (xs.length === rows.length) {
      followPointer(svg, (x) => {
        const far = xs.map((place) => Math.abs(place - x));
        choose(far.indexOf(Math.min(...far)));
      });
    }
  }
}

for (const figure of document.querySelectorAll(".trial-figure[data-table]")) {
  const table = document.getElementById(figure.dataset.table);
  if (table && table.tBodies[0].rows.length > 1) {
    follow(figure, table);
  }
}
