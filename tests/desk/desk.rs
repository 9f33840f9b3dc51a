//! A desk at work in a folder of its own, and what it said.

use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::PathBuf;
use std::process::{Child, Command, ExitStatus, Stdio};

use serde_json::Value;
use tempfile::TempDir;

pub(crate) struct Desk {
    folder: TempDir,
    child: Child,
    pub(crate) address: String,
    pub(crate) port: u16,
    pub(crate) token: String,
}

/// An answer.
#[derive(Debug)]
pub(crate) struct Said {
    pub(crate) status: u16,
    pub(crate) head: String,
    pub(crate) bytes: Vec<u8>,
    pub(crate) body: String,
}

impl Desk {
    /// A desk on a file that is not there yet.
    pub(crate) fn new() -> Self {
        Self::in_folder(tempfile::tempdir().unwrap())
    }

    /// A desk on a file with a text.
    pub(crate) fn with(text: &str) -> Self {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("job.toml"), text).unwrap();
        Self::in_folder(folder)
    }

    fn in_folder(folder: TempDir) -> Self {
        let mut child = Command::new(env!("CARGO_BIN_EXE_kerfwright"))
            .args(["desk", "--no-open"])
            .current_dir(folder.path())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let out = BufReader::new(child.stdout.take().unwrap());
        let lines = out.lines().map(|line| line.unwrap().trim().to_owned());
        let address = lines
            .into_iter()
            .find(|line| line.starts_with("http"))
            .unwrap();
        let mut parts = address.split('/').skip(2);
        let (host, token) = (parts.next().unwrap(), parts.next().unwrap());
        let port = host.rsplit(':').next().unwrap().parse().unwrap();
        Self {
            folder,
            child,
            port,
            token: token.to_owned(),
            address,
        }
    }

    pub(crate) fn path(&self, what: &str) -> String {
        format!("/{}/{what}", self.token)
    }

    pub(crate) fn file(&self) -> PathBuf {
        self.folder.path().join("job.toml")
    }

    pub(crate) fn on_disk(&self) -> String {
        fs::read_to_string(self.file()).unwrap()
    }

    pub(crate) fn files(&self) -> Vec<String> {
        let entries = fs::read_dir(self.folder.path()).unwrap();
        entries
            .map(|e| e.unwrap().file_name().into_string().unwrap())
            .collect()
    }

    pub(crate) fn version(&self) -> String {
        self.get("file").json()["version"]
            .as_str()
            .unwrap()
            .to_owned()
    }

    pub(crate) fn get(&self, what: &str) -> Said {
        self.ask("GET", &self.path(what), &[], "")
    }

    pub(crate) fn post(&self, what: &str, body: &Value) -> Said {
        self.ask("POST", &self.path(what), &[], &body.to_string())
    }

    pub(crate) fn ask(&self, method: &str, path: &str, head: &[(&str, &str)], body: &str) -> Said {
        self.ask_as(
            &format!("127.0.0.1:{}", self.port),
            method,
            path,
            head,
            body,
        )
    }

    /// Asks in the name of a host.
    pub(crate) fn ask_as(
        &self,
        host: &str,
        method: &str,
        path: &str,
        head: &[(&str, &str)],
        body: &str,
    ) -> Said {
        let mut stream = self.send(host, method, path, head, body);
        // A refusal may close the way before all of the body is sent.
        let mut bytes = Vec::new();
        let _ = stream.read_to_end(&mut bytes);
        Said::of(&bytes)
    }

    /// Sends a request and goes away.
    pub(crate) fn ask_without_waiting(
        &self,
        method: &str,
        path: &str,
        head: &[(&str, &str)],
    ) -> TcpStream {
        self.send(&format!("127.0.0.1:{}", self.port), method, path, head, "")
    }

    fn send(
        &self,
        host: &str,
        method: &str,
        path: &str,
        head: &[(&str, &str)],
        body: &str,
    ) -> TcpStream {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).unwrap();
        let length = body.len().to_string();
        let host = ("Host", host);
        let mut lines = vec![host, ("Connection", "close")];
        if !head.iter().any(|(name, _)| *name == "Content-Length") {
            lines.push(("Content-Length", &length));
        }
        lines.extend(head);
        let lines = lines
            .iter()
            .map(|(name, value)| format!("{name}: {value}\r\n"));
        let request = format!("{method} {path} HTTP/1.1\r\n{}", lines.collect::<String>());
        stream.write_all(request.as_bytes()).unwrap();
        let _ = stream.write_all(b"\r\n");
        let _ = stream.write_all(body.as_bytes());
        if !body.is_empty() || method == "POST" {
            let _ = stream.shutdown(std::net::Shutdown::Write);
        }
        stream
    }

    /// Waits for the program's end.
    pub(crate) fn ended(&mut self) -> ExitStatus {
        self.child.wait().unwrap()
    }
}

impl Drop for Desk {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Said {
    fn of(bytes: &[u8]) -> Self {
        let split = bytes
            .windows(4)
            .position(|w| w == b"\r\n\r\n")
            .unwrap_or(bytes.len());
        let head = String::from_utf8_lossy(&bytes[..split]).into_owned();
        let bytes = bytes.get(split + 4..).unwrap_or_default().to_vec();
        let status = head.split(' ').nth(1).and_then(|s| s.parse().ok());
        Self {
            status: status.unwrap_or(0),
            body: String::from_utf8_lossy(&bytes).into_owned(),
            head,
            bytes,
        }
    }

    pub(crate) fn json(&self) -> Value {
        assert_eq!(self.status, 200, "{}", self.body);
        serde_json::from_str(&self.body).unwrap()
    }
}
