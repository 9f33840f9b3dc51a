//! What must be read before anybody lifts.

use super::bend::{BendVerdict, Bending};
use super::guideline::{LARGEST_TEAM, LEVEL_PUSH};
use super::lift::{Lift, OFF_EDGE_MM, PeopleNeeded, Stand, Verdict};
use super::support::{BearingVerdict, Setting, Standing};
use super::words::Words;
use super::{Handling, Load, Piece};
use crate::diag::{Finding, Findings};
use crate::job::{Aid, Job};
use crate::tables::{Source, Sure};
use crate::units::Mass;

/// A vacuum lifter is to be rated for this many times the mass.
const VACUUM_FACTOR: f64 = 2.0;

/// Where the vacuum lifter's factor comes from.
pub(super) const AID_SOURCE: Source = Source {
    what: "vacuum lifter rated for at least twice the mass, on a dry, clean, unbroken face",
    document: "common practice",
    clause: "",
    year: 0,
    sure: Sure::Practice,
};

const LIFT_SOURCE: &str = "HSE L23, paragraphs 119 and 120, 2016";
const BEND_SOURCE: &str = "beam theory, σ = 6M/(b·t²); handling factor 1.2, PCI Journal 2010";

/// All findings of the handling.
pub(super) fn findings(job: &Job, top: &Load, handling: &Handling) -> Findings {
    let mut found = Findings::default();
    let words = Words(job.units);
    for piece in [&handling.slab, &handling.top] {
        hand_lift(piece, job.lift.aid, words, &mut found);
        bending(piece, words, &mut found);
        found.cautions.push(on_edge(piece));
    }
    found
        .cautions
        .extend(off_the_edge(top, &handling.top.lift, words));
    if let Some(setting) = &handling.setting {
        set_down(setting, words, &mut found);
    }
    found.cautions.extend(flawed(job));
    found.cautions.push(not_a_limit(handling, words));
    found
}

fn finding(id: &'static str, title: String, detail: String, source: &str) -> Finding {
    Finding {
        id,
        title,
        detail,
        source: source.to_owned(),
    }
}

fn hand_lift(piece: &Piece, aid: Aid, words: Words, found: &mut Findings) {
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

fn bending(piece: &Piece, words: Words, found: &mut Findings) {
    let s = &piece.strength;
    if s.best.verdict.is_above() {
        found.cautions.push(finding(
            "bends-flat",
            format!("{}: must not lie flat on two supports", piece.name),
            format!(
                "{} Even on the best two supports. Keep it on edge, or bed it on a full flat board.",
                stress(&s.best, s.allowed_mpa, words)
            ),
            BEND_SOURCE,
        ));
        return;
    }
    let bad = [&s.ends_only, &s.one_end_lifted];
    let worst = bad
        .into_iter()
        .max_by(|a, b| a.worst.stress_mpa.total_cmp(&b.worst.stress_mpa));
    if let Some(worst) = worst.filter(|b| b.verdict.is_above()) {
        let [first, second] = s.best.worst.supports_mm;
        found.cautions.push(finding(
            "bends-flat",
            format!("{}: lying flat it can snap", piece.name),
            format!(
                "{} Never lift one end of it while it lies flat. Flat it may lie only on supports \
                 {} and {} from the left end (lower end when upright), where it is {:.2} MPa.",
                stress(worst, s.allowed_mpa, words),
                words.length(first),
                words.length(second),
                s.best.worst.stress_mpa,
            ),
            BEND_SOURCE,
        ));
    }
}

fn stress(bending: &Bending, allowed_mpa: f64, words: Words) -> String {
    let (BendVerdict::NotAbove { utilisation } | BendVerdict::Above { utilisation }) =
        bending.verdict;
    format!(
        "Lying {}: {:.2} MPa where it is {} wide, {} from the end; allowed {allowed_mpa:.2} MPa \
         (strength ÷ safety factor), {utilisation:.2} times.",
        bending.what,
        bending.worst.stress_mpa,
        words.length(bending.worst.width_mm),
        words.length(bending.worst.at_mm),
    )
}

fn on_edge(piece: &Piece) -> Finding {
    let s = &piece.strength;
    finding(
        "carry-on-edge",
        format!("{}: carry it on edge, never flat", piece.name),
        format!(
            "Held at its two ends it is stressed {:.2} MPa flat and {:.3} MPa on edge; allowed is \
             {:.2} MPa. Sound stone is assumed, and rails beside a cutout are weaker than this sum \
             shows: brace them.",
            s.ends_only.worst.stress_mpa, s.ends_on_edge.worst.stress_mpa, s.allowed_mpa,
        ),
        BEND_SOURCE,
    )
}

fn off_the_edge(top: &Load, lift: &Lift, words: Words) -> Option<Finding> {
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

fn set_down(setting: &Setting, words: Words, found: &mut Findings) {
    match setting.stands {
        Standing::Balanced => {}
        Standing::Tips | Standing::NotSupported => found.stops.push(finding(
            "tips-off-supports",
            "The top does not lie still on its supports".to_owned(),
            "The supports do not reach round the balance point. Add or move supports before it is \
             set down."
                .to_owned(),
            "statics of a rigid plate",
        )),
    }
    for bearing in &setting.bearings {
        let carried = bearing.share.mass();
        match bearing.verdict {
            BearingVerdict::Over { limit } => found.stops.push(finding(
                "support-over-limit",
                format!("{} carries more than its limit", bearing.what),
                format!(
                    "It carries {}; its limit is {}. Add a support or move the others nearer.",
                    words.mass(carried),
                    words.mass(limit)
                ),
                "rigid plate on supports, stiffness by length; limit from the job file",
            )),
            BearingVerdict::Idle => found.cautions.push(finding(
                "support-lifts-off",
                format!("{} carries nothing", bearing.what),
                "The top does not press on it. Check its place and height; do not pull the top \
                 down to it."
                    .to_owned(),
                "rigid plate on supports, stiffness by length",
            )),
            BearingVerdict::NoLimitGiven | BearingVerdict::Within { .. } => {}
        }
    }
}

fn flawed(job: &Job) -> Option<Finding> {
    let count = job.slab.flaws.len();
    let noted = if count == 1 {
        "One flaw is".to_owned()
    } else {
        format!("{count} flaws are")
    };
    (count > 0).then(|| {
        finding(
            "flaws-and-strength",
            "The slab has flaws: the strength figures do not hold across them".to_owned(),
            format!(
                "{noted} noted. Every stress here assumes sound stone; at a fissure or a \
                 mend it may break far below them. Keep it on edge, on a full board or frame."
            ),
            "judgement",
        )
    })
}

fn not_a_limit(handling: &Handling, words: Words) -> Finding {
    let rule = &handling.guideline;
    finding(
        "guideline-is-not-a-limit",
        "The lifting guideline is not a safe limit".to_owned(),
        format!(
            "{} a person is for fit adults lifting close, at waist height, straight and seldom; it \
             is less for many people, for wet hands, steps and rough ground. It is no promise \
             that a lift below it is safe. The lifting equation is for lifting, not for \
             carrying. Check your current rules.",
            words.mass(rule.each)
        ),
        &format!("{}, {}", rule.source.document, rule.source.clause),
    )
}
