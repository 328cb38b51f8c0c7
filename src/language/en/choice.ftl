# Pages that ask: what they share, and each kind's own.

choice-check = Check that the bar and the wedge in the middle are both there.
choice-rest = After every three, look far away for five seconds.
choice-score = In all, { $right } of { $of } right is more than luck.
choice-no-test = This is practice, not a test of your eyes.

odd-goal = In each group, find the { $shape } that stands at another depth.
odd-look = In group 1, one { $shape } stands nearer or farther than the rest.
odd-write = Write down its letter. Not sure? Guess.
odd-see = Groups of { $shape-many }, one in each before or behind the rest. Uneven gaps tell nothing.

side-goal = Tell whether each { $shape } stands nearer or farther than its post.
side-look = Look at post 1 until its three strokes are in one line.
side-ask = Is the { $shape } nearer than its post, or farther? Write it down. Not sure? Guess.
side-see = Straight posts on the page. Some { $shape-many } float before their post, some lie behind it.
side-near = near
side-far = far

order-goal = Put the { $shape-many } of each group in order, from far to near.
order-ask = In group 1, which stands farthest from you? Which comes next?
order-write = Write the letters from far to near. Not sure? Guess.
order-see-equal = Groups of { $shape-many }, each { $shape } at its own depth. All have the same size.
order-see-drawn = Groups of { $shape-many }, each { $shape } at its own depth. Sizes tell nothing: a large one may be far.

match-goal = Find the post that stands as deep as the single one above it.
match-look = In group 1, look at the single post, then along the five below it.
match-ask = Which of the five stands as deep? Write down its number. Not sure? Guess.
match-see = Five posts at five depths, and one above them as deep as one of the five.
