# Les pages de vérification : lunettes, image fantôme et taille.

# What every check ends in

check-go = Continuer
check-fix = Corriger
check-ask = Demander

# Glasses

glasses-title = Vérifiez vos lunettes
glasses-lead = Mettez les lunettes : { $glasses }. Regardez les trois formes.
glasses-picture = Œil gauche : une barre plate et un anneau. Œil droit : un anneau et un coin. Les deux yeux ensemble : barre, anneau et coin.
glasses-bar = barre : œil gauche
glasses-ring = anneau : les deux yeux
glasses-wedge = coin : œil droit
glasses-should = Ce que vous devriez voir
glasses-close = Fermez un œil à la fois ; n’appuyez pas dessus.
glasses-with = Regardez avec
glasses-see = Vous devriez voir
glasses-left-alone = Œil gauche seul
glasses-left-alone-see = barre et anneau, pas de coin
glasses-right-alone = Œil droit seul
glasses-right-alone-see = anneau et coin, pas de barre
glasses-both = Les deux yeux
glasses-both-see = barre, anneau et coin
glasses-go = Tout comme dans le tableau, et les couleurs agréables pendant une demi-minute ? Passez à la page suivante.
glasses-fix-swapped = Barre et coin échangés ? Les lunettes sont à l’envers : { $left } va devant l’œil gauche, { $right } devant le droit.
glasses-fix-missing = Une forme manque pour son propre œil ? Nettoyez les lunettes, prenez plus de lumière et regardez encore.
glasses-fix-comes = Les deux yeux ouverts, une forme va et vient ? Clignez, attendez un peu, regardez l’anneau.
glasses-fix-ghost = Une trace pâle de la forme de l’autre œil ? C’est une image fantôme : sa propre page la mesure.
glasses-ask = Une forme manque encore, ou les couleurs vous gênent ? Ôtez les lunettes et ne continuez pas. Consultez votre professionnel de la vue. C’est fréquent et ce n’est pas votre faute.

# Ghost

ghost-title = Cherchez une image fantôme
ghost-lead = Une image fantôme est une trace du repère de l’autre œil. Là, filtre, couleurs et lumière s’accordent mal.
ghost-lead-off-base = Une image fantôme est une trace du repère de l’autre œil. Là, filtre, couleurs et lumière s’accordent mal. Cette page n’a pas le décalage de base : un seul œil regarde à la fois.
ghost-description = Des cases numérotées pour chaque œil, pour trouver ce qui se voit des repères de l’autre œil.
ghost-left-open = Œil gauche ouvert, œil droit fermé
ghost-right-open = Œil droit ouvert, œil gauche fermé
ghost-left-picture = Des cases numérotées, chacune avec un coin pour l’œil droit. Pour l’œil gauche, il s’efface sur l’une d’elles.
ghost-right-picture = Des cases numérotées, chacune avec une barre pour l’œil gauche. Pour l’œil droit, elle s’efface sur l’une d’elles.
ghost-number = Numéro
ghost-left-percent = Œil gauche, %
ghost-right-percent = Œil droit, %
ghost-look = Comment regarder
ghost-look-on = Lunettes mises : { $glasses }. Prenez la lumière de vos exercices.
ghost-look-left = Fermez l’œil droit. Sur quelle case de la rangée de l’œil gauche le coin s’efface-t-il le plus ? Notez le numéro.
ghost-look-right = Fermez l’œil gauche. Trouvez le numéro des barres dans l’autre rangée. Entre deux numéros, prenez le plus grand.
ghost-hint-white = À travers son filtre, l’œil ouvert voit chaque case comme un fond un peu plus sombre que la précédente. Aux petits numéros, le repère est plus sombre que sa case ; aux grands, plus clair. Entre les deux, il s’y fond.
ghost-hint-black = À travers son filtre, l’œil ouvert voit chaque case comme un fond un peu plus clair que la précédente. Aux petits numéros, le repère est plus clair que sa case ; aux grands, plus sombre. Entre les deux, il s’y fond.
ghost-range = { $first } à { $last }
ghost-go-little = Votre numéro est { $left } pour l’œil gauche et { $right } pour le droit : ces pages vous montrent peu ou pas d’image fantôme. Passez à la page suivante.
ghost-go-weak = Votre numéro est { $left } pour l’œil gauche et { $right } pour le droit : ces pages vous montrent au plus une faible image fantôme. Passez à la page suivante.
ghost-go-none = Aucun numéro ne donne ici une image fantôme faible : l’auteur de ces pages en a accepté une forte. Voir plus bas.
ghost-fix = Un autre numéro : image fantôme possible.
ghost-fix-print = Réimprimez en couleur, en qualité maximale, sur papier mat.
ghost-fix-lamp = Essayez une autre lampe.
ghost-fix-colours = Coupez les couleurs de nuit, baissez la luminosité.
ghost-fix-wipe = Essuyez l’écran et les filtres.
ghost-fix-straight = Regardez l’écran bien en face.
ghost-fix-again = Puis regardez encore.
ghost-ask = Encore un autre numéro, ou le repère ne s’efface sur aucune case ? Ne vous exercez pas avec ces pages. Demandez à leur auteur des pages avec les encres de vos numéros.
ghost-maker = Pour qui fait les pages
ghost-holds-print = Ces teintes sont imprimées : les numéros valent pour ce papier, cette imprimante et cette lampe. Notez les trois.
ghost-holds-screen = Les numéros valent pour cet écran à cette luminosité.
ghost-write = Écrivez les pourcentages sous [glasses] dans set.toml et refaites le livre. Pour gauche 3, droite 6 :

# Size

scale-title = Vérifiez la taille
scale-description = Une barre de 100 mm, un carré de 50 mm et le contour d’une carte bancaire, à mesurer.
scale-lead-paper = Mesurez la barre à la règle et posez une carte bancaire sur son contour. Les profondeurs ne sont justes qu’à taille réelle.
scale-lead-screen = Posez une règle sur la barre, ou une carte bancaire sur son contour. En plein écran, réglez le zoom pour que tout concorde.
scale-lead-paper-off-base = Mesurez la barre à la règle et posez une carte bancaire sur son contour. Les profondeurs ne sont justes qu’à taille réelle. Cette page n’a pas le décalage de base : elle se mesure, elle ne se regarde pas avec les lunettes.
scale-lead-screen-off-base = Posez une règle sur la barre, ou une carte bancaire sur son contour. En plein écran, réglez le zoom pour que tout concorde. Cette page n’a pas le décalage de base : elle se mesure, elle ne se regarde pas avec les lunettes.
scale-bar = Barre : 100 mm d’un bout à l’autre
scale-bar-picture = Une barre de 100 mm.
scale-square = Carré : 50 mm de côté
scale-square-picture = Un carré de 50 mm.
scale-card = Carte bancaire : 85,6 × 54 mm
scale-card-picture = Le contour d’une carte bancaire, 85,60 sur 53,98 mm.
scale-go = La barre mesure 100 mm, ou la carte tient sur son contour ? Passez à la page suivante.
scale-off = Si la taille n’est pas juste
scale-measures = La barre mesure
scale-from = Regardez à
scale-fix-print = Réimprimez à 100 %, « taille réelle », sans « ajuster à la page ».
scale-fix-keep = Impossible ? Gardez la page et changez la distance selon le tableau.
scale-fix-zoom = Réglez le zoom pour que la barre mesure 100 mm.
scale-fix-distance = Impossible ? Changez la distance selon le tableau.
scale-ask-paper = Plus de 6 mm d’écart ? N’utilisez pas ces pages. Faites-vous aider pour l’imprimante.
scale-ask-screen = Plus de 6 mm d’écart ? Prenez un plus grand écran ou l’édition papier. Demandez-la à l’auteur des pages.
