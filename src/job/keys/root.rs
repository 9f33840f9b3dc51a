//! The sections of the job file, and every key by its path.

use super::key::{Key, Kind, Section};
use super::{as_cut, people, slab, stone, tools, top};

/// The job file as a whole.
pub const ROOT: Section = Section {
    path: "",
    keys: &[
        once(
            "job",
            &stone::JOB,
            "the title block, the unit and the region",
        )
        .open(EACH_KEY),
        once(
            "stone",
            &stone::STONE,
            "the kind and the thickness of the stone",
        ),
        once("slab", &slab::SLAB, "the slab as bought"),
        once("top", &top::TOP, "the worktop as wanted"),
        once(
            "base",
            &top::BASE,
            "what the top will stand on, in the words of a figure",
        )
        .open("the top stands on what is given as support"),
        many(
            "support",
            &top::SUPPORT,
            64,
            "a thing that the top stands on: a line or a pad",
        )
        .open("the supports are not known"),
        once("machine", &tools::MACHINE, "the grinder or saw").open(EACH_KEY),
        many("disc", &tools::DISC, 16, "a cutting disc")
            .follows("common practice: a thin diamond disc for a 125 mm grinder; measure yours"),
        many("core_bit", &tools::CORE_BIT, 32, "a core bit").open("no holes are drilled"),
        once("guide", &tools::GUIDE, "the straight guide").open(EACH_KEY),
        once("circle_jig", &tools::CIRCLE_JIG, "the jig for arcs").open(EACH_KEY),
        once("passes", &tools::PASSES, "depths and rates").open(EACH_KEY),
        once(
            "dust",
            &people::DUST,
            "where it is cut, and what holds the dust",
        )
        .open(EACH_KEY),
        once(
            "protector",
            &people::PROTECTOR,
            "the hearing protector, by what is printed on it",
        )
        .follows("no rating of the hearing protector was told"),
        many("today", &people::TODAY, 16, "other work of the same day").open("there is none"),
        once("lift", &people::LIFT, "the people, and what helps them").open(EACH_KEY),
        once("route", &people::ROUTE, "the way in").open("nothing is assumed about the way in"),
        once("place", &top::PLACE, "where the top lies on the slab")
            .open("the best place is searched"),
        once(
            "as_cut",
            &as_cut::AS_CUT,
            "what really happened, so that the rest is planned again",
        )
        .open("cutting has not begun"),
    ],
};

/// What is said of a section that may be left out because each of its keys may.
pub(super) const EACH_KEY: &str = "each by its own key";

const fn once(name: &'static str, section: &'static Section, meaning: &'static str) -> Key {
    Key::new(name, Kind::Table(section), meaning, "")
}

const fn many(
    name: &'static str,
    section: &'static Section,
    most: usize,
    meaning: &'static str,
) -> Key {
    Key::new(name, Kind::Tables(section, most), meaning, "")
}

/// A key and where it stands.
#[derive(Clone, Debug)]
pub struct Entry {
    /// The whole key without the numbers of lists, such as `top.cutout.at`.
    pub path: String,
    /// The key.
    pub key: &'static Key,
}

impl Entry {
    /// The header of a section as it stands in a job file: `[slab]`, `[[disc]]`.
    #[must_use]
    pub fn header(&self) -> String {
        match self.key.kind {
            Kind::Tables(..) => format!("[[{}]]", self.path),
            _ => format!("[{}]", self.path),
        }
    }
}

/// Every key with those of its section behind it, in the order of the list.
#[must_use]
pub fn all() -> Vec<Entry> {
    let mut found = Vec::new();
    add(ROOT.keys, "", &mut found);
    found
}

fn add(keys: &'static [Key], under: &str, found: &mut Vec<Entry>) {
    for key in keys {
        let path = if under.is_empty() {
            key.name.to_owned()
        } else {
            format!("{under}.{}", key.name)
        };
        let below = key.kind.section();
        found.push(Entry {
            path: path.clone(),
            key,
        });
        if let Some((section, _)) = below {
            add(section.keys, &path, found);
        }
    }
}

/// The key of a path such as `slab.factory`, `disc[0].kerf` or `[[slab.flaw]]`.
///
/// ```
/// use kerfwright::job::keys::find;
/// assert_eq!(find("disc[0].kerf").map(|e| e.path), Some("disc.kerf".to_owned()));
/// assert!(find("disc.colour").is_none());
/// ```
#[must_use]
pub fn find(path: &str) -> Option<Entry> {
    let mut plain = String::new();
    let mut inside = false;
    for c in path
        .trim()
        .trim_start_matches('[')
        .trim_end_matches(']')
        .chars()
    {
        match c {
            '[' => inside = true,
            ']' => inside = false,
            c if !inside => plain.push(c),
            _ => {}
        }
    }
    all().into_iter().find(|entry| entry.path == plain)
}

/// Every section with its key, the file as a whole left out.
pub fn sections() -> impl Iterator<Item = (Entry, &'static Section)> {
    let with_section = |entry: Entry| {
        let (section, _) = entry.key.kind.section()?;
        Some((entry, section))
    };
    all().into_iter().filter_map(with_section)
}
