// The form, made from the list of keys in the order in which a person measures.

import { element, field, same } from "./fields.js";

let made = 0;

// Names of the corners or edges of a figure by what is given of it.
export function names(values, place, part) {
  const figure = dig(values, place) ?? {};
  if (part === "diagonal") return ["AC", "BD"];
  const letters = place[0] === "slab";
  const over = figure.over_base != null ? dig(values, ["base"]) ?? {} : figure;
  const count = figure.circle != null ? 0 : corners(over);
  const name = (i) => (letters ? String.fromCharCode(65 + (i % 26)) : String(i + 1));
  const all = Array.from({ length: count }, (_, i) => i);
  if (part === "corner") return all.map(name);
  return all.map((i) => name(i) + (letters ? "" : "-") + name((i + 1) % count));
}

function corners(figure) {
  if (Array.isArray(figure.corners)) return figure.corners.length;
  if (Array.isArray(figure.ties)) return figure.ties.length;
  return 4;
}

export function dig(values, at) {
  return at.reduce((below, step) => below?.[step], values);
}

// A place as faults name it: slab.flaw[0].line
export function pathOf(at) {
  return at.reduce((path, step) => (typeof step === "number" ? `${path}[${step}]` : path ? `${path}.${step}` : step), "");
}

function spoken(name) {
  const words = name.replaceAll("_", " ");
  return words[0].toUpperCase() + words.slice(1);
}

// Builds the form in an element. `changed(at, to)` hears of every change; `waits(at)` says whether a
// change of a place is still on its way.
export function form(root, steps, data, changed, waits) {
  let values = {};
  const nodes = [];
  const inches = () => dig(values, ["job", "units"]) === "in";

  // Sections that share a step; their keys are called by both names.
  const sharing = new Set(data.steps.flatMap((step) => {
    const sections = new Set([...step.first, ...step.rest].map((path) => path.split(".")[0]));
    return sections.size > 1 ? [...sections] : [];
  }));
  const titled = (at) => spoken(at.length === 2 && sharing.has(at[0]) ? at.join(", ") : at.findLast((one) => typeof one === "string"));

  for (const [i, step] of data.steps.entries()) {
    const id = `step-${i}`;
    const section = element("section", { className: "step", id });
    section.setAttribute("aria-labelledby", `${id}-name`);
    section.append(element("h2", { id: `${id}-name` }, step.name));
    const link = element("a", { href: `#${id}` }, step.name);
    steps.append(element("li", {}, link, element("span", { className: "count" })));
    nodes.push(...listing(section, step.first, (path) => path.split(".")));
    if (step.rest.length) {
      const more = element("details", {}, element("summary", {}, step.first.length ? "More" : "Open"));
      more.firstChild.append(element("span", { className: "unseen" }, `: ${step.name}`), " ", element("span", { className: "count" }));
      nodes.push(...listing(more, step.rest, (path) => path.split(".")));
      section.append(more);
    }
    root.append(section);
  }

  // Fields for several keys; those of which one is needed stand behind a choice.
  function listing(into, paths, placeOf) {
    const nodes = [];
    const done = new Set();
    for (const path of paths) {
      if (done.has(path)) continue;
      const key = data.keys[path];
      if (!key.one_of) {
        const node = block(path, placeOf(path));
        nodes.push(node);
        into.append(node.el);
        continue;
      }
      const under = path.slice(0, path.length - key.name.length);
      const ways = key.one_of.split(", ").map((way) => way.split(" with ").map((name) => under + name));
      ways.flat().forEach((one) => done.add(one));
      const node = oneOf(ways, placeOf);
      nodes.push(node);
      into.append(node.el);
    }
    return nodes;
  }

  function oneOf(ways, placeOf) {
    const id = `f${++made}`;
    const select = element("select", { id });
    ways.forEach((way, i) => select.append(element("option", { value: String(i) }, way.map((p) => spoken(data.keys[p].name)).join(" with "))));
    const el = element("div", { className: "group" }, element("div", { className: "field" }, element("label", { htmlFor: id }, "Given by "), select));
    const parts = ways.map((way) => way.map((path) => block(path, placeOf(path))));
    parts.flat().forEach((part) => el.append(part.el));
    const has = (way) => way.some((path) => dig(values, placeOf(path)) != null);
    const show = () => parts.forEach((nodes, i) => nodes.forEach((node) => { node.el.hidden = String(i) !== select.value && !has(ways[i]); }));
    select.addEventListener("change", () => {
      ways.forEach((way, i) => {
        if (String(i) === select.value) return;
        way.filter((path) => dig(values, placeOf(path)) != null).forEach((path) => {
          changed(placeOf(path), null);
        });
        parts[i].forEach((node) => { node.el.hidden = true; });
      });
      parts[Number(select.value)].forEach((node) => { node.el.hidden = false; });
    });
    select.addEventListener("input", (event) => event.stopPropagation());
    return {
      el,
      fill: () => {
        const given = ways.findIndex(has);
        if (given >= 0 && !has(ways[Number(select.value)])) select.value = String(given);
        parts.flat().forEach((node) => node.fill());
        show();
      },
    };
  }

  function block(path, at) {
    const key = data.keys[path];
    if (key.kind.is === "sections") return sections(key, at);
    if (key.kind.is === "section") return section(key, at);
    return leaf(path, key, at);
  }

  function section(key, at) {
    const el = element("fieldset", {}, element("legend", {}, spoken(key.name)), element("p", { className: "is" }, key.is));
    el.dataset.path = pathOf(at);
    const nodes = listing(el, key.kind.keys, (path) => [...at, data.keys[path].name]);
    return { el, fill: () => nodes.forEach((node) => node.fill()) };
  }

  // Several of a kind: discs, flaws, openings.
  function sections(key, at) {
    const name = spoken(key.name);
    const body = element("div");
    const more = element("button", { type: "button", className: "small" }, `Add: ${key.name.replaceAll("_", " ")}`);
    const el = element("div", { className: "group" }, element("p", { className: "is" }, `${name}: ${key.is}`), body, more);
    el.dataset.path = pathOf(at);
    let inside = [];
    const count = () => (Array.isArray(dig(values, at)) ? dig(values, at).length : 0);
    const build = () => {
      inside = Array.from({ length: count() }, (_, i) => one(i));
      body.replaceChildren(...inside.map((node) => node.el));
    };
    const one = (i) => {
      const here = [...at, i];
      const el = element("fieldset", {}, element("legend", {}, `${name} ${i + 1}`));
      el.dataset.path = pathOf(here);
      const nodes = listing(el, key.kind.keys, (path) => [...here, data.keys[path].name]);
      const away = element("button", { type: "button", className: "small" }, "remove");
      away.setAttribute("aria-label", `remove ${name} ${i + 1}`);
      away.addEventListener("click", () => { changed(here, null); more.focus(); });
      el.append(away);
      return { el, fill: () => nodes.forEach((node) => node.fill()) };
    };
    more.addEventListener("click", () => {
      changed([...at, count()], {});
      wanted = pathOf([...at, count()]);
    });
    let wanted = "";
    return {
      el,
      fill: () => {
        if (inside.length !== count()) build();
        inside.forEach((node) => node.fill());
        const new_one = wanted && [...body.children].find((child) => child.dataset.path === wanted);
        if (new_one) {
          wanted = "";
          new_one.querySelector("input, select")?.focus();
        }
      },
    };
  }

  function leaf(path, key, at) {
    const id = `f${++made}`;
    const owner = at.slice(0, -1);
    const edges = ["slab.factory", "slab.sawn", "slab.rough"].includes(path);
    const labels = { "slab.sides": ["AB", "BC", "CD", "DA"] }[path]
      ?? (key.name === "rectangle" ? ["length", "depth"] : key.name === "reach" ? ["shortest", "longest"] : undefined);
    const letters = (i) => String.fromCharCode(65 + (i % 26));
    const about = {
      label: titled(at),
      example: ["word", "flag"].includes(key.kind.is) ? "" : key.example.replace(/^\[?"?|"?\]?$/g, "").split(",")[0],
      edges,
      labels,
      rowLabel: ["slab.corners", "slab.ties"].includes(path) ? letters : undefined,
      names: (part) => names(values, owner, part),
      unit: () => (inches() ? "in" : "mm"),
    };
    const input = field(key.kind, about);
    const el = element("div", { className: "field" });
    el.dataset.path = pathOf(at);
    const name = element("span", { className: "name", id: `${id}-name` }, about.label);
    const is = element("span", { className: "is", id: `${id}-is` }, key.is);
    const hint = element("p", { className: "hint", id: `${id}-hint` });
    const fault = element("div", { className: "faults", id: `${id}-fault` });
    el.setAttribute("role", "group");
    el.setAttribute("aria-labelledby", name.id);
    el.append(element("p", {}, name, " ", is), input.el, hint, fault);
    const controls = () => el.querySelectorAll("input, select, textarea");
    const tie = () => controls().forEach((one) => one.setAttribute("aria-describedby", [is, hint, fault].map((e) => e.id).join(" ")));
    el.addEventListener("input", () => { tie(); changed(at, input.get()); });
    // What came while somebody was in it.
    el.addEventListener("focusout", (event) => { if (!el.contains(event.relatedTarget)) fill(); });
    const fill = () => {
      const range = key.range[inches() ? 1 : 0];
      const given = dig(values, at) ?? null;
      const left = key.left_out && given === null && `Left out: ${key.left_out}.`;
      hint.textContent = [range && `${range}.`, left].filter(Boolean).join(" ");
      hint.hidden = !hint.textContent;
      // How a drawing is measured is asked when there is one.
      if (key.name.startsWith("shape_")) el.hidden = given === null && dig(values, [...owner, "shape"]) == null;
      const busy = el.contains(document.activeElement) && document.activeElement.tagName !== "BUTTON";
      if (!busy && !waits(at)) {
        input.refresh();
        if (!same(given, input.get())) input.set(given);
      }
      tie();
    };
    return { el, fill };
  }

  // The block of a key, or the nearest that holds it.
  function blockOf(path) {
    const blocks = [...root.querySelectorAll("[data-path]")];
    const plain = (text) => text.replace(/\[\d+\]/g, "");
    for (let rest = path; rest; rest = rest.replace(/(\.[^.[]+|\[\d+\]|^[^.[]+)$/, "")) {
      const found = blocks.find((b) => b.dataset.path === rest) ?? blocks.find((b) => plain(b.dataset.path) === plain(rest));
      if (found) return found;
      const under = blocks.find((b) => b.dataset.path.startsWith(`${rest}.`) && rest === path);
      if (under) return under;
    }
    return null;
  }

  function go(path) {
    const block = blockOf(path);
    if (!block) return;
    for (let up = block; up && up !== root; up = up.parentElement) {
      if (up.tagName === "DETAILS") up.open = true;
      up.hidden = false;
    }
    const control = block.querySelector("input, select, button");
    block.scrollIntoView({ block: "center" });
    control?.focus({ preventScroll: true });
  }

  // Puts each fault beside its field; those that have none are given back.
  function faults(said) {
    root.querySelectorAll(".fault").forEach((old) => old.remove());
    root.querySelectorAll("[aria-invalid]").forEach((one) => one.removeAttribute("aria-invalid"));
    const homeless = [];
    for (const one of said) {
      const block = one.key && blockOf(one.key);
      if (!block) {
        homeless.push(one);
        continue;
      }
      const home = block.querySelector(":scope > .faults") ?? block;
      home.append(told(one));
      const controls = block.classList.contains("field") ? block.querySelectorAll("input, select") : [];
      if (one.severity === "fault") controls.forEach((c) => c.setAttribute("aria-invalid", "true"));
      for (let up = block; up && up !== root; up = up.parentElement) up.hidden = false;
    }
    counts();
    return homeless;
  }

  function counts() {
    const words = (within) => {
      const count = within.querySelectorAll(".fault:not(.remark)").length;
      return count ? ` (${count} to mend)` : "";
    };
    root.querySelectorAll("details").forEach((more) => { more.querySelector(".count").textContent = words(more); });
    root.querySelectorAll(".step").forEach((step, i) => { steps.children[i].querySelector(".count").textContent = words(step); });
  }

  return {
    faults,
    go,
    meaning: (path) => (data.keys[path] ? `${titled(path.split("."))}: ${data.keys[path].is}` : path),
    fill: (seen) => {
      values = seen;
      nodes.forEach((node) => node.fill());
    },
  };
}

// A fault in the words of `check`.
export function told(one) {
  const line = element("p", { className: `fault ${one.severity === "remark" ? "remark" : ""}` }, one.message);
  if (one.hint) line.append(element("span", { className: "do" }, ` → ${one.hint}`));
  return line;
}
