//! `[dust]`: where the cutting is done and what holds the dust down.

use crate::job::quantity::{AIRFLOW, HOURS, from_to};
use crate::job::reader::Reader;
use crate::job::{Dust, DustMethod, Place, Respirator};

const PLACES: [(&str, Place); 2] = [("outdoors", Place::Outdoors), ("indoors", Place::Indoors)];
const METHODS: [(&str, DustMethod); 3] = [
    ("water", DustMethod::Water),
    ("shroud", DustMethod::Shroud),
    ("none", DustMethod::None),
];
const RESPIRATORS: [(&str, Respirator); 9] = [
    ("none", Respirator::None),
    ("ffp2", Respirator::Ffp2),
    ("ffp3", Respirator::Ffp3),
    ("n95", Respirator::N95),
    ("p100", Respirator::P100),
    ("half-mask-p3", Respirator::HalfMaskP3),
    ("full-face", Respirator::FullFace),
    ("powered-hood", Respirator::PoweredHood),
    ("powered-mask", Respirator::PoweredMask),
];

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
