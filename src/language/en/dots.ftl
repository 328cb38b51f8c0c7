# Pages of random dots: what they share, and each kind's own.

dots-frame = Look softly at the middle. Check that the frame is whole all round.
dots-rest = Then look far away for five seconds.
dots-whole = The frame is whole all round: both eyes take part.
dots-one-eye = every second dash
dots-one-eye-then = One eye has dropped out. Blink, look far away, try again.
dots-flat = flat dots
dots-flat-then = Look at the frame and wait. Still flat? Take an easier page.
dots-double = two frames

way-up = up
way-right = right
way-down = down
way-left = left

hidden-goal = { $n ->
        [one] Find the shape that only two eyes together can see.
       *[other] Find the shapes that only two eyes together can see.
    }
hidden-wait = { $n ->
        [one] Wait up to half a minute, until a shape stands out.
       *[other] Wait up to half a minute, until shapes stand out.
    }
hidden-follow = { $n ->
        [one] Follow the edge of the shape with your eyes.
       *[other] Follow the edge of each shape with your eyes.
    }
hidden-shapes = { $n } shapes
hidden-see-front = { $shapes } in front of the other dots.
hidden-see-behind = { $shapes } behind the other dots, as if seen through a hole.
hidden-see-either = { $shapes } in front of the other dots or behind them.
hidden-see-mixed = { $shapes }, some in front of the other dots, some behind them.

gap-goal = { $n ->
        [one] See where the hidden ring is open.
       *[other] See where each hidden ring is open.
    }
gap-wait = { $n ->
        [one] Wait up to half a minute, until a ring stands out.
       *[other] Wait up to half a minute, until rings stand out.
    }
gap-write = { $n ->
        [one] Write down where its gap is: up, right, down or left.
       *[other] For each number write up, right, down or left.
    }
gap-see = { $n ->
        [one] A ring at another depth than the dots around it. It has one gap.
       *[other] { $n } rings at another depth than the dots around them. Each has one gap.
    }

planes-goal = Feel how each plane of dots stands at its own depth.
planes-wait = Wait up to half a minute, until the planes come apart.
planes-order = Write the numbers in order, from the nearest plane to the farthest.
planes-step-row = Step with your eyes from plane to plane, there and back, five times.
planes-step-nest = Step with your eyes from the outside in and back, five times.
planes-see-row = { $n } flat planes of dots, side by side, each at its own depth.
planes-see-nest = { $n } flat planes of dots, one inside the other, each at its own depth.

board-goal = Feel how a board of dots tilts, and tell which edge is near.
board-wait = Wait up to half a minute, until the dots lie on a tilted board.
board-write = Write down which edge is nearest: up, right, down or left.
board-see = A flat board of dots that tilts. One edge comes toward you, the edge across goes away.

hills-goal = Count the long hills that only two eyes together can see.
hills-wait = Wait up to half a minute, until the hills stand out.
hills-count = Look slowly from left to right. Count the hills, 1 to { $most }, and write the number down.
hills-see = Long, smooth hills that run from top to bottom and rise toward you.
hollows-goal = Count the long hollows that only two eyes together can see.
hollows-wait = Wait up to half a minute, until the hollows stand out.
hollows-count = Look slowly from left to right. Count the hollows, 1 to { $most }, and write the number down.
hollows-see = Long, smooth hollows that run from top to bottom and sink away from you.

waves-goal = Feel how a field of dots rises and falls.
waves-wait = Wait up to half a minute, until the dots rise and fall.
waves-follow-down = Follow the waves with your eyes from top to bottom and back, five times.
waves-follow-right = Follow the waves with your eyes from left to right and back, five times.
waves-see-down = { $n ->
        [one] One smooth wave from top to bottom, as on quiet water.
       *[other] { $n } smooth waves from top to bottom, as on quiet water.
    }
waves-see-right = { $n ->
        [one] One smooth wave from left to right, as on quiet water.
       *[other] { $n } smooth waves from left to right, as on quiet water.
    }

relief-goal = Find the high and the low places that only two eyes together can see.
relief-wait = Wait up to half a minute, until the dots rise and sink.
relief-wander = Let your eyes wander from the nearest place to the farthest and back, five times.
relief-see = A landscape of dots with near and far places.
