// Draws an outline beside its list of corners: by mouse, by touch, or by the keys. Whatever is drawn
// is written into the list, which is what the form sends; without this file the list is all there is.
// All lengths are in the unit of the list, which is the reader's own.

import { Draft, moved } from "./outline-draft.js";
import { drawing } from "./outline-drawing.js";
import { Ground } from "./outline-ground.js";
import * as outline from "./outline-shape.js";

const DRAGGED_PX = 4;

// A second corner set by the keys lies so many steps east of the first.
const BESIDE_STEPS = 10;

const HOLE_HELP = " Drag its inside to move the hole, its corners to shape it; a tap adds a corner to it.";

class Desk {
  constructor(field) {
    this.field = field;
    this.list = field.querySelector("textarea");
    this.svg = field.querySelector("svg");
    this.step = field.querySelector("[data-step]");
    this.metres = Number(field.dataset.metres);
    this.unit = field.dataset.unit;
    this.draft = new Draft(this.list.value);
    this.ground = new Ground(this.svg, this.metres);
    this.drag = null;
    this.listen();
    field.querySelector(".outline-board").hidden = false;
    this.refit();
  }

  listen() {
    const { svg, list } = this;
    list.addEventListener("input", () => this.readList());
    svg.addEventListener("pointerdown", (event) => this.grab(event));
    svg.addEventListener("pointermove", (event) => this.move(event));
    svg.addEventListener("pointerup", () => this.release());
    svg.addEventListener("pointercancel", () => this.release());
    svg.addEventListener("click", (event) => this.tap(event));
    svg.addEventListener("keydown", (event) => this.key(event));
    this.field.querySelectorAll("button[data-do]").forEach((button) => {
      button.addEventListener("click", () => this[button.dataset.do]());
    });
    this.field.querySelectorAll(".outline-rectangle input").forEach((input) => {
      input.addEventListener("keydown", (event) => {
        if (event.key === "Enter") {
          event.preventDefault();
          this.rectangle();
        }
      });
    });
    new ResizeObserver(() => this.refit()).observe(svg);
  }

  // What changes the shape

  readList() {
    this.draft.read(this.list.value);
    this.refit();
  }

  undo() {
    if (this.draft.undo()) {
      this.list.value = this.draft.text;
      this.refit();
    }
  }

  rectangle() {
    const [length, width] = [...this.field.querySelectorAll(".outline-rectangle input")].map(
      (input) => Number(input.value.trim().replace(",", ".")),
    );
    if (!(length > 0) || !(width > 0)) {
      this.say("Give a length and a width above 0.");
      return;
    }
    this.draft.start(outline.rectangle(length, width));
    this.ground.nearness = 1;
    this.list.value = this.draft.text;
    this.refit();
  }

  add() {
    this.insert(this.draft.placeToAdd(BESIDE_STEPS * Number(this.step.value)));
  }

  insert(place) {
    this.draft.insert(this.snapped(place));
    this.changed();
  }

  remove() {
    if (this.draft.ring()) {
      this.draft.remove();
      this.changed();
    }
  }

  hole() {
    const index = this.draft.mark?.piece ?? 0;
    const piece = this.draft.shape.pieces[index];
    const hole = piece && piece[0].length > 2 ? outline.roomForHole(piece, Number(this.step.value)) : null;
    if (!hole) {
      this.say(piece ? "There is no room for a hole here; write it into the list." : "Draw the edge first.");
      return;
    }
    this.draft.addHole(index, hole);
    this.changed();
    this.svg.focus();
  }

  shift(x, y, whole) {
    if (this.draft.ring()) {
      const step = Number(this.step.value);
      this.draft.shift(x * step, y * step, whole);
      this.changed();
    }
  }

  next(forward = 1) {
    this.draft.markNext(forward);
    this.show();
  }

  snapped([x, y]) {
    const step = Number(this.step.value);
    return [outline.snap(x, step), outline.snap(y, step)];
  }

  // By pointer and by key

  // A click follows the release of a handle; it is no tap on the ground.
  grab(event) {
    this.quiet = false;
    const { kind, piece, ring, corner } = event.target.dataset;
    if (!kind || event.button > 0) {
      return;
    }
    this.draft.mark = { piece: Number(piece), ring: Number(ring), corner: Number(corner) };
    this.drag = { kind, from: this.ground.place(event), start: null };
    this.svg.setPointerCapture(event.pointerId);
    this.show();
  }

  move(event) {
    if (!this.drag) {
      return;
    }
    const place = this.ground.place(event);
    const { kind, from } = this.drag;
    if (!this.drag.start) {
      if (outline.distance(place, from) * this.ground.scale < DRAGGED_PX) {
        return;
      }
      this.startDrag(place);
    }
    const ring = this.draft.ring();
    if (kind === "hole") {
      const [east, north] = this.snapped([place[0] - from[0], place[1] - from[1]]);
      this.drag.start.forEach((corner, i) => {
        ring[i] = moved(corner, east, north);
      });
    } else {
      ring[this.draft.mark.corner] = this.snapped(place);
    }
    this.draft.write();
    this.list.value = this.draft.text;
    this.show();
  }

  startDrag(place) {
    this.draft.remember();
    if (this.drag.kind === "side") {
      this.draft.insertAfterMark(this.snapped(place));
    }
    this.drag.start = this.draft.ring().map((corner) => [...corner]);
  }

  release() {
    if (this.drag) {
      this.drag = null;
      this.quiet = true;
      this.refitWhenOutside();
    }
  }

  tap(event) {
    if (!this.quiet && event.detail > 0) {
      this.insert(this.ground.place(event));
    }
  }

  key(event) {
    const shifted = event.shiftKey;
    const acts = {
      ArrowLeft: () => this.shift(-1, 0, shifted),
      ArrowRight: () => this.shift(1, 0, shifted),
      ArrowUp: () => this.shift(0, 1, shifted),
      ArrowDown: () => this.shift(0, -1, shifted),
      PageDown: () => this.next(1),
      PageUp: () => this.next(-1),
      Enter: () => this.add(),
      Delete: () => this.remove(),
      Backspace: () => this.remove(),
      ...((event.ctrlKey || event.metaKey) && { z: () => this.undo() }),
    };
    if (acts[event.key]) {
      event.preventDefault();
      acts[event.key]();
    }
  }

  // What is seen

  nearer() {
    this.ground.nearer();
    this.refit();
  }

  farther() {
    this.ground.farther();
    this.refit();
  }

  changed() {
    this.list.value = this.draft.text;
    this.show();
    this.refitWhenOutside();
  }

  refit() {
    this.ground.fit(this.draft.shape);
    this.show();
  }

  refitWhenOutside() {
    if (this.ground.leavesOut(this.draft.shape)) {
      this.refit();
    }
  }

  show() {
    const isMarked = (piece, ring, corner) => this.draft.isMarked(piece, ring, corner);
    this.svg.setAttribute("viewBox", `0 0 ${this.ground.width} ${this.ground.height}`);
    this.svg.replaceChildren(...drawing(this.draft.shape, this.ground, isMarked));
    this.tell();
  }

  tell() {
    const { shape } = this.draft;
    const size = outline.area(shape);
    const parts = [
      `${this.metres === 1 ? size.toFixed(1) : Math.round(size)} ${this.field.dataset.squareUnit}`,
      `${outline.perimeter(shape).toFixed(1)} ${this.unit} of edge`,
    ];
    if (shape.badLine) {
      parts.push(`line ${shape.badLine} of the list cannot be read yet`);
    } else if (outline.crosses(shape)) {
      parts[0] = "no area yet: two sides cross; walk round in order";
    } else if (outline.touchesItself(shape)) {
      parts[0] = "no area yet: a line touches itself; move the corner away or remove it";
    }
    this.field.querySelector(".outline-size").textContent = parts.join(" · ");
    clearTimeout(this.telling);
    this.telling = setTimeout(() => this.say(this.markWords()), 250);
  }

  markWords() {
    const { mark, shape } = this.draft;
    const ring = this.draft.ring();
    if (!ring || mark.corner < 0 || mark.corner >= ring.length) {
      return "Tap the ground to set the first corner, or press Enter.";
    }
    const [x, y] = ring[mark.corner];
    const line = mark.ring === 0 ? "the edge" : `hole ${mark.ring}`;
    const piece = shape.pieces.length > 1 ? `, piece ${mark.piece + 1}` : "";
    return `Corner ${mark.corner + 1} of ${ring.length} of ${line}${piece}: ${x} ${this.unit} east, ${y} ${this.unit} north.${mark.ring === 0 ? "" : HOLE_HELP}`;
  }

  say(words) {
    this.field.querySelector(".outline-status").textContent = words;
  }
}

document.querySelectorAll(".outline-field").forEach((field) => new Desk(field));
