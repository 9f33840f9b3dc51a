//! Replays a plan from its JSON alone: moves the disc through every stroke as a solid and looks at
//! what is left. It knows nothing of the planner but the JSON's keys, and its geometry is not the
//! planner's.

#![allow(
    dead_code,
    reason = "two test programs share this, each uses its own part"
)]

mod begun;
mod chord;
pub(crate) mod disc;
pub(crate) mod plane;
mod practice;
pub(crate) mod random_job;
mod relief;
mod ridges;
pub(crate) mod rules;
pub(crate) mod same_job;
mod sawn;
mod steps;
mod sums;
mod twins;

use serde_json::Value;

use begun::{drilled_before, taken_before};
use disc::{Hole, Stroke, drilled, holes, run_outs, strokes, taken};
use plane::{Place, Stone, apart, list, number, place, word};

/// A plan may miss a length by this much, mm: a tenth of what a tape can tell.
pub(crate) const NEAR_MM: f64 = 0.01;
/// Stone smaller than this between overlapping slots is not a piece, mm².
const CRUMB_MM2: f64 = 100.0;
/// Width of the strip on the middle of a kerf in which a run-out is measured, mm.
const MIDDLE_MM: f64 = 0.02;
/// So much the edge of a hole may run aslant within that strip, mm.
const ASLANT_MM: f64 = 0.6;
/// Overlaps smaller than this are rounding, mm².
const JOINED_MM2: f64 = 1.0;

/// What the job asked of the strokes.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Wish {
    pub(crate) score: f64,
    pub(crate) step: f64,
    pub(crate) plunge_step: f64,
    pub(crate) through: f64,
    pub(crate) cusp: f64,
}

/// Everything that is wrong with a plan; nothing when it holds.
pub(crate) fn faults(plan: &Value, wish: &Wish) -> Vec<String> {
    let mut replay = Replay::new(plan);
    replay.outline_is_right(plan);
    for cut in list(plan, "cuts") {
        let (strokes, holes) = (strokes(cut), holes(cut));
        replay
            .faults
            .extend(steps::faults(plan, cut, &strokes, wish));
        replay.run_off(cut, &strokes);
        replay.kept_untouched(cut, &strokes, &holes);
        replay.make(plan, cut, &strokes, &holes);
        replay.by_hand(plan, cut);
        replay.faults.extend(chord::faults(cut));
        replay
            .faults
            .extend(relief::faults(&replay.sawn, plan, cut));
    }
    replay.faults.extend(practice::faults(&replay.sawn, plan));
    replay.nothing_left_over(plan);
    replay.what_is_left(plan);
    replay.faults.extend(sums::faults(plan));
    replay.faults.extend(twins::faults(plan));
    replay.faults
}

/// The stone at one depth.
struct Layer {
    below: f64,
    kept: Stone,
}

struct Replay {
    /// From the face down to the underside.
    layers: Vec<Layer>,
    slab: Stone,
    /// What the saw must leave, and the same a little smaller.
    sawn: Stone,
    untouchable: Stone,
    /// A place of the kept stone.
    inner: Place,
    freed: Vec<String>,
    kerf_mm2: f64,
    faults: Vec<String>,
}

impl Replay {
    fn new(plan: &Value) -> Self {
        let slab = Stone::outline(&plan["slab"]["outline"]);
        let slab = slab.minus(&taken_before(plan));
        let thickness = number(&plan["slab"]["thickness"], "most");
        let layer = |quarter: f64| Layer {
            below: thickness * quarter / 4.0,
            kept: slab.clone(),
        };
        let sawn = sawn::kept(plan);
        let untouchable = sawn.shrunk(NEAR_MM);
        Self {
            layers: [0.0, 1.0, 2.0, 3.0, 4.0].map(layer).into(),
            inner: inner_place(&untouchable),
            untouchable,
            sawn,
            slab,
            freed: Vec::new(),
            kerf_mm2: 0.0,
            faults: Vec::new(),
        }
    }

    // Callers hand over what they have just put together.
    #[allow(clippy::needless_pass_by_value)]
    fn fault(&mut self, cut: &Value, what: String) {
        let (number, edge) = (&cut["number"], &cut["edge"]);
        self.faults.push(format!("cut {number} ({edge}): {what}"));
    }

    /// The planner's sawn outline is the finished top and its allowances.
    fn outline_is_right(&mut self, plan: &Value) {
        self.faults.extend(sawn::faults(plan));
    }

    /// No tool touches what is to be left, at any depth.
    fn kept_untouched(&mut self, cut: &Value, strokes: &[Stroke], holes: &[Hole]) {
        for i in 0..self.layers.len() {
            let below = self.layers[i].below;
            let tools = Stone::all([taken(strokes, below), drilled(holes)]);
            let hit = tools.within(&self.untouchable).area();
            if hit > 1e-3 {
                self.fault(
                    cut,
                    format!("takes {hit:.4} mm² of the kept stone at {below:.1} mm"),
                );
            }
        }
    }

    /// A run-off cut begins and ends outside the stone, at every depth of the disc.
    fn run_off(&mut self, cut: &Value, strokes: &[Stroke]) {
        let straight = matches!(word(cut, "kind"), "straight" | "relief")
            && cut["run_off"] == Value::Bool(true);
        let Some(first) = strokes.first().filter(|_| straight) else {
            return;
        };
        let along = |p: Place| p[0] * first.along[0] + p[1] * first.along[1];
        let passes = strokes.last().map_or(0, |s| s.pass);
        for pass in 1..=passes {
            let ends = strokes.iter().filter(|s| s.pass == pass);
            let mut ends: Vec<Place> = ends.flat_map(|s| [s.from, s.to]).collect();
            ends.sort_by(|a, b| along(*a).total_cmp(&along(*b)));
            for end in [ends.first(), ends.last()].into_iter().flatten() {
                let stone = &self.layers[0].kept;
                if stone.holds(*end) && stone.to_boundary(*end) > NEAR_MM {
                    self.fault(cut, format!("pass {pass} ends inside the stone at {end:?}"));
                }
            }
        }
    }

    /// Makes the cut at every depth and looks at what comes free.
    fn make(&mut self, plan: &Value, cut: &Value, strokes: &[Stroke], holes: &[Hole]) {
        let kerf = self.take(plan, cut, "saw", |below| {
            Stone::all([taken(strokes, below), drilled(holes)])
        });
        if kerf < NEAR_MM {
            self.fault(cut, "meets no stone".into());
        }
    }

    /// Takes out by hand the run-outs that the plan names after this cut: each lies under the cut in the
    /// face, ends where that ends, and is as long as the disc is round.
    fn by_hand(&mut self, plan: &Value, cut: &Value) {
        let numbers = list(cut, "run_outs_removed");
        let (mut out, mut before) = (Vec::new(), Vec::new());
        for other in list(plan, "cuts") {
            if other["number"].as_u64() <= cut["number"].as_u64() {
                before.push(other);
            }
            if !numbers.contains(&other["number"]) {
                continue;
            }
            let face = taken(&strokes(other), 0.0);
            for run_out in run_outs(other) {
                let beside = run_out.slot(0.0).minus(&face).area();
                if beside > NEAR_MM * run_out.length {
                    self.fault(
                        other,
                        format!("a run-out lies {beside:.3} mm² beside its cut"),
                    );
                }
                out.push(run_out);
            }
        }
        self.run_outs_are_left(plan, cut, &before, &out);
        if !out.is_empty() {
            let hand = Stone::all(out.iter().map(|t| t.slot(NEAR_MM)));
            self.take(plan, cut, "hand", |_| hand.clone());
        }
    }

    /// What is left of each run-out at the underside once holes have had their share is as long as said.
    fn run_outs_are_left(
        &mut self,
        plan: &Value,
        cut: &Value,
        before: &[&Value],
        run_outs: &[disc::RunOut],
    ) {
        let new = before.iter().flat_map(|c| holes(c));
        let drilled = drilled(&new.chain(drilled_before(plan)).collect::<Vec<_>>());
        for run_out in run_outs {
            // On the middle of the kerf: a hole's round edge crosses it aslant.
            let middle = run_out.narrowed(MIDDLE_MM);
            let left = middle.slot(0.0).minus(&drilled).area() / middle.kerf;
            if (left - run_out.left).abs() > ASLANT_MM + NEAR_MM {
                self.fault(
                    cut,
                    format!(
                        "{left:.2} mm of a run-out are left, not {:.2}",
                        run_out.left
                    ),
                );
            }
        }
    }

    /// Takes something out of every layer and matches what comes free with the pieces the plan says
    /// that the saw or the hand frees; gives the stone taken from the face, mm².
    fn take(
        &mut self,
        plan: &Value,
        cut: &Value,
        freed: &str,
        tools: impl Fn(f64) -> Stone,
    ) -> f64 {
        let mut lower: Vec<Vec<Stone>> = Vec::new();
        for layer in &mut self.layers[1..] {
            let (kept, free) = split(&layer.kept.minus(&tools(layer.below)), self.inner);
            layer.kept = kept;
            lower.push(free);
        }
        let rest = self.layers[0].kept.minus(&tools(0.0));
        // Not by intersection: clipper2 loses some where many slots meet in a point.
        let kerf = self.layers[0].kept.area() - rest.area();
        self.kerf_mm2 += kerf;
        let (main, parted) = split(&rest, self.inner);
        let (crumbs, parted): (Vec<Stone>, Vec<Stone>) =
            parted.into_iter().partition(|p| p.area() < CRUMB_MM2);
        self.kerf_mm2 += crumbs.iter().map(Stone::area).sum::<f64>();
        // What still hangs on to the kept stone lower down is not free.
        let (hanging, free): (Vec<Stone>, Vec<Stone>) = parted.into_iter().partition(|p| {
            let mut under = self.layers[1..].iter();
            under.any(|layer| layer.kept.within(p).area() > JOINED_MM2)
        });
        self.layers[0].kept = Stone::all(std::iter::once(main).chain(hanging));
        let known: Vec<&Value> = list(cut, "frees")
            .iter()
            .filter_map(|name| list(plan, "pieces").iter().find(|p| p["name"] == *name))
            .collect();
        if known.len() != list(cut, "frees").len() {
            self.fault(cut, format!("frees unknown pieces: {}", cut["frees"]));
        }
        let named: Vec<&Value> = known.into_iter().filter(|p| p["freed"] == *freed).collect();
        self.match_pieces(cut, &named, bodies(free, &lower));
        kerf
    }

    /// The pieces that came free are those the plan names, free of the kept stone and of each
    /// other at every depth.
    fn match_pieces(&mut self, cut: &Value, named: &[&Value], mut found: Vec<Stone>) {
        for piece in named {
            let name = word(piece, "name");
            if self.freed.iter().any(|f| f == name) {
                self.fault(cut, format!("frees {name} a second time"));
            }
            self.freed.push(name.to_owned());
            if piece["after_cut"] != cut["number"] {
                self.fault(cut, format!("{name} says after_cut {}", piece["after_cut"]));
            }
            let (area, balance) = (number(piece, "area_mm2"), place(&piece["balance"]));
            let alike = |p: &Stone| {
                let slack = NEAR_MM * p.perimeter() + 1e-6 * p.area();
                (p.area() - area).abs() <= slack && apart(p.balance(), balance) <= 0.05
            };
            let Some(at) = found.iter().position(alike) else {
                self.fault(
                    cut,
                    format!("{name} ({area:.1} mm² at {balance:?}) does not come free at the face"),
                );
                continue;
            };
            self.as_outlined(cut, piece, &found.remove(at));
        }
        for stray in found {
            let (area, at) = (stray.area(), stray.balance());
            self.fault(cut, format!("{area:.1} mm² come free at {at:?}, not named"));
        }
    }

    /// The piece's own outline is the stone that came free.
    fn as_outlined(&mut self, cut: &Value, piece: &Value, found: &Stone) {
        let rings = list(piece, "outline");
        let said = rings.iter().map(Stone::boundary);
        let said = Stone::all(said);
        let off = said.unlike(found).area();
        if off > NEAR_MM * found.perimeter() {
            let name = word(piece, "name");
            self.fault(cut, format!("{name}'s outline is {off:.2} mm² off"));
        }
    }

    fn nothing_left_over(&mut self, plan: &Value) {
        for piece in list(plan, "pieces") {
            let name = word(piece, "name");
            if !self.freed.iter().any(|f| f == name) {
                self.faults.push(format!("no cut frees {name}"));
            }
        }
    }

    /// What is left at the end, at the face and at the underside: the top, its allowance, cusps.
    fn what_is_left(&mut self, plan: &Value) {
        let sheet = &plan["balance_sheet"];
        let wanted = number(sheet, "top_mm2") + number(sheet, "allowance_mm2");
        let top = sawn::finished(plan);
        let slack = NEAR_MM * self.sawn.perimeter();
        let face = self.layers[0].kept.area();
        if (face - wanted).abs() > slack {
            self.faults.push(format!(
                "what is left is {face:.2} mm², top and allowance are {wanted:.2}"
            ));
        }
        let kerf = number(sheet, "kerf_mm2");
        let round: f64 = list(plan, "cuts")
            .iter()
            .flat_map(holes)
            .map(|h| h.radius * std::f64::consts::TAU)
            .sum();
        // Chords lie inside their circles.
        let slack = 1e-4 * self.slab.perimeter() + plane::CHORD_MM * round;
        if (self.kerf_mm2 - kerf).abs() > slack {
            let ours = self.kerf_mm2;
            self.faults.push(format!(
                "the kerf takes {ours:.2} mm², the sheet says {kerf:.2}"
            ));
        }
        for i in 0..self.layers.len() {
            let (below, kept) = (self.layers[i].below, self.layers[i].kept.clone());
            let missing = top.minus(&kept).area();
            if missing > slack {
                self.faults.push(format!(
                    "{missing:.2} mm² of the top are missing at {below:.1} mm"
                ));
            }
            self.ridges(plan, below, &kept);
        }
    }
}

/// A place inside a stone, clear of its boundary.
fn inner_place(stone: &Stone) -> Place {
    let parts = stone.shrunk(1.0);
    let inside = |p: &Place| parts.holds(*p);
    let balance = parts.balance();
    if inside(&balance) {
        return balance;
    }
    let corners: Vec<Place> = parts.corners().collect();
    let pairs = corners
        .iter()
        .flat_map(|a| corners.iter().map(move |b| (a, b)));
    let middle = |(a, b): (&Place, &Place)| [0, 1].map(|k| f64::midpoint(a[k], b[k]));
    let found = pairs
        .map(middle)
        .find(|p| inside(p) && parts.to_boundary(*p) > 0.2);
    found.unwrap_or(corners[0])
}

/// The part that holds the middle of the top, and the rest.
fn split(stone: &Stone, middle: Place) -> (Stone, Vec<Stone>) {
    let (kept, free): (Vec<Stone>, Vec<Stone>) =
        stone.parts().into_iter().partition(|p| p.holds(middle));
    (Stone::all(kept), free)
}

/// Parts of the face that hang together at any lower depth are one body.
fn bodies(free: Vec<Stone>, lower: &[Vec<Stone>]) -> Vec<Stone> {
    lower.iter().flatten().fold(free, |bodies, under| {
        let (on, mut rest): (Vec<Stone>, Vec<Stone>) = bodies
            .into_iter()
            .partition(|b| under.within(b).area() > JOINED_MM2);
        if !on.is_empty() {
            rest.push(Stone::all(on));
        }
        rest
    })
}
