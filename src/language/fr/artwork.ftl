# Pages avec des images à soi. Le nom d’une partie, seul son auteur le sait : ici on les compte.

layers-goal = Voyez chaque partie de l’image à sa propre profondeur.
layers-look = Regardez l’image comme si vous regardiez par une fenêtre.
layers-nearest = Allez des yeux à la partie qui semble la plus proche. Attendez qu’elle soit simple.
layers-back = Passez à la partie derrière elle, et ainsi jusqu’au fond. Puis revenez vers l’avant.
layers-repeat = Faites-le cinq fois, puis regardez au loin.
layers-front = { $n ->
        [one] Une partie devant la page.
       *[other] { $n } parties devant la page.
    }
layers-page = { $n ->
        [one] Une partie sur la page.
       *[other] { $n } parties sur la page.
    }
layers-behind = { $n ->
        [one] Une partie derrière la page.
       *[other] { $n } parties derrière la page.
    }
