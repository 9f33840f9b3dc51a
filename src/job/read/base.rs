//! `[base]`: the outline of what the top will stand on.

use super::figure;
use crate::geom::{Point, Pose, Vector};
use crate::job::reader::Reader;
use crate::job::{Naming, Shape};

/// The base as given: its figure in its own frame, and where its corner 1 lies in the top's.
#[derive(Debug)]
pub(super) struct Base {
    pub(super) shape: Shape,
    at: Option<Point>,
}

/// Reads the base, if there is one.
pub(super) fn read(root: &mut Reader<'_>) -> Option<Base> {
    root.get("base")?;
    root.section("base", |r| {
        let shape = figure::read(r, Naming::Numbers, true);
        let at = r.get("at").and_then(|given| given.point());
        shape.map(|shape| Base { shape, at })
    })
}

impl Base {
    /// The base in the top's frame. A top made over the base says where that lies; otherwise the base
    /// does, and lies at the top's corner 1 when it is silent.
    pub(super) fn in_top_frame(self, over_base: Option<Vector>) -> Shape {
        let own = self.at.unwrap_or(Point::ORIGIN).to_vector();
        self.shape.posed(Pose::new(0.0, over_base.unwrap_or(own)))
    }

    /// Whether the base says where it lies.
    pub(super) const fn says_where(&self) -> bool {
        self.at.is_some()
    }
}
