# What captions, footers and picture descriptions say of art: demands, places, and what each eye gets.

list-apart = { $before }; { $after }

demand-toward = { $pd } toward
demand-away = { $pd } away
demand-page = the page
demand-on-page = on the page
demand-range = from { $from } to { $to }
demand-range-to-page = from { $from } to the page
demand-range-from-page = from the page to { $to }

place-between = { $near } to { $far } cm
place-very-far = very far away

# Captions.

caption-flat = All on the page, at { $distance }.
caption-flat-base = All on the page, counted from the base, at { $distance }.
caption-deep = Depths: { $depths }; page at { $distance }.
caption-deep-base = Depths, counted from the base: { $depths }; page at { $distance }.
caption-range = Depths: { $depths }. From your eyes: page { $distance }.
caption-range-base = Depths, counted from the base: { $depths }. From your eyes: page { $distance }.
caption-depth = { $name } { $demand }
caption-depth-all = all { $demand }
caption-place = { $name } { $place } ({ $demand })
caption-place-all = all { $place } ({ $demand })
caption-places = From your eyes: { $places }; page { $distance }.

# What each eye gets.

eye-left-alone = Left eye: { $things }.
eye-right-alone = Right eye: { $things }.
eye-both-alone = Both: { $things }.
thing-count = { $count } { $thing-many }
thing-numbered = { $thing } { $number }

picture-eyes = Left eye: { $left }. Right eye: { $right }. Both eyes together: { $together }.
picture-same = the same shapes
picture-same-moved = the same shapes moved sideways by their depth
picture-line = one line that runs { $depths }
picture-line-flat = one line on the page
picture-stand = { $name } { $demand }, { $place } from the eyes
picture-stand-base = { $name } { $demand }
picture-lines = lines that run into the depth
picture-trail = a trail
picture-trail-beads = { $count ->
        [one] a trail with { $count } bead
       *[other] a trail with { $count } beads
    }
picture-dots = Left eye: random dots inside a frame, every second dash of it. Right eye: the same dots, moved sideways by their depth, and the other dashes. Both eyes together: dots that stand { $depths }, in a whole frame.
picture-dots-flat = Left eye: random dots inside a frame, every second dash of it. Right eye: the same dots and the other dashes. Both eyes together: dots that stand on the page, in a whole frame.
picture-dots-lines = Drawn lines show where depth changes.
picture-dots-drawn = Among them: { $things }.

# A page that asks something.

asked-picture = { $count ->
        [one] A picture for both eyes together, with { $count } question. { $goal }
       *[other] A picture for both eyes together, with { $count } questions. { $goal }
    }
asked-choices = To choose from: { $choices }.
asked-key-turned = The answers stand in the key at the end of the book.
asked-key-file = The answers stand in a file of their own.

# A base for an eye turn, a balance between the eyes, and who set them.

base-words = base { $amounts }
base-right-higher = right picture { $pd } higher
base-left-higher = left picture { $pd } higher
base-sentence = All of it rides on a base: { $amounts }.
balance-left = { $share } % left eye
balance-right = { $share } % right eye
balance-words = balance { $share }
set-by = set by { $name }

# Numbers of a page.

readings-distance = Eyes to page
readings-demand = Demand
readings-place = Eyes to shape
readings-ruler-range = { $near } to { $far }
readings-ruler = Ruler: the pencil belongs { $range } cm from the page (thick bar)
readings-ruler-picture = A ruler in true size, { $length } cm long, with a thick bar from { $range } cm.

# What a document says about itself.

document-answers = { $title }: answers
document-answers-subject = Answers to the practice pages of { $title }.
document-subject = Practice pages for two eyes and { $first }/{ $second } glasses.
document-practice = practice pages
document-anaglyph = anaglyph
document-glasses = { $first }/{ $second } glasses
