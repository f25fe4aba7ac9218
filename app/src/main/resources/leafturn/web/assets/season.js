// Reads one day of the season figure aloud: by pointer, by touch, or by the arrow keys.
// The values come from the table below the figure, so the page says the same without this file.

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

function readout(rows) {
  const panel = document.createElement("p");
  panel.className = "day-readout";
  const label = document.createElement("label");
  label.textContent = "Read a day ";
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

function follow(figure, table) {
  const rows = [...table.tBodies[0].rows];
  const units = [...table.tHead.rows[0].cells].map((cell) => cell.dataset.unit ?? "");
  const { panel, slider, output } = readout(rows);
  const drawings = [...figure.querySelectorAll("svg")].map((svg) => ({
    svg,
    line: dayLine(svg),
    first: rows.length - Number(svg.dataset.days),
    left: Number(svg.dataset.firstDayX),
    step: Number(svg.dataset.dayWidth),
  }));
  const show = () => {
    const day = Number(slider.value);
    output.textContent = words(rows[day], units);
    slider.setAttribute("aria-valuetext", output.textContent);
    for (const { line, first, left, step } of drawings) {
      line.setAttribute("x1", String(left + (day - first) * step));
      line.setAttribute("x2", String(left + (day - first) * step));
      line.setAttribute("visibility", day < first || day === rows.length - 1 ? "hidden" : "visible");
    }
  };
  slider.addEventListener("input", show);
  for (const { svg, first, left, step } of drawings) {
    svg.addEventListener("pointermove", (event) => {
      const box = svg.getBoundingClientRect();
      const x = ((event.clientX - box.left) / box.width) * svg.viewBox.baseVal.width;
      slider.value = String(first + Math.round((x - left) / step));
      show();
    });
  }
  figure.querySelector("figcaption").before(panel);
  show();
}

const figure = document.querySelector(".season figure");
const table = document.getElementById("season-days");
if (figure && table && table.tBodies[0].rows.length > 1) {
  follow(figure, table);
}
