//! What inside corners and hollow arcs give cause to say: a radius other than the one asked for, much to
//! grind, or why nothing in the kit makes one.

use crate::cut::ConcaveArc;
use crate::cut::corner::{Bored, LEAST_RADIUS_MM};
use crate::cut::disc::{self, Depth, Sunk, Task};
use crate::cut::kept::Ring;
use crate::cut::missing::Spot;
use crate::diag::{Finding, Phrase};
use crate::geom::{Arc, SAME_MM};
use crate::job::Job;
use crate::words::Value;

use super::{InsidePlace, MUCH_TO_GRIND_MM, Way, corner_between};

pub(crate) const RADIUS: Phrase = Phrase::of_job("inside-corner-radius");
pub(crate) const NEAREST: Phrase = Phrase::of_job("inside-corner-nearest-radius");
pub(crate) const MUCH: Phrase = Phrase::of_job("much-to-grind");
pub(crate) const NO_DISC: Phrase = Phrase::of_job("no-disc-for-hollow");
pub(crate) const NO_BIT: Phrase = Phrase::of_job("inside-corner-needs-core-bit");

const LEAST_RADIUS_SOURCE: &str =
    "judgement: 10 mm; a single trade page restating a design manual for stone worktops has 9.5 mm";

/// What is to be told of a place.
#[derive(Clone, Debug, Default)]
pub(in crate::cut) struct Told {
    /// A radius other than the one asked for, or much to grind.
    pub(in crate::cut) caution: Option<Finding>,
    /// Why nothing in the kit makes it.
    pub(in crate::cut) missing: Option<(Finding, Spot)>,
}

/// What is to be told of a place: a radius other than the one asked for, or why it cannot be made.
#[must_use]
pub(in crate::cut) fn told(job: &Job, ring: &Ring, place: &InsidePlace) -> Told {
    let spot = spot(ring, place);
    let part = ring.whose.part(&spot.name);
    let mut told = Told::default();
    match (&place.way, place.arc.map(|arc| &ring.pieces[arc])) {
        (Way::Bored(bored), piece) => {
            let given = piece.map_or(0.0, |p| bored.asked_mm + p.allowance_mm);
            told.caution = radius(part, bored, given);
        }
        (Way::Plunged, Some(piece)) => {
            told.caution = piece.hollow().and_then(|arc| much_left(job, part, arc));
        }
        (Way::Unable, Some(piece)) => {
            told.missing = piece.hollow().map(|arc| (no_disc(job, arc), spot));
        }
        (Way::Unable, None) => told.missing = Some((no_bit(job), spot)),
        (Way::Plunged, None) => {}
    }
    told
}

/// The place as a piece of the boundary: the arc, or the corner on the edge that runs to it.
fn spot(ring: &Ring, place: &InsidePlace) -> Spot {
    let piece = &ring.pieces[place.arc.unwrap_or(place.sides.before)];
    let name = place.arc.map_or_else(
        || corner_between(ring, place.sides),
        |arc| ring.pieces[arc].name.clone(),
    );
    Spot::of(ring, piece, name)
}

fn radius(part: Value, bored: &Bored, given: f64) -> Option<Finding> {
    let left = bored.radius_mm;
    let [too_sharp, still_sharp] = [given, left].map(|r| r < LEAST_RADIUS_MM - SAME_MM);
    let chain = bored.holes.len() > 1;
    if chain || (!too_sharp && bored.ground_mm <= 1.0) {
        return None;
    }
    let words = |said: bool, words: &str| {
        if said {
            Value::term(words.to_owned())
        } else {
            Value::Nothing
        }
    };
    let values = [
        ("part", part),
        ("given", Value::fine(given)),
        ("left", Value::fine(left)),
        ("ground", Value::fine(bored.ground_mm)),
        ("least", Value::size(LEAST_RADIUS_MM)),
        ("sharp", words(given <= 0.0, " (a sharp corner)")),
        (
            "still",
            words(
                still_sharp,
                " That is still too sharp: a larger bit is better.",
            ),
        ),
    ];
    let phrase = if too_sharp { &RADIUS } else { &NEAREST };
    Some(Finding::of(phrase, values, LEAST_RADIUS_SOURCE))
}

fn much_left(job: &Job, part: Value, arc: &Arc) -> Option<Finding> {
    let radius = arc.radius;
    let choice = disc::choose(job, Task::Inside { radius_mm: radius });
    let sunk = Sunk::of(job, choice.disc);
    let hollow = ConcaveArc::of(radius, sunk)?;
    let values = [
        ("part", part),
        ("disc", choice.disc.name.clone().into()),
        ("length", Value::size(2.0 * sunk.face_mm)),
        ("radius", Value::fine(radius)),
        ("face", Value::fine(hollow.face_at)),
        ("left", Value::fine(hollow.sagitta)),
        ("much", Value::size(MUCH_TO_GRIND_MM)),
        ("bit", Value::size(2.0 * radius).down()),
    ];
    let source = "geometry: r − √(r² − c(0)²); judgement: 10 mm";
    (hollow.sagitta > MUCH_TO_GRIND_MM).then(|| Finding::of(&MUCH, values, source))
}

fn no_disc(job: &Job, arc: &Arc) -> Finding {
    let across = 2.0 * arc.radius;
    let radius_mm = arc.radius;
    let choice = disc::choose(job, Task::Inside { radius_mm });
    let either = match choice.depth {
        Depth::Reaches(_) => Value::Nothing,
        Depth::ShortBy(_) => Value::term(" The disc named does not get through the stone either."),
    };
    let [least, shortest, most, verdict] = disc::that_would_fit(&choice, across);
    let values = [
        ("disc", choice.disc.name.clone().into()),
        (
            "length",
            Value::size(2.0 * Sunk::of(job, choice.disc).face_mm),
        ),
        ("radius", Value::fine(arc.radius)),
        ("across", Value::size(across)),
        ("bit", Value::size(across).down()),
        ("either", either),
        least,
        shortest,
        most,
        verdict,
    ];
    let source = "geometry: 2·√(D·h − h²) against 2·r";
    Finding::of(&NO_DISC, values, source)
}

pub(in crate::cut) fn no_bit(job: &Job) -> Finding {
    let kit = if job.core_bits.is_empty() {
        "The kit has no core bit."
    } else {
        "No core bit of the kit fits there."
    };
    let values = [
        ("kit", Value::term(kit)),
        ("radius", Value::size(LEAST_RADIUS_MM)),
        ("least", Value::size(2.0 * LEAST_RADIUS_MM)),
    ];
    Finding::of(&NO_BIT, values, LEAST_RADIUS_SOURCE)
}
