//! The job sheet read back from its PDF: nothing missing, nothing wrong, nothing in the way.

#[path = "document.rs"]
mod file;
mod layout;
mod lines;
mod pages;
#[path = "../reading/mod.rs"]
mod reading;

use std::sync::LazyLock;

use kerfwright::document::{Annex, document};
use kerfwright::job::read;
use kerfwright::layout::item::{Paper, Sheet};
use kerfwright::layout::pages;
use kerfwright::plan::Plan;
use kerfwright::render;
use reading::Placed;

const PAPERS: [Paper; 2] = [Paper::A4, Paper::Letter];

/// Name and text of each job that is looked at.
const JOBS: [(&str, &str); 16] = [
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
    (
        "basin-with-thin-rails",
        include_str!("../golden/basin-with-thin-rails/job.toml"),
    ),
    ("second-cut", include_str!("../golden/second-cut/job.toml")),
    (
        "round-a-pillar",
        include_str!("../golden/round-a-pillar/job.toml"),
    ),
    ("bow-front", include_str!("../golden/bow-front/job.toml")),
    (
        "out-of-square-remnant",
        include_str!("../golden/out-of-square-remnant/job.toml"),
    ),
];

/// One job on one paper, from the plan to the PDF read back: the bench pages, then the annex.
struct Printed {
    name: String,
    plan: Plan,
    sheet: Sheet,
    pdf: Vec<u8>,
    /// How many pages are bench pages.
    bench: usize,
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
        let sheet = pages(&document(&plan, Annex::With), paper);
        let bench = pages(&document(&plan, Annex::Without), paper).pages.len();
        let pdf = render::pdf(&sheet).unwrap_or_else(|fault| panic!("{name}: {fault}"));
        let names = file::bookmarks(&pdf);
        Self {
            name: format!("{name} on {paper:?}"),
            pages: names.into_iter().zip(reading::pages(&pdf)).collect(),
            plan,
            sheet,
            pdf,
            bench,
        }
    }

    /// Everything on the pages of a range, without spaces, in the order it was drawn.
    fn squeezed(&self, pages: std::ops::Range<usize>) -> String {
        let each = self.pages[pages].iter().flat_map(|p| &p.1);
        each.map(|t| squeezed(&t.words)).collect()
    }
}

/// A text without its spaces: where a line was broken does not matter.
fn squeezed(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}
