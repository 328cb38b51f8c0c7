# Brief checks: what each eye sees, and whether it comes together.

# Two halves of one line about a scale. Its form is upright or level.
nonius-goal = { $form ->
    [upright] See whether the two halves of one upright line meet.
   *[level] See whether the two halves of one level line meet.
    }
nonius-zero = Look at the zero of the scale. Both eyes see the scale.
nonius-ticks = { $form ->
    [upright] Without moving your eyes, see where the upper half and the lower half point.
   *[level] Without moving your eyes, see where the left half and the right half point.
    }
nonius-note = Note both ticks in your log. Look far away, then look once more. One minute is enough.
nonius-tell = Tell your professional if the halves stay apart. Change nothing yourself.
nonius-see = { $form ->
    [upright] The upper half and the lower half stand still, above and below the same tick.
   *[level] The left half and the right half stand still, left and right of the same tick.
    }
nonius-only-first = { $form ->
    [upright] the upper half
   *[level] the left half
    }
nonius-only-second = { $form ->
    [upright] the lower half
   *[level] the right half
    }
nonius-only-apart = halves that stay apart
nonius-apart = Do not force them. Tell your professional which ticks you noted.

# A dot for one eye in a frame for the other.
inset-goal = See two different pictures, one in each eye, as one picture.
inset-corners = Look at the four corner ticks. Both eyes see them.
inset-middle = Now look into the middle. Let the dot and the frame come together.
inset-see = A dot that stays inside the square frame, with a tick at each corner.
inset-only-frame = the frame
inset-only-dot = the dot
inset-only-drift = a dot that drifts out
inset-drift = Rest, then look again. Tell your professional if it always does.

# Marks for each eye, in groups of three sizes.
who-goal = Find out which eye sees which mark, and that both take part.
who-largest = Look at the largest square. See which marks stand above it.
who-cover = Cover your right eye: rings and squares are left. Cover your left eye: crosses and squares are left.
who-note = With both eyes open, look at each square. Note the smallest that has its ring and its cross. One minute is enough.
who-see = Three squares, each with a ring and a cross above it, all at the same time.
who-only-rings = rings and squares
who-only-crosses = crosses and squares
who-only-turns = marks that come and go
who-turns = The eyes take turns. Rest, then stay with the larger ones.

# One outline in parts, some for each eye. They are halves, or go by turns.
halves-goal = Put the parts of two pictures together to one { $shape }.
halves-dot = Look at the dot in the middle. Both eyes see it.
halves-cover = Cover your right eye, then your left: each eye has its own parts of { $shape-the }.
halves-close = With both eyes open, look at the dot and let { $shape-the } close around it.
halves-see = One whole { $shape } around a dot, with small gaps between its parts.
halves-only-left = { $deal ->
    [sides] the left half
   *[turns] the parts of the left eye
    }
halves-only-right = { $deal ->
    [sides] the right half
   *[turns] the parts of the right eye
    }
halves-only-apart = parts that do not meet
halves-apart = Rest, then look again. Tell your professional if they never do.
