# Sortes où une chose est gardée simple.

hold-goal = Gardez { $shape-a } { $shape-gender ->
    [f] simple et nette
   *[m] simple et net
    } pendant que vos yeux restent immobiles.
hold-look = Regardez { $shape-the } sans forcer, jusqu’à n’en voir { $shape-gender ->
    [f] qu’une
   *[m] qu’un
    }.
hold-hold = Gardez l’image simple et nette { $time }.
hold-rest = Regardez au loin cinq secondes. Faites-le { $times }.
hold-see = { $shape-gender ->
    [f] Une seule
   *[m] Un seul
    } { $shape } qui semble { $side ->
    [toward] flotter devant la page.
    [away] se trouver derrière la page, comme à travers une fenêtre.
   *[page] être à plat sur la page.
    }

columns-goal = Lisez de haut en bas : chaque ligne demande à vos yeux un peu plus que la précédente.
columns-start = Commencez par la première ligne. Attendez qu’elle soit simple et nette.
columns-check = { $marks ->
    [yes] Vérifiez que la barre et le coin sont là, en haut et en bas.
   *[no] Vérifiez que toutes les parties sont là, en haut et en bas.
    }
columns-aloud = Lisez à voix haute, ligne par ligne. Attendez que chaque ligne soit nette.
columns-rest = À la fin, regardez au loin cinq secondes. Faites-le trois fois.
columns-see = Des lignes simples et nettes qui avancent ou reculent au fil de la lecture.

# Une ligne a des mots ; plusieurs sont des lignes.
words-goal = { $lines ->
    [one] Lisez avec les deux yeux des mots qui restent simples et nets.
   *[other] Lisez avec les deux yeux des lignes qui restent simples et nettes.
    }
words-middle = Regardez le milieu de la page sans forcer, jusqu’à voir les lettres simples.
words-aloud = Lisez lentement à voix haute, au besoin lettre par lettre.
words-rest = Regardez au loin cinq secondes. Faites-le cinq fois.
words-see-toward = { $lines ->
    [one] Des mots simples et nets qui semblent flotter devant la page.
   *[other] Des lignes simples et nettes qui semblent flotter devant la page.
    }
words-see-away = { $lines ->
    [one] Des mots simples et nets qui semblent être derrière la page.
   *[other] Des lignes simples et nettes qui semblent être derrière la page.
    }
words-see-page = { $lines ->
    [one] Des mots simples et nets, à plat sur la page.
   *[other] Des lignes simples et nettes, à plat sur la page.
    }

dealt-goal = Lisez des mots dont les lettres sont réparties entre vos deux yeux.
dealt-first = Regardez la première lettre d’une rangée jusqu’à la voir nette.
dealt-aloud = Lisez la rangée à voix haute, lettre par lettre, ou écrivez-la.
dealt-last = Allez jusqu’à la dernière rangée, puis regardez au loin. Une minute suffit.
dealt-note = Notez les rangées où des lettres manquaient : chaque œil en avait à lui.
dealt-see = Des rangées de mots entiers, lettres côte à côte, sans qu’il en manque.
dealt-only-some = quelques lettres
dealt-some = Il a manqué à un œil les siennes. Clignez, regardez au loin, relisez.
dealt-only-turns = des lettres qui vont et viennent
dealt-turns = Les yeux se relaient. Repos, puis page plus facile.
# Ce que dit une rangée, et ce que chaque œil seul en avait.
dealt-answer = { $word } : gauche { $left }, droit { $right }

patch-goal = Gardez un disque simple et net pendant que sa bordure tient vos yeux ensemble.
patch-border = Regardez d’abord la bordure rugueuse, jusqu’à la voir simple.
patch-middle = Regardez maintenant le milieu ouvert du disque. Vérifiez que la barre et le coin sont là tous les deux.
patch-hold = Gardez l’image dix secondes, puis regardez au loin. Faites-le trois fois. Une minute suffit.
patch-see = { $side ->
    [toward] Un disque net, devant la page, dans une bordure rugueuse. En son milieu, une barre et un coin, les deux à la fois.
    [away] Un disque net, derrière la page, dans une bordure rugueuse. En son milieu, une barre et un coin, les deux à la fois.
   *[page] Un disque net, à plat sur la page, dans une bordure rugueuse. En son milieu, une barre et un coin, les deux à la fois.
    }
