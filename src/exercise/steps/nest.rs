//! `nest`: targets inside a drawn box or corridor in true two-eye perspective, so that outline, size and overlap agree
//! with the depth and make it easier to see.

use crate::diagnostics::Place;
use crate::language::Tongue;
use crate::scene::{At, Depth, Feature, Scene, Strand};
use crate::spec::document::Document;
use crate::spec::field::{Field, TableForm, TableSpec, Takes, mm};
use crate::spec::reader::Reader;
use crate::spec::table::Table;
use crate::units::Mm;

use crate::exercise::ramp::Ramp;
use crate::exercise::solids::{Solid, SolidForm, Watch};
use crate::exercise::target::{self, Target};
use crate::exercise::words::{self, Words};
use crate::exercise::{Body, COMMON, Drawn, Draws, Kind, Rung, exercise_table};

/// The parameters of a `nest` exercise.
#[derive(Debug, Clone, PartialEq)]
pub struct Nest {
    /// The drawn room.
    pub room: Room,
    /// The targets in it, at least one. Their places and sizes are measured in the room, at their own depth, unless
    /// they ask for a constant angle.
    pub targets: Vec<Target>,
}

/// A `[room]`: a box or corridor that runs straight away from the eyes.
#[derive(Debug, Clone, PartialEq)]
pub struct Room {
    /// How it is drawn.
    pub form: RoomForm,
    /// Its width in space.
    pub width: Mm,
    /// Its height in space.
    pub height: Mm,
    /// Depth of its front opening.
    pub front: Ramp<Depth>,
    /// Depth of its back wall.
    pub back: Ramp<Depth>,
    /// How many frames stand along it, front and back included; at least 2.
    pub frames: u32,
    /// Width of its lines on the page.
    pub weight: Mm,
    /// Where it is written.
    pub place: Place,
}

/// How a [`Room`] is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RoomForm {
    /// Frames joined by the four long edges.
    Box,
    /// Frames alone, standing free one behind the other.
    Frames,
    /// Frames joined by the long edges, with a line along the middle of floor and ceiling.
    Corridor,
}

/// The kind.
pub const KIND: Kind = Kind {
    id: "nest",
    gated: false,
    strand: Strand::Depth,
    doc: "Targets stand inside a drawn box or corridor in true two-eye perspective, so that outline, size and overlap \
          agree with the depth and make it easier to see.",
    tables: &[&EXERCISE, &ROOM, &TARGET],
    read,
    example: EXAMPLE,
};

const EXERCISE: TableSpec = exercise_table(&[COMMON]);

const ROOM: TableSpec = TableSpec {
    name: "room",
    form: TableForm::Single,
    groups: &[&[
        Field::required(
            "form",
            Takes::Choice(&["box", "frames", "corridor"]),
            "Frames joined by the four long edges; frames alone; or frames joined by the long edges, with a line along the middle of floor and ceiling.",
        ),
        Field::required("width", Takes::Length(mm(10.0, 1000.0)), "Its width in space."),
        Field::required("height", Takes::Length(mm(10.0, 1000.0)), "Its height in space."),
        Field::required("front", Takes::Ramp(&Takes::Depth), "Depth of its front opening."),
        Field::required("back", Takes::Ramp(&Takes::Depth), "Depth of its back wall."),
        Field::default(
            "frames",
            Takes::Count { min: 2, max: 20 },
            "5",
            "How many frames stand along it, front and back included.",
        ),
        Field::default("weight", Takes::Length(mm(0.2, 10.0)), r#""0.6 mm""#, "Width of its lines on the page."),
    ]],
    doc: "A room that runs straight away from the eyes.",
};

const TARGET: TableSpec = TableSpec {
    name: "target",
    form: TableForm::Many,
    groups: &[target::OWN, target::LOOK, target::INSIDE],
    doc: "What stands in the room, one to twelve.",
};

const EXAMPLE: &str = r#"[exercise]
kind = "nest"
title = "The boat house"

[room]
form = "box"
width = "150 mm"
height = "100 mm"
front = "2 pd toward"
back = "1.5 pd away"

[[target]]
label = "lantern"
shape = "disc"
size = "18 mm"
depth = "1 pd toward"
"#;

impl Draws for Nest {
    fn levels(&self) -> Option<u32> {
        let room = self.room.front.levels().or(self.room.back.levels());
        room.or_else(|| self.targets.iter().find_map(Target::levels))
    }

    fn draw(&self, rung: &Rung<'_>) -> Drawn {
        Drawn::plain(self.scene(rung.level), self.words(rung.tongue))
    }
}

fn read(reader: &mut Reader<'_>, document: &Document<'_>, _exercise: &Table<'_>) -> Option<Body> {
    let room = document.table(reader, &ROOM).and_then(|table| read_room(reader, table));
    let targets = target::read_all(reader, document, &TARGET, KIND.id, (1, 12));
    Some(Body::Nest(Nest { room: room?, targets: targets? }))
}

fn read_room(reader: &mut Reader<'_>, mut table: Table<'_>) -> Option<Room> {
    table.check_keys(reader);
    let form = table.one_of(reader, "form", &[RoomForm::Box, RoomForm::Frames, RoomForm::Corridor]);
    let (width, height) = (table.get(reader, "width"), table.get(reader, "height"));
    let (front, back) = (table.get(reader, "front"), table.get(reader, "back"));
    let (frames, weight) = (table.get(reader, "frames"), table.get(reader, "weight"));
    Some(Room {
        form: form?,
        width: width?,
        height: height?,
        front: front?,
        back: back?,
        frames: frames?,
        weight: weight?,
        place: table.place(),
    })
}

impl Nest {
    /// The art of one level: the room, then the targets, which hide what stands behind them.
    fn scene(&self, level: u32) -> Scene {
        let mut features = self.room.features(level);
        features.extend(self.targets.iter().map(|target| Feature { solid: true, ..target.feature(level) }));
        Scene { features }
    }

    /// The words; they are the same on every level.
    fn words(&self, tongue: &Tongue) -> Words {
        let watch = self.targets.iter().any(|target| target.watch);
        let room = tongue.noun(match self.room.form {
            RoomForm::Box => "nest-box",
            RoomForm::Frames => "nest-frames",
            RoomForm::Corridor => "nest-corridor",
        });
        let count = || ("count", self.targets.len().into());
        let goal = tongue.tell("nest-goal", &[count(), ("room", (&room).into())]);
        let room = [("room", (&room).into())];
        Words {
            goal,
            setup: String::new(),
            steps: vec![
                tongue.tell("nest-window", &room),
                tongue.tell("nest-front", &room),
                tongue.tell("nest-check", &[count(), words::marks(watch)]),
                tongue.say("nest-back"),
            ],
            see: words::with_marks(tongue.tell("nest-see", &room), watch, tongue),
            one_part: words::one_part(watch, tongue),
        }
    }
}

impl Room {
    fn features(&self, level: u32) -> Vec<Feature> {
        let (edges, middle) = match self.form {
            RoomForm::Frames => (false, false),
            RoomForm::Box => (true, false),
            RoomForm::Corridor => (true, true),
        };
        let room = Solid {
            label: String::new(),
            form: SolidForm::Tunnel { frames: self.frames, edges, middle },
            at: At::default(),
            width: self.width,
            height: self.height,
            front: self.front.clone(),
            back: self.back.clone(),
            weight: self.weight,
            watch: Watch::Guide,
            place: self.place,
        };
        room.features(level)
    }
}
