# What the parts at the end of a book share.

part-sheet = { $title }, sheet { $n }
time-minutes = { $n ->
    [one] { $n } minute
   *[other] { $n } minutes
    }
time-seconds = { $n ->
    [one] { $n } second
   *[other] { $n } seconds
    }
time-days = { $n ->
    [one] { $n } day
   *[other] { $n } days
    }
time-weeks = { $n ->
    [one] { $n } week
   *[other] { $n } weeks
    }

# The plan.

plan-title = Your plan
plan-description = Which pages come on which week and day, and when to go on, to take an easier page, to stop and to ask.
plan-lead = { $weeks }, { $days } a week, at most { $minutes } a day. It is an offer: go at your own pace.
plan-when = When
plan-pages = Pages, new ones bold
plan-minutes = Minutes
plan-done = Done
plan-day = Week { $week }, day { $day }
plan-each-day = Each day
plan-easy-to-hard = The pages of a day go from easy to hard. The bold ones are new.
plan-rest = After each { $block } at most, rest for { $rest }: look far away. The minutes count these rests.
plan-again = A page is not easy yet? Take it again. The new ones can wait.
plan-end = End each day by looking into the distance.
plan-come-again = There are more days than pages: pages that you know come again.
plan-framed = A page in a frame: only as your eye-care professional told you.
plan-go-on = Go on when, on { $days } different days
plan-good-answers = on a page that asks, you had so many right answers that it is more than luck,
plan-good-marks = bar and wedge were both there, and
plan-good-comfort = comfort stayed at 0 to { $most } of 10, where 10 is bad.
plan-step-back = Take the easier page when
plan-bad-marks = bar or wedge goes missing, or all stays double, or
plan-bad-comfort = comfort reaches { $least } of 10. Rest first, looking far away.
plan-bad-easier = Each page names its easier one.
plan-stop = Stop rule
plan-ask = Ask
plan-ask-words = Show your log to your eye-care professional after four weeks, and sooner if anything worries you. What they say counts more than this plan.

# The log.

log-title = Your log
log-description = A line for each of { $n } days, to write into.
log-lead = A line a day. These pages: edition { $edition }, { $distance } from your eyes, { $glasses }. Comfort: 0 is good, 10 is bad. Circle what you saw.
log-head-day = Day
log-head-date = Date
log-head-page = Page
log-head-glasses = Glasses right way
log-head-minutes = Min
log-head-single = Single, double
log-head-marks = Bar, wedge
log-head-answers = Right answers
log-head-before = Comfort before
log-head-after = Comfort after
log-head-stayed = Stayed double
log-head-note = Note
log-circle-single = s   d
log-circle-marks = b   w
log-circle-stayed = y   n
log-stays-double = Comfort 4 or more: rest, then take an easier page. Stayed double after a rest: stop, write it down, and ask your eye-care professional. Show them this log.
log-screen-lead = Keep a log on paper, a line for each day. Note:
log-screen-date = the date, the page and this edition; and that the glasses were on the right way;
log-screen-seen = the minutes; whether all was single or double; whether bar and wedge were both there;
log-screen-answers = how many answers were right, if the page asks;
log-screen-comfort = comfort before and after, from 0 (good) to 10 (bad);
log-screen-other = whether anything stayed double after a rest, and what else you noticed.

# The answer key.

answers-title = Answers
answers-turn = Answers: turn the page round.
answers-description = The answers to what the exercise pages ask.
answers-pass = { $right } of { $of } or more: more than luck

# The words of all exercises once more.

words-title = Every exercise in words
words-lead = Here are the words of all exercise pages once more, in black alone. Read them without the glasses, or have them read to you.
words-lead-dark = Here are the words of all exercise pages once more, without colour. Read them without the glasses, or have them read to you.
words-description = What to do on every exercise page, in words alone, to read without the glasses.
words-page = { $title }, page { $page }
words-pages = { $title }, pages { $page } to { $last_page }
words-level = { $title }, level { $level }, page { $page }
words-level-pages = { $title }, level { $level }, pages { $page } to { $last_page }
words-levels = { $title }, levels { $level } to { $last_level }, pages { $page } to { $last_page }
