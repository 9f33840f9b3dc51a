//! The structure of a tagged PDF (ISO 32000-1, 14.7 and 14.8): which marked content of a page is a
//! heading, a list, a table or a figure, for whoever has the sheet read out.

use std::collections::BTreeMap;

use lopdf::{Dictionary, Document, Object, ObjectId, dictionary, text_string};

use super::fault::RenderFault;
use super::pdf_content::Content;
use crate::layout::item::{Sheet, Tag};

/// A part of a page.
#[derive(Clone, Debug)]
pub(super) struct Node {
    tag: Tag,
    /// Numbers of its own marked content on its page.
    content: Vec<i64>,
    kids: Vec<Node>,
}

/// Marks the content of one page while it is drawn.
#[derive(Debug, Default)]
pub(super) struct Marker {
    /// The finished parts of the page.
    roots: Vec<Node>,
    open: Vec<Node>,
    next: i64,
    /// True while marked content is open.
    marked: bool,
}

impl Marker {
    /// A part begins.
    pub(super) fn begin(&mut self, tag: &Tag, content: &mut Content) {
        self.close(content);
        self.open.push(Node {
            tag: tag.clone(),
            content: Vec::new(),
            kids: Vec::new(),
        });
    }

    /// The part begun last ends.
    pub(super) fn end(&mut self, content: &mut Content) {
        self.close(content);
        if let Some(node) = self.open.pop() {
            let kids = self
                .open
                .last_mut()
                .map_or(&mut self.roots, |n| &mut n.kids);
            kids.push(node);
        }
    }

    /// Something is about to be drawn.
    pub(super) fn content(&mut self, content: &mut Content) {
        if self.marked {
            return;
        }
        self.marked = true;
        match self.open.last_mut().filter(|n| !n.tag.groups()) {
            Some(node) => {
                content.begin_marked(node.tag.name(), Some(self.next));
                node.content.push(self.next);
                self.next += 1;
            }
            None => content.begin_marked("Artifact", None),
        }
    }

    /// The page is drawn; its parts.
    pub(super) fn finish(mut self, content: &mut Content) -> Vec<Node> {
        self.close(content);
        while !self.open.is_empty() {
            self.end(content);
        }
        self.roots
    }

    fn close(&mut self, content: &mut Content) {
        if self.marked {
            content.end_marked();
            self.marked = false;
        }
    }
}

/// Adds the structure tree of all pages.
pub(super) fn add(
    doc: &mut Document,
    sheet: &Sheet,
    pages: &[Vec<Node>],
) -> Result<(), RenderFault> {
    let root = doc.new_object_id();
    let whole = doc.new_object_id();
    let ids: Vec<ObjectId> = doc.get_pages().into_values().collect();
    let (mut sections, mut parents) = (Vec::new(), Vec::new());
    for (i, (page, nodes)) in ids.iter().zip(pages).enumerate() {
        let section = doc.new_object_id();
        let mut tree = Tree {
            doc,
            page: *page,
            by_content: BTreeMap::new(),
        };
        let kids = tree.kids(section, nodes);
        let owners: Vec<Object> = tree.by_content.into_values().map(Object::from).collect();
        let language = sheet.pages.get(i).map_or("en", |p| p.language);
        let element = dictionary! {
            "Type" => "StructElem", "S" => "Sect", "P" => whole, "K" => kids,
            "Lang" => text_string(language),
        };
        doc.objects.insert(section, element.into());
        sections.push(Object::from(section));
        let number = i64::try_from(i).unwrap_or(i64::MAX);
        parents.push(Object::from(number));
        parents.push(Object::from(doc.add_object(Object::Array(owners))));
        page_of(doc, *page)?.set("StructParents", number);
        page_of(doc, *page)?.set("Tabs", "S");
    }
    let element = dictionary! {
        "Type" => "StructElem", "S" => "Document", "P" => root, "K" => sections,
    };
    doc.objects.insert(whole, element.into());
    let tree = dictionary! {
        "Type" => "StructTreeRoot", "K" => vec![whole.into()],
        "ParentTree" => dictionary! { "Nums" => parents },
    };
    doc.objects.insert(root, tree.into());
    let catalogue = doc
        .catalog_mut()
        .map_err(|e| RenderFault::Writer(e.to_string()))?;
    catalogue.set("StructTreeRoot", root);
    catalogue.set("MarkInfo", dictionary! { "Marked" => true });
    Ok(())
}

fn page_of(doc: &mut Document, page: ObjectId) -> Result<&mut Dictionary, RenderFault> {
    doc.get_object_mut(page)
        .and_then(Object::as_dict_mut)
        .map_err(|e| RenderFault::Writer(e.to_string()))
}

struct Tree<'a> {
    doc: &'a mut Document,
    page: ObjectId,
    by_content: BTreeMap<i64, ObjectId>,
}

impl Tree<'_> {
    fn kids(&mut self, parent: ObjectId, nodes: &[Node]) -> Vec<Object> {
        let each = nodes
            .iter()
            .filter(|n| !n.content.is_empty() || !n.kids.is_empty());
        each.map(|n| self.element(parent, n)).collect()
    }

    fn element(&mut self, parent: ObjectId, node: &Node) -> Object {
        let id = self.doc.new_object_id();
        let mut kids = self.kids(id, &node.kids);
        // A list's entry holds its content through its body.
        let owner = if node.tag == Tag::Entry && !node.content.is_empty() {
            let body = self.doc.new_object_id();
            let held: Vec<Object> = node.content.iter().map(|n| (*n).into()).collect();
            let element = dictionary! {
                "Type" => "StructElem", "S" => "LBody", "P" => id, "Pg" => self.page, "K" => held,
            };
            self.doc.objects.insert(body, element.into());
            kids.push(body.into());
            body
        } else {
            kids.extend(node.content.iter().map(|n| Object::from(*n)));
            id
        };
        self.by_content
            .extend(node.content.iter().map(|n| (*n, owner)));
        let mut element = dictionary! {
            "Type" => "StructElem", "S" => node.tag.name(), "P" => parent, "Pg" => self.page,
            "K" => kids,
        };
        if let Tag::Figure(alt) = &node.tag {
            element.set("Alt", text_string(alt));
        }
        self.doc.objects.insert(id, element.into());
        id.into()
    }
}
