// The list of corners that an outline is written as, and what can be computed from it.
// A shape is { origin, pieces }; a piece is a list of rings, its edge first and then its holes;
// a ring is a list of [x, y] in the unit of the list. The server reads the same list and has the last word.

const NUMBER = "([-+]?(?:\\d{1,9}(?:\\.\\d{0,12})?|\\.\\d{1,12}))";
const GAP = "(?:\\s*[,;]\\s*|\\s+)";
const PAIR = new RegExp(`^${NUMBER}${GAP}${NUMBER}$`);
const RECTANGLE = new RegExp(`^${NUMBER}\\s*[x×*]\\s*${NUMBER}(?:\\s+at\\s+${NUMBER}${GAP}${NUMBER})?$`);

export function rectangle(length, width, x = 0, y = 0) {
  return [[x, y], [x + length, y], [x + length, y + width], [x, y + width]].map(tidy);
}

function tidy([x, y]) {
  return [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000];
}

// Reads the list; badLine is the number of the first line that cannot be read, or 0.
export function read(text) {
  const shape = { origin: "", pieces: [], badLine: 0 };
  let piece = null;
  let ring = null;
  text.split("\n").forEach((raw, index) => {
    const line = raw.trim().replace("\u2212", "-").toLowerCase();
    const pair = PAIR.exec(line);
    const box = RECTANGLE.exec(line);
    if (line === "" || line === "+") {
      ring = null;
      piece = line === "+" ? null : piece;
    } else if (line.startsWith("origin")) {
      shape.origin = raw.trim();
    } else if (pair || box) {
      if (!piece) {
        piece = [];
        shape.pieces.push(piece);
      }
      if (!ring) {
        ring = [];
        piece.push(ring);
      }
      if (pair) {
        ring.push(tidy([Number(pair[1]), Number(pair[2])]));
      } else {
        ring.push(...rectangle(Number(box[1]), Number(box[2]), Number(box[3] ?? 0), Number(box[4] ?? 0)));
        ring = null;
      }
    } else {
      shape.badLine ||= index + 1;
    }
  });
  return shape;
}

export function write({ origin, pieces }) {
  const ring = (corners) => corners.map(([x, y]) => `${x} ${y}\n`).join("");
  const lists = pieces.map((piece) => piece.filter((corners) => corners.length > 0).map(ring).join("\n"));
  return (origin ? `${origin}\n` : "") + lists.filter((list) => list !== "").join("+\n");
}

export function rings({ pieces }) {
  return pieces.flat();
}

export function snap(value, step) {
  return Math.round(Math.round(value / step) * step * 1000) / 1000;
}

function ringArea(ring) {
  let twice = 0;
  ring.forEach(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length];
    twice += x * nextY - nextX * y;
  });
  return Math.abs(twice) / 2;
}

// Area of the pieces without their holes, in squares of the unit.
export function area({ pieces }) {
  const ofPiece = (piece) => piece.reduce((sum, ring, i) => sum + (i === 0 ? 1 : -1) * ringArea(ring), 0);
  return pieces.reduce((sum, piece) => sum + ofPiece(piece), 0);
}

export function distance([x1, y1], [x2, y2]) {
  return Math.hypot(x2 - x1, y2 - y1);
}

// Length of all edges, those of holes too.
export function perimeter(shape) {
  const round = (ring) => ring.reduce((sum, corner, i) => sum + distance(corner, ring[(i + 1) % ring.length]), 0);
  return rings(shape).reduce((sum, ring) => sum + round(ring), 0);
}

export function bounds(shape) {
  const corners = rings(shape).flat();
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  return corners.length === 0
    ? null
    : { west: Math.min(...xs), east: Math.max(...xs), south: Math.min(...ys), north: Math.max(...ys) };
}

export function isInside([x, y], ring) {
  let inside = false;
  ring.forEach(([x1, y1], i) => {
    const [x2, y2] = ring[(i + 1) % ring.length];
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) {
      inside = !inside;
    }
  });
  return inside;
}

function turn([ax, ay], [bx, by], [cx, cy]) {
  return Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
}

// True when two sides of the drawing cross; not looked for in very long lists.
export function crosses(shape) {
  const sides = rings(shape).flatMap((ring) => ring.map((corner, i) => [corner, ring[(i + 1) % ring.length]]));
  if (sides.length > 400) {
    return false;
  }
  return sides.some(([a, b], i) =>
    sides.slice(i + 1).some(
      ([c, d]) => turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0,
    ),
  );
}

function isOn([x, y], [[ax, ay], [bx, by]]) {
  const between = (value, one, other) => value >= Math.min(one, other) && value <= Math.max(one, other);
  return turn([ax, ay], [bx, by], [x, y]) === 0 && between(x, ax, bx) && between(y, ay, by);
}

// True when a corner of a ring lies on another side of the same ring, or a side runs back on the one
// before it; not looked for in very long lists. A corner given twice in a row is one corner.
export function touchesItself(shape) {
  return rings(shape).some((given) => {
    const ring = given.filter((corner, i) => distance(corner, given[(i + 1) % given.length]) > 0);
    if (ring.length < 3 || ring.length > 400) {
      return false;
    }
    return ring.some((corner, i) =>
      ring.some((from, j) => {
        const next = (j + 1) % ring.length;
        return i !== j && i !== next && isOn(corner, [from, ring[next]]);
      }),
    );
  });
}

// A small square inside the edge and outside the other holes, or null when there is no room.
export function roomForHole(piece, step) {
  const box = bounds({ pieces: [piece] });
  const across = Math.min(box.east - box.west, box.north - box.south);
  for (let parts = 4; parts <= 16; parts *= 2) {
    const size = Math.max(step, snap(across / parts, step));
    for (const at of placesInside(box, size, step)) {
      const hole = rectangle(size, size, ...at);
      if (fits(hole, size, piece)) {
        return hole;
      }
    }
  }
  return null;
}

// South-western corners of squares over the whole ground, those near the middle first.
function placesInside(box, size, step) {
  const middle = [(box.west + box.east - size) / 2, (box.south + box.north - size) / 2];
  const places = [];
  for (let column = -3; column <= 3; column++) {
    for (let row = -3; row <= 3; row++) {
      const x = middle[0] + (column * (box.east - box.west)) / 8;
      const y = middle[1] + (row * (box.north - box.south)) / 8;
      places.push([snap(x, step), snap(y, step)]);
    }
  }
  return places.sort((one, other) => distance(one, middle) - distance(other, middle));
}

function fits(hole, size, [edge, ...holes]) {
  const near = rectangle(1.5 * size, 1.5 * size, hole[0][0] - size / 4, hole[0][1] - size / 4);
  const others = { pieces: [[edge], [near], ...holes.map((ring) => [ring])] };
  return (
    near.every((corner) => isInside(corner, edge) && !holes.some((ring) => isInside(corner, ring)))
    && !holes.some((ring) => ring.some((corner) => isInside(corner, near)))
    && !crosses(others)
  );
}
