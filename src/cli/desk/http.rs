//! HTTP as far as a page on the same machine needs it: one request a connection, and a thread for each
//! connection. A browser opens several at once, some of them only in case it will need them; none waits
//! for another.

use std::io::{self, Read, Write};
use std::net::{Shutdown, TcpListener, TcpStream};
use std::sync::Arc;
use std::thread;
use std::time::Duration;

/// The longest head of a request that is read, bytes, and the most lines in it (judgement: several times
/// what browsers send).
const LONGEST_HEAD: usize = 16 * 1024;
const MOST_LINES: usize = 64;
/// How long a silent connection is kept (judgement).
const PATIENCE: Duration = Duration::from_secs(60);
/// How long, and how much, is read of what nobody waits for, so that the answer before it is not lost
/// (judgement).
const LINGER: Duration = Duration::from_secs(1);
const LONGEST_LINGER: u64 = 64 * 1024 * 1024;

/// A request whose head has come; its body is still on the way.
pub(super) struct Request {
    pub(super) method: String,
    pub(super) path: String,
    headers: Vec<(String, String)>,
    /// What came of the body with the head.
    begun: Vec<u8>,
    stream: TcpStream,
}

/// Why a body is not there.
pub(super) enum NoBody {
    TooLong,
    NoText,
}

/// Listens as long as the program runs, and answers each request on a thread of its own.
pub(super) fn listen(listener: &TcpListener, answer: impl Fn(Request) + Send + Sync + 'static) {
    let answer = Arc::new(answer);
    for stream in listener.incoming() {
        let Ok(stream) = stream else {
            // Too many are open: some end meanwhile.
            thread::sleep(Duration::from_millis(50));
            continue;
        };
        let answer = Arc::clone(&answer);
        thread::spawn(move || match Request::read(stream) {
            Ok(request) => answer(request),
            Err(fault) => drop(fault),
        });
    }
}

impl Request {
    /// Reads the head. One that is no request of HTTP/1 is not answered.
    fn read(mut stream: TcpStream) -> io::Result<Self> {
        stream.set_read_timeout(Some(PATIENCE))?;
        stream.set_nodelay(true)?;
        let mut come = Vec::new();
        let mut chunk = [0; 4096];
        loop {
            let count = stream.read(&mut chunk)?;
            come.extend_from_slice(&chunk[..count]);
            let mut lines = [httparse::EMPTY_HEADER; MOST_LINES];
            let mut head = httparse::Request::new(&mut lines);
            let parsed = head.parse(&come).map_err(io::Error::other)?;
            if let httparse::Status::Complete(length) = parsed {
                return Ok(Self {
                    method: head.method.unwrap_or_default().to_owned(),
                    path: head.path.unwrap_or_default().to_owned(),
                    headers: head.headers.iter().map(told).collect(),
                    begun: come.split_off(length),
                    stream,
                });
            }
            if count == 0 || come.len() > LONGEST_HEAD {
                return Err(io::ErrorKind::UnexpectedEof.into());
            }
        }
    }

    /// The first header of a name.
    pub(super) fn header(&self, name: &str) -> Option<&str> {
        let mut all = self.headers.iter();
        let (_, value) = all.find(|(field, _)| field.eq_ignore_ascii_case(name))?;
        Some(value)
    }

    /// The body as text, if it is no longer than `most` bytes. A body without an announced length is none.
    ///
    /// # Errors
    /// A longer one; one that breaks off or is not UTF-8.
    pub(super) fn body(&mut self, most: usize) -> Result<String, NoBody> {
        let length = match self.header("Content-Length") {
            None => 0,
            Some(length) => length.parse::<usize>().map_err(|_| NoBody::NoText)?,
        };
        if length > most {
            return Err(NoBody::TooLong);
        }
        let mut bytes = std::mem::take(&mut self.begun);
        let missing = length.saturating_sub(bytes.len());
        let missing = u64::try_from(missing).map_err(|_| NoBody::TooLong)?;
        let read = (&self.stream).take(missing).read_to_end(&mut bytes);
        if read.is_err() || bytes.len() < length {
            return Err(NoBody::NoText);
        }
        bytes.truncate(length);
        String::from_utf8(bytes).map_err(|_| NoBody::NoText)
    }

    /// Answers, and closes the connection.
    ///
    /// # Errors
    /// When the other side has gone.
    pub(super) fn answer(
        mut self,
        status: u16,
        headers: &[(&str, String)],
        bytes: &[u8],
    ) -> io::Result<()> {
        let out = &mut self.stream;
        let mut head = Vec::new();
        write!(head, "HTTP/1.1 {status} \r\nConnection: close\r\n")?;
        for (field, value) in headers {
            write!(head, "{field}: {value}\r\n")?;
        }
        write!(head, "Content-Length: {}\r\n\r\n", bytes.len())?;
        out.write_all(&head)?;
        out.write_all(bytes)?;
        out.shutdown(Shutdown::Write)?;
        // Closing on what was not read would tear down the answer with it.
        out.set_read_timeout(Some(LINGER))?;
        io::copy(&mut out.take(LONGEST_LINGER), &mut io::sink())?;
        Ok(())
    }
}

fn told(header: &httparse::Header<'_>) -> (String, String) {
    let value = String::from_utf8_lossy(header.value).into_owned();
    (header.name.to_owned(), value)
}
