# Ce que les légendes, les pieds de page et les descriptions disent de l’image : demandes, lieux et ce que reçoit chaque œil.

list-apart = { $before } ; { $after }

demand-toward = { $pd } vers l’avant
demand-away = { $pd } vers l’arrière
demand-page = sur la page
demand-on-page = sur la page
demand-range = de { $from } à { $to }
demand-range-to-page = de { $from } à la page
demand-range-from-page = de la page à { $to }

place-between = { $near } à { $far } cm
place-very-far = très loin

# Légendes.

caption-flat = Tout sur la page, à { $distance }.
caption-flat-base = Tout sur la page, compté du décalage de base, à { $distance }.
caption-deep = Profondeurs : { $depths } ; page à { $distance }.
caption-deep-base = Profondeurs, du décalage de base : { $depths } ; page à { $distance }.
caption-range = Profondeurs : { $depths }. Depuis vos yeux : page { $distance }.
caption-range-base = Profondeurs, du décalage de base : { $depths }. Depuis vos yeux : page { $distance }.
caption-depth = { $name } { $demand }
caption-depth-all = tout { $demand }
caption-place = { $name } { $place } ({ $demand })
caption-place-all = tout { $place } ({ $demand })
caption-places = Depuis vos yeux : { $places } ; page { $distance }.

# Ce que reçoit chaque œil.

eye-left-alone = Œil gauche : { $things }.
eye-right-alone = Œil droit : { $things }.
eye-both-alone = Les deux : { $things }.
thing-count = { $count } { $thing-many }
thing-numbered = { $thing } { $number }

picture-eyes = Œil gauche : { $left }. Œil droit : { $right }. Les deux yeux ensemble : { $together }.
picture-same = les mêmes formes
picture-same-moved = les mêmes formes décalées de côté selon leur profondeur
picture-line = une ligne qui va { $depths }
picture-line-flat = une ligne sur la page
picture-stand = { $name } : { $demand }, { $place } des yeux
picture-stand-base = { $name } : { $demand }
picture-lines = des lignes qui vont vers le fond
picture-trail = un tracé
picture-trail-beads = { $count ->
        [one] un tracé avec { $count } perle
       *[other] un tracé avec { $count } perles
    }
picture-dots = Œil gauche : des points aléatoires dans un cadre, un tiret sur deux de ce cadre. Œil droit : les mêmes points, décalés de côté selon leur profondeur, et les autres tirets. Les deux yeux ensemble : des points { $depths }, dans un cadre entier.
picture-dots-flat = Œil gauche : des points aléatoires dans un cadre, un tiret sur deux de ce cadre. Œil droit : les mêmes points et les autres tirets. Les deux yeux ensemble : des points sur la page, dans un cadre entier.
picture-dots-lines = Des lignes montrent où la profondeur change.
picture-dots-drawn = Parmi eux : { $things }.

# Une page qui demande quelque chose.

asked-picture = { $count ->
        [one] Une image pour les deux yeux ensemble, avec { $count } question. { $goal }
       *[other] Une image pour les deux yeux ensemble, avec { $count } questions. { $goal }
    }
asked-choices = Au choix : { $choices }.
asked-key-turned = Les réponses se trouvent dans le corrigé à la fin du livre.
asked-key-file = Les réponses se trouvent dans un fichier à part.

# Un décalage de base pour un œil dévié, un équilibre entre les yeux et qui les a fixés.

base-words = décalage de base { $amounts }
base-right-higher = image droite plus haute de { $pd }
base-left-higher = image gauche plus haute de { $pd }
base-sentence = Tout a un décalage de base : { $amounts }.
balance-left = { $share } % œil gauche
balance-right = { $share } % œil droit
balance-words = équilibre { $share }
set-by = fixé par { $name }

# Nombres d’une page.

readings-distance = Yeux–page
readings-demand = Demande
readings-place = Yeux–forme
readings-ruler-range = { $near } à { $far }
readings-ruler = Règle : le crayon est à { $range } cm de la page (barre épaisse)
readings-ruler-picture = Une règle à taille réelle, longue de { $length } cm, avec une barre épaisse à { $range } cm.

# Ce qu’un document dit de lui-même.

document-answers = { $title } : réponses
document-answers-subject = Réponses aux pages d’exercice de { $title }.
document-subject = Pages d’exercice pour les deux yeux et des lunettes { $first }/{ $second }.
document-practice = pages d’exercice
document-anaglyph = anaglyphe
document-glasses = lunettes { $first }/{ $second }
