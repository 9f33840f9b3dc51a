//! The way to the cuts, and their order.
//!
//! Core holes at inside corners of the top come first, while the slab is whole and bears the bit all
//! round. Then the trims that run off, in the placement's order; the cuts that stop at inside
//! corners; curves; the openings last, single holes before sawn openings, because an opening
//! weakens the top and nothing should be sawn beside its rails. Where it saves a change of disc, curves
//! come before the stopped cuts. At every stage the stone holds the whole finished top, so the kept
//! stone never hangs on less than the top itself ([`super::rail`] looks at that).

use crate::diag::{Finding, Findings};
use crate::geom::{Arc, Line, Outline, Point, Region, Seg, Side, boolean};
use crate::job::{Finish, Job, Part};
use crate::place::{Placement, Trim};

use super::disc::{self, Sunk, Task};
use super::inside::{self, Place, Way};
use super::kept::{Joint, Kept, Piece, Ring, Whose};
use super::{
    Because, Cut, CutKind, Hole, LeftOver, Remains, Removal, core, curve, cutout, hollow, rail,
    relief, stopped, straight,
};

/// The cuts being planned.
pub(super) struct Course<'a> {
    pub(super) job: &'a Job,
    pub(super) placement: &'a Placement,
    pub(super) kept: Kept,
    /// What is left of the slab so far.
    pub(super) stone: Outline,
    pub(super) cuts: Vec<Cut>,
    pub(super) findings: Findings,
}

/// Plans every cut in its order.
///
/// Pieces are not yet known: [`Cut::frees`] is filled by the next stage. The findings hold a stop
/// for each cut that no tool of the kit can make.
#[must_use]
pub fn plan(job: &Job, placement: &Placement) -> (Vec<Cut>, Findings) {
    let (kept, bores) = cutout::bored(job, Kept::of(placement), placement);
    let mut course = Course {
        job,
        placement,
        kept,
        stone: job.slab.shape.outline().clone(),
        cuts: Vec::new(),
        findings: Findings::default(),
    };
    let ring = course.kept.rings[0].clone();
    let places = course.places(&ring);
    course.holes(&ring, &places, &Because::SlabWhole);
    let stopped = course.run_off_trims(&ring);
    let groups = groups(&ring, &stopped);
    if course.curves_before(&groups) {
        course.curves(&ring);
        course.groups(&ring, &places, &groups);
    } else {
        course.groups(&ring, &places, &groups);
        course.curves(&ring);
    }
    cutout::all(&mut course, &bores);
    course.say_why();
    course.findings.append(rail::findings(job));
    let Course {
        cuts, mut findings, ..
    } = course;
    once(&mut findings.stops);
    once(&mut findings.cautions);
    (cuts, findings)
}

/// Each finding once, in the order they came.
fn once(findings: &mut Vec<Finding>) {
    let mut told: Vec<Finding> = Vec::new();
    findings.retain(|f| {
        let new = !told.contains(f);
        if new {
            told.push(f.clone());
        }
        new
    });
}

/// Pieces of a boundary that stopped cuts and hollow arcs make together: their tails are taken out when
/// the last of them is made.
type Group = Vec<usize>;

/// Runs of neighbouring pieces that meet at inside corners or along hollow arcs.
fn groups(ring: &Ring, stopped: &[usize]) -> Vec<Group> {
    let inside = |piece: usize| stopped.contains(&piece) || ring.pieces[piece].hollow().is_some();
    let mut groups: Vec<Group> = Vec::new();
    for piece in (0..ring.pieces.len()).filter(|p| inside(*p)) {
        let before = ring.before(piece);
        let joined = ring.joint_after(before) != Joint::Outside;
        match groups.last_mut() {
            Some(last) if joined && last.last() == Some(&before) => last.push(piece),
            _ => groups.push(vec![piece]),
        }
    }
    // The last run may go on at the first piece.
    let wraps = groups.len() > 1
        && groups[0].first() == Some(&0)
        && groups[groups.len() - 1].last() == Some(&(ring.pieces.len() - 1))
        && ring.joint_after(ring.pieces.len() - 1) != Joint::Outside;
    if wraps && let Some(mut last) = groups.pop() {
        last.append(&mut groups[0]);
        groups[0] = last;
    }
    groups
}

impl Course<'_> {
    pub(super) fn push(&mut self, mut cut: Cut) {
        cut.number = self.cuts.len() + 1;
        self.cuts.push(cut);
    }

    /// The inside corners and hollow arcs of a boundary that lie in the stone, and what is to be told.
    pub(super) fn places(&mut self, ring: &Ring) -> Vec<Place> {
        let slab = self.job.slab.shape.outline();
        let mut places = inside::places(self.job, &self.kept, ring);
        places.retain(|place| {
            let sides = [place.sides.before, place.sides.after];
            let sawn = sides.iter().any(|p| ring.pieces[*p].sawn) || place.arc.is_some();
            let at = place.arc.map_or_else(
                || ring.pieces[place.sides.before].seg.end(),
                |arc| ring.pieces[arc].seg.at(0.5),
            );
            sawn && slab.depth(at) > 1.0
        });
        for place in &places {
            self.findings
                .append(inside::findings(self.job, ring, place));
        }
        places
    }

    /// The core holes of a boundary, one cut for each bit.
    pub(super) fn holes(&mut self, ring: &Ring, places: &[Place], because: &Because) {
        let mut bits: Vec<core::Drilled> = Vec::new();
        for place in places {
            let Way::Bored(bored) = &place.way else {
                continue;
            };
            let piece = &ring.pieces[place.arc.unwrap_or(place.sides.before)];
            let name = place.arc.map_or_else(
                || inside::corner_between(ring, place.sides),
                |arc| ring.pieces[arc].name.clone(),
            );
            let left = core::left(bored);
            match bits.iter_mut().find(|d| d.bit == bored.bit) {
                Some(drilled) => {
                    drilled.name = format!("{}, {name}", drilled.name);
                    drilled.holes.extend(&bored.holes);
                    drilled.left_to_remove.extend(left);
                }
                None => bits.push(core::Drilled {
                    whose: ring.whose,
                    name,
                    bit: bored.bit,
                    holes: bored.holes.clone(),
                    allowance_mm: piece.allowance_mm,
                    finish: self.finish(ring.whose, piece.part),
                    because: because.clone(),
                    left_to_remove: left.into_iter().collect(),
                }),
            }
        }
        for drilled in bits {
            self.push(core::plan(self.job, drilled));
        }
    }

    pub(super) fn finish(&self, whose: Whose, part: Part) -> Finish {
        match whose {
            Whose::Top => straight::finish_of(self.job, part),
            Whose::Cutout(i) => self.job.top.cutouts[i].finish,
        }
    }

    /// Makes the trims that run off, in the placement's order, and gives the sawn pieces that do not.
    fn run_off_trims(&mut self, ring: &Ring) -> Vec<usize> {
        let mut waiting = self.trims(ring);
        loop {
            let next = waiting.iter().position(|trim| self.runs_off(trim));
            let Some(next) = next else { break };
            let trim = waiting.remove(next);
            self.run_off(&trim);
        }
        let piece = |trim: &Trim| ring.pieces.iter().position(|p| p.part == trim.part);
        waiting
            .iter()
            .filter(|trim| self.stone.chord(&trim.face, trim.middle).is_some())
            .filter_map(piece)
            .collect()
    }

    /// The placement's trims, and behind them any straight sawn piece that it left out.
    fn trims(&self, ring: &Ring) -> Vec<Trim> {
        let mut trims = self.placement.trims.clone();
        let slab = self.job.slab.shape.outline();
        for piece in ring.pieces.iter().filter(|p| p.sawn) {
            let Seg::Line(a, b) = piece.seg else { continue };
            if trims.iter().any(|t| t.part == piece.part) {
                continue;
            }
            let trim = Trim {
                part: piece.part,
                face: Line::through(a, b),
                middle: a.midpoint(b),
                allowance_mm: piece.allowance_mm,
                ends: [crate::place::TrimEnd::RunOff; 2],
                length_mm: 0.0,
            };
            if slab.chord(&trim.face, trim.middle).is_some() {
                trims.push(trim);
            }
        }
        trims
    }

    /// Whether a trim's disc leaves the stone at both ends before it would reach kept stone.
    pub(super) fn runs_off(&self, trim: &Trim) -> bool {
        let Some(chord) = self.stone.chord(&trim.face, trim.middle) else {
            return false;
        };
        let disc = disc::choose(self.job, Task::RunOff).disc;
        let half = Sunk::of(self.job, disc).face_mm;
        let ends = [chord.start, chord.end].map(|p| trim.face.foot(p));
        let (low, high) = self.kept.free_stretch(&trim.face, disc.kerf, trim.middle);
        low <= ends[0] - half && high >= ends[1] + half
    }

    fn run_off(&mut self, trim: &Trim) {
        let choice = disc::choose(self.job, Task::RunOff);
        self.findings.stops.extend(disc::too_small(&choice));
        let planned = straight::plan(self.job, self.placement, trim, &self.stone, choice.disc);
        if let Some((cut, kept)) = planned {
            self.push(cut);
            self.stone = kept;
        } else {
            let name = self.placement.top.part_name(trim.part);
            let stop = straight::no_room_for_guide(self.job, &name);
            self.findings.stops.push(stop);
            // What the trim would have left, so that the others are still planned.
            if let Some(chord) = self.stone.chord(&trim.face, trim.middle) {
                self.stone = chord.left;
            }
        }
    }

    /// Whether the curves come before the stopped cuts: when that saves a change of disc.
    fn curves_before(&self, groups: &[Group]) -> bool {
        let disc = |task| &disc::choose(self.job, task).disc.name;
        let stopped = Task::Stopped {
            room_mm: f64::INFINITY,
        };
        !groups.is_empty()
            && disc(Task::Outside) == disc(Task::RunOff)
            && disc(stopped) != disc(Task::RunOff)
    }

    /// The outside curves of the top.
    fn curves(&mut self, ring: &Ring) {
        self.relief(ring);
        for piece in 0..ring.pieces.len() {
            if matches!(ring.pieces[piece].seg, Seg::Arc(arc) if arc.sweep > 0.0) {
                self.outside(ring, piece, Because::AfterTrims);
            }
        }
        let top = &self.placement.top;
        let arcs = top.outline().segs().iter().zip(top.parts());
        for (seg, part) in arcs {
            let outside = matches!(seg, Seg::Arc(arc) if arc.sweep > 0.0);
            if outside && ring.pieces.iter().all(|p| p.part != *part) {
                let caution = curve::ground_only(&top.part_name(*part));
                self.findings.cautions.push(caution);
            }
        }
    }

    /// The relief cuts that the curves' waste needs.
    fn relief(&mut self, ring: &Ring) {
        let disc = disc::choose(self.job, Task::Outside).disc;
        let arcs = ring.pieces.iter().filter_map(|piece| match &piece.seg {
            Seg::Arc(arc) if arc.sweep > 0.0 && self.job.top.ready_mm(piece.part).is_none() => {
                Some(relief::Beside {
                    part: piece.part,
                    wanted: self.wanted(ring.whose, piece, arc, Because::AfterTrims),
                })
            }
            _ => None,
        });
        let arcs: Vec<relief::Beside<'_>> = arcs.collect();
        relief::before(self, &arcs, disc);
    }

    fn wanted<'p>(
        &self,
        whose: Whose,
        piece: &'p Piece,
        arc: &'p Arc,
        because: Because,
    ) -> curve::Wanted<'p> {
        curve::Wanted {
            whose,
            name: piece.name.clone(),
            arc,
            allowance_mm: piece.allowance_mm,
            finish: self.finish(whose, piece.part),
            because,
        }
    }

    /// One outside arc.
    pub(super) fn outside(&mut self, ring: &Ring, piece: usize, because: Because) {
        let wanted = &ring.pieces[piece];
        let Seg::Arc(arc) = &wanted.seg else { return };
        if self.job.top.ready_mm(wanted.part).is_some() {
            return;
        }
        let choice = disc::choose(self.job, Task::Outside);
        self.findings.stops.extend(disc::too_small(&choice));
        let asked = self.wanted(ring.whose, wanted, arc, because);
        match curve::plan(self.job, &asked, &self.kept, &self.stone, choice.disc) {
            Some(cut) if !cut.strokes.is_empty() => {
                self.findings.append(curve::against_jig(self.job, &cut));
                self.push(cut);
            }
            _ => self
                .findings
                .cautions
                .push(curve::ground_only(&wanted.name)),
        }
    }

    fn groups(&mut self, ring: &Ring, places: &[Place], groups: &[Group]) {
        for group in groups {
            self.group(ring, places, group, &Because::AfterRunOff);
        }
    }

    /// Sawn pieces that belong together: straight ones, the long first, then arcs. The tails are taken out
    /// after the last of them, and the stone is looked at again.
    pub(super) fn group(
        &mut self,
        ring: &Ring,
        places: &[Place],
        group: &[usize],
        because: &Because,
    ) {
        let first = self.cuts.len();
        let mut order = group.to_vec();
        let rank = |p: &usize| {
            let seg = &ring.pieces[*p].seg;
            (matches!(seg, Seg::Arc(_)), -seg.length())
        };
        order.sort_by(|a, b| {
            let (a, b) = (rank(a), rank(b));
            a.0.cmp(&b.0).then(a.1.total_cmp(&b.1))
        });
        for piece in order {
            match ring.pieces[piece].seg {
                Seg::Line(..) => self.stopped(ring, places, piece, because.clone()),
                Seg::Arc(arc) if arc.sweep < 0.0 => {
                    self.hollow(ring, places, piece, because.clone());
                }
                Seg::Arc(_) => self.outside(ring, piece, because.clone()),
            }
        }
        let made: Vec<usize> = self.cuts[first..]
            .iter()
            .filter(|c| c.tail > 0.0)
            .map(|c| c.number)
            .collect();
        if let Some(last) = self.cuts.last_mut().filter(|_| !made.is_empty()) {
            last.tails_out = made;
        }
        self.settle();
    }

    /// The stone after the cuts so far: the part that holds the kept stone.
    fn settle(&mut self) {
        let mut slots: Vec<Outline> = self.cuts.iter().flat_map(Cut::slots).collect();
        slots.extend(self.cuts.iter().flat_map(Cut::tails));
        let Some(inner) = self.kept.inner_point() else {
            return;
        };
        let whole = [Region::solid(self.stone.clone())];
        let parts = boolean::difference(&whole, &slots);
        if let Some(kept) = parts.into_iter().find(|p| p.side(inner) == Side::Inside) {
            self.stone = kept.outer;
        }
    }

    fn stopped(&mut self, ring: &Ring, places: &[Place], piece: usize, because: Because) {
        let wanted = &ring.pieces[piece];
        let Seg::Line(a, b) = wanted.seg else { return };
        let holes: Vec<Hole> = places
            .iter()
            .filter(|p| p.sides.before == piece || p.sides.after == piece)
            .filter_map(|p| match &p.way {
                Way::Bored(bored) => Some(bored.holes.clone()),
                _ => None,
            })
            .flatten()
            .collect();
        let asked = stopped::Wanted {
            whose: ring.whose,
            name: wanted.name.clone(),
            face: Line::through(a, b),
            middle: a.midpoint(b),
            allowance_mm: wanted.allowance_mm,
            finish: self.finish(ring.whose, wanted.part),
            stops: stops_of(ring, places, piece),
            holes: &holes,
            because,
        };
        let kerf = self.job.discs[0].kerf;
        let (low, high) = asked.limits(&self.kept, kerf);
        // Core holes that meet leave nothing between them to saw.
        if high - low <= NOTHING_MM {
            return;
        }
        let room_mm = high - low;
        let choice = disc::choose(self.job, Task::Stopped { room_mm });
        self.findings.stops.extend(disc::too_small(&choice));
        let cut = stopped::plan(self.job, &asked, &self.kept, &self.stone, choice.disc);
        match cut {
            Ok(cut) => self.push(cut),
            Err(stopped::NotCut::NoStone) => self.sawn_with_another(ring, &asked),
            Err(stopped::NotCut::NoGuide) => {
                let name = format!("{}{}", wanted.name, ring.whose.of_words());
                let stop = straight::no_room_for_guide(self.job, &name);
                self.findings.stops.push(stop);
            }
            Err(stopped::NotCut::NoRoom(room)) => self.row(&asked, (low, high), room, &choice),
        }
    }

    /// A trim in line with this edge has made it already, and leaves its own allowance on it.
    fn sawn_with_another(&mut self, ring: &Ring, asked: &stopped::Wanted<'_>) {
        let Some(chord) = self.stone.chord(&asked.face, asked.middle) else {
            return;
        };
        let across = Line {
            point: chord.start.midpoint(chord.end),
            along: asked.face.along.right(),
        };
        let marks = self
            .stone
            .segs()
            .iter()
            .flat_map(|s| s.line_crossings(&across));
        let over = marks.filter(|m| *m > 0.0).fold(f64::INFINITY, f64::min);
        let Some(last) = self.cuts.last_mut().filter(|_| over.is_finite()) else {
            return;
        };
        last.left_to_remove.push(LeftOver {
            why: Remains::Beside,
            at: across.point,
            length: over,
            heading: None,
            left: over,
            by: Removal::Ground,
        });
        let name = format!("{}{}", asked.name, ring.whose.of_words());
        self.findings.cautions.push(Finding {
            id: "sawn-with-another",
            title: format!("Edge {name} is sawn with the edge in line with it"),
            detail: format!(
                "The trim of the edge in line with it makes edge {name} too, and leaves {:.1} mm on it in \
                 place of {:.1} mm. Grind off the difference, {over:.1} mm, or give both edges the same \
                 finish.",
                asked.allowance_mm + over,
                asked.allowance_mm
            ),
            source: "geometry: the allowances of the two finishes".into(),
        });
    }

    /// Core holes in a row where no disc finds room; a stop when no bit fits either.
    fn row(
        &mut self,
        asked: &stopped::Wanted<'_>,
        between: (f64, f64),
        room_mm: f64,
        choice: &disc::Choice<'_>,
    ) {
        let bored = super::corner::row(&self.job.core_bits, &self.kept, &asked.face, between);
        let Some(bored) = bored else {
            let stop = stopped::too_short(self.job, asked, room_mm, choice);
            self.findings.stops.push(stop);
            return;
        };
        let there = |hole: &Hole| {
            let mut holes = asked.holes.iter();
            holes.any(|h| h.diameter == hole.diameter && h.at.distance(hole.at) < 1e-3)
        };
        let drilled = core::Drilled {
            whose: asked.whose,
            name: asked.name.clone(),
            bit: bored.bit,
            left_to_remove: core::left(&bored).into_iter().collect(),
            holes: bored.holes.into_iter().filter(|h| !there(h)).collect(),
            allowance_mm: asked.allowance_mm,
            finish: asked.finish,
            because: asked.because.clone(),
        };
        if !drilled.holes.is_empty() {
            self.push(core::plan(self.job, drilled));
        }
    }

    /// One hollow arc, unless core holes have made it.
    fn hollow(&mut self, ring: &Ring, places: &[Place], piece: usize, because: Because) {
        let plunged = |p: &&Place| p.arc == Some(piece) && matches!(p.way, Way::Plunged);
        let wanted = &ring.pieces[piece];
        let (Some(arc), Some(_)) = (wanted.hollow(), places.iter().find(plunged)) else {
            return;
        };
        let radius_mm = arc.radius;
        let choice = disc::choose(self.job, Task::Inside { radius_mm });
        self.findings.stops.extend(disc::too_small(&choice));
        let asked = hollow::Wanted {
            whose: ring.whose,
            name: wanted.name.clone(),
            arc,
            joints: [ring.before(piece), piece].map(|p| ring.joint_after(p)),
            allowance_mm: wanted.allowance_mm,
            finish: self.finish(ring.whose, wanted.part),
            because,
        };
        let cut = hollow::plan(self.job, &asked, &self.kept, &self.stone, choice.disc);
        if let Some(cut) = cut.filter(|c| !c.strokes.is_empty()) {
            self.findings.append(curve::against_jig(self.job, &cut));
            self.push(cut);
        }
    }

    /// Why each run-off trim comes where it does: what it takes off the later ones.
    fn say_why(&mut self) {
        let mut stone = self.job.slab.shape.outline().clone();
        let trims: Vec<(usize, Line, Point)> = self
            .cuts
            .iter()
            .filter(|c| c.kind == CutKind::Straight && c.run_off && c.cutout.is_none())
            .filter_map(|c| {
                let super::SetOut::Guide(set_out) = &c.set_out else {
                    return None;
                };
                let [a, b] = set_out.sawn;
                Some((c.number, Line::through(a, b), a.midpoint(b)))
            })
            .collect();
        for (i, (number, face, middle)) in trims.iter().enumerate() {
            let Some(after) = stone.chord(face, *middle).map(|c| c.left) else {
                continue;
            };
            let length = |stone: &Outline, t: &(usize, Line, Point)| {
                stone.chord(&t.1, t.2).map_or(0.0, |c| c.length())
            };
            let gains = trims[i + 1..].iter().map(|t| {
                let gain = length(&stone, t) - length(&after, t);
                (t.0, gain)
            });
            let gains: Vec<(usize, f64)> = gains.filter(|g| g.1 > 0.5).collect();
            if !gains.is_empty() {
                self.cuts[number - 1].because = Because::Shortens {
                    cuts: gains.iter().map(|g| g.0).collect(),
                    by_mm: gains.iter().map(|g| g.1).sum(),
                };
            }
            stone = after;
        }
    }
}

/// Less than this between two core holes is nothing to saw, mm.
const NOTHING_MM: f64 = 0.5;

/// Where core holes or curves end a straight piece, backwards and forwards.
fn stops_of(ring: &Ring, places: &[Place], piece: usize) -> [Option<Point>; 2] {
    let mut stops = [None, None];
    for place in places {
        let [before, after] = place.stops(ring);
        if place.sides.after == piece {
            stops[0] = after;
        }
        if place.sides.before == piece {
            stops[1] = before;
        }
    }
    stops
}
