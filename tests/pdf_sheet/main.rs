//! The job sheet read back from its PDF: nothing missing, nothing wrong, nothing in the way.

mod document;
mod figures;
mod layout;
mod lines;
#[path = "../reading/mod.rs"]
mod reading;
mod whole;

use std::sync::LazyLock;

use kerfwright::job::read;
use kerfwright::plan::Plan;
use kerfwright::render;
use kerfwright::sheet::item::{Paper, Sheet};
use kerfwright::sheet::sheet;
use reading::Placed;
use serde_json::Value;

const PAPERS: [Paper; 2] = [Paper::A4, Paper::Letter];

/// Name and text of each job that is looked at.
const JOBS: [(&str, &str); 13] = [
    (
        "tea-counter",
        include_str!("../../examples/tea-counter.toml"),
    ),
    (
        "garden-bench",
        include_str!("../../examples/garden-bench.toml"),
    ),
    ("washstand", include_str!("../../examples/washstand.toml")),
    ("long-words", include_str!("long-words.toml")),
    ("many-stops", include_str!("many-stops.toml")),
    ("one-cut", include_str!("one-cut.toml")),
    (
        "tight-landing",
        include_str!("../golden/tight-landing/job.toml"),
    ),
    ("long-way", include_str!("long-way.toml")),
    (
        "basin-and-two-taps",
        include_str!("../golden/basin-and-two-taps/job.toml"),
    ),
    ("l-top", include_str!("../golden/l-top/job.toml")),
    (
        "window-seat",
        include_str!("../golden/window-seat/job.toml"),
    ),
    ("bow-front", include_str!("../golden/bow-front/job.toml")),
    (
        "out-of-square-remnant",
        include_str!("../golden/out-of-square-remnant/job.toml"),
    ),
];

/// One job on one paper, from the plan to the PDF read back.
struct Printed {
    name: String,
    /// The plan as anybody else reads it.
    json: Value,
    sheet: Sheet,
    pdf: Vec<u8>,
    /// Name of each page and its texts.
    pages: Vec<(String, Vec<Placed>)>,
}

static PRINTED: LazyLock<Vec<Printed>> = LazyLock::new(|| {
    let jobs = JOBS.iter();
    jobs.flat_map(|(name, text)| PAPERS.map(|paper| Printed::of(name, text, paper)))
        .collect()
});

impl Printed {
    fn of(name: &str, text: &str, paper: Paper) -> Self {
        let (job, _) = read(text).unwrap_or_else(|faults| panic!("{name}: {faults:?}"));
        let plan = Plan::of(&job).expect("it fits");
        let sheet = sheet(&plan, paper);
        let pdf = render::pdf(&sheet).unwrap_or_else(|fault| panic!("{name}: {fault}"));
        let names = document::bookmarks(&pdf);
        Self {
            name: format!("{name} on {paper:?}"),
            json: serde_json::from_str(&render::json::plan(&plan)).expect("JSON"),
            pages: names.into_iter().zip(reading::pages(&pdf)).collect(),
            sheet,
            pdf,
        }
    }

    /// Everything on the pages of a name, without spaces, in the order it was drawn.
    fn squeezed(&self, name: &str) -> String {
        let pages = self.pages.iter().filter(|p| p.0 == name);
        pages.map(|p| squeezed_page(&p.1)).collect()
    }

    /// The first page's texts.
    fn first(&self) -> &[Placed] {
        &self.pages[0].1
    }

    /// The list at a key of the plan.
    fn list(&self, key: &str) -> &[Value] {
        self.json[key].as_array().map_or(&[], Vec::as_slice)
    }
}

fn squeezed_page(texts: &[Placed]) -> String {
    texts.iter().map(|t| squeezed(&t.words)).collect()
}

/// A text without its spaces: where a line was broken does not matter.
fn squeezed(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}

/// The text of a value of the plan.
fn words(value: &Value) -> &str {
    value
        .as_str()
        .unwrap_or_else(|| panic!("{value} is no text"))
}

/// The number of a value of the plan.
fn number(value: &Value) -> f64 {
    value
        .as_f64()
        .unwrap_or_else(|| panic!("{value} is no number"))
}

/// A title with a capital at its beginning, as it is printed.
fn sentence(title: &str) -> String {
    let mut letters = title.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    first.chain(letters).collect()
}
