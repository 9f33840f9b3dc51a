//! `[route]` and the aid's sizes in the job file.

use kerfwright::diag::Severity;
use kerfwright::job::{self, ClearSize};
use kerfwright::units::Mass;

use crate::fixtures::{LEAST, close, job};

const WAY: &str = "\
[[route.corner]]
from = \"1.1 m\"
to = 950
height = \"90 1/2 in\"
[[route.door]]
what = \"yard gate\"
width = 900
height = 2000
[[route.corner]]
what = \"landing\"
from = 900
to = 880
height = 2300
[[route.door]]
width = 800
height = 1980
";

#[test]
fn places_stand_in_the_order_of_the_file() {
    let job = job(WAY);
    let names: Vec<&str> = job
        .route
        .obstacles
        .iter()
        .map(|o| o.what.as_str())
        .collect();
    assert_eq!(names, ["corner 1", "yard gate", "landing", "door 2"]);
    let ClearSize::Corner {
        from_mm,
        to_mm,
        height_mm,
    } = job.route.obstacles[0].opening
    else {
        panic!("{:?}", job.route.obstacles[0]);
    };
    assert_eq!((from_mm, to_mm), (1100.0, 950.0));
    close(height_mm, 2298.7, 1e-9);
    let assumed = |key: &str| job.assumed.iter().any(|a| a.key == key);
    assert!(
        ["route.room", "route.raise", "route.spare"]
            .into_iter()
            .all(assumed)
    );
}

#[test]
fn nothing_is_said_to_be_unused_and_nothing_assumed_without_a_way() {
    let (_, remarks) = job::read(&format!("{LEAST}{WAY}")).unwrap();
    assert!(remarks.is_empty(), "{remarks:?}");
    let bare = job("");
    assert!(bare.route.obstacles.is_empty());
    let of_the_way = |key: &str| key.starts_with("route") || key.starts_with("lift.trolley");
    assert!(bare.assumed.iter().all(|a| !of_the_way(&a.key)));
}

#[test]
fn a_trolley_brings_its_sizes_and_raises_the_stone() {
    let with = job(&format!(
        "{WAY}[lift]\naid = \"trolley\"\ntrolley_deck = 210\nrated = \"300 kg\"\n"
    ));
    assert_eq!(with.route.raise_mm, 210.0);
    assert_eq!(with.lift.rated, Some(Mass::from_kg(300.0)));
    assert_eq!(with.lift.trolley.track_mm, 400.0);
    let assumed = |key: &str| with.assumed.iter().any(|a| a.key == key);
    assert!(assumed("lift.trolley_track") && !assumed("lift.trolley_deck"));
    let by_hand = job(&format!("{WAY}[route]\nroom = 60\nraise = 50\nspare = 5\n"));
    let r = &by_hand.route;
    assert_eq!((r.room_mm, r.raise_mm, r.spare_mm), (60.0, 50.0, 5.0));
}

#[test]
fn faults_are_all_told_with_their_keys() {
    let bad = "[lift]\naid = \"trolley\"\ntrolley_track = 5\nrated = \"1 kg\"\n\
               [[route.door]]\nwidth = 10\n[[route.corner]]\nfrom = 900\nheight = \"tall\"\nturn = 3\n";
    let faults = job::read(&format!("{LEAST}{bad}")).unwrap_err();
    let keys: Vec<&str> = faults.iter().map(|f| f.key.as_str()).collect();
    for key in [
        "lift.trolley_track",
        "lift.rated",
        "route.door[0].width",
        "route.door[0].height",
        "route.corner[0].to",
        "route.corner[0].height",
        "route.corner[0].turn",
    ] {
        assert!(keys.contains(&key), "{key} in {keys:?}");
    }
}

#[test]
fn a_mark_on_no_aid_is_remarked() {
    let (_, remarks) = job::read(&format!("{LEAST}[lift]\nrated = \"300 kg\"\n")).unwrap();
    let [remark] = &remarks[..] else {
        panic!("{remarks:?}")
    };
    assert_eq!(
        (remark.key.as_str(), remark.severity),
        ("lift.rated", Severity::Remark)
    );
}
