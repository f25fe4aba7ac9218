// Reads an hour of today or tomorrow aloud: in how many of the possible weathers the grass is fit,
// and what keeps it from that in the others. The values come from the tables below the figure, so
// the page says the same without this file.

import { followPointer, readAloud } from "./readout.js";

const SVG = "http://www.w3.org/2000/svg";

function hourLine(svg) {
  const line = document.createElementNS(SVG, "line");
  line.setAttribute("class", "day-line");
  line.setAttribute("visibility", "hidden");
  svg.append(line);
  return line;
}

function words(table, row) {
  const [from, fit, ...others] = [...row.cells].map((cell) => cell.textContent.trim());
  const heads = [...table.tHead.rows[0].cells].map((cell) => cell.dataset.name ?? "");
  const air = `${others.pop()} ${table.dataset.temperatureUnit}`;
  const causes = others
    .map((share, cause) => (share === "0" ? "" : `, ${heads[cause + 2]} in ${share} %`))
    .join("");
  return `${table.dataset.day} from ${from}: fit in ${fit} %${causes}; air ${air}`;
}

function panels(svg, days) {
  return Array.from({ length: days }, (_, day) => ({
    left: Number(svg.dataset[`left${day}`]),
    top: Number(svg.dataset[`top${day}`]),
  }));
}

function nearest(all, x, y, tall) {
  const far = all.map(({ left, top, width }) => {
    const across = Math.max(left - x, x - left - width, 0);
    return across + Math.max(top - y, y - top - tall, 0);
  });
  return far.indexOf(Math.min(...far));
}

function drawing(svg, days) {
  const step = Number(svg.dataset.hourWidth);
  const tall = Number(svg.dataset.panelHeight);
  const all = panels(svg, days).map((panel) => ({ ...panel, width: 24 * step }));
  return { svg, step, tall, all, line: hourLine(svg) };
}

function mark({ line, step, tall, all }, day, hour) {
  const { left, top } = all[day];
  for (const end of ["x1", "x2"]) {
    line.setAttribute(end, String(left + (hour + 0.5) * step));
  }
  line.setAttribute("y1", String(top));
  line.setAttribute("y2", String(top + tall));
  line.setAttribute("visibility", "visible");
}

function follow(figure, tables) {
  const rows = tables.flatMap((table) => [...table.tBodies[0].rows].map((row) => ({ table, row })));
  const drawings = [...figure.querySelectorAll("svg")].map((svg) => drawing(svg, tables.length));
  const choose = readAloud(figure, rows.length, "Read an hour", (at) => {
    drawings.forEach((each) => mark(each, Math.floor(at / 24), at % 24));
    return words(rows[at].table, rows[at].row);
  });
  for (const { svg, step, tall, all } of drawings) {
    followPointer(svg, (x, y) => {
      const day = nearest(all, x, y, tall);
      const hour = Math.floor((x - all[day].left) / step);
      choose(day * 24 + Math.max(0, Math.min(23, hour)));
    });
  }
  choose(Math.min(12, rows.length - 1));
}

const figure = document.querySelector(".hours figure");
const tables = [...document.querySelectorAll(".hours table")];
if (figure && tables.length > 0 && tables.every((table) => table.tBodies[0].rows.length === 24)) {
  follow(figure, tables);
}
