// Making elements. Text is always text: nothing here, or anywhere in the page, turns a string into markup.

const SVG = "http://www.w3.org/2000/svg";

function fill(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith("on")) {
      element.addEventListener(name.slice(2), value);
    } else if (value === true) {
      element.setAttribute(name, "");
    } else if (value !== false && value !== null && value !== undefined) {
      element.setAttribute(name, value);
    }
  }
  element.append(...children.filter((child) => child !== null && child !== undefined));
  return element;
}

/** An HTML element; attributes that begin with "on" are listeners, `true` is an empty attribute. */
export function el(tag, attributes = {}, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

/** An SVG element, likewise. */
export function svg(tag, attributes = {}, ...children) {
  return fill(document.createElementNS(SVG, tag), attributes, children);
}

/** The element of an id. */
export function byId(id) {
  return document.getElementById(id);
}

/** Writes a text only where it differs, so that nothing is drawn or read out again without need. */
export function write(element, text) {
  if (element.textContent !== text) {
    element.textContent = text;
  }
}

/** Sets an attribute only where it differs. */
export function put(element, name, value) {
  if (element.getAttribute(name) !== String(value)) {
    element.setAttribute(name, value);
  }
}

const filled = new WeakMap();

/** Fills an element with children made from something, only where that differs from what it was last filled from. */
export function refill(element, from, make) {
  const spelt = JSON.stringify(from);
  if (filled.get(element) !== spelt) {
    filled.set(element, spelt);
    element.replaceChildren(...make(from));
  }
}
