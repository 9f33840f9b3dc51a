//! The desk as the world meets it: who is let in, what is refused, and that no save is lost. A plain
//! socket asks, so that it can ask what no browser would.

mod desk;

use std::fs;
use std::io::Read;
use std::net::TcpStream;
use std::time::Duration;

use serde_json::{Value, json};

use desk::{Desk, Said};

const TEA: &str = include_str!("../../examples/tea-counter.toml");

fn save(desk: &Desk, text: &str, version: &str) -> Said {
    desk.post("save", &json!({ "text": text, "version": version }))
}

fn look(desk: &Desk, text: &str, changes: &Value) -> Value {
    desk.post("look", &json!({ "text": text, "changes": changes }))
        .json()
}

#[test]
fn it_listens_on_this_machine_alone_under_a_token() {
    let [one, other] = [Desk::new(), Desk::new()];
    assert!(one.address.starts_with("http://127.0.0.1:"));
    assert_eq!(one.token.len(), 32);
    assert_ne!(one.token, other.token);
    let page = one.get("");
    assert_eq!(page.status, 200);
    assert!(page.head.contains("default-src 'none'"), "{}", page.head);
    assert!(page.body.starts_with("<!doctype html>"));
}

#[test]
fn without_the_token_there_is_nothing() {
    let desk = Desk::new();
    let wrong = "0".repeat(32);
    for path in [
        "/",
        "/form",
        "/favicon.ico",
        &format!("/{wrong}/"),
        &format!("/{wrong}/file"),
    ] {
        assert_eq!(desk.ask("GET", path, &[], "").status, 404, "{path}");
    }
}

#[test]
fn another_host_is_refused() {
    let desk = Desk::new();
    for host in [
        "example.org",
        "127.0.0.1",
        "127.0.0.1:1",
        "attacker.invalid:80",
    ] {
        let said = desk.ask_as(host, "GET", &desk.path("file"), &[], "");
        assert_eq!(said.status, 403, "{host}");
    }
    let own = format!("localhost:{}", desk.port);
    assert_eq!(
        desk.ask_as(&own, "GET", &desk.path("file"), &[], "").status,
        200
    );
}

#[test]
fn a_page_of_another_origin_is_refused_and_changes_nothing() {
    let desk = Desk::with(TEA);
    let body = json!({ "text": "", "version": desk.version() }).to_string();
    let own = format!("http://127.0.0.1:{}", desk.port);
    for origin in [
        "http://example.org",
        "null",
        "https://127.0.0.1",
        &own.replace("http", "https"),
    ] {
        let said = desk.ask("POST", &desk.path("save"), &[("Origin", origin)], &body);
        assert_eq!(said.status, 403, "{origin}");
    }
    let cross = [("Sec-Fetch-Site", "cross-site")];
    assert_eq!(
        desk.ask("POST", &desk.path("save"), &cross, &body).status,
        403
    );
    assert_eq!(desk.on_disk(), TEA);
    let said = desk.ask("POST", &desk.path("save"), &[("Origin", &own)], &body);
    assert_eq!(said.status, 200);
}

#[test]
fn no_other_file_is_read_or_written() {
    let desk = Desk::with(TEA);
    for what in [
        "../job.toml",
        "job.toml",
        "%2e%2e/job.toml",
        "page/desk.js",
        "/etc/passwd",
    ] {
        assert_eq!(desk.get(what).status, 404, "{what}");
        assert_eq!(desk.post(what, &json!({})).status, 404, "{what}");
    }
    assert_eq!(desk.files(), ["job.toml"]);
}

#[test]
fn a_longer_body_than_a_job_file_may_be_is_refused() {
    let desk = Desk::new();
    let longest = kerfwright::job::file::LONGEST_FILE;
    let announced = (longest + 1).to_string();
    let head = [("Content-Length", announced.as_str())];
    assert_eq!(desk.ask("POST", &desk.path("look"), &head, "").status, 413);
    let body = json!({ "text": "#".repeat(longest), "changes": [] }).to_string();
    assert_eq!(desk.ask("POST", &desk.path("look"), &[], &body).status, 413);
    // One that would take all of the memory is let go, and the desk goes on.
    let much = [("Content-Length", "9000000000000000000")];
    let _ = desk.ask_without_waiting("POST", &desk.path("look"), &much);
    assert_eq!(desk.get("file").status, 200);
}

#[test]
fn other_methods_and_other_bodies_are_refused() {
    let desk = Desk::new();
    for method in ["PUT", "DELETE", "OPTIONS"] {
        assert_eq!(
            desk.ask(method, &desk.path("file"), &[], "").status,
            405,
            "{method}"
        );
    }
    for body in ["", "[]", "{\"text\": 1}", "\u{0}"] {
        assert_eq!(
            desk.ask("POST", &desk.path("save"), &[], body).status,
            400,
            "{body:?}"
        );
    }
}

#[test]
fn the_older_save_is_refused() {
    let desk = Desk::with(TEA);
    let first = desk.version();
    let changed = TEA.replace("2150", "2100");
    let said = save(&desk, &changed, &first);
    assert_eq!(said.status, 200);
    assert_eq!(desk.on_disk(), changed);
    let older = save(&desk, &TEA.replace("2150", "2000"), &first);
    assert_eq!(older.status, 409);
    assert!(older.body.contains("nothing was written"), "{}", older.body);
    assert_eq!(desk.on_disk(), changed);
    let next = said.json()["version"].as_str().unwrap().to_owned();
    assert_eq!(save(&desk, TEA, &next).status, 200);
}

#[test]
fn a_file_that_an_editor_changed_is_not_written_over() {
    let desk = Desk::with(TEA);
    let version = desk.version();
    fs::write(desk.file(), "# mine\n").unwrap();
    assert_eq!(save(&desk, TEA, &version).status, 409);
    assert_eq!(desk.on_disk(), "# mine\n");
}

#[test]
fn a_new_file_is_written_by_the_first_save_and_by_no_second_first_one() {
    let desk = Desk::new();
    assert_eq!(desk.files(), Vec::<String>::new());
    let version = desk.version();
    assert_eq!(save(&desk, TEA, &version).status, 200);
    assert_eq!(desk.files(), ["job.toml"]);
    assert_eq!(save(&desk, "", &version).status, 409);
    assert_eq!(desk.on_disk(), TEA);
}

#[test]
fn changes_leave_the_rest_of_a_hand_written_file_as_it_is() {
    let desk = Desk::new();
    let changes = json!([
        { "at": ["top", "rectangle"], "to": ["2100", "640"] },
        { "at": ["disc", 0, "kerf"], "to": "2.4" },
        { "at": ["slab", "factory"], "to": ["AB"] },
        { "at": ["top", "round"], "to": { "2": "12 1/2 in", "3": "320" } },
        { "at": ["machine", "vibration", "k"], "to": null },
        { "at": ["machine", "noise"], "to": "101" },
    ]);
    let seen = look(&desk, TEA, &changes);
    let expected = TEA
        .replace("[2150, 640]", "[2100, 640]")
        .replace("kerf = 2.2 ", "kerf = 2.4 ")
        .replace("factory = [\"AB\", \"DA\"] ", "factory = [\"AB\"] ")
        .replace("{ 2 = 320, 3 = 320 }", "{ 2 = \"12 1/2 in\", 3 = 320 }")
        .replace("{ a = 6.2, k = 1.5 }", "{ a = 6.2 }")
        .replace("noise = 103", "noise = 101");
    assert_eq!(seen["text"], expected);
    assert_eq!(seen["values"]["disc"][0]["kerf"], "2.4");
}

#[test]
fn sections_are_added_and_taken_out() {
    let desk = Desk::new();
    let start = "[stone]\nkind = \"slate\" # from the shed\n";
    let changes = json!([
        { "at": ["slab", "flaw", 0], "to": {} },
        { "at": ["slab", "flaw", 0, "spot", "at"], "to": ["10", ""] },
        { "at": ["slab", "flaw", 1, "what"], "to": "crack" },
        { "at": ["job", "date"], "to": "2026-11-30" },
        { "at": ["dust", "mask_fit_tested"], "to": "true" },
    ]);
    let text = look(&desk, start, &changes)["text"]
        .as_str()
        .unwrap()
        .to_owned();
    let read: toml::Table = text.parse().unwrap();
    assert!(text.starts_with(start), "{text}");
    let expected = "
        [stone]
        kind = \"slate\"
        [slab]
        flaw = [{ spot = { at = [10, \"?\"] } }, { what = \"crack\" }]
        [job]
        date = 2026-11-30
        [dust]
        mask_fit_tested = true";
    assert_eq!(read, expected.parse::<toml::Table>().unwrap(), "{text}");
    let changes = json!([
        { "at": ["slab", "flaw", 0], "to": null },
        { "at": ["slab", "flaw", 0], "to": null },
    ]);
    let text = look(&desk, &text, &changes)["text"]
        .as_str()
        .unwrap()
        .to_owned();
    assert!(!text.contains("flaw"), "{text}");
}

#[test]
fn what_has_no_place_is_not_put_in() {
    let desk = Desk::new();
    for at in [
        json!(["colour"]),
        json!(["slab", 0]),
        json!([]),
        json!(["disc", 3, "kerf"]),
        json!(["stone", "kind", "x"]),
    ] {
        let body = json!({ "text": "", "changes": [{ "at": at, "to": "1" }] });
        assert_eq!(desk.post("look", &body).status, 422, "{at}");
    }
    let body =
        json!({ "text": "[stone\n", "changes": [{ "at": ["stone", "kind"], "to": "slate" }] });
    assert_eq!(desk.post("look", &body).status, 422);
}

#[test]
fn faults_come_in_the_words_of_check() {
    let desk = Desk::new();
    let text = TEA.replace("\"gabbro\"", "\"gabro\"");
    let seen = look(&desk, &text, &json!([]));
    assert_eq!(seen["outcome"], "faults");
    let said = &seen["said"][0];
    let faults = kerfwright::job::read(&text).unwrap_err();
    assert_eq!(said["message"], faults[0].message);
    assert_eq!(said["hint"], faults[0].hint);
    assert_eq!(
        (&said["key"], &said["line"]),
        (&json!("stone.kind"), &json!(16))
    );
}

#[test]
fn a_job_is_seen_with_its_drawing_and_what_clears_it() {
    let desk = Desk::new();
    let seen = look(&desk, TEA, &json!([]));
    assert_eq!(seen["outcome"], "fits");
    let drawing = seen["drawing"].as_str().unwrap();
    for part in ["top.1-2", "top.2", "top.1", "slab.AB", "slab.C"] {
        assert!(drawing.contains(&format!("data-part=\"{part}\"")), "{part}");
    }
    let keys = seen["open"]
        .as_array()
        .unwrap()
        .iter()
        .map(|point| point["key"].as_str());
    assert!(keys.flatten().any(|key| key == "lift.rated"), "{seen}");
    let small = look(
        &desk,
        &TEA.replace("[2150, 640]", "[2700, 640]"),
        &json!([]),
    );
    assert_eq!(small["outcome"], "miss");
    assert!(small["miss"].as_array().unwrap().len() > 1);
}

#[test]
fn the_sheet_and_its_annex_are_made_of_the_text() {
    let desk = Desk::new();
    for pages in ["bench", "annex"] {
        let body = format!(
            "paper=letter\r\npages={pages}\r\ntext={}\r\n",
            TEA.replace('\n', "\r\n")
        );
        let said = desk.ask("POST", &desk.path("sheet"), &[], &body);
        assert_eq!(said.status, 200);
        assert!(said.head.contains("application/pdf"), "{}", said.head);
        assert!(said.head.contains("filename=\"job.pdf\""), "{}", said.head);
        assert!(said.bytes.starts_with(b"%PDF-"));
    }
    let body = "paper=a4\r\npages=bench\r\ntext=[stone]\r\n";
    assert_eq!(desk.ask("POST", &desk.path("sheet"), &[], body).status, 422);
}

#[test]
fn a_drawing_beside_the_file_is_read_and_none_elsewhere() {
    let desk = Desk::new();
    let svg = include_str!("../shapes/drawings/counter.svg");
    fs::write(desk.file().with_file_name("counter.svg"), svg).unwrap();
    let text = "[stone]\nkind = \"slate\"\nthickness = 30\n[slab]\nrectangle = [3000, 1400]\n\
                [top]\nshape = \"counter.svg\"\n";
    assert_eq!(look(&desk, text, &json!([]))["outcome"], "fits");
    let body = format!("paper=a4\r\npages=bench\r\ntext={text}\r\n");
    let said = desk.ask("POST", &desk.path("sheet"), &[], &body);
    assert_eq!(said.status, 200, "{}", said.body);
    let outside = text.replace("counter.svg", "../counter.svg");
    let seen = look(&desk, &outside, &json!([]));
    assert_eq!(seen["said"][0]["key"], "top.shape", "{seen}");
}

#[test]
fn another_place_comes_with_what_fixes_it() {
    let desk = Desk::new();
    let found = desk.post("places", &json!({ "text": TEA })).json();
    let place = &found.as_array().unwrap()[0];
    assert!(place["drawing"].as_str().unwrap().starts_with("<svg "));
    let seen = look(&desk, TEA, &place["changes"]);
    assert_eq!(seen["outcome"], "fits");
    assert!(
        seen["values"]["place"]["at"].is_array(),
        "{}",
        seen["values"]
    );
}

/// Browsers open connections in case they will need them, and keep others.
#[test]
fn silent_connections_hold_up_no_other() {
    let desk = Desk::new();
    let open = |_| TcpStream::connect(("127.0.0.1", desk.port)).unwrap();
    let silent: Vec<_> = (0..12).map(open).collect();
    let ask = |_| desk.ask_without_waiting("GET", &desk.path("desk.css"), &[]);
    let asked: Vec<_> = (0..12).map(ask).collect();
    for mut stream in asked {
        let patience = Duration::from_secs(20);
        stream.set_read_timeout(Some(patience)).unwrap();
        let mut head = [0; 12];
        stream.read_exact(&mut head).unwrap();
        assert_eq!(&head, b"HTTP/1.1 200");
    }
    drop(silent);
}

#[test]
fn it_ends_from_the_page() {
    let mut desk = Desk::new();
    assert_eq!(desk.post("end", &json!({})).status, 200);
    assert!(desk.ended().success());
}
