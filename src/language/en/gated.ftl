# Pages that a professional sets.

contrast-goal = See both marks of a row while one of them gets thinner from row to row.
contrast-begin-ring-thins = Begin with row 1. Look at the cross, and see that the ring is there too.
contrast-begin-cross-thins = Begin with row 1. Look at the ring, and see that the cross is there too.
contrast-down = Go down row by row, five seconds for each.
contrast-note = Note the last row in which both marks are there. Stop there.
contrast-rest = Look far away for ten seconds. Two rounds are enough.
contrast-see-ring-thins = A ring and a cross in every row, at the same time. The ring gets thinner, and stays.
contrast-see-cross-thins = A ring and a cross in every row, at the same time. The cross gets thinner, and stays.
contrast-rings = the rings
contrast-rings-then = Your right eye has dropped out. Go up one row and look again.
contrast-crosses = the crosses
contrast-crosses-then = Your left eye has dropped out. Go up one row and look again.

gated-double-then = Stop for today. Tell your professional.

shared-goal = Find a way for which each eye knows only a part.
shared-pencil = Take a pencil.
shared-look = See that walls, ring and star are all there.
shared-draw = { $hazards ->
        [0] Draw slowly from ring to star. Cross no wall.
       *[other] Draw slowly from ring to star. Cross no wall, meet no cross.
    }
shared-fade = When a part fades, stop. Blink, look far away, go on.
shared-rest = After two minutes look far away. Once is enough.
shared-see = { $hazards ->
        [0] A small maze, a ring to start from, a star to reach.
       *[other] A small maze, a ring to start from, a star to reach, and crosses.
    }
shared-walls = walls and no marks
shared-marks = marks and no walls
shared-left-out = Your left eye has dropped out. Rest first.
shared-right-out = Your right eye has dropped out. Rest first.
