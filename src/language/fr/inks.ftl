# Les feuilles des encres : des échantillons avec ce que chaque œil en voit, et les spectres derrière.

medium-unsaid = un écran idéal, puisque rien n’est dit
medium-screen = écran { $name }
medium-print = impression { $solids } sous la lampe { $lamp }
inks-percent = { $n } %
inks-lead-white = { $left } à gauche, { $right } à droite ; fond blanc ; { $medium }
inks-lead-black = { $left } à gauche, { $right } à droite ; fond noir ; { $medium }

inks-title = Encres de l’édition { $id }
inks-description = Les encres en échantillons, leur clarté pour chaque œil, et le contraste et l’image fantôme à attendre.
inks-marks-picture = Une barre plate pour l’œil gauche et un coin pour l’œil droit. Deux anneaux qui se croisent, un pour chaque œil.
inks-ground = Fond
inks-left-mark = Repère gauche
inks-right-mark = Repère droit
inks-overlap = Croisement
inks-words = Texte
inks-on-page = Sur la page
inks-to-left = Pour l’œil gauche
inks-to-right = Pour l’œil droit
inks-swatches-note = Gris et pourcentages : la clarté de chaque couleur pour chaque œil, comptée depuis le blanc vu par son propre filtre.
inks-swatches-picture = Échantillons des encres : { $codes }.

inks-expect = À quoi s’attendre
inks-eye = Œil
inks-contrast = Contraste
inks-ghost = Image fantôme
inks-crossing = Croise­ment
inks-brightness = Clarté
inks-eye-left = Gauche
inks-eye-right = Droit
inks-expect-note = Contraste : de combien le propre repère se détache du fond. Image fantôme : de combien le fait le repère de l’autre œil, en part du propre repère. Croisement : de combien un croisement se détache du propre repère. Clarté : le plus clair que voit cet œil, par rapport au blanc de la page sans filtre.

inks-go = Bon
inks-fix = À corriger
inks-ghost-fine = L’image fantôme ne dépasse pas 2 %.
inks-ghost-faint = L’image fantôme dépasse 2 % mais pas 5 % : elle peut se remarquer.
inks-ghost-strong = L’image fantôme dépasse 5 %. Teintez le fond, ou changez de lunettes, de papier ou de lumière. Regardez ensuite la page de l’image fantôme.
inks-ghost-refused = L’image fantôme dépasse 15 %. Ces lunettes ne séparent pas les deux repères sur ce support.
inks-imbalance = Clarté des deux yeux : rapport de { $n } à 1.
inks-imbalance-more = Clarté des deux yeux : rapport de { $n } à 1, plus que le 2 à 1 visé.
inks-text-contrast = Contraste du texte avec le fond : { $n } à 1.

inks-traded = Ce qui a été cédé
inks-traded-nothing = Rien : ce sont les encres pleines des lunettes.
inks-role-left = l’encre gauche
inks-role-right = l’encre droite
inks-role-overlap = l’encre du croisement
inks-role-ground = l’encre du fond
inks-traded-tint = le fond est teinté en { $ground } : il a { $left } du blanc pour l’œil gauche et { $right } pour le droit ; l’image fantôme passe de { $before } à { $after }
inks-traded-ink = { $ink } n’est pas la pleine encre { $full } : son signal est { $signal } au lieu de { $whole }
inks-traded-pinned = { $ink } est celle de l’auteur ; calculée, elle serait { $solved }, avec une image fantôme de { $ghost } au lieu de { $pinned }
inks-traded-ghost = l’image fantôme est { $left } pour l’œil gauche et { $right } pour le droit, limite { $limit }
inks-traded-ghost-tinted = l’image fantôme est { $left } pour l’œil gauche et { $right } pour le droit, limite { $limit } ; un fond teinté l’amènerait à { $tinted }

# Spectres.

spectra-title = Lumière, filtres et ce qui passe
spectra-description = Quatre courbes sur la longueur d’onde : la lumière, les filtres et ce qui passe vers chaque œil.
spectra-red = rouge
spectra-green = vert
spectra-blue = bleu
spectra-ground = fond
spectra-left-mark = repère gauche
spectra-right-mark = repère droit
spectra-page-sends = Ce qu’envoie la page
spectra-screen-sends = Ce qu’envoie l’écran
spectra-peak = lumière, part de son pic
spectra-filters = Ce que laissent passer les filtres
spectra-share = part qui passe
spectra-left-filter = gauche : { $filter }
spectra-right-filter = droit : { $filter }
spectra-passes-left = Ce qui passe vers l’œil gauche
spectra-passes-right = Ce qui passe vers l’œil droit
spectra-scale = lumière, même échelle
spectra-light = { $light } { $share } %
spectra-note = Pourcentages : la clarté de cette lumière pour l’œil, par rapport au blanc de la page sans filtre.
spectra-note-leak = Pourcentages : la clarté de cette lumière pour l’œil, par rapport au blanc de la page sans filtre. Un œil dont seule la fuite est connue a la courbe d’un filtre idéal ; ses pourcentages comptent la fuite.
spectra-wavelength = longueur d’onde, nm
spectra-picture = { $title }, sur la longueur d’onde de 380 à 780 nm. Courbes : { $curves }.
