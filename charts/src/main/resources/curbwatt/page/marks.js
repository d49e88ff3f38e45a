// Places for words in a chart, so that none covers another.

const measure = document.createElement("canvas").getContext("2d");

/** Width of a text in the chart's small strong type (px). */
export function width(text, strong = true) {
  measure.font = "12px " + (strong ? '"Inter SemiBold"' : "Inter") + ", sans-serif";
  return measure.measureText(text).width;
}

/**
 * Lanes for labels above a chart. Those that matter most come first; what finds no lane is left out.
 *
 * @param wishes `{anchor, text}` in order of weight
 * @return places `{wish, left, lane}`
 */
export function lanes(wishes, fromPx, toPx, most) {
  const taken = Array.from({ length: most }, () => []);
  const places = [];
  for (const wish of wishes) {
    const wide = width(wish.text) + 10;
    const left = wish.anchor + wide > toPx ? Math.max(fromPx, wish.anchor - wide) : wish.anchor + 4;
    const reach = [Math.min(left, wish.anchor), Math.max(left + wide, wish.anchor)];
    const lane = taken.findIndex((spans) => spans.every(([a, b]) => reach[1] < a || b < reach[0]));
    if (lane >= 0) {
      taken[lane].push(reach);
      places.push({ wish, left, lane });
    }
  }
  return places;
}

/** Heights for labels beside a chart: as near to their wish as they can be without touching. */
export function apart(labels, fromPx, toPx, stepPx) {
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  let below = fromPx;
  for (const label of sorted) {
    label.at = Math.max(label.y, below);
    below = label.at + stepPx;
  }
  let above = toPx;
  for (const label of sorted.reverse()) {
    label.at = Math.min(label.at, above);
    above = label.at - stepPx;
  }
  return labels;
}

/** A text cut to a width, with an ellipsis. */
export function fitted(text, room, strong = true) {
  if (width(text, strong) <= room) {
    return text;
  }
  for (let length = text.length - 1; length > 1; length--) {
    const cut = text.slice(0, length).trimEnd() + "…";
    if (width(cut, strong) <= room) {
      return cut;
    }
  }
  return "";
}
