//! The top there is now as lines of a job file.

use crate::geom::{Point, Pose, Vector};
use crate::job::{Cutout, Finish, Job, Shape};
use crate::units::{LengthUnit, MM_PER_INCH};

use super::note::size_of;

/// The top and its openings as lines of a job file, in the unit of the job.
pub(super) fn of(job: &Job, shape: &Shape, cutouts: &[Cutout]) -> Vec<String> {
    let writer = Writer { units: job.units };
    let mut lines = vec!["[top]".to_owned()];
    lines.extend(writer.shape(shape));
    let finishes: Vec<String> = job
        .top
        .finishes
        .iter()
        .enumerate()
        .map(|(edge, finish)| {
            format!(
                "\"{}\" = \"{}\"",
                shape.edge_name(edge),
                finish_word(*finish)
            )
        })
        .collect();
    lines.push(format!("finish = {{ {} }}", finishes.join(", ")));
    for cutout in cutouts {
        lines.push("[[top.cutout]]".to_owned());
        lines.push(format!("what = {:?}", cutout.what));
        lines.extend(writer.opening(&cutout.shape));
        lines.push(format!("finish = \"{}\"", finish_word(cutout.finish)));
    }
    lines
}

const fn finish_word(finish: Finish) -> &'static str {
    match finish {
        Finish::Factory => "factory",
        Finish::Polish => "polish",
        Finish::Ease => "ease",
        Finish::Saw => "saw",
    }
}

/// Writes lengths in the unit of a job.
struct Writer {
    units: LengthUnit,
}

impl Writer {
    /// To a thousandth of a millimetre, or a ten-thousandth of an inch.
    fn length(&self, mm: f64) -> String {
        let text = match self.units {
            LengthUnit::Millimetre => format!("{mm:.3}"),
            LengthUnit::Inch => format!("{:.4}", mm / MM_PER_INCH),
        };
        let text = text.trim_end_matches('0').trim_end_matches('.');
        if text == "-0" {
            "0".to_owned()
        } else {
            text.to_owned()
        }
    }

    fn shape(&self, shape: &Shape) -> Vec<String> {
        let mut lines = vec![self.figure(shape)];
        lines.extend(self.corners(shape));
        let bows = shape.bows().iter().enumerate();
        let bows: Vec<String> = bows
            .filter(|(_, bow)| **bow != 0.0)
            .map(|(edge, bow)| format!("\"{}\" = {}", shape.edge_name(edge), self.length(*bow)))
            .collect();
        if !bows.is_empty() {
            lines.push(format!("bow = {{ {} }}", bows.join(", ")));
        }
        lines
    }

    /// An opening: its figure from its own corner 1, and where the middle of its box lies.
    fn opening(&self, shape: &Shape) -> Vec<String> {
        let middle = shape.outline().bounds().centre();
        let mut lines = if let Some((_, radius)) = shape.as_circle() {
            vec![format!("circle = {}", self.length(2.0 * radius))]
        } else {
            let from = shape.corners()[0].to_vector();
            self.shape(&shape.posed(Pose::new(0.0, Vector::default() - from)))
        };
        lines.push(format!(
            "at = [{}, {}]",
            self.length(middle.x),
            self.length(middle.y)
        ));
        lines
    }

    fn figure(&self, shape: &Shape) -> String {
        let corners = shape.corners();
        if let [a, b, c, d] = corners[..] {
            let near = |p: Point, x: f64, y: f64| p.distance(Point::new(x, y)) < 5e-4;
            let square = near(a, 0.0, 0.0) && near(b, c.x, 0.0) && near(d, 0.0, c.y);
            if square {
                return format!("rectangle = [{}, {}]", self.length(c.x), self.length(c.y));
            }
        }
        let points: Vec<String> = corners
            .iter()
            .map(|p| format!("[{}, {}]", self.length(p.x), self.length(p.y)))
            .collect();
        format!("corners = [{}]", points.join(", "))
    }

    fn corners(&self, shape: &Shape) -> Vec<String> {
        let cuts = shape.corner_cuts().iter().enumerate();
        let all: Vec<(&str, String)> = cuts
            .filter_map(|(corner, cut)| {
                let (what, size) = size_of(*cut)?;
                let entry = format!("{} = {}", shape.corner_name(corner), self.length(size));
                Some((what, entry))
            })
            .collect();
        ["round", "clip", "scoop"]
            .into_iter()
            .filter_map(|what| {
                let each: Vec<&str> = all
                    .iter()
                    .filter(|e| e.0 == what)
                    .map(|e| e.1.as_str())
                    .collect();
                (!each.is_empty()).then(|| format!("{what} = {{ {} }}", each.join(", ")))
            })
            .collect()
    }
}
