# Words of every exercise page.

page-stop-rule = Stop rule.
page-stop = Stop at once if you feel pain, headache, sickness or dizziness. Stop too if sight stays blurred or double after 5 to 10 minutes of rest, looking far away. If it lasts until the next day or comes back twice, put the book away. Then ask your eye-care professional.
page-glasses = { $left } left, { $right } right
page-ground-white = white ground
page-ground-black = black ground
page-set-up = Set up:
page-set-up-words = { $distance } from your eyes, { $glasses }. Page flat and level.
page-badge-level = level { $n } of { $of }
page-badge-grade = grade { $n }
page-title-level = { $title }, level { $n }
page-do = Do
page-see = You should see
page-only = If you see only …
page-only-row = { $seen }:
page-easier = Easier:
page-harder = Harder:
page-first = this is the first page
page-last = this is the last page
page-answers = Answers:
page-number = page { $n }
page-key-apart = a file apart
page-way = { $name } page { $page }
page-go-to = Go to page { $page }

# An exercise on two sheets: its picture, and its words.

page-words-title = { $title }: words
page-words-description = What to do on the page “{ $title }”, in words alone, to read without the glasses.
page-words-at = What to do:
page-picture-at = Picture:

# The footer.

footer-set = { $title } { $version } · edition { $edition } · { $date }
footer-set-reader = { $title } { $version } · edition { $edition } · reader { $reader } · { $date }
footer-facts = { $depth } · { $distance }, eyes { $ipd } apart · { $glasses } · { $ground }
footer-true-size = true size (100 %)
footer-seed = seed { $n }

# Where the reader writes on an exercise page.

log-date = Date
log-minutes = Minutes
log-single = Single
log-marks = Both marks
log-comfort = Comfort 0–10
log-line = Log: date, minutes, single, both marks, comfort 0–10.
log-line-answers = { $n ->
    [one] Log: date, comfort 0–10, your answer.
   *[other] Log: date, comfort 0–10, your answers { $first } to { $last }.
    }
log-write = { $n ->
    [one] Write your answer in your log.
   *[other] Write your answers { $first } to { $last } in your log.
    }

# Cover and contents.

cover-facts = { $n ->
    [one] Practice pages for two-eyed seeing, with { $first } and { $second } glasses. One exercise page, made for { $distance } from your eyes.
   *[other] Practice pages for two-eyed seeing, with { $first } and { $second } glasses. { $n } exercise pages, made for { $distance } from your eyes.
    }
cover-description = Cover of { $title }.
cover-edition = Edition { $edition }: { $page }, { $ground }
cover-edition-reader = Edition { $edition }: { $page }, { $ground } · made for reader { $reader }
cover-glasses = Glasses: { $glasses }
cover-version = Version { $version } · { $date }
cover-author = { $author } · version { $version } · { $date }
cover-practice = Practice pages. Not a test and not a treatment: read the caution page first.
contents-title = Contents
contents-description = Every page of the book with its number.
contents-link = Go to { $title }
