//! The sheet as one page for a telephone: it is whole and loads nothing, it says what the paper says with
//! the same figures, and what stands against the job is on its first screen.

mod figures;
#[path = "../reading/mod.rs"]
mod reading;

use std::collections::BTreeSet;
use std::sync::LazyLock;

use kerfwright::document::{Annex, document};
use kerfwright::job::read;
use kerfwright::plan::Plan;
use kerfwright::render::html;
use kerfwright::words::Language;
use roxmltree::{Document, Node, ParsingOptions};

/// Name and text of each job that is looked at.
const JOBS: [(&str, &str); 14] = [
    (
        "tea-counter",
        include_str!("../../examples/tea-counter.toml"),
    ),
    (
        "garden-bench",
        include_str!("../../examples/garden-bench.toml"),
    ),
    ("washstand", include_str!("../../examples/washstand.toml")),
    (
        "upstairs-vanity",
        include_str!("../../examples/upstairs-vanity.toml"),
    ),
    ("many-stops", include_str!("../pdf_sheet/many-stops.toml")),
    ("long-words", include_str!("../pdf_sheet/long-words.toml")),
    ("one-cut", include_str!("../pdf_sheet/one-cut.toml")),
    (
        "basin-and-two-taps",
        include_str!("../golden/basin-and-two-taps/job.toml"),
    ),
    (
        "basin-with-thin-rails",
        include_str!("../golden/basin-with-thin-rails/job.toml"),
    ),
    ("bow-front", include_str!("../golden/bow-front/job.toml")),
    ("l-top", include_str!("../golden/l-top/job.toml")),
    (
        "round-a-pillar",
        include_str!("../golden/round-a-pillar/job.toml"),
    ),
    ("second-cut", include_str!("../golden/second-cut/job.toml")),
    (
        "window-seat",
        include_str!("../golden/window-seat/job.toml"),
    ),
];

/// A page is sent by mail and kept on a telephone, bytes.
const MOST_BYTES: usize = 400_000;

/// One job with its page, the annex behind it.
struct Shown {
    name: &'static str,
    plan: Plan,
    page: String,
}

static SHOWN: LazyLock<Vec<Shown>> = LazyLock::new(|| {
    let shown = |(name, text): (&'static str, &str)| {
        let (job, _) = read(text).unwrap_or_else(|faults| panic!("{name}: {faults:?}"));
        let plan = Plan::of(&job).expect("it fits");
        let page = html::page(&document(&plan, Annex::With));
        Shown { name, plan, page }
    };
    JOBS.into_iter().map(shown).collect()
});

fn parsed(page: &str) -> Document<'_> {
    let options = ParsingOptions {
        allow_dtd: true,
        ..ParsingOptions::default()
    };
    Document::parse_with_options(page, options).expect("it is well-formed")
}

/// Every element of a page.
fn elements<'a>(page: &'a Document<'a>) -> impl Iterator<Item = Node<'a, 'a>> {
    page.descendants().filter(Node::is_element)
}

/// The screens of the bench pages, without contents and what to do when something goes wrong.
fn screens<'a>(page: &'a Document<'a>) -> Vec<Node<'a, 'a>> {
    let sections = elements(page).filter(|e| e.has_tag_name("section"));
    let bench = |s: &Node<'_, '_>| s.attribute("id").is_some_and(|id| id.starts_with('b'));
    sections.filter(bench).collect()
}

fn with_id<'a>(page: &'a Document<'a>, id: &str) -> Node<'a, 'a> {
    let mut found = elements(page).filter(|e| e.attribute("id") == Some(id));
    found.next().unwrap_or_else(|| panic!("no {id}"))
}

/// The words of an element without their spaces.
fn squeezed(element: Node<'_, '_>) -> String {
    let texts = element.descendants().filter(Node::is_text);
    let texts = texts.filter_map(|n| n.text());
    texts
        .flat_map(str::chars)
        .filter(|c| !c.is_whitespace())
        .collect()
}

fn without_spaces(words: &str) -> String {
    words.chars().filter(|c| !c.is_whitespace()).collect()
}

#[test]
fn it_is_small_and_loads_nothing() {
    for Shown { name, page, .. } in SHOWN.iter() {
        assert!(page.len() <= MOST_BYTES, "{name}: {} bytes", page.len());
        let whole = parsed(page);
        for element in elements(&whole) {
            for loads in ["src", "srcset", "data", "action", "poster", "background"] {
                assert_eq!(element.attribute(loads), None, "{name}: {element:?}");
            }
            if let Some(link) = element.attribute("href") {
                let kept = link.starts_with('#') || link.starts_with("tel:");
                assert!(kept, "{name}: {link}");
            }
        }
        for loads in ["http:", "https:", "url(", "@import", "fetch(", "import("] {
            assert!(!page.contains(loads), "{name}: {loads}");
        }
        assert!(page.contains("default-src 'none'"), "{name}");
    }
}

#[test]
fn links_lead_somewhere_and_ticks_have_names_of_their_own() {
    for Shown { name, page, .. } in SHOWN.iter() {
        let whole = parsed(page);
        let ids: Vec<&str> = elements(&whole).filter_map(|e| e.attribute("id")).collect();
        let unlike: BTreeSet<&str> = ids.iter().copied().collect();
        assert_eq!(ids.len(), unlike.len(), "{name}: {ids:?}");
        for link in elements(&whole).filter_map(|e| e.attribute("href")) {
            let target = link.strip_prefix('#');
            assert!(target.is_none_or(|t| unlike.contains(t)), "{name}: {link}");
        }
        let mut ticks = BTreeSet::new();
        for input in elements(&whole).filter(|e| e.has_tag_name("input")) {
            let key = input.attribute("data-key").expect("a name");
            let labelled = input.ancestors().any(|a| a.has_tag_name("label"));
            let said = input.attribute("aria-label").is_some_and(|l| !l.is_empty());
            assert!(labelled || said, "{name}: {key} has no words");
            let shared = key.starts_with("helper-");
            assert!(ticks.insert(key) || shared, "{name}: {key} twice");
        }
        assert!(ticks.len() > 20, "{name}");
    }
}

#[test]
fn every_stop_and_open_point_is_on_the_first_screen() {
    let mut stops = 0;
    for Shown { name, plan, page } in SHOWN.iter() {
        let whole = parsed(page);
        let screens = screens(&whole);
        let first = squeezed(screens[0]);
        for finding in plan.stops.iter().chain(&plan.open) {
            let writer = plan.writer();
            for words in [
                writer.say(&finding.message),
                writer.detail(&finding.message),
            ] {
                assert!(first.contains(&without_spaces(&words)), "{name}: {words}");
            }
        }
        let halted = |s: &Node<'_, '_>| {
            let mut parts = s.descendants();
            parts.any(|e| e.attribute("class") == Some("halt"))
        };
        let said = screens[1..].iter().filter(|s| halted(s)).count();
        let wanted = if plan.stops.is_empty() {
            0
        } else {
            screens.len() - 1
        };
        assert_eq!(said, wanted, "{name}: a stop is told on every screen");
        stops += plan.stops.len();
    }
    assert!(stops > 10, "{stops}");
}

#[test]
fn a_cut_has_a_screen_to_itself_in_the_order_of_the_cutting() {
    for Shown { name, page, .. } in SHOWN.iter() {
        let whole = parsed(page);
        let mut numbers: Vec<usize> = Vec::new();
        for screen in screens(&whole) {
            let rings = |e: &Node<'_, '_>| e.attribute("class") == Some("ring");
            let own: Vec<usize> = screen
                .descendants()
                .filter(rings)
                .map(|e| e.text().unwrap().parse().unwrap())
                .collect();
            let is_cut = screen.attribute("class") == Some("screen cut");
            assert_eq!(is_cut, !own.is_empty(), "{name}");
            let titles = screen.descendants().filter(|e| e.has_tag_name("h2"));
            assert_eq!(titles.count(), 1, "{name}: {:?}", screen.attribute("id"));
            numbers.extend(own.iter().min());
        }
        assert!(numbers.is_sorted(), "{name}: {numbers:?}");
        assert!(!numbers.is_empty(), "{name}");
    }
}

#[test]
fn the_helpers_page_and_stop_are_in_the_language_of_the_job() {
    let mut plan = SHOWN[0].plan.clone();
    plan.job.language = Language::Polish;
    let page = html::page(&document(&plan, Annex::Without));
    let whole = parsed(&page);
    let stop = with_id(&whole, "stop");
    let languages: Vec<&str> = stop
        .children()
        .filter_map(|e| e.attribute("lang"))
        .collect();
    assert_eq!(languages, ["pl", "en"]);
    let calls = stop.descendants().filter_map(|e| e.attribute("href"));
    assert_eq!(calls.collect::<Vec<_>>(), ["tel:112", "tel:112"]);
    let bar = elements(&whole).find(|e| e.attribute("class") == Some("bar"));
    let links = bar.unwrap().children().filter(|e| e.has_tag_name("a"));
    let links: Vec<&str> = links.filter_map(|e| e.attribute("href")).collect();
    let [stop_link, helpers] = links[..] else {
        panic!("{links:?}")
    };
    assert_eq!(stop_link, "#stop");
    let helpers = with_id(&whole, &helpers[1..]);
    assert_eq!(helpers.attribute("lang"), Some("pl"));
    assert!(
        squeezed(helpers).contains("Jakzatrzymujemy"),
        "{}",
        squeezed(helpers)
    );
}
