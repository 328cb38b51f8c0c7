//! Solids of an offset print: tristimulus values, and how much tints grow. Data only; the licence of the copy is in
//! `LICENSE_FOGRA39L`.

/// X, Y, Z of paper and full inks on coated paper, white backing, D50, 2 degrees; Y of the perfect diffuser is 1.
/// In the order of `print::Solids`: paper, C, M, Y, M+Y, C+Y, C+M, K.
/// Source: `[FOGRA39L]`.
#[rustfmt::skip]
pub(in crate::colour) const FOGRA39L: [[f64; 3]; 8] = [
    [0.8448, 0.8762, 0.7457],
    [0.1502, 0.2293, 0.5285],
    [0.3303, 0.1679, 0.1501],
    [0.6917, 0.7416, 0.0704],
    [0.3020, 0.1602, 0.0230],
    [0.0816, 0.1842, 0.0674],
    [0.0567, 0.0410, 0.1567],
    [0.0202, 0.0210, 0.0173],
];

/// How much larger than its nominal 50 % a tint of C, M, Y and K covers, as a share of the sheet, once light that
/// strays in the paper is counted apart.
/// Source: `[FOGRA39L]`, tints of 20 to 85 %; least squares over their light behind five filters, by `[Yule1951]`.
pub(in crate::colour) const FOGRA39L_GAIN: [f64; 4] = [0.035, 0.06, 0.065, 0.07];
