# Kinds in which the eyes go from depth to depth.

# Routes with stops.
steps-number-one = Look at number 1 until it is single and clear.
steps-see-stop = The stop you look at is single. The others may look double for now: that is fine.

tour-goal = Go round the page and make each stop single, as often as you can in good order.
tour-setup = Have a watch at hand.
tour-check = { $marks ->
    [yes] Check that the bar and the wedge are both there. Then go to the next number.
   *[no] Check that all parts are there. Then go to the next number.
    }
tour-again = After the last number start again at 1.
tour-count = Count the stops that you make single in { $time }. Write the count in the log.
tour-far = Look far away.

# Stops have numbers, or names of the author's, or neither.
jump-goal = Jump from one depth to another and make each stop single.
jump-start-name = Look at “{ $name }” until it is single and clear.
jump-start-shape = Look at the first shape until it is single and clear.
jump-next-number = Jump to the next number. Wait until that one is single.
jump-next-name = Jump to “{ $name }”. Wait until that one is single.
jump-next-shape = Jump to the next shape. Wait until that one is single.
jump-check = { $marks ->
    [yes] Stay for { $time } at each stop and check that the bar and the wedge are there.
   *[no] Stay for { $time } at each stop and check that all parts are there.
    }
jump-round = Go round { $times }. Then look far away.

pairs-goal = Pull your eyes in, let them out, and do it again.
pairs-start = { $form ->
    [column] Start with { $shape-the } at the top. Make it single.
   *[row] Start with { $shape-the } at the left. Make it single.
    }
pairs-go = { $form ->
    [column] Go down, one by one. Make each single before you go on.
   *[row] Go to the right, one by one. Make each single before you go on.
    }
pairs-check = { $marks ->
    [yes] Stay for { $time } at each. Check that the bar and the wedge are there.
   *[no] Stay for { $time } at each. Check that all parts are there.
    }
pairs-round = Go through all of them { $times }. Then look far away.
pairs-see = One stands before the page, the next behind it, and so on.

rungs-goal = Climb from rung 1 to rung { $last }, one small step at a time.
rungs-look = Look at rung 1 until you see one { $shape }.
rungs-stay = Stay for { $time }, then go to the next number.
rungs-stop = Stop at the first rung that stays double. Go back one rung.
rungs-write = Write down your last single rung. Then look far away.
rungs-see = One single { $shape } on the rung you look at. Each rung asks a little more.

hoop-goal = See one large hoop lift off the page.
hoop-rest = Let your eyes rest on the whole thick hoop, not on one spot.
hoop-thin = Look at the thin hoop on the page, then at the thick one again.
hoop-hold = Look for { $time }. Notice which stands nearer to you. Then look far away.
hoop-see = { $side ->
    [toward] The thick hoop floats before the thin one, nearer to you.
    [away] The thick hoop hangs behind the thin one, deeper than the page.
   *[page] Both hoops lie flat on the page.
    }

tiles-goal = Feel each step from one { $shape } to the next one inside it.
tiles-largest = Look at the largest { $shape }. It lies on the page.
tiles-in = Go in, { $shape } by { $shape }. Stop at each until it is single.
tiles-say = Say whether it is a pit or a tower. Then read “{ page-see }”.
tiles-check = { $marks ->
    [yes] In the middle, check that the bar and the wedge are both there.
   *[no] In the middle, check that all parts are there.
    }
tiles-out = Come out again step by step. Do this five times, then look far away.
tiles-see = { $side ->
    [toward] A tower of equal steps. The smallest stands nearest to you.
   *[away] A pit of equal steps. The smallest lies deepest.
    }

point-goal = Point to the place where { $shape-the } seems to stand.
point-setup-toward = Have a pencil at hand.
point-setup-away = Let the page stand up at the edge of a table, so that your hand can reach behind it.
point-look = Look at { $shape-the } until it is single. Do not look at the ruler yet.
point-pencil-toward = Bring a pencil in from the side, to where { $shape-the } seems to float.
point-pencil-away = Hold a pencil beside the page, as far behind it as { $shape-the } seems to be.
point-ruler = Keep the pencil still. How far is it from the page? Now look at the ruler.
point-again = Look far away. Do this { $times }.
point-see-toward = One { $shape } that floats before the page. The pencil meets it in the air.
point-see-away = One { $shape } that lies behind the page. The pencil is as deep as { $shape-the }.

# Distances come with their unit.
walk-goal = Keep one { $shape } single while you step back from the page.
walk-setup = Hang it at eye height, with room to step back.
walk-start = Start { $distance } from the page. Make { $shape-the } single.
walk-check = { $marks ->
    [yes] Stay for { $time }. Check that the bar and the wedge are both there.
   *[no] Stay for { $time }. Check that all parts are there.
    }
walk-back = Step back to the next distance in the table, up to { $distance }.
walk-return = Come back the same way. Note where a part was lost.
walk-see = One { $shape }, single all the way. It may seem to move as you walk.

posts-goal = Walk along the posts and feel how far each stands from you.
posts-base = Look at the base line. It lies on the page.
posts-go = Go from post to post, left to right. Make each single.
posts-check = { $marks ->
    [yes] At each post check that the bar and the wedge are there.
   *[no] At each post check that all parts are there.
    }
posts-say = Say which post stands nearest to you, and which farthest.
posts-back = Go back the other way. Then look far away.
posts-see-through = A row of posts that runs through the page like a stair.
posts-see-both-sides = Some posts stand before the page, some behind it.
posts-see-stair-away = A stair of posts. Each stands farther away than the one before.
posts-see-stair-toward = A stair of posts. Each stands nearer to you than the one before.
posts-see-away = Each post stands at its own depth, on the page or behind it.
posts-see-toward = Each post stands at its own depth, on the page or before it.

nest-box = box
    .the = the box
nest-frames = row of frames
    .the = the row of frames
nest-corridor = corridor
    .the = the corridor
nest-goal = { $count ->
    [one] Feel how deep { $room-the } is, and place the shape in it.
   *[other] Feel how deep { $room-the } is, and place each shape in it.
    }
nest-window = Look into { $room-the } as you would through a window.
nest-front = Let your eyes move from the front of { $room-the } to its back.
nest-check = { $count ->
    [one] Look at the shape.
   *[other] Look at each shape in turn.
    } { $marks ->
    [yes] Check that the bar and the wedge are there.
   *[no] Check that all parts are there.
    }
nest-back = Come back to the front. Do this five times, then look far away.
nest-see = A deep { $room }. What is smaller stands farther from you.

solids-goal = See things as if they stood in a real space.
solids-window = Look through the page as you would through a window.
solids-nearest = Start with what is nearest to you. Make it single.
solids-check = { $count ->
    [one] Look at it calmly.
   *[other] Look at each thing in turn.
    } { $marks ->
    [yes] Check that the bar and the wedge are there.
   *[no] Check that all parts are there.
    }
solids-edges = Follow the edges that run into the depth, there and back.
solids-again = Do this five times, then look far away.
solids-see = Solid things with a near and a far side.

trail-goal = Follow one trail with your eyes as it comes nearer and goes farther.
trail-start-line = Start at one end of the trail and make it single.
trail-start-bead = Start at the bead with the marks and make it single.
trail-along-line = Let your eyes slide slowly along the trail. Feel your eyes pull in and let go.
trail-along-beads = Move your eyes slowly from bead to bead. Feel your eyes pull in and let go.
trail-check = { $marks ->
    [yes] At each end check that the bar and the wedge are there.
   *[no] At each end check that all parts are there.
    }
trail-back = Then come back the same way. Do this { $times }, then look far away.
trail-back-round = Then go round the other way. Do this { $times }, then look far away.
trail-see = One smooth trail that changes its depth all the way. The part you look at is single.
