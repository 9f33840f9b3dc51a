//! One corner, edge or arc of a boundary after another made: by core holes, stopped cuts, plunges.

use crate::diag::{Finding, Phrase};
use crate::geom::{Arc, Line, Outline, Point, Region, Seg, Side, boolean};
use crate::job::{Finish, Part};
use crate::words::Value;

use super::course::Course;
use super::disc::{self, Task};
use super::inside::{self, InsidePlace, Way};
use super::kept::{BoundaryPiece, Ring, Whose};
use super::missing::Spot;
use super::{
    Because, Cut, CutKind, Hole, LeftOver, Remains, Removal, concave, core, corner, curve, resumed,
    run_out, stopped, straight,
};

pub(crate) const WITH_ANOTHER: Phrase = Phrase::of_job("sawn-with-another");

impl Course<'_> {
    /// The inside corners and hollow arcs of a boundary that lie in the stone, and what is to be told.
    pub(super) fn places(&mut self, ring: &Ring) -> Vec<InsidePlace> {
        let slab = self.job.slab.shape.outline();
        let mut places = inside::places(self.job, &self.kept, ring);
        places.retain(|place| {
            let sides = [place.sides.before, place.sides.after];
            let sawn = match place.arc {
                Some(arc) => !ring.pieces[arc].ready,
                None => sides.iter().any(|p| {
                    let piece = &ring.pieces[*p];
                    piece.sawn && !piece.ready
                }),
            };
            let at = place.arc.map_or_else(
                || ring.pieces[place.sides.before].seg.end(),
                |arc| ring.pieces[arc].seg.at(0.5),
            );
            sawn && slab.depth(at) > 1.0
        });
        for place in &mut places {
            self.drilled_before(ring, place);
        }
        resumed::one_for_two(ring, &mut places);
        for place in &places {
            let told = inside::told(self.job, ring, place);
            self.findings.warnings.extend(told.caution);
            if let Some((cause, spot)) = told.missing {
                self.lacks(cause, spot);
            }
        }
        places
    }

    /// The core holes of a boundary, one cut for each bit.
    pub(super) fn holes(&mut self, ring: &Ring, places: &[InsidePlace], because: &Because) {
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
            let holes = bored.holes.iter().copied();
            let with_another = |h: &Hole| bits.iter().any(|d| d.holes.contains(h));
            let new = holes.filter(|h| !self.is_drilled(h) && !with_another(h));
            let new: Vec<Hole> = new.collect();
            if new.is_empty() {
                continue;
            }
            let left = core::left(bored);
            match bits.iter_mut().find(|d| d.bit == bored.bit) {
                Some(drilled) => {
                    drilled.name = format!("{}, {name}", drilled.name);
                    drilled.holes.extend(&new);
                    drilled.left_to_remove.extend(left);
                }
                None => bits.push(core::Drilled {
                    whose: ring.whose,
                    name,
                    bit: bored.bit,
                    holes: new,
                    allowance_mm: piece.allowance_mm,
                    finish: self.finish(ring.whose, piece.part()),
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

    /// An outside arc as it is to be made.
    pub(super) fn wanted<'p>(
        &self,
        whose: Whose,
        piece: &'p BoundaryPiece,
        arc: &'p Arc,
        because: Because,
    ) -> curve::WantedCurve<'p> {
        curve::WantedCurve {
            whose,
            name: piece.name.clone(),
            arc,
            allowance_mm: piece.allowance_mm,
            finish: self.finish(whose, piece.part()),
            because,
        }
    }

    /// One outside arc.
    pub(super) fn outside(&mut self, ring: &Ring, piece: usize, because: Because) {
        let wanted = &ring.pieces[piece];
        let Seg::Arc(arc) = &wanted.seg else { return };
        if wanted.ready {
            return;
        }
        let choice = disc::choose(self.job, Task::Outside);
        self.findings.stops.extend(disc::too_small(&choice));
        let asked = self.wanted(ring.whose, wanted, arc, because);
        let cut = curve::plan(self.job, &asked, &self.kept, &self.stone, choice.disc);
        match cut {
            Some(cut) if !cut.strokes.is_empty() => {
                if self.takes_stone(&cut) {
                    self.findings
                        .append(curve::against_jig(self.job, ring.whose, &cut));
                    self.push(cut);
                }
            }
            _ => self
                .findings
                .warnings
                .push(curve::ground_only(ring.whose, &wanted.name)),
        }
    }

    /// Whether the curves so far leave a curve any stone to take: what a rounding's plunges reach past its ends may
    /// be all of a short arc beside it.
    fn takes_stone(&self, cut: &Cut) -> bool {
        let longest = cut.set_out.curve().map_or(0.0, |c| 2.0 * c.slot_half);
        if cut.length > longest {
            return true;
        }
        let before = self.cuts.iter().filter(|c| c.kind == CutKind::Curve);
        let before: Vec<Outline> = before.flat_map(Cut::slots).collect();
        if before.is_empty() {
            return true;
        }
        let left = boolean::difference(&[Region::solid(self.stone.clone())], &before);
        let taken = boolean::intersection(&left, &cut.slots());
        taken.iter().map(Region::area).sum::<f64>() > NO_STONE_MM2
    }

    /// Sawn pieces that belong together: straight ones, the long first, then arcs. The run-outs are taken out
    /// after the last of them, and the stone is looked at again.
    pub(super) fn group(
        &mut self,
        ring: &Ring,
        places: &[InsidePlace],
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
        order.retain(|p| !ring.pieces[*p].ready);
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
            .filter(|c| c.run_out > 0.0)
            .map(|c| c.number)
            .collect();
        if let Some(last) = self.cuts.last_mut().filter(|_| !made.is_empty()) {
            last.run_outs_removed.clone_from(&made);
            run_out::settle(&mut self.cuts, &made, &self.job.slab.begun.drilled);
        }
        self.settle();
    }

    /// The stone after the cuts so far: the part that holds the kept stone.
    fn settle(&mut self) {
        let mut slots: Vec<Outline> = self.cuts.iter().flat_map(Cut::slots).collect();
        slots.extend(self.cuts.iter().flat_map(Cut::run_outs));
        let Some(inner) = self.kept.inner_point() else {
            return;
        };
        let whole = [Region::solid(self.stone.clone())];
        let parts = boolean::difference(&whole, &slots);
        if let Some(kept) = parts.into_iter().find(|p| p.side(inner) == Side::Inside) {
            self.stone = kept.outer;
        }
    }

    fn stopped(&mut self, ring: &Ring, places: &[InsidePlace], piece: usize, because: Because) {
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
        let asked = stopped::WantedStopped {
            whose: ring.whose,
            name: wanted.name.clone(),
            face: Line::through(a, b),
            middle: a.midpoint(b),
            allowance_mm: wanted.allowance_mm,
            finish: self.finish(ring.whose, wanted.part()),
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
            Err(stopped::NotCut::NoStone) => self.sawn_with_another(&asked),
            Err(stopped::NotCut::NoGuide) => {
                let place = Spot::of(ring, wanted, &wanted.name);
                self.lacks(straight::no_room_for_guide(self.job), place);
            }
            Err(stopped::NotCut::NoRoom(room)) => self.row(&asked, (low, high), room, &choice),
        }
    }

    /// A trim in line with this edge has made it already, and leaves its own allowance on it.
    fn sawn_with_another(&mut self, asked: &stopped::WantedStopped<'_>) {
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
        let values = [
            ("edge", asked.name.clone().into()),
            ("left", Value::fine(asked.allowance_mm + over)),
            ("allowance", Value::fine(asked.allowance_mm)),
            ("over", Value::fine(over)),
        ];
        let source = "geometry: the allowances of the two finishes";
        let caution = Finding::of(&WITH_ANOTHER, values, source);
        self.findings.warnings.push(caution);
    }

    /// Core holes in a row where no disc finds room; a stop when no bit fits either.
    fn row(
        &mut self,
        asked: &stopped::WantedStopped<'_>,
        between: (f64, f64),
        room_mm: f64,
        choice: &disc::Choice<'_>,
    ) {
        let bored = corner::row(&self.job.core_bits, &self.kept, &asked.face, between);
        let Some(mut bored) = bored else {
            let [from, to] = [between.0, between.1].map(|at| asked.face.at(at));
            let place = Spot::straight(asked.whose, asked.name.clone(), Seg::Line(from, to));
            // Where a bit is wanted already, it makes this cut as well.
            let no_bit = inside::no_bit(self.job);
            let cause = if self.is_missing(&no_bit) {
                no_bit
            } else {
                stopped::too_short(self.job, room_mm, choice)
            };
            self.lacks(cause, place);
            return;
        };
        let (holes, ground_mm) = corner::beside_those_there(&bored, asked.holes);
        bored.ground_mm = ground_mm;
        let drilled = core::Drilled {
            whose: asked.whose,
            name: asked.name.clone(),
            bit: bored.bit,
            left_to_remove: core::left(&bored).into_iter().collect(),
            holes,
            allowance_mm: asked.allowance_mm,
            finish: asked.finish,
            because: asked.because.clone(),
        };
        if !drilled.holes.is_empty() {
            self.push(core::plan(self.job, drilled));
        }
    }

    /// One hollow arc, unless core holes have made it.
    fn hollow(&mut self, ring: &Ring, places: &[InsidePlace], piece: usize, because: Because) {
        let plunged = |p: &&InsidePlace| p.arc == Some(piece) && matches!(p.way, Way::Plunged);
        let wanted = &ring.pieces[piece];
        let (Some(arc), Some(_)) = (wanted.hollow(), places.iter().find(plunged)) else {
            return;
        };
        let radius_mm = arc.radius;
        let choice = disc::choose(self.job, Task::Inside { radius_mm });
        self.findings.stops.extend(disc::too_small(&choice));
        let asked = concave::WantedConcave {
            whose: ring.whose,
            name: wanted.name.clone(),
            arc,
            joints: [ring.before(piece), piece].map(|p| ring.joint_after(p)),
            allowance_mm: wanted.allowance_mm,
            finish: self.finish(ring.whose, wanted.part()),
            because,
        };
        let cut = concave::plan(self.job, &asked, &self.kept, &self.stone, choice.disc);
        if let Some(cut) = cut.filter(|c| !c.strokes.is_empty() && self.takes_stone(c)) {
            self.findings
                .append(curve::against_jig(self.job, ring.whose, &cut));
            self.push(cut);
        }
    }
}

/// Less stone than this in all slots of a curve is rounding, mm².
const NO_STONE_MM2: f64 = 1.0;
/// Less than this between two core holes is nothing to saw, mm.
const NOTHING_MM: f64 = 0.5;

/// Where core holes or curves end a straight piece, backwards and forwards.
fn stops_of(ring: &Ring, places: &[InsidePlace], piece: usize) -> [Option<Point>; 2] {
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
