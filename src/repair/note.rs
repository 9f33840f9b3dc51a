//! What happened and what it costs, as data.

use serde::Serialize;

use crate::geom::{Outline, Point, Seg, Vector};
use crate::job::{AsCut, CornerCut, Finish, Job, Part, Shape};
use crate::piece::mass_of;
use crate::place::Placement;
use crate::units::{LengthUnit, MM_PER_INCH, MassRange};

use super::faces::{Faces, notch};
use super::smaller::Smaller;
use super::stone::Now;

/// What happened and what it costs. Places are in the frame of the stone as it is now.
#[derive(Clone, Debug, Serialize)]
pub struct Repair {
    /// What it comes to.
    pub outcome: Outcome,
    /// Whether the stone's corners have new letters.
    pub letters: Letters,
    /// Every edge of the top.
    pub edges: Vec<EdgeNow>,
    /// Every rounded, clipped or scooped corner.
    pub corners: Vec<CornerNow>,
    /// Chips.
    pub chips: Vec<ChipNote>,
    /// The top as it was wanted.
    pub wanted: TopMeasures,
    /// The top as it can be had.
    pub now: TopMeasures,
    /// How far the top stands over its base, when the base was given.
    pub overhangs: Vec<Overhang>,
    /// From the wanted corner 1 to the corner 1 there is now, in the top's frame, mm: to be taken from
    /// everything that was measured in the wanted top's frame.
    pub corner_1_moved: Vector,
    /// The lines of a job file that describe the top as it can be had.
    pub job_lines: Vec<String>,
}

/// What a repair comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Everything lies on its line: the rest is cut as it was planned.
    AsPlanned,
    /// The allowance takes it up: ground and polished it is as wanted.
    WithinAllowance,
    /// The top becomes smaller or its roundings others.
    Smaller,
}

/// Whether corners A, B, C … are those of the slab as bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Letters {
    /// Corner A and edge AB's direction are as before; the others may not be.
    SameA,
    /// All letters are new.
    New,
}

/// What is still to be done on an edge or corner.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ToDo {
    /// Nothing but its finish; this much stone is on it where it is thickest, mm.
    Finish(f64),
    /// It is still to be cut, or cut again: see the cuts.
    Cut,
    /// Nothing: it lies on the slab's own edge.
    Nothing,
}

/// An edge of the top.
#[derive(Clone, Debug, Serialize)]
pub struct EdgeNow {
    /// Its name.
    pub name: String,
    /// Its finish.
    pub finish: Finish,
    /// Where its face came to lie outside the line to keep, mm, negative inside; nothing when it has
    /// not been cut.
    pub face_out: Option<f64>,
    /// How far its finished line has moved in, mm.
    pub moved_in: f64,
    /// What is to be done.
    pub to_do: ToDo,
}

/// A corner of the top with something made of it.
#[derive(Clone, Debug, Serialize)]
pub struct CornerNow {
    /// Its name.
    pub name: String,
    /// What it is: `round`, `clip` or `scoop`.
    pub what: &'static str,
    /// Radius or set-back as wanted, mm.
    pub wanted: f64,
    /// As it can be had, mm.
    pub now: f64,
    /// Where its face came to lie outside the line to keep, mm, negative inside; nothing when it has
    /// not been cut.
    pub face_out: Option<f64>,
    /// What is to be done.
    pub to_do: ToDo,
}

/// A chip.
#[derive(Clone, Debug, Serialize)]
pub struct ChipNote {
    /// The edge or corner it is on.
    pub on: String,
    /// Depth, mm.
    pub deep: f64,
    /// Length along the edge, mm.
    pub across: f64,
    /// Its outline.
    pub outline: Vec<Seg>,
}

/// A top's measures.
#[derive(Clone, Debug, Serialize)]
pub struct TopMeasures {
    /// Length and width of the box round it in its own frame, mm.
    pub size: [f64; 2],
    /// Area, its cutouts taken out, mm².
    pub area_mm2: f64,
    /// Mass.
    pub mass: MassRange,
    /// Its outline where it lies.
    pub outline: Outline,
}

/// How far an edge stands over the base.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Overhang {
    /// The edge.
    pub edge: String,
    /// As wanted, mm; negative when the base stands out.
    pub wanted: f64,
    /// As it can be had, mm.
    pub now: f64,
}

/// Puts it together; `rest` is the job that is left.
#[must_use]
pub(super) fn of(
    job: &Job,
    as_cut: &AsCut,
    placement: &Placement,
    faces: &Faces,
    smaller: &Smaller,
    now: &Now,
    rest: &Job,
) -> Repair {
    let edges = edges(job, placement, faces, smaller);
    let corners = corners(job, faces, smaller);
    let chips = as_cut.chips.iter().zip(&faces.chipped);
    let chips = chips.map(|(chip, on)| ChipNote {
        on: placement.top.part_name(*on),
        deep: chip.deep_mm,
        across: chip.across_mm,
        outline: notch(placement, faces, chip, *on)
            .map(|n| n.posed(now.frame.pose).segs().to_vec())
            .unwrap_or_default(),
    });
    let here = now.frame.then(placement.pose, Vector::default());
    let there = now.frame.then(placement.pose, smaller.corner_1);
    Repair {
        outcome: outcome(as_cut, faces, &edges, &corners),
        letters: if now.frame.kept {
            Letters::SameA
        } else {
            Letters::New
        },
        chips: chips.collect(),
        wanted: measures(job, &job.top.shape, job.top.area(), here),
        now: measures(job, &smaller.shape, rest.top.area(), there),
        overhangs: overhangs(job, smaller),
        corner_1_moved: smaller.corner_1,
        job_lines: job_lines(job, &smaller.shape),
        edges,
        corners,
    }
}

fn measures(job: &Job, shape: &Shape, area_mm2: f64, pose: crate::geom::Pose) -> TopMeasures {
    let bounds = shape.outline().bounds();
    TopMeasures {
        size: [bounds.width(), bounds.height()],
        area_mm2,
        mass: mass_of(&job.stone, area_mm2),
        outline: shape.outline().posed(pose),
    }
}

fn outcome(as_cut: &AsCut, faces: &Faces, edges: &[EdgeNow], corners: &[CornerNow]) -> Outcome {
    let other = |a: f64, b: f64| (a - b).abs() > crate::geom::SAME_MM;
    let smaller =
        edges.iter().any(|e| e.moved_in > 0.0) || corners.iter().any(|c| other(c.wanted, c.now));
    let off = faces.done.iter().any(|f| f.out_mm != 0.0) || !as_cut.chips.is_empty();
    match (smaller, off) {
        (true, _) => Outcome::Smaller,
        (false, true) => Outcome::WithinAllowance,
        (false, false) => Outcome::AsPlanned,
    }
}

fn edges(job: &Job, placement: &Placement, faces: &Faces, smaller: &Smaller) -> Vec<EdgeNow> {
    let top = &job.top.shape;
    let settled = smaller.settled.iter().enumerate();
    settled
        .map(|(edge, settled)| {
            let flush = matches!(placement.uses[edge], crate::place::EdgeUse::Flush { .. });
            EdgeNow {
                name: top.edge_name(edge),
                finish: job.top.finishes[edge],
                face_out: faces.out_mm(Part::Edge(edge)),
                moved_in: settled.moved_mm,
                to_do: match settled.ready_mm {
                    Some(_) => ToDo::Finish(settled.take_off_mm),
                    None if flush && settled.moved_mm == 0.0 => ToDo::Nothing,
                    None => ToDo::Cut,
                },
            }
        })
        .collect()
}

fn corners(job: &Job, faces: &Faces, smaller: &Smaller) -> Vec<CornerNow> {
    let wanted = job.top.shape.corner_cuts().iter();
    let pairs = wanted.zip(smaller.shape.corner_cuts()).enumerate();
    pairs
        .filter_map(|(corner, (wanted, now))| {
            let (what, size) = size_of(*wanted)?;
            Some(CornerNow {
                name: job.top.shape.corner_name(corner),
                what,
                wanted: size,
                now: size_of(*now).map_or(0.0, |s| s.1),
                face_out: faces.out_mm(Part::Corner(corner)),
                to_do: smaller.corners_take_off[corner].map_or(ToDo::Cut, ToDo::Finish),
            })
        })
        .collect()
}

const fn size_of(cut: CornerCut) -> Option<(&'static str, f64)> {
    match cut {
        CornerCut::Sharp => None,
        CornerCut::Round(radius) => Some(("round", radius)),
        CornerCut::Clip(back) => Some(("clip", back)),
        CornerCut::Scoop(radius) => Some(("scoop", radius)),
    }
}

/// How far each straight edge stands over the base, square to the edge.
fn overhangs(job: &Job, smaller: &Smaller) -> Vec<Overhang> {
    let (Some(base), top) = (&job.base, &job.top.shape) else {
        return Vec::new();
    };
    let ring = base.outline().flattened();
    (0..top.count())
        .map(|edge| {
            let line = top.edge_line(edge);
            let bow = top.bows()[edge].max(0.0);
            let nearest = ring
                .iter()
                .map(|p| line.left_of(*p))
                .fold(f64::INFINITY, f64::min);
            let wanted = nearest + bow;
            Overhang {
                edge: top.edge_name(edge),
                wanted,
                now: wanted - smaller.settled[edge].moved_mm,
            }
        })
        .collect()
}

/// The top as lines of a job file, in the unit of the job.
fn job_lines(job: &Job, shape: &Shape) -> Vec<String> {
    let writer = Writer { units: job.units };
    let mut lines = vec!["[top]".to_owned(), writer.figure(shape)];
    lines.extend(writer.corners(shape));
    let bows: Vec<String> = shape
        .bows()
        .iter()
        .enumerate()
        .filter(|(_, bow)| **bow != 0.0)
        .map(|(edge, bow)| format!("\"{}\" = {}", shape.edge_name(edge), writer.length(*bow)))
        .collect();
    if !bows.is_empty() {
        lines.push(format!("bow = {{ {} }}", bows.join(", ")));
    }
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
