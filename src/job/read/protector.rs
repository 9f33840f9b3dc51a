//! `[protector]`: the hearing protector, by what is printed on it: `snr`, or `h`, `m`, `l`, or `nrr`.

use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::{EarKind, Protector};

/// Reads the hearing protector.
pub(super) fn read(r: &mut Reader<'_>) -> Protector {
    let snr = r.get("snr");
    let hml = ["h", "m", "l"].map(|key| r.get(key));
    let nrr = r.get("nrr");
    let kind = kind(r, nrr.is_some());
    let first_of_hml = hml.iter().flatten().next();
    let mut ways = [snr.as_ref(), first_of_hml, nrr.as_ref()]
        .into_iter()
        .flatten();
    let (first, second) = (ways.next(), ways.next());
    let read = match (first, second) {
        (None, _) => {
            let why = "no rating of the hearing protector was told";
            r.ledger.assume("protector", "not known", why);
            None
        }
        (Some(_), Some(second)) => second.fault(
            "is a second rating of the protector",
            "give one: snr, or h with m and l, or nrr",
        ),
        (Some(given), None) if snr.is_some() => rating(given).map(Protector::Snr),
        (Some(given), None) if nrr.is_some() => {
            rating(given).map(|nrr| Protector::Nrr { nrr, kind })
        }
        (Some(given), None) => three(given, &hml),
    };
    read.unwrap_or(Protector::Unknown)
}

fn rating(given: &Given<'_>) -> Option<f64> {
    given.quantity()
}

/// H, M and L, which are printed together.
fn three(first: &Given<'_>, hml: &[Option<Given<'_>>; 3]) -> Option<Protector> {
    let [h, m, l] = hml.each_ref().map(|one| one.as_ref().map(rating));
    let (Some(h), Some(m), Some(l)) = (h, m, l) else {
        return first.fault(
            "stands alone",
            "give h, m and l, which are printed together",
        );
    };
    Some(Protector::Hml {
        h: h?,
        m: m?,
        l: l?,
    })
}

/// What it is; only an American rating is derated by it.
fn kind(r: &mut Reader<'_>, counts: bool) -> EarKind {
    const WORST: EarKind = EarKind::OtherPlugs;
    if counts {
        return r.word("kind", WORST);
    }
    let given = r.get("kind");
    given.and_then(|kind| kind.word()).unwrap_or(WORST)
}
