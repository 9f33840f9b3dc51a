//! The plan's own sums: areas, masses and minutes that must agree with each other.

use serde_json::Value;

use super::plane::{list, number};

/// What does not add up.
pub(crate) fn faults(plan: &Value) -> Vec<String> {
    let mut faults = balance(plan);
    faults.extend(masses(plan));
    faults.extend(totals(plan));
    faults
}

/// Slab = top + allowance + kerf + offcuts, to 1e-9 of the slab.
fn balance(plan: &Value) -> Vec<String> {
    let sheet = &plan["balance_sheet"];
    let slab = number(sheet, "slab_mm2");
    let keys = ["top_mm2", "allowance_mm2", "kerf_mm2", "offcuts_mm2"];
    let sum: f64 = keys.iter().map(|k| number(sheet, k)).sum();
    let pieces: f64 = list(plan, "pieces")
        .iter()
        .map(|p| number(p, "area_mm2"))
        .sum();
    let mut faults = Vec::new();
    let mut agree = |what: &str, a: f64, b: f64| {
        if (a - b).abs() > 1e-9 * slab {
            faults.push(format!("{what}: {a} is not {b}"));
        }
    };
    agree("the balance sheet does not close", sum, slab);
    agree("slab area", number(&plan["slab"], "area_mm2"), slab);
    agree(
        "top area",
        number(&plan["top"], "area_mm2"),
        number(sheet, "top_mm2"),
    );
    agree("offcuts", pieces, number(sheet, "offcuts_mm2"));
    for key in keys {
        if number(sheet, key) < -1e-9 * slab {
            faults.push(format!("{key} is negative: {}", number(sheet, key)));
        }
    }
    faults
}

/// Every mass is its area × mean thickness × density, and the range lies about it.
fn masses(plan: &Value) -> Vec<String> {
    let mean = number(&plan["slab"]["thickness"], "mean");
    let density = number(&plan["stone"]["density_kg_m3"], "likely");
    let whole = [&plan["slab"], &plan["top"]].into_iter();
    whole
        .chain(list(plan, "pieces"))
        .filter_map(|piece| {
            let want = number(piece, "area_mm2") * mean * density * 1e-9;
            let mass = &piece["mass"];
            let (low, likely, high) = (
                number(mass, "low"),
                number(mass, "likely"),
                number(mass, "high"),
            );
            let right = (likely - want).abs() <= 1e-9 * want && low <= likely && likely <= high;
            (!right).then(|| format!("mass {mass} of {want} kg"))
        })
        .collect()
}

/// The sums over the cuts are the sums over the cuts.
fn totals(plan: &Value) -> Vec<String> {
    let totals = &plan["totals"];
    [
        ("length_mm", "length"),
        ("face_mm2", "face_mm2"),
        ("sawing_minutes", "minutes"),
    ]
    .into_iter()
    .filter_map(|(total, each)| {
        let sum: f64 = list(plan, "cuts").iter().map(|c| number(c, each)).sum();
        let said = number(totals, total);
        ((sum - said).abs() > 1e-9 * sum.abs()).then(|| format!("{total} is {said}, not {sum}"))
    })
    .collect()
}
