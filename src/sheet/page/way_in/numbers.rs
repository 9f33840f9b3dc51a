//! What each aid needs, and what knocks a standing stone over, as tables and as rows of text.

use crate::handle::aid::sling::Slings;
use crate::handle::aid::trolley::{OnTrolley, RAMP_RUN};
use crate::handle::aid::vacuum::Cups;
use crate::handle::aid::{Aids, Rating};
use crate::handle::fall::Fall;
use crate::handle::moving::Moving;
use crate::job::Aid;
use crate::plan::Plan;
use crate::sheet::figure::Figures;
use crate::sheet::flow::Scale;
use crate::sheet::page::both::Both;
use crate::sheet::table::{Heading, Table, Width};
use crate::units::{LengthUnit, Mass};

/// What stands under the table of falls.
pub(super) const FALL_WORDS: &str = "It turns over its arris by itself beyond the lean given. The pull is at \
     the upper edge, level; the tie and what it is fixed to must hold several times that. Nobody within \
     its height of it on either side, nobody catches it. Tie it before letting go; its foot must not slip out. Set it down on two battens.";

/// What stands under the table of aids.
pub(super) const AID_WORDS: &str = "Makers' instructions and competent people come first; lifting gear is \
     inspected, marked, and set up by a competent, where the law asks for it licensed, person. Trolley: \
     standing still on hard tyres; it tips sooner when it moves. Ramps: held back from uphill. Vacuum \
     lifter: only on a dry, clean, sound, smooth face, never on a rough or split one, and with a second \
     securing under the stone. Slings: hook over the balance point, edges padded, slings tied apart, tag \
     line at each end, nobody under or beside it.";

/// A mass that must be marked or held: never rounded down.
fn no_less(figures: Figures, mass: Mass) -> String {
    let (kg, pounds) = (mass.kg().ceil(), mass.pounds().ceil());
    match figures.units {
        LengthUnit::Millimetre => format!("{kg:.0} kg ({pounds:.0} lb)"),
        LengthUnit::Inch => format!("{pounds:.0} lb ({kg:.0} kg)"),
    }
}

fn both(figures: Figures, mass: Mass) -> String {
    Both::of(figures).mass(mass)
}

/// A mass that is already too much: never rounded up.
fn no_more(figures: Figures, mass: Mass) -> String {
    let [kg, pounds] = [mass.kg(), mass.pounds()].map(|m| (m * 10.0).floor() / 10.0);
    match figures.units {
        LengthUnit::Millimetre => format!("{kg:.1} kg ({pounds:.1} lb)"),
        LengthUnit::Inch => format!("{pounds:.1} lb ({kg:.1} kg)"),
    }
}

/// One thing told of the slab and of the top.
pub type Told = (String, [String; 2]);

fn of<T>(two: &[T; 2], name: &str, tell: impl Fn(&T) -> String) -> Told {
    (name.to_owned(), two.each_ref().map(tell))
}

/// What knocks a standing stone over, and what holds it: for the slab, for the top.
#[must_use]
pub fn falls(moving: &Moving, figures: Figures) -> Vec<Told> {
    let of = |name: &str, tell: &dyn Fn(&Fall) -> String| of(&moving.falls, name, tell);
    let mut rows = vec![
        of("keep clear on both sides", &|f| {
            figures.size(f.shadow_mm.ceil())
        }),
        of("a push on its upper edge tips it", &|f| {
            no_more(figures, f.push_tips)
        }),
        of("falls by itself beyond a lean of", &|f| {
            format!("{:.1}°", f.tips_at_deg)
        }),
    ];
    let leans = moving.falls[0].ties.len();
    for i in 0..leans {
        let lean = moving.falls[0].ties[i].lean_deg;
        let name = format!("leaning {lean:.0}°, the tie pulls");
        rows.push(of(&name, &|f| {
            f.ties
                .get(i)
                .map_or_else(String::new, |t| no_less(figures, t.pull))
        }));
    }
    rows
}

/// What each aid needs: for the slab, for the top.
#[must_use]
pub fn aids(moving: &Moving, figures: Figures) -> Vec<Told> {
    let mut rows = trolley(&moving.aids, figures);
    rows.extend(vacuum(&moving.aids, figures));
    rows.extend(slings(&moving.aids, figures));
    if moving.aids.iter().any(|a| a.rating != Rating::NotGiven) {
        let name = format!("the {} at hand", aid_name(moving.aid));
        rows.push(of(&moving.aids, &name, |a| rating(a, figures)));
    }
    rows
}

fn trolley(aids: &[Aids; 2], figures: Figures) -> Vec<Told> {
    let of = |name: &str, tell: &dyn Fn(&OnTrolley) -> String| of(aids, name, |a| tell(&a.trolley));
    let [first, _] = aids.each_ref().map(|a| a.trolley);
    let track = figures.size_bare(first.track_mm);
    let deck = figures.size_label(first.deck_mm);
    let across = format!("tips across, track {track}, deck {deck}");
    let ramp = format!("a ramp of 1 in {RAMP_RUN:.0} adds");
    vec![
        of("trolley: marked for", &|t| no_less(figures, t.rated)),
        of("balance point above its deck", &|t| {
            figures.size(t.balance_mm)
        }),
        of(&across, &|t| format!("{:.1}°", t.tips_at_deg)),
        of("push on the level, at least", &|t| {
            both(figures, t.level_push)
        }),
        of(&ramp, &|t| both(figures, t.ramp_adds)),
    ]
}

fn vacuum(aids: &[Aids; 2], figures: Figures) -> [Told; 2] {
    [
        of(aids, "vacuum lifter: marked for", |a| {
            no_less(figures, a.vacuum.rated)
        }),
        of(aids, "cups, each carrying", |a| {
            cups(&a.vacuum.cups, figures)
        }),
    ]
}

fn slings(aids: &[Aids; 2], figures: Figures) -> [Told; 4] {
    let of = |name: &str, tell: &dyn Fn(&Slings) -> String| of(aids, name, |a| tell(&a.slings));
    let legs = format!("pull in each leg at {:.0}°", aids[0].slings.legs_deg);
    [
        of("slings: from the left end", &|s| sling_places(s, figures)),
        of("weight on each sling", &|s| no_less(figures, s.each)),
        of(&legs, &|s| no_less(figures, s.tension)),
        of("hook above the stone, at least", &|s| {
            figures.size(s.hook_mm.ceil())
        }),
    ]
}

/// An aid in words.
#[must_use]
pub const fn aid_name(aid: Aid) -> &'static str {
    match aid {
        Aid::None => "hands",
        Aid::Trolley => "trolley",
        Aid::VacuumLifter => "vacuum lifter",
        Aid::Gantry => "gantry",
    }
}

fn rating(aids: &Aids, figures: Figures) -> String {
    match aids.rating {
        Rating::NotGiven => "mark not given".to_owned(),
        Rating::Enough { rated, .. } => format!("marked for {}", both(figures, rated)),
        Rating::TooWeak { rated, needs } => format!(
            "TOO WEAK: marked for {}, needs {}",
            both(figures, rated),
            no_less(figures, needs)
        ),
    }
}

fn cups(cups: &Cups, figures: Figures) -> String {
    match cups {
        Cups::NoRoom => "no room for a pair of cups".to_owned(),
        Cups::Placed {
            from_end_and_side_mm,
            each,
            ..
        } => {
            let bare = |mm: &f64| figures.size_bare(*mm);
            let places: Vec<String> = from_end_and_side_mm
                .iter()
                .map(|[end, side]| format!("({}, {})", bare(end), bare(side)))
                .collect();
            format!(
                "{}, at {} {} from the left end and the side",
                no_less(figures, *each),
                places.join(", "),
                figures.unit()
            )
        }
    }
}

fn sling_places(slings: &Slings, figures: Figures) -> String {
    let [first, second] = slings.from_end_mm;
    format!("{} and {}", figures.size_bare(first), figures.size(second))
}

pub(super) fn fall_table(plan: &Plan, figures: Figures) -> Table {
    table(&plan.handling.moving, falls(&plan.handling.moving, figures))
}

pub(super) fn aid_table(plan: &Plan, figures: Figures) -> Table {
    table(&plan.handling.moving, aids(&plan.handling.moving, figures))
}

fn table(moving: &Moving, told: Vec<Told>) -> Table {
    let [slab, top] = moving.aids.each_ref().map(|a| sentence(&a.name));
    let rows = told
        .into_iter()
        .map(|(name, [slab, top])| vec![sentence(&name), slab, top]);
    Table {
        headings: vec![
            Heading::words("", Width::Part(1.0)),
            Heading::words(slab, Width::Part(1.0)),
            Heading::words(top, Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::DESK.body,
    }
}

fn sentence(text: &str) -> String {
    super::sentence(text)
}
