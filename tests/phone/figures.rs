//! The page and the paper say the same: every figure with its unit and every mark, from the PDF as it is
//! read back and from the page.

use std::collections::{BTreeMap, BTreeSet};

use kerfwright::document::{Annex, document};
use kerfwright::layout::item::Paper;
use kerfwright::layout::pages;
use kerfwright::plan::Plan;
use kerfwright::render;
use roxmltree::Node;

use crate::reading::{self, Placed};
use crate::{SHOWN, Shown, parsed, screens};

/// Heads and feet of an A4 page stand outside of these, mm from its lower edge.
const CONTENT_MM: [f64; 2] = [16.0, 280.0];

/// Units that may stand alone on a line.
const UNITS: [&str; 3] = ["mm", "kg", "in"];

/// How often each figure is said.
type Said = BTreeMap<String, usize>;

/// Figures with a unit and marks among words: what hangs together by a no-break space is one word.
fn count(words: &str, said: &mut Said) {
    for word in words.split([' ', '\n']) {
        let bare =
            word.trim_matches(|c: char| !c.is_alphanumeric() && c != '²' && c != '³' && c != '°');
        let begins = bare.starts_with(|c: char| c.is_ascii_digit());
        let unit = bare.rsplit_once('\u{a0}').map_or("", |(_, unit)| unit);
        let has_unit = unit.starts_with(|c: char| !c.is_ascii_digit()) || bare.ends_with('°');
        if begins && (has_unit || is_mark(bare)) {
            *said.entry(bare.to_owned()).or_default() += 1;
        }
    }
}

/// `1a`, `12h3`: a cut's number, a letter, the number of a hole.
fn is_mark(word: &str) -> bool {
    let rest = word.trim_start_matches(|c: char| c.is_ascii_digit());
    let mut letters = rest.chars();
    rest.len() < word.len()
        && letters.next().is_some_and(|c| c.is_ascii_lowercase())
        && letters.all(|c| c.is_ascii_digit())
}

/// What pages of the PDF say, without heads, feet and the scales of drawings.
fn on_paper(plan: &Plan, annex: Annex) -> Said {
    let sheet = pages(&document(plan, annex), Paper::A4);
    let pdf = render::pdf(&sheet).expect("it can be printed");
    let content = |t: &Placed| (CONTENT_MM[0]..CONTENT_MM[1]).contains(&t.y);
    let mut words = String::new();
    for text in reading::pages(&pdf).iter().flatten().filter(|t| content(t)) {
        if UNITS.contains(&&*text.words) {
            // A column too narrow for both has the unit below its figure.
            words.truncate(words.trim_end().len());
            words.push('\u{a0}');
        }
        if !text.words.contains("   1 : ") {
            words.push_str(&text.words);
            words.push(' ');
        }
    }
    let mut said = Said::new();
    count(&words, &mut said);
    said
}

/// Figures that stand alone on the paper: dimensions whose unit the scale bar tells.
fn alone_on_paper(plan: &Plan) -> BTreeSet<String> {
    let sheet = pages(&document(plan, Annex::Without), Paper::A4);
    let pdf = render::pdf(&sheet).expect("it can be printed");
    let texts = reading::pages(&pdf).into_iter().flatten().map(|t| t.words);
    let figure = |c: char| c.is_ascii_digit() || ['.', '/', '\u{a0}'].contains(&c);
    texts.filter(|w| w.chars().all(figure)).collect()
}

/// What the screens say, without the scale bars of drawings.
fn on_screen(page: &str) -> Said {
    let whole = parsed(page);
    let mut said = Said::new();
    for screen in screens(&whole) {
        let own = screen.descendants().filter(Node::is_text);
        let mut words = String::new();
        for text in own.filter(|n| !is_scale(*n)) {
            words.push_str(text.text().unwrap_or_default());
            let ends = text.parent().is_some_and(|p| !p.has_tag_name("b"));
            words.push_str(if ends { " " } else { "" });
        }
        count(&words, &mut said);
    }
    said
}

/// The length of a drawing's scale bar: its last words, set to the right and not in bold.
fn is_scale(text: Node<'_, '_>) -> bool {
    let Some(element) = text.parent().filter(|p| p.has_tag_name("text")) else {
        return false;
    };
    let last = element.next_siblings().skip(1).all(|n| !n.is_element());
    last && element.attribute("text-anchor") == Some("end")
        && element.attribute("font-weight").is_none()
}

/// A drawing on paper may leave a name out for want of room that the same drawing on the screen shows, and
/// an open point may stand there in its line alone: its figures are in the annex then.
#[test]
fn the_same_figures_are_on_paper_and_on_the_screen() {
    for Shown { name, plan, page } in SHOWN.iter() {
        let (paper, screen) = (on_paper(plan, Annex::Without), on_screen(page));
        let whole = on_paper(plan, Annex::With);
        assert!(paper.len() > 20, "{name}: {paper:?}");
        let alone = alone_on_paper(plan);
        let bare = |figure: &str| {
            let parts = figure.rsplit_once('\u{a0}');
            parts.is_some_and(|(figure, _)| alone.contains(figure))
        };
        let missing = screen
            .keys()
            .filter(|k| !whole.contains_key(*k) && !bare(k));
        let only_screen: Vec<_> = missing.collect();
        assert!(only_screen.is_empty(), "{name}: {only_screen:?}");
        for (figure, times) in paper {
            let shown = screen.get(&figure).copied().unwrap_or_default();
            assert!(
                shown >= times,
                "{name}: {figure}: {times} on paper, {shown}"
            );
        }
    }
}
