//! What each inside corner and each hollow arc of a boundary is made with: a core hole, plunges, or a chain
//! of core holes.

use std::f64::consts::TAU;

use crate::diag::{Finding, Findings};
use crate::geom::{Arc, Point, SAME_MM};
use crate::job::Job;

use super::corner::{self, Bored, GROUND_MM, LEAST_RADIUS_MM, Sides};
use super::disc::{self, Depth, Sunk, Task};
use super::hollow::Hollow;
use super::kept::{Joint, Kept, Ring};

/// More than this beside the middle of a slot is much to grind off: then a chain of core holes is
/// better, mm (judgement).
const MUCH_TO_GRIND_MM: f64 = 10.0;

/// How it is made.
#[derive(Clone, Debug)]
pub enum Way {
    /// By core holes.
    Bored(Bored),
    /// By plunges.
    Plunged,
    /// By nothing in the kit.
    Unable,
}

/// An inside corner or a hollow arc.
#[derive(Clone, Debug)]
pub struct Place {
    /// The pieces on both sides of it.
    pub sides: Sides,
    /// The hollow arc itself; nothing at a sharp corner.
    pub arc: Option<usize>,
    /// How it is made.
    pub way: Way,
}

impl Place {
    /// Where core holes or an arc end the pieces beside it: the one before and the one after.
    #[must_use]
    pub fn stops(&self, ring: &Ring) -> [Option<Point>; 2] {
        match (&self.way, self.arc) {
            (Way::Bored(bored), _) => bored.stops.map(Some),
            (_, Some(arc)) => {
                let seg = &ring.pieces[arc].seg;
                [Some(seg.start()), Some(seg.end())]
            }
            (_, None) => [None, None],
        }
    }
}

/// Every inside corner and hollow arc of a boundary, in order.
#[must_use]
pub fn places(job: &Job, kept: &Kept, ring: &Ring) -> Vec<Place> {
    let mut places = Vec::new();
    for piece in 0..ring.pieces.len() {
        let sides = Sides {
            before: ring.before(piece),
            after: ring.after(piece),
        };
        if let Some(arc) = ring.pieces[piece].hollow() {
            let smooth = [sides.before, piece].map(|p| ring.joint_after(p) == Joint::Smooth);
            let way = way_of_arc(job, kept, ring, sides, arc, smooth == [true; 2]);
            places.push(Place {
                sides,
                arc: Some(piece),
                way,
            });
        }
        if ring.joint_after(piece) == Joint::Inside {
            let sides = Sides {
                before: piece,
                after: sides.after,
            };
            let bored = corner::one_hole(&job.core_bits, kept, ring, sides, 0.0, GROUND_MM);
            places.push(Place {
                sides,
                arc: None,
                way: bored.map_or(Way::Unable, Way::Bored),
            });
        }
    }
    places
}

/// A hollow arc: the core hole that is its own; else, between smooth neighbours, one hole that leaves little
/// in the corner; else plunges that leave little to grind; else a chain of holes; else plunges; else one
/// hole that leaves more.
fn way_of_arc(job: &Job, kept: &Kept, ring: &Ring, sides: Sides, arc: &Arc, smooth: bool) -> Way {
    let bits = &job.core_bits;
    let chain = corner::chain(bits, kept, arc);
    if let Some(bored) = &chain
        && bored.holes.len() == 1
    {
        return Way::Bored(bored.clone());
    }
    let whole = arc.sweep.abs() >= TAU - 1e-9;
    if smooth
        && !whole
        && let Some(bored) = corner::one_hole(bits, kept, ring, sides, arc.radius, GROUND_MM)
    {
        return Way::Bored(bored);
    }
    let radius_mm = arc.radius;
    let choice = disc::choose(job, Task::Inside { radius_mm });
    let plunged = Hollow::of(radius_mm, Sunk::of(job, choice.disc));
    match (plunged, chain) {
        (Some(hollow), _) if hollow.left_middle <= MUCH_TO_GRIND_MM => Way::Plunged,
        (_, Some(bored)) => Way::Bored(bored),
        (Some(_), None) => Way::Plunged,
        // A corner rounder than asked for is better than none.
        (None, None) if smooth && !whole => {
            corner::one_hole(bits, kept, ring, sides, arc.radius, f64::INFINITY)
                .map_or(Way::Unable, Way::Bored)
        }
        (None, None) => Way::Unable,
    }
}

/// What is to be told of a place: a radius other than the one asked for, or why it cannot be made.
#[must_use]
pub fn findings(job: &Job, ring: &Ring, place: &Place) -> Findings {
    let mut findings = Findings::default();
    let name = name_of(ring, place);
    match (&place.way, place.arc.map(|arc| &ring.pieces[arc])) {
        (Way::Bored(bored), piece) => {
            let given = piece.map_or(0.0, |p| bored.asked_mm + p.allowance_mm);
            findings.cautions.extend(radius_told(bored, given, &name));
        }
        (Way::Plunged, Some(piece)) => {
            findings
                .cautions
                .extend(much_left(job, piece.hollow(), &name));
        }
        (Way::Unable, Some(piece)) => findings
            .stops
            .extend(piece.hollow().map(|arc| no_disc(job, arc, &name))),
        (Way::Unable, None) => findings.stops.push(no_bit(job, &name)),
        (Way::Plunged, None) => {}
    }
    findings
}

/// The corner or arc in words: `corner 4`, `corner 2 of cutout 1`.
#[must_use]
pub fn name_of(ring: &Ring, place: &Place) -> String {
    let of = ring.whose.of_words();
    let Some(arc) = place.arc else {
        return format!("inside corner {}{of}", corner_between(ring, place.sides));
    };
    let name = &ring.pieces[arc].name;
    if ring.pieces.len() == 1 {
        format!("the circle{of}")
    } else if name.contains('-') {
        format!("edge {name}{of}")
    } else {
        format!("corner {name}{of}")
    }
}

/// The name of the corner between two edges: the number they share.
#[must_use]
pub fn corner_between(ring: &Ring, sides: Sides) -> String {
    let [a, b] = [sides.before, sides.after].map(|p| ring.pieces[p].name.as_str());
    let shared = a.split('-').find(|n| b.split('-').any(|m| m == *n));
    shared.map_or_else(|| format!("between {a} and {b}"), ToOwned::to_owned)
}

fn radius_told(bored: &Bored, given: f64, name: &str) -> Option<Finding> {
    let left = bored.radius_mm;
    let chain = bored.holes.len() > 1;
    if chain || (given >= LEAST_RADIUS_MM - SAME_MM && bored.ground_mm <= 1.0) {
        return None;
    }
    let detail = if given < LEAST_RADIUS_MM - SAME_MM {
        let asked = if given > 0.0 {
            format!("a radius of {given:.1} mm")
        } else {
            "a sharp corner".to_owned()
        };
        let still = if left < LEAST_RADIUS_MM - SAME_MM {
            format!(" That is still less than {LEAST_RADIUS_MM:.0} mm: a larger bit is better.")
        } else {
            String::new()
        };
        format!(
            "The job asks for {asked} at {name}; a crack begins in an inside corner sharper than \
             {LEAST_RADIUS_MM:.0} mm. The plan leaves a radius of {left:.1} mm there, that of the core \
             hole.{still}"
        )
    } else {
        format!(
            "The job asks for a radius of {given:.1} mm at {name}; the nearest core bit leaves \
             {left:.1} mm, {:.1} mm of stone in the corner. Grind it off by hand, or keep it.",
            bored.ground_mm
        )
    };
    Some(Finding {
        id: "inside-corner-radius",
        title: format!("{} gets a radius of {left:.1} mm", sentence(name)),
        detail,
        source: "judgement: 10 mm; a single trade page restating a design manual for stone worktops has \
                 9.5 mm"
            .into(),
        said: None,
    })
}

fn much_left(job: &Job, arc: Option<&Arc>, name: &str) -> Option<Finding> {
    let radius = arc?.radius;
    let task = Task::Inside { radius_mm: radius };
    let choice = disc::choose(job, task);
    let sunk = Sunk::of(job, choice.disc);
    let hollow = Hollow::of(radius, sunk)?;
    (hollow.left_middle > MUCH_TO_GRIND_MM).then(|| Finding {
        id: "much-to-grind",
        title: format!("Much is left to grind at {name}"),
        detail: format!(
            "\"{}\" cuts {:.0} mm long in the face; inside a radius of {radius:.1} mm it must stand \
             {:.1} mm from the middle, and leaves {:.1} mm beside the middle of every slot, more than \
             {MUCH_TO_GRIND_MM:.0} mm. A smaller disc or a core bit of {:.0} mm or less leaves less.",
            choice.disc.name,
            2.0 * sunk.face_mm,
            hollow.face_at,
            hollow.left_middle,
            2.0 * radius
        ),
        source: "geometry: r − √(r² − c(0)²); judgement: 10 mm".into(),
        said: None,
    })
}

fn no_disc(job: &Job, arc: &Arc, name: &str) -> Finding {
    let radius = arc.radius;
    let choice = disc::choose(job, Task::Inside { radius_mm: radius });
    let half = Sunk::of(job, choice.disc).face_mm;
    let bit = (2.0 * radius).floor();
    let discs = match choice.depth {
        Depth::Reaches(_) => disc::that_would_fit(&choice, 2.0 * radius),
        Depth::ShortBy(_) => "It does not get through the stone either.".into(),
    };
    Finding {
        id: "no-disc-for-hollow",
        title: format!("No disc of the kit can cut {name}"),
        detail: format!(
            "\"{}\" cuts {:.0} mm long in the face; {name} is a hollow of radius {radius:.1} mm, \
             {:.0} mm across. {discs} A core bit of {bit:.0} mm makes it in one hole, a smaller one in a \
             chain of holes.",
            choice.disc.name,
            2.0 * half,
            2.0 * radius
        ),
        source: "geometry: 2·√(D·h − h²) against 2·r".into(),
        said: None,
    }
}

fn no_bit(job: &Job, name: &str) -> Finding {
    let least = 2.0 * LEAST_RADIUS_MM;
    let kit = if job.core_bits.is_empty() {
        "The kit has no core bit.".to_owned()
    } else {
        "No core bit of the kit fits there.".to_owned()
    };
    Finding {
        id: "inside-corner-needs-core-bit",
        title: format!("{} needs a core hole", sentence(name)),
        detail: format!(
            "{kit} A crack begins in a sharp inside corner: it needs a radius of at least \
             {LEAST_RADIUS_MM:.0} mm, so a core bit of at least {least:.0} mm across, drilled before the \
             cuts that stop there. Name it in the job file ([[core_bit]])."
        ),
        source: "judgement: 10 mm; a single trade page restating a design manual for stone worktops has \
                 9.5 mm"
            .into(),
        said: None,
    }
}

fn sentence(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
