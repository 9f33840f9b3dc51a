//! The form as data: the list of keys in the order in which a person measures.

use serde_json::{Map, Value, json};

use crate::job::keys::{self, Entry, Key, Kind, LeftOut, ROOT, Section};
use crate::units::LengthUnit;

/// One step of the form.
struct Step {
    name: &'static str,
    /// What is asked at once, in this order.
    first: &'static [&'static str],
    /// Sections whose other keys can be opened below.
    rest: &'static [&'static str],
}

/// The steps, as one goes about it with a tape.
const STEPS: [Step; 13] = [
    Step {
        name: "The job",
        first: &["job.title", "job.units", "job.region"],
        rest: &["job"],
    },
    Step {
        name: "The stone",
        first: &["stone.kind", "stone.thickness", "stone.steel"],
        rest: &["stone"],
    },
    Step {
        name: "The slab",
        first: &[
            "slab.rectangle",
            "slab.corners",
            "slab.sides",
            "slab.diagonals",
            "slab.base_line",
            "slab.ties",
            "slab.shape",
        ],
        rest: &["slab"],
    },
    Step {
        name: "Its edges and flaws",
        first: &["slab.factory", "slab.sawn", "slab.rough", "slab.flaw"],
        rest: &[],
    },
    Step {
        name: "The top",
        first: &[
            "top.rectangle",
            "top.corners",
            "top.circle",
            "top.shape",
            "top.over_base",
            "top.round",
            "top.clip",
            "top.finish",
        ],
        rest: &["top"],
    },
    Step {
        name: "Openings",
        first: &["top.cutout"],
        rest: &[],
    },
    Step {
        name: "What it stands on",
        first: &["support"],
        rest: &["base"],
    },
    Step {
        name: "Machine and disc",
        first: &[
            "machine.kind",
            "machine.rpm",
            "machine.power",
            "machine.wet_rated",
            "machine.protected",
            "machine.vibration",
            "disc",
            "core_bit",
            "guide.length",
            "guide.offset",
            "circle_jig.offset",
            "passes.rate",
        ],
        rest: &["machine", "guide", "circle_jig", "passes"],
    },
    Step {
        name: "Dust, noise and the day",
        first: &[
            "dust.where",
            "dust.method",
            "dust.respirator",
            "dust.mask_fit_tested",
            "dust.hours_today",
        ],
        rest: &["dust", "protector", "today"],
    },
    Step {
        name: "People and aid",
        first: &[
            "lift.people",
            "lift.each",
            "lift.aid",
            "lift.rated",
            "lift.check_call",
        ],
        rest: &["lift"],
    },
    Step {
        name: "The way in",
        first: &["route.door", "route.corner"],
        rest: &["route"],
    },
    Step {
        name: "Where the top lies on the slab",
        first: &[],
        rest: &["place"],
    },
    Step {
        name: "When cutting has begun",
        first: &[],
        rest: &["as_cut"],
    },
];

/// The form: its steps with the paths of their keys, and every key by its path.
pub(super) fn form() -> Value {
    let keys: Map<String, Value> = keys::all()
        .into_iter()
        .map(|entry| (entry.path.clone(), described(&entry)))
        .collect();
    let steps: Vec<Value> = STEPS
        .iter()
        .map(|step| json!({ "name": step.name, "first": step.first, "rest": rest(step) }))
        .collect();
    json!({ "steps": steps, "keys": keys })
}

/// The keys of a step that are not asked at once; a list of sections is one of them as a whole.
fn rest(step: &Step) -> Vec<String> {
    let mut paths = Vec::new();
    for name in step.rest {
        match ROOT.key(name).map(|key| key.kind) {
            Some(Kind::Tables(..)) => paths.push((*name).to_owned()),
            Some(Kind::Table(section)) => paths.extend(of_section(name, section)),
            _ => {}
        }
    }
    let asked = |path: &String| STEPS.iter().any(|step| step.first.contains(&path.as_str()));
    paths.retain(|path| !asked(path));
    paths
}

fn of_section<'a>(name: &'a str, section: &'static Section) -> impl Iterator<Item = String> + 'a {
    section
        .keys
        .iter()
        .map(move |key| format!("{name}.{}", key.name))
}

fn described(entry: &Entry) -> Value {
    let key = entry.key;
    json!({
        "name": key.name,
        "is": key.meaning,
        "kind": kind(&key.kind, &entry.path),
        "example": key.example,
        "range": range(key),
        "left_out": left_out(key),
        "one_of": match key.left_out { LeftOut::OneOf(names) => names, _ => "" },
        "needed": matches!(key.left_out, LeftOut::Needed),
    })
}

/// The limits in both units, or in one where it is the same.
fn range(key: &Key) -> [String; 2] {
    [LengthUnit::Millimetre, LengthUnit::Inch].map(|unit| key.kind.range(unit))
}

/// What holds when nothing is written there.
fn left_out(key: &Key) -> String {
    match key.left_out {
        LeftOut::Needed | LeftOut::OneOf(_) => String::new(),
        LeftOut::Open(then) => then.to_owned(),
        LeftOut::Follows(how) => how.to_owned(),
        LeftOut::Assumed(_, why) => format!("{}: {why}", key.assumed_value()),
    }
}

/// What may stand at a key of a path, as the page's fields are made of it.
fn kind(of: &Kind, path: &str) -> Value {
    match of {
        Kind::Text => json!({ "is": "text" }),
        Kind::Flag => json!({ "is": "flag" }),
        Kind::Date => json!({ "is": "date" }),
        Kind::Word(words) => json!({ "is": "word", "words": words() }),
        Kind::Name(words) => json!({ "is": "name", "words": words() }),
        Kind::Whole(..) => json!({ "is": "number" }),
        Kind::Length(_) => json!({ "is": "length" }),
        Kind::Mass(_) => json!({ "is": "mass" }),
        Kind::Quantity(quantity, _) => json!({ "is": "quantity", "unit": quantity.unit() }),
        Kind::Point => json!({ "is": "point" }),
        Kind::List(of, least, most) => {
            json!({ "is": "list", "of": kind(of, path), "least": least, "most": most })
        }
        Kind::Named(part, of) => {
            json!({ "is": "named", "part": part.name(), "of": kind(of, path) })
        }
        Kind::Either(kinds) => {
            let kinds: Vec<Value> = kinds.iter().map(|one| kind(one, path)).collect();
            json!({ "is": "either", "kinds": kinds })
        }
        Kind::Table(section) => json!({ "is": "section", "keys": paths(section, path) }),
        Kind::Tables(section, most) => {
            json!({ "is": "sections", "keys": paths(section, path), "most": most })
        }
    }
}

fn paths(section: &'static Section, path: &str) -> Vec<String> {
    of_section(path, section).collect()
}

#[cfg(test)]
mod tests {
    use super::{STEPS, of_section, rest};
    use crate::job::keys::{Kind, ROOT};

    /// Every key that is no part of a list of sections stands in the form, and none twice.
    #[test]
    fn every_key_is_asked_once() {
        let mut asked: Vec<String> = Vec::new();
        for step in &STEPS {
            asked.extend(step.first.iter().map(|path| (*path).to_owned()));
            asked.extend(rest(step));
        }
        let mut all: Vec<String> = Vec::new();
        for key in ROOT.keys {
            match key.kind {
                Kind::Table(section) => all.extend(of_section(key.name, section)),
                _ => all.push(key.name.to_owned()),
            }
        }
        asked.sort();
        all.sort();
        assert_eq!(asked, all);
    }
}
