//! What inside corners and hollow arcs give cause to say: a radius other than the one asked for, much to
//! grind, or why nothing in the kit makes one.

use super::{MUCH_TO_GRIND_MM, Place, Way, corner_between};
use crate::cut::corner::{Bored, LEAST_RADIUS_MM};
use crate::cut::disc::{self, Depth, Sunk, Task};
use crate::cut::hollow::Hollow;
use crate::cut::kept::Ring;
use crate::diag::{Finding, Findings, Phrase, number};
use crate::geom::{Arc, SAME_MM};
use crate::job::Job;

pub(crate) const RADIUS: Phrase = Phrase {
    id: "inside-corner-radius",
    title: "{place}{name} gets a radius of {left} mm",
    detail: "Radius asked for: {given} mm{sharp}. A crack begins in an inside corner of less than {least} mm. The \
             plan leaves a radius of {left} mm there, that of the core hole.{still}",
};
pub(crate) const RADIUS_OF_OPENING: Phrase = Phrase {
    id: "inside-corner-radius-opening",
    title: "{place}{name} of cutout {cutout} gets a radius of {left} mm",
    ..RADIUS
};
pub(crate) const NEAREST: Phrase = Phrase {
    id: "inside-corner-nearest-radius",
    title: "{place}{name} gets a radius of {left} mm",
    detail: "Radius asked for: {given} mm. The nearest core bit leaves {left} mm, {ground} mm of stone in the \
             corner. Grind it off by hand, or keep it.",
};
pub(crate) const NEAREST_OF_OPENING: Phrase = Phrase {
    id: "inside-corner-nearest-radius-opening",
    title: "{place}{name} of cutout {cutout} gets a radius of {left} mm",
    ..NEAREST
};
pub(crate) const MUCH: Phrase = Phrase {
    id: "much-to-grind",
    title: "{place}{name}: much is left to grind",
    detail: "\"{disc}\" cuts {length} mm long in the face; inside a radius of {radius} mm it must stand {face} mm \
             from the middle, and leaves {left} mm beside the middle of every slot, more than {much} mm. A \
             smaller disc or a core bit of {bit} mm or less leaves less.",
};
pub(crate) const MUCH_IN_OPENING: Phrase = Phrase {
    id: "much-to-grind-opening",
    title: "{place}{name} of cutout {cutout}: much is left to grind",
    ..MUCH
};
pub(crate) const NO_DISC: Phrase = Phrase {
    id: "no-disc-for-hollow",
    title: "{place}{name}: no disc of the kit can cut this hollow",
    detail: "\"{disc}\" cuts {length} mm long in the face; the hollow has a radius of {radius} mm, {across} mm \
             across. With the same flange the smallest disc that gets through, {least} mm across, cuts \
             {shortest} mm long; the largest that finds room is {most} mm across. {verdict}{either} A core \
             bit of {bit} mm makes it in one hole, a smaller one in a chain of holes.",
};
pub(crate) const NO_DISC_IN_OPENING: Phrase = Phrase {
    id: "no-disc-for-hollow-opening",
    title: "{place}{name} of cutout {cutout}: no disc of the kit can cut this hollow",
    ..NO_DISC
};
pub(crate) const NO_BIT: Phrase = Phrase {
    id: "inside-corner-needs-core-bit",
    title: "{place}{name} needs a core hole",
    detail: "{kit} A crack begins in a sharp inside corner: it needs a radius of at least {radius} mm, so a core bit \
             of at least {least} mm across, drilled before the cuts that stop there. Name it in the job file \
             ([[core_bit]]).",
};
pub(crate) const NO_BIT_IN_OPENING: Phrase = Phrase {
    id: "inside-corner-needs-core-bit-opening",
    title: "{place}{name} of cutout {cutout} needs a core hole",
    ..NO_BIT
};

const LEAST_RADIUS_SOURCE: &str =
    "judgement: 10 mm; a single trade page restating a design manual for stone worktops has 9.5 mm";

/// What is to be told of a place: a radius other than the one asked for, or why it cannot be made.
#[must_use]
pub fn findings(job: &Job, ring: &Ring, place: &Place) -> Findings {
    let mut findings = Findings::default();
    let told = Told::of(ring, place);
    match (&place.way, place.arc.map(|arc| &ring.pieces[arc])) {
        (Way::Bored(bored), piece) => {
            let given = piece.map_or(0.0, |p| bored.asked_mm + p.allowance_mm);
            findings.cautions.extend(told.radius(bored, given));
        }
        (Way::Plunged, Some(piece)) => {
            let much = piece.hollow().and_then(|arc| told.much_left(job, arc));
            findings.cautions.extend(much);
        }
        (Way::Unable, Some(piece)) => {
            let no_disc = piece.hollow().map(|arc| told.no_disc(job, arc));
            findings.stops.extend(no_disc);
        }
        (Way::Unable, None) => findings.stops.push(told.no_bit(job)),
        (Way::Plunged, None) => {}
    }
    findings
}

/// A place as its findings name it.
struct Told<'a> {
    ring: &'a Ring,
    /// What it is: a fixed word.
    place: &'static str,
    /// Its name with a space before it; nothing for the circle, which is the whole opening.
    name: String,
}

impl<'a> Told<'a> {
    fn of(ring: &'a Ring, place: &Place) -> Self {
        let (place, name) = match place.arc.map(|arc| &ring.pieces[arc].name) {
            None => (
                "Inside corner",
                format!(" {}", corner_between(ring, place.sides)),
            ),
            Some(_) if ring.pieces.len() == 1 => ("Circle", String::new()),
            Some(name) if name.contains('-') => ("Edge", format!(" {name}")),
            Some(name) => ("Corner", format!(" {name}")),
        };
        Self { ring, place, name }
    }

    fn say<const N: usize>(
        &self,
        phrases: [&'static Phrase; 2],
        own: [(&'static str, String); N],
        source: &str,
    ) -> Finding {
        let mut values = vec![
            ("place", self.place.to_owned()),
            ("name", self.name.clone()),
            self.ring.whose.in_gap(),
        ];
        values.extend(own);
        Finding::of(self.ring.whose.says(phrases), &values, source)
    }

    fn radius(&self, bored: &Bored, given: f64) -> Option<Finding> {
        let left = bored.radius_mm;
        let [too_sharp, still_sharp] = [given, left].map(|r| r < LEAST_RADIUS_MM - SAME_MM);
        let chain = bored.holes.len() > 1;
        if chain || (!too_sharp && bored.ground_mm <= 1.0) {
            return None;
        }
        let words = |said: bool, words: &str| {
            if said {
                words.to_owned()
            } else {
                String::new()
            }
        };
        let values = [
            ("given", number(given, 1)),
            ("left", number(left, 1)),
            ("ground", number(bored.ground_mm, 1)),
            ("least", number(LEAST_RADIUS_MM, 0)),
            ("sharp", words(given <= 0.0, " (a sharp corner)")),
            (
                "still",
                words(
                    still_sharp,
                    " That is still too sharp: a larger bit is better.",
                ),
            ),
        ];
        let phrases = if too_sharp {
            [&RADIUS, &RADIUS_OF_OPENING]
        } else {
            [&NEAREST, &NEAREST_OF_OPENING]
        };
        Some(self.say(phrases, values, LEAST_RADIUS_SOURCE))
    }

    fn much_left(&self, job: &Job, arc: &Arc) -> Option<Finding> {
        let radius = arc.radius;
        let choice = disc::choose(job, Task::Inside { radius_mm: radius });
        let sunk = Sunk::of(job, choice.disc);
        let hollow = Hollow::of(radius, sunk)?;
        let values = [
            ("disc", choice.disc.name.clone()),
            ("length", number(2.0 * sunk.face_mm, 0)),
            ("radius", number(radius, 1)),
            ("face", number(hollow.face_at, 1)),
            ("left", number(hollow.left_middle, 1)),
            ("much", number(MUCH_TO_GRIND_MM, 0)),
            ("bit", number((2.0 * radius).floor(), 0)),
        ];
        let source = "geometry: r − √(r² − c(0)²); judgement: 10 mm";
        (hollow.left_middle > MUCH_TO_GRIND_MM)
            .then(|| self.say([&MUCH, &MUCH_IN_OPENING], values, source))
    }

    fn no_disc(&self, job: &Job, arc: &Arc) -> Finding {
        let across = 2.0 * arc.radius;
        let radius_mm = arc.radius;
        let choice = disc::choose(job, Task::Inside { radius_mm });
        let either = match choice.depth {
            Depth::Reaches(_) => "",
            Depth::ShortBy(_) => " The disc named does not get through the stone either.",
        };
        let [least, shortest, most, verdict] = disc::that_would_fit(&choice, across);
        let values = [
            ("disc", choice.disc.name.clone()),
            (
                "length",
                number(2.0 * Sunk::of(job, choice.disc).face_mm, 0),
            ),
            ("radius", number(arc.radius, 1)),
            ("across", number(across, 0)),
            ("bit", number(across.floor(), 0)),
            ("either", either.to_owned()),
            least,
            shortest,
            most,
            verdict,
        ];
        let source = "geometry: 2·√(D·h − h²) against 2·r";
        self.say([&NO_DISC, &NO_DISC_IN_OPENING], values, source)
    }

    fn no_bit(&self, job: &Job) -> Finding {
        let kit = if job.core_bits.is_empty() {
            "The kit has no core bit."
        } else {
            "No core bit of the kit fits there."
        };
        let values = [
            ("kit", kit.to_owned()),
            ("radius", number(LEAST_RADIUS_MM, 0)),
            ("least", number(2.0 * LEAST_RADIUS_MM, 0)),
        ];
        self.say([&NO_BIT, &NO_BIT_IN_OPENING], values, LEAST_RADIUS_SOURCE)
    }
}
