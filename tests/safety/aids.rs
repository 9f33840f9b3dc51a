//! What must stop a lift and what must be open, for every aid, mark, mass and region, on a job that has
//! neither otherwise. Written from the published rules, not from the code.

use kerfwright::job;
use kerfwright::plan::Plan;

const AIDS: [&str; 4] = ["none", "trolley", "vacuum lifter", "gantry"];
/// Length of the slab, mm. It is 700 wide and 30 thick, of granite: to 3000 kg/m³ (CEN/TR 17024), that is 15,
/// 57 and 113 kg.
const LENGTHS: [f64; 3] = [240.0, 900.0, 1800.0];
/// The mark as a multiple of the mass; nothing where it is not known.
const MARKS: [Option<f64>; 4] = [None, Some(0.9), Some(1.1), Some(2.2)];
/// What one person may count on, kg: ISO 11228-1; NIOSH 94-110; the lower figure of HSE L23.
const REGIONS: [(&str, f64); 3] = [("eu", 25.0), ("us", 23.0), ("other", 16.0)];
/// Findings of this table.
const OURS: [&str; 4] = [
    "not-a-hand-lift",
    "lifter-over-guideline",
    "aid-too-weak",
    "aid-without-mark",
];

/// What is due: nothing, an open point or a stop.
fn due(aid: &str, mass: f64, mark: Option<f64>, each: f64) -> Option<(bool, &'static str)> {
    // HSE L23, paragraphs 119 and 120: two people count on two thirds of their sum.
    let team = 2.0 * each * 2.0 / 3.0;
    // A vacuum lifter is marked for twice the mass (common practice).
    let needs = if aid == "vacuum lifter" { 2.0 } else { 1.0 };
    match (aid, mark) {
        ("none", _) if mass <= team => None,
        // L23: beyond about twice the figure the risk is serious even for fit, trained people.
        ("none", _) if mass <= 2.0 * team => Some((false, "lifter-over-guideline")),
        ("none", _) => Some((true, "not-a-hand-lift")),
        (_, None) => Some((false, "aid-without-mark")),
        (_, Some(times)) if times < needs => Some((true, "aid-too-weak")),
        _ => None,
    }
}

fn plan_of(region: &str, aid: &str, length: f64, rated: Option<f64>) -> Plan {
    let rated = rated.map_or_else(String::new, |kg| format!("rated = \"{kg} kg\"\n"));
    let text = format!(
        "[job]\nregion = \"{region}\"\n[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [{length}, 700]\n\
         sawn = [\"AB\", \"BC\", \"CD\", \"DA\"]\n[top]\nrectangle = [{length}, 700]\n[lift]\npeople = 2\n\
         aid = \"{aid}\"\n{rated}"
    );
    let (job, _) = job::read(&text).unwrap_or_else(|faults| panic!("{text}{faults:?}"));
    Plan::of(&job).unwrap_or_else(|miss| panic!("{text}{miss:?}"))
}

#[test]
fn a_lift_stops_or_is_open_as_its_aid_and_mark_ask() {
    let mut seen = [0; 4];
    for (region, each) in REGIONS {
        for aid in AIDS {
            for length in LENGTHS {
                for mark in MARKS {
                    let mass = length * 700.0 * 30.0 * 3000e-9;
                    let plan = plan_of(region, aid, length, mark.map(|times| times * mass));
                    let ours = |f: &&kerfwright::diag::Finding| OURS.contains(&f.id());
                    let stops = plan.stops.iter().filter(ours).map(|f| (true, f.id()));
                    let open = plan.open.iter().filter(ours).map(|f| (false, f.id()));
                    let found: Vec<_> = stops.chain(open).collect();
                    let must: Vec<_> = due(aid, mass, mark, each).into_iter().collect();
                    assert_eq!(found, must, "{region} {aid} {mass} kg marked {mark:?}");
                    for (_, id) in must {
                        seen[OURS.iter().position(|our| *our == id).unwrap()] += 1;
                    }
                }
            }
        }
    }
    assert!(seen.iter().all(|count| *count > 0), "{seen:?}");
}
