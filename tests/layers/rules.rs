//! What each source file may do.

use crate::source::{Named, Token, paths, tokens};

/// The stages in their order: each may use only itself and those before it.
pub(crate) const ORDER: [&str; 16] = [
    "units", "diag", "geom", "tables", "words", "job", "place", "cut", "piece", "repair", "handle",
    "hazard", "plan", "sheet", "render", "cli",
];
/// Most lines of a file.
const LONGEST_FILE: usize = 450;
/// Most lines of `main.rs`.
const LONGEST_MAIN: usize = 60;
/// The parts of the standard library that reach outside the program.
const OUTSIDE: [&str; 6] = ["fs", "env", "io", "time", "process", "net"];
/// What prints to the terminal.
const PRINTS: [&str; 5] = ["println", "eprintln", "print", "eprint", "dbg"];
/// What ends the program in the middle of its work.
const GIVES_UP: [&str; 4] = ["panic", "todo", "unimplemented", "unreachable"];

/// Everything in one file that breaks a rule, each with its line. `file` is its path under `src/`.
pub(crate) fn broken(file: &str, source: &str) -> Vec<String> {
    let tokens = tokens(source);
    let named = paths(&tokens);
    let mut found = length(file, source);
    found.extend(named.iter().filter_map(|n| later_stage(file, n)));
    found.extend(named.iter().filter_map(|n| foreign(file, n)));
    found.extend(prints(file, &tokens));
    found.extend(gives_up(&tokens));
    found.iter().map(|f| format!("src/{file}{f}")).collect()
}

fn length(file: &str, source: &str) -> Vec<String> {
    let most = if file == "main.rs" {
        LONGEST_MAIN
    } else {
        LONGEST_FILE
    };
    let lines = source.lines().count();
    let words = format!(": {lines} lines, at most {most}");
    (lines > most).then_some(words).into_iter().collect()
}

/// The modules that a file is in, outermost first: `sheet/page/curve.rs` is `sheet::page::curve`.
fn module(file: &str) -> Vec<&str> {
    let names = file.trim_end_matches(".rs").split('/');
    names
        .filter(|n| !matches!(*n, "mod" | "lib" | "main"))
        .collect()
}

/// The stage that a path reaches into, when it begins at the crate or climbs out of its own.
fn stage<'p>(file: &'p str, path: &'p [String]) -> Option<&'p str> {
    let climbs = path.iter().take_while(|p| *p == "super").count();
    let module = module(file);
    let reached = match path[0].as_str() {
        "crate" | "kerfwright" => path.get(1)?,
        "super" if climbs >= module.len() => path.get(climbs)?,
        _ => return None,
    };
    ORDER.contains(&reached.as_str()).then_some(reached)
}

fn later_stage(file: &str, named: &Named) -> Option<String> {
    let place = |stage: &str| ORDER.iter().position(|s| *s == stage);
    let own = *module(file).first()?;
    let reached = stage(file, &named.path)?;
    let (from, to) = (place(own)?, place(reached)?);
    let path = named.path.join("::");
    let line = named.line;
    (to > from).then(|| format!(":{line}: {own} may not use {reached}, a later stage ({path})"))
}

/// Whether one of the packages or parts of the standard library is named where it must not be.
fn foreign(file: &str, named: &Named) -> Option<String> {
    let cli = file.starts_with("cli/") || file == "main.rs";
    let first = named.path[0].as_str();
    let second = named.path.get(1).map_or("", String::as_str);
    let rule = match first {
        "printpdf" if !is_pdf_file(file) => "only src/render/pdf*.rs may name printpdf",
        "geo" if named.path.len() > 1 && file != "geom/boolean.rs" => {
            "only src/geom/boolean.rs may name geo"
        }
        "std" if OUTSIDE.contains(&second) && !cli => {
            "only src/cli may reach files, terminal, environment or clock"
        }
        _ => return None,
    };
    let path = named.path.join("::");
    Some(format!(":{}: {rule} ({path})", named.line))
}

fn is_pdf_file(file: &str) -> bool {
    file.starts_with("render/pdf")
}

fn prints(file: &str, tokens: &[Token]) -> Vec<String> {
    if file.starts_with("cli/") || file == "main.rs" {
        return Vec::new();
    }
    let macros = calls(tokens, &PRINTS, "!");
    let words = |t: &Token| format!(":{}: only src/cli may print ({}!)", t.line, t.text);
    macros.into_iter().map(words).collect()
}

fn gives_up(tokens: &[Token]) -> Vec<String> {
    let macros = calls(tokens, &GIVES_UP, "!");
    let methods = calls(tokens, &["unwrap", "expect"], "(");
    let words = |t: &Token| format!(":{}: the program may not give up ({})", t.line, t.text);
    macros.into_iter().chain(methods).map(words).collect()
}

/// The words of a list that are followed by a sign.
fn calls<'t>(tokens: &'t [Token], words: &[&str], sign: &str) -> Vec<&'t Token> {
    let pairs = tokens.windows(2);
    let called = pairs.filter(|w| words.contains(&w[0].text.as_str()) && w[1].text == sign);
    called.map(|w| &w[0]).collect()
}
