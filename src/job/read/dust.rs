//! `[dust]`: where the cutting is done and what holds the dust down.
//!
//! A powered respirator is written by the class marked on it: `th1`, `th2`, `th3` for a hood or
//! helmet, `tm1`, `tm2`, `tm3` for a tight mask, or, where American factors count,
//! `powered-half-mask` and `powered-full-face`. With `powered-hood` or `powered-mask` the mark is
//! not known, and the lowest factor counts.

use crate::job::reader::Reader;
use crate::job::{Dust, DustMethod, Respirator, Workplace};

/// Reads the dust control.
pub(super) fn read(r: &mut Reader<'_>) -> Dust {
    let method = r.word("method", DustMethod::None);
    Dust {
        place: r.word("where", Workplace::Indoors),
        method,
        airflow_m3h: only_with(r, "airflow", method == DustMethod::Shroud),
        water_l_min: match only_with(r, "water", method == DustMethod::Water) {
            litres if method == DustMethod::Water => litres,
            _ => 0.0,
        },
        respirator: r.word("respirator", Respirator::None),
        mask_fit_tested: r.flag("mask_fit_tested"),
        hours_today: r.quantity("hours_today"),
        days: days(r),
    }
}

/// Days, or people in turn, over which the sawing is spread; one when left out.
fn days(r: &Reader<'_>) -> f64 {
    let given = r.get("days").and_then(|given| given.whole());
    let days = given.and_then(|days| u8::try_from(days).ok());
    days.map_or(1.0, f64::from)
}

/// A quantity that is assumed only with the method that has it.
fn only_with(r: &Reader<'_>, key: &'static str, has: bool) -> f64 {
    if has {
        r.quantity(key)
    } else {
        r.usual_unless(key)
    }
}
