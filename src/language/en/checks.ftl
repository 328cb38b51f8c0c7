# The check pages: glasses, ghost and size.

# What every check ends in

check-go = Go
check-fix = Fix
check-ask = Ask

# Glasses

glasses-title = Check your glasses
glasses-lead = Put the glasses on: { $glasses }. Look at the three shapes.
glasses-picture = Left eye: a flat bar and a ring. Right eye: a ring and a wedge. Both eyes together: bar, ring and wedge.
glasses-bar = bar: left eye
glasses-ring = ring: both eyes
glasses-wedge = wedge: right eye
glasses-should = What you should see
glasses-close = Close one eye at a time; do not press on it.
glasses-with = Look with
glasses-see = You should see
glasses-left-alone = Left eye alone
glasses-left-alone-see = bar and ring, no wedge
glasses-right-alone = Right eye alone
glasses-right-alone-see = ring and wedge, no bar
glasses-both = Both eyes
glasses-both-see = bar, ring and wedge
glasses-go = All as in the table, and the colours comfortable for half a minute? Go on to the next page.
glasses-fix-swapped = Bar and wedge changed places? The glasses are the wrong way round: { $left } belongs before the left eye, { $right } before the right.
glasses-fix-missing = A shape is missing for its own eye? Clean the glasses, use more light, and look again.
glasses-fix-comes = With both eyes open a shape comes and goes? Blink, wait a little, look at the ring.
glasses-fix-ghost = A pale trace of the other eye’s shape? That is a ghost: the ghost page measures it.
glasses-ask = Still a shape missing, or the colours trouble you? Take the glasses off and do not go on. Ask your eye-care professional. This is common and not your fault.

# Ghost

ghost-title = Check for a ghost
ghost-lead = A ghost is a trace of the other eye’s mark. It shows where filter, colours and light do not match.
ghost-lead-off-base = A ghost is a trace of the other eye’s mark. It shows where filter, colours and light do not match. This page does not ride on the base: one eye looks at a time.
ghost-description = Numbered patches for each eye, to find how much of the other eye's marks shows.
ghost-left-open = Left eye open, right eye closed
ghost-right-open = Right eye open, left eye closed
ghost-left-picture = Numbered patches. On each stands a wedge for the right eye. To the left eye it fades on one of them.
ghost-right-picture = Numbered patches. On each stands a bar for the left eye. To the right eye it fades on one of them.
ghost-number = Number
ghost-left-percent = Left eye, %
ghost-right-percent = Right eye, %
ghost-look = How to look
ghost-look-on = Glasses on: { $glasses }. Use the light you practise in.
ghost-look-left = Close your right eye. On which patch of the left eye’s row does the wedge fade most? Note the number.
ghost-look-right = Close your left eye. Find the number for the bars in the other row. Between two numbers, take the higher.
ghost-hint-white = Through its filter the open eye sees each patch as a ground a little dimmer than the one before. On low numbers the mark is darker than its patch, on high ones lighter; between them it sinks in.
ghost-hint-black = Through its filter the open eye sees each patch as a ground a little lighter than the one before. On low numbers the mark is lighter than its patch, on high ones darker; between them it sinks in.
ghost-range = { $first } to { $last }
ghost-go-little = Your number is { $left } for the left eye and { $right } for the right: these pages show you little or no ghost. Go on to the next page.
ghost-go-weak = Your number is { $left } for the left eye and { $right } for the right: these pages show you a weak ghost at most. Go on to the next page.
ghost-go-none = With no number is the ghost weak on these pages: whoever made them accepted a strong one. See below.
ghost-fix = Another number: a ghost may show.
ghost-fix-print = Print again in colour and best quality, on matt paper.
ghost-fix-lamp = Try another lamp.
ghost-fix-colours = Switch off night colours, lower the brightness.
ghost-fix-wipe = Wipe screen and filters.
ghost-fix-straight = Look at the screen straight on.
ghost-fix-again = Then look again.
ghost-ask = Still another number, or the mark fades on none? Do not practise with these pages. Ask whoever made them for pages inked for your numbers.
ghost-maker = For whoever makes the pages
ghost-holds-print = The patches are printed tints: numbers hold for this paper, printer and lamp. Note all three.
ghost-holds-screen = Numbers hold for this screen at this brightness.
ghost-write = Write the per cents below [glasses] in set.toml and render again. For left 3, right 6:

# Size

scale-title = Check the size
scale-description = A bar of 100 mm, a square of 50 mm and the outline of a bank card, to measure.
scale-lead-paper = Measure the bar with a ruler, and lay a bank card on its outline. Depths are right only at true size.
scale-lead-screen = Hold a ruler to the bar, or a bank card to its outline. Change the zoom until they match, in full screen.
scale-lead-paper-off-base = Measure the bar with a ruler, and lay a bank card on its outline. Depths are right only at true size. This page does not ride on the base: it is measured, not looked at through the glasses.
scale-lead-screen-off-base = Hold a ruler to the bar, or a bank card to its outline. Change the zoom until they match, in full screen. This page does not ride on the base: it is measured, not looked at through the glasses.
scale-bar = Bar: 100 mm from end to end
scale-bar-picture = A bar of 100 mm.
scale-square = Square: 50 mm each way
scale-square-picture = A square of 50 mm.
scale-card = Bank card: 85.6 × 54 mm
scale-card-picture = The outline of a bank card, 85.60 by 53.98 mm.
scale-go = The bar is 100 mm long, or the card fits its outline? Go on to the next page.
scale-off = If the size is off
scale-measures = Bar measures
scale-from = View from
scale-fix-print = Print again at 100 %, “actual size”, without “fit to page”.
scale-fix-keep = If you can’t, keep the page and change the distance as in the table.
scale-fix-zoom = Set the zoom so that the bar is 100 mm long.
scale-fix-distance = If you can’t, change the distance as in the table.
scale-ask-paper = Off by more than 6 mm? Do not use the print. Ask for help with the printer.
scale-ask-screen = Off by more than 6 mm? Use a larger screen or the paper edition. Ask whoever made the pages for one.
