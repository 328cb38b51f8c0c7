# The parts of a book besides cautions, checks and exercises.

# Who the book is for

audience-title = Who this book is for
audience-lead = Practice with both eyes suits some people and not others. Please read all of this page.
audience-description = Who the book is for, who should ask first, and who it is not for.
audience-one-heading = For one reader alone
audience-one = { $by } set this book for one reader. Is that not you? Do not use it.
audience-for = It may suit you if
audience-for-1 = you are an adult, or an adult sits beside you;
audience-for-2 = you would like to practise using both eyes together;
audience-for-3 = an eye-care professional has checked your eyes within the last year;
audience-for-4 = they told you that it is safe for you to practise.
audience-ask = Ask first if
audience-ask-1 = an eye turns, or one eye is much weaker than the other;
audience-ask-2 = you see double at times, or have a new prism;
audience-ask-3 = anything on the caution page is true for you.
audience-not = It is not for you if
audience-not-1 = double vision is new or came suddenly: get medical help now;
audience-not-2 = a professional told you not to practise with both eyes together;
audience-not-3 = you see with one eye only;
audience-not-4 = you want to know what is wrong with your eyes: these pages cannot tell;
audience-not-5 = it should take the place of glasses, a patch, medicine or surgery;
audience-not-6 = you are under 18 and no adult is with you.
audience-expect = What to expect
audience-expect-1 = Nobody can promise what practice will do for you. Some people see depth soon, some late, some never.
audience-expect-2 = Go at your own pace. You may stop at any time, and that is fine.

# What the reader needs

needs-title = What you need
needs-lead = Lay these out before you start. Then nothing calls you away.
needs-description = Glasses, paper or screen, light, desk and time.
needs-eyes = For your eyes
needs-glasses = Glasses with two filters: { $glasses }.
needs-own-glasses = Your own glasses under them, if you read with glasses. Keep a prism on.
needs-clean = A soft cloth. Clean filters let the right light through.
needs-paper = For the pages
needs-paper-1 = A colour printer. Print at 100 %, in best quality, without saving ink.
needs-paper-2 = White matt paper, 100 to 120 g. Shiny paper throws glare.
needs-paper-3 = Let the ink dry. Keep the pages flat and out of the sun.
needs-paper-4 = No photocopies: they change the inks and often the size.
needs-screen = For the pages
needs-screen-1 = A screen at least 32 cm wide. A phone is too small.
needs-screen-2 = Show the pages at 100 %, in full screen. The size check tells you how.
needs-screen-3 = Switch off night colours and automatic brightness. Wipe the screen.
needs-light = Light
needs-light-1 = Even light on the page, without glare or shadow.
needs-light-2 = The same lamp each time: another lamp can bring a ghost.
needs-desk = At the table
needs-ruler = A ruler, and a string of { $distance } to keep the distance.
needs-pencil = A pencil for the log and for boxes.
needs-flat = The page flat and square to your face.
needs-upright = A chair that lets you sit upright. A tilted head pulls the two pictures apart.
needs-time = Time
needs-minutes = { $minutes ->
    [one] At most one quiet minute a day.
   *[other] At most { $minutes } quiet minutes a day.
    }
needs-time-usual = At most 10 to 15 quiet minutes a day.
needs-distance-rest = A window or a long room, to rest your eyes far away.
needs-aloud = Someone who reads the words to you, if you like.

# The level map

map-title = Your map
map-lead = Each circle is a page. Colour it in when the page has become easy. There is no hurry, and no circle must be filled.
map-description = Every exercise page as a circle to colour in, by strand.
map-grade = grade { $n }
map-go = Go to page { $n }
map-check = Ready to begin
map-check-about = Do both eyes take part?
map-toward = Toward you
map-toward-about = Shapes stand before the page. Your eyes turn inward.
map-away = Away from you
map-away-about = Shapes stand behind the page. Your eyes turn outward.
map-jump = Jumps
map-jump-about = You look from one depth to another.
map-smooth = Along a way
map-smooth-about = You follow a line through the depth.
map-depth = Seeing depth
map-depth-about = You find out what stands nearer.

# Glossary: each word, and what it means

glossary-title = Words in this book
glossary-lead = Plain meanings, as this book uses the words.
glossary-description = What the words of the trade mean, in plain sentences.
glossary-word = { $word }:
glossary-anaglyph = anaglyph
    .means = A picture in two colours, one for each eye. Glasses with two filters part it.
glossary-arc-second = arc second (arcsec)
    .means = A very small angle: a degree has 3600 of them. Small depths are told in it.
glossary-away = away
    .means = Something seems to stand behind the page. Your eyes turn outward a little.
glossary-base = base (for an eye turn)
    .means = A shift of the whole picture. Only a professional sets it, for one reader.
glossary-base-in-out = base-out, base-in
    .means = Names from prisms. A base-out prism turns the eyes inward, as pictures toward you do. Base-in turns them outward.
glossary-comfort = comfort
    .means = How well you feel, 0 to 10: 0 is good, 10 is bad.
glossary-convergence = convergence
    .means = Both eyes turn inward, to something near.
glossary-demand = demand
    .means = How far a page asks your eyes to turn, counted from the page itself.
glossary-divergence = divergence
    .means = Both eyes turn outward, to something farther away.
glossary-double = double
    .means = You see one thing twice.
glossary-eye-turn = eye turn
    .means = One eye looks past what the other eye looks at.
glossary-fusion = fusion, to fuse
    .means = Your brain joins the pictures of both eyes into one.
glossary-ghost = ghost
    .means = A trace of one eye’s picture that the other eye sees too.
glossary-grade = grade
    .means = How much a page asks, from 1 to 10. It is no mark for you.
glossary-jump = jump
    .means = You look from one depth to another at once.
glossary-level = level
    .means = A step of one exercise. Higher levels ask more.
glossary-lock-frame = lock frame
    .means = A frame that rides with a shape. It helps your eyes to stay on it.
glossary-parallax = parallax
    .means = How far the two pictures of a shape lie apart on the page.
glossary-prism-dioptre = prism dioptre (pd)
    .means = A measure for turning eyes. 1 pd is 1 cm at a distance of 1 m.
glossary-random-dots = random dots
    .means = Dots strewn by chance. Only both eyes together find the shape in them.
glossary-reserve = reserve
    .means = How far your eyes can turn before things blur or double. A professional measures it.
glossary-single = single
    .means = You see one thing once, with both eyes open.
glossary-stereopsis = stereopsis
    .means = Seeing depth because your two eyes look from two places.
glossary-stop-rule = stop rule
    .means = When to stop at once. It stands on every exercise page.
glossary-strand = strand
    .means = Pages of one sort, which rise from easy to hard.
glossary-suppression = suppression
    .means = Your brain leaves out the picture of one eye, often to avoid seeing double.
glossary-toward = toward
    .means = Something seems to stand before the page. Your eyes turn inward a little.
glossary-vergence = vergence
    .means = The two eyes turn against each other: inward or outward.
glossary-watch-marks = watch marks
    .means = The flat bar is for your left eye, the wedge for your right. See both, and both eyes take part.

# Sources

sources-title = Sources
sources-lead = Numbers and rules in this book rest on these works. Some were read only as a summary. They back the numbers; none of them looked at this book.
sources-description = The published works that numbers and rules of the book rest on.
sources-depth = Depth and distance
sources-limits = How far eyes can turn and fuse
sources-grades = What makes a page harder
sources-dots = Random dots
sources-ghost = Colours and ghosts
sources-safety = Stripes and patterns
sources-page = Size and print
sources-none = Without a source
sources-none-words = Minutes a day, length of rests, steps between levels, and when to go on follow common practice. No published work sets them.

# Licence and credits

licence-title = Licence and credits
licence-description = What you may do with the book, and whose work is in it.
licence-book = This book
licence-author = { $title } is by { $author }.
licence-credits = Credits
licence-typeface = Typeface
licence-typeface-words = The words are set in Atkinson Hyperlegible Next, under the SIL Open Font License 1.1.
licence-contact = Errors and questions
licence-contact-words = Please write to { $contact }.

# Versions and errors

versions-title = Versions and errors
versions-lead = You have version { $version } of { $date }. Below stands what changed, the newest first.
versions-description = The versions of the book with what changed in each.
versions-release = Version { $version } · { $date }
versions-error = Found an error?
versions-error-words = Note the version and the number of the page. Does a page look wrong to you? Leave it out.
versions-contact = Please write to { $contact }.
