// Scales and ticks.

/** A straight scale from values to pixels. */
export function scale(from, to, fromPx, toPx) {
  const factor = (toPx - fromPx) / (to - from || 1);
  return (value) => fromPx + (value - from) * factor;
}

/** Round ticks between two values, at most so many; all with the same number of decimals. */
export function ticks(from, to, most) {
  for (let power = -3; ; power++) {
    for (const factor of [1, 2, 5]) {
      const step = factor * 10 ** power;
      if ((to - from) / step <= most) {
        const first = Math.ceil(from / step - 1e-9);
        const last = Math.floor(to / step + 1e-9);
        const values = Array.from({ length: last - first + 1 }, (unused, i) => (first + i) * step);
        return { values, decimals: Math.max(0, -power) };
      }
    }
  }
}

const UNITS = [
  { unit: "s", unitS: 1, untilS: 180, steps: [10, 20, 30, 60] },
  { unit: "min", unitS: 60, untilS: 7200, steps: [0.5, 1, 2, 5, 10, 15, 20, 30] },
  { unit: "h", unitS: 3600, untilS: 864000, steps: [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48] },
  { unit: "d", unitS: 86400, untilS: Infinity, steps: [1, 2, 5, 10, 20, 30, 50, 100] },
];

/** The unit for a scene's time, and its ticks. */
export function timeTicks(durationS, most) {
  const { unit, unitS, steps } = UNITS.find((each) => durationS <= each.untilS);
  const all = durationS / unitS;
  const step = steps.find((each) => all / each <= most) ?? steps.at(-1);
  const values = Array.from({ length: Math.floor(all / step + 1e-9) + 1 }, (unused, i) => i * step);
  return { unit, unitS, values };
}

/** A range that holds all values, opened to round numbers so that it stays still while a line moves. */
export function roomyRange(values, round) {
  const from = Math.floor(Math.min(...values) / round - 0.1) * round;
  const to = Math.ceil(Math.max(...values) / round + 0.1) * round;
  return [from, to];
}

/** A line through points as the text of a path. */
export function line(xs, ys, x, y) {
  let path = "";
  for (let i = 0; i < xs.length; i++) {
    path += (i === 0 ? "M" : "L") + x(xs[i]).toFixed(1) + " " + y(ys[i]).toFixed(1);
  }
  return path;
}

/** The area between two lines as the text of a path. */
export function band(xs, lows, highs, x, y) {
  let path = line(xs, highs, x, y);
  for (let i = xs.length - 1; i >= 0; i--) {
    path += "L" + x(xs[i]).toFixed(1) + " " + y(lows[i]).toFixed(1);
  }
  return path + "Z";
}

/** The value of a column at a time, straight between two lines of the trace. */
export function valueAt(xs, ys, at) {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle] <= at) {
      low = middle;
    } else {
      high = middle;
    }
  }
  const span = xs[high] - xs[low];
  const share = span === 0 ? 0 : Math.min(1, Math.max(0, (at - xs[low]) / span));
  return ys[low] + share * (ys[high] - ys[low]);
}
