// What is seen of an outline that is being drawn: grid, turf, holes, lengths of the sides, and the
// handles by which it is changed.

import { distance, rings } from "./outline-shape.js";

const SVG = "http://www.w3.org/2000/svg";
const LEAST_LINE_PX = 11;
const LEAST_TOLD_PX = 34;
const LEAST_HALVED_PX = 60;
const MOST_HANDLES = 120;

function element(name, attributes, words) {
  const made = document.createElementNS(SVG, name);
  Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, String(value)));
  if (words !== undefined) {
    made.textContent = words;
  }
  return made;
}

// All elements of the drawing, the lowest first. isMarked(piece, ring, corner) tells the marked corner.
export function drawing(shape, ground, isMarked) {
  return [
    ...grid(ground),
    turf(shape, ground),
    ...holes(shape, ground),
    ...lengths(shape, ground),
    ...handles(shape, ground, isMarked),
  ];
}

function grid(ground) {
  let step = 1;
  for (let five = false; step * ground.scale < LEAST_LINE_PX; five = !five) {
    step *= five ? 2 : 5;
  }
  const lines = [[step, "grid-line"], [5 * step, "grid-line fifth"]].map(([each, name]) => {
    const across = ground.columns(each).map(({ at }) => `M${at.toFixed(1)} 0V${ground.height}`);
    const along = ground.rows(each).map(({ at }) => `M0 ${at.toFixed(1)}H${ground.width}`);
    return element("path", { class: name, d: [...across, ...along].join("") });
  });
  return [...lines, ...numbers(5 * step, ground)];
}

function numbers(each, ground) {
  const across = ground.columns(each).map(({ i, at }) => ({ x: at + 3, y: ground.height - 4, words: String(i * each) }));
  const along = ground.rows(each).map(({ i, at }) => ({ x: 3, y: at - 4, words: String(i * each) }));
  return [...across, ...along]
    .filter(({ x, y }) => x < ground.width - 24 && y > 14 && (x > 24 || y < ground.height - 20))
    .map(({ x, y, words }) => element("text", { class: "soft", x, y, "font-size": 12 }, words));
}

function path(ring, ground) {
  const places = ring.map((corner) => ground.px(corner).map((v) => v.toFixed(1)).join(" "));
  return places.length ? `M${places.join("L")}Z` : "";
}

function turf(shape, ground) {
  const d = rings(shape).map((ring) => path(ring, ground)).join("");
  return element("path", { class: "outline-turf", "fill-rule": "evenodd", d });
}

function holes(shape, ground) {
  return shape.pieces.flatMap((piece, p) =>
    piece.slice(1).map((ring, r) =>
      element("path", {
        class: "hole", d: path(ring, ground), "data-kind": "hole", "data-piece": p, "data-ring": r + 1, "data-corner": 0,
      }),
    ),
  );
}

function lengths(shape, ground) {
  return sides(shape)
    .filter(({ from, to }) => distance(from, to) * ground.scale > LEAST_TOLD_PX)
    .map(({ from, to }) => {
      const [x, y] = ground.px(middle(from, to));
      const long = distance(from, to);
      const steep = Math.abs(to[1] - from[1]) / long;
      const side = to[1] >= from[1] ? 1 : -1;
      const attributes = {
        class: "words halo",
        x: x + side * steep * 9,
        y: y + (steep > 0.7 ? 5 : to[0] >= from[0] ? 20 : -9),
        "text-anchor": steep > 0.7 ? (side > 0 ? "start" : "end") : "middle",
        "font-size": 13,
      };
      return element("text", attributes, long.toFixed(1));
    });
}

function middle(from, to) {
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}

function sides(shape) {
  return shape.pieces.flatMap((piece, p) =>
    piece.flatMap((ring, r) =>
      ring.length < 2
        ? []
        : ring.map((from, c) => ({ from, to: ring[(c + 1) % ring.length], piece: p, ring: r, corner: c })),
    ),
  );
}

function handles(shape, ground, isMarked) {
  const corners = shape.pieces.flatMap((piece, p) =>
    piece.flatMap((ring, r) => ring.map((place, c) => ({ place, piece: p, ring: r, corner: c }))),
  );
  const ofCorner = (one) => handle(one, ground, isMarked(one.piece, one.ring, one.corner));
  if (corners.length > MOST_HANDLES) {
    return corners.filter((one) => isMarked(one.piece, one.ring, one.corner)).flatMap(ofCorner);
  }
  const middles = sides(shape)
    .filter(({ from, to }) => distance(from, to) * ground.scale > LEAST_HALVED_PX)
    .flatMap(({ from, to, ...at }) => handle({ place: middle(from, to), kind: "side", ...at }, ground, false));
  return [...middles, ...corners.flatMap(ofCorner)];
}

function handle({ place, piece, ring, corner, kind = "corner" }, ground, marked) {
  const [cx, cy] = ground.px(place);
  const at = { cx, cy, "data-kind": kind, "data-piece": piece, "data-ring": ring, "data-corner": corner };
  return [
    element("circle", { class: `${kind}-mark${marked ? " marked" : ""}`, cx, cy, r: marked ? 7 : kind === "side" ? 3 : 5 }),
    element("circle", { class: "handle", ...at, r: kind === "side" ? 13 : 17 }),
  ];
}
