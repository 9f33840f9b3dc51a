// What stands under the drawing: fits or misses by what, the figures, the stops and the open points,
// each with the way to the field that clears it.

import { element } from "./fields.js";

export function outcome(seen) {
  const faults = seen.said.filter((one) => one.severity === "fault").length;
  const many = (count, one, more) => `${count} ${count === 1 ? one : more}`;
  switch (seen.outcome) {
    case "fits": {
      const stops = seen.stops.length ? many(seen.stops.length, "stop", "stops") : "no stop found";
      return `The top fits: ${stops}, ${many(seen.open.length, "open point", "open points")}.`;
    }
    case "miss":
      return "The top does not fit.";
    default:
      return `${many(faults, "thing is", "things are")} missing or wrong; then the drawing follows.`;
  }
}

// `form` leads to the field of a key, and knows what the key is.
export function under(el, seen, homeless, form) {
  el.replaceChildren();
  if (homeless.length) {
    el.append(element("h3", {}, "In the file"));
    const list = element("ul");
    for (const one of homeless) {
      const where = one.line ? `Line ${one.line}: ` : "";
      list.append(element("li", {}, `${where}${one.message}${one.hint ? ` → ${one.hint}` : ""}`));
    }
    el.append(list);
  }
  if (seen.outcome === "faults") el.append(...faulty(seen, form.go));
  if (seen.miss.length) el.append(element("div", {}, ...seen.miss.map((line) => element("p", {}, line))));
  if (seen.figures.length) {
    const figures = element("dl");
    for (const [name, value] of seen.figures) figures.append(element("dt", {}, name), element("dd", {}, value));
    el.append(figures);
  }
  el.append(...found("Stops: do not start", "stop", seen.stops, form), ...found("Open points", "", seen.open, form));
}

// The way to each field that is at fault.
function faulty(seen, go) {
  const list = element("ul");
  for (const one of seen.said.filter((one) => one.severity === "fault" && one.key)) {
    const link = element("button", { type: "button", className: "link" }, one.message);
    link.addEventListener("click", () => go(one.key));
    list.append(element("li", {}, link));
  }
  return list.children.length ? [list] : [];
}

function found(name, kind, all, form) {
  if (!all.length) return [];
  const list = element("ul");
  for (const one of all) {
    const item = element("li", {}, element("span", { className: kind }, one.title));
    if (one.key) {
      const link = element("button", { type: "button", className: "link" }, `To clear it: ${form.meaning(one.key)}`);
      link.dataset.key = one.key;
      link.addEventListener("click", () => form.go(one.key));
      item.append(" ", link);
    } else if (one.act) {
      item.append(` → ${one.act}`);
    }
    if (one.detail && one.detail !== one.title) {
      item.append(element("details", {}, element("summary", {}, "Why"), element("p", {}, one.detail)));
    }
    list.append(item);
  }
  return [element("h3", {}, name), list];
}
