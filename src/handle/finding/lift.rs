//! Findings about lifting and carrying.

use super::{LIFT_SOURCE, VACUUM_FACTOR};
use crate::diag::{Finding, Findings, Phrase};
use crate::handle::guideline::{CARRY_MM, L23_CARRY, LARGEST_TEAM, LEVEL_PUSH};
use crate::handle::lift::{Lift, OFF_EDGE_MM, PeopleNeeded, Stand, Verdict};
use crate::handle::stand::CLEAR_OF_CUTOUT_MM;
use crate::handle::words::Words;
use crate::handle::{Load, Piece};
use crate::job::{Aid, Job};
use crate::units::Mass;

pub(crate) const NOT_A_HAND_LIFT: Phrase = Phrase {
    id: "not-a-hand-lift",
    title: "{stone}: {mass} is not a hand lift",
    detail: "A team of {people} may count on {team}. Use instead: a trolley that carries it on edge, \
             rated for {rated} or more, level ground only (push at least {push}); a vacuum lifter rated \
             for {vacuum} or more on a dry, clean, unbroken face; a gantry or hoist with slings, rated \
             for {rated} or more and set up by somebody competent with lifting gear. Tilting it up on \
             edge still takes {tilt} at the far side at the start.",
};
pub(crate) const MORE_THAN_FOUR: Phrase = Phrase {
    id: "more-than-four",
    title: "{stone}: too many people to lift as one: {people}",
    detail: "More than {most} people are unlikely to work as a team, and no share of their strength is \
             published to count on. Use an aid, or fewer people and a lighter piece.",
};
pub(crate) const OVER: Phrase = Phrase {
    id: "lifter-over-guideline",
    title: "{stone}: lifter {lifter} carries too much",
    detail: "Lifter {lifter} carries {carried} of {mass}; the guideline in this team is {limit}. {needed} \
             Move the places, add people or use an aid.",
};
pub(crate) const OVER_TOO_FEW: Phrase = Phrase {
    id: "lifter-over-guideline-too-few",
    title: "{stone}: lifter {lifter} carries too much",
    detail: "Lifter {lifter} carries {carried} of {mass}; the guideline in this team is {limit}. People \
             needed by the sum of strengths, at least: {people}. Move the places, add people or use an aid.",
};
pub(crate) const TIPS: Phrase = Phrase {
    id: "tips-out-of-hands",
    title: "{stone}: it tips with people in these places",
    detail: "The balance point lies {off} beside what the places can hold. Put people on both sides of it.",
};
pub(crate) const OFF_THE_EDGE: Phrase = Phrase {
    id: "lifter-off-the-edge",
    title: "{stone}: lifter {lifter} has no edge to hold",
    detail: "The place given lies {away} from the edge, more than {most}. Give places on the edge, in the \
             top's own frame.",
};
pub(crate) const AT_CUTOUT: Phrase = Phrase {
    id: "lifter-at-cutout",
    title: "{stone}: lifter {lifter} lifts beside a cutout",
    detail: "The place lies {away} from a cutout, less than a hand's width, {least}. Lift where the stone \
             is whole, never by a rail.",
};
pub(crate) const TOO_FAR: Phrase = Phrase {
    id: "carry-too-far",
    title: "{way} is too far to carry without a rest",
    detail: "The guideline weights are for carries up to {most} against the body. Set the stone down on \
             edge on two battens on the way, or wheel it on a trolley.",
};

/// Said where more people would not help by their number alone.
const WEAKER_ONE: &str = "The weaker one must stand where the share is smaller.";
const NO_TEAM: &str = "No team of people will do.";

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
    let people = lift.lifters.len();
    if people > LARGEST_TEAM {
        let values = [
            ("stone", piece.name.clone()),
            ("people", people.to_string()),
            ("most", LARGEST_TEAM.to_string()),
        ];
        let finding = Finding::of(&MORE_THAN_FOUR, &values, LIFT_SOURCE);
        found.cautions.push(finding);
    }
}

fn not_a_hand_lift(piece: &Piece, team_limit: Mass, words: Words) -> Finding {
    let mass = piece.lift.mass;
    let times = |factor: f64| words.mass_at_least(Mass::from_kg(mass.kg() * factor));
    let [a, b] = piece.tilts.map(|t| t.lifted.kg());
    let values = [
        ("stone", piece.name.clone()),
        ("mass", words.mass(mass)),
        ("people", LARGEST_TEAM.to_string()),
        ("team", words.mass_at_most(team_limit)),
        ("rated", times(1.0)),
        ("push", times(LEVEL_PUSH)),
        ("vacuum", times(VACUUM_FACTOR)),
        ("tilt", words.mass_at_least(Mass::from_kg(a.max(b)))),
    ];
    let source = format!("{LIFT_SOURCE}; vacuum factor: common practice");
    Finding::of(&NOT_A_HAND_LIFT, &values, source)
}

fn over(piece: &Piece, lifter: usize, carried: Mass, limit: Mass, words: Words) -> Finding {
    let mut values = vec![
        ("stone", piece.name.clone()),
        ("lifter", lifter.to_string()),
        ("carried", words.mass(carried)),
        ("mass", words.mass(piece.lift.mass)),
        ("limit", words.mass(limit)),
    ];
    let (phrase, more) = match piece.lift.people_needed {
        PeopleNeeded::AtLeast(n) if n > piece.lift.lifters.len() => {
            (&OVER_TOO_FEW, ("people", n.to_string()))
        }
        PeopleNeeded::AtLeast(_) => (&OVER, ("needed", WEAKER_ONE.to_owned())),
        PeopleNeeded::MoreThanATeam => (&OVER, ("needed", NO_TEAM.to_owned())),
    };
    values.push(more);
    Finding::of(phrase, &values, LIFT_SOURCE)
}

fn tips(piece: &Piece, off_balance_mm: f64, words: Words) -> Finding {
    let values = [
        ("stone", piece.name.clone()),
        ("off", words.length(off_balance_mm)),
    ];
    Finding::of(&TIPS, &values, "statics of a rigid plate")
}

pub(super) fn off_the_edge(top: &Load, lift: &Lift, words: Words) -> Option<Finding> {
    let (lifter, away) = lift
        .lifters
        .iter()
        .filter(|l| l.stand == Stand::Given)
        .map(|l| (l.number, top.region.outer.distance(l.point)))
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .filter(|(_, away)| *away > OFF_EDGE_MM)?;
    let values = [
        ("stone", top.name.clone()),
        ("lifter", lifter.to_string()),
        ("away", words.length(away)),
        ("most", words.length(OFF_EDGE_MM)),
    ];
    Some(Finding::of(&OFF_THE_EDGE, &values, "judgement"))
}

/// Hands given nearer to a cutout than a hand's width.
pub(super) fn at_cutout(top: &Load, lift: &Lift, words: Words) -> Option<Finding> {
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
        ("stone", top.name.clone()),
        ("lifter", lifter.to_string()),
        ("away", words.length(away)),
        ("least", words.length(CLEAR_OF_CUTOUT_MM)),
    ];
    Some(Finding::of(&AT_CUTOUT, &values, "judgement"))
}

/// A carry longer than the guideline weights are for.
pub(super) fn far(job: &Job, words: Words) -> Option<Finding> {
    let carry = job.lift.carry_mm;
    let values = [("way", words.way(carry)), ("most", words.way(CARRY_MM))];
    (carry > CARRY_MM).then(|| Finding::of(&TOO_FAR, &values, L23_CARRY.cite()))
}
