//! `slab.sides` and `slab.diagonals`: four sides and one or both diagonals.

use super::slab_taped::{Read, Taped, can_compare};
use super::slab_words as words;
use crate::job::given::Given;
use crate::job::ledger::TextRange;
use crate::job::reader::Reader;
use crate::job::survey::quadrilateral::Quadrilateral;
use crate::job::survey::{How, Misclosure};

/// Reads the tapes and works out the corners; nothing when one is at fault.
pub(super) fn read(
    r: &Reader<'_>,
    sides: Option<Given<'_>>,
    diagonals: Option<Given<'_>>,
    tape_error: f64,
) -> Option<Taped> {
    if sides.is_none() {
        r.missing("sides");
    }
    if diagonals.is_none() {
        r.missing("diagonals");
    }
    let lengths = sides.as_ref().and_then(read_sides);
    let tied = diagonals.as_ref().map(read_diagonals);
    let (sides, diagonals, lengths, tied) = (sides?, diagonals?, lengths?, tied??);
    if !can_compare(&sides) {
        return None;
    }
    let place = |given: &Given<'_>| (given.key.clone(), given.span);
    let mut places = [const { None }; 6];
    for (open, (_, side)) in places.iter_mut().zip(&lengths) {
        *open = Some(place(side));
    }
    for (open, diagonal) in places.iter_mut().skip(4).zip(&tied) {
        *open = diagonal.as_ref().map(|(_, given)| place(given));
    }
    let read = Read {
        tapes: Quadrilateral {
            sides: lengths.map(|(mm, _)| mm),
            diagonals: tied.map(|diagonal| diagonal.map(|(mm, _)| mm)),
        },
        places,
        diagonals: place(&diagonals),
    };
    work_out(r, &read, place(&sides), tape_error)
}

fn read_sides<'a>(given: &Given<'a>) -> Option<[(f64, Given<'a>); 4]> {
    if let Some(count) = given.count().filter(|count| *count != 4) {
        let message = format!("has {count} entries, it needs 4: AB, BC, CD, DA");
        return given.fault(
            &message,
            "a slab with other than four corners is given by `corners`, or by `base_line` and `ties`",
        );
    }
    let read = |side: Given<'a>| side.length().map(|mm| (mm, side));
    let sides: Vec<_> = given.list()?.into_iter().map(read).collect();
    let sides: Option<Vec<_>> = sides.into_iter().collect();
    sides?.try_into().ok()
}

type Diagonals<'a> = [Option<(f64, Given<'a>)>; 2];

/// AC and BD, by either name; nothing when one is at fault.
fn read_diagonals<'a>(given: &Given<'a>) -> Option<Diagonals<'a>> {
    let (mut found, mut clean): (Diagonals<'a>, bool) = ([None, None], true);
    for (name, span, value) in given.entries()? {
        let length = value.length();
        let index = match name {
            "AC" | "CA" => Some(0),
            "BD" | "DB" => Some(1),
            _ => None,
        };
        match (index.and_then(|i| found.get_mut(i)), length) {
            (None, _) => {
                let message = format!("{}: there is no diagonal {name}", value.key);
                let hint = "the diagonals are AC, from the first corner to the third, and BD";
                given.ledger.fault(&value.key, span, message, hint);
                clean = false;
            }
            (Some(Some(_)), _) => {
                value.fault::<()>("gives a diagonal a second time", "keep one of the two");
                clean = false;
            }
            (Some(open), Some(mm)) => *open = Some((mm, value)),
            (Some(_), None) => clean = false,
        }
    }
    if clean && found.iter().all(Option::is_none) {
        return given.fault(
            "is empty",
            "give one diagonal, or better both, as { AC = …, BD = … }",
        );
    }
    clean.then_some(found)
}

/// The corners, every fault and every remark.
fn work_out(
    r: &Reader<'_>,
    read: &Read,
    said: (String, TextRange),
    tape_error: f64,
) -> Option<Taped> {
    let unit = r.ledger.length_unit();
    let corners = read.tapes.corners();
    let misclosure = read.tapes.misclosure(tape_error, unit);
    if let Some(found) = misclosure.as_ref().filter(|m| !m.is_explained()) {
        match read.tapes.other_figure(tape_error) {
            Some(refusal) => words::refusal(r, read, &said, &refusal),
            None => words::six_tapes_apart(r, read, found, tape_error),
        }
    } else if let Err(refusals) = &corners {
        for refusal in refusals {
            words::refusal(r, read, &said, refusal);
        }
    } else if let Some(found) = &misclosure {
        words::six_tapes_close(r, read, found, tape_error);
    } else {
        words::nothing_checks(r, read);
    }
    let how = match misclosure {
        Some(_) => How::SidesAndDiagonals,
        None => How::SidesAndDiagonal,
    };
    Some(Taped {
        how,
        corners: corners.ok()?.to_vec(),
        misclosures: misclosure.into_iter().collect::<Vec<Misclosure>>(),
        said,
    })
}
