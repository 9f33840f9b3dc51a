//! A fissure that a cut crosses, or that runs through waste: common practice is bearers on both sides of it and no
//! lift across it.

use super::{list, plan, told};

/// A top in the lower left corner of its slab: cut 1 runs up at its right side over the whole slab, cut 2 along the
/// strip above it.
fn with_line(top: [u32; 2], line: &str) -> String {
    let [long, deep] = top;
    format!(
        r#"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [2400, 900]
[[slab.flaw]]
what = "old fissure"
clear = 5
line = {line}
[top]
rectangle = [{long}, {deep}]
[place]
at = [0, 0]
turn = 0
[[disc]]
name = "230"
diameter = 230
kerf = 2.6
obstruction = 60
"#
    )
}

/// The pieces that the plan says it runs through.
fn flawed(plan: &serde_json::Value) -> Vec<&str> {
    let pieces = list(plan, "pieces").iter();
    let through = pieces.filter(|p| !list(p, "flaws").is_empty());
    through.filter_map(|p| p["name"].as_str()).collect()
}

#[test]
fn a_fissure_in_heavy_waste_is_told_with_the_piece() {
    // From edge to edge of the block at the right, 600 × 900: no cut crosses it.
    let plan = plan(&with_line([1800, 600], "[[1900, 900], [2300, 0]]"));
    assert_eq!(flawed(&plan), ["W1"]);
    let said = told(&plan, "fissure-in-waste");
    assert_eq!(said.len(), 1);
    assert!(said[0].contains("under W1 "), "{}", said[0]);
    assert!(!said[0].contains("Cutting across"), "{}", said[0]);
}

#[test]
fn a_cut_across_a_fissure_is_told_with_its_number() {
    // Across x = 1800 above the top: in both pieces, and cut 1 crosses it.
    let plan = plan(&with_line([1800, 600], "[[1700, 880], [1950, 640]]"));
    assert_eq!(flawed(&plan), ["W1", "W2"]);
    let said = told(&plan, "fissure-in-waste");
    assert_eq!(said.len(), 1);
    assert!(said[0].contains("(cuts: 1)"), "{}", said[0]);
    assert!(said[0].contains("under W1, W2 "), "{}", said[0]);
}

#[test]
fn a_fissure_in_a_light_strip_that_no_cut_crosses_is_no_news() {
    let plan = plan(&with_line([2370, 900], "[[2385, 100], [2390, 400]]"));
    assert_eq!(flawed(&plan), ["W1"]);
    assert!(told(&plan, "fissure-in-waste").is_empty());
}
