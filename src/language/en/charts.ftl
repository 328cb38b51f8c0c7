# The charts of `plot`, for authors: the ladder of a set, and plan views of its pages.

chart-facts = { $title } { $version } · { $date } · for { $distance } and an ipd of { $ipd } ({ $low } to { $high })
chart-facts-base = { $facts } · { $base }; all counts from it
chart-numbers = These are numbers about pages, not about a reader: no test, no score, no treatment.

# The ladder.

chart-ladder = The ladder of { $title }
chart-ladder-sheet = The ladder of { $title }, sheet { $number } of { $count }
chart-ladder-lead = What the exercises ask, in the order of the book: { $span }.
chart-ladder-picture = Two charts over the { $span }: difficulty from 0 to 100, and demand in prism dioptres; { $range }.
chart-span-none = no pages
chart-span-one = page { $number }
chart-span-many = pages { $first } to { $last }
chart-difficulty = Difficulty, 0 to 100
chart-demand = Demand, prism dioptres

chart-strand-check = checks
chart-strand-toward = hold toward
chart-strand-away = hold away
chart-strand-jump = jump
chart-strand-smooth = smooth change
chart-strand-depth = fine depth
chart-no-marker = without a marker: the difficulty is not known

chart-bar = from the least to the most demand of a page; 0 is the page itself
chart-toward = toward
chart-away = away
chart-blur = blur
chart-break = break
chart-parallel = parallel
chart-range = range of the viewer: { $away } ({ $first }) to { $toward } ({ $second })
chart-no-range = no range of the viewer is known: the set names neither reserves nor norms
chart-comfort = comfort: at most 1 degree of disparity
chart-parallel-eyes = parallel eyes for an ipd of { $ipd }
chart-reserves = { $source }: { $ends }
chart-reserve-ends = { $name } at { $ends }
chart-source-norm = reserves of the norm { $norm }
chart-source-one-side = reserves, one side of the norm { $norm }
chart-source-found = reserves as a professional found them
chart-bound-percival = Percival, middle third
chart-bound-sheard = Sheard, twice the phoria
chart-bound-reserve = the whole reserve

# Plan views.

chart-plan-lead = { $id } · { $kind } · seen from above, scale 1 : { $scale }
chart-plan-picture = The two eyes, the page at { $distance } and where its targets stand. { $labels }.
chart-label = { $names }: { $depth }
chart-label-names = { $names }:
chart-names-more = { $names } and { $count } more
chart-names-left = { $names } (left eye)
chart-names-right = { $names } (right eye)
chart-labels-left-out = { $count } of { $all } labels; the report has the rest
chart-depth-toward = { $cm } toward ({ $pd })
chart-depth-away = { $cm } away ({ $pd })
chart-depths = { $near } to { $far }
chart-left-eye = left eye
chart-right-eye = right eye
chart-ruler = cm from the eyes; the page at { $distance }
chart-art-field = Long line: the art field of the page, { $width } wide
chart-ipds = bars with ends: ipds from { $low } to { $high }
chart-lines = thin lines: both eyes look at { $name }
chart-dotted = dotted: one eye alone
chart-arrowhead = arrowhead: farther than the sheet
chart-shade = shade: the range of the viewer, { $near } to { $far }
chart-shade-parallel = shade: the range of the viewer, { $near } to parallel eyes
