// An outline while it is being drawn: its list, its shape, the corner that is marked, and what can be
// undone.

import * as outline from "./outline-shape.js";

const FINEST = 0.001;

export class Draft {
  constructor(text) {
    this.before = [];
    this.text = text;
    this.shape = outline.read(text);
    this.markFirst();
  }

  // Takes a list that was typed; what could be read before stands while a line cannot be read.
  read(text) {
    const shape = outline.read(text);
    this.text = text;
    this.shape = shape.badLine ? { ...this.shape, badLine: shape.badLine } : shape;
    this.markFirst();
  }

  change(act) {
    this.remember();
    act();
    this.write();
  }

  remember() {
    this.before.push({ text: this.text, mark: this.mark });
  }

  write() {
    this.text = outline.write(this.shape);
  }

  // False when there is nothing to undo.
  undo() {
    const last = this.before.pop();
    if (last) {
      this.text = last.text;
      this.shape = outline.read(last.text);
      this.mark = last.mark;
    }
    return last !== undefined;
  }

  // The marked corner

  ring() {
    return this.mark ? this.shape.pieces[this.mark.piece]?.[this.mark.ring] : undefined;
  }

  markFirst() {
    const first = this.shape.pieces[0]?.[0];
    this.mark = first?.length ? { piece: 0, ring: 0, corner: first.length - 1 } : null;
  }

  markNext(forward) {
    const all = this.shape.pieces.flatMap((piece, p) =>
      piece.flatMap((ring, r) => ring.map((_, c) => ({ piece: p, ring: r, corner: c }))),
    );
    const here = all.findIndex((one) => this.isMarked(one.piece, one.ring, one.corner));
    this.mark = all.length ? all[(here + forward + all.length) % all.length] : null;
  }

  isMarked(piece, ring, corner) {
    const { mark } = this;
    return mark !== null && mark.piece === piece && mark.ring === ring && mark.corner === corner;
  }

  // Changes

  start(ring) {
    this.change(() => {
      this.shape = { origin: this.shape.origin, pieces: [[ring]] };
      this.markFirst();
    });
  }

  // The middle of the side after the marked corner; where there is no side yet, a place for a corner
  // to begin with, and one some way east of a single corner.
  placeToAdd(beside) {
    const ring = this.ring();
    if (!ring) {
      return [0, 0];
    }
    if (ring.length < 2) {
      return [ring[0][0] + beside, ring[0][1]];
    }
    const [x1, y1] = ring[this.mark.corner];
    const [x2, y2] = ring[(this.mark.corner + 1) % ring.length];
    return [(x1 + x2) / 2, (y1 + y2) / 2];
  }

  insert(place) {
    this.change(() => {
      if (!this.ring()) {
        this.shape.pieces.push([[]]);
        this.mark = { piece: this.shape.pieces.length - 1, ring: 0, corner: -1 };
      }
      this.insertAfterMark(place);
    });
  }

  insertAfterMark(place) {
    this.mark = { ...this.mark, corner: this.mark.corner + 1 };
    this.ring().splice(this.mark.corner, 0, place);
  }

  remove() {
    this.change(() => {
      const { piece, ring, corner } = this.mark;
      this.ring().splice(corner, 1);
      if (this.ring().length > 0) {
        this.mark = { piece, ring, corner: (corner + this.ring().length - 1) % this.ring().length };
        return;
      }
      this.shape.pieces[piece].splice(ring, ring === 0 ? this.shape.pieces[piece].length : 1);
      this.shape.pieces = this.shape.pieces.filter((rest) => rest.length > 0);
      this.markFirst();
    });
  }

  addHole(piece, hole) {
    this.change(() => {
      this.shape.pieces[piece].push(hole);
      this.mark = { piece, ring: this.shape.pieces[piece].length - 1, corner: 0 };
    });
  }

  // Moves the marked corner, or its whole ring.
  shift(east, north, whole) {
    this.change(() => {
      const ring = this.ring();
      ring.forEach((corner, i) => {
        if (whole || i === this.mark.corner) {
          ring[i] = moved(corner, east, north);
        }
      });
    });
  }
}

export function moved([x, y], east, north) {
  return [outline.snap(x + east, FINEST), outline.snap(y + north, FINEST)];
}
