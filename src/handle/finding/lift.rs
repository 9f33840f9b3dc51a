//! Findings about lifting and carrying.

use super::words::{Words, finding};
use super::{LIFT_SOURCE, VACUUM_FACTOR};
use crate::diag::{Finding, Findings};
use crate::handle::guideline::{CARRY_MM, L23_CARRY, LARGEST_TEAM, LEVEL_PUSH};
use crate::handle::lift::{Lift, OFF_EDGE_MM, PeopleNeeded, Stand, Verdict};
use crate::handle::stand::CLEAR_OF_CUTOUT_MM;
use crate::handle::{Load, Piece};
use crate::job::{Aid, Job};
use crate::units::{GRAVITY, Mass};

pub(super) fn hand_lift(piece: &Piece, aid: Aid, words: Words, found: &mut Findings) {
    let lift = &piece.lift;
    match lift.verdict {
        Verdict::NotAHandLift { team_limit } => {
            let finding = not_a_hand_lift(piece, team_limit, words);
            match aid {
                Aid::None => found.stops.push(finding),
                Aid::Trolley | Aid::VacuumLifter | Aid::Gantry => found.cautions.push(finding),
            }
        }
        Verdict::Over {
            lifter,
            carried,
            limit,
        } => found
            .cautions
            .push(over(piece, lifter, carried, limit, words)),
        Verdict::Tips { off_balance_mm } => found.stops.push(tips(piece, off_balance_mm, words)),
        Verdict::TooManyHands { .. } | Verdict::Within { .. } => {}
    }
    if lift.lifters.len() > LARGEST_TEAM {
        found.cautions.push(finding(
            "more-than-four",
            format!(
                "{}: {} people do not lift as one",
                piece.name,
                lift.lifters.len()
            ),
            format!(
                "More than {LARGEST_TEAM} people are unlikely to work as a team, and no share of \
                 their strength is published to count on. Use an aid, or fewer people and a \
                 lighter piece."
            ),
            LIFT_SOURCE,
        ));
    }
}

fn not_a_hand_lift(piece: &Piece, team_limit: Mass, words: Words) -> Finding {
    let mass = piece.lift.mass;
    let push = Mass::from_kg(mass.kg() * LEVEL_PUSH);
    finding(
        "not-a-hand-lift",
        format!("{}: {} is not a hand lift", piece.name, words.mass(mass)),
        format!(
            "A team of {LARGEST_TEAM} may count on {}. What is: a trolley that carries it on edge, \
             rated for {} or more, level ground only (push at least {}); a vacuum lifter rated for \
             {} or more on a dry, clean, unbroken face; a gantry or hoist with slings, rated for \
             {} or more and set up by somebody competent with lifting gear. Tilting it up on edge \
             still takes {} at the far side at the start.",
            words.mass(team_limit),
            words.mass(mass),
            words.mass(push),
            words.mass(Mass::from_kg(mass.kg() * VACUUM_FACTOR)),
            words.mass(mass),
            words.mass(heavier_tilt(piece)),
        ),
        &format!("{LIFT_SOURCE}; vacuum factor: common practice"),
    )
}

fn heavier_tilt(piece: &Piece) -> Mass {
    let [a, b] = piece.tilts;
    Mass::from_kg(a.lifted.kg().max(b.lifted.kg()))
}

fn over(piece: &Piece, lifter: usize, carried: Mass, limit: Mass, words: Words) -> Finding {
    let needed = match piece.lift.people_needed {
        PeopleNeeded::AtLeast(n) if n > piece.lift.lifters.len() => {
            format!("By the sum of strengths at least {n} people.")
        }
        PeopleNeeded::AtLeast(_) => {
            "The weaker one must stand where the share is smaller.".to_owned()
        }
        PeopleNeeded::MoreThanATeam => "No team of people will do.".to_owned(),
    };
    finding(
        "lifter-over-guideline",
        format!("{}: lifter {lifter} carries too much", piece.name),
        format!(
            "Lifter {lifter} carries {} of {}; the guideline in this team is {}. {needed} Move the \
             places, add people or use an aid.",
            words.mass(carried),
            words.mass(piece.lift.mass),
            words.mass(limit),
        ),
        LIFT_SOURCE,
    )
}

fn tips(piece: &Piece, off_balance_mm: f64, words: Words) -> Finding {
    finding(
        "tips-out-of-hands",
        format!("{}: it tips with people in these places", piece.name),
        format!(
            "The balance point lies {} beside what the places can hold. Put people on both sides \
             of it.",
            words.length(off_balance_mm)
        ),
        "statics of a rigid plate",
    )
}

pub(super) fn off_the_edge(top: &Load, lift: &Lift, words: Words) -> Option<Finding> {
    let stray = lift
        .lifters
        .iter()
        .filter(|l| l.stand == Stand::Given)
        .map(|l| (l.number, top.region.outer.distance(l.point)))
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .filter(|(_, away)| *away > OFF_EDGE_MM)?;
    Some(finding(
        "lifter-off-the-edge",
        format!("{}: lifter {} has no edge to hold", top.name, stray.0),
        format!(
            "The place given lies {} from the edge, more than {}. Give places on the edge, in the \
             top's own frame.",
            words.length(stray.1),
            words.length(OFF_EDGE_MM)
        ),
        "judgement",
    ))
}

pub(super) fn shadow(piece: &Piece, words: Words) -> Finding {
    let weight_kn = piece.mass.high.kg() * GRAVITY / 1000.0;
    finding(
        "crush-and-falls",
        format!("{}: it crushes what it falls on", piece.name),
        format!(
            "{} presses with {weight_kn:.2} kN. On edge it falls over a strip {} wide on either \
             side: nobody stands there, and nobody tries to catch it. Tie standing slabs back \
             before letting go, one at a time; lean them the same way on a rack or wall that \
             holds. Hands, feet and children out of the gap.",
            words.mass(piece.mass.high),
            words.length(piece.width_mm),
        ),
        "common practice; width computed",
    )
}

/// Hands given nearer to a cutout than a hand's width.
pub(super) fn at_cutout(top: &Load, lift: &Lift, words: Words) -> Option<Finding> {
    let away = |at| {
        let holes = top.region.holes.iter().map(|h| h.distance(at));
        holes.fold(f64::INFINITY, f64::min)
    };
    let near = lift
        .lifters
        .iter()
        .map(|l| (l.number, away(l.point)))
        .min_by(|a, b| a.1.total_cmp(&b.1))
        .filter(|(_, away)| *away < CLEAR_OF_CUTOUT_MM)?;
    Some(finding(
        "lifter-at-cutout",
        format!("{}: lifter {} lifts beside a cutout", top.name, near.0),
        format!(
            "The place lies {} from a cutout, less than a hand's width, {}. Lift where the stone is \
             whole, never by a rail.",
            words.length(near.1),
            words.length(CLEAR_OF_CUTOUT_MM)
        ),
        "judgement",
    ))
}

/// A carry longer than the guideline weights are for.
pub(super) fn far(job: &Job, words: Words) -> Option<Finding> {
    let carry = job.lift.carry_mm;
    (carry > CARRY_MM).then(|| {
        finding(
            "carry-too-far",
            format!("{} is too far to carry without a rest", words.way(carry)),
            format!(
                "The guideline weights are for carries up to {} against the body. Set the stone \
                 down on edge on two battens on the way, or wheel it on a trolley.",
                words.way(CARRY_MM)
            ),
            &L23_CARRY.cite(),
        )
    })
}
