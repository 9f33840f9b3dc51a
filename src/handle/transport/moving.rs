//! Moving the stone once it is off the trestles: aids, standing on edge, the way in.

use serde::Serialize;

use super::aid::{self, Aids};
use super::fall::Fall;
use super::route::{WayIn, way_in};
use crate::diag::Findings;
use crate::handle::loads::Load;
use crate::job::{Aid, Job};

/// Aids, standing on edge and the way in, for the slab as delivered and the finished top.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Moving {
    /// The aid that the job file names.
    pub aid: Aid,
    /// What each aid needs: for the slab, for the top.
    pub aids: [Aids; 2],
    /// Standing on edge: the slab, the top.
    pub falls: [Fall; 2],
    /// The way in; nothing when the job file names no place on it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub route: Option<WayIn>,
}

impl Moving {
    /// Works out both stones, and what must be read.
    #[must_use]
    pub fn assess(job: &Job, slab: &Load, top: &Load) -> (Self, Findings) {
        let moving = Self {
            aid: job.lift.aid,
            // The top is cut clear of every flaw.
            aids: [(slab, &job.slab.flaws[..]), (top, &[])]
                .map(|(load, flaws)| Aids::of(job, load, flaws)),
            falls: [slab, top].map(|load| Fall::of(load, job.stone.thickness.least)),
            route: way_in(job, slab, top),
        };
        let mut found = Findings::default();
        if let Some(route) = &moving.route {
            found.append(route.findings());
        }
        found.append(aid::findings(job, &moving.aids));
        // Slab and top fall alike: the heavier is told.
        let [slab, top] = &moving.falls;
        let heavier = if top.mass > slab.mass { top } else { slab };
        found.warnings.push(heavier.finding());
        (moving, found)
    }
}
