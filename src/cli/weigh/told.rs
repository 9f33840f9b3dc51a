//! A stone told on the command line, read as the job file that it stands for.
//!
//! So every number, unit and word is read by the same reader as in a job file, and every fault is
//! told at once.

use std::fmt::Write;

use crate::diag::{Diagnostic, Severity};
use crate::job::{self, Job};

/// The stone in options.
#[derive(Debug, clap::Args)]
pub(super) struct Told {
    /// Kind of stone, such as granite
    #[arg(long, value_name = "KIND")]
    stone: Option<String>,
    /// Its thickness, or several readings with commas between: 30, "1 3/16 in", 29.6,30.4
    #[arg(long, value_name = "THICKNESS", allow_hyphen_values = true)]
    thickness: Option<String>,
    /// Length and width: 2150x640, "84 1/2 in x 25 in"
    #[arg(long, value_name = "LENGTHxWIDTH", allow_hyphen_values = true)]
    size: Option<String>,
    /// Unit of bare numbers: mm or in; left out: mm
    #[arg(long, value_name = "UNIT")]
    units: Option<String>,
    /// Whose guideline for lifting: eu, uk, us …; left out: as in a job file
    #[arg(long, value_name = "REGION")]
    region: Option<String>,
    /// How many people lift; left out: 1
    #[arg(long, value_name = "PEOPLE", allow_hyphen_values = true)]
    people: Option<String>,
}

/// What stands against an option, and what to do.
struct Against {
    message: String,
    hint: String,
}

/// The keys of the job file that the options stand for.
const OPTIONS: [(&str, &str); 6] = [
    ("stone.kind", "--stone"),
    ("stone.thickness", "--thickness"),
    ("slab.rectangle", "--size"),
    ("job.units", "--units"),
    ("job.region", "--region"),
    ("lift.people", "--people"),
];

impl Told {
    /// The job whose slab is this stone.
    ///
    /// # Errors
    /// Every fault, in words.
    pub(super) fn job(&self) -> Result<Job, String> {
        let mut against = Vec::new();
        let size = self.sides(&mut against);
        let text = self.job_text(size.as_ref(), &mut against);
        match job::read(&text) {
            Ok((job, _)) if against.is_empty() => Ok(job),
            Ok(_) => Err(words(&against)),
            Err(faults) => {
                against.extend(of_options(&faults, &against));
                Err(words(&against))
            }
        }
    }

    /// Length and width as typed.
    fn sides(&self, against: &mut Vec<Against>) -> Option<[String; 2]> {
        let Some(size) = &self.size else {
            against.push(missing("--size", "--size 2150x640"));
            return None;
        };
        let sides: Vec<&str> = size.split(['x', 'X', '×', '*']).map(str::trim).collect();
        let [length, width] = sides[..] else {
            against.push(Against {
                message: format!("--size is \"{size}\", which is not a length and a width"),
                hint: "write it as 2150x640, or as \"84 1/2 in x 25 in\"".to_owned(),
            });
            return None;
        };
        let has_unit =
            |side: &str| side.contains(|c: char| c.is_alphabetic() || matches!(c, '"' | '\''));
        if has_unit(length) != has_unit(width) {
            against.push(Against {
                message: format!("--size is \"{size}\": one number has a unit, the other has none"),
                hint: "give both a unit, or neither and --units".to_owned(),
            });
        }
        Some([length.to_owned(), width.to_owned()])
    }

    /// The job file that the options stand for. What is missing is noted, and a sound value put in its
    /// place so that the rest is read.
    fn job_text(&self, size: Option<&[String; 2]>, against: &mut Vec<Against>) -> String {
        let stone = self.stone.clone().unwrap_or_else(|| {
            against.push(missing("--stone", "--stone granite"));
            "granite".to_owned()
        });
        let thickness = self.thickness.clone().unwrap_or_else(|| {
            against.push(missing("--thickness", "--thickness 30"));
            "30 mm".to_owned()
        });
        let readings: Vec<String> = thickness.split(',').map(|r| quoted(r.trim())).collect();
        let sides = match size {
            Some(sides) => sides.each_ref().map(|side| quoted(side)),
            None => ["1 m", "1 m"].map(quoted),
        };
        let sides = sides.join(", ");
        format!(
            "[job]\n{}{}[stone]\nkind = {}\nthickness = [{}]\n[slab]\nrectangle = [{sides}]\n\
             [top]\nrectangle = [{sides}]\n{}",
            line("units", self.units.as_ref()),
            line("region", self.region.as_ref()),
            quoted(&stone),
            readings.join(", "),
            self.crew(against),
        )
    }

    /// The people, when they are given.
    fn crew(&self, against: &mut Vec<Against>) -> String {
        let Some(people) = &self.people else {
            return String::new();
        };
        if let Ok(people) = people.trim().parse::<i64>() {
            return format!("[lift]\npeople = {people}\n");
        }
        against.push(Against {
            message: format!("--people is \"{people}\""),
            hint: "write a whole number".to_owned(),
        });
        String::new()
    }
}

/// A line of the job file; nothing for what was not given.
fn line(key: &str, value: Option<&String>) -> String {
    value.map_or_else(String::new, |value| format!("{key} = {}\n", quoted(value)))
}

fn missing(option: &str, example: &str) -> Against {
    Against {
        message: format!("{option} is missing"),
        hint: format!("such as {example}"),
    }
}

/// A text as a TOML value.
fn quoted(text: &str) -> String {
    toml::Value::from(text).to_string()
}

/// The faults of the job file in terms of the options. The top is the slab again and has the slab's
/// faults: they are told once.
fn of_options(faults: &[Diagnostic], against: &[Against]) -> Vec<Against> {
    let faults = faults.iter().filter(|f| f.severity == Severity::Fault);
    let (of_top, others): (Vec<_>, Vec<_>) = faults.partition(|f| f.key.starts_with("top"));
    let told = if others.is_empty() && against.is_empty() {
        of_top
    } else {
        others
    };
    told.into_iter().map(in_options).collect()
}

fn in_options(fault: &Diagnostic) -> Against {
    let option = OPTIONS.iter().find(|(key, _)| fault.key.starts_with(key));
    let message = match option {
        Some((_, option)) => fault.message.replacen(&fault.key, option, 1),
        None => fault.message.clone(),
    };
    Against {
        message,
        hint: fault.hint.clone(),
    }
}

fn words(against: &[Against]) -> String {
    let mut words = String::new();
    for Against { message, hint } in against {
        let _ = writeln!(words, "kerfwright weigh: {message}\n  do: {hint}");
    }
    words
}
