//! A curve set out about its pivot or from its chord.

use serde::Serialize;

use crate::geom::Point;

use super::mark::{Offset, Tie};

/// What the pivot of the circle jig stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum PivotPlace {
    /// On the stone that is kept.
    Top,
    /// On stone that falls out of a cutout, still in place because openings are cut last.
    Cutout,
    /// On waste.
    Waste,
    /// Beside the stone that is left: something of the same height must be fixed there.
    Off,
}

/// Whether the arm lies within the jig's reach.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Reach {
    /// It does.
    Within,
    /// Shorter than the jig's shortest arm by this much, mm.
    #[serde(rename = "too_short_by_mm")]
    TooShortBy(f64),
    /// Longer than the jig's longest arm by this much, mm.
    #[serde(rename = "too_long_by_mm")]
    TooLongBy(f64),
}

/// How a curve is set out.
#[derive(Clone, Debug, Serialize)]
pub struct CurveSetOut {
    /// Centre of the arc.
    pub pivot: Point,
    /// Ties to the pivot: two, and one or two more as checks.
    pub pivot_ties: Vec<Tie>,
    /// What the pivot stands on.
    pub pivot_on: PivotPlace,
    /// Radius of the finished arc, mm.
    #[serde(rename = "radius_mm")]
    pub radius: f64,
    /// Radius of the sawn arc, mm: with the allowance.
    #[serde(rename = "sawn_radius_mm")]
    pub sawn_radius: f64,
    /// From the pivot to the jig's arm mark, mm.
    #[serde(rename = "arm_mm")]
    pub arm: f64,
    /// Whether the jig can do it.
    pub reach: Reach,
    /// Angle between stations.
    #[serde(rename = "step_deg", serialize_with = "super::stroke::in_degrees")]
    pub step: f64,
    /// The stations in order.
    pub stations: Vec<Station>,
    /// The stations that are struck before the first cut: the others are taped from them.
    pub struck: Vec<StruckStation>,
    /// Half the length of the slot in the face, mm.
    #[serde(rename = "slot_half_mm")]
    pub slot_half: f64,
    /// Half the length of the slot at the underside, mm.
    #[serde(rename = "slot_half_under_mm")]
    pub slot_half_under: f64,
    /// For comparison: straight cuts tangent to the arc.
    pub tangents: Tangents,
    /// Inside a hollow arc: where the disc's outer face stands and what is left. The stations' marks
    /// then lie on that face.
    pub inside: Option<ConcaveArc>,
}

/// How a curve is set out from its chord.
#[derive(Clone, Debug, Serialize)]
pub struct OrdinateSetOut {
    /// The curve: its stations, its centre for checking only.
    #[serde(flatten)]
    pub curve: CurveSetOut,
    /// The beginning of the chord: where the sawn arc begins, distance 0.
    pub from: ChordEnd,
    /// The end of the chord.
    pub to: ChordEnd,
    /// Length of the chord, mm.
    #[serde(rename = "chord_length_mm")]
    pub chord_length: f64,
    /// Rise of the sawn arc over its chord, mm.
    #[serde(rename = "rise_mm")]
    pub rise: f64,
    /// From the guide's edge to the face that the disc is held to, mm.
    #[serde(rename = "guide_to_face_mm")]
    pub guide_to_face: f64,
    /// What is marked for each station, in the stations' order.
    pub marks: Vec<StationMarks>,
}

/// An end of the chord.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ChordEnd {
    /// Where it is.
    pub at: Point,
    /// Ties to it: two, and one or two more as checks.
    pub ties: Vec<Tie>,
    /// In an opening, its distances from two lines struck for its cuts; none where there are no such lines.
    pub offsets: Vec<Offset>,
}

/// The marks of one station.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct StationMarks {
    /// The station's number.
    pub number: usize,
    /// The mark on the arc.
    pub touch: Ordinate,
    /// Two marks on the guide's edge.
    pub guide: [Ordinate; 2],
}

/// A place measured from the chord.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Ordinate {
    /// Where it is.
    pub at: Point,
    /// Distance along the chord from its beginning, mm; negative before it.
    #[serde(rename = "along_mm")]
    pub along: f64,
    /// Distance square to the chord, mm: positive to the side of the arc, negative to the other.
    #[serde(rename = "off_mm")]
    pub off: f64,
}

/// What plunges leave inside a hollow arc.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ConcaveArc {
    /// From the pivot to the disc's outer face, mm.
    #[serde(rename = "face_at_mm")]
    pub face_at: f64,
    /// Stone left beside the middle of a slot, from face to underside, mm: r − d.
    #[serde(rename = "sagitta_mm")]
    pub sagitta: f64,
    /// Stone left beside the ends of a slot at the underside, mm: r − √(d² + c(t)²).
    #[serde(rename = "left_under_mm")]
    pub left_under: f64,
}

/// Where the disc is lowered.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Station {
    /// From 1, counter-clockwise along the arc.
    pub number: usize,
    /// Angle about the pivot, counter-clockwise from AB.
    #[serde(rename = "angle_deg", serialize_with = "super::stroke::in_degrees")]
    pub angle: f64,
    /// Where the disc's near face touches the sawn arc: the mark to make.
    pub touch: Point,
    /// Straight distance from the mark before, mm; 0 at the first.
    #[serde(rename = "chord_mm")]
    pub chord: f64,
    /// The station whose mark, struck before the first cut, it is taped from: its own number at such a one.
    pub taped_from: usize,
    /// Straight distance from that mark, mm: errors of stepping off do not add up in it.
    #[serde(rename = "taped_mm")]
    pub taped: f64,
    /// Whether there is stone to plunge into: not where an earlier cut has already been.
    pub in_stone: bool,
}

/// A station that is struck on the whole slab.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StruckStation {
    /// Its number.
    pub station: usize,
    /// Where it is.
    pub at: Point,
    /// The tape to it from the corner that shows best where along the curve it is; the line about the pivot
    /// is struck before.
    pub tie: Tie,
}

/// Straight cuts tangent to an arc, run off at both ends, in place of plunges.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Tangents {
    /// How many leave corners no higher than the highest ridge that plunges may leave.
    pub cuts: usize,
    /// How far their corners stand out over the arc, mm.
    #[serde(rename = "corner_mm")]
    pub corner: f64,
    /// How far the corners of only four to the quarter circle would, mm.
    #[serde(rename = "four_to_quarter_mm")]
    pub four_to_quarter: f64,
}
