// Draws an outline beside its list of corners: by mouse, by touch, or by the keys. Whatever is drawn
// is written into the list, which is what the form sends; without this file the list is all there is.
// All lengths are in the unit of the list, which is the reader's own.

import * as outline from "./outline-shape.js";

const SVG = "http://www.w3.org/2000/svg";
const EMPTY_ACROSS_M = 16;
const EMPTY_ALONG_M = 10;
const LEAST_ACROSS_M = 6;
const MOST_HANDLES = 120;

function element(name, attributes, words) {
  const made = document.createElementNS(SVG, name);
  Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, String(value)));
  if (words !== undefined) {
    made.textContent = words;
  }
  return made;
}

function oneDecimal(value) {
  return value.toFixed(1);
}

class Desk {
  constructor(field) {
    this.field = field;
    this.list = field.querySelector("textarea");
    this.board = field.querySelector(".outline-board");
    this.svg = field.querySelector("svg");
    this.step = field.querySelector("[data-step]");
    this.metres = Number(field.dataset.metres);
    this.unit = field.dataset.unit;
    this.shape = outline.read(this.list.value);
    this.mark = null;
    this.drag = null;
    this.before = [];
    this.nearness = 1;
    this.listen();
    this.board.hidden = false;
    this.markFirst();
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

  change(act) {
    this.before.push({ text: this.list.value, mark: this.mark });
    act();
    this.write();
  }

  write() {
    this.list.value = outline.write(this.shape);
    this.show();
  }

  readList() {
    const shape = outline.read(this.list.value);
    this.shape = shape.badLine ? { ...this.shape, badLine: shape.badLine } : shape;
    this.markFirst();
    this.refit();
  }

  undo() {
    const last = this.before.pop();
    if (last) {
      this.list.value = last.text;
      this.shape = outline.read(last.text);
      this.mark = last.mark;
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
    this.change(() => {
      this.shape = { origin: this.shape.origin, pieces: [[outline.rectangle(length, width)]] };
      this.markFirst();
    });
    this.nearness = 1;
    this.refit();
  }

  add() {
    const ring = this.ring();
    if (!ring || ring.length < 2) {
      this.say("Tap the ground to set the first corners, or start from a rectangle.");
      return;
    }
    const [x1, y1] = ring[this.mark.corner];
    const [x2, y2] = ring[(this.mark.corner + 1) % ring.length];
    this.insert(this.snapped([(x1 + x2) / 2, (y1 + y2) / 2]));
  }

  insert(place) {
    this.change(() => {
      if (!this.ring()) {
        this.shape.pieces.push([[]]);
        this.mark = { piece: this.shape.pieces.length - 1, ring: 0, corner: -1 };
      }
      this.mark = { ...this.mark, corner: this.mark.corner + 1 };
      this.ring().splice(this.mark.corner, 0, place);
    });
    this.refitWhenOutside();
  }

  remove() {
    if (!this.ring()) {
      return;
    }
    this.change(() => {
      const { piece, ring, corner } = this.mark;
      this.ring().splice(corner, 1);
      if (this.ring().length > 0) {
        this.mark.corner = (corner + this.ring().length - 1) % this.ring().length;
        return;
      }
      this.shape.pieces[piece].splice(ring, ring === 0 ? this.shape.pieces[piece].length : 1);
      this.shape.pieces = this.shape.pieces.filter((rest) => rest.length > 0);
      this.markFirst();
    });
  }

  hole() {
    const index = this.mark?.piece ?? 0;
    const piece = this.shape.pieces[index];
    const hole = piece && piece[0].length > 2 ? outline.roomForHole(piece, Number(this.step.value)) : null;
    if (!hole) {
      this.say(piece ? "There is no room for a hole here; write it into the list." : "Draw the edge first.");
      return;
    }
    this.change(() => {
      piece.push(hole);
      this.mark = { piece: index, ring: piece.length - 1, corner: 0 };
    });
    this.svg.focus();
  }

  shift(x, y, whole) {
    if (!this.ring()) {
      return;
    }
    const step = Number(this.step.value);
    this.change(() => {
      const ring = this.ring();
      const moved = ([east, north]) => [outline.snap(east + x * step, 0.001), outline.snap(north + y * step, 0.001)];
      ring.forEach((corner, i) => {
        if (whole || i === this.mark.corner) {
          ring[i] = moved(corner);
        }
      });
    });
    this.refitWhenOutside();
  }

  // The marked corner

  ring() {
    return this.mark ? this.shape.pieces[this.mark.piece]?.[this.mark.ring] : undefined;
  }

  markFirst() {
    const first = this.shape.pieces[0]?.[0];
    this.mark = first?.length ? { piece: 0, ring: 0, corner: first.length - 1 } : null;
  }

  next(forward = 1) {
    const all = this.shape.pieces.flatMap((piece, p) =>
      piece.flatMap((ring, r) => ring.map((_, c) => ({ piece: p, ring: r, corner: c }))),
    );
    const here = all.findIndex((one) => this.isMarked(one.piece, one.ring, one.corner));
    this.mark = all.length ? all[(here + forward + all.length) % all.length] : null;
    this.show();
  }

  isMarked(piece, ring, corner) {
    const { mark } = this;
    return mark !== null && mark.piece === piece && mark.ring === ring && mark.corner === corner;
  }

  // By pointer and by key

  // A click follows the release of a handle; it is no tap on the ground.
  grab(event) {
    this.quiet = false;
    const { kind, piece, ring, corner } = event.target.dataset;
    if (!kind || event.button > 0) {
      return;
    }
    this.mark = { piece: Number(piece), ring: Number(ring), corner: Number(corner) };
    this.drag = { kind, from: this.ground(event), moved: false };
    this.svg.setPointerCapture(event.pointerId);
    this.show();
  }

  move(event) {
    if (!this.drag) {
      return;
    }
    const place = this.ground(event);
    if (!this.drag.moved) {
      if (outline.distance(place, this.drag.from) * this.scale < 4) {
        return;
      }
      this.drag.moved = true;
      this.before.push({ text: this.list.value, mark: this.mark });
      if (this.drag.kind === "side") {
        this.mark = { ...this.mark, corner: this.mark.corner + 1 };
        this.ring().splice(this.mark.corner, 0, this.snapped(place));
      }
      this.drag.start = this.ring().map((corner) => [...corner]);
    }
    if (this.drag.kind === "hole") {
      const [x, y] = this.snapped([place[0] - this.drag.from[0], place[1] - this.drag.from[1]]);
      this.drag.start.forEach(([east, north], i) => {
        this.ring()[i] = [outline.snap(east + x, 0.001), outline.snap(north + y, 0.001)];
      });
    } else {
      this.ring()[this.mark.corner] = this.snapped(place);
    }
    this.write();
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
      this.insert(this.snapped(this.ground(event)));
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

  // The ground

  nearer() {
    this.nearness = Math.min(4, this.nearness * 1.4);
    this.refit();
  }

  farther() {
    this.nearness = Math.max(0.02, this.nearness / 1.4);
    this.refit();
  }

  refit() {
    const empty = { west: 0, east: EMPTY_ACROSS_M / this.metres, south: 0, north: EMPTY_ALONG_M / this.metres };
    const box = outline.bounds(this.shape) ?? empty;
    const least = LEAST_ACROSS_M / this.metres;
    this.width = this.svg.clientWidth || 320;
    this.height = this.svg.clientHeight || 320;
    const across = Math.max(box.east - box.west, least);
    const along = Math.max(box.north - box.south, least);
    this.scale = this.nearness * Math.min((this.width - 116) / across, (this.height - 90) / along);
    this.left = this.width / 2 - (this.scale * (box.west + box.east)) / 2;
    this.bottom = this.height / 2 + (this.scale * (box.south + box.north)) / 2;
    this.show();
  }

  refitWhenOutside() {
    const box = outline.bounds(this.shape);
    if (!box) {
      return;
    }
    const [west, north] = this.px([box.west, box.north]);
    const [east, south] = this.px([box.east, box.south]);
    if (west < 24 || north < 16 || east > this.width - 16 || south > this.height - 24) {
      this.refit();
    }
  }

  px([x, y]) {
    return [this.left + this.scale * x, this.bottom - this.scale * y];
  }

  ground(event) {
    const box = this.svg.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * this.width;
    const y = ((event.clientY - box.top) / box.height) * this.height;
    return [(x - this.left) / this.scale, (this.bottom - y) / this.scale];
  }

  snapped([x, y]) {
    const step = Number(this.step.value);
    return [outline.snap(x, step), outline.snap(y, step)];
  }

  // What is seen

  show() {
    this.svg.setAttribute("viewBox", `0 0 ${this.width} ${this.height}`);
    this.svg.replaceChildren(...this.grid(), this.turf(), ...this.holes(), ...this.lengths(), ...this.handles());
    this.tell();
  }

  grid() {
    let step = 1;
    for (let five = false; step * this.scale < 11; five = !five) {
      step *= five ? 2 : 5;
    }
    const lines = [[step, "grid-line"], [5 * step, "grid-line fifth"]].map(([each, name]) => {
      const strokes = [];
      this.steps(each, this.left, this.width).forEach((i) => {
        strokes.push(`M${this.px([i * each, 0])[0].toFixed(1)} 0V${this.height}`);
      });
      this.steps(each, this.height - this.bottom, this.height).forEach((i) => {
        strokes.push(`M0 ${this.px([0, i * each])[1].toFixed(1)}H${this.width}`);
      });
      return element("path", { class: name, d: strokes.join("") });
    });
    return [...lines, ...this.numbers(5 * step)];
  }

  // Numbers of the grid lines that lie within a length of px, the line 0 lying at an offset.
  steps(each, offset, length) {
    const first = Math.ceil(-offset / (each * this.scale));
    const last = Math.floor((length - offset) / (each * this.scale));
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  }

  numbers(each) {
    const across = this.steps(each, this.left, this.width).map((i) => ({
      x: this.px([i * each, 0])[0] + 3, y: this.height - 4, words: String(i * each),
    }));
    const along = this.steps(each, this.height - this.bottom, this.height).map((i) => ({
      x: 3, y: this.px([0, i * each])[1] - 4, words: String(i * each),
    }));
    return [...across, ...along]
      .filter(({ x, y }) => x < this.width - 24 && y > 14 && (x > 24 || y < this.height - 20))
      .map(({ x, y, words }) => element("text", { class: "soft", x, y, "font-size": 12 }, words));
  }

  path(ring) {
    return ring.length ? `M${ring.map((corner) => this.px(corner).map((v) => v.toFixed(1)).join(" ")).join("L")}Z` : "";
  }

  turf() {
    const d = outline.rings(this.shape).map((ring) => this.path(ring)).join("");
    return element("path", { class: "outline-turf", "fill-rule": "evenodd", d });
  }

  holes() {
    return this.shape.pieces.flatMap((piece, p) =>
      piece.slice(1).map((ring, r) =>
        element("path", {
          class: "hole", d: this.path(ring), "data-kind": "hole", "data-piece": p, "data-ring": r + 1, "data-corner": 0,
        }),
      ),
    );
  }

  lengths() {
    return this.sides()
      .filter(({ from, to }) => outline.distance(from, to) * this.scale > 34)
      .map(({ from, to }) => {
        const [x, y] = this.px([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]);
        const long = outline.distance(from, to);
        const steep = Math.abs(to[1] - from[1]) / long;
        const side = to[1] >= from[1] ? 1 : -1;
        const attributes = {
          class: "words halo",
          x: x + side * steep * 9,
          y: y + (steep > 0.7 ? 5 : to[0] >= from[0] ? 20 : -9),
          "text-anchor": steep > 0.7 ? (side > 0 ? "start" : "end") : "middle",
          "font-size": 13,
        };
        return element("text", attributes, oneDecimal(long));
      });
  }

  sides() {
    return this.shape.pieces.flatMap((piece, p) =>
      piece.flatMap((ring, r) =>
        ring.length < 2
          ? []
          : ring.map((from, c) => ({ from, to: ring[(c + 1) % ring.length], piece: p, ring: r, corner: c })),
      ),
    );
  }

  handles() {
    const corners = this.shape.pieces.flatMap((piece, p) =>
      piece.flatMap((ring, r) => ring.map((place, c) => ({ place, piece: p, ring: r, corner: c }))),
    );
    if (corners.length > MOST_HANDLES) {
      return corners.filter((one) => this.isMarked(one.piece, one.ring, one.corner)).flatMap((one) => this.handle(one));
    }
    const middles = this.sides()
      .filter(({ from, to }) => outline.distance(from, to) * this.scale > 60)
      .flatMap(({ from, to, ...at }) =>
        this.handle({ place: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], kind: "side", ...at }),
      );
    return [...middles, ...corners.flatMap((one) => this.handle(one))];
  }

  handle({ place, piece, ring, corner, kind = "corner" }) {
    const [cx, cy] = this.px(place);
    const at = { cx, cy, "data-kind": kind, "data-piece": piece, "data-ring": ring, "data-corner": corner };
    const marked = kind === "corner" && this.isMarked(piece, ring, corner);
    return [
      element("circle", { class: `${kind}-mark${marked ? " marked" : ""}`, cx, cy, r: marked ? 7 : kind === "side" ? 3 : 5 }),
      element("circle", { class: "handle", ...at, r: kind === "side" ? 13 : 17 }),
    ];
  }

  tell() {
    const size = outline.area(this.shape);
    const parts = [
      `${this.metres === 1 ? oneDecimal(size) : Math.round(size)} ${this.field.dataset.squareUnit}`,
      `${oneDecimal(outline.perimeter(this.shape))} ${this.unit} of edge`,
    ];
    if (this.shape.badLine) {
      parts.push(`line ${this.shape.badLine} of the list cannot be read yet`);
    } else if (outline.crosses(this.shape)) {
      parts.push("two sides cross: walk round in order");
    }
    this.field.querySelector(".outline-size").textContent = parts.join(" · ");
    clearTimeout(this.telling);
    this.telling = setTimeout(() => this.say(this.markWords()), 250);
  }

  markWords() {
    const ring = this.ring();
    if (!ring || this.mark.corner < 0 || this.mark.corner >= ring.length) {
      return "Tap the ground to set the first corner.";
    }
    const [x, y] = ring[this.mark.corner];
    const line = this.mark.ring === 0 ? "the edge" : `hole ${this.mark.ring}`;
    const piece = this.shape.pieces.length > 1 ? `, piece ${this.mark.piece + 1}` : "";
    return `Corner ${this.mark.corner + 1} of ${ring.length} of ${line}${piece}: ${x} ${this.unit} east, ${y} ${this.unit} north.`;
  }

  say(words) {
    this.field.querySelector(".outline-status").textContent = words;
  }
}

document.querySelectorAll(".outline-field").forEach((field) => new Desk(field));
