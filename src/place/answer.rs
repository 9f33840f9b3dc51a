//! Finds the best place, or checks the one that is fixed, and says what is to be looked at there.

use crate::diag::{Finding, Findings, Phrase};
use crate::geom::Pose;
use crate::job::{Job, PlaceHow};
use crate::words::Value;

use super::{EdgeUse, Miss, NoFit, Placement, Proof, candidate, free_turn, search, size};

/// Finds the best place, or checks the one the user has fixed.
///
/// # Errors
/// [`NoFit`] names the nearest miss.
pub fn place(job: &Job) -> Result<(Placement, Findings), NoFit> {
    let placement = match job.place.how {
        PlaceHow::Search => search::best(job).map_err(|miss| NoFit {
            fitting: size::largest(job),
            ..miss.in_words(job)
        }),
        PlaceHow::Fixed { at, turn_deg } | PlaceHow::AsCut { at, turn_deg } => {
            let pose = Pose::new(turn_deg.to_radians(), at.to_vector());
            candidate::judge(job, pose).map_err(|miss| fixed_miss(job, miss).in_words(job))
        }
    }?;
    let mut findings = measure_again(job, &placement);
    findings.open.extend(undescribed(job, &placement));
    findings.warnings.extend(free_turn::saving(job, &placement));
    Ok((placement, findings))
}

/// What is shown where a fixed place breaks the rules: whether there is another.
fn fixed_miss(job: &Job, miss: Miss) -> Miss {
    if !matches!(job.place.how, PlaceHow::Fixed { .. }) {
        return miss;
    }
    let proof = match search::best(job) {
        Ok(_) => Proof::Elsewhere,
        Err(none) => none.proof,
    };
    Miss { proof, ..miss }
}

pub(crate) const EDGES_UNDESCRIBED: Phrase = Phrase::of_job("edges-undescribed").key("slab.sawn");

/// Edges of the slab that nobody has described and that become edges of the top: to be looked at.
fn undescribed(job: &Job, placement: &Placement) -> Option<Finding> {
    let on = placement.uses.iter().filter_map(|used| match used {
        EdgeUse::Flush { slab_edge, .. } => Some(*slab_edge),
        _ => None,
    });
    let on: Vec<usize> = on.filter(|e| job.slab.undescribed.contains(e)).collect();
    let begun = matches!(job.place.how, PlaceHow::AsCut { .. });
    let mut edges = on.clone();
    edges.sort_unstable();
    edges.dedup();
    let names = edges.iter().map(|e| job.slab.shape.edge_name(*e));
    let names: Vec<String> = names.collect();
    let line = |key: &str| Value::name(format!("{key} = {names:?}"));
    let args = [
        (
            "edges",
            Value::List(names.iter().cloned().map(Value::name).collect()),
        ),
        ("count", Value::count(names.len())),
        ("sawn", line("sawn")),
        ("rough", line("rough")),
        ("cuts", Value::count(on.len())),
    ];
    let open = !names.is_empty() && !begun;
    open.then(|| Finding::of(&EDGES_UNDESCRIBED, args, "common practice"))
}

pub(crate) const MEASURE_AGAIN: Phrase = Phrase::of_job("measure-again");

/// A fit with less to spare than two tape errors is not yet a fit.
fn measure_again(job: &Job, placement: &Placement) -> Findings {
    let (spare, least) = (placement.least_spare_mm, 2.0 * job.slab.tape_error_mm);
    let mut findings = Findings::default();
    let begun = matches!(job.place.how, PlaceHow::AsCut { .. });
    if spare < least && !begun {
        let values = [
            ("spare", Value::fine(spare)),
            ("tape", Value::fine(job.slab.tape_error_mm)),
            ("least", Value::fine(least)),
        ];
        let source = "judgement: twice the tape error (slab.tape)";
        let stop = Finding::of(&MEASURE_AGAIN, values, source);
        findings.stops.push(stop);
    }
    findings
}
