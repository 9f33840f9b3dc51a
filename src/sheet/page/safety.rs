//! Dust and safety, in the language of the job.
//!
//! The fixed words are in the catalogues (`words/en/safety.toml`), findings in their phrases.

use super::body;
use super::protection::{self, Row, row};
use crate::diag::Finding;
use crate::hazard::Hazards;
use crate::hazard::protective::ProtectiveItem;
use crate::hazard::respirator::Required;
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::page::glance::sentence;
use crate::sheet::table::{Heading, Table, Width};
use crate::tables::dust_control::{Control, TableAnswer};
use crate::tables::protective as sign;
use crate::tables::region::{SilicaLimit, Standing};
use crate::words::{Catalogue, Language};

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let (plan, words) = (book.plan, book.words);
    let text = |id: &str| words.say(&format!("safety.{id}"), &[]);
    let mut parts = vec![Block::Heading(text("title")).into()];
    if words.language != Language::English {
        let standing = words.standing().into_iter();
        parts.extend(standing.map(|line| Block::Note(line).into()));
        parts.extend(stops(plan, words));
    }
    parts.extend(numbers(&plan.hazards, words));
    parts.push(Block::Heading(text("cautions")).into());
    parts.push(Block::Subheading(text("tick")).into());
    parts.extend(cautions(plan, words));
    let scale = Scale {
        notice_words: words.notice(),
        ..Scale::DESK
    };
    book.flow(words.text("safety.name"), scale, &parts);
}

/// The stops again, which stand in English on page 1.
fn stops(plan: &Plan, words: &'static Catalogue) -> Vec<Part> {
    let heading = Block::Subheading(words.say("safety.stops", &[]));
    let mut parts: Vec<Part> = plan.stops.iter().map(|s| stop(s, words)).collect();
    if !parts.is_empty() {
        parts.insert(0, heading.into());
    }
    parts
}

/// Title, detail and source of a finding, in the language of the page where it can say them.
fn words_of(finding: &Finding, words: &Catalogue) -> [String; 3] {
    let [title, detail] = words.said(&finding.said);
    let source = [("source", words.source(&finding.source))];
    [
        sentence(&title),
        detail,
        words.say("safety.source", &source),
    ]
}

fn stop(finding: &Finding, words: &Catalogue) -> Part {
    let [title, detail, source] = words_of(finding, words);
    Block::Notice(Grade::Stop, title, vec![detail, source]).into()
}

/// The cautions to tick; neighbours that differ in their titles alone are one entry.
fn cautions(plan: &Plan, words: &Catalogue) -> Vec<Part> {
    let mut entries: Vec<[String; 3]> = Vec::new();
    for [title, detail, source] in plan.cautions.iter().map(|c| words_of(c, words)) {
        match entries.last_mut() {
            Some([titles, same, from]) if *same == detail && *from == source => {
                titles.push('\n');
                titles.push_str(&title);
            }
            _ => entries.push([title, detail, source]),
        }
    }
    let part = |[titles, detail, source]: [String; 3]| Block::Ticked(titles, detail, source).into();
    entries.into_iter().map(part).collect()
}

/// Everything but the findings.
fn numbers(h: &Hazards, words: &Catalogue) -> Vec<Part> {
    let text = |id: &str| words.say(&format!("safety.{id}"), &[]);
    let heading = |id: &str| Block::Subheading(text(id)).into();
    let dust = [dust_rows(h, words), protection::rule_rows(h, words)].concat();
    let wear = h
        .protective
        .iter()
        .map(|p| wear_words(p, h, words))
        .collect();
    vec![
        Block::Rows(dust).into(),
        Block::Note(limit_words(&h.silica.limit, words)).into(),
        Block::Note(text("grams")).into(),
        heading("order.heading"),
        protection::order_table(h, words).into(),
        heading("mask.heading"),
        Block::Rows(protection::respirator_rows(h, words)).into(),
        heading("body.heading"),
        Block::Rows(body::rows(h, words)).into(),
        Block::Note(body::values_words(h, words)).into(),
        heading("disc.heading"),
        disc_table(h, words).into(),
        heading("wear.heading"),
        Block::List(Mark::Square, wear).into(),
        heading("measured.heading"),
        measured_table(h, words).into(),
    ]
}

/// A range of grams: `980–1100 g`, in kilograms from ten of them on.
#[must_use]
pub fn grams(range: &crate::job::Range) -> String {
    let (low, high, unit) = if range.high < 10_000.0 {
        (
            format!("{:.0}", range.low),
            format!("{:.0}", range.high),
            "g",
        )
    } else {
        let kg = |g: f64| format!("{:.1}", g / 1000.0);
        (kg(range.low), kg(range.high), "kg")
    };
    if low == high {
        format!("{low} {unit}")
    } else {
        format!("{low}–{high} {unit}")
    }
}

fn dust_rows(h: &Hazards, words: &Catalogue) -> Vec<Row> {
    let control = match h.dust.control {
        Control::Water => "water",
        Control::Extraction => "extraction",
        Control::Nothing => "nothing",
    };
    let hours = format!("{:.1} h", h.dust.task_hours);
    let mut rows = vec![
        row(words, "dust", words.value(&grams(&h.silica.dust_g))),
        row(words, "silica", words.value(&grams(&h.silica.silica_g))),
        row(
            words,
            "held",
            words.say(&format!("safety.held.{control}"), &[]),
        ),
        row(words, "hours", words.value(&hours)),
    ];
    if let Some(answer) = h.dust.table_answer {
        let said = match answer {
            TableAnswer::NoRespirator => words.say("safety.table.no_respirator", &[]),
            TableAnswer::Apf(apf) => words.say("safety.table.factor", &[("apf", apf.to_string())]),
            TableAnswer::NotInTable => words.say("safety.table.not_listed", &[]),
        };
        rows.push(row(words, "table", said));
    }
    rows
}

/// The limit with its document, and what is to replace it.
fn limit_words(limit: &SilicaLimit, words: &Catalogue) -> String {
    let say = |id: &str, values: &[(&'static str, String)]| {
        words.say(&format!("safety.limit.{id}"), values)
    };
    let action = limit.action_mg_m3.map_or_else(String::new, |level| {
        say("action", &[("level", level.to_string())])
    });
    let borrowed = match limit.standing {
        Standing::Own => String::new(),
        Standing::Borrowed => say("borrowed", &[]),
    };
    let change = limit.change.map_or_else(String::new, |change| {
        let on = words.term(change.on_words);
        say("change", &[("by", words.term(change.by)), ("on", on)])
    });
    let values = [
        ("limit", limit.limit_mg_m3.to_string()),
        ("action", action),
        ("borrowed", borrowed),
        ("source", words.source(&limit.source.cite())),
        ("change", change),
    ];
    say("text", &values)
}

/// One thing to wear, its sign and why.
fn wear_words(item: &ProtectiveItem, h: &Hazards, words: &Catalogue) -> String {
    let say = |id: &str, values: &[(&'static str, String)]| {
        words.say(&format!("safety.wear.{id}"), values)
    };
    let (what, why) = match item.sign {
        Some(sign::BREATHING) => {
            let what = match h.respirator.required {
                Required::AtLeast(apf) => say("mask_factor", &[("apf", apf.to_string())]),
                Required::MustBeAssessed => say("mask_assess", &[]),
                Required::NoneAsked => say("mask_ready", &[]),
            };
            let mask = h.respirator.at_hand.to_owned();
            (what, say("mask_why", &[("mask", mask)]))
        }
        Some(sign::EAR) => {
            let level = format!("{:.0}", h.noise.level_db);
            (words.term(&item.what), say("ear_why", &[("level", level)]))
        }
        _ => (words.term(&item.what), words.term(&item.why)),
    };
    let mut values = vec![("what", sentence(&what)), ("why", why)];
    let Some(sign) = item.sign else {
        return say("item", &values);
    };
    values.push(("sign", sign.to_owned()));
    say("signed", &values)
}

fn disc_table(h: &Hazards, words: &Catalogue) -> Table {
    let rows = h.discs.iter().map(|d| {
        vec![
            d.name.clone(),
            words.value(&format!("{:.0} mm", d.diameter_mm)),
            words.value(&format!("{:.0}", d.machine_rpm)),
            words.value(&format!("{:.0}", d.marked_rpm)),
            words.value(&format!("{:.0} m/s", d.rim_speed_m_s)),
        ]
    });
    let title = |id: &str| words.say(&format!("safety.disc.{id}"), &[]);
    Table {
        headings: vec![
            Heading::words(title("disc"), Width::Part(1.0)),
            Heading::numbers(title("diameter"), Width::Mm(32.0)),
            Heading::numbers(title("machine"), Width::Mm(34.0)),
            Heading::numbers(title("marked"), Width::Mm(34.0)),
            Heading::numbers(title("rim"), Width::Mm(32.0)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.body,
    }
}

fn measured_table(h: &Hazards, words: &Catalogue) -> Table {
    let rows = h.measured.iter().map(|m| {
        vec![
            words.term(m.work),
            words.term(m.control),
            words.value(m.found),
            words.source(&m.source.cite()),
        ]
    });
    let title = |id: &str| words.say(&format!("safety.measured.{id}"), &[]);
    Table {
        headings: vec![
            Heading::words(title("work"), Width::Part(1.0)),
            Heading::words(title("control"), Width::Part(0.8)),
            Heading::words(title("found"), Width::Part(0.9)),
            Heading::words(title("study"), Width::Part(1.3)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.small,
    }
}
