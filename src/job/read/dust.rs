//! `[dust]`: where the cutting is done and what holds the dust down.
//!
//! A powered respirator is written by the class marked on it: `th1`, `th2`, `th3` for a hood or
//! helmet, `tm1`, `tm2`, `tm3` for a tight mask, or, where American factors count,
//! `powered-half-mask` and `powered-full-face`. With `powered-hood` or `powered-mask` the mark is
//! not known, and the lowest factor counts.

use crate::job::quantity::{AIRFLOW, HOURS, WATER, from_to};
use crate::job::reader::Reader;
use crate::job::{Dust, DustMethod, Place, Respirator};

const PLACES: [(&str, Place); 2] = [("outdoors", Place::Outdoors), ("indoors", Place::Indoors)];
const METHODS: [(&str, DustMethod); 3] = [
    ("water", DustMethod::Water),
    ("shroud", DustMethod::Shroud),
    ("none", DustMethod::None),
];
const RESPIRATORS: [(&str, Respirator); 18] = [
    ("none", Respirator::None),
    ("nuisance-mask", Respirator::Nuisance),
    ("ffp2", Respirator::Ffp2),
    ("ffp3", Respirator::Ffp3),
    ("n95", Respirator::N95),
    ("p100", Respirator::P100),
    ("half-mask-p3", Respirator::HalfMaskP3),
    ("full-face", Respirator::FullFace),
    ("powered-hood", Respirator::PoweredHood),
    ("th1", Respirator::Th1),
    ("th2", Respirator::Th2),
    ("th3", Respirator::Th3),
    ("powered-mask", Respirator::PoweredMask),
    ("tm1", Respirator::Tm1),
    ("tm2", Respirator::Tm2),
    ("tm3", Respirator::Tm3),
    ("powered-half-mask", Respirator::PoweredHalfMask),
    ("powered-full-face", Respirator::PoweredFullFace),
];
/// Water for a hand-held cut-off saw, litres a minute (NIOSH, text read; for a grinder nothing is
/// published).
const WATER_L_MIN: f64 = 0.5;

/// Reads the dust control.
pub(super) fn read(r: &mut Reader<'_>) -> Dust {
    let place = r.choice_or(
        "where",
        &PLACES,
        Place::Indoors,
        "not said; the worse of the two",
    );
    let method = r.choice_or(
        "method",
        &METHODS,
        DustMethod::None,
        "nothing was said to hold the dust down",
    );
    let airflow_m3h = if method == DustMethod::Shroud {
        let why = "the airflow of the extractor is not known";
        r.quantity_or("airflow", &AIRFLOW, from_to(0.0, 5000.0), 0.0, why)
    } else {
        let given = r.get("airflow");
        given
            .and_then(|g| g.quantity(&AIRFLOW, from_to(0.0, 5000.0)))
            .unwrap_or(0.0)
    };
    Dust {
        place,
        method,
        airflow_m3h,
        water_l_min: water(r, method),
        respirator: r.choice_or(
            "respirator",
            &RESPIRATORS,
            Respirator::None,
            "none was said to be at hand",
        ),
        mask_fit_tested: r.flag_or(
            "mask_fit_tested",
            false,
            "not known to be fit-tested on its wearer",
        ),
        hours_today: r.quantity_or(
            "hours_today",
            &HOURS,
            from_to(0.0, 24.0),
            0.0,
            "no other dusty, vibrating or loud work the same day was told",
        ),
    }
}

/// Water fed to the disc: only wet cutting has any.
fn water(r: &mut Reader<'_>, method: DustMethod) -> f64 {
    let range = from_to(0.0, 50.0);
    if method == DustMethod::Water {
        let why = "NIOSH for hand-held cut-off saws; measure yours with a bucket and a watch";
        return r.quantity_or("water", &WATER, range, WATER_L_MIN, why);
    }
    let given = r.get("water");
    given.and_then(|water| water.quantity(&WATER, range));
    0.0
}
