//! The commands that list and explain.

use std::process::{Command, Output};

use kerfwright::cli::{explain, hazards};
use kerfwright::hazard::registry::{all, find};

fn run(arguments: &[&str]) -> (String, String, Option<i32>) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_kerfwright"));
    let Output {
        stdout,
        stderr,
        status,
    } = command.args(arguments).output().expect("it runs");
    let text = |bytes| String::from_utf8(bytes).expect("UTF-8");
    (text(stdout), text(stderr), status.code())
}

#[test]
fn the_list_has_one_line_for_each_record() {
    let (said, _, code) = run(&["hazards"]);
    assert_eq!(code, Some(0));
    assert_eq!(said, hazards::list());
    for record in all() {
        let lines = said.lines().filter(|line| {
            let mut words = line.split_whitespace();
            words.next() == Some(record.id) && line.ends_with(record.title)
        });
        assert_eq!(lines.count(), 1, "{}", record.id);
    }
}

#[test]
fn every_record_is_explained_in_full() {
    for record in all() {
        let words = explain::words(record, record.id);
        let flat = words.split_whitespace().collect::<Vec<_>>().join(" ");
        let squeezed = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        for part in [record.title, record.what, record.why, record.what_to_do] {
            assert!(flat.contains(&squeezed(part)), "{}: {part}", record.id);
        }
        for source in record.sources {
            assert!(flat.contains(source.sure.words()), "{}", record.id);
        }
        assert!(
            words
                .lines()
                .skip(1)
                .all(|line| line.chars().count() <= 100)
        );
    }
}

#[test]
fn worked_examples_are_the_published_ones() {
    // Each with its source beside it; the number is computed when it is printed.
    let published = [
        // ISO 5349-2:2001 E.3 (Q).
        ("a8", "3.6 m/s²"),
        // HSE ready-reckoner (R).
        ("vibration-points", "150 points"),
        // HSE stonemasonry Table 1 (R), computed (C).
        ("vibration-time", "37 min, limit after 148 min"),
        // 29 CFR 1910.95 App. A (R).
        ("osha-dose", "112.5 %, TWA 90.85 dBA"),
        // NIOSH (R).
        ("niosh-minutes", "15 minutes"),
        // 29 CFR 1910.1000(d) (R).
        ("twa", "81.25"),
        ("mixture", "0.925"),
        // 29 CFR 1910.134(b) (R).
        (
            "maximum-use-concentration",
            "0.5; factor 25: 1.25; factor 50: 2.5",
        ),
        // 125 mm at 80 m/s (C).
        ("rim-speed", "12223"),
        // 25 cfm an inch (R), m³/h (C).
        ("shroud-airflow", "212 m³/h"),
        // HSE L23 (R/Q): 26.6 printed from 2/3 cut off, 26.7 in full; 75.
        ("team-factor", "26.7 kg; 75 kg"),
        // NIOSH 94-110, example 4, in full precision.
        ("niosh-lifting", "34.81 lb"),
        // A trade forum (Q): 54, 29, -4, 21, in another order of the corners.
        ("shares", "-4.2, 29.2, 54.2, 20.8 t if they could pull"),
        // Gere, 5.6-18 (R).
        ("bending", "7.50 MPa"),
        // 54.0 at 20 mm, 81.0 at 30 mm (C).
        ("area-mass", "81.0 kg/m²"),
        // A help page with printed examples (Q): SNR 28 at 97 dB(C); H 30 M 24 L 22.
        ("snr", "69 dB(A) at the ear, in Britain 73"),
        ("hml", "72.25 dB(A) at the ear, in Britain 76.25"),
    ];
    for (id, number) in published {
        let record = find(id).unwrap_or_else(|| panic!("{id} is not there"));
        let example = record
            .example
            .unwrap_or_else(|| panic!("{id} has no example"));
        assert!(example().result.contains(number), "{id}: {:?}", example());
    }
}

#[test]
fn a_finding_is_explained_by_its_hazard() {
    let (said, _, code) = run(&["explain", "noise-over-limit"]);
    assert_eq!(code, Some(0));
    assert!(said.starts_with("Noise [noise], a hazard"));
    assert!(said.contains("[noise-over-limit]") && !said.contains("[noise-unknown]"));
}

#[test]
fn an_unknown_id_names_the_nearest_and_ends_with_1() {
    for (asked, nearest) in [
        ("kickbak", "kickback-pinched-disc"),
        ("wet-flor", "wet-floor"),
        ("Vibrations", "vibration"),
        ("asbestos", "asbestos-minerals"),
    ] {
        let (out, said, code) = run(&["explain", asked]);
        assert_eq!((out.as_str(), code), ("", Some(1)));
        assert!(said.contains(asked) && said.contains(nearest), "{said}");
    }
}
