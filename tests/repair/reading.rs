//! The keys of `[as_cut]`.

use kerfwright::job;

use super::counter;

fn refused(as_cut: &str, what: &str) {
    let text = counter(as_cut);
    let faults = job::read(&text).expect_err("a fault");
    assert!(
        faults.iter().any(|f| f.message.contains(what)),
        "no \"{what}\" in {faults:#?}"
    );
}

#[test]
fn faults_name_what_is_wrong() {
    refused("[as_cut]\ndone = [\"1-7\"]\n", "there is no such edge");
    refused("[as_cut]\ndone = [1]\n", "a sharp corner");
    refused(
        "[as_cut]\n[[as_cut.edge]]\nedge = \"1-2\"\n",
        "short is missing",
    );
    refused(
        "[as_cut]\n[[as_cut.edge]]\nedge = \"1-2\"\nshort = 1\nover = 1\n",
        "stands beside `short`",
    );
    refused(
        "[as_cut]\n[[as_cut.arc]]\ncorner = 2\n",
        "radius is missing",
    );
    refused(
        "[as_cut]\n[[as_cut.chip]]\nat = [700, 300]\ndeep = 3\nacross = 9\n",
        "from the nearest edge",
    );
    refused("[as_cut]\nfinished = true\n", "is not a known key");
}

#[test]
fn cuts_that_cannot_be_followed() {
    let before = super::after(&counter("[as_cut]\ndone = [2]\n")).expect_err("trims come first");
    assert!(before.reasons[0].id == "repair-trims-first", "{before:?}");
}
