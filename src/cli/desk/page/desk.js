// The desk: holds the text of the job file, sends what is typed, shows what comes back.

import { drawing, picture, room } from "./drawing.js";
import { element, same } from "./fields.js";
import { form, pathOf } from "./form.js";
import { outcome, under } from "./under.js";

const find = (id) => document.getElementById(id);
// So long after the last key the text is planned again, ms (judgement: a pause, not a wait).
const PAUSE = 200;

const desk = {
  text: "",
  saved: "",
  version: "",
  new: false,
  seen: null,
  // Changes that are not yet sent, and those on their way.
  waiting: [],
  sent: [],
  busy: null,
  timer: 0,
  // Texts before each change, and the changes since the file was read; null when the text was changed
  // by hand, so that they cannot be made again on another text.
  before: [],
  since: [],
};

async function ask(what, body) {
  const given = body === undefined ? {} : { method: "POST", body: JSON.stringify(body), headers: { "Content-Type": "application/json" } };
  let answer;
  try {
    answer = await fetch(what, given);
  } catch {
    throw new Error("the program does not answer; was it ended?");
  }
  if (!answer.ok) throw Object.assign(new Error(await answer.text()), { status: answer.status });
  return answer.json();
}

function changed(at, to) {
  const path = pathOf(at);
  const whole = to === null || typeof to === "object";
  const last = desk.waiting.findLastIndex((change) => pathOf(change.at) === path);
  // Sections are added and removed one after the other; a field only ends as it was typed last.
  if (last >= 0 && !(whole && typeof at.at(-1) === "number")) desk.waiting.splice(last, 1);
  desk.waiting.push({ at, to });
  state();
  later();
}

function later() {
  clearTimeout(desk.timer);
  desk.timer = setTimeout(settle, PAUSE);
}

// Sends what waits until nothing does.
async function settle() {
  clearTimeout(desk.timer);
  while (desk.busy) await desk.busy;
  if (!desk.waiting.length && desk.seen?.text === desk.text) return;
  desk.busy = look();
  const answered = await desk.busy;
  desk.busy = null;
  if (answered && desk.waiting.length) await settle();
}

// Has the text looked at with what waits; whether there was an answer.
async function look() {
  desk.sent = desk.waiting;
  desk.waiting = [];
  const { text, sent } = desk;
  try {
    const seen = await ask("look", { text, changes: sent, room_mm: room(find("answer")) });
    desk.sent = [];
    // The text was changed by hand meanwhile: what was typed in the form is put into that one.
    if (desk.text !== text) {
      desk.waiting.unshift(...sent);
      return true;
    }
    if (sent.length && seen.text !== text) {
      desk.before.push(text);
      desk.since?.push(...sent);
    }
    desk.text = seen.text;
    desk.seen = seen;
    show(seen);
    return true;
  } catch (fault) {
    notice(fault.message);
    // What was not heard is asked again with the next change.
    if (!fault.status) desk.waiting.unshift(...sent);
    return fault.status !== undefined;
  } finally {
    desk.sent = [];
    state();
  }
}

const waits = (at) => desk.waiting.concat(desk.sent).some((change) => same(change.at, at));

function show(seen) {
  const readable = seen.values !== null;
  find("form").inert = !readable;
  if (readable) page.form.fill(seen.values);
  else find("whole").open = true;
  const homeless = page.form.faults(seen.said);
  page.drawing.show(seen.drawing, seen.values ?? {});
  under(find("under"), seen, homeless, page.form);
  say(find("outcome"), outcome(seen));
  say(find("below"), `${outcome(seen)} See the drawing`);
  for (const button of document.querySelectorAll("#sheet button")) button.disabled = seen.outcome !== "fits";
  if (document.activeElement !== find("text")) find("text").value = desk.text;
  state();
}

// Only what is new is said, so that it is not read out again and again.
function say(el, words) {
  if (el.textContent !== words) el.textContent = words;
}

function state() {
  const kept = desk.text === desk.saved && !desk.waiting.length && !desk.sent.length;
  const words = desk.new && kept ? "A new job: nothing is written yet" : kept ? "Saved" : "Not saved yet";
  say(find("state"), words);
  find("save").disabled = find("save-below").disabled = kept && !desk.new;
  find("undo").disabled = !desk.before.length;
}

function notice(words, ...buttons) {
  const el = find("notice");
  el.hidden = !words;
  el.replaceChildren(element("p", {}, words));
  const close = ["Close", () => notice("")];
  const row = element("div", { className: "buttons" });
  for (const [name, act] of [...buttons, close]) {
    const button = element("button", { type: "button" }, name);
    button.addEventListener("click", act);
    row.append(button);
  }
  el.append(row);
}

async function read() {
  const file = await ask("file");
  Object.assign(desk, { text: file.text, saved: file.text, version: file.version, new: file.new, before: [], since: [], seen: null });
  find("name").textContent = file.name;
  document.title = `${file.name} – kerfwright desk`;
  await settle();
}

async function save() {
  await settle();
  const { text } = desk;
  try {
    const { version } = await ask("save", { text, version: desk.version });
    Object.assign(desk, { saved: text, version, new: false, since: [] });
    notice("");
    state();
  } catch (fault) {
    if (fault.status === 409) older(fault.message);
    else notice(fault.message);
  }
}

// The file was changed elsewhere: nothing is lost by itself, neither there nor here.
function older(words) {
  const again = ["Read it again, and put the changes made here on it", async () => {
    const changes = desk.since;
    notice("");
    await read();
    desk.waiting.push(...changes);
    await settle();
  }];
  const without = ["Read it again without the changes made here", async () => { notice(""); await read(); }];
  notice(`${words}.`, ...(desk.since?.length ? [again] : []), without);
}

async function end() {
  await settle();
  if (desk.text !== desk.saved && !window.confirm("What was changed is not saved. End all the same?")) return;
  desk.saved = desk.text;
  try {
    await ask("end", {});
  } catch {
    // It has ended already.
  }
  document.body.replaceChildren(element("main", { className: "left" }, element("h1", {}, "The desk has ended"), element("p", {}, "This window can be closed.")));
}

async function undo() {
  await settle();
  desk.text = desk.before.pop() ?? desk.text;
  desk.since = null;
  await settle();
}

async function places() {
  await settle();
  const el = find("others");
  el.hidden = false;
  el.replaceChildren(element("p", { role: "status" }, "Looking for other places …"));
  try {
    const found = await ask("places", { text: desk.text, room_mm: room(find("answer")) });
    el.replaceChildren(element("h3", {}, "Places of the top on the slab"));
    for (const place of found) {
      const take = element("button", { type: "button" }, "Take this place");
      take.addEventListener("click", () => {
        place.changes.forEach((change) => changed(change.at, change.to));
        el.hidden = true;
        find("places").focus();
        settle();
      });
      const drawn = element("div");
      el.append(element("article", {}, drawn, element("pre", {}, place.told.join("\n")), take));
      picture(place.drawing, drawn);
    }
    const free = element("button", { type: "button" }, "Let the program search again");
    free.addEventListener("click", () => {
      ["at", "turn"].forEach((name) => changed(["place", name], null));
      el.hidden = true;
      find("places").focus();
    });
    el.append(free);
  } catch (fault) {
    notice(fault.message);
  }
}

// The sheet opens in a window of its own, from the text as it is now.
async function sheet(event) {
  const form = find("sheet");
  event.preventDefault();
  form.elements.pages.value = event.submitter?.value ?? "bench";
  await settle();
  form.elements.text.value = desk.text;
  form.submit();
}

// A file that was changed elsewhere is read again when nothing was changed here.
async function returned() {
  try {
    const file = await ask("file");
    if (file.version === desk.version) return;
    if (desk.text === desk.saved && !desk.waiting.length) await read();
    else older("the file was changed elsewhere; what was changed here is not saved yet");
  } catch {
    // It is said when something is asked for.
  }
}

const page = {};

// From the form to the drawing, and back to where one was.
function over() {
  const there = find("answer");
  if (!there.contains(document.activeElement)) (there.querySelector("[data-part]") ?? there).focus();
  else (page.left?.isConnected ? page.left : find("form")).focus();
}

async function begin() {
  const data = await ask("form");
  page.form = form(find("form"), find("steps"), data, changed, waits);
  page.drawing = drawing(find("drawing"), find("part"), data.keys, changed, page.form.go);
  await read();
  find("save").addEventListener("click", save);
  find("save-below").addEventListener("click", save);
  find("undo").addEventListener("click", undo);
  find("end").addEventListener("click", end);
  find("places").addEventListener("click", places);
  find("sheet").addEventListener("submit", sheet);
  find("text").addEventListener("input", () => {
    desk.text = find("text").value;
    desk.since = null;
    later();
    state();
  });
  document.addEventListener("keydown", (event) => {
    const act = (event.ctrlKey || event.metaKey) && { s: save, enter: over }[event.key.toLowerCase()];
    if (!act) return;
    event.preventDefault();
    act();
  });
  find("form").addEventListener("focusin", (event) => { page.left = event.target; });
  window.addEventListener("focus", returned);
  window.addEventListener("beforeunload", (event) => {
    if (desk.text !== desk.saved || desk.waiting.length) event.preventDefault();
  });
}

begin().catch((fault) => notice(fault.message));
