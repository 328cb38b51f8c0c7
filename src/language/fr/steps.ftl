# Sortes où les yeux vont d’une profondeur à l’autre.

# Parcours avec des étapes.
steps-number-one = Regardez le numéro 1 jusqu’à le voir simple et net.
steps-see-stop = L’étape que vous regardez est simple. Les autres peuvent être doubles : ce n’est pas grave.

tour-goal = Parcourez la page en voyant simple à chaque étape, aussi souvent que possible, dans l’ordre.
tour-setup = Ayez une montre à portée de main.
tour-check = { $marks ->
    [yes] Vérifiez que la barre et le coin sont là tous les deux. Passez ensuite au numéro suivant.
   *[no] Vérifiez que toutes les parties sont là. Passez ensuite au numéro suivant.
    }
tour-again = Après le dernier numéro, recommencez au 1.
tour-count = Comptez les étapes où vous voyez simple en { $time }. Notez ce nombre dans le carnet.
tour-far = Regardez au loin.

# Les étapes ont des numéros, ou des noms de l’auteur, ou ni l’un ni l’autre.
jump-goal = Sautez d’une profondeur à l’autre et voyez simple à chaque étape.
jump-start-name = Regardez « { $name } » jusqu’à voir simple et net.
jump-start-shape = Regardez la première forme jusqu’à la voir simple et nette.
jump-next-number = Sautez au numéro suivant. Attendez qu’il soit simple.
jump-next-name = Sautez à « { $name } ». Attendez de voir simple.
jump-next-shape = Sautez à la forme suivante. Attendez qu’elle soit simple.
jump-check = { $marks ->
    [yes] Restez { $time } à chaque étape et vérifiez que la barre et le coin sont là.
   *[no] Restez { $time } à chaque étape et vérifiez que toutes les parties sont là.
    }
jump-round = Faites le tour { $times }. Puis regardez au loin.

pairs-goal = Tournez les yeux vers l’intérieur, relâchez, recommencez.
pairs-start = { $form ->
    [column] Commencez par { $shape-the } du haut. Attendez de voir simple.
   *[row] Commencez par { $shape-the } de gauche. Attendez de voir simple.
    }
pairs-go = { $form ->
    [column] Descendez pas à pas. Ne continuez que lorsque vous voyez simple.
   *[row] Allez vers la droite pas à pas. Ne continuez que lorsque vous voyez simple.
    }
pairs-check = { $marks ->
    [yes] Restez { $time } à chaque fois. Vérifiez que la barre et le coin sont là.
   *[no] Restez { $time } à chaque fois. Vérifiez que toutes les parties sont là.
    }
pairs-round = Faites tout le chemin { $times }. Puis regardez au loin.
pairs-see = Une image devant la page, la suivante derrière, et ainsi de suite.

rungs-goal = Montez de l’échelon 1 à l’échelon { $last }, un petit pas à la fois.
rungs-look = Regardez l’échelon 1 jusqu’à voir { $shape-gender ->
    [f] une seule
   *[m] un seul
    } { $shape }.
rungs-stay = Restez { $time }, puis passez au numéro suivant.
rungs-stop = Arrêtez-vous au premier échelon qui reste double. Revenez d’un échelon.
rungs-write = Notez votre dernier échelon simple. Puis regardez au loin.
rungs-see = { $shape-gender ->
    [f] Une seule
   *[m] Un seul
    } { $shape } sur l’échelon que vous regardez. Chaque échelon demande un peu plus.

hoop-goal = Voyez un grand cerceau se détacher de la page.
hoop-rest = Posez les yeux sur tout le cerceau épais, pas sur un seul point.
hoop-thin = Regardez le cerceau fin sur la page, puis de nouveau l’épais.
hoop-hold = Regardez pendant { $time }. Lequel est plus près de vous ? Regardez ensuite au loin.
hoop-see = { $side ->
    [toward] Le cerceau épais flotte devant le fin, plus près de vous.
    [away] Le cerceau épais est derrière le fin, plus loin que la page.
   *[page] Les deux cerceaux sont à plat sur la page.
    }

tiles-goal = Sentez chaque pas { $shape-gender ->
    [f] d’une { $shape } à la suivante, à l’intérieur.
   *[m] d’un { $shape } au suivant, à l’intérieur.
    }
tiles-largest = { $shape-gender ->
    [f] Regardez la plus grande { $shape }. Elle est sur la page.
   *[m] Regardez le plus grand { $shape }. Il est sur la page.
    }
tiles-in = Entrez, { $shape } par { $shape }. Attendez chaque fois de voir simple.
tiles-say = Dites si c’est un puits ou une tour. Lisez ensuite « { page-see } ».
tiles-check = { $marks ->
    [yes] Au milieu, vérifiez que la barre et le coin sont là tous les deux.
   *[no] Au milieu, vérifiez que toutes les parties sont là.
    }
tiles-out = Ressortez pas à pas. Faites-le cinq fois, puis regardez au loin.
tiles-see = { $side ->
    [toward] Une tour de marches égales. La plus petite est la plus proche de vous.
   *[away] Un puits de marches égales. La plus petite est la plus profonde.
    }

point-goal = Montrez l’endroit où { $shape-the } semble se trouver.
point-setup-toward = Ayez un crayon à portée de main.
point-setup-away = Placez la page debout au bord d’une table, pour que votre main puisse passer derrière.
point-look = Regardez { $shape-the } jusqu’à n’en voir { $shape-gender ->
    [f] qu’une.
   *[m] qu’un.
    } Ne regardez pas encore la règle.
point-pencil-toward = Amenez un crayon par le côté, là où { $shape-the } semble flotter.
point-pencil-away = Tenez un crayon à côté de la page, aussi loin derrière que semble être { $shape-the }.
point-ruler = Ne bougez plus le crayon. À quelle distance de la page est-il ? Regardez la règle.
point-again = Regardez au loin. Faites-le { $times }.
point-see-toward = { $shape-gender ->
    [f] Une seule { $shape } qui flotte devant la page. Le crayon la rencontre en l’air.
   *[m] Un seul { $shape } qui flotte devant la page. Le crayon le rencontre en l’air.
    }
point-see-away = { $shape-gender ->
    [f] Une seule
   *[m] Un seul
    } { $shape } derrière la page. Le crayon est à la même profondeur.

# Les distances viennent avec leur unité.
walk-goal = Gardez { $shape-a } simple pendant que vous reculez de la page.
walk-setup = Accrochez-la à hauteur des yeux, avec la place de reculer.
walk-start = Commencez à { $distance } de la page. Voyez { $shape-gender ->
    [f] une seule
   *[m] un seul
    } { $shape }.
walk-check = { $marks ->
    [yes] Restez { $time }. Vérifiez que la barre et le coin sont là tous les deux.
   *[no] Restez { $time }. Vérifiez que toutes les parties sont là.
    }
walk-back = Reculez jusqu’à la distance suivante du tableau, { $distance } au plus.
walk-return = Revenez par le même chemin. Notez où une partie a disparu.
walk-see = { $shape-gender ->
    [f] Une { $shape }, simple tout du long. Elle
   *[m] Un { $shape }, simple tout du long. Il
    } peut sembler bouger pendant que vous marchez.

posts-goal = Suivez les poteaux et sentez à quelle distance de vous est chacun.
posts-base = Regardez la ligne de base. Elle est sur la page.
posts-go = Allez de poteau en poteau, de gauche à droite. Voyez chacun simple.
posts-check = { $marks ->
    [yes] À chaque poteau, vérifiez que la barre et le coin sont là.
   *[no] À chaque poteau, vérifiez que toutes les parties sont là.
    }
posts-say = Dites quel poteau est le plus près de vous, et lequel le plus loin.
posts-back = Revenez dans l’autre sens. Puis regardez au loin.
posts-see-through = Une rangée de poteaux qui traverse la page comme un escalier.
posts-see-both-sides = Certains poteaux sont devant la page, d’autres derrière.
posts-see-stair-away = Un escalier de poteaux. Chacun est plus loin que le précédent.
posts-see-stair-toward = Un escalier de poteaux. Chacun est plus près de vous que le précédent.
posts-see-away = Chaque poteau a sa propre profondeur, sur la page ou derrière.
posts-see-toward = Chaque poteau a sa propre profondeur, sur la page ou devant.

nest-box = boîte
    .the = la boîte
    .of = de la boîte
    .gender = f
nest-frames = rangée de cadres
    .the = la rangée de cadres
    .of = de la rangée de cadres
    .gender = f
nest-corridor = couloir
    .the = le couloir
    .of = du couloir
    .gender = m
nest-goal = { $count ->
    [one] Sentez la profondeur { $room-of } et situez-y la forme.
   *[other] Sentez la profondeur { $room-of } et situez-y chaque forme.
    }
nest-window = Regardez dans { $room-the } comme par une fenêtre.
nest-front = Laissez vos yeux aller de l’avant au fond { $room-of }.
nest-check = { $count ->
    [one] Regardez la forme.
   *[other] Regardez chaque forme tour à tour.
    } { $marks ->
    [yes] Vérifiez que la barre et le coin sont là.
   *[no] Vérifiez que toutes les parties sont là.
    }
nest-back = Revenez à l’avant. Faites-le cinq fois, puis regardez au loin.
nest-see = { $room-gender ->
    [f] Une { $room } profonde.
   *[m] Un { $room } profond.
    } Ce qui est plus petit est plus loin de vous.

solids-goal = Voyez les choses comme dans un espace réel.
solids-window = Regardez à travers la page comme par une fenêtre.
solids-nearest = Commencez par le plus proche. Attendez de voir simple.
solids-check = { $count ->
    [one] Regardez calmement.
   *[other] Regardez chaque chose tour à tour.
    } { $marks ->
    [yes] Vérifiez que la barre et le coin sont là.
   *[no] Vérifiez que toutes les parties sont là.
    }
solids-edges = Suivez les arêtes qui vont vers le fond, à l’aller et au retour.
solids-again = Faites-le cinq fois, puis regardez au loin.
solids-see = Des choses en relief, avec un côté proche et un lointain.

trail-goal = Suivez un tracé des yeux tandis qu’il s’approche et s’éloigne.
trail-start-line = Commencez à un bout du tracé et attendez de voir simple.
trail-start-bead = Commencez par la perle à repères et attendez de voir simple.
trail-along-line = Suivez lentement le tracé des yeux. Sentez-les se rapprocher et se relâcher.
trail-along-beads = Allez lentement des yeux de perle en perle. Sentez-les se rapprocher et se relâcher.
trail-check = { $marks ->
    [yes] À chaque bout, vérifiez que la barre et le coin sont là.
   *[no] À chaque bout, vérifiez que toutes les parties sont là.
    }
trail-back = Revenez par le même chemin. Faites-le { $times }, puis regardez au loin.
trail-back-round = Repartez ensuite dans l’autre sens. Faites-le { $times }, puis regardez au loin.
trail-see = Un tracé lisse qui change de profondeur tout du long. La partie que vous regardez est simple.
