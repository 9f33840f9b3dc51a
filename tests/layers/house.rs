//! The source as rooms, files and what each file takes from others.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use syn::visit::{self, Visit};
use syn::{Attribute, Item, UseTree, Visibility};

/// A module by its names from the crate's root.
pub(crate) type Module = Vec<String>;

/// One source file.
#[derive(Debug, Default)]
pub(crate) struct File {
    /// Its path under `src/`.
    pub(crate) path: String,
    /// How many lines it has.
    pub(crate) lines: usize,
    /// Whether it has nothing but modules and names that it passes on.
    pub(crate) only_wires: bool,
    /// Every path that it names, from the crate's root or from a foreign package.
    pub(crate) named: BTreeSet<Vec<String>>,
    /// Names that it passes on, and where they come from.
    passed_on: BTreeMap<String, Vec<String>>,
}

/// Every file of the source that is not for tests only.
#[derive(Debug, Default)]
pub(crate) struct House {
    /// The files by their module.
    pub(crate) files: BTreeMap<Module, File>,
}

impl House {
    /// Reads every file under a folder.
    pub(crate) fn read(root: &Path) -> Self {
        let mut sources = Vec::new();
        collect(root, root, &mut sources);
        let borrowed = sources.iter().map(|(p, t)| (p.as_str(), t.as_str()));
        Self::of(borrowed)
    }

    /// The house of some files, each with its path under `src/` and its text.
    pub(crate) fn of<'a>(sources: impl Iterator<Item = (&'a str, &'a str)> + Clone) -> Self {
        let modules: BTreeSet<Module> = sources.clone().map(|(path, _)| module(path)).collect();
        let mut house = Self::default();
        let mut for_tests = BTreeSet::new();
        for (path, text) in sources {
            let own = module(path);
            let syntax = syn::parse_file(text).unwrap_or_else(|e| panic!("{path}: {e}"));
            let mut reader = Reader {
                own: &own,
                modules: &modules,
                file: File {
                    path: path.to_owned(),
                    lines: text.lines().count(),
                    only_wires: syntax
                        .items
                        .iter()
                        .all(|i| matches!(i, Item::Mod(_) | Item::Use(_))),
                    ..File::default()
                },
                imported: BTreeMap::new(),
                for_tests: &mut for_tests,
            };
            reader.visit_file(&syntax);
            let file = reader.file;
            house.files.insert(own, file);
        }
        house
            .files
            .retain(|m, _| !for_tests.iter().any(|t: &Module| m.starts_with(t)));
        house
    }

    /// The file in which what a path names is defined, names passed on by other files followed.
    pub(crate) fn home(&self, path: &[String]) -> Option<&Module> {
        self.home_within(path, 8)
    }

    fn home_within(&self, path: &[String], steps: usize) -> Option<&Module> {
        let (mut at, mut rest) = (Module::new(), path);
        while let Some((name, further)) = rest.split_first() {
            let mut deeper = at.clone();
            deeper.push(name.clone());
            if self.files.contains_key(&deeper) {
                (at, rest) = (deeper, further);
                continue;
            }
            let target = self.files.get(&at).and_then(|f| f.passed_on.get(name));
            if let (Some(target), true) = (target, steps > 0) {
                let whole = [target, further].concat();
                return self.home_within(&whole, steps - 1);
            }
            break;
        }
        self.files.get_key_value(&at).map(|(module, _)| module)
    }

    /// The files of the same room that a file takes from.
    fn taken_from(&self, own: &Module, file: &File) -> BTreeSet<&Module> {
        let homes = file.named.iter().filter_map(|path| self.home(path));
        homes
            .filter(|home| home.first() == own.first() && *home != own && !home.is_empty())
            .collect()
    }

    /// Groups of files of one room that take from each other in a circle, each by their paths.
    pub(crate) fn circles(&self) -> Vec<Vec<&str>> {
        let arrows: BTreeMap<&Module, BTreeSet<&Module>> = self
            .files
            .iter()
            .map(|(own, file)| (own, self.taken_from(own, file)))
            .collect();
        let reach: BTreeMap<&Module, BTreeSet<&Module>> =
            arrows.keys().map(|m| (*m, reached(m, &arrows))).collect();
        let mut seen = BTreeSet::new();
        let mut circles = Vec::new();
        for (module, all) in &reach {
            if seen.contains(module) || !all.contains(module) {
                continue;
            }
            let same = all.iter().filter(|m| reach[*m].contains(module));
            let group: Vec<&Module> = same.copied().collect();
            seen.extend(group.iter().copied());
            circles.push(group.iter().map(|m| self.files[*m].path.as_str()).collect());
        }
        circles
    }
}

fn reached<'m>(
    from: &Module,
    arrows: &BTreeMap<&'m Module, BTreeSet<&'m Module>>,
) -> BTreeSet<&'m Module> {
    let mut found = BTreeSet::new();
    let mut open: Vec<&Module> = arrows[from].iter().copied().collect();
    while let Some(next) = open.pop() {
        if let Some((next, further)) = arrows.get_key_value(next)
            && found.insert(*next)
        {
            open.extend(further.iter().copied());
        }
    }
    found
}

fn collect(root: &Path, folder: &Path, into: &mut Vec<(String, String)>) {
    let entries = fs::read_dir(folder).expect("the folder can be read");
    let mut paths: Vec<_> = entries.map(|e| e.expect("an entry").path()).collect();
    paths.sort();
    for path in paths {
        if path.is_dir() {
            collect(root, &path, into);
        } else if path.extension().is_some_and(|e| e == "rs") {
            let under = path.strip_prefix(root).expect("it lies below");
            let name = under.to_string_lossy().replace('\\', "/");
            let text = fs::read_to_string(&path).expect("the file can be read");
            into.push((name, text));
        }
    }
}

/// The module of a file: `cut/curve/plan.rs` is `cut::curve::plan`, `cut/mod.rs` is `cut`.
pub(crate) fn module(path: &str) -> Module {
    let names = path.trim_end_matches(".rs").split('/');
    names
        .filter(|n| !matches!(*n, "mod" | "lib" | "main"))
        .map(str::to_owned)
        .collect()
}

struct Reader<'a> {
    own: &'a Module,
    modules: &'a BTreeSet<Module>,
    file: File,
    /// Names brought in by `use`, and where they come from.
    imported: BTreeMap<String, Vec<String>>,
    for_tests: &'a mut BTreeSet<Module>,
}

impl Reader<'_> {
    /// A path from the crate's root; a foreign package's stays as it is.
    fn absolute(&self, path: &[String]) -> Vec<String> {
        let climbs = path.iter().take_while(|p| *p == "super").count();
        let first = path.first().map_or("", String::as_str);
        let own = self.own.as_slice();
        if climbs > 0 {
            let kept = &own[..own.len().saturating_sub(climbs)];
            return [kept, &path[climbs..]].concat();
        }
        match first {
            "crate" | "kerfwright" => path[1..].to_vec(),
            "self" => [own, &path[1..]].concat(),
            _ => {
                let child = [own, &path[..1]].concat();
                if self.modules.contains(&child) {
                    return [own, path].concat();
                }
                let from = self.imported.get(first);
                from.map_or_else(|| path.to_vec(), |f| [f, &path[1..]].concat())
            }
        }
    }

    fn used(&mut self, tree: &UseTree, before: &mut Vec<String>, passed_on: bool) {
        match tree {
            UseTree::Path(part) => {
                before.push(part.ident.to_string());
                self.used(&part.tree, before, passed_on);
                before.pop();
            }
            UseTree::Group(group) => {
                for tree in &group.items {
                    self.used(tree, before, passed_on);
                }
            }
            UseTree::Name(name) => {
                let name = name.ident.to_string();
                self.import(before, &name, &name, passed_on);
            }
            UseTree::Rename(to) => {
                let (name, new) = (to.ident.to_string(), to.rename.to_string());
                self.import(before, &name, &new, passed_on);
            }
            UseTree::Glob(_) => {
                let path = self.absolute(before);
                self.file.named.insert(path);
            }
        }
    }

    fn import(&mut self, before: &[String], name: &str, as_name: &str, passed_on: bool) {
        let mut path = before.to_vec();
        if name != "self" {
            path.push(name.to_owned());
        }
        let path = self.absolute(&path);
        self.imported.insert(as_name.to_owned(), path.clone());
        if passed_on {
            self.file.passed_on.insert(as_name.to_owned(), path);
        } else {
            self.file.named.insert(path);
        }
    }
}

/// Whether an item is compiled for tests only.
fn is_for_tests(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|a| {
        a.path().is_ident("cfg")
            && a.parse_args::<syn::Ident>()
                .is_ok_and(|name| name == "test")
    })
}

fn attributes(item: &Item) -> &[Attribute] {
    match item {
        Item::Mod(i) => &i.attrs,
        Item::Use(i) => &i.attrs,
        Item::Fn(i) => &i.attrs,
        Item::Impl(i) => &i.attrs,
        Item::Const(i) => &i.attrs,
        Item::Static(i) => &i.attrs,
        Item::Struct(i) => &i.attrs,
        Item::Enum(i) => &i.attrs,
        _ => &[],
    }
}

impl<'ast> Visit<'ast> for Reader<'_> {
    fn visit_item(&mut self, item: &'ast Item) {
        if !is_for_tests(attributes(item)) {
            visit::visit_item(self, item);
        } else if let Item::Mod(module) = item
            && module.content.is_none()
        {
            let mut name = self.own.clone();
            name.push(module.ident.to_string());
            self.for_tests.insert(name);
        }
    }

    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        let passed_on = !matches!(item.vis, Visibility::Inherited);
        self.used(&item.tree, &mut Vec::new(), passed_on);
    }

    fn visit_path(&mut self, path: &'ast syn::Path) {
        let names: Vec<String> = path.segments.iter().map(|s| s.ident.to_string()).collect();
        if names.len() > 1 {
            let path = self.absolute(&names);
            self.file.named.insert(path);
        }
        visit::visit_path(self, path);
    }
}
