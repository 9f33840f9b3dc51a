//! Dust and safety.

use crate::diag::Finding;
use crate::hazard::Hazards;
use crate::hazard::respirator::Required;
use crate::sheet::book::{Book, Part};
use crate::sheet::figure::time;
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::page::glance::sentence;
use crate::sheet::page::protection;
use crate::sheet::table::{Heading, Table, Width};
use crate::tables::dust_control::{Control, TableAnswer};
use crate::tables::respirator::Assigned;

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let h = &plan.hazards;
    let mut parts: Vec<Part> = vec![Block::Heading("Dust and safety".into()).into()];
    parts.push(Block::Rows([dust_rows(h), protection::rule_rows(h)].concat()).into());
    parts.push(Block::Note(sentence(&h.silica.limit_text)).into());
    parts.push(
        Block::Note(
            "The grams tell what must be caught. They do not predict what is in the air: no exposure \
             follows from them."
                .into(),
        )
        .into(),
    );
    parts.push(Block::Subheading("The order of controls".into()).into());
    parts.push(protection::order_table(h).into());
    parts.push(Block::Subheading("The mask, last".into()).into());
    parts.push(Block::Rows(protection::respirator_rows(h)).into());
    parts.push(Block::Subheading("Hands and ears".into()).into());
    parts.push(Block::Rows([body_rows(h), protection::day_rows(h)].concat()).into());
    parts.push(Block::Note(values_words(h)).into());
    parts.push(Block::Subheading("Disc".into()).into());
    parts.push(disc_table(h).into());
    parts.push(Block::Subheading("Wear".into()).into());
    let wear = h.protective.iter().map(|p| {
        let sign = p.sign.map_or_else(String::new, |s| format!(" (sign {s})"));
        format!("{}{sign}: {}", sentence(&p.what), p.why)
    });
    parts.push(Block::List(Mark::Square, wear.collect()).into());
    parts.push(
        Block::Subheading("What studies measured; not a forecast for this job".into()).into(),
    );
    parts.push(measured_table(h).into());
    parts.push(Block::Heading("Cautions".into()).into());
    parts.extend(plan.cautions.iter().map(|c| caution(c).into()));
    book.flow("Dust and safety", Scale::DESK, &parts);
}

fn caution(finding: &Finding) -> Block {
    let lines = vec![
        finding.detail.clone(),
        format!("Source: {}", finding.source),
    ];
    Block::Notice(Grade::Caution, sentence(&finding.title), lines)
}

fn row(name: &str, value: String) -> (String, String) {
    (name.to_owned(), value)
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

fn dust_rows(h: &Hazards) -> Vec<(String, String)> {
    let control = match h.dust.control {
        Control::Water => "water fed to the disc",
        Control::Extraction => "shroud and extractor",
        Control::Nothing => "NONE proven",
    };
    let mut rows = vec![
        row("Stone turned to dust or slurry", grams(&h.silica.dust_g)),
        row("Crystalline silica in it", grams(&h.silica.silica_g)),
        row("Held down by", control.into()),
        row("Dusty work that day", format!("{:.1} h", h.dust.task_hours)),
    ];
    if let Some(answer) = h.dust.table_answer {
        let words = match answer {
            TableAnswer::NoRespirator => "listed; no respirator asked for".to_owned(),
            TableAnswer::Apf(apf) => format!("listed; respirator with APF {apf} or more"),
            TableAnswer::NotInTable => "not in the table: exposure must be assessed".to_owned(),
        };
        rows.push(row("29 CFR 1926.1153 Table 1", words));
    }
    rows
}

/// The respirator that is asked for, in words.
#[must_use]
pub fn required_words(h: &Hazards) -> String {
    match h.respirator.required {
        Required::NoneAsked => "none by the table; wear one all the same".into(),
        Required::AtLeast(apf) => format!(
            "protection factor {apf} or more{}",
            borrowed(h.respirator.required_standing)
        ),
        Required::MustBeAssessed => "exposure must be assessed first".into(),
    }
}

/// The respirator at hand and what it is worth, in words.
#[must_use]
pub fn at_hand_words(h: &Hazards) -> String {
    let worth = match h.respirator.assigned {
        None => String::new(),
        Some(Assigned::NotInScheme) => " (no factor in this region's scheme)".into(),
        Some(Assigned::One { apf, .. }) => format!(" (factor {apf})"),
        Some(Assigned::ByMark { least, most, .. }) => {
            format!(" (factor {least} to {most} by its mark)")
        }
    };
    format!("{}{worth}", h.respirator.at_hand)
}

fn body_rows(h: &Hazards) -> Vec<(String, String)> {
    let v = &h.vibration;
    let minutes = |m: Option<f64>| m.map_or_else(|| "never".to_owned(), floor_time);
    let mut rows = vec![
        row(
            "Vibration",
            format!("{:.1} m/s² with its uncertainty", v.reckoned_m_s2),
        ),
        row(
            "Trigger time",
            format!(
                "{} for this job, {:.1} h other",
                time(v.trigger_min),
                v.other_hours
            ),
        ),
        row(
            "A(8) that day",
            format!(
                "{:.1} m/s², {:.0} points (100 action, 400 limit)",
                v.a8_day_m_s2, v.points_day
            ),
        ),
        row(
            "To action, to limit",
            format!(
                "{} and {} a day",
                minutes(v.minutes_to_action),
                minutes(v.minutes_to_limit)
            ),
        ),
        row("Noise at the ear", format!("{:.0} dB(A)", h.noise.level_db)),
    ];
    if let Some(lex) = h.noise.lex_8h_db {
        rows.push(row(
            "Noise over the day",
            format!("{lex:.1} dB(A) over 8 h"),
        ));
    }
    if let (Some(dose), Some(twa)) = (h.noise.osha_dose_percent, h.noise.osha_twa_db) {
        rows.push(row("OSHA dose", format!("{dose:.0} %, TWA {twa:.1} dBA")));
    }
    rows.push(row(
        "Unprotected at most",
        format!("{} a day (NIOSH)", floor_time(h.noise.niosh_minutes)),
    ));
    rows
}

/// A permitted span: never rounded up.
fn floor_time(minutes: f64) -> String {
    if minutes < 10.0 {
        format!("{:.1} min", (minutes * 10.0).floor() / 10.0)
    } else if minutes > 1440.0 {
        "more than 24 h".into()
    } else {
        time(minutes.floor())
    }
}

fn values_words(h: &Hazards) -> String {
    let (v, n) = (&h.vibration.values, &h.noise.values);
    format!(
        "Vibration values {:.1} and {:.1} m/s²: {}{}. Noise {:.0}, {:.0} and {:.0} dB(A): {}{}. Check your current \
         rules.",
        v.action_m_s2,
        v.limit_m_s2,
        v.source.cite(),
        borrowed(v.standing),
        n.action_db,
        n.duty_db,
        n.limit_db,
        n.source.cite(),
        borrowed(n.standing)
    )
}

fn borrowed(standing: crate::tables::region::Standing) -> &'static str {
    match standing {
        crate::tables::region::Standing::Own => "",
        crate::tables::region::Standing::Borrowed => " (borrowed: no rule of this region on file)",
    }
}

fn disc_table(h: &Hazards) -> Table {
    let rows = h.discs.iter().map(|d| {
        vec![
            d.name.clone(),
            format!("{:.0} mm", d.diameter_mm),
            format!("{:.0}", d.machine_rpm),
            format!("{:.0}", d.marked_rpm),
            format!("{:.0} m/s", d.rim_speed_m_s),
        ]
    });
    Table {
        headings: vec![
            Heading::words("Disc", Width::Part(1.0)),
            Heading::numbers("Diameter", Width::Mm(24.0)),
            Heading::numbers("Machine, turns/min", Width::Mm(36.0)),
            Heading::numbers("Marked, turns/min", Width::Mm(36.0)),
            Heading::numbers("Rim speed", Width::Mm(24.0)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.body,
    }
}

fn measured_table(h: &Hazards) -> Table {
    let rows = h.measured.iter().map(|m| {
        vec![
            m.work.to_owned(),
            m.control.to_owned(),
            m.found.to_owned(),
            m.source.cite(),
        ]
    });
    Table {
        headings: vec![
            Heading::words("Work", Width::Part(1.0)),
            Heading::words("Control", Width::Part(0.8)),
            Heading::words("Quartz found", Width::Part(0.9)),
            Heading::words("Study", Width::Part(1.3)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.small,
    }
}
