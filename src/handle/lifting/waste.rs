//! Waste pieces are lifted too.

use serde::Serialize;

use super::lift::{Effort, MOST_TIMES};
use crate::handle::loads::Free;
use crate::units::{Mass, MassRange};

/// A waste piece that people lift away, judged as every other stone.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Waste {
    /// Its name: `W1`.
    pub name: String,
    /// The cut that frees it.
    pub after_cut: usize,
    /// Its mass, kg.
    pub mass: MassRange,
    /// Its mass over what the team may count on.
    pub utilisation: f64,
    /// How that stands to the guideline figure.
    pub effort: Effort,
}

impl Waste {
    /// A free piece against what the team may count on.
    pub(crate) fn of(free: &Free, team_limit: Mass) -> Self {
        let utilisation = if team_limit.kg() > 0.0 {
            free.mass.high.kg() / team_limit.kg()
        } else {
            2.0 * MOST_TIMES
        };
        Self {
            name: free.name.clone(),
            after_cut: free.after_cut,
            mass: free.mass,
            utilisation,
            effort: Effort::of(utilisation),
        }
    }
}
