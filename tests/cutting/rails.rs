//! Stone left beside openings and inside corners.

use super::{list, plan, told};

fn counter(openings: &str) -> serde_json::Value {
    plan(&format!(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [2300, 900]\n\
         rough = [\"AB\", \"BC\", \"CD\", \"DA\"]\n[top]\nrectangle = [2000, 600]\n{openings}\n\
         [[core_bit]]\ndiameter = 35\n"
    ))
}

fn bowl(at: [f64; 2], size: [f64; 2]) -> String {
    format!(
        "[[top.cutout]]\nat = [{}, {}]\nrectangle = [{}, {}]\n\
         round = {{ 1 = 17.5, 2 = 17.5, 3 = 17.5, 4 = 17.5 }}\n",
        at[0], at[1], size[0], size[1]
    )
}

fn tap(at: [f64; 2]) -> String {
    format!("[[top.cutout]]\nat = [{}, {}]\ncircle = 35\n", at[0], at[1])
}

#[test]
fn front_rail_too_narrow() {
    // 220 − 178 = 42 mm in front.
    let said = told(
        &counter(&bowl([1000.0, 220.0], [500.0, 356.0])),
        "rail-too-narrow",
    )
    .join("\n");
    let words = "cutout 1 leaves a front rail of 42 mm, least 90 mm; move it 48 mm back";
    assert!(said.starts_with(words), "{said}");
    assert!(said.contains("1-2 of the top"), "{said}");
}

#[test]
fn every_side_has_its_name() {
    for (at, words) in [
        (
            [1000.0, 360.0],
            "back rail of 60 mm, least 90 mm; move it 30 mm forward",
        ),
        (
            [310.0, 300.0],
            "left rail of 60 mm, least 90 mm; move it 30 mm to the right",
        ),
        (
            [1690.0, 300.0],
            "right rail of 60 mm, least 90 mm; move it 30 mm to the left",
        ),
    ] {
        let said = told(&counter(&bowl(at, [500.0, 360.0])), "rail-too-narrow").join("\n");
        assert!(said.contains(words), "{said}");
    }
}

#[test]
fn wide_enough_is_not_told() {
    let plan = counter(&bowl([1000.0, 300.0], [500.0, 400.0]));
    assert!(told(&plan, "rail-too-narrow").is_empty());
    assert!(told(&plan, "hangs-on-a-strip").is_empty());
}

#[test]
fn a_rail_with_a_tap_hole_must_be_wider() {
    let with_tap = bowl([1000.0, 290.0], [500.0, 380.0]) + &tap([1000.0, 540.0]);
    let said = told(&counter(&with_tap), "rail-too-narrow").join("\n");
    let words = "cutout 1 leaves a back rail of 120 mm with its tap hole, least 125 mm; move it 5 mm \
                 forward";
    assert!(said.contains(words), "{said}");
    let beside = bowl([1000.0, 290.0], [500.0, 380.0]) + &tap([1500.0, 540.0]);
    assert!(told(&counter(&beside), "rail-too-narrow").is_empty());
}

#[test]
fn between_two_bowls() {
    let two = bowl([600.0, 300.0], [500.0, 380.0]) + &bowl([1152.0, 300.0], [500.0, 380.0]);
    let said = told(&counter(&two), "rail-too-narrow-between").join("\n");
    let words =
        "cutouts 1 and 2 leave a rail of 52 mm between them, least 70 mm; move them 18 mm apart";
    assert!(said.contains(words), "{said}");
}

#[test]
fn narrower_than_the_stone_is_thick_is_a_stop() {
    let said = told(
        &counter(&bowl([1000.0, 205.0], [500.0, 360.0])),
        "hangs-on-a-strip",
    )
    .join("\n");
    assert!(
        said.contains("25.0 mm wide") && said.contains("30.0 mm"),
        "{said}"
    );
    let leg = plan(
        "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [1500, 900]\n[top]\n\
         corners = [[0, 0], [1200, 0], [1200, 28], [500, 28], [500, 600], [0, 600]]\n\
         [place]\nat = [100, 100]\nturn = 0\n[[core_bit]]\ndiameter = 35\n",
    );
    let said = told(&leg, "hangs-on-a-strip-corner").join("\n");
    assert!(said.contains("28.0 mm wide"), "{said}");
}

/// The width of a slot 1 mm wide is less than any disc's kerf; 6 mm is more than twice the usual one.
#[test]
fn an_opening_without_room_for_the_kerf_is_a_stop_and_is_not_cut() {
    let slit = |width: f64| {
        let at = format!("[[top.cutout]]\nat = [1000, 300]\nrectangle = [1200, {width}]\n");
        counter(&at)
    };
    let narrow = slit(1.0);
    let said = told(&narrow, "opening-narrower-than-kerf").join("\n");
    assert!(said.contains("stone to keep"), "{said}");
    let stops = narrow["stops"].to_string();
    assert!(stops.contains("opening-narrower-than-kerf"), "{stops}");
    let cuts = list(&narrow, "cuts").iter();
    assert_eq!(cuts.filter(|c| c["cutout"] == 1).count(), 0);
    assert!(told(&slit(6.0), "opening-narrower-than-kerf").is_empty());
}

/// The guide needs stone behind its edge to be clamped on: 112 mm of kept stone in front of the opening leave
/// 14 mm beyond an offset of 98 mm, and 400 mm of waste lie on the other side.
#[test]
fn the_guide_lies_where_it_can_be_clamped() {
    let sides = |front: f64| -> Vec<String> {
        let opening = bowl([1000.0, front + 200.0], [500.0, 400.0]);
        let plan = counter(&format!("{opening}[guide]\noffset = 98\n"));
        let cuts = plan["cuts"].as_array().unwrap().iter();
        let own = cuts.filter(|c| c["cutout"].as_u64() == Some(1));
        let guided = own.filter_map(|c| c["set_out"]["guide"]["guide_side"].as_str());
        guided.map(str::to_owned).collect()
    };
    assert_eq!(sides(110.0), ["waste", "waste", "kept", "kept"]);
    assert_eq!(sides(100.0), ["waste", "waste", "kept", "kept"]);
}
