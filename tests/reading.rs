//! Specs without fault: every word and default of the language arrives as what it means.

use depthpress::colour::{Filter, Glasses, Ground};
use depthpress::diagnostics::{Diagnostics, Sources};
use depthpress::exercise::ramp::Ramp;
use depthpress::exercise::steps::jump::{ArrangementForm, Stops};
use depthpress::exercise::steps::nest::RoomForm;
use depthpress::exercise::steps::trail::TrailPath;
use depthpress::exercise::{Body, Exercise, read_exercise};
use depthpress::scene::{At, Depth, Eyes, Scaling, Shape, Side, Size};
use depthpress::spec::reader::Reader;
use depthpress::spec::set::read_set;
use depthpress::spec::{Formats, PageFormat, SetSpec};
use depthpress::units::{Angle, Mm, Ppi, PrismDioptre, Seconds};

fn exercise(text: &str) -> Exercise {
    let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
    let file = sources.add("case.toml", text);
    let read = read_exercise(&mut Reader::new(&sources, file, &mut problems), "case");
    assert_eq!(problems.iter().map(|p| &p.message).collect::<Vec<_>>(), Vec::<&String>::new(), "{text}");
    read.unwrap()
}

fn set(text: &str) -> SetSpec {
    let (mut sources, mut problems) = (Sources::default(), Diagnostics::new());
    let file = sources.add("set.toml", text);
    let read = read_set(&mut Reader::new(&sources, file, &mut problems));
    assert_eq!(problems.iter().map(|p| &p.message).collect::<Vec<_>>(), Vec::<&String>::new(), "{text}");
    read.set.unwrap()
}

fn hold(target: &str) -> depthpress::exercise::fusion::hold::Hold {
    let text = format!("[exercise]\nkind = \"hold\"\ntitle = \"T\"\n[[target]]\n{target}\n");
    let Body::Hold(hold) = exercise(&text).body else { panic!() };
    hold
}

#[test]
fn a_target_has_the_promised_defaults() {
    let hold = hold("shape = \"ring\"\nsize = \"40 mm\"\ndepth = \"2 pd toward\"");
    assert_eq!((hold.hold, hold.repeats), (Seconds(10.0), 5));
    let target = hold.target;
    assert_eq!(target.label, "target-1");
    assert_eq!(target.size, Ramp::Same(Size::Length(Mm(40.0))));
    assert_eq!(target.at, At::default());
    assert_eq!(target.depth, Ramp::Same(Depth::Demand(PrismDioptre(2.0), Side::Toward)));
    assert_eq!((target.eyes, target.scaling), (Eyes::Both, Scaling::ConstantAngle));
    assert_eq!((target.weight, target.watch, target.lock), (Mm(2.0), true, true));
}

#[test]
fn a_target_takes_every_key() {
    let target = hold(
        "label = \"lamp\"\nshape = \"text\"\ntext = \"AHOY\"\nsize = \"2 deg\"\nat = [\"1 cm\", \"-2 mm\"]\n\
         depth = \"3 mm parallax away\"\neyes = \"left\"\nscaling = \"constant object\"\nweight = \"1 mm\"\n\
         marks = false\nlock = false",
    )
    .target;
    assert_eq!((target.label.as_str(), target.shape), ("lamp", Shape::Text("AHOY".into())));
    assert_eq!(target.size, Ramp::Same(Size::Angle(Angle::from_degrees(2.0))));
    assert_eq!(target.at, At { x: Mm(10.0), y: Mm(-2.0) });
    assert_eq!(target.depth, Ramp::Same(Depth::Parallax(Mm(3.0), Side::Away)));
    assert_eq!((target.eyes, target.scaling), (Eyes::Left, Scaling::ConstantObject));
    assert_eq!((target.weight, target.watch, target.lock), (Mm(1.0), false, false));
}

#[test]
fn every_shape_and_eye_word_means_itself() {
    let shapes = [
        ("ring", Shape::Ring),
        ("disc", Shape::Disc),
        ("square", Shape::Square),
        ("diamond", Shape::Diamond),
        ("star", Shape::Star),
        ("cross", Shape::Cross),
        ("triangle", Shape::Triangle),
    ];
    for (word, shape) in shapes {
        let read = hold(&format!("shape = \"{word}\"\nsize = \"9 mm\"\ndepth = \"page\"")).target.shape;
        assert_eq!(read, shape, "{word}");
    }
    for (word, eyes) in [("both", Eyes::Both), ("left", Eyes::Left), ("right", Eyes::Right)] {
        let target = format!("shape = \"ring\"\nsize = \"9 mm\"\ndepth = \"page\"\neyes = \"{word}\"");
        assert_eq!(hold(&target).target.eyes, eyes, "{word}");
    }
}

#[test]
fn ramps_give_one_value_a_level() {
    let text = "[exercise]\nkind = \"hold\"\ntitle = \"T\"\n[[target]]\nshape = \"ring\"\n\
                size = { values = [\"40 mm\", \"30 mm\", \"25 mm\"] }\n\
                depth = { from = \"1 pd toward\", to = \"3 pd toward\", levels = 3 }\n";
    let read = exercise(text);
    assert_eq!(read.levels(), 3);
    let Body::Hold(hold) = read.body else { panic!() };
    assert_eq!(hold.target.size.at(3), Size::Length(Mm(25.0)));
    assert_eq!(hold.target.depth.at(1), Depth::Demand(PrismDioptre(1.0), Side::Toward));
    assert_eq!(hold.target.depth.at(3), Depth::Demand(PrismDioptre(3.0), Side::Toward));
}

#[test]
fn the_place_of_a_target_is_its_depth() {
    let text = "[exercise]\nkind = \"hold\"\ntitle = \"T\"\n[[target]]\nshape = \"ring\"\nsize = \"9 mm\"\n\
                depth = \"2 pd away\"\n";
    let read = exercise(text);
    assert_eq!(&text[read.place.range()], "[exercise]");
    let Body::Hold(hold) = read.body else { panic!() };
    assert_eq!(&text[hold.target.place.range()], "\"2 pd away\"");
}

#[test]
fn author_words_arrive() {
    let text = "[exercise]\nkind = \"hold\"\ntitle = \"T\"\ngoal = \"G\"\nsetup = \"S\"\ndo = [\"one\", \"two\"]\n\
                see = \"V\"\n[[target]]\nshape = \"ring\"\nsize = \"9 mm\"\ndepth = \"page\"\n";
    let words = exercise(text).words;
    assert_eq!(
        (words.goal.as_deref(), words.setup.as_deref(), words.see.as_deref()),
        (Some("G"), Some("S"), Some("V"))
    );
    assert_eq!(words.steps, Some(vec!["one".to_owned(), "two".to_owned()]));
}

#[test]
fn an_arrangement_arrives() {
    for (word, form) in
        [("row", ArrangementForm::Row), ("column", ArrangementForm::Column), ("ring", ArrangementForm::Ring)]
    {
        let text = format!(
            "[exercise]\nkind = \"jump\"\ntitle = \"T\"\nnumbers = false\nstay = \"2 s\"\nrounds = 4\n[arrangement]\n\
             form = \"{word}\"\ncount = 3\nspacing = \"30 mm\"\nroute = [2, 3, 1]\nshape = \"disc\"\nsize = \"9 mm\"\n\
             depths = [\"page\", {{ values = [\"1 pd away\", \"2 pd away\"] }}]\n"
        );
        let read = exercise(&text);
        assert_eq!(read.levels(), 2);
        let Body::Jump(jump) = read.body else { panic!() };
        assert_eq!((jump.numbers, jump.stay, jump.rounds), (false, Seconds(2.0), 4));
        let Stops::Arranged(arrangement) = jump.stops else { panic!() };
        assert_eq!(
            (arrangement.form, arrangement.count, arrangement.spacing),
            (form, Ramp::Same(3), Ramp::Same(Mm(30.0)))
        );
        assert_eq!(arrangement.route, Some(vec![2, 3, 1]));
        assert_eq!(arrangement.depths.len(), 2);
        assert_eq!((arrangement.target.shape, arrangement.target.lock), (Shape::Disc, true));
    }
}

#[test]
fn every_trail_form_arrives() {
    let at = |x, y| At { x: Mm(x), y: Mm(y) };
    let ends = "from = [\"-9 mm\", \"1 mm\"]\nto = [\"9 mm\", \"2 mm\"]\n";
    let (from, to) = (at(-9.0, 1.0), at(9.0, 2.0));
    let forms = [
        (format!("form = \"line\"\n{ends}"), TrailPath::Line { from, to }),
        (
            format!("form = \"wave\"\n{ends}waves = 2\nheight = \"8 mm\"\n"),
            TrailPath::Wave { from, to, waves: 2, height: Mm(8.0) },
        ),
        (
            "form = \"spiral\"\nturns = 3\nouter = \"40 mm\"\ninner = \"0 mm\"\n".to_owned(),
            TrailPath::Spiral { turns: 3, outer: Mm(40.0), inner: Mm(0.0) },
        ),
        (
            "form = \"loop\"\nwidth = \"90 mm\"\nheight = \"60 mm\"\n".to_owned(),
            TrailPath::Loop { width: Mm(90.0), height: Mm(60.0) },
        ),
        (
            "form = \"polyline\"\npoints = [[\"0 mm\", \"0 mm\"], [\"9 mm\", \"3 mm\"]]\n".to_owned(),
            TrailPath::Polyline { points: vec![at(0.0, 0.0), at(9.0, 3.0)] },
        ),
    ];
    for (keys, path) in forms {
        let text =
            format!("[exercise]\nkind = \"trail\"\ntitle = \"T\"\n[trail]\ndepths = [\"page\", \"1 pd away\"]\n{keys}");
        let Body::Trail(trail) = exercise(&text).body else { panic!() };
        assert_eq!(trail.path, path);
        assert_eq!((trail.rounds, trail.beads, trail.weight, trail.watch), (3, 9, Mm(1.6), true));
        assert_eq!(trail.bead_size, Size::Length(Mm(6.0)));
    }
}

#[test]
fn a_room_arrives_and_its_targets_keep_their_size_in_space() {
    for (word, form) in [("box", RoomForm::Box), ("frames", RoomForm::Frames), ("corridor", RoomForm::Corridor)] {
        let text = format!(
            "[exercise]\nkind = \"nest\"\ntitle = \"T\"\n[room]\nform = \"{word}\"\nwidth = \"12 cm\"\nheight = \"8 cm\"\n\
             front = \"2 pd toward\"\nback = \"1 pd away\"\n[[target]]\nshape = \"disc\"\nsize = \"9 mm\"\ndepth = \"page\"\n"
        );
        let Body::Nest(nest) = exercise(&text).body else { panic!() };
        assert_eq!((nest.room.form, nest.room.frames, nest.room.weight), (form, 5, Mm(0.6)));
        assert_eq!((nest.room.width, nest.room.height), (Mm(120.0), Mm(80.0)));
        assert_eq!(nest.room.front, Ramp::Same(Depth::Demand(PrismDioptre(2.0), Side::Toward)));
        assert_eq!((nest.targets[0].scaling, nest.targets[0].lock), (Scaling::ConstantObject, false));
    }
}

#[test]
fn a_set_arrives() {
    let text = r#"
[set]
id = "s"
title = "Title"
summary = "Summary"
author = "Author"
version = "2.10.0"
date = "2024-02-29"
language = "en"
exercises = ["a.toml"]
[viewer]
distance = "0.5 m"
ipd = "60 mm"
ipd_range = ["5 cm", "75 mm"]
[glasses]
left = "red"
right = "cyan"
[[edition]]
id = "e1"
page = "A4"
ground = "white"
ppi = 300
[[edition]]
id = "e2"
page = "Letter"
ground = "black"
ppi = 1_200
glasses = { left = "cyan", right = "red" }
formats = ["png"]
[[edition]]
id = "e3"
page = "16:9"
ground = "black"
ppi = 0x60
"#;
    let set = set(text);
    assert_eq!((set.id.as_str(), set.title.as_str(), set.version.as_str()), ("s", "Title", "2.10.0"));
    assert_eq!((set.summary.as_deref(), set.author.as_deref()), (Some("Summary"), Some("Author")));
    assert_eq!((set.viewer.distance, set.viewer.ipd), (Mm(500.0), Mm(60.0)));
    assert_eq!(set.viewer.ipd_range, (Mm(50.0), Mm(75.0)));
    let [a, b, c] = &set.editions[..] else { panic!() };
    assert_eq!((a.page, a.ground, a.ppi), (PageFormat::A4, Ground::White, Ppi(300)));
    assert_eq!(a.glasses, Glasses::ideal(Filter::Red, Filter::Cyan));
    assert_eq!(a.formats, Formats { pdf: true, svg: true, png: true });
    assert_eq!((b.page, b.ground, b.ppi), (PageFormat::Letter, Ground::Black, Ppi(1200)));
    assert_eq!(b.glasses, Glasses::ideal(Filter::Cyan, Filter::Red));
    assert_eq!(b.formats, Formats { pdf: false, svg: false, png: true });
    assert_eq!((c.page, c.ppi), (PageFormat::Wide, Ppi(96)));
}

/// A listed ramp and one in steps go one after the other: three and three levels make five pages.
#[test]
fn ramps_in_turn_change_one_thing_at_a_time() {
    let text = "[exercise]\nkind = \"hold\"\ntitle = \"T\"\nin_turn = [\"depth\", \"size\"]\n[[target]]\nshape = \"ring\"\n\
                size = { values = [\"40 mm\", \"30 mm\", \"25 mm\"] }\n\
                depth = { from = \"1 pd toward\", to = \"3 pd toward\", step = \"1 pd\" }\n";
    let read = exercise(text);
    assert_eq!(read.levels(), 5);
    let Body::Hold(hold) = read.body else { panic!() };
    let rungs: Vec<_> = (1..=5).map(|level| (hold.target.depth.at(level), hold.target.size.at(level))).collect();
    let sizes = [40.0, 40.0, 40.0, 30.0, 25.0].map(|mm| Size::Length(Mm(mm)));
    assert_eq!(rungs.iter().map(|rung| rung.1).collect::<Vec<_>>(), sizes);
    assert_eq!(rungs[0].0, Depth::Demand(PrismDioptre(1.0), Side::Toward));
    for rung in &rungs[2..] {
        assert_eq!(rung.0, Depth::Demand(PrismDioptre(3.0), Side::Toward));
    }
}

/// Octaves: each rung is half the one before.
#[test]
fn a_geometric_ramp_goes_in_equal_ratios() {
    let text = "[exercise]\nkind = \"hold\"\ntitle = \"T\"\n[[target]]\nshape = \"ring\"\nsize = \"30 mm\"\n\
                depth = { from = \"800 arcsec toward\", to = \"100 arcsec toward\", levels = 4, curve = \"geometric\" }\n";
    let Body::Hold(hold) = exercise(text).body else { panic!() };
    for (level, arcsec) in (1..).zip([800.0, 400.0, 200.0, 100.0]) {
        let Depth::Disparity(angle, Side::Toward) = hold.target.depth.at(level) else { panic!() };
        assert!((angle.to_arcsec() - arcsec).abs() < 1e-9, "{level}: {}", angle.to_arcsec());
    }
}
