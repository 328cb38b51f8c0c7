# Words that kinds of exercises share.

# What the watch marks tell: the left eye's bar and the right eye's wedge. A page may be without them.
kinds-check-both = { $marks ->
    [yes] Check that the bar and the wedge are both there.
   *[no] Check that all parts are there.
    }
kinds-check-there = { $marks ->
    [yes] Check that the bar and the wedge are there.
   *[no] Check that all parts are there.
    }
kinds-see-marks = { $see } The bar and the wedge are both there.

# Times and repeats.
kinds-seconds = { $count ->
    [one] { $n } second
   *[other] { $n } seconds
    }
kinds-times = { $n ->
    [1] once
    [2] twice
   *[other] { $n } times
    }
kinds-watch-ten = Watch it for ten seconds, then look far away. Do this three times. One minute is enough.

# What a page of a kind that a professional sets says first.
kinds-as-told = Do this only as your professional told you.

# "If you see only …": what is seen, and what to do.
kinds-only-bar = the bar
kinds-only-wedge = the wedge
kinds-only-flat = one flat picture
kinds-only-doubled = two of each
kinds-right-out-try = Your right eye has dropped out. Blink, look far away, try again.
kinds-left-out-try = Your left eye has dropped out. Blink, look far away, try again.
kinds-right-out-look = Your right eye has dropped out. Blink, look far away, look again.
kinds-left-out-look = Your left eye has dropped out. Blink, look far away, look again.
kinds-one-out = One eye has dropped out. Cover each eye in turn, then try again.
kinds-easier = Rest, then go one page easier.
