//! What: a base that takes more than a tenth of the art field.
//!
//! Why: on a base the pictures of the two eyes lie apart as wholes, so that the art has so much less room: 20 pd at 40 cm
//! are 80 mm of 180.
//!
//! Limit: a tenth of the width, and of the height for a vertical base. Source: design choice.
//!
//! Way out: a smaller base or a shorter distance, both for the professional to decide; smaller art nearer to the middle.

use super::{Finding, Input, Rule, Words, finding};
use crate::diagnostics::Severity;
use crate::units::plain;

/// See the module.
pub(super) const RULE: Rule =
    Rule { id: "base-room", doc: "a base takes more than a tenth of the art field", codes: &[CODE], check };

const CODE: &str = "W-BASE-ROOM";

/// Share of the field from which the rule speaks.
const SHARE: f64 = 0.1;

fn check(input: &Input<'_>) -> Vec<Finding> {
    let base = input.viewer.base;
    let sides = [
        ("base", base.horizontal, input.viewer.base_parallax().0.abs(), "width", input.field.0.0),
        ("base_vertical", base.vertical, input.viewer.base_rise().0.abs(), "height", input.field.1.0),
    ];
    let wide = sides.into_iter().filter(|&(.., takes, _, field)| SHARE * field < takes);
    wide.map(|(key, demand, takes, side, field)| {
        let message = format!(
            "`{key}` of `{}` pd takes `{}` mm of the {side} of the art field, `{}` mm",
            plain(demand.0.abs(), 2),
            plain(takes, 3),
            plain(field, 3),
        );
        let help =
            "keep the art near the middle of the field; a smaller base is for a professional to decide".to_owned();
        finding("", Severity::Warning, CODE, None, Words { message, label: "takes room from the art", help })
    })
    .collect()
}
