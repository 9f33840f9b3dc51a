//! The content of one page, with what its tags mark.

use crate::layout::item::{Item, Page, Typeface};

use super::fault::RenderFault;
use super::pdf_content::Content;
use super::pdf_tags::{Marker, Node};

/// The content of a page, and its parts for whoever has it read out. `fonts` are the names of the faces.
pub(super) fn content(
    page: &Page,
    scale: [f64; 2],
    fonts: impl Fn(Typeface) -> &'static str,
) -> Result<(Vec<u8>, Vec<Node>), RenderFault> {
    let mut content = Content::default();
    // Sharp joins and plain ends, as every line has.
    content.operator("0 j\n0 J\n");
    if scale != [1.0; 2] {
        let [across, up] = scale;
        content.written(format_args!("{across} 0 0 {up} 0 0 cm\n"));
    }
    let mut marker = Marker::default();
    for item in &page.items {
        match item {
            Item::Begin(tag) => marker.begin(tag, &mut content),
            Item::End => marker.end(&mut content),
            Item::Path(path) => {
                marker.content(&mut content);
                content.path(path, &page.name)?;
            }
            Item::Part(..) => {}
            Item::Text(text) => {
                marker.content(&mut content);
                content.text(text, &page.name, &fonts)?;
            }
        }
    }
    let parts = marker.finish(&mut content);
    Ok((content.text.into_bytes(), parts))
}
