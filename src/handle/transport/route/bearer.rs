//! Each pose at each place: what the stone needs with what carries it, and what is there.

use super::attempt::{Attempt, Carried, Fit, Measure, Need};
use super::corner::Corner;
use super::remedy;
use super::walk::{GetsIn, Passage, Walk};
use crate::handle::bending::axes::Axes;
use crate::handle::loads::Load;
use crate::job::{self, ClearSize, Obstacle};

/// What carries the stone.
pub(super) struct Bearer<'a> {
    pub(super) route: &'a job::Route,
    /// Width of the trolley, mm; 0 without one.
    pub(super) trolley_mm: f64,
    /// Less to spare is tight, mm: what the job file calls so, and never less than two tape errors.
    pub(super) enough_mm: f64,
}

/// A pose seen from above and from the side, with what carries it, mm.
struct Plank {
    carried: Carried,
    /// The longer side seen from above.
    length_mm: f64,
    /// The shorter side seen from above.
    thickness_mm: f64,
    /// Width on the floor: of the plank, or of the trolley under it.
    width_mm: f64,
    /// Height above the floor; nothing for a stone carried flat, which goes under what a person
    /// goes under.
    height_mm: Option<f64>,
}

impl Bearer<'_> {
    pub(super) fn walk(&self, load: &Load, thickness_mm: f64) -> Walk {
        let axes = Axes::of(&load.region);
        let (length_mm, width_mm) = (axes.length_mm(), axes.width_mm());
        let planks = Carried::ALL.map(|c| self.plank(c, [length_mm, width_mm, thickness_mm]));
        let obstacles = self.route.obstacles.iter();
        let passages: Vec<Passage> = obstacles.map(|at| self.passage(at, &planks)).collect();
        Walk {
            name: load.name.clone(),
            length_mm,
            width_mm,
            thickness_mm,
            stand_up_mm: length_mm.hypot(width_mm),
            gets_in: gets_in(&passages),
            passages,
        }
    }

    fn plank(&self, carried: Carried, [length, width, thickness]: [f64; 3]) -> Plank {
        let (room, raise) = (self.route.room_mm, self.route.raise_mm);
        let (long, short, height) = match carried {
            Carried::OnEdge => (length, thickness + room, Some(width + raise)),
            Carried::Upright => (width, thickness + room, Some(length + raise)),
            Carried::Flat => (length, width + room, None),
        };
        let on_wheels = match carried {
            Carried::OnEdge | Carried::Upright => self.trolley_mm,
            Carried::Flat => 0.0,
        };
        Plank {
            carried,
            length_mm: long.max(short),
            thickness_mm: long.min(short),
            width_mm: short.max(on_wheels),
            height_mm: height,
        }
    }

    fn passage(&self, at: &Obstacle, planks: &[Plank; 3]) -> Passage {
        let attempts = planks.each_ref().map(|p| self.attempt(at.opening, p));
        let best = attempts.iter().find(|a| a.fit.passes()).map(|a| a.carried);
        let plank = match at.opening {
            ClearSize::Door { .. } => None,
            ClearSize::Corner { from_mm, to_mm, .. } => {
                let [on_edge, _, _] = planks;
                Some(on_edge.corner(from_mm, to_mm))
            }
        };
        let [on_edge, upright, _] = &attempts;
        Passage {
            at: at.clone(),
            best,
            remedies: remedy::remedies(on_edge, upright, plank.as_ref()),
            plank,
            attempts,
        }
    }

    fn attempt(&self, opening: ClearSize, plank: &Plank) -> Attempt {
        let (width, turn) = match opening {
            ClearSize::Door { width_mm, .. } => (width_mm, None),
            ClearSize::Corner { from_mm, to_mm, .. } => {
                let longest = plank.corner(from_mm, to_mm).longest_mm();
                let turn = longest.map(|l| Need::new(Measure::Turn, plank.length_mm, l));
                (from_mm.min(to_mm), turn)
            }
        };
        let height = opening.height_mm();
        let width = Need::new(Measure::Width, plank.width_mm, width);
        let height = plank
            .height_mm
            .map(|h| Need::new(Measure::Height, h, height));
        let mut binds = width;
        for need in turn.iter().chain(&height) {
            if need.spare_mm() < binds.spare_mm() {
                binds = *need;
            }
        }
        Attempt {
            carried: plank.carried,
            length_mm: plank.length_mm,
            needs: std::iter::once(width).chain(turn).chain(height).collect(),
            binds,
            fit: self.fit(binds.spare_mm()),
        }
    }

    fn fit(&self, spare_mm: f64) -> Fit {
        if spare_mm < 0.0 {
            Fit::Short(-spare_mm)
        } else if spare_mm < self.enough_mm {
            Fit::Tight(spare_mm)
        } else {
            Fit::Clears(spare_mm)
        }
    }
}

impl Plank {
    fn corner(&self, from_mm: f64, to_mm: f64) -> Corner {
        Corner {
            from_mm,
            to_mm,
            thickness_mm: self.thickness_mm,
        }
    }
}

/// The worst of the best poses decides.
fn gets_in(passages: &[Passage]) -> GetsIn {
    let has = |best: Option<Carried>| passages.iter().any(|p| p.best == best);
    if has(None) {
        GetsIn::No
    } else if has(Some(Carried::Flat)) {
        GetsIn::Flat
    } else if has(Some(Carried::Upright)) {
        GetsIn::Upright
    } else {
        GetsIn::OnEdge
    }
}
