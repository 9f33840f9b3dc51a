//! Moving the stone off the trestles: aids, standing on edge, the way in.
//!
//! | file | what it works out |
//! |---|---|
//! | [`aid`] | what a trolley, a vacuum lifter, slings need |
//! | [`fall`] | what knocks a standing stone over, what holds it |
//! | [`route`] | doors and corners |
//! | [`moving`] | the three together |

pub mod aid;
pub mod fall;
pub mod moving;
pub mod route;
