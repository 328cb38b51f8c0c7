# The sheets for an eye-care professional: terms of the trade are welcome here.

professional-title = For your eye-care professional
professional-later = For your professional, sheet { $number }
professional-description = What the book is, what it was computed for, and the numbers of every exercise page.
professional-lead = Please show these sheets to whoever looks after your eyes.

professional-what = What this book is
professional-what-text = Practice pages for two eyes through red and cyan filters, for adults who practise on their own. They are not a test and not a treatment; they measure nothing and promise nothing. They were computed from the numbers below and from nothing else. Your advice comes before anything that is written here.
professional-please = What we ask you
professional-please-text = Is practice of this kind safe for this reader? Which pages, from where, for how long? Is there a reason not to weaken a suppression? Please write it beside the table, and cross out what the reader should leave alone.
professional-viewer = What it was computed for
professional-findings = What else is known of the eyes
professional-glasses = Glasses and inks
professional-columns = What the table tells
professional-columns-text = Grade: how hard a page is beside the others, 1 to 10; it says nothing about the reader. Demand: against the page, in prism dioptres; toward is base-out, away is base-in. Disparity: exact vergence difference against the page; + is crossed. Place: from the eyes, over all pupil distances. Size: of the smallest and the largest thing that is looked at. Cue: 0 is dots alone, 3 an outline and more. Parts: seen by the left eye alone, the right eye alone, both. Balance: what the stronger eye keeps.
professional-columns-base = Demand and disparity are counted from the base; no place is told, since the eyes are turned.

# Names of facts, and what stands beside them.

professional-head-what = What
professional-head-value = Value
professional-unknown = not known; none is guessed
professional-reader = Reader
professional-distance = Eyes to page
professional-ipd = Pupil distance
professional-ipd-value = { $ipd }; of the readers { $low } to { $high }
professional-reserve-toward = Reserve toward
professional-reserve-away = Reserve away
professional-blur = blur { $n }
professional-break = break { $n }
professional-recovery = recovery { $n }
professional-reserve = { $amounts }; { $source }
professional-source-norm = published means of a group, { $norm }
professional-source-found = as found in the reader
professional-zone = Asked at most
professional-zone-value = { $from } ({ $first }) to { $to } ({ $second }): { $which }
professional-zone-whole = all of the reserves
professional-zone-everyday = the everyday part
professional-bound-percival = percival
professional-bound-sheard = sheard
professional-bound-reserve = reserve
professional-phoria = Phoria
professional-phoria-eso = { $pd } eso
professional-phoria-exo = { $pd } exo
professional-near-point = Near point
professional-balance = Balance
professional-base = Base
professional-base-none = none
professional-base-out = { $pd } toward (base-out)
professional-base-in = { $pd } away (base-in)
professional-base-right = { $pd } right picture higher
professional-base-left = { $pd } left picture higher
professional-framed = Framed pages
professional-decided = Zone and base
professional-filters = Glasses
professional-edition = Edition
professional-edition-white = { $id }, { $page }, white ground
professional-edition-black = { $id }, { $page }, black ground
professional-seen-on = Seen on
professional-inks = Inks
professional-inks-value = left eye { $left }, right eye { $right }
professional-ghost = Forecast ghost
professional-ghost-value = left eye { $left } %, right eye { $right } %
professional-ghost-ideal = left eye { $left } %, right eye { $right } %, if screen and filters were ideal

# The table of pages.

professional-page = Page
professional-kind = Kind
professional-level = Level
professional-grade = Grade
professional-demand = Demand, pd
professional-disparity = Disparity, arcsec
professional-place = Place, cm
professional-size = Size, degrees
professional-cue = Cue
professional-parts = Parts
professional-range = { $from } to { $to }
professional-none = –
professional-flat = page
professional-toward = { $n } toward
professional-away = { $n } away
professional-very-far = very far
professional-by-kind = by kind
