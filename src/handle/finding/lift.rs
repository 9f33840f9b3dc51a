//! Findings about lifting and carrying.

use crate::diag::{Finding, Findings, Harm, Phrase};
use crate::handle::handling::Handling;
use crate::handle::lifting::guideline::{CARRY_MM, LARGEST_TEAM, LEVEL_PUSH};
use crate::handle::lifting::lift::{MOST_TIMES, OFF_EDGE_MM};
use crate::handle::lifting::record::{Effort, Lift, Stand, Verdict};
use crate::handle::lifting::stand::CLEAR_OF_CUTOUT_MM;
use crate::handle::loads::Load;
use crate::handle::piece::HandledPiece;
use crate::job::{Aid, Job};
use crate::tables::documents as doc;
use crate::units::Mass;
use crate::words::{Arg, Value};

use super::sources::{LIFT_SOURCE, VACUUM_FACTOR};

pub(crate) const NOT_A_HAND_LIFT: Phrase = Phrase::of_job("not-a-hand-lift")
    .harm(Harm::Maims)
    .key("lift.aid");
pub(crate) const BREAKS_IN_HANDS: Phrase = Phrase::of_job("breaks-in-hands").key("lift.aid");
pub(crate) const MORE_THAN_FOUR: Phrase = Phrase::of_job("more-than-four")
    .harm(Harm::Lasting)
    .key("lift.people");
pub(crate) const OVER: Phrase = Phrase::of_job("lifter-over-guideline")
    .harm(Harm::Lasting)
    .key("lift.people");
pub(crate) const TILT: Phrase = Phrase::of_job("tilt-over-guideline").harm(Harm::Maims);
pub(crate) const TIPS: Phrase = Phrase::of_job("tips-out-of-hands")
    .harm(Harm::Maims)
    .key("lift.stand");
pub(crate) const OFF_THE_EDGE: Phrase = Phrase::of_job("lifter-off-the-edge").key("lift.stand");
pub(crate) const AT_CUTOUT: Phrase = Phrase::of_job("lifter-at-cutout").key("lift.stand");
pub(crate) const TOO_FAR: Phrase = Phrase::of_job("carry-too-far").harm(Harm::Lasting);

/// A stone that somebody lifts: its name, its mass, how that stands to the team's figure.
struct Lifted<'a> {
    name: &'a str,
    mass: Mass,
    effort: Effort,
}

/// Slab, top and waste that are more than the team's figure, in one finding: to be looked at up to about
/// twice, a stop beyond where no aid is named. Tilting up on edge is told with it, or by itself.
pub(super) fn by_hand(job: &Job, handling: &Handling, found: &mut Findings) {
    let pieces = [&handling.slab, &handling.top];
    for piece in pieces {
        if let Verdict::Tips { off_balance_mm } = piece.lift.verdict {
            found.stops.push(tips(piece, off_balance_mm));
        }
    }
    let stones = pieces.map(|p| Lifted {
        name: &p.name,
        mass: p.lift.mass,
        effort: p.lift.effort(),
    });
    let waste = handling.waste.iter().map(|w| Lifted {
        name: &w.name,
        mass: w.mass.high,
        effort: w.effort,
    });
    let mut heavy: Vec<Lifted<'_>> = stones
        .into_iter()
        .chain(waste)
        .filter(|s| s.effort != Effort::Within)
        .collect();
    // A single stone that is weighed stands for slab and top.
    heavy.dedup_by(|a, b| a.name == b.name);
    let worst = heavy.iter().map(|s| s.effort).max();
    match (worst.unwrap_or(Effort::Within), job.lift.aid) {
        (Effort::Within, _) | (_, Aid::Trolley | Aid::VacuumLifter | Aid::Gantry) => {
            found.open.extend(tilt(handling, job.lift.aid));
        }
        (Effort::Above, Aid::None) => found.open.push(over(&heavy, handling)),
        (Effort::Beyond, Aid::None) => found.stops.push(not_by_hand(&heavy, handling)),
    }
    let people = job.lift.people.max(job.lift.stand.len());
    if people > LARGEST_TEAM && job.lift.aid == Aid::None && worst != Some(Effort::Beyond) {
        let values = [
            ("people", Value::count(people)),
            ("most", Value::count(LARGEST_TEAM)),
        ];
        let finding = Finding::of(&MORE_THAN_FOUR, values, LIFT_SOURCE);
        found.open.push(finding);
    }
}

fn not_by_hand(heavy: &[Lifted<'_>], handling: &Handling) -> Finding {
    let breaks = [&handling.slab, &handling.top].map(|p| p.lift.verdict == Verdict::Breaks);
    let most = MOST_TIMES * handling.top.lift.team_limit.kg();
    let too_heavy = heavy.iter().any(|s| s.mass.kg() > most);
    let phrase = if breaks.contains(&true) && !too_heavy {
        &BREAKS_IN_HANDS
    } else {
        &NOT_A_HAND_LIFT
    };
    let most = heavy.iter().map(|s| s.mass.kg()).fold(0.0, f64::max);
    let times = |factor: f64| Value::mass(Mass::from_kg(most * factor)).up();
    let mut values = told(heavy, handling);
    values.extend([
        ("rated", times(1.0)),
        ("push", times(LEVEL_PUSH)),
        ("vacuum", times(VACUUM_FACTOR)),
    ]);
    let source = format!("{LIFT_SOURCE}; vacuum factor: common practice");
    Finding::of(phrase, values, source)
}

fn over(heavy: &[Lifted<'_>], handling: &Handling) -> Finding {
    Finding::of(&OVER, told(heavy, handling), LIFT_SOURCE)
}

/// The stones with their masses, the people, what they may count on, and what tilting takes.
fn told(heavy: &[Lifted<'_>], handling: &Handling) -> Vec<Arg> {
    let names = heavy.iter().map(|s| Value::term(s.name.to_owned()));
    let masses = heavy.iter().map(|s| of_mass(s.name, s.mass));
    let mut values = vec![
        ("stones", Value::List(names.collect())),
        ("masses", Value::List(masses.collect())),
    ];
    values.extend(team(handling));
    values
}

fn of_mass(stone: &str, mass: Mass) -> Value {
    let args = [
        ("stone", Value::term(stone.to_owned())),
        ("mass", Value::mass(mass).up()),
    ];
    Value::message("stone-of-mass", args)
}

/// The people, what they may count on, and what the heavier tilt takes.
fn team(handling: &Handling) -> [Arg; 3] {
    let tilt = hardest(handling).lift.tilting.lifted;
    [
        ("people", Value::count(handling.people)),
        ("team", Value::mass(handling.top.lift.team_limit).down()),
        ("tilt", Value::mass(tilt).up()),
    ]
}

/// Slab or top, whichever takes more to tilt up.
fn hardest(handling: &Handling) -> &HandledPiece {
    let (slab, top) = (&handling.slab, &handling.top);
    if slab.lift.tilting.lifted < top.lift.tilting.lifted {
        top
    } else {
        slab
    }
}

/// Tilting up on edge, by itself, where it takes more than the team's figure; beyond about twice that no hands
/// turn it. What hangs from a hoist or a vacuum lifter is tilted by it.
fn tilt(handling: &Handling, aid: Aid) -> Option<Finding> {
    if matches!(aid, Aid::VacuumLifter | Aid::Gantry) {
        return None;
    }
    let mut hard = vec![&handling.slab, &handling.top];
    // A single stone that is weighed stands for slab and top.
    hard.dedup_by(|a, b| a.name == b.name);
    hard.retain(|piece| piece.lift.tilting.effort != Effort::Within);
    let worst = hard.iter().map(|piece| piece.lift.tilting.effort).max()?;
    let takes = |piece: &&HandledPiece| of_mass(&piece.name, piece.lift.tilting.lifted);
    let mut values = vec![
        ("stones", Value::List(hard.iter().map(takes).collect())),
        ("hands", Value::count(usize::from(worst != Effort::Beyond))),
    ];
    values.extend(team(handling));
    Some(Finding::of(&TILT, values, LIFT_SOURCE))
}

fn tips(piece: &HandledPiece, off_balance_mm: f64) -> Finding {
    let values = [
        ("stone", Value::term(piece.name.clone())),
        ("off", Value::size(off_balance_mm)),
    ];
    Finding::of(&TIPS, values, "statics of a rigid plate")
}

pub(super) fn off_the_edge(top: &Load, lift: &Lift) -> Option<Finding> {
    let (lifter, away) = lift
        .lifters
        .iter()
        .filter(|l| l.stand == Stand::Given)
        .map(|l| (l.number, top.region.outer.distance(l.point)))
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .filter(|(_, away)| *away > OFF_EDGE_MM)?;
    let values = [
        ("stone", Value::term(top.name.clone())),
        ("lifter", Value::count(lifter)),
        ("away", Value::size(away)),
        ("most", Value::size(OFF_EDGE_MM)),
    ];
    Some(Finding::of(&OFF_THE_EDGE, values, "judgement"))
}

/// Hands given nearer to a cutout than a hand's width.
pub(super) fn at_cutout(top: &Load, lift: &Lift) -> Option<Finding> {
    let away = |at| {
        let holes = top.region.holes.iter().map(|h| h.distance(at));
        holes.fold(f64::INFINITY, f64::min)
    };
    let (lifter, away) = lift
        .lifters
        .iter()
        .map(|l| (l.number, away(l.point)))
        .min_by(|a, b| a.1.total_cmp(&b.1))
        .filter(|(_, away)| *away < CLEAR_OF_CUTOUT_MM)?;
    let values = [
        ("stone", Value::term(top.name.clone())),
        ("lifter", Value::count(lifter)),
        ("away", Value::size(away)),
        ("least", Value::size(CLEAR_OF_CUTOUT_MM)),
    ];
    Some(Finding::of(&AT_CUTOUT, values, "judgement"))
}

/// A carry longer than the guideline weights are for.
pub(super) fn far(job: &Job) -> Option<Finding> {
    let carry = job.lift.carry_mm;
    let values = [("way", Value::way(carry)), ("most", Value::way(CARRY_MM))];
    (carry > CARRY_MM).then(|| Finding::of(&TOO_FAR, values, doc::L23_CARRY.cite()))
}
