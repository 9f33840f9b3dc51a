//! The file a new job starts from.

use std::fmt::Write;

use super::key::{Key, Kind, LeftOut, Section};
use super::root::ROOT;
use crate::job::words::short;
use crate::units::LengthUnit;

/// What stands where a value must be filled in.
pub const TO_FILL: &str = "?";

/// So many words are listed behind a key, and not more.
const MOST_WORDS: usize = 20;

/// What stops most jobs when it is left out.
const DECISIVE: [&str; 9] = [
    "machine.power",
    "machine.wet_rated",
    "machine.protected",
    "dust.where",
    "dust.method",
    "dust.respirator",
    "lift.people",
    "lift.aid",
    "lift.rated",
];

/// What marks those.
const MARK: &str = "(!) ";

/// The sections in the order a person fills them in, those with needed keys first.
const ON_TOP: [&str; 3] = ["stone", "slab", "top"];

/// A commented job file: what must be filled in on top, the rest as remarks with what is assumed.
///
/// ```
/// use kerfwright::job::{keys::starter, read};
/// use kerfwright::units::LengthUnit;
/// let faults = read(&starter(LengthUnit::Millimetre)).unwrap_err();
/// let open: Vec<&str> = faults.iter().map(|f| f.key.as_str()).collect();
/// assert_eq!(open[..2], ["stone.kind", "stone.thickness"]);
/// ```
#[must_use]
pub fn starter(units: LengthUnit) -> String {
    let (unit, name, example) = match units {
        LengthUnit::Millimetre => ("mm", "mm", "2.2 m"),
        LengthUnit::Inch => ("in", "inches", "25 1/4 in"),
    };
    let count = DECISIVE.len();
    let mut file = format!(
        "# A job for kerfwright. Put your own values where a \"?\" stands. The rest may be left out,\n\
         # but the {count} keys marked {MARK}stop most jobs until they are given.\n\
         # Behind a # stands a remark: take the # away in front of a key to give its value.\n\
         # A bare length is in {name}; a text in quotes may carry its own unit: \"{example}\".\n\
         # More about a key: kerfwright explain slab.factory\n\n\
         [job]\nunits = \"{unit}\"\n"
    );
    optional(&mut file, section("job"), units, "units");
    for name in ON_TOP {
        let section = section(name);
        let _ = write!(file, "\n[{name}]\n");
        to_fill(&mut file, section, units);
        optional(&mut file, section, units, "rectangle");
    }
    for key in ROOT.keys {
        if key.name != "job" && !ON_TOP.contains(&key.name) {
            header(&mut file, key, key.name, units);
        }
    }
    file
}

fn section(name: &str) -> &'static Section {
    let found = ROOT.key(name).and_then(|key| key.kind.section());
    found.map_or(&ROOT, |(section, _)| section)
}

/// The keys that must be given, each as far as it can be written.
fn to_fill(file: &mut String, section: &Section, units: LengthUnit) {
    for key in section.keys {
        let open = match key.left_out {
            LeftOut::Needed => format!("\"{TO_FILL}\""),
            LeftOut::OneOf(_) if key.name == "rectangle" => {
                format!("[\"{TO_FILL}\", \"{TO_FILL}\"]")
            }
            _ => continue,
        };
        let such_as = example(key, units);
        let _ = writeln!(
            file,
            "{} = {open}    # {}, such as {such_as}",
            key.name, key.meaning
        );
    }
}

/// The other keys of a section, as remarks.
fn optional(file: &mut String, section: &Section, units: LengthUnit, but: &str) {
    for key in section.keys {
        if key.name != but && key.kind.section().is_none() && !is_needed(key) {
            remark(file, key, section.path, units);
        }
    }
    for key in section.keys {
        if key.kind.section().is_some() && key.name != "vibration" {
            header(file, key, &format!("{}.{}", section.path, key.name), units);
        }
    }
}

const fn is_needed(key: &Key) -> bool {
    matches!(key.left_out, LeftOut::Needed)
}

/// A section as a remark, or its header as it stands when an empty one says nothing.
fn header(file: &mut String, key: &Key, path: &str, units: LengthUnit) {
    let Some((section, _)) = key.kind.section() else {
        return;
    };
    let says_nothing = matches!(key.left_out, LeftOut::Open(super::root::EACH_KEY));
    let header = match key.kind {
        Kind::Tables(..) => format!("# [[{path}]]"),
        _ if says_nothing => format!("[{path}]"),
        _ => format!("# [{path}]"),
    };
    let _ = write!(file, "\n{header}    # {}\n", key.meaning);
    for key in section.keys {
        match key.kind {
            Kind::Table(_) | Kind::Tables(..) if key.example.is_empty() => {
                header_below(file, key, path, units);
            }
            _ => remark(file, key, path, units),
        }
    }
}

/// A section below another.
fn header_below(file: &mut String, key: &Key, path: &str, units: LengthUnit) {
    header(file, key, &format!("{path}.{}", key.name), units);
}

/// A key as a remark: with what is assumed, or with an example.
fn remark(file: &mut String, key: &Key, section: &str, units: LengthUnit) {
    let value = match key.left_out {
        LeftOut::Assumed(..) => match key.kind.length() {
            Some(_) if units == LengthUnit::Inch => format!("\"{}\"", key.assumed_value()),
            _ => key.assumed_plain(),
        },
        // A word that is not assumed is for the user to choose: none is offered ready to be taken.
        _ if matches!(key.kind, Kind::Word(_)) => format!("\"{TO_FILL}\""),
        _ => example(key, units),
    };
    let words = key.kind.words();
    let words = match key.kind {
        Kind::Word(_) | Kind::Either(_) if !words.is_empty() && words.len() < MOST_WORDS => {
            format!(": {}", words.join(", "))
        }
        _ => String::new(),
    };
    let path = format!("{section}.{}", key.name);
    let mark = if DECISIVE.contains(&path.as_str()) {
        MARK
    } else {
        ""
    };
    let _ = writeln!(
        file,
        "# {} = {value}    # {mark}{}{words}",
        key.name, key.meaning
    );
}

/// The example of a key, in the unit of the file.
fn example(key: &Key, units: LengthUnit) -> String {
    match units {
        LengthUnit::Inch if holds_lengths(&key.kind) => in_inches(key.example),
        _ => key.example.to_owned(),
    }
}

fn holds_lengths(kind: &Kind) -> bool {
    match kind {
        Kind::Length(_) | Kind::Point => true,
        Kind::List(of, ..) | Kind::Named(_, of) => holds_lengths(of),
        Kind::Either(kinds) => kinds.iter().any(holds_lengths),
        Kind::Table(section) => section.keys.iter().any(|key| holds_lengths(&key.kind)),
        _ => false,
    }
}

/// An example with its bare numbers of millimetres written in inches; names and texts stay.
fn in_inches(example: &str) -> String {
    let mut out = String::new();
    let mut rest = example;
    while let Some(c) = rest.chars().next() {
        let is_part = |c: char| c.is_ascii_digit() || c == '.' || c == '-';
        let end = match c {
            '"' => rest[1..].find('"').map_or(rest.len(), |i| i + 2),
            c if is_part(c) => rest.find(|c| !is_part(c)).unwrap_or(rest.len()),
            c => c.len_utf8(),
        };
        let (token, after) = rest.split_at(end);
        let names = after.trim_start().starts_with('=');
        match token.parse::<f64>() {
            Ok(mm) if !names => out.push_str(&short(rounded(mm / LengthUnit::Inch.in_mm()))),
            _ => out.push_str(token),
        }
        rest = after;
    }
    out
}

/// To an eighth of an inch, or a hundredth where that is too coarse.
fn rounded(inches: f64) -> f64 {
    let step = if inches.abs() < 1.0 { 100.0 } else { 8.0 };
    (inches * step).round() / step
}
