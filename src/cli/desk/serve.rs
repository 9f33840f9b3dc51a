//! What is asked of the desk, and the answers.

use std::net::TcpListener;
use std::sync::mpsc::{self, Sender};
use std::thread;

use serde::{Deserialize, Serialize};
use serde_json::json;

use super::door::{Asked, Door, Refusal};
use super::edit::{self, Change, EditFault};
use super::file::{OneFile, SaveFault};
use super::http::{self, Request};
use super::{form, look, others};
use crate::cli::sheet;

/// The page: its files by name, with their types. All of them are part of the program.
const PAGE: [(&str, &str, &str); 7] = [
    ("", "text/html", include_str!("page/index.html")),
    ("desk.css", "text/css", include_str!("page/desk.css")),
    ("desk.js", JS, include_str!("page/desk.js")),
    ("form.js", JS, include_str!("page/form.js")),
    ("fields.js", JS, include_str!("page/fields.js")),
    ("drawing.js", JS, include_str!("page/drawing.js")),
    ("under.js", JS, include_str!("page/under.js")),
];
const JS: &str = "text/javascript";

/// Headers of every answer: the page loads nothing from elsewhere, nothing else may hold it in a frame,
/// and no cache keeps what is in the file.
const HEADERS: [(&str, &str); 5] = [
    (
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:; connect-src 'self'; \
         form-action 'self'; frame-ancestors 'none'; base-uri 'none'",
    ),
    ("X-Content-Type-Options", "nosniff"),
    ("Cross-Origin-Resource-Policy", "same-origin"),
    ("Referrer-Policy", "same-origin"),
    ("Cache-Control", "no-store"),
];

/// A desk at work.
struct Desk {
    door: Door,
    file: OneFile,
    end: Sender<()>,
}

/// An answer: its status, its type, what it holds, and a name to keep it under.
struct Answer {
    status: u16,
    kind: &'static str,
    bytes: Vec<u8>,
    name: Option<String>,
}

#[derive(Deserialize)]
struct ToLook {
    text: String,
    changes: Vec<Change>,
    #[serde(default)]
    room_mm: f64,
}

#[derive(Deserialize)]
struct ToSave {
    text: String,
    version: String,
}

#[derive(Deserialize)]
struct ToPlace {
    text: String,
    #[serde(default)]
    room_mm: f64,
}

/// Answers until the page ends it.
pub(super) fn serve(listener: TcpListener, door: Door, file: OneFile) {
    let (end, ended) = mpsc::channel();
    let desk = Desk { door, file, end };
    thread::spawn(move || http::listen(&listener, move |request| desk.answer(request)));
    let _ = ended.recv();
}

impl Desk {
    fn answer(&self, mut request: Request) {
        let asked = self.door.admit(&mut request);
        let ends = asked
            .as_ref()
            .is_ok_and(|asked| asked.posts && asked.what == "end");
        let answer = match asked {
            Ok(asked) => self.answer_to(&asked),
            Err(refusal) => refused(refusal),
        };
        let _ = request.answer(answer.status, &answer.headers(), &answer.bytes);
        if ends {
            let _ = self.end.send(());
        }
    }

    fn answer_to(&self, asked: &Asked) -> Answer {
        let body = &asked.body;
        match (asked.posts, asked.what.as_str()) {
            (false, "form") => data(&form::form()),
            (false, "file") => self.state(),
            (false, what) => page(what).unwrap_or_else(|| refused((404, "there is nothing here"))),
            (true, "look") => given(body, |wanted: ToLook| self.look(&wanted)),
            (true, "places") => given(body, |wanted: ToPlace| {
                data(&others::others(&self.file, &wanted.text, wanted.room_mm))
            }),
            (true, "save") => given(body, |wanted: ToSave| self.save(&wanted)),
            (true, "sheet") => self.sheet(body),
            (true, "end") => data(&json!({})),
            (true, _) => refused((404, "there is nothing here")),
        }
    }

    fn state(&self) -> Answer {
        match self.file.read() {
            Ok(state) => data(&state),
            Err(fault) => failed(500, &fault.to_string()),
        }
    }

    fn look(&self, wanted: &ToLook) -> Answer {
        match edit::edited(&wanted.text, &wanted.changes) {
            Ok(text) => data(&look::look(&self.file, text, wanted.room_mm)),
            Err(EditFault::NotToml) => failed(
                422,
                "the text cannot be read as TOML, so that nothing can be put into it; mend it below",
            ),
            Err(EditFault::NoPlace) => failed(422, "something else stands there in the file"),
        }
    }

    fn save(&self, wanted: &ToSave) -> Answer {
        match self.file.save(&wanted.text, &wanted.version) {
            Ok(version) => data(&json!({ "version": version })),
            Err(SaveFault::Older) => failed(
                409,
                "the file was changed elsewhere after this page had read it, and nothing was written",
            ),
            Err(SaveFault::File(fault)) => failed(500, &fault.to_string()),
        }
    }

    /// The sheet or its annex, from a form sent as plain text: the paper, the pages, the job.
    fn sheet(&self, body: &str) -> Answer {
        let wanted = (|| {
            let (paper, rest) = body.strip_prefix("paper=")?.split_once("\r\n")?;
            let (pages, rest) = rest.strip_prefix("pages=")?.split_once("\r\n")?;
            Some((paper, pages, rest.strip_prefix("text=")?))
        })();
        let Some((paper, pages, text)) = wanted else {
            return refused((400, "a sheet is asked for otherwise"));
        };
        let drawings = self.file.drawings(text);
        match sheet::of_text(text, &drawings, paper == "letter", pages == "annex") {
            Ok(bytes) => Answer {
                status: 200,
                kind: "application/pdf",
                bytes,
                name: Some(self.file.named("pdf")),
            },
            Err(why) => failed(422, &why),
        }
    }
}

impl Answer {
    fn headers(&self) -> Vec<(&'static str, String)> {
        let kind = match self.kind {
            "application/pdf" => self.kind.to_owned(),
            text => format!("{text}; charset=utf-8"),
        };
        let mut headers: Vec<_> = HEADERS.map(|(field, value)| (field, value.into())).into();
        headers.push(("Content-Type", kind));
        if let Some(name) = &self.name {
            let is_plain = |c: char| c.is_ascii_alphanumeric() || "-_. ".contains(c);
            let plain = name.replace(|c| !is_plain(c), "_");
            let named = format!("inline; filename=\"{plain}\"");
            headers.push(("Content-Disposition", named));
        }
        headers
    }
}

fn page(what: &str) -> Option<Answer> {
    let (_, kind, text) = PAGE.iter().find(|(name, ..)| *name == what)?;
    Some(Answer {
        status: 200,
        kind,
        bytes: text.as_bytes().to_vec(),
        name: None,
    })
}

fn data(value: &impl Serialize) -> Answer {
    match serde_json::to_vec(value) {
        Ok(bytes) => Answer {
            status: 200,
            kind: "application/json",
            bytes,
            name: None,
        },
        Err(fault) => failed(500, &fault.to_string()),
    }
}

/// Answers to what was brought as JSON.
fn given<T: for<'a> Deserialize<'a>>(body: &str, act: impl FnOnce(T) -> Answer) -> Answer {
    match serde_json::from_str(body) {
        Ok(wanted) => act(wanted),
        Err(_) => refused((400, "that is not asked so here")),
    }
}

fn refused((status, why): Refusal) -> Answer {
    failed(status, why)
}

fn failed(status: u16, why: &str) -> Answer {
    Answer {
        status,
        kind: "text/plain",
        bytes: why.as_bytes().to_vec(),
        name: None,
    }
}
