// Reads one day of the season figure aloud. The values come from the table below the figure, so the
// page says the same without this file.

import { followPointer, readAloud } from "./readout.js";

const SVG = "http://www.w3.org/2000/svg";

function dayLine(svg) {
  const line = document.createElementNS(SVG, "line");
  line.setAttribute("class", "day-line");
  line.setAttribute("y1", "24");
  line.setAttribute("y2", String(svg.viewBox.baseVal.height - 22));
  line.setAttribute("visibility", "hidden");
  svg.append(line);
  return line;
}

function words(row, units) {
  const [day, height, rain, water, growth, mowing] = [...row.cells].map((cell) => cell.textContent);
  const parts = [`${height} ${units[1]} high`, `${rain} ${units[2]} rain`, `root zone ${water} % full`, `growth ${growth} ${units[4]}`];
  return `${day}: ${parts.join(", ")}${mowing ? `, ${mowing}` : ""}`;
}

function follow(figure, table) {
  const rows = [...table.tBodies[0].rows];
  const units = [...table.tHead.rows[0].cells].map((cell) => cell.dataset.unit ?? "");
  const drawings = [...figure.querySelectorAll("svg")].map((svg) => ({
    svg,
    line: dayLine(svg),
    first: rows.length - Number(svg.dataset.days),
    left: Number(svg.dataset.firstDayX),
    step: Number(svg.dataset.dayWidth),
  }));
  const choose = readAloud(figure, rows.length, "Read a day", (day) => {
    for (const { line, first, left, step } of drawings) {
      line.setAttribute("x1", String(left + (day - first) * step));
      line.setAttribute("x2", String(left + (day - first) * step));
      line.setAttribute("visibility", day < first || day === rows.length - 1 ? "hidden" : "visible");
    }
    return words(rows[day], units);
  });
  for (const { svg, first, left, step } of drawings) {
    followPointer(svg, (x) => choose(first + Math.round((x - left) / step)));
  }
}

const figure = document.querySelector(".season figure");
const table = document.getElementById("season-days");
if (figure && table && table.tBodies[0].rows.length > 1) {
  follow(figure, table);
}
