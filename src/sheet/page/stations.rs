//! The tables of a curve's stations.

use crate::cut::{CurveSetOut, Ordinate, OrdinateSetOut};
use crate::sheet::figure::{Figures, angle};
use crate::sheet::flow::Scale;
use crate::sheet::table::{Heading, Table, Width};

/// The stations of a curve about its pivot.
pub(super) fn by_arm(figures: Figures, curve: &CurveSetOut) -> Table {
    let unit = figures.unit();
    let rows = curve.stations.iter().map(|s| {
        vec![
            s.number.to_string(),
            angle(s.angle),
            figures.tape_bare(s.from_first),
            figures.tape_bare(s.touch.x),
            figures.tape_bare(s.touch.y),
            if s.in_stone {
                String::new()
            } else {
                "already cut".into()
            },
        ]
    });
    Table {
        headings: vec![
            Heading::numbers("Station", Width::Mm(22.0)),
            Heading::numbers("Angle from AB", Width::Mm(34.0)),
            Heading::numbers(format!("From station 1, {unit}"), Width::Mm(28.0)),
            Heading::numbers(format!("x from A, {unit}"), Width::Mm(32.0)),
            Heading::numbers(format!("y from A, {unit}"), Width::Mm(32.0)),
            Heading::words("", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

/// Each station's mark on the arc and the two marks of the guide's edge, as along / off.
pub(super) fn by_chord(figures: Figures, set_out: &OrdinateSetOut) -> Table {
    let unit = figures.unit();
    let stations = set_out.curve.stations.iter().zip(&set_out.marks);
    let rows = stations.map(|(station, marks)| {
        let mut row = vec![if station.in_stone {
            station.number.to_string()
        } else {
            format!("({})", station.number)
        }];
        let pair =
            |o: &Ordinate| [o.along, o.off].map(|mm| figures.tape_bare(mm).replace('-', "−"));
        row.extend(pair(&marks.touch));
        row.extend(marks.guide.iter().flat_map(pair));
        row
    });
    let heads = ["On the arc", "Guide 1", "Guide 2"];
    let mut headings = vec![Heading::numbers("Station", Width::Mm(22.0))];
    for head in heads {
        headings.push(Heading::numbers(
            format!("{head}\nalong, {unit}"),
            Width::Part(1.15),
        ));
        headings.push(Heading::numbers(
            format!("\noff, {unit}"),
            Width::Part(0.85),
        ));
    }
    Table {
        headings,
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}
