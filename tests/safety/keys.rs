//! The keys of the job file that safety adds: `[protector]`, `[[today]]`, marks, bore, bond, steel,
//! water.

use kerfwright::job::{self, Bond, Dusty, EarKind, Job, Protector, Respirator, Steel};
use kerfwright::tables::respirator::MaskClass;

const START: &str = "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [900, 700]\n\
                     [top]\nrectangle = [600, 500]\n";

fn read(more: &str) -> Job {
    let text = format!("{START}{more}");
    job::read(&text)
        .unwrap_or_else(|faults| panic!("{more}: {faults:?}"))
        .0
}

/// The keys at fault.
fn faults(more: &str) -> Vec<String> {
    let read = job::read(&format!("{START}{more}"));
    let faults = read.expect_err("it is at fault");
    faults.into_iter().map(|fault| fault.key).collect()
}

#[test]
fn a_protector_is_read_by_what_is_printed_on_it() {
    assert_eq!(read("").protector, Protector::Unknown);
    assert_eq!(
        read("[protector]\nsnr = 30\n").protector,
        Protector::Snr(30.0)
    );
    let hml = Protector::Hml {
        h: 32.0,
        m: 29.0,
        l: 23.0,
    };
    assert_eq!(read("[protector]\nh = 32\nm = 29\nl = 23\n").protector, hml);
    let nrr = |kind| Protector::Nrr { nrr: 25.0, kind };
    assert_eq!(
        read("[protector]\nnrr = 25\nkind = \"muffs\"\n").protector,
        nrr(EarKind::Muffs)
    );
    // The kind that loses most of its rating is assumed, and said.
    let job = read("[protector]\nnrr = \"25 dB\"\n");
    assert_eq!(job.protector, nrr(EarKind::OtherPlugs));
    assert!(job.assumed.iter().any(|a| a.key == "protector.kind"));
}

#[test]
fn a_protector_has_one_rating_and_h_m_l_stand_together() {
    assert_eq!(
        faults("[protector]\nsnr = 30\nnrr = 25\n"),
        ["protector.nrr"]
    );
    assert_eq!(faults("[protector]\nsnr = 30\nm = 25\n"), ["protector.m"]);
    assert_eq!(faults("[protector]\nh = 30\nl = 20\n"), ["protector.h"]);
    assert_eq!(faults("[protector]\nsnr = 60\n"), ["protector.snr"]);
    assert_eq!(
        faults("[protector]\nkind = \"ears\"\nnrr = 20\n"),
        ["protector.kind"]
    );
}

#[test]
fn other_work_of_the_day_takes_what_is_left_open_from_the_machine() {
    let more = "[machine]\nvibration = { a = 6, k = 1 }\nnoise = 100\n\
                [[today]]\nwhat = \"breaking\"\nminutes = 30\na = 12\nk = 2\nnoise = 98\ndusty = false\n\
                [[today]]\nminutes = \"1 h\"\n";
    let job = read(more);
    let [breaking, other] = &job.today[..] else {
        panic!("{:?}", job.today)
    };
    assert_eq!(
        (breaking.what.as_str(), breaking.minutes),
        ("breaking", 30.0)
    );
    assert_eq!((breaking.vibration.a, breaking.vibration.k), (12.0, 2.0));
    assert_eq!((breaking.noise_db, breaking.dusty), (98.0, Dusty::Clean));
    assert_eq!((other.minutes, other.vibration.a), (60.0, 6.0));
    // 40 % where no uncertainty is stated.
    assert!((other.vibration.k - 2.4).abs() < 1e-12);
    assert_eq!((other.noise_db, other.dusty), (100.0, Dusty::Dusty));
    for key in [
        "today[1].a",
        "today[1].k",
        "today[1].noise",
        "today[1].dusty",
    ] {
        assert!(job.assumed.iter().any(|a| a.key == key), "{key}");
    }
    assert_eq!(faults("[[today]]\na = 3\n"), ["today[0].minutes"]);
}

#[test]
fn class_marks_of_powered_respirators_are_read() {
    for (word, respirator) in [
        ("th1", Respirator::Mask(MaskClass::Th1)),
        ("th2", Respirator::Mask(MaskClass::Th2)),
        ("th3", Respirator::Mask(MaskClass::Th3)),
        ("tm1", Respirator::Mask(MaskClass::Tm1)),
        ("tm2", Respirator::Mask(MaskClass::Tm2)),
        ("tm3", Respirator::Mask(MaskClass::Tm3)),
        ("powered-hood", Respirator::Mask(MaskClass::PoweredHood)),
        ("powered-mask", Respirator::Mask(MaskClass::PoweredMask)),
        (
            "powered-half-mask",
            Respirator::Mask(MaskClass::PoweredHalfMask),
        ),
        (
            "powered-full-face",
            Respirator::Mask(MaskClass::PoweredFullFace),
        ),
        ("nuisance-mask", Respirator::Nuisance),
    ] {
        let more = format!("[dust]\nmethod = \"water\"\nrespirator = \"{word}\"\n");
        assert_eq!(read(&more).dust.respirator, respirator);
    }
}

#[test]
fn water_is_for_wet_cutting_only() {
    assert_eq!(read("[dust]\nmethod = \"water\"\n").dust.water_l_min, 0.5);
    assert_eq!(
        read("[dust]\nmethod = \"water\"\nwater = 1.2\n")
            .dust
            .water_l_min,
        1.2
    );
    let shroud = read("[dust]\nmethod = \"shroud\"\nairflow = 300\nwater = 1.2\n");
    assert_eq!(shroud.dust.water_l_min, 0.0);
}

#[test]
fn bore_bond_and_last_day_of_a_disc() {
    let disc = |more: &str| read(&format!("[[disc]]\ndiameter = 125\n{more}")).discs[0].clone();
    assert_eq!((disc("").bore, disc("").bond), (22.23, Bond::Diamond));
    assert_eq!(disc("bore = 22.2\n").bore, 22.2);
    let resin = |expires: &str| Bond::Resin {
        expires: expires.into(),
    };
    assert_eq!(disc("bond = \"resin\"\n").bond, resin(""));
    let dated = disc("bond = \"resin\"\nexpires = 2027-03-31\n");
    assert_eq!(dated.bond, resin("2027-03-31"));
    assert_eq!(faults("[[disc]]\nbond = \"glue\"\n"), ["disc[0].bond"]);
    // A last day on a diamond disc: more likely the bond was forgotten.
    let undecided = "[[disc]]\nexpires = 2027-03-31\n";
    assert_eq!(faults(undecided), ["disc[0].expires"]);
}

#[test]
fn steel_is_not_known_until_somebody_looked() {
    assert_eq!(read("").stone.steel, Steel::Unknown);
    let looked = START.replace("thickness = 30\n", "thickness = 30\nsteel = \"none\"\n");
    let (job, _) = job::read(&looked).expect("no faults");
    assert_eq!(job.stone.steel, Steel::None);
}
