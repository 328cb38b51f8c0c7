//! The text files of a bundle: README.txt, LICENSE and CHANGELOG.md, in the language of the set. Plain text in lines of at most
//! 76 characters.

use std::fmt::Write as _;

use crate::language::reading::Reading;
use crate::language::{Language, Tongue};
use crate::layout::fonts;
use crate::spec::{Answers, Edition, Hand, MediumSource, PageFormat, SetSpec, TextSize};

use super::super::extent::{answers_file, pdf_file};
use super::super::run::Written;
use super::{EDITIONS, Names};

/// The longest line, in characters.
const WIDTH: usize = 76;

/// What a README goes with.
#[derive(Clone, Copy)]
pub(super) enum With<'a> {
    /// A bundle.
    Bundle(&'a Names),
    /// The zip of one edition, with these files.
    Zip(&'a Written),
}

/// README.txt: what the bundle is, what it takes, which file is for whom, how to print it, when to stop.
pub(super) fn readme(
    set: &SetSpec,
    tongue: &Tongue,
    (editions, with): (&[&Edition], With<'_>),
    reading: Option<&Reading>,
) -> String {
    let mut text = Text::default();
    text.title(&set.title);
    text.line(&tongue.tell("bundle-version", &[("version", (&set.version).into()), ("date", (&set.date).into())]));
    set.author.iter().for_each(|author| text.line(&tongue.tell("bundle-by", &[("author", author.into())])));
    set.summary.iter().for_each(|summary| text.paragraph(summary));
    text.head(&tongue.say("bundle-what-head"));
    text.paragraph(&tongue.say("bundle-what"));
    text.head(&tongue.say("bundle-need-head"));
    needs(set, editions, tongue).iter().for_each(|need| text.item(need));
    text.head(&tongue.say("bundle-files-head"));
    which(set, editions, with, tongue).iter().for_each(|words| text.paragraph(words));
    text.block(&table(editions, tongue));
    let files = match with {
        With::Bundle(names) => files(set, names, tongue),
        With::Zip(written) => editions.iter().flat_map(|edition| own_files(set, edition, written, tongue)).collect(),
    };
    files.iter().for_each(|file| text.item(file));
    if editions.iter().any(|edition| is_printed(edition)) {
        text.head(&tongue.say("bundle-print-head"));
        text.paragraph(&tongue.say("bundle-print"));
    }
    text.head(&tongue.say("bundle-cautions-head"));
    text.paragraph(&tongue.say("bundle-cautions"));
    text.paragraph(&tongue.say("page-stop"));
    text.paragraph(&tongue.say("bundle-cautions-more"));
    if let Some(reading) = reading {
        text.head(&tongue.say("bundle-reading-head"));
        text.paragraph(&ease(reading, tongue));
    }
    text.head(&tongue.say("bundle-licence-head"));
    text.paragraph(&match &set.licence {
        Some(licence) => tongue.tell("bundle-licence", &[("name", (&licence.name).into())]),
        None => tongue.say("bundle-licence-none"),
    });
    if let Some(contact) = &set.contact {
        text.head(&tongue.say("bundle-contact-head"));
        text.paragraph(contact);
    }
    text.head(&tongue.say("bundle-whole-head"));
    text.paragraph(&tongue.say("bundle-whole"));
    text.block("sha256sum -c MANIFEST.sha256");
    text.finish()
}

/// How to find the edition that is wanted, and whether there are others.
fn which(set: &SetSpec, editions: &[&Edition], with: With<'_>, tongue: &Tongue) -> Vec<String> {
    let With::Bundle(_) = with else { return vec![tongue.say("bundle-files-one")] };
    let (held, all) = (editions.len(), set.editions.len());
    let counts = [("held", held.to_string().into()), ("all", all.to_string().into())];
    let some = (held < all).then(|| tongue.tell("bundle-files-some", &counts));
    some.into_iter().chain([tongue.say("bundle-files")]).collect()
}

/// What a reader needs: one of the pairs of glasses, paper and screen as far as there are such editions, room.
fn needs(set: &SetSpec, editions: &[&Edition], tongue: &Tongue) -> Vec<String> {
    let mut needs: Vec<String> = glasses(editions, tongue).into_iter().collect();
    if editions.iter().any(|edition| is_printed(edition)) {
        needs.push(tongue.say("bundle-need-print"));
    }
    if !editions.iter().all(|edition| is_printed(edition)) {
        needs.push(tongue.say("bundle-need-screen"));
    }
    needs.push(tongue.tell("bundle-need-room", &[("distance", tongue.cm(set.viewer.distance, 1).into())]));
    needs
}

/// The pair of glasses, or the pairs of which one is needed; `None` without editions.
fn glasses(editions: &[&Edition], tongue: &Tongue) -> Option<String> {
    let mut pairs: Vec<[String; 2]> = Vec::new();
    for edition in editions {
        let pair = worn(edition, tongue);
        if !pairs.contains(&pair) {
            pairs.push(pair);
        }
    }
    let told =
        |id: &str, [left, right]: &[String; 2]| tongue.tell(id, &[("left", left.into()), ("right", right.into())]);
    if let [pair] = &pairs[..] {
        return Some(told("bundle-need-glasses", pair));
    }
    let or = |first: String, second| {
        tongue.tell("bundle-need-or", &[("first", first.into()), ("second", String::into(second))])
    };
    let all = pairs.iter().map(|pair| told("bundle-need-pair", pair)).reduce(or)?;
    Some(tongue.tell("bundle-need-one-pair", &[("pairs", all.into())]))
}

/// How easy the words of the exercise pages are to read.
fn ease(reading: &Reading, tongue: &Tongue) -> String {
    let id = match reading.language {
        Language::En | Language::De => "bundle-reading-grade",
        Language::Es | Language::Fr => "bundle-reading-ease",
    };
    tongue.tell(
        id,
        &[("score", tongue.number(reading.score, 1).into()), ("formula", tongue.say("bundle-reading-formula").into())],
    )
}

/// The filters of an edition as worn: before the left eye, before the right eye.
fn worn(edition: &Edition, tongue: &Tongue) -> [String; 2] {
    [&edition.glasses.left, &edition.glasses.right].map(|filter| tongue.say(&format!("filter-{}", filter.name())))
}

/// Whether an edition is printed. Where nothing is said of that, a sheet of paper is.
fn is_printed(edition: &Edition) -> bool {
    match edition.colour.source {
        MediumSource::Print { .. } => true,
        MediumSource::Screen(_) => false,
        MediumSource::Unsaid => edition.page != PageFormat::Wide,
    }
}

/// The editions as a table in type of one width: what tells them apart, a column each.
fn table(editions: &[&Edition], tongue: &Tongue) -> String {
    let heads = ["edition", "page", "ground", "left", "right", "language", "text", "hand", "answers", "gated"];
    let mut rows = vec![heads.map(|head| tongue.say(&format!("bundle-column-{head}")))];
    for edition in editions {
        let ground = tongue.say(&format!("bundle-ground-{}", edition.ground.name()));
        let [left, right] = worn(edition, tongue);
        let text = tongue.say(&format!("bundle-text-{}", edition.text.name()));
        let hand = tongue.say(&format!("bundle-hand-{}", edition.hand.name()));
        rows.push([
            edition.id.clone(),
            edition.page.name().to_owned(),
            ground,
            left,
            right,
            edition.language.name().to_owned(),
            text,
            hand,
            tongue.say(&format!("bundle-answers-{}", edition.answers.name())),
            tongue.say(if edition.gated { "bundle-gated-with" } else { "bundle-gated-without" }),
        ]);
    }
    // A column that is the usual in every edition is left out.
    let any = |is_other: fn(&Edition) -> bool| editions.iter().any(|edition| is_other(edition));
    let is_told = |column: usize| match column {
        6 => any(|edition| edition.text != TextSize::Standard),
        7 => any(|edition| edition.hand != Hand::Right),
        8 => any(|edition| edition.answers != Answers::Turned),
        9 => any(|edition| !edition.gated),
        _ => true,
    };
    aligned(&rows, &(0..heads.len()).filter(|&column| is_told(column)).collect::<Vec<_>>())
}

/// These columns of a table, each as wide as its widest cell.
fn aligned<const N: usize>(rows: &[[String; N]], columns: &[usize]) -> String {
    let width = |column: usize| rows.iter().map(|row| row[column].chars().count()).max().unwrap_or(0);
    let mut out = String::new();
    for row in rows {
        let cells = columns.iter().map(|&column| format!("{:<1$}", row[column], width(column)));
        let _ = writeln!(out, "{}", cells.collect::<Vec<_>>().join("  ").trim_end());
    }
    out
}

/// What stands where in the bundle.
fn files(set: &SetSpec, names: &Names, tongue: &Tongue) -> Vec<String> {
    let word = tongue.say("bundle-id");
    let file = |id: &str, name: &str| tongue.tell(id, &[("file", name.into())]);
    let book = format!("{EDITIONS}/{word}/{}", pdf_file(&set.id));
    let zip = names.zip(Some(&word));
    vec![
        file("bundle-file-book", &book),
        file("bundle-file-zip", &zip),
        file("bundle-file-pages", &format!("{EDITIONS}/{word}/")),
        file("bundle-file-spec", "spec/"),
    ]
}

/// What stands where in the zip of one edition.
fn own_files(set: &SetSpec, edition: &Edition, written: &Written, tongue: &Tongue) -> Vec<String> {
    let below = |name: &str| format!("{EDITIONS}/{}/{name}", edition.id);
    let (book, answers) = (pdf_file(&set.id), answers_file(&set.id));
    let known = [
        ("bundle-file-book", book.as_str()),
        ("bundle-file-answers", answers.as_str()),
        ("bundle-file-single", "svg/"),
        ("bundle-file-single", "png/"),
    ];
    let is_there = |name: &str| {
        written.files.iter().any(|(file, _)| if name.ends_with('/') { file.starts_with(name) } else { file == name })
    };
    let known = known.into_iter().filter(|(_, name)| is_there(name));
    known.map(|(id, name)| tongue.tell(id, &[("file", below(name).into())])).collect()
}

/// LICENSE: what the author allows, whose work is in the set, and the licence of the typeface, whose files the books hold.
pub(super) fn licence(set: &SetSpec) -> String {
    let tongue = Tongue::of(set.language);
    let mut text = Text::default();
    text.title(&set.title);
    match &set.licence {
        Some(licence) => {
            text.paragraph(&licence.name);
            licence.text.iter().for_each(|words| text.paragraph(words));
            if !licence.credits.is_empty() {
                text.head(&tongue.say("bundle-credits-head"));
                licence.credits.iter().for_each(|credit| text.item(credit));
            }
        }
        None => text.paragraph(&tongue.say("bundle-licence-none")),
    }
    text.head(&tongue.say("bundle-typeface-head"));
    text.paragraph(&tongue.tell("bundle-typeface", &[("family", fonts::FAMILY.into())]));
    text.verbatim(fonts::LICENCE);
    text.finish()
}

/// CHANGELOG.md: every release that the set tells of, or its version alone.
pub(super) fn changelog(set: &SetSpec) -> String {
    let tongue = Tongue::of(set.language);
    let mut out = format!("# {}\n", tongue.tell("bundle-changes-head", &[("title", (&set.title).into())]));
    if set.releases.is_empty() {
        let _ = write!(out, "\n## {} ({})\n", set.version, set.date);
    }
    for release in &set.releases {
        let _ = write!(out, "\n## {} ({})\n\n", release.version, release.date);
        release.changes.iter().for_each(|change| out.push_str(&hanging("- ", change)));
    }
    out
}

/// Plain text as it grows.
#[derive(Default)]
struct Text(String);

impl Text {
    /// The title: in its own letters, underlined.
    fn title(&mut self, title: &str) {
        let line = "=".repeat(title.chars().count().min(WIDTH));
        let _ = write!(self.0, "{title}\n{line}\n\n");
    }

    fn head(&mut self, head: &str) {
        let line = "-".repeat(head.chars().count().min(WIDTH));
        self.gap();
        let _ = write!(self.0, "{head}\n{line}\n");
    }

    fn line(&mut self, line: &str) {
        self.0.push_str(&hanging("", line));
    }

    fn paragraph(&mut self, words: &str) {
        self.gap();
        self.line(words);
    }

    fn item(&mut self, words: &str) {
        if !self.0.lines().last().is_some_and(|line| line.starts_with("- ") || line.starts_with("  ")) {
            self.gap();
        }
        self.0.push_str(&hanging("- ", words));
    }

    /// Lines that are kept as they are, indented.
    fn block(&mut self, lines: &str) {
        self.gap();
        lines.lines().for_each(|line| {
            let _ = writeln!(self.0, "    {line}");
        });
        self.0.push('\n');
    }

    /// Lines that are kept as they are.
    fn verbatim(&mut self, lines: &str) {
        self.gap();
        self.0.push_str(&lines.replace('\r', ""));
    }

    /// One empty line before what follows.
    fn gap(&mut self) {
        if !self.0.is_empty() && !self.0.ends_with("\n\n") {
            self.0.push('\n');
        }
    }

    fn finish(self) -> String {
        format!("{}\n", self.0.trim_end())
    }
}

/// Words in lines of at most [`WIDTH`] characters: the first begins with `mark`, the others with as many blanks. A word that is
/// longer has a line of its own. No-break spaces hold.
fn hanging(mark: &str, words: &str) -> String {
    let indent = " ".repeat(mark.chars().count());
    let (mut out, mut line) = (String::new(), mark.to_owned());
    let mut is_bare = true;
    for word in words.split([' ', '\n']).filter(|word| !word.is_empty()) {
        if !is_bare && WIDTH < line.chars().count() + 1 + word.chars().count() {
            let _ = writeln!(out, "{line}");
            (line, is_bare) = (indent.clone(), true);
        }
        if !is_bare {
            line.push(' ');
        }
        line.push_str(word);
        is_bare = false;
    }
    let _ = writeln!(out, "{line}");
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_hang_under_their_mark_and_keep_their_width() {
        let text = hanging("- ", &"mooring ".repeat(40));
        assert!(text.lines().all(|line| line.chars().count() <= WIDTH));
        assert!(text.starts_with("- mooring") && text.lines().skip(1).all(|line| line.starts_with("  mooring")));
        assert_eq!(text.matches("mooring").count(), 40);
    }

    #[test]
    fn columns_are_as_wide_as_their_widest_cell() {
        let rows = [["a", "bb"], ["größer", "c"]].map(|row| row.map(str::to_owned));
        assert_eq!(aligned(&rows, &[0, 1]), "a       bb\ngrößer  c\n");
        assert_eq!(aligned(&rows, &[1]), "bb\nc\n");
    }
}
