//! A cut: what it makes, with what, and everything that is known of it.

use serde::Serialize;

use crate::cut::kept;
use crate::geom::{Outline, Vector};
use crate::job::{CoreBit, Disc, Finish};

use super::curve::{CurveSetOut, OrdinateSetOut};
use super::left_over::{LeftOver, Remains};
use super::mark::{Bearers, CentreMark};
use super::straight::StraightSetOut;
use super::stroke::{Hole, Pass, Stroke};

/// What kind of cut it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum CutKind {
    /// One straight line: from edge to edge of the stone, or stopped inside it.
    Straight,
    /// An arc made of straight plunges.
    Curve,
    /// One straight line through waste, so that a curve's waste falls in pieces a person can hold.
    Relief,
    /// Holes drilled with a core bit.
    Core,
}

/// What a cut is made with.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Tool {
    /// A cutting disc.
    Disc(Disc),
    /// A core bit.
    Bit(CoreBit),
}

impl Tool {
    /// The disc, when it is one.
    #[must_use]
    pub const fn disc(&self) -> Option<&Disc> {
        match self {
            Self::Disc(disc) => Some(disc),
            Self::Bit(_) => None,
        }
    }

    /// Width of what it cuts, mm.
    #[must_use]
    pub const fn width_mm(&self) -> f64 {
        match self {
            Self::Disc(disc) => disc.kerf,
            Self::Bit(bit) => bit.diameter,
        }
    }
}

/// One cut.
#[derive(Clone, Debug, Serialize)]
pub struct Cut {
    /// Its place in the order, from 1.
    pub number: usize,
    /// Straight, curve or core holes.
    pub kind: CutKind,
    /// The edge (`1-2`), the corner (`2`), the corners (`2, 3`) or the whole circle (`all round`) that it makes,
    /// of the top or of the cutout.
    pub edge: String,
    /// The cutout it belongs to, counted from 1; nothing for the top's own outline.
    pub cutout: Option<usize>,
    /// Why it comes at this place in the order.
    pub because: Because,
    /// Enters and leaves through the edge of the stone.
    pub run_off: bool,
    /// The disc or the core bit: key `disc` or `bit`.
    #[serde(flatten)]
    pub tool: Tool,
    /// Depth of the last pass, mm.
    pub full_depth: f64,
    /// Stone left on the edge, mm.
    pub allowance: f64,
    /// What is done to the edge afterwards.
    pub finish: Finish,
    /// Length of the sawn face, mm; of core holes the way round them.
    pub length: f64,
    /// Sawn face, mm².
    pub face_mm2: f64,
    /// Time with the disc or bit in the stone, minutes.
    pub minutes: f64,
    /// How it is set out.
    pub set_out: SetOut,
    /// Stone left low down at a stopped end, c(0) − c(t), mm; 0 for a run-off cut.
    #[serde(rename = "tail")]
    pub run_out: f64,
    /// Ridge left between plunges, mm; 0 for a straight cut and for a hollow arc.
    pub cusp: f64,
    /// The depths in order; none for core holes.
    pub passes: Vec<Pass>,
    /// Every movement of the disc in order; none for core holes.
    pub strokes: Vec<Stroke>,
    /// The core holes, right through.
    pub holes: Vec<Hole>,
    /// The cuts, this one included, whose run-outs are taken out by hand after this one.
    pub run_outs_removed: Vec<usize>,
    /// Pieces that come free.
    pub frees: Vec<String>,
    /// What is left to take off by hand.
    pub left_to_remove: Vec<LeftOver>,
    /// Where the stone is borne along it.
    pub bearers: Option<Bearers>,
}

/// What part of a boundary a cut makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Makes {
    /// One edge.
    Edge,
    /// One corner.
    Corner,
    /// Several corners or edges: the arcs of one circle, or the holes of one bit.
    Several,
    /// A circle.
    Circle,
}

/// How a cut is set out.
#[derive(Clone, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SetOut {
    /// Along a guide.
    Guide(Box<StraightSetOut>),
    /// About a pivot.
    Pivot(Box<CurveSetOut>),
    /// From the chord of a curve.
    Ordinates(Box<OrdinateSetOut>),
    /// By the middles of holes.
    Centres(Vec<CentreMark>),
}

/// Why a cut comes where it does in the order.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Because {
    /// It takes away stone that later cuts would have had to go through.
    Shortens {
        /// The later cuts.
        cuts: Vec<usize>,
        /// How much shorter they are together, mm.
        by_mm: f64,
    },
    /// It shortens no other straight cut: the order among these does not matter.
    NothingShorter,
    /// Holes are drilled while the slab is whole and bears the bit all round.
    SlabWhole,
    /// A stopped cut comes after the cuts that run off.
    AfterRunOff,
    /// A curve comes after the straight trims beside it.
    AfterTrims,
    /// The curve's waste would fall in one piece too heavy to hold.
    WasteInHand,
    /// An opening weakens the top: nothing else is sawn after it.
    OpeningLast,
    /// In an opening: holes, then long cuts, then short ones.
    WithinOpening,
    /// In an opening: holes that part its piece at the underside, where its cuts end short, while the stone
    /// bears the bit all round.
    PartsUnderside,
}

/// So far a run-out's outline reaches back into the cut it belongs to, mm, lest rounding part the two.
const INTO_CUT_MM: f64 = 0.5;

impl SetOut {
    /// The stations of a curve, however they are set out.
    #[must_use]
    pub fn curve(&self) -> Option<&CurveSetOut> {
        match self {
            Self::Pivot(curve) => Some(curve),
            Self::Ordinates(ordinates) => Some(&ordinates.curve),
            Self::Guide(_) | Self::Centres(_) => None,
        }
    }
}

impl Cut {
    /// A cut of which no more is known yet: everything else is nothing or 0.
    #[must_use]
    pub(crate) const fn begun(kind: CutKind, edge: String, tool: Tool, set_out: SetOut) -> Self {
        Self {
            number: 0,
            kind,
            edge,
            cutout: None,
            because: Because::NothingShorter,
            run_off: true,
            tool,
            full_depth: 0.0,
            allowance: 0.0,
            finish: Finish::Saw,
            length: 0.0,
            face_mm2: 0.0,
            minutes: 0.0,
            set_out,
            run_out: 0.0,
            cusp: 0.0,
            passes: Vec::new(),
            strokes: Vec::new(),
            holes: Vec::new(),
            run_outs_removed: Vec::new(),
            frees: Vec::new(),
            left_to_remove: Vec::new(),
            bearers: None,
        }
    }

    /// What part of the boundary it makes.
    #[must_use]
    pub fn makes(&self) -> Makes {
        if self.edge == kept::ALL_ROUND {
            Makes::Circle
        } else if self.edge.contains(", ") {
            Makes::Several
        } else if self.edge.contains('-') {
            Makes::Edge
        } else {
            Makes::Corner
        }
    }

    /// What the cut takes out of the face of the stone, as overlapping outlines.
    #[must_use]
    pub fn slots(&self) -> Vec<Outline> {
        self.slots_at(0.0)
    }

    /// What the cut takes out of the stone at `below` mm under the face, as overlapping outlines: the
    /// slots of the last pass, which are the longest, and the core holes.
    #[must_use]
    pub fn slots_at(&self, below: f64) -> Vec<Outline> {
        let last = self.passes.last().map_or(0, |p| p.number);
        let slots = self.tool.disc().into_iter().flat_map(|disc| {
            let strokes = self.strokes.iter().filter(|s| s.pass == last);
            strokes.filter_map(|s| Outline::polygon(&s.slot(disc, below)).ok())
        });
        let holes = self.holes.iter();
        slots
            .chain(holes.filter_map(|h| Outline::circle(h.at, h.diameter / 2.0).ok()))
            .collect()
    }

    /// What is taken out by hand under the stopped ends, as outlines: upright through the stone, one
    /// kerf wide.
    #[must_use]
    pub fn run_outs(&self) -> Vec<Outline> {
        let kerf = self.tool.width_mm();
        self.left_to_remove
            .iter()
            .filter(|left| left.why == Remains::RunOut)
            .filter_map(|left| {
                let along = Vector::at_angle(left.heading?.to_radians());
                let side = along.left() * (kerf / 2.0);
                let (a, b) = (left.at - along * (left.length + INTO_CUT_MM), left.at);
                Outline::polygon(&[a - side, b - side, b + side, a + side]).ok()
            })
            .collect()
    }
}
