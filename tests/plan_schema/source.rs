//! The types that are written as JSON, read from the source: their names, doc comments and fields.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use syn::{Attribute, Expr, Item, Lit, Meta, UseTree};

/// Where a type is found: the names of its modules.
pub(crate) type Module = Vec<String>;

/// What the attributes of `serde` say that matters here.
#[derive(Clone, Debug, Default)]
#[allow(clippy::struct_excessive_bools)]
pub(crate) struct Said {
    pub(crate) rename: Option<String>,
    pub(crate) rename_all: Option<String>,
    pub(crate) skip: bool,
    pub(crate) may_be_missing: bool,
    pub(crate) flatten: bool,
    pub(crate) untagged: bool,
}

/// Every type of the source by its name, and what each file borrows from where.
#[derive(Default)]
pub(crate) struct Source {
    pub(crate) types: BTreeMap<String, Vec<(Module, Item)>>,
    borrowed: BTreeMap<Module, BTreeMap<String, Vec<String>>>,
}

impl Source {
    /// Reads every file under a folder.
    pub(crate) fn read(root: &Path) -> Self {
        let mut source = Self::default();
        source.folder(root, &Vec::new());
        source
    }

    fn folder(&mut self, folder: &Path, module: &Module) {
        let mut entries: Vec<_> = fs::read_dir(folder)
            .unwrap()
            .map(|e| e.unwrap().path())
            .collect();
        entries.sort();
        for path in entries {
            let name = path.file_stem().unwrap().to_string_lossy().into_owned();
            let mut own = module.clone();
            if path.is_dir() {
                own.push(name);
                self.folder(&path, &own);
            } else if path.extension().is_some_and(|e| e == "rs") {
                if !matches!(name.as_str(), "mod" | "lib" | "main") {
                    own.push(name);
                }
                let file = syn::parse_file(&fs::read_to_string(&path).unwrap()).unwrap();
                file.items
                    .into_iter()
                    .for_each(|item| self.item(&own, item));
            }
        }
    }

    fn item(&mut self, module: &Module, item: Item) {
        let name = match &item {
            Item::Struct(s) => s.ident.to_string(),
            Item::Enum(e) => e.ident.to_string(),
            Item::Type(t) => t.ident.to_string(),
            Item::Use(used) => return self.used(module, &used.tree, &mut Vec::new()),
            _ => return,
        };
        self.types
            .entry(name)
            .or_default()
            .push((module.clone(), item));
    }

    fn used(&mut self, module: &Module, tree: &UseTree, before: &mut Vec<String>) {
        match tree {
            UseTree::Path(part) => {
                before.push(part.ident.to_string());
                self.used(module, &part.tree, before);
                before.pop();
            }
            UseTree::Group(group) => group
                .items
                .iter()
                .for_each(|t| self.used(module, t, before)),
            UseTree::Name(name) => {
                let names = self.borrowed.entry(module.clone()).or_default();
                names.insert(name.ident.to_string(), before.clone());
            }
            UseTree::Rename(_) | UseTree::Glob(_) => {}
        }
    }

    /// The type that a path means in a module: the one there, the one borrowed, the only one of its name.
    pub(crate) fn find(&self, from: &Module, path: &[String]) -> &(Module, Item) {
        let (name, before) = path.split_last().unwrap();
        let all = self
            .types
            .get(name)
            .unwrap_or_else(|| panic!("no type {path:?} ({from:?})"));
        if let [one] = &all[..] {
            return one;
        }
        if before.is_empty()
            && let Some(own) = all.iter().find(|(m, _)| m == from)
        {
            return own;
        }
        let borrowed = self.borrowed.get(from).and_then(|b| b.get(name));
        let way = if before.is_empty() {
            borrowed.unwrap_or_else(|| panic!("{path:?} in {from:?}"))
        } else {
            before
        };
        let way = absolute(from, way);
        let near = |module: &Module| {
            let along = module.iter().zip(&way).take_while(|(a, b)| a == b).count();
            (along, way.iter().all(|part| module.contains(part)))
        };
        let best = all.iter().max_by_key(|(m, _)| near(m)).unwrap();
        let equal = all.iter().filter(|(m, _)| near(m) == near(&best.0)).count();
        assert_eq!(equal, 1, "{path:?} in {from:?} is not clear");
        best
    }
}

/// A path of modules from the crate's root.
fn absolute(from: &Module, way: &[String]) -> Module {
    let climbs = way.iter().take_while(|p| *p == "super").count();
    let kept = match way.first().map(String::as_str) {
        Some("crate") => &[][..],
        _ => &from[..from.len().saturating_sub(climbs)],
    };
    let further = way
        .iter()
        .filter(|p| !matches!(p.as_str(), "super" | "crate" | "self"));
    kept.iter().chain(further).cloned().collect()
}

/// What `serde` is told about a type, a field or a variant.
pub(crate) fn said(attributes: &[Attribute]) -> Said {
    let mut said = Said::default();
    for attribute in attributes.iter().filter(|a| a.path().is_ident("serde")) {
        attribute
            .parse_nested_meta(|meta| {
                let name = meta
                    .path
                    .get_ident()
                    .map(ToString::to_string)
                    .unwrap_or_default();
                let value = meta.value().ok().and_then(|v| v.parse::<Lit>().ok());
                let text = value.and_then(|lit| match lit {
                    Lit::Str(text) => Some(text.value()),
                    _ => None,
                });
                match name.as_str() {
                    "rename" => said.rename = text,
                    "rename_all" => said.rename_all = text,
                    "skip" | "skip_serializing" => said.skip = true,
                    "skip_serializing_if" => said.may_be_missing = true,
                    "flatten" => said.flatten = true,
                    "untagged" => said.untagged = true,
                    "tag" | "content" | "into" | "remote" => panic!("{name} is not followed"),
                    _ => {}
                }
                Ok(())
            })
            .unwrap();
    }
    said
}

/// The first paragraph of a doc comment, without marks of its language.
pub(crate) fn documented(attributes: &[Attribute]) -> String {
    let mut lines = Vec::new();
    for attribute in attributes.iter().filter(|a| a.path().is_ident("doc")) {
        let Meta::NameValue(doc) = &attribute.meta else {
            continue;
        };
        let Expr::Lit(text) = &doc.value else {
            continue;
        };
        let Lit::Str(text) = &text.lit else { continue };
        let line = text.value().trim().to_owned();
        if line.is_empty() {
            break;
        }
        lines.push(line);
    }
    let words = lines
        .join(" ")
        .replace("[`", "")
        .replace("`]", "")
        .replace('`', "");
    words.replace("crate::", "")
}
