// The drawing, and what can be done to an edge or a corner that is pointed at in it.

import { element } from "./fields.js";
import { dig, names } from "./form.js";

// So wide is a millimetre of a drawing, px: as it is read well, and at least, or its words cannot be read.
const LIKED = 3.2;
const LEAST = 2.5;

// So many millimetres of a drawing have room in an element.
export const room = (el) => el.clientWidth / LIKED;

// An SVG in an element of the page, no larger than what is drawn in it.
export function picture(text, into) {
  const parsed = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  const svg = document.importNode(parsed, true);
  svg.removeAttribute("width");
  svg.removeAttribute("height");
  svg.setAttribute("role", "group");
  svg.querySelector("rect")?.remove();
  into.replaceChildren(svg);
  const { x, y, width, height } = svg.getBBox();
  if (width) svg.setAttribute("viewBox", [x - 2, y - 2, width + 4, height + 4].join(" "));
  svg.style.minWidth = `${LEAST * width}px`;
}

// A part by its name in the drawing: top.1-2, top.2, slab.AB, slab.A, top.cutout.0
function meant(name) {
  const [whole, ...rest] = name.split(".");
  if (rest[0] === "cutout") return { whole, is: "cutout", name: Number(rest[1]), words: `Opening ${Number(rest[1]) + 1}` };
  const is = whole === "top" ? (rest[0].includes("-") ? "edge" : "corner") : rest[0].length > 1 ? "edge" : "corner";
  return { whole, is, name: rest[0], words: `${is === "edge" ? "Edge" : "Corner"} ${rest[0]} of the ${whole}` };
}

export function drawing(el, panel, keys, changed, go) {
  let values = {};
  let chosen = "";

  function show(svg, seen) {
    values = seen;
    el.classList.toggle("old", !svg && el.hasChildNodes());
    if (!svg) return;
    const held = el.contains(document.activeElement) ? document.activeElement.dataset.part : "";
    picture(svg, el);
    el.firstChild.setAttribute("aria-label", "The slab with the top on it");
    for (const part of el.querySelectorAll("[data-part]")) {
      const { words } = meant(part.dataset.part);
      part.setAttribute("tabindex", "0");
      part.setAttribute("role", "button");
      part.setAttribute("aria-label", words);
      part.classList.toggle("chosen", part.dataset.part === chosen);
      const title = document.createElementNS("http://www.w3.org/2000/svg", "title");
      title.textContent = words;
      part.append(title);
      if (part.dataset.part === held) part.focus();
    }
  }

  function open(name) {
    const part = meant(name);
    if (part.is === "cutout") {
      go(`top.cutout[${part.name}]`);
      return;
    }
    chosen = name;
    el.querySelectorAll("[data-part]").forEach((one) => one.classList.toggle("chosen", one.dataset.part === name));
    const close = element("button", { type: "button", className: "small" }, "Done");
    close.addEventListener("click", shut);
    const heading = element("h3", { id: "part-name" }, part.words);
    panel.setAttribute("aria-labelledby", heading.id);
    const fields = part.is === "corner" ? corner(part) : part.whole === "top" ? topEdge(part) : slabEdge(part);
    panel.replaceChildren(heading, ...fields, close);
    panel.hidden = false;
    panel.querySelector("select").focus();
  }

  function shut() {
    panel.hidden = true;
    const part = [...el.querySelectorAll("[data-part]")].find((one) => one.dataset.part === chosen);
    chosen = "";
    part?.classList.remove("chosen");
    part?.focus();
  }

  function select(label, words, value, act) {
    const one = element("select");
    one.append(...words.map(([value, shown]) => element("option", { value }, shown)));
    one.value = value;
    one.addEventListener("change", () => act(one.value));
    return element("label", { className: "row" }, `${label} `, one);
  }

  // What is given by name, one value for all written out for each.
  function byName(at, kind) {
    const value = dig(values, at);
    if (value === null || value === undefined) return {};
    if (typeof value === "object") return { ...value };
    return Object.fromEntries(names(values, at.slice(0, -1), kind).map((name) => [name, value]));
  }

  function put(at, kind, name, to) {
    const given = byName(at, kind);
    const before = given[name];
    if (to === null) delete given[name];
    else given[name] = to;
    if ((before ?? null) !== to) changed(at, Object.keys(given).length ? given : null);
  }

  function topEdge(part) {
    const finishes = keys["top.finish"].kind.kinds.find((kind) => kind.is === "word").words;
    const at = ["top", "finish"];
    const words = [["", "not said: as sawn"], ...finishes.map((word) => [word, word])];
    const now = byName(at, "edge")[part.name] ?? "";
    return [select("Finish", words, now, (word) => put(at, "edge", part.name, word || null))];
  }

  function slabEdge(part) {
    const states = ["factory", "sawn", "rough"];
    const has = (state) => (dig(values, ["slab", state]) ?? []).includes(part.name);
    const act = (wanted) => {
      for (const state of states) {
        const names = (dig(values, ["slab", state]) ?? []).filter((name) => name !== part.name);
        if (state === wanted) names.push(part.name);
        if (has(state) !== (state === wanted)) changed(["slab", state], names.length ? names : null);
      }
    };
    const words = [["", "not said"], ["factory", "factory: finished, used as it is"], ["sawn", "sawn: straight and square"], ["rough", "rough: must come off"]];
    return [select("This edge is", words, states.find(has) ?? "", act)];
  }

  function corner(part) {
    const ways = ["round", "clip", "scoop"];
    const given = (way) => byName([part.whole, way], "corner")[part.name];
    const way = ways.find((way) => given(way) !== undefined) ?? "";
    const size = element("input", { type: "text", value: way ? given(way) : "", autocomplete: "off" });
    size.setAttribute("aria-label", `Size at ${part.words.toLowerCase()}`);
    const shape = element("span", {});
    let wanted = way;
    const act = () => {
      const to = size.value.trim() || null;
      for (const one of ways) put([part.whole, one], "corner", part.name, one === wanted ? to : null);
    };
    const measured = { round: "radius", clip: "cut off along both edges", scoop: "radius about the corner" };
    const choose = (value) => {
      wanted = value;
      shape.textContent = measured[value] ?? "";
      size.parentElement.hidden = !value;
      if (!value || size.value.trim()) act();
      if (value) size.focus();
    };
    size.addEventListener("input", act);
    const words = [["", "sharp"], ["round", "round"], ["clip", "clipped"], ["scoop", "scooped out"]];
    const row = element("label", { className: "row" }, shape, size);
    shape.textContent = measured[way] ?? "";
    row.hidden = !way;
    return [select("This corner is", words, way, choose), row];
  }

  el.addEventListener("click", (event) => {
    const part = event.target.closest?.("[data-part]");
    if (part) open(part.dataset.part);
  });
  el.addEventListener("keydown", (event) => {
    const part = event.target.closest?.("[data-part]");
    if (part && (event.key === "Enter" || event.key === " ")) {
      event.preventDefault();
      open(part.dataset.part);
    }
  });
  panel.addEventListener("keydown", (event) => {
    if (event.key === "Escape") shut();
  });
  return { show };
}
