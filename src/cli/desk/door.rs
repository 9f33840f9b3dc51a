//! Who may come in. The page is served on this machine's own address only, under a token that nobody can
//! guess; what comes from another site's page, or in another host's name, stays outside.

use std::hash::{BuildHasher, RandomState};
use std::io;
use std::net::{Ipv4Addr, TcpListener};

use super::http::{NoBody, Request};
use crate::job::file::LONGEST_FILE;

/// The way in.
#[derive(Clone, Debug)]
pub(super) struct Door {
    port: u16,
    token: String,
}

/// A request that was let in: its method, what it asks for, and what it brings.
#[derive(Clone, Debug)]
pub(super) struct Asked {
    pub(super) posts: bool,
    pub(super) what: String,
    pub(super) body: String,
}

/// Why a request is refused: the HTTP status, and what is said.
pub(super) type Refusal = (u16, &'static str);

impl Door {
    /// A free port of the loopback address, and a new token.
    ///
    /// # Errors
    /// When the system has none.
    pub(super) fn open() -> io::Result<(TcpListener, Self)> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
        let port = listener.local_addr()?.port();
        let token = token();
        Ok((listener, Self { port, token }))
    }

    /// The address of the page.
    pub(super) fn address(&self) -> String {
        format!("http://127.0.0.1:{}/{}/", self.port, self.token)
    }

    /// Lets a request in, with its body.
    ///
    /// # Errors
    /// A host or an origin that is not this page's own; another token; a body longer than a job file.
    pub(super) fn admit(&self, request: &mut Request) -> Result<Asked, Refusal> {
        let hosts = ["127.0.0.1", "localhost"].map(|host| format!("{host}:{}", self.port));
        let host = request.header("Host").unwrap_or_default();
        if !hosts.iter().any(|own| own == host) {
            return Err((403, "this host is not served here"));
        }
        let origin = request.header("Origin");
        if origin.is_some_and(|origin| origin != format!("http://{host}")) {
            return Err((403, "a page of another origin may not ask here"));
        }
        let posts = match request.method.as_str() {
            "GET" => false,
            "POST" => true,
            _ => return Err((405, "only GET and POST are answered")),
        };
        let site = request.header("Sec-Fetch-Site");
        if posts && site.is_some_and(|site| site != "same-origin") {
            return Err((403, "a page of another site may not ask here"));
        }
        let what = self
            .inside(&request.path)
            .ok_or((404, "there is nothing here"))?;
        let body = request.body(LONGEST_FILE).map_err(|fault| match fault {
            NoBody::TooLong => (413, "that is longer than a job file may be"),
            NoBody::NoText => (400, "this is not a text"),
        })?;
        Ok(Asked { posts, what, body })
    }

    /// What is asked for behind the token.
    fn inside(&self, url: &str) -> Option<String> {
        let (token, what) = url.strip_prefix('/')?.split_once('/')?;
        is_same(token, &self.token).then(|| what.to_owned())
    }
}

/// 128 bits in hexadecimal figures, by the keyed hash (`SipHash`) whose keys the standard library takes from
/// the system's source of randomness.
fn token() -> String {
    let keyed = RandomState::new();
    format!("{:016x}{:016x}", keyed.hash_one(1), keyed.hash_one(2))
}

/// Compares in the same time however much of it is right.
fn is_same(a: &str, b: &str) -> bool {
    let differs = a
        .bytes()
        .zip(b.bytes())
        .fold(0, |sum, (a, b)| sum | (a ^ b));
    a.len() == b.len() && differs == 0
}
