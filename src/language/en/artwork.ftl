# Pages with the author's own pictures.

layers-goal = See each part of the { $picture } at its own depth.
layers-look = Look at the picture as you would look out of a window.
layers-nearest = Let your eyes go to the part that seems nearest. Wait until it is single.
layers-back = Go on to the part behind it, and so to the back. Then come forward again.
layers-repeat = Do this five times, then look far away.
layers-front = { $n ->
        [1] The { $first } in front of the page.
        [2] The { $first } and the { $second } in front of the page.
       *[other] { $n } parts in front of the page.
    }
layers-page = { $n ->
        [1] The { $first } on the page.
        [2] The { $first } and the { $second } on the page.
       *[other] { $n } parts on the page.
    }
layers-behind = { $n ->
        [1] The { $first } behind the page.
        [2] The { $first } and the { $second } behind the page.
       *[other] { $n } parts behind the page.
    }
