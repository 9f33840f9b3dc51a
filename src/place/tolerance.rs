//! The tolerances that decide a case, each with one meaning. No fit rests on one: what touches has no
//! stone between, and is neither a strip to saw off nor room to spare.

use crate::geom::SAME_MM;

/// Two boundaries that come nearer than this touch, and reach no farther over each other: rounding, mm.
pub(super) const TOUCH_MM: f64 = SAME_MM;

/// A corner of the slab that touches the face of a cut, or lies inside it by less than this, leaves no
/// strip there, mm. Far above [`TOUCH_MM`], beyond which the top sticks out over the slab: no corner falls
/// between the two.
pub(super) const NO_STRIP_MM: f64 = 1e-2;
