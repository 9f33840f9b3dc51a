//! What is said of the slab's tapes: faults, what would mend them, and remarks.

use super::slab_taped::{Corner, Read};
use crate::job::Naming;
use crate::job::Survey;
use crate::job::given::Given;
use crate::job::ledger::{Ledger, TextRange};
use crate::job::reader::Reader;
use crate::job::shape::corner_name;
use crate::job::survey::quadrilateral::{NoTriangle, Refusal, Tape};
use crate::job::survey::ties::{Mark, NoMeeting};
use crate::job::survey::{Blunder, Misclosure, OutOfSquare, TapeCheck};
use crate::job::words::{listed, short};
use crate::units::LengthUnit;

/// A computed length: a tenth of a millimetre or a hundredth of an inch is all that a tape can use.
fn length(ledger: &Ledger, mm: f64) -> String {
    let step = match ledger.length_unit() {
        LengthUnit::Millimetre => 0.1,
        LengthUnit::Inch => LengthUnit::Inch.in_mm() / 100.0,
    };
    ledger.length((mm / step).round() * step)
}

/// What tapes good to `tape_error` explain.
fn explains(ledger: &Ledger, tape_error: f64, explained: f64) -> String {
    format!(
        "tapes good to ±{} explain {} (judgement)",
        ledger.length(tape_error),
        length(ledger, explained)
    )
}

/// The reading, what the others say, and how far they are apart.
fn apart(ledger: &Ledger, found: &Misclosure, others: &str) -> String {
    format!(
        "{} is {}, but {} by {others}, {} apart",
        found.check,
        ledger.length(found.taped),
        length(ledger, found.computed),
        length(ledger, found.by().abs())
    )
}

/// Six tapes that close.
pub(super) fn six_tapes_close(r: &Reader<'_>, read: &Read, found: &Misclosure, tape_error: f64) {
    let ledger = r.ledger;
    let (key, span) = read.diagonals();
    let changed = found.tapes.iter().map(|t| (t.adjusted - t.taped).abs());
    let message = format!(
        "{key}: the six tapes close: {}; {}. The corners are the best fit to all six: no tape is changed \
         by more than {}",
        apart(ledger, found, "the other five").replace(", but", " and"),
        explains(ledger, tape_error, found.explained),
        length(ledger, changed.fold(0.0, f64::max))
    );
    ledger.remark(key, span, message, which_is_which(read, found, tape_error));
}

/// Near a parallelogram the two diagonals may be changed over and still close: the slab then leans the
/// other way.
fn which_is_which(read: &Read, found: &Misclosure, tape_error: f64) -> &'static str {
    let [Some(ac), Some(bd)] = read.tapes.diagonals else {
        return "";
    };
    let changed = read.tapes.exchanged(Tape::Ac, Tape::Bd);
    let by = changed.and_then(|changed| Some(ac - changed.without(Tape::Bd)?));
    let closes = by.is_some_and(|by| by.abs() <= found.explained);
    if closes && (ac - bd).abs() > tape_error {
        "make sure which diagonal is which: changed over they close as well, and the slab leans the other way"
    } else {
        ""
    }
}

/// Six tapes that do not close: which it could be, and by how much.
pub(super) fn six_tapes_apart(r: &Reader<'_>, read: &Read, found: &Misclosure, tape_error: f64) {
    let ledger = r.ledger;
    let exchanged = read.tapes.exchanges(found);
    let suspects = found.suspects();
    let named = suspects.first().map(|suspect| suspect.name.as_str());
    let suspect = match exchanged.first() {
        _ if exchanged.contains(&[Tape::Ac, Tape::Bd]) => None,
        Some([one, _]) => Some(*one),
        None => Tape::ALL
            .into_iter()
            .find(|tape| Some(tape.name()) == named),
    };
    let (key, span) = suspect.map_or_else(|| read.diagonals(), |tape| read.place(tape));
    let message = format!(
        "{key}: the six tapes of the slab do not close: {}; {}",
        apart(ledger, found, "the other five"),
        explains(ledger, tape_error, found.explained)
    );
    let mut hint = mistakes(ledger, found);
    let pairs: Vec<String> = exchanged
        .iter()
        .map(|[one, other]| format!("{} and {}", one.name(), other.name()))
        .collect();
    if !pairs.is_empty() {
        let pairs = pairs.join(", or ");
        hint = format!(
            "two readings may be changed over, {pairs}: that would close it. Otherwise {hint}"
        );
    }
    ledger.fault(key, span, message, hint);
}

/// Which tapes a mistake could be in: those of which a usual slip closes the figure, then the others.
fn mistakes(ledger: &Ledger, found: &Misclosure) -> String {
    let slips = found.suspects();
    let slips: Vec<String> = slips
        .into_iter()
        .filter_map(|tape| slip(ledger, tape))
        .collect();
    let rest = found.tapes.iter().filter(|tape| tape.blunder.is_none());
    let rest: Vec<String> = rest
        .filter_map(|tape| Some(format!("{} {}", tape.name, length(ledger, tape.alone?))))
        .collect();
    let rest = rest.join(", or ");
    if slips.is_empty() {
        return format!(
            "measure again. The tapes cannot tell which of them is wrong; if it is a single one, it should \
             read: {rest}"
        );
    }
    let mut words = format!(
        "measure these again first: {}; a slip of that kind in one of them would close it",
        slips.join(", ")
    );
    if !rest.is_empty() {
        words = format!("{words}. If another tape is the wrong one, it should read: {rest}");
    }
    words
}

fn slip(ledger: &Ledger, tape: &TapeCheck) -> Option<String> {
    let (slip, meant) = tape.blunder?;
    let how = match slip {
        Blunder::RoundNumber => {
            let (by, way) = (
                meant - tape.taped,
                if meant < tape.taped { "less" } else { "more" },
            );
            format!("{} {way}", ledger.length(by.abs()))
        }
        Blunder::SwappedDigits => "two digits changed over".to_owned(),
    };
    Some(format!("{} ({}, {how})", tape.name, ledger.length(meant)))
}

/// One diagonal only.
pub(super) fn nothing_checks(r: &Reader<'_>, read: &Read) {
    let open = Tape::ALL
        .into_iter()
        .find(|tape| read.tapes.taped(*tape).is_none());
    let Some((tape, mm)) = open.and_then(|tape| Some((tape, read.tapes.without(tape)?))) else {
        return;
    };
    let (key, span) = read.diagonals();
    let message = format!("{key}: one diagonal fixes the slab and checks nothing");
    let hint = format!(
        "tape {} as well: it should come to {}",
        tape.name(),
        length(r.ledger, mm)
    );
    r.ledger.remark(key, span, message, hint);
}

/// Tapes that no slab can have.
pub(super) fn refusal(r: &Reader<'_>, read: &Read, said: &(String, TextRange), refusal: &Refusal) {
    let (key, span) = read.place_of(refusal, said);
    let (message, hint) = match refusal {
        Refusal::NoDiagonal => (
            "no diagonal is given".to_owned(),
            "give one diagonal, or better both".to_owned(),
        ),
        Refusal::NoTriangle(open) => no_triangle(r.ledger, read, open),
        Refusal::InsideCorner { corner, angle } => (
            format!(
                "the tapes make an inside corner of {}, {}°; sides and diagonals are for a slab whose four \
                 corners all point outwards",
                corner_name(Naming::Letters, *corner),
                short((angle * 10.0).round() / 10.0)
            ),
            "check the tapes, and that the sides are in order, AB, BC, CD, DA; a slab that has an inside \
             corner is given by `corners`, or by `base_line` and `ties`"
                .to_owned(),
        ),
        Refusal::Crossing => (
            "the tapes fit only a figure whose sides cross".to_owned(),
            "give the sides in order round the slab, AB, BC, CD, DA, and check which diagonal is which: AC \
             runs from the first corner to the third"
                .to_owned(),
        ),
    };
    r.ledger
        .fault(&key, span, format!("{key}: {message}"), hint);
}

fn no_triangle(ledger: &Ledger, read: &Read, open: &NoTriangle) -> (String, String) {
    let taped = |tape: Tape| read.tapes.taped(tape).unwrap_or(0.0);
    let [one, other] = open.short;
    let message = format!(
        "{} = {} is longer than {} + {} = {}: the three do not close a triangle",
        open.long.name(),
        ledger.length(taped(open.long)),
        one.name(),
        other.name(),
        ledger.length(taped(one) + taped(other))
    );
    let limits = |(tape, [least, most]): &(Tape, [f64; 2])| {
        format!(
            "{} is at least {} and at most {}",
            tape.name(),
            ledger.length(*least),
            ledger.length(*most)
        )
    };
    let limits: Vec<String> = open.could_be.iter().map(limits).collect();
    let hint = match &limits[..] {
        [] => "more than one tape is wrong; measure all of them again".to_owned(),
        [one] => format!("measure again: by the other tapes {one}"),
        more => format!(
            "one of them is wrong; measure again: {}",
            more.join(", or ")
        ),
    };
    (message, hint)
}

/// The check of one corner's ties.
pub(super) fn tie(r: &Reader<'_>, corner: &Corner<'_>, found: &Misclosure, tape_error: f64) {
    let ledger = r.ledger;
    let others = match corner.tie.mark() {
        Some(_) => "the base line",
        None => "the two others",
    };
    let apart = apart(ledger, found, others).replacen(" is ", ": ", 1);
    let explains = explains(ledger, tape_error, found.explained);
    let key = &corner.given.key;
    if found.is_explained() {
        if found.by().abs() > 0.05 {
            let message = format!(
                "{key}: the tapes to corner {} agree: {}; {explains}",
                corner.name,
                apart.replace(", but", " and")
            );
            ledger.remark(key, corner.given.span, message, "");
        }
        return;
    }
    let index = found.suspects().first().and_then(|suspect| {
        Mark::ALL
            .iter()
            .position(|mark| mark.name() == suspect.name)
    });
    let given = index
        .and_then(|i| corner.tapes.get(i))
        .unwrap_or(&corner.given);
    let message = format!(
        "{}: the tapes to corner {} do not agree: {apart}; {explains}",
        given.key, corner.name
    );
    ledger.fault(&given.key, given.span, message, mistakes(ledger, found));
}

/// Two tapes that do not meet.
pub(super) fn no_meeting(r: &Reader<'_>, corner: &Corner<'_>, base: f64, missed: &NoMeeting) {
    let ledger = r.ledger;
    let (left, right) = (corner.tie.left, corner.tie.right);
    let message = format!(
        "{}: {} from the left mark and {} from the right mark do not meet: the marks are {} apart",
        corner.given.key,
        ledger.length(left),
        ledger.length(right),
        ledger.length(base)
    );
    let between = |[least, most]: [f64; 2]| {
        format!(
            "at least {} and at most {}",
            ledger.length(least),
            ledger.length(most)
        )
    };
    let hint = format!(
        "measure corner {} again: by the second tape the first is {}, by the first the second is {}; or the \
         base line is {}",
        corner.name,
        between(missed.left),
        between(missed.right),
        between([(left - right).abs(), left + right])
    );
    ledger.fault(&corner.given.key, corner.given.span, message, hint);
}

/// A corner whose two tapes run nearly in line.
pub(super) fn badly_fixed(r: &Reader<'_>, corner: &Corner<'_>, moved: f64, tape_error: f64) {
    let ledger = r.ledger;
    let key = &corner.given.key;
    let error = length(ledger, tape_error);
    let message = if moved.is_finite() {
        format!(
            "{key}: the two tapes to corner {} cross at a slant: errors of {error} move it by {}",
            corner.name,
            length(ledger, moved)
        )
    } else {
        format!(
            "{key}: corner {} lies in line with the two marks: how far off the line it is, its tapes \
             cannot tell",
            corner.name
        )
    };
    let hint =
        "choose a mark at the corner itself, or a base line that the corner is not in line with";
    ledger.remark(key, corner.given.span, message, hint);
}

/// Ties without a third tape.
pub(super) fn unchecked_ties(r: &Reader<'_>, ties: &Given<'_>, corners: &[Corner<'_>], base: f64) {
    let open = corners
        .iter()
        .filter(|c| c.tie.mark().is_none() && c.tie.middle.is_none());
    let middles: Vec<String> = open
        .filter_map(|c| {
            let mm = c.tie.without(Mark::Middle, base)?;
            Some(format!("{} {}", c.name, length(r.ledger, mm)))
        })
        .collect();
    if middles.is_empty() || r.ledger.has_fault_at(&ties.key) {
        return;
    }
    let message = format!("{}: two tapes fix a corner and check nothing", ties.key);
    let hint = format!(
        "tape from the middle of the base line as well, and write it as the third number of the tie; it \
         should come to: {}",
        middles.join(", ")
    );
    r.ledger.remark(&ties.key, ties.span, message, hint);
}

/// Corners that are out of square, and diagonals that differ.
pub(super) fn out_of_square(r: &Reader<'_>, survey: &Survey, tape_error: f64) {
    let ledger = r.ledger;
    if survey.out_of_square.is_empty() || ledger.has_fault_at("slab") {
        return;
    }
    let corner = |c: &OutOfSquare| {
        format!(
            "corner {} {} over the {} of {} ({}°)",
            c.corner,
            length(ledger, c.out.abs()),
            length(ledger, c.over),
            c.edge,
            short((c.angle * 10.0).round() / 10.0)
        )
    };
    let corners: Vec<String> = survey.out_of_square.iter().map(corner).collect();
    let mut message = format!("the slab is out of square: {}", listed(&corners));
    if let Some([ac, bd]) = survey.diagonals
        && (ac - bd).abs() > tape_error
    {
        let by = length(ledger, (ac - bd).abs());
        message = format!("{message}; its diagonals differ by {by}");
    }
    let hint = "do not set out with a square from its edges; the sheet's tapes allow for it";
    ledger.remark("slab", r.span(), message, hint);
}
