//! What each source file may do.

use crate::house::{File, House, Module};

/// The stages in their order: each may use only itself and those before it.
pub(crate) const ORDER: [&str; 18] = [
    "units", "geom", "words", "diag", "tables", "job", "place", "cut", "piece", "repair", "handle",
    "hazard", "plan", "document", "template", "layout", "render", "cli",
];
/// Most lines of a file.
const LONGEST_FILE: usize = 450;
/// The parts of the standard library that reach outside the program.
const OUTSIDE: [&str; 6] = ["fs", "env", "io", "time", "process", "net"];

/// Everything in one file that breaks a rule.
pub(crate) fn broken(house: &House, module: &Module, file: &File) -> Vec<String> {
    let mut found = Vec::new();
    if file.lines > LONGEST_FILE {
        found.push(format!("{} lines, at most {LONGEST_FILE}", file.lines));
    }
    if file.path.ends_with("/mod.rs") && !file.only_wires {
        found.push("a mod.rs only wires: its items belong in files of their own".to_owned());
    }
    for path in &file.named {
        found.extend(later_stage(house, module, path));
        found.extend(foreign(&file.path, path));
    }
    found
        .iter()
        .map(|f| format!("src/{}: {f}", file.path))
        .collect()
}

fn later_stage(house: &House, module: &Module, path: &[String]) -> Option<String> {
    let place = |stage: &str| ORDER.iter().position(|s| *s == stage);
    let own = module.first()?;
    let reached = house.home(path)?.first()?;
    let later = place(reached)? > place(own)?;
    let words = path.join("::");
    later.then(|| format!("{own} may not use {reached}, a later stage ({words})"))
}

/// Whether one of the packages or parts of the standard library is named where it must not be.
fn foreign(file: &str, path: &[String]) -> Option<String> {
    let cli = file.starts_with("cli/") || file == "main.rs";
    let second = path.get(1).map_or("", String::as_str);
    let rule = match path.first()?.as_str() {
        "printpdf" if !file.starts_with("render/pdf") => "only src/render/pdf*.rs names printpdf",
        "geo" if path.len() > 1 && file != "geom/boolean.rs" => {
            "only src/geom/boolean.rs names geo"
        }
        "std" if OUTSIDE.contains(&second) && !cli => {
            "only src/cli reaches files, terminal, environment or clock"
        }
        _ => return None,
    };
    Some(format!("{rule} ({})", path.join("::")))
}
