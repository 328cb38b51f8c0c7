//! SVG. Stand-in.

use crate::layout::sheet::Sheet;

/// One sheet as SVG.
pub fn svg(sheet: &Sheet) -> String {
    format!("<svg xmlns=\"http://www.w3.org/2000/svg\"><title>{}</title></svg>\n", sheet.title)
}
