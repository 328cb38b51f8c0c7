# Brèves vérifications : ce que voit chaque œil, et si cela se réunit.

# Les deux moitiés d’un trait près d’une échelle. Il est vertical ou horizontal.
nonius-goal = { $form ->
    [upright] Voyez si les deux moitiés d’un trait vertical se rejoignent.
   *[level] Voyez si les deux moitiés d’un trait horizontal se rejoignent.
    }
nonius-zero = Regardez le zéro de l’échelle. Les deux yeux voient l’échelle.
nonius-ticks = { $form ->
    [upright] Sans bouger les yeux, voyez où pointent la moitié du haut et celle du bas.
   *[level] Sans bouger les yeux, voyez où pointent la moitié gauche et la moitié droite.
    }
nonius-note = Notez les deux graduations dans le carnet. Regardez au loin, puis encore ici. Une minute suffit.
nonius-tell = Si les moitiés restent séparées, dites-le à votre professionnel. Ne changez rien vous-même.
nonius-see = { $form ->
    [upright] Les moitiés du haut et du bas, immobiles, au-dessus et au-dessous de la même graduation.
   *[level] Les moitiés gauche et droite, immobiles, de part et d’autre de la même graduation.
    }
nonius-only-first = { $form ->
    [upright] la moitié du haut
   *[level] la moitié gauche
    }
nonius-only-second = { $form ->
    [upright] la moitié du bas
   *[level] la moitié droite
    }
nonius-only-apart = des moitiés séparées
nonius-apart = Ne forcez pas. Dites à votre professionnel les graduations notées.

# Un point pour un œil dans un cadre pour l’autre.
inset-goal = Voyez deux images différentes, une par œil, comme une seule image.
inset-corners = Regardez les quatre traits d’angle. Les deux yeux les voient.
inset-middle = Regardez maintenant au milieu. Laissez le point et le cadre se réunir.
inset-see = Un point qui reste dans le cadre carré, avec un trait à chaque angle.
inset-only-frame = le cadre
inset-only-dot = le point
inset-only-drift = un point qui sort
inset-drift = Repos, puis réessayez. Toujours ? Dites-le à votre professionnel.

# Des marques pour chaque œil, en groupes de trois tailles.
who-goal = Découvrez quel œil voit quelle marque, et que les deux participent.
who-largest = Regardez le plus grand carré. Voyez quelles marques sont au-dessus.
who-cover = Cachez l’œil droit : il reste les anneaux et les carrés. Cachez le gauche : il reste les croix et les carrés.
who-note = Les deux yeux ouverts, regardez chaque carré. Notez le plus petit qui a son anneau et sa croix. Une minute suffit.
who-see = Trois carrés, chacun sous un anneau et une croix, tous en même temps.
who-only-rings = des anneaux et des carrés
who-only-crosses = des croix et des carrés
who-only-turns = des marques tour à tour
who-turns = Les yeux se relaient. Repos, puis gardez les grandes.

# Un contour en parties, certaines pour chaque œil : des moitiés, ou à tour de rôle.
halves-goal = Réunissez les parties de deux images en { $shape-gender ->
    [f] une seule
   *[m] un seul
    } { $shape }.
halves-dot = Regardez le point du milieu. Les deux yeux le voient.
halves-cover = Cachez l’œil droit, puis le gauche : chaque œil a ses propres parties.
halves-close = Les deux yeux ouverts, regardez le point et laissez { $shape-the } se fermer autour.
halves-see = { $shape-gender ->
    [f] Une { $shape } entière
   *[m] Un { $shape } entier
    } autour d’un point, avec de petits vides entre les parties.
halves-only-left = { $deal ->
    [sides] la moitié gauche
   *[turns] les parties de l’œil gauche
    }
halves-only-right = { $deal ->
    [sides] la moitié droite
   *[turns] les parties de l’œil droit
    }
halves-only-apart = des parties isolées
halves-apart = Repos, puis réessayez. Toujours ? Dites-le à votre professionnel.
