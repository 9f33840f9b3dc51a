//! Who stands where, what each carries, and whether it is a lift by hand at all.

use crate::geom::{Point, Region};
use crate::handle::bending::axes::Axes;
use crate::handle::bending::bend::{Beam, Orientation, Reaction};
use crate::handle::bending::plate::Resting;
use crate::handle::lifting::record::{
    Effort, Lift, Lifter, PeopleNeeded, Share, Stand, Tilt, Tilting, Verdict,
};
use crate::handle::loads::Load;
use crate::job;
use crate::units::Mass;

use super::guideline::{Guideline, LARGEST_TEAM, team_factor};
use super::hold::{self, Hold, Holder};
use super::niosh::off_trestles;

/// Off balance by more than this, mm, nobody's hands hold it level (judgement: half a hand).
const OFF_BALANCE_MM: f64 = 50.0;
/// Off balance by less than this, mm, is rounding of a tape.
const LEVEL_MM: f64 = 1.0;
/// A given place farther from the outline than this, mm, is no place to grip (judgement).
pub(crate) const OFF_EDGE_MM: f64 = 100.0;

impl Share {
    /// The mass carried; zero when it lifts off.
    #[must_use]
    pub fn mass(self) -> Mass {
        match self {
            Self::Carries(mass) => mass,
            Self::LiftsOff => Mass::default(),
        }
    }
}

/// Beyond so many times the guideline figure the risk is serious even for fit, trained people (HSE L23, from
/// memory).
pub const MOST_TIMES: f64 = 2.0;

impl Effort {
    /// By a load over the figure.
    #[must_use]
    pub fn of(utilisation: f64) -> Self {
        if utilisation <= 1.0 {
            Self::Within
        } else if utilisation <= MOST_TIMES {
            Self::Above
        } else {
            Self::Beyond
        }
    }
}

impl Lift {
    /// Whether the places hold it level: the middle of the lift is the balance point, to rounding.
    #[must_use]
    pub fn holds(&self) -> bool {
        self.off_balance_mm <= LEVEL_MM
    }
}

/// Works out the lift of one piece. `given` are places in the slab's frame; empty: proposed.
#[must_use]
pub fn plan(
    load: &Load,
    beam: &Beam<'_>,
    allowed_mpa: f64,
    crew: &job::Lift,
    given: &[Point],
    rule: &Guideline,
) -> Lift {
    let holder = Holder {
        beam,
        region: &load.region,
        allowed_mpa,
    };
    let strengths = Strengths::of(crew, rule);
    let people = if given.is_empty() {
        crew.people
    } else {
        given.len()
    };
    let (stand, hold) = if given.is_empty() {
        (Stand::Proposed, holder.propose(people))
    } else {
        let points = given.to_vec();
        let orientation = holder.lie_of(given);
        (
            Stand::Given,
            orientation.map(|orientation| Hold {
                orientation,
                points,
            }),
        )
    };
    let (mass, team_limit) = (load.mass.high, strengths.team(people.min(LARGEST_TEAM)));
    let points = hold.as_ref().map_or(given, |h| &h.points[..]);
    let orientation = hold.as_ref().map_or(Orientation::OnEdge, |h| h.orientation);
    let rest = hold::rest(
        orientation,
        points,
        mass.kg(),
        &load.region,
        beam.strip().axes(),
    );
    let lifters = strengths.lifters(points, &rest, stand, beam.strip().axes());
    let most = lifters.iter().map(|l| l.share.mass().kg());
    let most = Mass::from_kg(most.fold(0.0, f64::max));
    let mut lift = Lift {
        mass,
        orientation,
        team_factor: team_factor(people),
        // Nothing but hands that are not there leaves it without an end.
        off_balance_mm: Some(rest.off_balance_mm)
            .filter(|mm| mm.is_finite())
            .unwrap_or(0.0),
        people_needed: people_needed(mass, &strengths.own, strengths.each),
        verdict: Verdict::Breaks,
        off_trestles: off_trestles(most, crew.hands_mm),
        tilting: tilting(load, beam.strip().axes(), team_limit),
        team_limit,
        pair_limit: strengths.team(2),
        lifters,
    };
    lift.verdict = verdict(&lift, people, hold.is_some());
    if matches!(lift.verdict, Verdict::NotAHandLift { .. } | Verdict::Breaks) {
        lift.lifters.clear();
        lift.off_balance_mm = 0.0;
    }
    lift
}

fn tilting(load: &Load, axes: &Axes, team_limit: Mass) -> Tilting {
    let lifted = tilts(load, axes).map(|t| t.lifted.kg());
    let lifted = lifted[0].min(lifted[1]);
    // Without anybody to lift it every load is beyond what they can.
    let utilisation = if team_limit.kg() > 0.0 {
        lifted / team_limit.kg()
    } else {
        2.0 * MOST_TIMES
    };
    Tilting {
        lifted: Mass::from_kg(lifted),
        utilisation,
        effort: Effort::of(utilisation),
    }
}

/// What each person can lift.
struct Strengths {
    /// The guideline for one person at the hands' height.
    each: Mass,
    own: Vec<Mass>,
}

impl Strengths {
    fn of(crew: &job::Lift, rule: &Guideline) -> Self {
        let each = rule.at_height(crew.hands_mm);
        let own = if crew.each_is_guideline {
            vec![each; crew.each.len()]
        } else {
            crew.each.clone()
        };
        Self { each, own }
    }

    fn team(&self, people: usize) -> Mass {
        team_limit(&self.own, self.each, people)
    }

    fn lifters(&self, points: &[Point], rest: &Resting, stand: Stand, axes: &Axes) -> Vec<Lifter> {
        let factor = team_factor(points.len());
        let own = |i: usize| self.own.get(i).copied().unwrap_or(self.each);
        let each = points.iter().zip(&rest.forces).enumerate();
        let lifter = |(i, (point, force)): (usize, (&Point, &Option<f64>))| {
            let (from_end_mm, from_side_mm) = axes.seen(*point);
            Lifter {
                number: i + 1,
                point: *point,
                from_end_mm,
                from_side_mm,
                stand,
                share: force.map_or(Share::LiftsOff, |kg| Share::Carries(Mass::from_kg(kg))),
                limit: factor.map(|f| Mass::from_kg(own(i).kg() * f)),
            }
        };
        each.map(lifter).collect()
    }
}

/// The fewest people, the strongest named first and then people at the guideline, whose sum times
/// the team factor is not below the mass.
#[must_use]
pub fn people_needed(mass: Mass, each: &[Mass], guideline: Mass) -> PeopleNeeded {
    (1..=LARGEST_TEAM)
        .find(|n| team_limit(each, guideline, *n) >= mass)
        .map_or(PeopleNeeded::MoreThanATeam, PeopleNeeded::AtLeast)
}

/// What a team of `people` may count on: their sum times the team factor; nothing beyond
/// [`LARGEST_TEAM`]. People not named are taken at the guideline.
#[must_use]
pub fn team_limit(each: &[Mass], guideline: Mass, people: usize) -> Mass {
    let mut own: Vec<f64> = each.iter().map(|m| m.kg()).collect();
    own.sort_by(|a, b| b.total_cmp(a));
    own.resize(own.len().max(people), guideline.kg());
    let sum: f64 = own.iter().take(people).sum();
    Mass::from_kg(sum * team_factor(people).unwrap_or(0.0))
}

fn verdict(lift: &Lift, people: usize, held: bool) -> Verdict {
    let team_limit = lift.team_limit;
    if lift.mass.kg() > MOST_TIMES * team_limit.kg() {
        return Verdict::NotAHandLift { team_limit };
    }
    if !held {
        return Verdict::Breaks;
    }
    if people > LARGEST_TEAM {
        return Verdict::TooManyHands { people };
    }
    if lift.off_balance_mm > OFF_BALANCE_MM {
        return Verdict::Tips {
            off_balance_mm: lift.off_balance_mm,
        };
    }
    let shares = lift.lifters.iter();
    let shares = shares.filter_map(|l| l.limit.map(|limit| (l.number, l.share.mass(), limit)));
    match shares.max_by(|a, b| ratio(a).total_cmp(&ratio(b))) {
        Some(worst) if Effort::of(ratio(&worst)) == Effort::Within => Verdict::Within {
            utilisation: ratio(&worst),
        },
        Some((lifter, carried, limit)) => Verdict::Over {
            lifter,
            carried,
            limit,
        },
        None => Verdict::NotAHandLift { team_limit },
    }
}

fn ratio((_, carried, limit): &(usize, Mass, Mass)) -> f64 {
    carried.kg() / limit.kg()
}

impl Lift {
    /// Whether people lift it as proposed: within what they may count on, or above it where no aid is named.
    #[must_use]
    pub fn by_hand(&self, aid: job::Aid) -> bool {
        let most = match aid {
            job::Aid::None => Effort::Above,
            job::Aid::Trolley | job::Aid::VacuumLifter | job::Aid::Gantry => Effort::Within,
        };
        !self.lifters.is_empty() && self.effort() <= most
    }

    /// How the lift stands to the guideline figure: by the one who carries most for the own figure.
    #[must_use]
    pub fn effort(&self) -> Effort {
        match self.verdict {
            Verdict::Within { .. } => Effort::Within,
            Verdict::Over { carried, limit, .. } => Effort::of(carried.kg() / limit.kg()),
            Verdict::TooManyHands { .. } => Effort::Above,
            Verdict::NotAHandLift { .. } | Verdict::Breaks | Verdict::Tips { .. } => Effort::Beyond,
        }
    }

    /// The hands as what holds the stone as a beam; nothing when nobody holds it level.
    #[must_use]
    pub fn props(&self, beam: &Beam<'_>, region: &Region) -> Option<Vec<Reaction>> {
        let points: Vec<Point> = self.lifters.iter().map(|l| l.point).collect();
        let rest = hold::rest(self.orientation, &points, 1.0, region, beam.strip().axes());
        (!points.is_empty() && self.holds()).then(|| hold::props(beam, &points, &rest))
    }
}

/// Tilting up about the right-hand long side, looking along the stone, and about the left-hand one.
#[must_use]
pub fn tilts(load: &Load, axes: &Axes) -> [Tilt; 2] {
    let (_, balance) = axes.seen(load.region.centroid());
    let height_mm = axes.width_mm();
    let about = |v: f64| {
        let balance_height_mm = (balance - v).abs();
        let share = balance_height_mm / height_mm;
        Tilt {
            pivot: [axes.point(0.0, v), axes.point(axes.length_mm(), v)],
            balance_height_mm,
            height_mm,
            share,
            lifted: Mass::from_kg(load.mass.high.kg() * share),
        }
    };
    [about(0.0), about(height_mm)]
}
