// The piece of ground that a drawing of an outline shows, and how it lies in the drawing: lengths in
// the unit of the list, x to the east and y to the north, against pixels from the upper left.

import { bounds } from "./outline-shape.js";

const EMPTY_ACROSS_M = 16;
const EMPTY_ALONG_M = 10;
const LEAST_ACROSS_M = 6;
const MARGIN_ACROSS_PX = 116;
const MARGIN_ALONG_PX = 90;
const UNSIZED_PX = 320;

export class Ground {
  // metres is the length of the list's unit.
  constructor(svg, metres) {
    this.svg = svg;
    this.metres = metres;
    this.nearness = 1;
  }

  nearer() {
    this.nearness = Math.min(4, this.nearness * 1.4);
  }

  farther() {
    this.nearness = Math.max(0.02, this.nearness / 1.4);
  }

  // Lays the drawing round a shape.
  fit(shape) {
    const empty = { west: 0, east: EMPTY_ACROSS_M / this.metres, south: 0, north: EMPTY_ALONG_M / this.metres };
    const box = bounds(shape) ?? empty;
    const least = LEAST_ACROSS_M / this.metres;
    this.width = this.svg.clientWidth || UNSIZED_PX;
    this.height = this.svg.clientHeight || UNSIZED_PX;
    const across = Math.max(box.east - box.west, least);
    const along = Math.max(box.north - box.south, least);
    const fitting = Math.min((this.width - MARGIN_ACROSS_PX) / across, (this.height - MARGIN_ALONG_PX) / along);
    this.scale = this.nearness * fitting;
    this.left = this.width / 2 - (this.scale * (box.west + box.east)) / 2;
    this.bottom = this.height / 2 + (this.scale * (box.south + box.north)) / 2;
  }

  // True when part of a shape lies outside the drawing, or so near its rim that it is hard to grasp.
  leavesOut(shape) {
    const box = bounds(shape);
    if (!box) {
      return false;
    }
    const [west, north] = this.px([box.west, box.north]);
    const [east, south] = this.px([box.east, box.south]);
    return west < 24 || north < 16 || east > this.width - 16 || south > this.height - 24;
  }

  px([x, y]) {
    return [this.left + this.scale * x, this.bottom - this.scale * y];
  }

  // The place under a pointer.
  place(event) {
    const box = this.svg.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * this.width;
    const y = ((event.clientY - box.top) / box.height) * this.height;
    return [(x - this.left) / this.scale, (this.bottom - y) / this.scale];
  }

  // Pixels of the lines of a grid, each with the multiple of the step at which it lies.
  columns(step) {
    return this.multiples(step, this.left, this.width).map((i) => ({ i, at: this.px([i * step, 0])[0] }));
  }

  rows(step) {
    return this.multiples(step, this.height - this.bottom, this.height).map((i) => ({ i, at: this.px([0, i * step])[1] }));
  }

  multiples(step, offset, length) {
    const first = Math.ceil(-offset / (step * this.scale));
    const last = Math.floor((length - offset) / (step * this.scale));
    return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  }
}
