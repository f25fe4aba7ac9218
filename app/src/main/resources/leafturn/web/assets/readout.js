// A slider under a figure that reads a row of the figure's table aloud: by pointer, by touch, or by
// the arrow keys.

function slider(rows) {
  const made = document.createElement("input");
  made.type = "range";
  made.min = "0";
  made.max = String(rows - 1);
  made.value = made.max;
  return made;
}

// Puts the slider above the caption of a figure and reads the last row.
// tell(row) gives the words of a row by its number, and may mark it in the figure.
// Returns the function that chooses another row.
export function readAloud(figure, rows, name, tell) {
  const panel = document.createElement("p");
  panel.className = "day-readout";
  const label = document.createElement("label");
  label.textContent = `${name} `;
  const input = slider(rows);
  label.append(input);
  const output = document.createElement("output");
  panel.append(label, output);
  const show = () => {
    output.textContent = tell(Number(input.value));
    input.setAttribute("aria-valuetext", output.textContent);
  };
  input.addEventListener("input", show);
  figure.querySelector("figcaption").before(panel);
  show();
  return (row) => {
    input.value = String(row);
    show();
  };
}

// Calls take(x, y) with the place of the pointer in a drawing, in the drawing's own units.
export function followPointer(svg, take) {
  const follow = (event) => {
    const box = svg.getBoundingClientRect();
    const { width, height } = svg.viewBox.baseVal;
    take(
      ((event.clientX - box.left) / box.width) * width,
      ((event.clientY - box.top) / box.height) * height,
    );
  };
  svg.addEventListener("pointermove", follow);
  // A finger that taps does not move.
  svg.addEventListener("pointerdown", follow);
}
