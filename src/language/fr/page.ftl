# Words of every exercise page.

page-stop-rule = Règle d’arrêt.
page-stop = Arrêtez tout de suite en cas de douleur, mal de tête, nausée ou vertige. Arrêtez aussi si vous voyez encore flou ou double après 5 à 10 minutes de repos, regard au loin. Cela dure jusqu’au lendemain ou revient deux fois ? Rangez le livre et consultez votre professionnel de la vue.
page-glasses = { $left } à gauche, { $right } à droite
page-ground-white = fond blanc
page-ground-black = fond noir
page-set-up = Préparation :
page-set-up-words = à { $distance } de vos yeux, { $glasses }. Page à plat et droite.
page-badge-level = niveau { $n } sur { $of }
page-badge-grade = degré { $n }
page-title-level = { $title }, niveau { $n }
page-do = À faire
page-see = Vous devriez voir
page-only = Si vous ne voyez que …
page-only-row = { $seen } :
page-easier = Plus facile :
page-harder = Plus difficile :
page-first = c’est la première page
page-last = c’est la dernière page
page-answers = Réponses :
page-number = page { $n }
page-key-apart = dans un fichier à part
page-way = { $name } page { $page }
page-go-to = Aller à la page { $page }

# An exercise on two sheets: its picture, and its words.

page-words-title = { $title } : les mots
page-words-description = Ce qu’il faut faire à la page « { $title } », en mots seulement, à lire sans les lunettes.
page-words-at = À faire :
page-picture-at = Image :

# The footer.

footer-set = { $title } { $version } · édition { $edition } · { $date }
footer-set-reader = { $title } { $version } · édition { $edition } · pour { $reader } · { $date }
footer-facts = { $depth } · { $distance }, écart { $ipd } · { $glasses } · { $ground }
footer-true-size = taille 100 %
footer-seed = graine { $n }

# Where the reader writes on an exercise page.

log-date = Date
log-minutes = Minutes
log-single = Simple
log-marks = Les deux repères
log-comfort = Confort 0–10
log-line = Carnet : date, minutes, simple, les deux repères, confort 0–10.
log-line-answers = { $n ->
    [one] Carnet : date, confort 0–10, votre réponse.
   *[other] Carnet : date, confort 0–10, vos réponses { $first } à { $last }.
    }
log-write = { $n ->
    [one] Notez votre réponse dans le carnet.
   *[other] Notez vos réponses { $first } à { $last } dans le carnet.
    }

# Cover and contents.

cover-facts = { $n ->
    [one] Pages d’exercice pour voir avec les deux yeux, avec des lunettes { $first } et { $second }. Une page d’exercice, à regarder à { $distance } de vos yeux.
   *[other] Pages d’exercice pour voir avec les deux yeux, avec des lunettes { $first } et { $second }. { $n } pages d’exercice, à regarder à { $distance } de vos yeux.
    }
cover-description = Couverture de { $title }.
cover-edition = Édition { $edition } : { $page }, { $ground }
cover-edition-reader = Édition { $edition } : { $page }, { $ground } · faite pour { $reader }
cover-glasses = Lunettes : { $glasses }
cover-version = Version { $version } · { $date }
cover-author = { $author } · version { $version } · { $date }
cover-practice = Pages d’exercice. Ni un test ni un traitement : lisez d’abord la page des précautions.
contents-title = Sommaire
contents-description = Chaque page du livre avec son numéro.
contents-link = Aller à { $title }
