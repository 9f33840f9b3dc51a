//! The corpus as one text: many small inputs that a person can read and a difference can show.
//!
//! A line `----` ends an input. A backslash is written `\\`, a byte that is no plain character `\x1b`, so that
//! no editor changes what an input is.

use std::fmt::Write;

/// The line that ends an input.
const END: &str = "----\n";

/// The inputs of a packed text.
pub(crate) fn unpacked(text: &str) -> Vec<Vec<u8>> {
    text.split_terminator(END).map(plain).collect()
}

/// The packed text of some inputs.
pub(crate) fn packed(inputs: &[Vec<u8>]) -> String {
    inputs.iter().map(|input| escaped(input) + END).collect()
}

fn escaped(input: &[u8]) -> String {
    let mut out = String::new();
    for chunk in input.utf8_chunks() {
        for c in chunk.valid().chars() {
            match c {
                '\\' => out.push_str("\\\\"),
                '\n' => out.push(c),
                _ if c.is_ascii_graphic() || c == ' ' || c.is_alphabetic() => out.push(c),
                _ => bytes(&mut out, c.encode_utf8(&mut [0; 4]).as_bytes()),
            }
        }
        bytes(&mut out, chunk.invalid());
    }
    // An input without a line end has one for the paper, and a mark that takes it away again.
    if !out.is_empty() && !out.ends_with('\n') {
        out.push_str("\\.\n");
    }
    out
}

fn bytes(out: &mut String, bytes: &[u8]) {
    for byte in bytes {
        let _ = write!(out, "\\x{byte:02x}");
    }
}

fn plain(text: &str) -> Vec<u8> {
    let text = text.strip_suffix("\\.\n").unwrap_or(text);
    let mut parts = text.split('\\');
    let mut out: Vec<u8> = parts.next().unwrap_or_default().into();
    while let Some(part) = parts.next() {
        let code = part.strip_prefix('x').and_then(|rest| {
            let byte = u8::from_str_radix(rest.get(..2)?, 16).ok()?;
            Some((byte, &rest[2..]))
        });
        if let Some((byte, rest)) = code {
            out.push(byte);
            out.extend(rest.as_bytes());
        } else {
            // Two backslashes: an empty part, and the next one as it stands.
            out.push(b'\\');
            out.extend(parts.next().unwrap_or_default().as_bytes());
        }
    }
    out
}

#[test]
fn every_input_comes_back_out_of_the_pack() {
    let odd: Vec<Vec<u8>> = [
        &b""[..],
        b"a",
        b"a\n",
        b"\\",
        b"\\\\x41\\\n",
        b"\xff\x00\r\n\xc3\xa9\x1b",
        b"\\.",
        "line\n\u{202e}\u{e9}\u{142} \\n".as_bytes(),
    ]
    .map(<[u8]>::to_vec)
    .to_vec();
    let text = packed(&odd);
    assert_eq!(unpacked(&text), odd, "{text}");
    assert!(text.chars().all(|c| c == '\n' || !c.is_control()));
}
