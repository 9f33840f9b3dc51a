//! Sections on bench pages: each on one page, its drawings and its type as large as fits; those that may
//! share a page do where there is room, and closer together where a job takes many pages.

use std::borrow::Cow;

use rayon::iter::{IndexedParallelIterator, IntoParallelRefIterator, ParallelIterator};

use super::book::{Book, Filled, WELL};
use super::heights::Trial;
use super::setter::{Said, Setter};
use super::voice::STEPS;
use crate::document::block::{Block, Card, Section, Sharing};

/// What a page is tried with in turn: how much it says, and to which part of the height they like its
/// drawings shrink (judgement).
const TRIED: [(Said, f64); 7] = [
    (Said::InFull, WELL),
    (Said::OpenInShort, WELL),
    (Said::InFull, 0.42),
    (Said::OpenInShort, 0.42),
    (Said::InShort, WELL),
    (Said::InShort, 0.42),
    (Said::InShort, 0.2),
];
/// A page that more sections share keeps this part of its drawings' height, and words among the
/// larger steps; where one section stands below a drawing that holds everything, more (judgement).
const LARGE: f64 = 0.85;
const LARGE_STEPS: usize = 3;
const LOOSE: Closeness = Closeness {
    floating: (LARGE_STEPS, &[(Said::InFull, LARGE)]),
    shared: (LARGE_STEPS, &[(Said::InFull, WELL)]),
};
const CLOSE: Closeness = Closeness {
    floating: (STEPS, &CLOSER),
    shared: (STEPS, &CLOSER),
};
const CLOSER: [(Said, f64); 3] = [
    (Said::InFull, WELL),
    (Said::InFull, 0.42),
    (Said::InFull, 0.3),
];
/// More pages than these are drawn closer together (judgement).
const MOST_PAGES: usize = 8;

/// Steps of type, and what a page says at which size of its drawings.
type Trials = (usize, &'static [(Said, f64)]);
const ALL: Trials = (STEPS, &TRIED);

/// How closely sections may stand.
#[derive(Clone, Copy)]
struct Closeness {
    floating: Trials,
    shared: Trials,
}
impl<'a> Book<'a> {
    /// The bench pages: each as many sections as may share it, and of one page too many for a folder
    /// as many as fit at all.
    pub(super) fn bench(&self, sections: &[&'a Section]) -> Vec<Filled<'a>> {
        self.measure(sections);
        let pages = self.shared(sections, LOOSE);
        if pages.len() <= MOST_PAGES {
            return pages;
        }
        let closer = self.shared(sections, CLOSE);
        if closer.len() < pages.len() {
            closer
        } else {
            pages
        }
    }

    /// Finds the heights of the blocks of each section that may fill a page, side by side: most of them do.
    fn measure(&self, sections: &[&'a Section]) {
        let alone = sections.par_iter().with_max_len(1);
        alone
            .filter(|section| section.sharing != Sharing::InPairs)
            .for_each(|section| {
                let _ = self.fitting(&[section], ALL);
            });
    }

    fn shared(&self, sections: &[&'a Section], close: Closeness) -> Vec<Filled<'a>> {
        let settled = self.settled(sections, close.floating);
        let (mut pages, mut rest) = (Vec::new(), &settled[..]);
        while !rest.is_empty() {
            let share = |n: &usize| self.share(&rest[..*n].concat(), close.shared);
            let together = (2..=rest.len()).take_while(share).last();
            let (now, later) = rest.split_at(together.unwrap_or(1));
            pages.push(now.concat());
            rest = later;
        }
        self.balance(&mut pages, close.shared);
        let each = pages.par_iter().with_max_len(1);
        let each = each.flat_map_iter(|page| self.bench_page(page));
        each.collect()
    }

    /// Spreads cards evenly over the pages in a row that hold nothing else: two and two rather than three and one.
    fn balance(&self, pages: &mut Vec<Vec<&Section>>, within: Trials) {
        let of_cards = |page: &Vec<&Section>| page.iter().all(|s| s.sharing == Sharing::InPairs);
        let even = pages
            .chunk_by(|a, b| of_cards(a) && of_cards(b))
            .flat_map(|run| {
                let cards = run.concat();
                let spread: Vec<&[&Section]> = parts(&cards, run.len());
                if spread
                    .iter()
                    .all(|page| page.len() < 2 || self.share(page, within))
                {
                    spread.into_iter().map(<[_]>::to_vec).collect()
                } else {
                    run.to_vec()
                }
            });
        *pages = even.collect();
    }

    /// The sections, each floating one with the one before it or with the last.
    fn settled(&self, sections: &[&'a Section], within: Trials) -> Vec<Vec<&'a Section>> {
        let (mut settled, mut late): (Vec<Vec<&Section>>, Vec<&Section>) = (Vec::new(), Vec::new());
        for section in sections {
            let before = settled.last_mut();
            match before.filter(|_| section.sharing == Sharing::Floating) {
                Some(page) => {
                    let both = [&page[..], &[*section]].concat();
                    let overflows = self.fitting(page, ALL).is_none();
                    if overflows || self.fitting(&both, within).is_some() {
                        *page = both;
                    } else {
                        late.push(section);
                    }
                }
                None => settled.push(vec![section]),
            }
        }
        if let Some(last) = settled.last_mut() {
            last.splice(0..0, late);
        }
        settled
    }

    /// Whether sections stand on one page.
    fn share(&self, sections: &[&Section], within: Trials) -> bool {
        let pair = sections.len() == 2 && sections.iter().all(|s| s.sharing == Sharing::InPairs);
        let within = if pair { ALL } else { within };
        let may = sections.iter().all(|s| s.sharing != Sharing::Alone);
        may && self.fitting(sections, within).is_some()
    }

    /// The setter of the largest words and drawings with which sections fit on one page.
    fn fitting(&self, sections: &[&Section], (steps, tried): Trials) -> Option<Setter> {
        let (area, blocks) = (self.area(), joined(sections));
        let reading = sections.first()?.reading;
        let height = |setter: &Setter, trial: Trial| -> f64 {
            let each = blocks.iter().map(|block| match block {
                Cow::Borrowed(kept) => self.heights.of(kept, area.width(), setter, trial),
                Cow::Owned(made) => setter.extent(made, area.width()).least,
            });
            each.sum::<f64>() + setter.gaps(&blocks)
        };
        // The words shrink before the drawings become too small to read.
        let each = tried
            .iter()
            .flat_map(|tried| (0..steps).map(move |step| (step, *tried)));
        let mut setters = each.filter_map(|(step, (said, share))| {
            let trial = Trial {
                step,
                said,
                share,
                reading,
            };
            let setter = self.setter(sections.first()?, step, (said, share));
            Some((setter, trial))
        });
        let fits = |(setter, trial): &(Setter, Trial)| height(setter, *trial) <= area.height();
        setters.find(fits).map(|(setter, _)| setter)
    }

    /// Sections on more pages than one: in the largest type that takes as few as the smallest.
    fn overleaf(&self, sections: &[&'a Section]) -> Vec<Filled<'a>> {
        let fewest = self.flow(sections, STEPS - 1);
        let larger = (0..STEPS - 1).map(|step| self.flow(sections, step));
        let same = { larger }.find(|pages| pages.len() <= fewest.len());
        same.unwrap_or(fewest)
    }

    /// A page of one section or some; on more pages when even the smallest type does not fit on one.
    fn bench_page(&self, sections: &[&'a Section]) -> Vec<Filled<'a>> {
        let Some(setter) = self.fitting(sections, ALL) else {
            return self.overleaf(sections);
        };
        let (items, _) = setter.stack(&joined(sections), self.area());
        let mut names: Vec<String> = sections
            .iter()
            .map(|s| setter.writer.say(&s.name))
            .collect();
        names.dedup();
        let name = names.join(" · ");
        let first = sections.first().copied();
        let page = first.map(|section| Filled {
            section,
            name,
            items,
        });
        page.into_iter().collect()
    }
}

/// A row in so many parts of the same length, the first ones longer by one where it does not go up.
fn parts<T>(row: &[T], count: usize) -> Vec<&[T]> {
    let (each, more) = (row.len() / count, row.len() % count);
    let end = |i: usize| i * each + i.min(more);
    (0..count).map(|i| &row[end(i)..end(i + 1)]).collect()
}

/// The blocks of sections on one page; a card that has it to itself is as wide as the page.
fn joined<'s>(sections: &[&'s Section]) -> Vec<Cow<'s, Block>> {
    let blocks: Vec<&Block> = sections.iter().flat_map(|s| &s.blocks).collect();
    if let [Block::Card(card)] = &blocks[..] {
        let alone = Card {
            blocks: stacked(card.blocks.clone()),
            ..card.clone()
        };
        return vec![Cow::Owned(Block::Card(alone))];
    }
    blocks.into_iter().map(Cow::Borrowed).collect()
}

/// The drawing over the whole width, the words below it.
fn stacked(blocks: Vec<Block>) -> Vec<Block> {
    let each = blocks.into_iter().flat_map(|block| match block {
        Block::Beside(_, mut left, right) => {
            left.extend(right);
            left
        }
        other => vec![other],
    });
    each.collect()
}
