//! Holes, stops and chords of an opening, measured from the lines struck for its own cuts: a square and a short rule find
//! them nearer than two long tapes do.

use crate::geom::{Line, Point};

use super::{Cut, Offset, SetOut};

/// Lines that cross at less than this sine find a point badly (judgement: 30°).
const SQUARE: f64 = 0.5;

/// Gives each hole, stop and chord's end of an opening its distances from two of the opening's lines: the nearest two that
/// cross squarely enough. None where the opening has no such lines: its points keep their tapes. Cost: points times
/// the square of an opening's lines.
pub(super) fn measure(cuts: &mut [Cut]) {
    let lines: Vec<(usize, usize, Line)> = cuts.iter().filter_map(struck).collect();
    for cut in cuts {
        let Some(opening) = cut.cutout else { continue };
        let own: Vec<(usize, Line)> = lines
            .iter()
            .filter(|l| l.0 == opening)
            .map(|l| (l.1, l.2))
            .collect();
        match &mut cut.set_out {
            SetOut::Guide(set_out) => {
                for stop in &mut set_out.stops {
                    stop.offsets = nearest(&own, stop.at);
                }
            }
            SetOut::Centres(marks) => {
                for mark in marks {
                    mark.offsets = nearest(&own, mark.at);
                }
            }
            SetOut::Ordinates(chord) => {
                for end in [&mut chord.from, &mut chord.to] {
                    end.offsets = nearest(&own, end.at);
                }
            }
            SetOut::Pivot(_) => {}
        }
    }
}

/// The line to keep of an opening's straight cut, with the opening and the cut's number.
fn struck(cut: &Cut) -> Option<(usize, usize, Line)> {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return None;
    };
    let [start, end] = [set_out.face.start.at, set_out.face.end.at];
    Some((cut.cutout?, cut.number, Line::through(start, end)))
}

fn nearest(lines: &[(usize, Line)], at: Point) -> Vec<Offset> {
    let off = |line: &Line| line.left_of(at).abs();
    let pairs = lines.iter().enumerate().flat_map(|(i, a)| {
        let rest = lines.iter().skip(i + 1);
        rest.map(move |b| (a, b))
    });
    let squarely = pairs.filter(|(a, b)| a.1.along.cross(b.1.along).abs() >= SQUARE);
    let best = squarely.min_by(|(a, b), (c, d)| {
        let [one, other] = [off(&a.1) + off(&b.1), off(&c.1) + off(&d.1)];
        one.total_cmp(&other)
    });
    let offset = |(cut, line): &(usize, Line)| Offset {
        cut: *cut,
        distance: off(line),
    };
    best.map_or_else(Vec::new, |(a, b)| vec![offset(a), offset(b)])
}
