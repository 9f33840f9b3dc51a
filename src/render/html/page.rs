//! The page: its frame, what stops the job, the sections.

use crate::document::block::{Block, Document, Section};
use crate::render::html::markup::Markup;
use crate::render::html::screen::{Content, Screen, screens};
use crate::render::html::setting::Setting;
use crate::words::{Language, Message, Notation, Value, Writer};

const STYLE: &str = include_str!("page.css");

const SCRIPT: &str = include_str!("page.js");

/// Nothing may be loaded from anywhere.
const POLICY: &str = "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'";

/// Name of the screen that says what to do when something goes wrong, and of the contents.
const STOP: &str = "stop";

const CONTENTS: &str = "contents";

/// Drawn on the buttons: three lines, half a disc, an arrow to the left and one to the right.
const LINES: &str = "M3 6h18M3 12h18M3 18h18";

const HALF: &str = "M12 3a9 9 0 1 0 0 18a9 9 0 1 0 0-18zM12 3v18M14 6v12M16 7v10M18 9v6";

const LEFT: &str = "M15 4l-8 8l8 8";

const RIGHT: &str = "M9 4l8 8l-8 8";

/// The document as an HTML file. It is well-formed XML as well.
#[must_use]
pub fn page(document: &Document) -> String {
    let first = document.sections.first();
    let language = first.map_or(Language::English, |s| s.language);
    let page = Page {
        document,
        screens: screens(document),
        writer: Writer::new(document.system, language),
        halted: first.is_some_and(|s| s.blocks.iter().any(stops)),
    };
    let mut out = Markup::default();
    out.raw("<!DOCTYPE html>\n");
    out.open("html", &[("lang", language.tag())]);
    page.head(&mut out);
    page.body(&mut out);
    out.close("html");
    out.finish()
}

fn stops(block: &Block) -> bool {
    matches!(block, Block::Notices(all) if all.iter().any(|n| n.stop))
}

struct Page<'a> {
    document: &'a Document,
    screens: Vec<Screen<'a>>,
    /// Writes what stands round the screens.
    writer: Writer,
    /// True when a stop stands against the job.
    halted: bool,
}

impl Page<'_> {
    fn head(&self, out: &mut Markup) {
        out.open("head", &[]);
        out.void("meta", &[("charset", "utf-8")]);
        let metas = [
            ("viewport", "width=device-width, initial-scale=1"),
            ("color-scheme", "light dark"),
            ("format-detection", "telephone=no"),
        ];
        for (name, content) in metas {
            out.void("meta", &[("name", name), ("content", content)]);
        }
        let policy = ("content", POLICY);
        out.void("meta", &[("http-equiv", "Content-Security-Policy"), policy]);
        out.element("title", &[], &self.document.title);
        out.open("style", &[]);
        out.raw(STYLE);
        out.close("style");
        out.close("head");
    }

    fn body(&self, out: &mut Markup) {
        let plan = self.document.fingerprint.as_str();
        let asked = self.writer.text("phone-clear");
        out.open("body", &[("data-plan", plan), ("data-clear", &asked)]);
        self.top(out);
        out.open("main", &[]);
        self.contents(out);
        for screen in &self.screens {
            self.screen(screen, out);
        }
        self.stop(out);
        out.close("main");
        self.bar(out);
        out.open("script", &[]);
        out.raw(&format!("/*<![CDATA[*/\n{SCRIPT}/*]]>*/"));
        out.close("script");
        out.close("body");
    }

    /// What every screen has above it.
    fn top(&self, out: &mut Markup) {
        out.open("header", &[]);
        out.open("div", &[]);
        out.element("h1", &[], &self.document.title);
        let plan = ("plan", Value::name(self.document.fingerprint.clone()));
        let mut words = self.writer.say(&Message::new("phone-plan", [plan]));
        if !self.document.date.is_empty() {
            let date = Notation::of(self.writer.language).date(&self.document.date);
            words = format!("{words} · {date}");
        }
        out.element("p", &[], &words);
        out.close("div");
        let list = self.writer.text("phone-contents");
        out.open("a", &[("href", "#contents")]);
        icon(LINES, out);
        out.element("span", &[("class", "unseen")], &list);
        out.open("span", &[("id", "at")]);
        out.close("span");
        out.close("a");
        self.button("light", "phone-light", HALF, false, out);
        out.close("header");
    }

    /// A button that only a script makes work, hidden until then.
    fn button(&self, id: &str, name: &str, drawn: &str, worded: bool, out: &mut Markup) {
        let words = self.writer.text(name);
        let mut attributes = vec![("type", "button"), ("id", id), ("hidden", "")];
        if !worded {
            attributes.push(("aria-label", &words));
        }
        out.open("button", &attributes);
        icon(drawn, out);
        if worded {
            out.text(&words);
        }
        out.close("button");
    }

    fn contents(&self, out: &mut Markup) {
        let name = self.writer.text("phone-contents");
        out.open(
            "nav",
            &[
                ("id", CONTENTS),
                ("class", "screen"),
                ("aria-labelledby", "list"),
            ],
        );
        out.element("h2", &[("id", "list"), ("tabindex", "-1")], &name);
        out.open("ol", &[]);
        for screen in &self.screens {
            out.open("li", &[]);
            let language = screen.section.language.tag();
            let link = format!("#{}", screen.id);
            out.open("a", &[("href", &link), ("lang", language)]);
            for number in screen.numbers {
                out.element("span", &[("class", "ring")], &number.to_string());
            }
            out.element("span", &[("class", "name")], &screen.name);
            out.close("a");
            out.close("li");
        }
        out.close("ol");
        let warning = self.writer.text("phone-forgets");
        out.element("p", &[("id", "forgets"), ("hidden", "")], &warning);
        let clear = self.writer.text("phone-clear");
        let attributes = [("type", "button"), ("id", "clear"), ("hidden", "")];
        out.element("button", &attributes, &clear);
        out.close("nav");
    }

    fn screen(&self, screen: &Screen<'_>, out: &mut Markup) {
        let section = screen.section;
        let class = if screen.numbers.is_empty() {
            "screen"
        } else {
            "screen cut"
        };
        let language = ("lang", section.language.tag());
        let named = ("aria-label", &*screen.name);
        out.open(
            "section",
            &[("id", &screen.id), ("class", class), language, named],
        );
        let first = self.screens.first().map_or("", |s| &s.id);
        if self.halted && screen.id != first {
            self.halt(first, out);
        }
        let mut setting = self.setting(section, &screen.id);
        match screen.content {
            // A screen that paper sets below another section has a heading for its title.
            Content::Blocks([Block::Heading(text), rest @ ..]) => {
                setting.title(&[], text);
                setting.blocks(rest);
            }
            Content::Blocks([Block::Beside(_, left, right), rest @ ..]) => {
                if let [Block::Heading(text), left @ ..] = &left[..] {
                    setting.title(&[], text);
                    setting.blocks(left);
                } else {
                    setting.blocks(left);
                }
                setting.blocks(right);
                setting.blocks(rest);
            }
            Content::Blocks(blocks) => setting.blocks(blocks),
            Content::Card(card) => setting.card(card),
        }
        end(setting, section, out);
        out.close("section");
    }

    /// A stop stands against the job: said on every screen, with the way to it.
    fn halt(&self, first: &str, out: &mut Markup) {
        out.open(
            "p",
            &[("class", "halt"), ("lang", self.writer.language.tag())],
        );
        let words = self.writer.text("helper-stopped");
        out.element("a", &[("href", &format!("#{first}"))], &words);
        out.close("p");
    }

    fn setting(&self, section: &Section, name: &str) -> Setting {
        let writer = Writer::new(self.document.system, section.language);
        Setting::new(writer, section.reading, name)
    }

    fn stop(&self, out: &mut Markup) {
        let name = self.writer.text("bench-stop");
        out.open(
            "section",
            &[("id", STOP), ("class", "screen"), ("aria-label", &name)],
        );
        for section in &self.document.stop {
            out.open("div", &[("lang", section.language.tag())]);
            let mut setting = self.setting(section, STOP);
            setting.blocks(&section.blocks);
            end(setting, section, out);
            out.close("div");
        }
        out.close("section");
    }

    /// What every screen has below it: back, stop, the helper's page, on.
    fn bar(&self, out: &mut Markup) {
        let name = self.writer.text("phone-bar");
        out.open("nav", &[("class", "bar"), ("aria-label", &name)]);
        self.button("back", "phone-back", LEFT, true, out);
        let stop = self.writer.text("bench-stop");
        out.element("a", &[("class", "stop"), ("href", "#stop")], &stop);
        if let Some(helper) = self.screens.iter().find(|s| s.is_helpers()) {
            let writer = Writer::new(self.document.system, helper.section.language);
            let words = writer.text("helper-place-helper");
            let link = format!("#{}", helper.id);
            let language = ("lang", helper.section.language.tag());
            out.element("a", &[("href", &link), language], &words);
        }
        self.button("next", "phone-next", RIGHT, true, out);
        out.close("nav");
    }
}

/// A screen as it was written, and the line to end on.
fn end(setting: Setting, section: &Section, out: &mut Markup) {
    let foot = setting.writer.say(&section.foot);
    out.raw(&setting.markup.finish());
    out.element("p", &[("class", "foot")], &foot);
}

fn icon(path: &str, out: &mut Markup) {
    out.open("svg", &[("viewBox", "0 0 24 24"), ("aria-hidden", "true")]);
    out.void("path", &[("d", path)]);
    out.close("svg");
}
