//! The forms of text that keys take: plain lines, names, versions, dates, paths.

use super::field::{ID_LENGTH, Takes};

/// Why a text does not fit.
pub(super) struct Wrong {
    /// Follows the key: "must not be empty".
    pub message: String,
    pub label: String,
    pub help: String,
}

fn wrong(message: impl Into<String>, label: impl Into<String>, help: impl Into<String>) -> Result<(), Wrong> {
    Err(Wrong { message: message.into(), label: label.into(), help: help.into() })
}

/// Checks a text against one of the text forms.
pub(super) fn check(takes: &Takes, text: &str) -> Result<(), Wrong> {
    match takes {
        Takes::Text(max) => check_line(text, *max as usize),
        Takes::Id => check_id(text),
        Takes::Version => check_version(text),
        Takes::Date => check_date(text),
        Takes::File => check_file(text),
        Takes::Data(_) => check_data(text),
        Takes::Picture(ending) => check_picture(text, ending),
        _ => Ok(()),
    }
}

fn check_line(text: &str, max: usize) -> Result<(), Wrong> {
    let length = text.chars().count();
    if text.trim().is_empty() {
        wrong("must not be empty", "empty", format!("write 1 to {max} characters"))
    } else if max < length {
        let message = format!("has {length} characters, above the most it takes, {max}");
        wrong(message, format!("limit {max} characters"), "shorten it")
    } else if let Some(control) = text.chars().find(|c| c.is_control()) {
        let message = format!("holds the control character `{}`", control.escape_default());
        wrong(message, "one line of plain text", "write it as one line, without line ends or tabs")
    } else {
        Ok(())
    }
}

/// Whether a text is a name: `[a-z0-9][a-z0-9-]*`, at most [`ID_LENGTH`] long.
pub fn is_id(text: &str) -> bool {
    let inner = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    !text.is_empty() && text.len() <= ID_LENGTH && !text.starts_with('-') && text.chars().all(inner)
}

fn check_id(text: &str) -> Result<(), Wrong> {
    if is_id(text) {
        return Ok(());
    }
    let help = format!("use `a`-`z`, `0`-`9` and `-`, starting with a letter or digit, at most {ID_LENGTH} characters");
    wrong(format!("cannot be `{}`", shown(text)), "not a name", help)
}

fn check_version(text: &str) -> Result<(), Wrong> {
    let parts: Vec<&str> = text.split('.').collect();
    let number = |p: &&str| {
        (1..=5).contains(&p.len()) && p.bytes().all(|b| b.is_ascii_digit()) && (*p == "0" || !p.starts_with('0'))
    };
    if parts.len() == 3 && parts.iter().all(number) {
        return Ok(());
    }
    let help = "write three whole numbers with points between them, for example `\"1.0.0\"`";
    wrong(format!("cannot be `{}`", shown(text)), "not a version", help)
}

fn check_date(text: &str) -> Result<(), Wrong> {
    let digits = |range: std::ops::Range<usize>| -> Option<u32> {
        let part = text.get(range)?;
        part.bytes().all(|b| b.is_ascii_digit()).then(|| part.parse().ok()).flatten()
    };
    let shape = text.len() == 10 && text.is_ascii() && &text[4..5] == "-" && &text[7..8] == "-";
    let parts = if shape { digits(0..4).zip(digits(5..7)).zip(digits(8..10)) } else { None };
    let Some(((year, month), day)) = parts else {
        let help = "write year, month and day, for example `\"2026-05-04\"`";
        return wrong(format!("cannot be `{}`", shown(text)), "not `YYYY-MM-DD`", help);
    };
    let last = days_in(year, month);
    if (1..=last).contains(&day) {
        Ok(())
    } else if last == 0 {
        wrong(format!("cannot be `{text}`: months go from 01 to 12"), "no such month", "write a day of the calendar")
    } else {
        let message = format!("cannot be `{text}`: that month has {last} days");
        wrong(message, "no such day", "write a day of the calendar")
    }
}

/// Days of a month of the Gregorian calendar (ISO 8601), 0 for a month that does not exist.
fn days_in(year: u32, month: u32) -> u32 {
    let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    match month {
        1 | 3 | 5 | 7 | 8 | 10 | 12 => 31,
        4 | 6 | 9 | 11 => 30,
        2 if leap => 29,
        2 => 28,
        _ => 0,
    }
}

/// A path must stay in the folder of the set, and the stem must be a name: it becomes the id of the exercise.
fn check_file(text: &str) -> Result<(), Wrong> {
    let seen = shown(text);
    check_inside(text, "files of a set stay in its folder; give the path from there")?;
    let Some(stem) = text.rsplit('/').next().and_then(|name| name.strip_suffix(".toml")) else {
        return wrong(
            format!("is `{seen}`, not a `.toml` file"),
            "not `.toml`",
            "give the path of a file that ends in `.toml`",
        );
    };
    if is_id(stem) {
        return Ok(());
    }
    let help = format!(
        "name the file with `a`-`z`, `0`-`9` and `-`, starting with a letter or digit, at most {ID_LENGTH} characters"
    );
    wrong(format!("is `{seen}`: `{}` is not a name", shown(stem)), "not a name", help)
}

/// A file of numbers must stay in the folder of the set.
fn check_data(text: &str) -> Result<(), Wrong> {
    check_inside(text, "files of numbers stay in the folder of the set; give the path from there")?;
    let name = text.rsplit('/').next().unwrap_or("");
    if name.strip_suffix(".csv").is_some_and(|stem| !stem.is_empty()) {
        return Ok(());
    }
    wrong(format!("is `{}`, not a `.csv` file", shown(text)), "not `.csv`", "files of numbers end in `.csv`")
}

/// A picture must stay in the folder of the set, and its stem must be a name: it is what pages call the picture.
fn check_picture(text: &str, ending: &str) -> Result<(), Wrong> {
    let seen = shown(text);
    check_inside(text, "pictures stay in the folder of the set; give the path from there")?;
    let name = text.rsplit('/').next().unwrap_or("");
    let Some(stem) = name.strip_suffix(ending).and_then(|stem| stem.strip_suffix('.')) else {
        let help = format!("this key takes a picture that ends in `.{ending}`");
        return wrong(format!("is `{seen}`, not a `.{ending}` file"), format!("not `.{ending}`"), help);
    };
    if is_id(stem) {
        return Ok(());
    }
    let help = format!(
        "name the file with `a`-`z`, `0`-`9` and `-`, starting with a letter or digit, at most {ID_LENGTH} characters"
    );
    wrong(format!("is `{seen}`: `{}` cannot name a picture", shown(stem)), "not a name", help)
}

/// A path from the folder of the set that cannot lead out of it; `inside` is the way out.
fn check_inside(text: &str, inside: &'static str) -> Result<(), Wrong> {
    let seen = shown(text);
    let drive = text.as_bytes().get(1) == Some(&b':');
    if text.starts_with('/') || text.starts_with('\\') || drive {
        return wrong(format!("is the absolute path `{seen}`"), "absolute path", inside);
    }
    if text.split(['/', '\\']).any(|part| part == "..") {
        return wrong(format!("is `{seen}`, which leads out of the folder"), "leads out", inside);
    }
    if text.contains('\\') || text.chars().any(char::is_control) {
        return wrong(format!("is `{seen}`"), "not a portable path", "separate folders with `/`");
    }
    if text.split('/').any(|part| part.is_empty() || part == ".") {
        return wrong(format!("is `{seen}`"), "empty part", "leave out `./` and doubled `/`");
    }
    Ok(())
}

/// An author's text for a message: control characters escaped, cut after 40 characters.
pub fn shown(text: &str) -> String {
    let mut out = String::new();
    for (i, c) in text.chars().enumerate() {
        if i == 40 {
            out.push('…');
            break;
        }
        if c.is_control() { out.extend(c.escape_default()) } else { out.push(c) }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_days_of_the_calendar() {
        for good in ["2026-05-04", "2024-02-29", "2000-02-29", "0001-01-01"] {
            assert!(check_date(good).is_ok(), "{good}");
        }
        for bad in [
            "2026-02-29",
            "1900-02-29",
            "2026-13-01",
            "2026-00-01",
            "2026-04-31",
            "2026-1-1",
            "2026/05/04",
            "+026-05-04",
            "ä26-05-04",
        ] {
            assert!(check_date(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn versions_are_three_numbers() {
        for good in ["1.0.0", "0.10.99999"] {
            assert!(check_version(good).is_ok(), "{good}");
        }
        for bad in ["1.0", "1.0.0.0", "01.0.0", "1.0.0-rc1", "1..0", "v1.0.0", "1.0.100000"] {
            assert!(check_version(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn paths_stay_in_the_folder() {
        for good in ["a.toml", "sub/a-1.toml"] {
            assert!(check_file(good).is_ok(), "{good}");
        }
        for bad in [
            "/a.toml",
            "../a.toml",
            "s/../a.toml",
            "C:/a.toml",
            "s\\a.toml",
            "./a.toml",
            "s//a.toml",
            "a.txt",
            ".toml",
            "A.toml",
            "a b.toml",
            "",
        ] {
            assert!(check_file(bad).is_err(), "{bad}");
        }
    }
}
