//! `posts`: upright posts, unevenly spaced, on a base line that lies on the page; each stands a whole number of equal
//! steps off it.

use crate::chance::Dice;
use crate::diagnostics::{Diagnostic, Place, codes};
use crate::language::Tongue;
use crate::scene::{At, Companions, Depth, Eyes, Feature, Form, Role, Scaling, Scene, Side, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm};
use crate::spec::read::Placed;
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::ramp::Ramp;
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `posts` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Posts {
    /// How many posts, 3 to 9.
    pub count: u32,
    /// One step.
    pub step: Ramp<Depth>,
    /// Whether the staircase runs through the page, half of it on either side.
    pub both_sides: bool,
    /// The place of each post in the staircase, from 1, left to right; without one the stairs follow the row.
    pub order: Option<Vec<u32>>,
    /// Where they stand.
    pub spacing: Spacing,
    /// Height of the posts.
    pub height: Mm,
    /// Width of the posts.
    pub weight: Mm,
    /// Whether each carries watch marks.
    pub watch: bool,
    /// Whether each carries its number, from the left.
    pub numbers: bool,
    /// Where the `[posts]` table is written.
    pub place: Place,
}

/// Where the posts of a row stand.
#[derive(Debug, Clone, PartialEq)]
pub enum Spacing {
    /// Each place given, to the right of the middle of the art field, left to right.
    Listed(Vec<Mm>),
    /// Drawn by lot within this width: no gap is less than [`LEAST_GAP`] of an even one.
    Drawn(Ramp<Mm>),
}

/// The least gap of a drawn row, as a share of an even gap. Design choice: uneven enough that counting gaps says nothing
/// about depth, wide enough for marks and disparity gradient.
pub const LEAST_GAP: f64 = 0.6;
/// The width of a drawn row where the author gives none.
const WIDTH: Mm = Mm(140.0);
/// From the middle of the art field down to the base line, mm.
const BASE: f64 = 34.0;
/// How far the base line reaches past the outer posts, and its width, mm.
const BEYOND: f64 = 14.0;
const BASE_WEIGHT: f64 = 1.2;

/// The kind.
pub const KIND: Kind = Kind {
    id: "posts",
    gated: false,
    strand: Strand::Depth,
    doc: "Upright posts stand unevenly spaced on a base line that lies on the page. Each stands a whole number of equal \
          steps off it, to one side or to both.",
    tables: &[&EXERCISE, &POSTS],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON]);

const POSTS: TableSpec = TableSpec {
    name: "posts",
    form: TableForm::Single,
    groups: &[&[
        Field::default("count", Takes::Count { min: 3, max: 9 }, "5", "How many posts."),
        Field::required(
            "step",
            Takes::Ramp(&Takes::Depth),
            "One step of the staircase, even in demand. Its side is that of the last stair.",
        ),
        Field::default(
            "sides",
            Takes::Choice(&["one", "both"]),
            r#""one""#,
            "`one`: the first stair lies on the page. `both`: the middle of the staircase lies on the page, and the \
             first stair on the other side; `count` is odd then.",
        ),
        Field::optional(
            "order",
            Takes::List { of: &Takes::Count { min: 1, max: 9 }, min: 3, max: 9 },
            "The stair of each post, from the left: `[2, 5, 1, 4, 3]`. Left out: the stairs follow the row.",
        ),
        Field::optional(
            "places",
            Takes::List { of: &Takes::Length(mm(-90.0, 90.0)), min: 3, max: 9 },
            "Where each stands, to the right of the middle of the art field, from the left. Left out: drawn by lot.",
        ),
        Field::optional(
            "width",
            Takes::Ramp(&Takes::Length(mm(30.0, 170.0))),
            "From the first to the last post, where their places are drawn. Left out: 140 mm.",
        ),
        Field::default("height", Takes::Length(mm(15.0, 90.0)), r#""60 mm""#, "Height of the posts."),
        Field::default("weight", Takes::Length(mm(0.8, 8.0)), r#""3 mm""#, "Width of the posts."),
        Field::default("marks", Takes::Flag, "true", "Whether each carries watch marks, one for each eye."),
        Field::default("numbers", Takes::Flag, "true", "Whether each carries its number, from the left."),
    ]],
    doc: "The posts and their staircase.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "posts"
title = "Posts along the quay"

[posts]
count = 5
step = { from = "1 pd toward", to = "0.25 pd toward", levels = 4 }
"#;

impl Draws for Posts {
    fn levels(&self) -> Option<u32> {
        let width = match &self.spacing {
            Spacing::Listed(_) => None,
            Spacing::Drawn(width) => width.levels(),
        };
        self.step.levels().or(width)
    }

    fn is_seeded(&self) -> bool {
        matches!(self.spacing, Spacing::Drawn(_))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung), self.words(rung.level, rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    let mut table = document.table(reader, &POSTS)?;
    table.check_keys(reader);
    let step = super::read_step(reader, &table);
    let both_sides = table.one_of(reader, "sides", &[false, true]);
    let order: Option<Option<Vec<Placed<u32>>>> = table.maybe(reader, "order");
    let places: Option<Option<Vec<Placed<Mm>>>> = table.maybe(reader, "places");
    let width: Option<Option<Ramp<Mm>>> = table.maybe(reader, "width");
    let (height, weight) = (table.get(reader, "height"), table.get(reader, "weight"));
    let (watch, numbers) = (table.get(reader, "marks"), table.get(reader, "numbers"));
    let count = read_count(reader, &table, both_sides?)?;
    let order = match order? {
        Some(order) => Some(super::check_once(reader, table.place_of(reader, "order"), ORDER, &order, count as usize)?),
        None => None,
    };
    let spacing = match places? {
        Some(places) => Spacing::Listed(check_places(reader, &table, &places, count)?),
        None => Spacing::Drawn(width?.unwrap_or(Ramp::Same(WIDTH))),
    };
    Some(Body::Posts(Posts {
        count,
        step: step?,
        both_sides: both_sides?,
        order,
        spacing,
        height: height?,
        weight: weight?,
        watch: watch?,
        numbers: numbers?,
        place: table.place(),
    }))
}

/// The number of posts: odd where the middle one lies on the page.
fn read_count(reader: &mut Reader<'_>, table: &Table<'_>, both_sides: bool) -> Option<u32> {
    let count: u32 = table.get(reader, "count")?;
    if !both_sides || count % 2 == 1 {
        return Some(count);
    }
    let message = format!("`count` is `{count}`: a staircase to both sides has an odd number of posts");
    let problem = Diagnostic::error(codes::CONFLICT, table.place_of(reader, "count"), message)
        .with_label("no post in the middle")
        .with_help(format!("write `{}` or `{}`, or `sides = \"one\"`", count - 1, (count + 1).min(9)));
    reader.push(problem);
    None
}

/// What an order is made of, for messages.
const ORDER: (&str, &str) = ("order", "stair");

/// Places from left to right, one for each post.
fn check_places(reader: &mut Reader<'_>, table: &Table<'_>, places: &[Placed<Mm>], count: u32) -> Option<Vec<Mm>> {
    let problem = if table.has("width") {
        let problem = Diagnostic::error(
            codes::CONFLICT,
            table.place_of(reader, "width"),
            "`width` does not go with `places`: they say where each post stands",
        );
        problem.with_label("beside `places`").with_help("leave out `width`, or leave out `places`")
    } else if places.len() != count as usize {
        let message = format!("`places` has {} entries for {count} posts", places.len());
        Diagnostic::error(codes::LIST, table.place_of(reader, "places"), message)
            .with_label(format!("{} entries", places.len()))
            .with_help("give each post one place")
    } else if let Some(pair) = places.windows(2).find(|pair| pair[1].value <= pair[0].value) {
        Diagnostic::error(codes::LIST, pair[1].place, "`places` do not go from left to right")
            .with_label("not to the right of the one before")
            .with_help("list the places from the left, each larger than the one before")
    } else {
        return Some(places.iter().map(|place| place.value).collect());
    };
    reader.push(problem);
    None
}

impl Posts {
    /// The art of one page: the base line, then the posts from the left.
    fn scene(&self, rung: &Rung<'_>) -> Scene {
        let places = self.places(rung);
        let ends = places.first().zip(places.last());
        let base = ends.map(|(first, last)| {
            let line = (at(first - BEYOND, BASE), at(last + BEYOND, BASE));
            self.stroke("base".to_owned(), Role::Reference, line, Mm(BASE_WEIGHT), Depth::Page)
        });
        let posts = (1..).zip(&places).map(|(number, &x)| self.post(number, x, rung.level));
        Scene { features: base.into_iter().chain(posts).collect() }
    }

    /// Where the posts stand, to the right of the middle, mm.
    fn places(&self, rung: &Rung<'_>) -> Vec<f64> {
        let width = match &self.spacing {
            Spacing::Listed(places) => return places.iter().map(|place| place.0).collect(),
            Spacing::Drawn(width) => width.at(rung.level).0,
        };
        let gaps = f64::from(self.count - 1);
        let mut dice = Dice::new(&format!("{}/posts", rung.key));
        let draws: Vec<f64> = (1..self.count).map(|_| dice.unit()).collect();
        let total: f64 = draws.iter().sum::<f64>().max(f64::MIN_POSITIVE);
        let mut places = vec![-width / 2.0];
        let mut x = -width / 2.0;
        for draw in draws {
            x += width * (LEAST_GAP / gaps + (1.0 - LEAST_GAP) * draw / total);
            places.push(x);
        }
        places
    }

    /// A post, numbered from the left.
    fn post(&self, number: u32, x: f64, level: u32) -> Feature {
        let line = (at(x, BASE - self.height.0), at(x, BASE));
        let depth = self.depth(number, level);
        let mut feature = self.stroke(format!("post-{number}"), Role::Target, line, self.weight, depth);
        feature.companions =
            Companions { watch: self.watch, number: self.numbers.then_some(number), ..Companions::default() };
        feature
    }

    /// The depth of a post: its stair times the step, counted from the stair that lies on the page.
    fn depth(&self, number: u32, level: u32) -> Depth {
        let stair = self.order.as_ref().and_then(|order| order.get(number as usize - 1)).copied().unwrap_or(number);
        let ground = if self.both_sides { self.count.div_ceil(2) } else { 1 };
        Depth::Times(Box::new(self.step.at(level)), f64::from(stair) - f64::from(ground))
    }

    fn stroke(&self, id: String, role: Role, line: (At, At), weight: Mm, depth: Depth) -> Feature {
        Feature {
            id,
            role,
            eyes: Eyes::Both,
            form: Form::Strokes { strokes: vec![line], weight, depth },
            scaling: Scaling::ConstantAngle,
            companions: Companions::default(),
            solid: false,
            place: Some(self.place),
        }
    }

    /// The words of one level.
    fn words(&self, level: u32, tongue: &Tongue) -> Words {
        let (stairs, side) = (self.order.is_none(), self.step.at(level).side());
        let see = match (self.both_sides, side) {
            (true, _) if stairs => "posts-see-through",
            (true, _) => "posts-see-both-sides",
            (false, Some(Side::Away)) if stairs => "posts-see-stair-away",
            (false, _) if stairs => "posts-see-stair-toward",
            (false, Some(Side::Away)) => "posts-see-away",
            (false, _) => "posts-see-toward",
        };
        Words {
            goal: tongue.say("posts-goal"),
            setup: String::new(),
            steps: vec![
                tongue.say("posts-base"),
                tongue.say("posts-go"),
                tongue.tell("posts-check", &[words::marks(self.watch)]),
                tongue.say("posts-say"),
                tongue.say("posts-back"),
            ],
            see: words::with_marks(tongue.say(see), self.watch, tongue),
            one_part: words::one_part(self.watch, tongue),
        }
    }
}

fn at(x: f64, y: f64) -> At {
    At { x: Mm(x), y: Mm(y) }
}
