//! `shape`: a figure from a drawing beside the job file, and the unit and scale of that.

use crate::geom::{Outline, Pose, Vector};
use crate::job::Naming;
use crate::job::drawing::{Drawing, Drawn, FigureFrame, WITHIN_MM, leads_out, split_name};
use crate::job::given::Given;
use crate::job::keys::{DrawnUnit, MOST_CORNERS};
use crate::job::reader::Reader;
use crate::job::words::short;

/// Two marked distances may give scales that differ by this share (judgement: a tape along a line on a
/// photograph); beyond it the picture is slanted.
const MOST_APART: f64 = 0.01;
/// A mark of the scale: its name in the drawing and its true length.
type Mark = (String, f64);

/// The figure drawn.
pub(super) fn figure(r: &Reader<'_>, naming: Naming, said: &Given<'_>) -> Option<Drawn> {
    let (drawn, frame) = read(r, said)?;
    let count = drawn.corners.len();
    if count > MOST_CORNERS {
        return said.fault(
            &format!("has {count} corners and arcs; at most {MOST_CORNERS} are read"),
            "draw it with fewer, longer lines and arcs",
        );
    }
    if naming == Naming::Letters {
        r.ledger.set_slab_frame(frame);
    }
    tell(r, &drawn);
    Some(drawn)
}

/// Refuses the unit and the scale of a drawing where there is none.
pub(super) fn no_drawing(r: &Reader<'_>) {
    for given in [r.get("shape_unit"), r.get("shape_scale")]
        .into_iter()
        .flatten()
    {
        given.fault::<()>(
            "says how a drawing is scaled, but there is no `shape`",
            "leave it out",
        );
    }
}

/// The outline of a flaw, in the slab's frame.
pub(super) fn flaw(r: &Reader<'_>, said: &Given<'_>) -> Option<Outline> {
    let (drawn, frame) = read(r, said)?;
    let slab = r.ledger.slab_frame();
    let same = slab.filter(|slab| slab.file == frame.file);
    let shift = same.map_or(Vector::default(), |slab| slab.shift);
    tell(r, &drawn);
    Some(drawn.outline.posed(Pose::new(0.0, -shift)))
}

fn read(r: &Reader<'_>, said: &Given<'_>) -> Option<(Drawn, FigureFrame)> {
    let text = said.text()?;
    let (file, outline) = split_name(text);
    if leads_out(file) {
        return said.fault(
            "leads out of the job file's folder",
            "put the drawing beside the job file, or in a folder below it",
        );
    }
    let fault = |why: &str| said.fault(&format!("{file}: {why}"), HINT);
    let content = match r.ledger.drawing(file) {
        Ok(content) => content,
        Err(why) => return fault(why),
    };
    let drawing = match Drawing::read(file, content) {
        Ok(drawing) => drawing,
        Err(why) => return fault(&why),
    };
    let marks = marks(r)?;
    let mm_per_unit = scale(r, said, &drawing, file, &marks)?;
    let without: Vec<&str> = marks.iter().map(|m| m.0.as_str()).collect();
    match drawing.outline(outline, &without, mm_per_unit) {
        Ok(drawn) => {
            let frame = FigureFrame {
                file: file.to_owned(),
                mm_per_unit,
                shift: drawn.shift,
            };
            Some((drawn, frame))
        }
        Err(why) => fault(&why),
    }
}

const HINT: &str = "a drawing holds one closed outline of lines, arcs and curves, as SVG or DXF";

/// How many millimetres are in a unit of the drawing.
fn scale(
    r: &Reader<'_>,
    said: &Given<'_>,
    drawing: &Drawing,
    file: &str,
    marks: &[Mark],
) -> Option<f64> {
    if !marks.is_empty() {
        return by_marks(r, said, drawing, marks);
    }
    if let Some(unit) = r.get("shape_unit") {
        return unit.word::<DrawnUnit>().map(DrawnUnit::mm);
    }
    let slab = r.ledger.slab_frame().filter(|slab| slab.file == file);
    let known = slab.map(|slab| slab.mm_per_unit).or(drawing.unit_mm);
    if known.is_none() {
        let message = format!("{file}: it does not say in which unit it is drawn");
        let hint = "add shape_unit = \"mm\", or shape_scale with the true length of a line in it";
        return said.fault(&message, hint);
    }
    known
}

/// The scale by lines whose true length is known.
fn by_marks(r: &Reader<'_>, said: &Given<'_>, drawing: &Drawing, marks: &[Mark]) -> Option<f64> {
    let mut scales = Vec::new();
    for (name, mm) in marks {
        let Some(length) = drawing.mark_length(name).filter(|length| *length > 0.0) else {
            let message = format!("no straight line in it is called {name}");
            return said.fault(
                &message,
                "draw one along a length that was taped, and name it",
            );
        };
        scales.push((mm / length, *mm));
    }
    let (least, most) = scales.iter().fold((f64::INFINITY, 0.0_f64), |(l, m), s| {
        (l.min(s.0), m.max(s.0))
    });
    let apart = most / least - 1.0;
    if apart > MOST_APART {
        let message = format!(
            "the marked distances give scales that differ by {} %, at most {} %",
            short(apart * 100.0),
            short(MOST_APART * 100.0)
        );
        return said.fault(
            &message,
            "take the picture square from above, and tape both again",
        );
    }
    // Longer distances are truer.
    let weight: f64 = scales.iter().map(|s| s.1).sum();
    let scale = scales.iter().map(|s| s.0 * s.1).sum::<f64>() / weight;
    let value = format!(
        "{} mm a unit; its marks agree to {} %",
        short(scale),
        short(apart * 100.0)
    );
    r.assume_because(
        "shape_scale",
        value,
        "scaled by the lengths marked in the drawing",
    );
    Some(scale)
}

fn marks(r: &Reader<'_>) -> Option<Vec<Mark>> {
    let Some(given) = r.get("shape_scale") else {
        return Some(Vec::new());
    };
    let entries = given.entries()?.into_iter();
    let read = entries.map(|(name, _, value)| Some((name.to_owned(), value.length()?)));
    let read: Vec<Mark> = read.collect::<Option<_>>()?;
    if read.is_empty() {
        return given.fault("names no line", "such as { tape-1 = 2400 }");
    }
    Some(read)
}

fn tell(r: &Reader<'_>, drawn: &Drawn) {
    let corners = drawn.corners.len();
    let value =
        format!("{corners} corners, the first nearest to the lower left, counter-clockwise");
    let why = match drawn.arcs {
        0 => "as drawn".to_owned(),
        arcs => format!(
            "{arcs} arcs found again in chords and curves, through points within {} mm, up to {} mm from the \
             lines drawn",
            short(WITHIN_MM),
            short((drawn.off_mm * 1000.0).ceil() / 1000.0)
        ),
    };
    r.assume_because("shape", value, &why);
}
