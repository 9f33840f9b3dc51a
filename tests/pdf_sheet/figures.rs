//! Every number on page 1 is the plan's, rounded as it is printed.

use kerfwright::sheet::figure::{Figures, face, time};
use kerfwright::units::{LengthUnit, Mass, MassRange};
use serde_json::Value;

use crate::reading::{Placed, Turn};
use crate::{PRINTED, Printed, number, words};

fn figures(printed: &Printed) -> Figures {
    let units = match words(&printed.json["job"]["units"]) {
        "in" => LengthUnit::Inch,
        _ => LengthUnit::Millimetre,
    };
    Figures { units }
}

fn range(mass: &Value) -> MassRange {
    let kg = |key: &str| Mass::from_kg(number(&mass[key]));
    MassRange {
        low: kg("low"),
        likely: kg("likely"),
        high: kg("high"),
    }
}

/// What stands to the right of a label on the same line, up to the next column.
fn beside<'t>(texts: &'t [Placed], label: &str) -> &'t str {
    let mut labels = texts.iter().filter(|t| t.words == label);
    let at = labels.next().unwrap_or_else(|| panic!("no {label:?}"));
    assert!(labels.next().is_none(), "{label:?} twice");
    let right = texts
        .iter()
        .filter(|t| (t.y - at.y).abs() < 0.01 && t.x > at.x);
    let nearest = right.min_by(|a, b| a.x.total_cmp(&b.x));
    &nearest
        .unwrap_or_else(|| panic!("nothing beside {label:?}"))
        .words
}

#[test]
fn the_weights_of_page_1_are_the_plans() {
    for printed in PRINTED.iter() {
        let (figures, json) = (figures(printed), &printed.json);
        let top = figures.mass_range(&range(&json["top"]["mass"]));
        assert_eq!(beside(printed.first(), "Finished top"), top);
        let slab = figures.mass_range(&range(&json["slab"]["mass"]));
        assert_eq!(beside(printed.first(), "Slab"), slab);
        let heaviest = printed
            .list("pieces")
            .iter()
            .max_by(|a, b| number(&a["mass"]["high"]).total_cmp(&number(&b["mass"]["high"])))
            .expect("a piece");
        let mass = figures.mass(Mass::from_kg(number(&heaviest["mass"]["high"])));
        let expected = format!("{} {mass}", words(&heaviest["name"]));
        assert_eq!(beside(printed.first(), "Heaviest waste"), expected);
    }
}

#[test]
fn the_counts_times_and_sizes_of_page_1_are_the_plans() {
    for printed in PRINTED.iter() {
        let (figures, json) = (figures(printed), &printed.json);
        let page = printed.first();
        let of_kind = |kind: &str| {
            let cuts = printed.list("cuts").iter();
            cuts.filter(|c| words(&c["kind"]) == kind)
                .count()
                .to_string()
        };
        assert_eq!(beside(page, "Straight cuts"), of_kind("straight"));
        assert_eq!(beside(page, "Curves"), of_kind("curve"));
        let sum = |key: &str| -> f64 { printed.list("cuts").iter().map(|c| number(&c[key])).sum() };
        assert_eq!(beside(page, "Sawn face"), face(sum("face_mm2")));
        let sawing = beside(page, "Disc in stone");
        let guess = json["kit"]["rate_is_guess"] == Value::Bool(true);
        assert_eq!(sawing.ends_with(" (guess)"), guess, "{sawing}");
        assert_eq!(sawing.trim_end_matches(" (guess)"), time(sum("minutes")));
        let setting_up = time(number(&json["totals"]["set_up_minutes"]));
        assert!(beside(page, "Setting up").starts_with(&setting_up));
        let mean = number(&json["slab"]["thickness"]["mean"]);
        assert_eq!(beside(page, "Thickness"), figures.small(mean));
        assert_eq!(beside(page, "Stone"), words(&json["stone"]["name"]));
    }
}

/// The least and the greatest of one coordinate of the slab's corners that are given as such.
fn span(printed: &Printed, axis: usize) -> f64 {
    let corners = printed.json["slab"]["corners"].as_array().unwrap();
    let along = || corners.iter().map(|c| number(&c["at"][axis]));
    along().fold(f64::MIN, f64::max) - along().fold(f64::MAX, f64::min)
}

#[test]
fn the_dimensions_in_the_drawing_are_the_plans() {
    for printed in PRINTED.iter() {
        let figures = figures(printed);
        let texts = |turn: Turn| -> Vec<&str> {
            let texts = printed.first().iter().filter(|t| t.turn == turn);
            texts.map(|t| t.words.as_str()).collect()
        };
        let length = figures.size_label(span(printed, 0));
        let width = figures.size_label(span(printed, 1));
        let level = texts(Turn::Level);
        assert!(level.contains(&length.as_str()), "{length} in {level:?}");
        let upwards = texts(Turn::Upwards);
        assert!(upwards.contains(&width.as_str()), "{width} in {upwards:?}");
        let size = printed.json["top"]["size"].as_array().unwrap();
        let top = format!(
            "top {} × {} {}",
            figures.size_bare(number(&size[0])),
            figures.size_bare(number(&size[1])),
            figures.unit()
        );
        assert!(level.contains(&top.as_str()), "{top} in {level:?}");
    }
}

#[test]
fn every_waste_piece_is_weighed_in_the_drawing() {
    let mut missing = Vec::new();
    for printed in PRINTED.iter() {
        for piece in printed.list("pieces") {
            let mass = figures(printed).mass(Mass::from_kg(number(&piece["mass"]["high"])));
            let label = format!("{}  {mass}", words(&piece["name"]));
            if !printed.first().iter().any(|t| t.words == label) {
                missing.push(format!("{}: {label}", printed.name));
            }
        }
    }
    assert!(missing.is_empty(), "\n{}", missing.join("\n"));
}

#[test]
fn every_corner_of_slab_and_top_is_named_in_the_drawing() {
    for printed in PRINTED.iter() {
        for stone in ["slab", "top"] {
            for corner in printed.json[stone]["corners"].as_array().unwrap() {
                let name = words(&corner["name"]);
                let named = printed.first().iter().any(|t| t.words == name);
                assert!(named, "{}: corner {name} of the {stone}", printed.name);
            }
        }
    }
}
