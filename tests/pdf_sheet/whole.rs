//! Nothing of the plan is left out of the sheet.

use std::collections::BTreeSet;

use kerfwright::sheet::figure::{Figures, angle};
use kerfwright::tables::{Source, Sure};
use kerfwright::units::LengthUnit;
use serde_json::Value;

use crate::{PRINTED, Printed, number, sentence, squeezed, squeezed_page, words};

fn tape(printed: &Printed, mm: f64) -> String {
    let units = match words(&printed.json["job"]["units"]) {
        "in" => LengthUnit::Inch,
        _ => LengthUnit::Millimetre,
    };
    Figures { units }.tape_bare(mm)
}

/// Asserts that a page holds words one after another, whatever lies between them.
fn holds_in_order(printed: &Printed, page: &str, parts: &[String]) {
    let text = printed.squeezed(page);
    let mut from = 0;
    for part in parts {
        let at = text[from..].find(&squeezed(part));
        let place = at.unwrap_or_else(|| {
            panic!(
                "{}, {page}: {part:?} of {parts:?} is not in {text}",
                printed.name
            )
        });
        from += place + squeezed(part).len();
    }
}

/// Asserts that a page holds some words.
fn holds(printed: &Printed, page: &str, part: &str) {
    holds_in_order(printed, page, &[part.to_owned()]);
}

/// Every straight cut, those of openings too.
fn all_straight(printed: &Printed) -> impl Iterator<Item = &Value> {
    let cuts = printed.list("cuts").iter();
    cuts.filter(|c| words(&c["kind"]) == "straight")
}

/// The cuts of a kind that have pages of their own: those of an opening share its pages.
fn cuts<'p>(printed: &'p Printed, kind: &'static str) -> impl Iterator<Item = &'p Value> {
    let cuts = printed.list("cuts").iter();
    cuts.filter(move |c| words(&c["kind"]) == kind && c["cutout"].is_null())
}

fn depths(cut: &Value) -> Vec<String> {
    let passes = cut["passes"].as_array().unwrap().iter();
    passes
        .map(|p| format!("{:.1}", number(&p["depth"])))
        .collect()
}

#[test]
fn each_straight_cut_has_a_card_with_every_depth() {
    for printed in PRINTED.iter() {
        for cut in cuts(printed, "straight") {
            let page = format!("Cut {}: straight", cut["number"]);
            holds(printed, &page, words(&cut["edge"]));
            holds(printed, &page, words(&cut["disc"]["name"]));
            holds_in_order(printed, &page, &depths(cut));
            for freed in cut["frees"].as_array().unwrap() {
                holds(printed, &page, &format!("{} (up to", words(freed)));
            }
        }
    }
}

#[test]
fn the_pages_of_an_opening_hold_its_cuts_with_their_depths_its_holes_and_what_comes_free() {
    let mut openings = 0;
    for printed in PRINTED.iter() {
        for cut in printed.list("cuts") {
            let Some(opening) = cut["cutout"].as_u64() else {
                continue;
            };
            openings += 1;
            let page = format!("Cutout {opening}");
            if words(&cut["kind"]) == "straight" {
                holds_in_order(printed, &page, &depths(cut));
                let disc = words(&cut["disc"]["name"]);
                assert!(!disc.is_empty(), "{page} of {}", printed.name);
                holds(printed, &page, disc);
            }
            let holes = cut["holes"].as_array().unwrap();
            for (i, mark) in holes.iter().enumerate() {
                let name = format!("{}h{}", cut["number"], i + 1);
                let across = [0, 1].map(|axis| tape(printed, number(&mark["at"][axis])));
                holds_in_order(
                    printed,
                    &page,
                    &[name, across[0].clone(), across[1].clone()],
                );
            }
            for freed in cut["frees"].as_array().unwrap() {
                holds(printed, &page, &format!("{} (up to", words(freed)));
            }
        }
    }
    assert!(openings > 4, "{openings}");
}

#[test]
fn every_mark_and_tie_of_a_straight_cut_is_set_out() {
    for printed in PRINTED.iter() {
        for cut in all_straight(printed) {
            let page = cut["cutout"]
                .as_u64()
                .map_or("Set-out".to_owned(), |n| format!("Cutout {n}"));
            let set_out = &cut["set_out"]["guide"];
            for (line, names) in [("face", ["a", "b"]), ("guide", ["c", "d"])] {
                let line = &set_out[line];
                for (end, letter) in ["start", "end"].into_iter().zip(names) {
                    let mark = &line[end];
                    let tie = &mark["tie"];
                    let row = [
                        format!("{}{letter}", cut["number"]),
                        words(&mark["on"]).to_owned(),
                        words(&tie["corner"]).to_owned(),
                        tape(printed, number(&tie["distance"])),
                    ];
                    holds_in_order(printed, &page, &row);
                }
                let check = &line["check"];
                let check = format!(
                    "{}: {}",
                    words(&check["corner"]),
                    tape(printed, number(&check["distance"]))
                );
                holds(printed, &page, &check);
            }
        }
    }
}

/// How a curve is set out: about its pivot, or from its chord.
fn set_out(cut: &Value) -> (&Value, bool) {
    let by_arm = &cut["set_out"]["pivot"];
    if by_arm.is_null() {
        (&cut["set_out"]["ordinates"], false)
    } else {
        (by_arm, true)
    }
}

/// A distance from a chord as the sheet prints it, with a proper minus sign.
fn ordinate(printed: &Printed, at: &Value) -> [String; 2] {
    ["along", "off"].map(|key| tape(printed, number(&at[key])).replace('-', "−"))
}

#[test]
fn every_station_of_every_curve_is_on_its_page() {
    for printed in PRINTED.iter() {
        for cut in cuts(printed, "curve") {
            let page = format!("Cut {}: curve", cut["number"]);
            let (set_out, by_arm) = set_out(cut);
            let mut rows = Vec::new();
            let stations = set_out["stations"].as_array().unwrap();
            for (i, station) in stations.iter().enumerate() {
                let live = station["in_stone"] == Value::Bool(true);
                if !by_arm {
                    let name = station["number"].to_string();
                    rows.push(if live { name } else { format!("({name})") });
                    let marks = &set_out["marks"][i];
                    rows.extend(ordinate(printed, &marks["touch"]));
                    for guide in marks["guide"].as_array().unwrap() {
                        rows.extend(ordinate(printed, guide));
                    }
                    continue;
                }
                rows.push(station["number"].to_string());
                rows.push(angle(number(&station["angle"]).to_radians()));
                for axis in [0, 1] {
                    rows.push(tape(printed, number(&station["touch"][axis])));
                }
                if !live {
                    rows.push("already cut".into());
                }
            }
            holds_in_order(printed, &page, &rows);
            holds_in_order(printed, &page, &depths(cut));
            let length = if by_arm { "arm" } else { "chord_length" };
            holds(printed, &page, &tape(printed, number(&set_out[length])));
        }
    }
}

/// From more stations than this on not every one is named in the drawing.
const MANY_STATIONS: usize = 24;

/// The words in the drawing of a page: all that stands above a label that follows the drawing.
fn in_drawing<'p>(printed: &'p Printed, page: &str, below: &str) -> Vec<&'p str> {
    let texts = &printed.pages.iter().find(|p| p.0 == page).unwrap().1;
    let end = texts.iter().find(|t| t.words == below).unwrap().y;
    let drawing = texts.iter().filter(|t| t.y > end + 0.1);
    drawing.map(|t| t.words.as_str()).collect()
}

#[test]
fn every_mark_and_station_is_named_in_its_drawing() {
    let mut missing = Vec::new();
    for printed in PRINTED.iter() {
        let own_page = |c: &&Value| c["cutout"].is_null() && words(&c["kind"]) != "core";
        for cut in printed.list("cuts").iter().filter(own_page) {
            let kind = words(&cut["kind"]).replace("relief", "straight");
            let number = &cut["number"];
            let page = format!("Cut {number}: {kind}");
            let drawn = in_drawing(printed, &page, "Disc");
            let set_out = in_drawing(printed, "Set-out", "Marks on the edges of the slab");
            let marks = ["a", "b", "c", "d"].map(|letter| format!("{number}{letter}"));
            let (names, marks) = if kind == "straight" {
                (marks.to_vec(), marks.to_vec())
            } else {
                let (curve, by_arm) = self::set_out(cut);
                let stations = curve["stations"].as_array().unwrap();
                let count = stations.len();
                let named = |i: usize| drawn.contains(&stations[i]["number"].to_string().as_str());
                // Many stations are named by every second or fifth, all of them in the table.
                let every = match count {
                    ..=MANY_STATIONS => 1,
                    _ => (1..count).find(|i| named(*i)).unwrap_or(count),
                };
                assert!([1, 2, 5, 10, 20].contains(&every), "{every} of {count}");
                let numbers = (0..count).filter(|i| i % every == 0 || i + 1 == count);
                let numbers = numbers.map(|i| stations[i]["number"].to_string());
                let points: &[&str] = if by_arm { &["p"] } else { &["e", "f"] };
                let points = points.iter().map(|letter| format!("{number}{letter}"));
                (numbers.collect(), points.collect())
            };
            let mut lacks = |names: &[String], place: &str, drawn: &[&str]| {
                let absent = names.iter().filter(|n| !drawn.contains(&n.as_str()));
                missing.extend(absent.map(|n| format!("{}, {place}: {n}", printed.name)));
            };
            lacks(&names, &page, &drawn);
            lacks(&marks, "Set-out", &set_out);
        }
    }
    assert!(missing.is_empty(), "\n{}", missing.join("\n"));
}

#[test]
fn the_step_between_stations_is_the_plans() {
    for printed in PRINTED.iter() {
        for cut in cuts(printed, "curve") {
            let page = format!("Cut {}: curve", cut["number"]);
            let step = number(&set_out(cut).0["step"]);
            holds(
                printed,
                &page,
                &format!("{} apart", angle(step.to_radians())),
            );
        }
    }
}

/// The card says "from mark 2a": from there on, along the line, the guide's settings must lie beside
/// all that is sawn.
#[test]
fn the_settings_of_a_short_guide_lie_beside_all_that_is_sawn() {
    let mut wrong = Vec::new();
    let mut ends = BTreeSet::new();
    for printed in PRINTED.iter() {
        for cut in all_straight(printed) {
            let set_out = &cut["set_out"]["guide"];
            let settings = set_out["set_ups"].as_array().unwrap();
            if settings.len() < 2 {
                continue;
            }
            let place = |point: &Value| (number(&point[0]), number(&point[1]));
            let sawn = [place(&set_out["sawn"][0]), place(&set_out["sawn"][1])];
            let mark = |end: &str| place(&set_out["face"][end]["at"]);
            let end = words(&set_out["set_ups_from"]);
            ends.insert(end.to_owned());
            let (from, towards) = match end {
                "start" => (mark("start"), sawn[1]),
                "end" => (mark("end"), sawn[0]),
                "stone_at_start" | "stop_at_start" => (sawn[0], sawn[1]),
                "stone_at_end" => (sawn[1], sawn[0]),
                other => panic!("{other}"),
            };
            let way = (towards.0 - from.0, towards.1 - from.1);
            let length = way.0.hypot(way.1);
            let along = |p: (f64, f64)| ((p.0 - from.0) * way.0 + (p.1 - from.1) * way.1) / length;
            let strokes = cut["strokes"].as_array().unwrap().iter();
            let centres = strokes.flat_map(|s| [along(place(&s["from"])), along(place(&s["to"]))]);
            // Half a kerf across, and the slant of the edge.
            let slant = 10.0;
            let held = |at: f64| {
                let beside =
                    |s: &Value| number(&s["from"]) - slant <= at && at <= number(&s["to"]) + slant;
                settings.iter().any(beside)
            };
            let last = settings
                .iter()
                .map(|s| number(&s["to"]))
                .fold(0.0, f64::max);
            let number = &cut["number"];
            if centres.into_iter().any(|at| !held(at)) || (last - length).abs() > slant {
                wrong.push(format!(
                    "{}, cut {number}, from {end}: {settings:?}",
                    printed.name
                ));
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
    assert!(ends.len() > 2, "only {ends:?} are looked at");
}

#[test]
fn every_pivot_is_set_out_by_its_ties() {
    for printed in PRINTED.iter() {
        for cut in cuts(printed, "curve") {
            let (curve, by_arm) = set_out(cut);
            let points = if by_arm {
                vec![("p", &curve["pivot"], &curve["pivot_ties"])]
            } else {
                let end = |letter, key: &str| (letter, &curve[key]["at"], &curve[key]["ties"]);
                vec![end("e", "from"), end("f", "to")]
            };
            for (letter, at, ties) in points {
                let mut row = vec![format!("{}{letter}", cut["number"])];
                row.extend([0, 1].map(|axis| tape(printed, number(&at[axis]))));
                for tie in ties.as_array().unwrap() {
                    let distance = tape(printed, number(&tie["distance"]));
                    row.push(format!("{}: {distance}", words(&tie["corner"])));
                }
                holds_in_order(printed, "Set-out", &row);
            }
        }
    }
}

#[test]
fn every_piece_is_in_the_table_of_weights() {
    for printed in PRINTED.iter() {
        for piece in printed.list("pieces") {
            let row = [
                words(&piece["name"]).to_owned(),
                format!("cut {}", piece["after_cut"]),
                kerfwright::sheet::figure::area(number(&piece["area_mm2"])),
            ];
            holds_in_order(printed, "Pieces and weights", &row);
        }
    }
}

#[test]
fn every_stop_is_on_page_1() {
    for printed in PRINTED.iter() {
        let first = squeezed_page(printed.first());
        for stop in printed.list("stops") {
            let title = squeezed(&sentence(words(&stop["title"])));
            assert!(first.contains(&title), "{}: {title}", printed.name);
        }
        let count = printed.list("stops").len();
        assert_eq!(first.contains("standagainst"), count > 1);
        assert_eq!(first.contains("standsagainst"), count == 1);
        let glance = printed.squeezed("At a glance");
        assert_eq!(glance.contains("foundnostop"), count == 0);
        // Whoever takes a card to the bench sees that a stop stands.
        for cut in printed.list("cuts") {
            let name = format!("Cut {}: {}", cut["number"], words(&cut["kind"]));
            let page = printed.squeezed(&name);
            assert_eq!(page.contains("Donotcut."), count > 0, "{name}");
        }
    }
}

#[test]
fn every_stop_and_caution_is_told_in_full_with_its_source() {
    for printed in PRINTED.iter() {
        for (list, page) in [("stops", "At a glance"), ("cautions", "Dust and safety")] {
            for finding in printed.list(list) {
                let told = [
                    sentence(words(&finding["title"])),
                    words(&finding["detail"]).to_owned(),
                    format!("Source: {}", words(&finding["source"])),
                ];
                holds_in_order(printed, page, &told);
            }
        }
    }
}

#[test]
fn everything_assumed_is_on_the_last_pages() {
    for printed in PRINTED.iter() {
        for assumed in printed.list("assumed") {
            let row = ["key", "value", "why"].map(|key| words(&assumed[key]).to_owned());
            holds_in_order(printed, "Sources and assumptions", &row);
        }
    }
}

/// A source as the sheet prints it, from the plan's own data.
fn cite(source: &Value) -> String {
    let sure = match words(&source["sure"]) {
        "read" => Sure::Read,
        "quoted" => Sure::Quoted,
        "computed" => Sure::Computed,
        "memory" => Sure::Memory,
        "practice" => Sure::Practice,
        "judgement" => Sure::Judgement,
        other => panic!("{other}"),
    };
    let leak = |key: &str| -> &'static str { words(&source[key]).to_owned().leak() };
    let year = source["year"].as_u64().and_then(|y| u16::try_from(y).ok());
    Source::new(
        leak("what"),
        leak("document"),
        leak("clause"),
        year.expect("a year"),
        sure,
    )
    .cite()
}

#[test]
fn every_source_is_on_the_last_pages() {
    for printed in PRINTED.iter() {
        assert!(!printed.list("sources").is_empty());
        for source in printed.list("sources") {
            let row = [sentence(words(&source["what"])), cite(source)];
            holds_in_order(printed, "Sources and assumptions", &row);
        }
    }
}
