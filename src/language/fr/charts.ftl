# Les graphiques de `plot`, pour les auteurs : l’échelle d’un ensemble et ses pages vues d’en haut.

chart-facts = { $title } { $version } · { $date } · pour { $distance } et un écart des yeux de { $ipd } ({ $low } à { $high })
chart-facts-base = { $facts } · { $base } ; tout compté de là
chart-numbers = Ce sont des nombres sur des pages, pas sur une personne : ni test, ni note, ni traitement.

# L’échelle.

chart-ladder = L’échelle de { $title }
chart-ladder-sheet = L’échelle de { $title }, feuille { $number } sur { $count }
chart-ladder-lead = Ce que demandent les exercices, dans l’ordre du livre : { $span }.
chart-ladder-picture = Deux graphiques ({ $span }) : difficulté de 0 à 100, et demande en dioptries prismatiques ; { $range }.
chart-span-none = aucune page
chart-span-one = page { $number }
chart-span-many = pages { $first } à { $last }
chart-difficulty = Difficulté, 0 à 100
chart-demand = Demande, dioptries prismatiques

chart-strand-check = vérifications
chart-strand-toward = tenir vers l’avant
chart-strand-away = tenir vers l’arrière
chart-strand-jump = saut
chart-strand-smooth = changement doux
chart-strand-depth = profondeur fine
chart-no-marker = sans signe : la difficulté n’est pas connue

chart-bar = de la plus petite à la plus grande demande d’une page ; 0 est la page elle-même
chart-toward = vers l’avant
chart-away = vers l’arrière
chart-blur = flou
chart-break = bris
chart-parallel = parallèles
chart-range = plage de la personne : { $away } ({ $first }) à { $toward } ({ $second })
chart-no-range = aucune plage de la personne n’est connue : l’ensemble ne donne ni réserves ni normes
chart-comfort = confort : au plus 1 degré de disparité
chart-parallel-eyes = yeux parallèles, écart des yeux { $ipd }
chart-reserves = { $source } : { $ends }
chart-reserve-ends = { $name } à { $ends }
chart-source-norm = réserves de la norme { $norm }
chart-source-one-side = réserves, un côté de la norme { $norm }
chart-source-found = réserves trouvées par un professionnel
chart-bound-percival = Percival, tiers médian
chart-bound-sheard = Sheard, le double de la phorie
chart-bound-reserve = toute la réserve

# Vues d’en haut.

chart-plan-lead = { $id } · { $kind } · vu d’en haut, échelle 1 : { $scale }
chart-plan-picture = Les deux yeux, la page à { $distance } et la place de ses cibles. { $labels }.
chart-label = { $names } : { $depth }
chart-label-names = { $names } :
chart-names-more = { $names } et { $count } de plus
chart-names-left = { $names } (œil gauche)
chart-names-right = { $names } (œil droit)
chart-labels-left-out = { $count } étiquettes sur { $all } ; le rapport a les autres
chart-depth-toward = { $cm } vers l’avant ({ $pd })
chart-depth-away = { $cm } vers l’arrière ({ $pd })
chart-depths = { $near } à { $far }
chart-left-eye = œil gauche
chart-right-eye = œil droit
chart-ruler = cm depuis les yeux ; la page à { $distance }
chart-art-field = Longue ligne : le champ d’image de la page, large de { $width }
chart-ipds = barres à bouts : écarts des yeux de { $low } à { $high }
chart-lines = lignes fines : les deux yeux regardent { $name }
chart-dotted = pointillé : un œil seul
chart-arrowhead = pointe de flèche : plus loin que la feuille
chart-shade = ombre : la plage de la personne, { $near } à { $far }
chart-shade-parallel = ombre : la plage de la personne, { $near } aux yeux parallèles
