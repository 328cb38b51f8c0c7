//! The demo set in editions of our own, rendered by the program itself, and its pages read back by others: PNG by a
//! decoder, SVG by resvg, PDF by poppler's `pdftoppm`; and only the part of a page that is asked for.

use std::fs;
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use serde_json::Value;
use tempfile::TempDir;

use super::page::{Page, pages};
use super::seen::{Filter, INCH, Picture, View};

/// Of the PNG pages.
const PPI: u32 = 300;
/// At which vector pages are made dots. Viewers that smooth edges mix each layer with those below it, dot by dot: an edge
/// that is drawn three times (left, right, overlap) grows by up to a quarter of a dot. Smaller dots keep that far below
/// what is measured.
const VECTOR_PPI: u32 = 600;

/// A format, read back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Format {
    Png,
    Svg,
    Pdf,
}

/// An edition to measure.
#[derive(Debug, Clone, Copy)]
pub(super) struct Wanted {
    pub(super) id: &'static str,
    pub(super) page: &'static str,
    pub(super) page_mm: [f64; 2],
    pub(super) ground: &'static str,
    pub(super) left: Filter,
}

/// A part of a page in dots: columns and rows.
type Part = [Range<u32>; 2];

/// A box on a page, mm: low and high corner.
pub(super) type Corners = ([f64; 2], [f64; 2]);

/// An edition as rendered.
pub(super) struct Edition {
    pub(super) wanted: Wanted,
    pub(super) view: View,
    pub(super) pages: Vec<Page>,
    report: Value,
    folder: PathBuf,
    // Holds the files until the edition is dropped.
    _home: TempDir,
}

impl Wanted {
    fn colours(&self) -> [&'static str; 2] {
        match self.left {
            Filter::Red => ["red", "cyan"],
            Filter::Cyan => ["cyan", "red"],
        }
    }

    /// Renders the edition from a copy of the demo set.
    pub(super) fn render(self, formats: &str) -> Edition {
        let home = TempDir::new().unwrap();
        let set = home.path().join("set");
        fs::create_dir(&set).unwrap();
        crate::demo_set::copy_to(&set);
        let text = fs::read_to_string(set.join("set.toml")).unwrap();
        let (before, _) = text.split_once("[[edition]]").unwrap();
        let (Self { id, page, ground, .. }, [left, right]) = (self, self.colours());
        let own = format!(
            "[[edition]]\nid = \"{id}\"\npage = \"{page}\"\nground = \"{ground}\"\nppi = {PPI}\n\
             glasses = {{ left = \"{left}\", right = \"{right}\" }}\n"
        );
        fs::write(set.join("set.toml"), format!("{before}{own}")).unwrap();
        let out = home.path().join("out");
        let ended = Command::new(env!("CARGO_BIN_EXE_depthpress"))
            .args(["render", "--quiet", "--format", formats, "--out"])
            .args([&out, &set])
            .stdin(Stdio::null())
            .output()
            .unwrap();
        assert!(ended.status.success(), "{}", String::from_utf8_lossy(&ended.stderr));
        Edition::open(self, out.join("harbour-lights").join(id), &set, home)
    }
}

impl Edition {
    fn open(wanted: Wanted, folder: PathBuf, set: &Path, home: TempDir) -> Self {
        let report: Value = serde_json::from_slice(&fs::read(folder.join("report.json")).unwrap()).unwrap();
        let [left, right] = wanted.colours();
        let edition = &report["edition"];
        assert_eq!(edition["glasses"]["left"], left);
        assert_eq!(edition["glasses"]["right"], right);
        assert_eq!(edition["ground"], wanted.ground);
        assert_eq!(edition["ppi"], PPI);
        let ground = match wanted.ground {
            "white" => [255; 3],
            "black" => [0; 3],
            other => panic!("`{other}` is no ground"),
        };
        let right = match wanted.left {
            Filter::Red => Filter::Cyan,
            Filter::Cyan => Filter::Red,
        };
        let pages = pages(&report, set);
        assert!(pages.iter().all(|page| page.size == wanted.page_mm));
        Self { wanted, view: View { left: wanted.left, right, ground }, pages, report, folder, _home: home }
    }

    /// The page with this id.
    pub(super) fn page(&self, id: &str) -> &Page {
        self.pages.iter().find(|page| page.id == id).unwrap_or_else(|| panic!("no page `{id}`"))
    }

    fn file(&self, page: &Page, format: &str) -> PathBuf {
        let entry = &self.report["pages"][page.number as usize - 1];
        self.folder.join(entry[format].as_str().unwrap())
    }

    /// A part of a page as another program reads it; what lies beyond the edges of the page is cut off.
    pub(super) fn read(&self, format: Format, page: &Page, corners: Corners) -> Picture {
        match format {
            Format::Png => self.png(page, &part(page, PPI, corners)),
            Format::Svg => self.svg(page, &part(page, VECTOR_PPI, corners)),
            Format::Pdf => self.pdf(page, &part(page, VECTOR_PPI, corners)),
        }
    }

    /// A part of a page from its PNG file, whose size must be that of the page.
    fn png(&self, page: &Page, part: &Part) -> Picture {
        let file = fs::File::open(self.file(page, "png")).unwrap();
        let mut decoder = png::Decoder::new(std::io::BufReader::new(file));
        decoder.set_transformations(png::Transformations::EXPAND);
        let mut reader = decoder.read_info().unwrap();
        let mut bytes = vec![0; reader.output_buffer_size().unwrap()];
        let info = reader.next_frame(&mut bytes).unwrap();
        assert_eq!([info.width, info.height], page.size.map(|mm| dots(mm, PPI).round() as u32), "{}", page.id);
        let (dot, row) = (info.color_type.samples(), info.line_size);
        let start = part[1].start as usize * row + part[0].start as usize * dot;
        Picture { bytes, dot, row, start, ..part_of(PPI, part) }
    }

    /// A part of a page from its SVG file, rasterised by resvg.
    fn svg(&self, page: &Page, part: &Part) -> Picture {
        let text = fs::read(self.file(page, "svg")).unwrap();
        let tree = usvg::Tree::from_data(&text, &usvg::Options::default()).unwrap();
        // CSS pixels, 96 to the inch.
        let [width, height] = page.size.map(|mm| mm / INCH * 96.0);
        let size = [f64::from(tree.size().width()), f64::from(tree.size().height())];
        assert!((size[0] - width).abs() < 0.001 && (size[1] - height).abs() < 0.001, "{size:?}");
        let [columns, rows] = part;
        let scale = VECTOR_PPI as f32 / 96.0;
        let transform = tiny_skia::Transform::from_scale(scale, scale)
            .post_translate(-(columns.start as f32), -(rows.start as f32));
        let mut pixmap = tiny_skia::Pixmap::new(columns.len() as u32, rows.len() as u32).unwrap();
        resvg::render(&tree, transform, &mut pixmap.as_mut());
        let bytes = pixmap.take();
        assert!(bytes.chunks_exact(4).all(|dot| dot[3] == 255), "the ground must be painted");
        Picture { bytes, dot: 4, row: 4 * columns.len(), ..part_of(VECTOR_PPI, part) }
    }

    /// A part of a page of the PDF file, rasterised by poppler.
    fn pdf(&self, page: &Page, part: &Part) -> Picture {
        self.check_pdf_size(page);
        let [columns, rows] = part;
        let [width, height] = [columns.len(), rows.len()];
        let bytes = self.poppler("pdftoppm", page, |command| {
            let values = [VECTOR_PPI, columns.start, rows.start, width as u32, height as u32];
            for (option, value) in ["-r", "-x", "-y", "-W", "-H"].into_iter().zip(values) {
                command.args([option, &value.to_string()]);
            }
        });
        let head = format!("P6\n{width} {height}\n255\n");
        assert!(bytes.starts_with(head.as_bytes()), "a part of this size");
        assert_eq!(bytes.len(), head.len() + 3 * width * height);
        Picture { bytes, dot: 3, row: 3 * width, start: head.len(), ..part_of(VECTOR_PPI, part) }
    }

    /// The size of a page of the PDF file: `Page    6 size: 595.276 x 841.89 pts (A4)`.
    fn check_pdf_size(&self, page: &Page) {
        let told = String::from_utf8_lossy(&self.poppler("pdfinfo", page, |_| {})).into_owned();
        let line = told.lines().find_map(|l| l.strip_prefix("Page ")?.split_once("size:")).expect("a page size");
        let points: Vec<f64> = line.1.split_whitespace().filter_map(|word| word.parse().ok()).collect();
        assert_eq!(points.len(), 2, "{told}");
        for (points, mm) in points.into_iter().zip(page.size) {
            assert!((points / 72.0 * INCH - mm).abs() < 0.001, "{}: {told}", page.id);
        }
    }

    /// What a program of poppler says of one page of the PDF file.
    fn poppler(&self, program: &str, page: &Page, options: impl FnOnce(&mut Command)) -> Vec<u8> {
        let number = page.number.to_string();
        let mut command = Command::new(program);
        command.args(["-f", &number, "-l", &number]);
        options(&mut command);
        let ended = command.arg(self.folder.join("harbour-lights.pdf")).output();
        let ended = ended.expect("the programs of the package poppler-utils");
        assert!(ended.status.success(), "{}", String::from_utf8_lossy(&ended.stderr));
        ended.stdout
    }
}

/// A picture of a part without its bytes.
fn part_of(ppi: u32, [columns, rows]: &Part) -> Picture {
    let (origin, size) = ([columns.start, rows.start], [columns.len(), rows.len()]);
    Picture { ppi: f64::from(ppi), origin, size, bytes: Vec::new(), dot: 0, row: 0, start: 0 }
}

fn dots(mm: f64, ppi: u32) -> f64 {
    mm / INCH * f64::from(ppi)
}

/// The part of a page that holds a box, cut off at the edges of the page.
fn part(page: &Page, ppi: u32, (low, high): Corners) -> Part {
    [0, 1].map(|axis| {
        let start = dots(low[axis], ppi).floor().max(0.0) as u32;
        start..dots(high[axis], ppi).ceil().min(dots(page.size[axis], ppi).round()) as u32
    })
}
