# Les feuilles pour le professionnel de la vue : les termes du métier sont ici à leur place.

professional-title = Pour votre professionnel de la vue
professional-later = Pour votre professionnel, feuille { $number }
professional-description = Ce qu’est le livre, pour quoi il a été calculé et les nombres de chaque page d’exercice.
professional-lead = Merci de montrer ces feuilles à la personne qui suit vos yeux.

professional-what = Ce qu’est ce livre
professional-what-text = Des pages d’exercice pour les deux yeux, vues par des filtres rouge et cyan, pour des adultes s’exerçant seuls. Elles ne sont ni un test ni un traitement ; elles ne mesurent rien et ne promettent rien. Elles ont été calculées à partir des nombres ci-dessous et de rien d’autre. Votre avis passe avant tout ce qui est écrit ici.
professional-please = Ce que nous vous demandons
professional-please-text = Cette sorte d’exercice est-elle sans danger pour cette personne ? Quelles pages, à quelle distance, combien de temps ? Y a-t-il une raison de ne pas affaiblir une suppression ? Merci de l’écrire à côté du tableau et de barrer ce que la personne doit laisser de côté.
professional-viewer = Pour quoi il a été calculé
professional-findings = Ce que l’on sait d’autre des yeux
professional-glasses = Lunettes et encres
professional-columns = Ce que dit le tableau
professional-columns-text = Degré : la difficulté d’une page à côté des autres, de 1 à 10 ; il ne dit rien de la personne. Demande : par rapport à la page, en dioptries prismatiques ; vers l’avant est base externe, vers l’arrière est base interne. Disparité : différence exacte de vergence par rapport à la page ; + est croisée. Lieu : depuis les yeux, pour tous les écarts pupillaires. Taille : de la plus petite et de la plus grande chose regardée. Aide : 0 pour des points seuls, 3 pour un contour et plus. Parties : vues par l’œil gauche seul, l’œil droit seul, les deux. Équilibre : ce que garde l’œil le plus fort.
professional-columns-base = La demande et la disparité sont comptées depuis le décalage de base. Aucun lieu n’est donné, car les yeux sont déviés.

# Noms des données et ce qui est à côté.

professional-head-what = Quoi
professional-head-value = Valeur
professional-unknown = inconnu ; rien n’est deviné
professional-reader = Personne
professional-distance = Yeux–page
professional-ipd = Écart pupillaire
professional-ipd-value = { $ipd } ; des lecteurs { $low } à { $high }
professional-reserve-toward = Réserve base externe
professional-reserve-away = Réserve base interne
professional-blur = flou { $n }
professional-break = bris { $n }
professional-recovery = recouvrement { $n }
professional-reserve = { $amounts } ; { $source }
professional-source-norm = moyennes publiées d’un groupe, { $norm }
professional-source-found = valeurs trouvées chez la personne
professional-zone = Demandé au plus
professional-zone-value = { $from } ({ $first }) à { $to } ({ $second }) : { $which }
professional-zone-whole = toutes les réserves
professional-zone-everyday = la part de tous les jours
professional-bound-percival = Percival
professional-bound-sheard = Sheard
professional-bound-reserve = réserve
professional-phoria = Phorie
professional-phoria-eso = { $pd } éso
professional-phoria-exo = { $pd } exo
professional-near-point = Punctum proximum de convergence
professional-balance = Équilibre
professional-base = Décalage de base
professional-base-none = aucun
professional-base-out = { $pd } vers l’avant (base externe)
professional-base-in = { $pd } vers l’arrière (base interne)
professional-base-right = { $pd } image droite plus haute
professional-base-left = { $pd } image gauche plus haute
professional-framed = Pages encadrées
professional-decided = Zone et décalage de base
professional-filters = Lunettes
professional-edition = Édition
professional-edition-white = { $id }, { $page }, fond blanc
professional-edition-black = { $id }, { $page }, fond noir
professional-seen-on = Vu sur
professional-inks = Encres
professional-inks-value = œil gauche { $left }, œil droit { $right }
professional-ghost = Image fantôme prévue
professional-ghost-value = œil gauche { $left } %, œil droit { $right } %
professional-ghost-ideal = œil gauche { $left } %, œil droit { $right } %, si l’écran et les filtres étaient idéaux

# Le tableau des pages.

professional-page = Page
professional-kind = Genre
professional-level = Niveau
professional-grade = Degré
professional-demand = Demande, dp
professional-disparity = Disparité, s d’arc
professional-place = Lieu, cm
professional-size = Taille, degrés
professional-cue = Aide
professional-parts = Parties
professional-range = { $from } à { $to }
professional-none = –
professional-flat = page
professional-toward = { $n } avant
professional-away = { $n } arrière
professional-very-far = très loin
professional-by-kind = par genre
