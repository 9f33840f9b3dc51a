//! The helper's briefing: large type, short sentences, boxes to tick, lines to write on, a line to
//! sign; in the language of the job.
//!
//! Every number comes from the plan. What it says is in the catalogues (`words/en/helper.toml`).

mod entry;
mod scene;

use crate::diag::Values;
use crate::handle::Piece;
use crate::handle::lift::{Lifter, Share, Verdict};
use crate::hazard::respirator::Required;
use crate::job::{DustMethod, Power};
use crate::plan::Plan;
use crate::sheet::book::Book;
use crate::sheet::figure::Figures;
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::units::Mass;
use crate::words::Catalogue;
use entry::Entry;

/// Adds the pages.
pub fn add(book: &mut Book<'_>) {
    let say = Say::of(book);
    let name = say.line("name", &[]);
    let scale = Scale {
        notice_words: book.words.notice(),
        ..Scale::HELPER
    };
    let mut pages = entry::Pages::new(book.column(scale));
    for entry in say.entries() {
        pages.place(entry, || book.column(scale));
    }
    for items in pages.finish() {
        book.add(&name, items);
    }
}

/// What the page is written from.
#[derive(Clone, Copy)]
pub(super) struct Say<'a> {
    plan: &'a Plan,
    figures: Figures,
    words: &'static Catalogue,
}

impl<'a> Say<'a> {
    const fn of(book: &Book<'a>) -> Self {
        Self {
            plan: book.plan,
            figures: book.figures,
            words: book.words,
        }
    }

    /// A template of the page, filled.
    fn line(&self, id: &str, values: &Values) -> String {
        self.words.say(&format!("helper.{id}"), values)
    }

    fn mass(&self, mass: Mass) -> String {
        self.words.value(&self.figures.mass(mass))
    }

    fn heading(&self, id: &str) -> Entry {
        Block::Subheading(self.line(id, &[])).into()
    }

    /// Boxes to tick, one for each line.
    fn boxes(lines: Vec<String>) -> Entry {
        Entry::Boxes(Mark::Square, lines)
    }

    /// Everything on the page, from top to bottom.
    fn entries(&self) -> Vec<Entry> {
        let mut entries = self.opening();
        entries.push(self.heading("place.heading"));
        if let Some(cut) = self.plan.cuts.first() {
            entries.push(Entry::Drawing(scene::places(self, cut)));
        }
        entries.push(Self::boxes(self.place()));
        entries.push(self.heading("weight.heading"));
        entries.push(Self::boxes(self.weight()));
        let waste = self.waste();
        if !waste.is_empty() {
            entries.push(Self::boxes(vec![self.line("weight.waste", &[])]));
            entries.push(Entry::Boxes(Mark::Dot, waste));
        }
        entries.push(self.heading("stop.heading"));
        entries.push(Self::boxes(self.stop()));
        entries.push(self.heading("wear.heading"));
        entries.push(Self::boxes(self.wear()));
        entries.push(self.heading("never.heading"));
        entries.push(Self::boxes(self.never()));
        entries.extend(self.blanks());
        entries
    }

    fn opening(&self) -> Vec<Entry> {
        let first = if self.plan.stops.is_empty() {
            Block::Heading(self.line("title", &[]))
        } else {
            Block::Notice(Grade::Stop, self.line("stopped", &[]), Vec::new())
        };
        let mut entries: Vec<Entry> = vec![first.into()];
        let standing = self.words.standing();
        entries.extend(standing.into_iter().map(|s| Block::Note(s).into()));
        entries.push(Block::Paragraph(self.line("tick", &[])).into());
        entries
    }

    fn place(&self) -> Vec<String> {
        let people = self.plan.handling.top.lift.lifters.len();
        let crew = match people {
            0 | 1 => Some(self.line("place.alone", &[])),
            2 => None,
            _ => Some(self.line("place.crew", &[("people", people.to_string())])),
        };
        let power = match self.plan.kit.power {
            Power::Mains => "place.mains",
            Power::Battery => "place.battery",
            Power::Air => "place.air",
            Power::Engine => "place.engine",
        };
        let tap = self.is_wet().then(|| self.line("place.tap", &[]));
        let handling = &self.plan.handling;
        let reach = handling.slab.width_mm.max(handling.top.width_mm);
        // Up to a whole centimetre: a shadow is never rounded down.
        let reach = self.figures.size((reach / 10.0).ceil() * 10.0);
        let mut lines: Vec<String> = crew.into_iter().collect();
        lines.push(self.line("place.see", &[]));
        lines.push(self.line(power, &[]));
        lines.extend(tap);
        lines.push(self.line("place.band", &[]));
        lines.push(self.line("place.fall", &[("reach", reach)]));
        lines
    }

    fn is_wet(&self) -> bool {
        self.plan.kit.dust_method == DustMethod::Water
    }

    fn weight(&self) -> Vec<String> {
        let (slab, top) = (&self.plan.handling.slab, &self.plan.handling.top);
        let mut lines = vec![self.heavy("weight.slab", slab)];
        lines.push(self.heavy("weight.top", top));
        if !matches!(top.lift.verdict, Verdict::NotAHandLift { .. }) {
            lines.extend(top.lift.lifters.iter().map(|l| self.share(l)));
            lines.extend(self.verdict(top.lift.verdict));
            lines.push(self.line("weight.guide", &[]));
        }
        lines.push(self.line("weight.carry", &[]));
        lines
    }

    /// What a stone weighs, and whether hands may lift it at all.
    fn heavy(&self, id: &str, piece: &Piece) -> String {
        let weighs = self.line(id, &[("mass", self.mass(piece.mass.high))]);
        match piece.lift.verdict {
            Verdict::NotAHandLift { .. } => {
                format!("{weighs} {}", self.line("weight.not_by_hand", &[]))
            }
            _ => weighs,
        }
    }

    fn share(&self, lifter: &Lifter) -> String {
        let carried = match lifter.share {
            Share::Carries(mass) => mass,
            Share::LiftsOff => Mass::default(),
        };
        let mut values = vec![
            ("number", lifter.number.to_string()),
            ("mass", self.mass(carried)),
        ];
        let Some(limit) = lifter.limit else {
            return self.line("weight.share_only", &values);
        };
        values.push(("limit", self.mass(limit)));
        self.line("weight.share", &values)
    }

    fn verdict(&self, verdict: Verdict) -> Option<String> {
        let id = match verdict {
            Verdict::Within { .. } | Verdict::NotAHandLift { .. } => return None,
            Verdict::Over { .. } => "weight.over",
            Verdict::Tips { .. } => "weight.tips",
            Verdict::TooManyHands { .. } => "weight.too_many",
        };
        Some(self.line(id, &[]))
    }

    fn waste(&self) -> Vec<String> {
        let pieces = self.plan.pieces.iter().map(|p| {
            let values = [
                ("name", p.name.clone()),
                ("mass", self.mass(p.mass.high)),
                ("cut", p.after_cut.to_string()),
            ];
            self.line("weight.waste_piece", &values)
        });
        pieces.collect()
    }

    fn stop(&self) -> Vec<String> {
        let power = match self.plan.kit.power {
            Power::Mains => "stop.mains",
            Power::Air => "stop.air",
            Power::Battery | Power::Engine => "stop.sawyer_only",
        };
        let dust = match self.plan.kit.dust_method {
            DustMethod::Water => "stop.water",
            DustMethod::Shroud => "stop.shroud",
            DustMethod::None => "stop.none",
        };
        let ids = [
            "stop.hand",
            "stop.voice",
            power,
            "stop.try",
            "stop.anyone",
            "stop.when",
            dust,
        ];
        ids.map(|id| self.line(id, &[])).to_vec()
    }

    fn wear(&self) -> Vec<String> {
        let h = &self.plan.hazards;
        let mask = match h.respirator.required {
            Required::AtLeast(factor) => {
                self.line("wear.mask_factor", &[("factor", factor.to_string())])
            }
            Required::MustBeAssessed => self.line("wear.mask_unsettled", &[]),
            Required::NoneAsked => self.line("wear.mask_ready", &[]),
        };
        let here = [("mask", h.respirator.at_hand.to_owned())];
        let level = [("level", format!("{:.0}", h.noise.level_db.ceil()))];
        let clothes = if self.is_wet() {
            "wear.wet"
        } else {
            "wear.dry"
        };
        vec![
            format!("{mask} {}", self.line("wear.mask_here", &here)),
            self.line("wear.ear", &level),
            self.line("wear.eye", &[]),
            self.line("wear.hand", &[]),
            self.line("wear.foot", &[]),
            self.line(clothes, &[]),
        ]
    }

    fn never(&self) -> Vec<String> {
        let mut ids = vec!["line", "under", "catch", "disc"];
        if self.plan.kit.power == Power::Mains {
            ids.push("plug");
        }
        ids.extend(["sweep", "mask", "alone"]);
        let line = |id: &&str| self.line(&format!("never.{id}"), &[]);
        ids.iter().map(line).collect()
    }

    /// Lines to write on: where power and water are cut, whom to call, and who has read it.
    fn blanks(&self) -> Vec<Entry> {
        let fill = |id: &str| self.line(&format!("fill.{id}"), &[]);
        let mut entries = vec![self.heading("fill.heading")];
        let power = match self.plan.kit.power {
            Power::Mains => Some("mains"),
            Power::Air => Some("air"),
            Power::Battery | Power::Engine => None,
        };
        let water = self.is_wet().then_some("water");
        let always = ["emergency", "address", "first_aid"];
        for id in power.into_iter().chain(water).chain(always) {
            entries.push(Entry::Line(vec![fill(id)]));
        }
        entries.push(Self::boxes(vec![fill("read")]));
        for id in ["helper", "sawyer"] {
            entries.push(Entry::Line(vec![fill(id), fill("date")]));
        }
        entries
    }
}
