// Numbers and times as a reader wants them, in the same form as in the reports.

/** A number with so many decimals and a true minus sign. */
export function number(value, decimals) {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text.replace("-", "−");
}

/** "12.20 V" */
export function volts(value) {
  return number(value, 2) + " V";
}

/** "0.35 A", "4.2 A", "38 A" */
export function amperes(value) {
  const size = Math.abs(value);
  return number(value, size < 1 ? 2 : size < 20 ? 1 : 0) + " A";
}

/** "71 %" of a share. */
export function percent(share) {
  return number(100 * share, 0) + " %";
}

/** A time as "45 s", "3 min 20 s", "48 min", "1 h 52 min"; cut, not rounded. */
export function time(timeS) {
  const s = Math.floor(timeS + 1e-3);
  if (s < 60) {
    return s + " s";
  }
  if (s < 600) {
    return two(Math.floor(s / 60), "min", s % 60, "s");
  }
  if (s < 3600) {
    return Math.floor(s / 60) + " min";
  }
  if (s < 2 * 86400) {
    return two(Math.floor(s / 3600), "h", Math.floor((s % 3600) / 60), "min");
  }
  return two(Math.floor(s / 86400), "d", Math.floor((s % 86400) / 3600), "h");
}

function two(large, largeUnit, small, smallUnit) {
  return large + " " + largeUnit + (small === 0 ? "" : " " + small + " " + smallUnit);
}

/** A clock that starts with the scene: "1:02:03". */
export function clock(timeS) {
  const s = Math.floor(timeS + 1e-6);
  const digits = (n) => String(n).padStart(2, "0");
  return Math.floor(s / 3600) + ":" + digits(Math.floor(s / 60) % 60) + ":" + digits(s % 60);
}

/** The same without seconds where the scene is longer than an hour, for marks in the chart. */
export function shortClock(timeS, durationS) {
  return durationS <= 3600 ? clock(timeS) : clock(timeS).slice(0, -3);
}

/** A name in quotation marks. */
export function quoted(name) {
  return "'" + name + "'";
}

const NUMBER_AND_UNIT = /(?<=\d) (?=(?:h|min|s|d|V|A|Ah|Wh|K|rpm|°C|%)(?![\p{L}\d]))/gu;

/** A sentence in which numbers and their units stay on one line. */
export function glued(sentence) {
  return sentence.replace(NUMBER_AND_UNIT, "\u00a0");
}
