// The fields of the form, one for each kind of value. A field has an element, gives what is typed in it
// (texts, lists of texts, texts by name; null for nothing) and takes what is to stand in it. Whatever
// happens in it, it lets its element know with an "input" event.

let made = 0;

export function element(name, given = {}, ...inside) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(given)) {
    if (key in made && key !== "list") made[key] = value;
    else made.setAttribute(key, value);
  }
  made.append(...inside);
  return made;
}

export function same(a, b) {
  return JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
}

// What stands in a file where a value is still to be filled in.
const open = (value) => value === "?";

function touched(el) {
  el.dispatchEvent(new Event("input", { bubbles: true }));
}

// A field for a kind; `about` holds its name for who cannot see it, the names of the figure's corners
// and edges, and the unit of bare lengths.
export function field(kind, about) {
  switch (kind.is) {
    case "flag":
      return choice([["true", "yes"], ["false", "no"]], about);
    case "word":
      return choice(kind.words.map((word) => [word, word]), about);
    case "point":
      return several([{ is: "length" }, { is: "length" }], ["x", "y"], about);
    case "list":
      return list(kind, about);
    case "named":
      return named(kind, null, about);
    case "either":
      return either(kind.kinds, about);
    default:
      return line(kind, about);
  }
}

function line(kind, about) {
  const input = element("input", { type: "text", autocomplete: "off" });
  input.setAttribute("aria-label", about.label);
  if (["length", "mass", "quantity", "number"].includes(kind.is)) input.inputMode = "text";
  const width = { text: "wide", name: "wide", date: "date" }[kind.is];
  if (width) input.classList.add(width);
  const unit = element("span", { className: "unit" });
  const el = element("span", { className: "one" }, input, unit);
  if (kind.words?.length) {
    const words = element("datalist", { id: `words-${++made}` });
    words.append(...kind.words.map((word) => element("option", { value: word })));
    input.setAttribute("list", words.id);
    el.append(words);
  }
  const refresh = () => {
    unit.textContent = { length: about.unit(), quantity: kind.unit, mass: about.unit() === "mm" ? "kg" : "" }[kind.is] ?? "";
    unit.hidden = !unit.textContent;
    const inches = about.unit() === "in" && kind.is === "length";
    input.placeholder = inches || !about.example ? "" : `such as ${about.example}`;
  };
  refresh();
  return {
    el,
    refresh,
    get: () => input.value.trim() || null,
    set: (value) => { input.value = value == null || open(value) ? "" : typeof value === "string" ? value : JSON.stringify(value); },
  };
}

function choice(words, about) {
  const select = element("select", {}, element("option", { value: "" }, "–"));
  select.setAttribute("aria-label", about.label);
  select.append(...words.map(([value, shown]) => element("option", { value }, shown)));
  return {
    el: element("span", { className: "one" }, select),
    refresh() {},
    get: () => select.value || null,
    set: (value) => {
      const wanted = typeof value === "string" && !open(value) ? value : "";
      if (![...select.options].some((o) => o.value === wanted)) select.append(element("option", { value: wanted }, wanted));
      select.value = wanted;
    },
  };
}

// A fixed number of fields side by side.
function several(kinds, labels, about) {
  const parts = kinds.map((kind, i) => field(kind, { ...about, example: "", label: `${about.label}, ${labels[i]}` }));
  const el = element("span", { className: "row" });
  parts.forEach((part, i) => el.append(element("span", { className: "one" }, element("span", { className: "unit" }, labels[i]), part.el)));
  return {
    el,
    refresh: () => parts.forEach((part) => part.refresh()),
    get: () => {
      const values = parts.map((part) => part.get());
      return values.every((v) => v === null) ? null : values.map((v) => v ?? "");
    },
    set: (value) => parts.forEach((part, i) => part.set(Array.isArray(value) ? value[i] : null)),
  };
}

function list(kind, about) {
  if (about.edges) return ticks(about);
  const loose = ["text", "either", "name"].includes(kind.of.is);
  if (loose) return commas(about);
  if (kind.least === kind.most) {
    const labels = about.labels ?? ["1st", "2nd", "3rd", "4th"];
    return several(Array(kind.most).fill(kind.of), labels, about);
  }
  return rows(kind.of, kind.least, kind.most, about);
}

// Names of edges, each to be ticked.
function ticks(about) {
  const el = element("span", { className: "names" });
  let names = [];
  const boxes = () => [...el.querySelectorAll("input")];
  const get = () => {
    const ticked = boxes().filter((box) => box.checked).map((box) => box.value);
    return ticked.length ? ticked : null;
  };
  const build = (wanted) => {
    names = wanted;
    el.replaceChildren(...names.map((name) => {
      const box = element("input", { type: "checkbox", value: name });
      box.setAttribute("aria-label", `${about.label}: ${name}`);
      return element("label", {}, box, name);
    }));
  };
  const set = (value) => {
    const ticked = Array.isArray(value) ? value : [];
    const wanted = [...about.names("edge"), ...ticked.filter((t) => !about.names("edge").includes(t))];
    if (!same(wanted, names)) build(wanted);
    boxes().forEach((box) => { box.checked = ticked.includes(box.value); });
  };
  build(about.names("edge"));
  return { el, get, set, refresh: () => set(get()) };
}

// Names with commas between them.
function commas(about) {
  const one = line({ is: "text" }, { ...about, example: (about.example ?? "").replace(/[[\]"]/g, "") });
  const get = () => {
    const parts = (one.get() ?? "").split(",").map((part) => part.trim()).filter(Boolean);
    return parts.length ? parts : null;
  };
  return { ...one, get, set: (value) => one.set(Array.isArray(value) ? value.join(", ") : value) };
}

// As many rows as are wanted.
function rows(kind, least, most, about) {
  const el = element("div");
  const body = element("div", { className: kind.is === "length" || kind.is === "mass" ? "rows short" : "rows" });
  const more = element("button", { type: "button", className: "small" }, "one more");
  more.setAttribute("aria-label", `${about.label}: one more`);
  el.append(body, more);
  let parts = [];
  const add = (value) => {
    const label = about.rowLabel?.(parts.length) ?? String(parts.length + 1);
    const part = field(kind, { ...about, example: parts.length ? "" : about.rowExample ?? "", label: `${about.label}, ${label}` });
    const away = element("button", { type: "button", className: "small" }, "×");
    away.setAttribute("aria-label", `${about.label}: remove ${label}`);
    const row = element("span", { className: "row" }, element("span", { className: "unit" }, label), part.el, away);
    away.addEventListener("click", () => {
      const values = parts.filter((p) => p !== part).map((p) => p.get());
      fill(values);
      more.focus();
      touched(el);
    });
    part.set(value);
    parts.push(part);
    body.append(row);
    return part;
  };
  const fill = (values) => {
    parts = [];
    body.replaceChildren();
    const count = Math.max(values.length, Math.max(least, 1));
    for (let i = 0; i < count; i += 1) add(values[i]);
    bound();
  };
  const bound = () => {
    more.disabled = parts.length >= most;
    body.querySelectorAll("button").forEach((away) => { away.hidden = parts.length <= Math.max(least, 1); });
  };
  more.addEventListener("click", () => {
    add(null).el.querySelector("input, select").focus();
    bound();
  });
  const get = () => {
    const values = parts.map((part) => part.get());
    while (values.length && values.at(-1) === null) values.pop();
    return values.length ? values.map((v) => v ?? "") : null;
  };
  fill([]);
  return {
    el,
    get,
    refresh: () => parts.forEach((part) => part.refresh()),
    set: (value) => { if (!same(get(), value)) fill(Array.isArray(value) ? value : value == null ? [] : [value]); },
  };
}

// A value for each named corner or edge, and perhaps one for all of them.
function named(kind, all, about) {
  const whole = all && field(all, { ...about, example: "", label: `${about.label}, all` });
  const grid = element("span", { className: "names" });
  const el = element("div");
  if (whole) el.append(element("span", { className: "row" }, element("span", { className: "unit" }, "all"), whole.el));
  el.append(grid);
  let parts = {};
  const build = (names) => {
    parts = {};
    grid.replaceChildren(...names.map((name) => {
      const part = field(kind.of, { ...about, example: "", label: `${about.label}, ${kind.part} ${name}` });
      parts[name] = part;
      return element("span", { className: "one" }, element("span", { className: "unit" }, name), part.el);
    }));
  };
  const get = () => {
    const each = Object.entries(parts).map(([name, part]) => [name, part.get()]);
    const rest = whole?.get() ?? null;
    if (each.every(([, value]) => value === null)) return rest;
    return Object.fromEntries(each.map(([name, value]) => [name, value ?? rest]).filter(([, value]) => value !== null));
  };
  const set = (value) => {
    const byName = value !== null && typeof value === "object" && !Array.isArray(value) ? value : {};
    const known = about.names(kind.part);
    const names = [...known, ...Object.keys(byName).filter((name) => !known.includes(name))];
    if (!same(names, Object.keys(parts))) build(names);
    whole?.set(typeof value === "string" ? value : null);
    for (const [name, part] of Object.entries(parts)) part.set(byName[name] ?? null);
  };
  build(about.names(kind.part));
  return { el, get, set, refresh: () => { set(get()); whole?.refresh(); Object.values(parts).forEach((part) => part.refresh()); } };
}

function either(kinds, about) {
  const byName = kinds.find((kind) => kind.is === "named");
  const many = kinds.find((kind) => kind.is === "list");
  const one = kinds.find((kind) => !["named", "list"].includes(kind.is));
  if (byName) return named(byName, one, about);
  if (many && one && same(many.of, one)) {
    const part = rows(one, 1, many.most, { ...about, rowExample: about.example });
    const get = () => {
      const values = part.get();
      return values?.length === 1 ? values[0] : values;
    };
    return { ...part, get, set: (value) => { if (!same(get(), value)) part.set(value); } };
  }
  if (!many) return line(one, about);
  const part = commas(about);
  const get = () => {
    const values = part.get();
    return values?.length === 1 ? values[0] : values;
  };
  return { ...part, get };
}
