# Kinds in which one thing is held single.

hold-goal = Keep one { $shape } single and clear while your eyes hold still.
hold-look = Look softly at { $shape-the } until you see only one.
hold-hold = Hold it single and clear for { $time }.
hold-rest = Look far away for five seconds. Do this { $times }.
hold-see = { $side ->
    [toward] One { $shape } that seems to float in front of the page.
    [away] One { $shape } that seems to lie behind the page, as if seen through a window.
   *[page] One { $shape }, flat on the page.
    }

columns-goal = Read down the page while each line asks a little more of your eyes than the one above.
columns-start = Start at the first line. Wait until it is single and clear.
columns-check = { $marks ->
    [yes] Check that the bar and the wedge are there, above and below.
   *[no] Check that all parts are there, above and below.
    }
columns-aloud = Read aloud, line by line. Wait at each line until it is clear.
columns-rest = At the end look far away for five seconds. Do this three times.
columns-see = Single, clear lines that step forward or back as you read down.

# One line has words; more are lines.
words-goal = { $lines ->
    [one] Read words with both eyes while they stay single and clear.
   *[other] Read lines with both eyes while they stay single and clear.
    }
words-middle = Look softly at the middle of the page until the letters are single.
words-aloud = Read aloud, slowly, letter by letter if need be.
words-rest = Look far away for five seconds. Do this five times.
words-see-toward = { $lines ->
    [one] Single, clear words that seem to float in front of the page.
   *[other] Single, clear lines that seem to float in front of the page.
    }
words-see-away = { $lines ->
    [one] Single, clear words that seem to lie behind the page.
   *[other] Single, clear lines that seem to lie behind the page.
    }
words-see-page = { $lines ->
    [one] Single, clear words, flat on the page.
   *[other] Single, clear lines, flat on the page.
    }

dealt-goal = Read words whose letters are shared out between your eyes.
dealt-first = Look at the first letter of a row until it is clear.
dealt-aloud = Read the row aloud, letter by letter, or write it down.
dealt-last = Go on to the last row, then look far away. One minute is enough.
dealt-note = Note the rows in which letters were missing: each eye had some of its own.
dealt-see = Rows of whole words, all letters side by side, none missing.
dealt-only-some = some letters
dealt-some = One eye missed letters of its own. Blink, look far away, read again.
dealt-only-turns = letters that come and go
dealt-turns = The eyes take turns. Rest, then go one page easier.
# What a row says, and what each eye alone had of it.
dealt-answer = { $word }: left { $left }, right { $right }

patch-goal = Keep one disc single and clear while its border holds your eyes together.
patch-border = Look at the rough border first. Let it become one.
patch-middle = Now look into the open middle of the disc. Check that the bar and the wedge are both there.
patch-hold = Hold it for ten seconds, then look far away. Do this three times. One minute is enough.
patch-see = { $side ->
    [toward] One clear disc, in front of the page, in a rough border. In its middle a bar and a wedge, both at the same time.
    [away] One clear disc, behind the page, in a rough border. In its middle a bar and a wedge, both at the same time.
   *[page] One clear disc, flat on the page, in a rough border. In its middle a bar and a wedge, both at the same time.
    }
