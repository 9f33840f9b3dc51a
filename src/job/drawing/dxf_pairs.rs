//! What of a DXF says where lines are. A DXF is pairs of lines: the number of a group, and what it says.
//! The `dxf` library gives up on odd dates and counts in parts of the file that nobody asks for, and takes
//! a file whose lines are shifted for an empty one: it is given the essential pairs only, each checked.

use std::fmt::Write;

/// Entities that are read, and those that are only named because they are refused.
const READ: [&str; 7] = [
    "LINE",
    "ARC",
    "CIRCLE",
    "LWPOLYLINE",
    "POLYLINE",
    "VERTEX",
    "SEQEND",
];
const NAMED: [&str; 3] = ["SPLINE", "ELLIPSE", "INSERT"];
/// The head that is written before them: UTF-8, whatever the file was in.
const HEAD: &str = "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1024\n";

/// One group: its number, what it says, its line in the file from 1.
type Group<'a> = (i32, &'a str, usize);

/// The essential pairs, as a DXF of their own.
///
/// # Errors
/// The line that is not as it must be.
pub(super) fn essential(text: &str) -> Result<String, String> {
    let groups = groups(text)?;
    let mut out = HEAD.to_owned();
    if let Some((code, value, _)) = unit(&groups) {
        put(&mut out, 9, "$INSUNITS");
        put(&mut out, *code, value);
    }
    for (code, value) in [(0, "ENDSEC"), (0, "SECTION"), (2, "ENTITIES")] {
        put(&mut out, code, value);
    }
    let mut kind = "";
    for (code, value, line) in entities(&groups)? {
        if *code == 0 {
            kind = value;
        }
        if is_essential(kind, *code) {
            check(*code, value, *line)?;
            put(&mut out, *code, value);
        }
    }
    out.push_str("0\nENDSEC\n0\nEOF\n");
    Ok(out)
}

fn put(out: &mut String, code: i32, value: &str) {
    let _ = writeln!(out, "{code}\n{value}");
}

fn groups(text: &str) -> Result<Vec<Group<'_>>, String> {
    let mut lines = text.lines().enumerate();
    let mut groups = Vec::new();
    while let Some((i, code)) = lines.next() {
        let Some((_, value)) = lines.next() else {
            break;
        };
        let code = code
            .trim()
            .parse()
            .map_err(|_| format!("it is no DXF: line {} is not a group's number", i + 1))?;
        groups.push((code, value.trim(), i + 2));
    }
    Ok(groups)
}

/// What the head says of the unit.
fn unit<'g, 'a>(groups: &'g [Group<'a>]) -> Option<&'g Group<'a>> {
    let at = groups.iter().position(|g| g.0 == 9 && g.1 == "$INSUNITS")?;
    let said = groups.get(at + 1)?;
    (said.0 == 70 && said.1.parse::<i16>().is_ok()).then_some(said)
}

/// The groups of the section of entities.
fn entities<'g, 'a>(groups: &'g [Group<'a>]) -> Result<&'g [Group<'a>], String> {
    let starts =
        |w: &[Group<'_>]| w[0].0 == 0 && w[0].1 == "SECTION" && w[1].0 == 2 && w[1].1 == "ENTITIES";
    let from = groups.windows(2).position(starts);
    let Some(from) = from else {
        return Err("it is no DXF, or one without entities".to_owned());
    };
    let inside = &groups[from + 2..];
    let end = inside.iter().position(|g| g.0 == 0 && g.1 == "ENDSEC");
    Ok(&inside[..end.unwrap_or(inside.len())])
}

/// Whether a group of an entity says what it is, what it is called or where it lies.
fn is_essential(kind: &str, code: i32) -> bool {
    let named = matches!(code, 0 | 5 | 8);
    let placed = matches!(code, 10..=59 | 70 | 90 | 210 | 220 | 230);
    READ.contains(&kind) && (named || placed) || NAMED.contains(&kind) && named
}

fn check(code: i32, value: &str, line: usize) -> Result<(), String> {
    let sound = match code {
        5 => u64::from_str_radix(value, 16).is_ok_and(|handle| handle < 1 << 48),
        10..=59 | 210..=230 => value.parse::<f64>().is_ok_and(f64::is_finite),
        70 => value.parse::<i16>().is_ok(),
        90 => value.parse::<i32>().is_ok(),
        _ => true,
    };
    if sound {
        return Ok(());
    }
    Err(format!(
        "line {line} of it holds {value:?}, which is no number for group {code}"
    ))
}
