# What the parts at the end of a book share.

part-sheet = { $title }, feuille { $n }
time-minutes = { $n ->
    [one] { $n } minute
   *[other] { $n } minutes
    }
time-seconds = { $n ->
    [one] { $n } seconde
   *[other] { $n } secondes
    }
time-days = { $n ->
    [one] { $n } jour
   *[other] { $n } jours
    }
time-weeks = { $n ->
    [one] { $n } semaine
   *[other] { $n } semaines
    }

# The plan.

plan-title = Votre plan
plan-description = Quelles pages viennent quelle semaine et quel jour, et quand avancer, prendre une page plus facile, arrêter et demander.
plan-lead = { $weeks }, { $days } par semaine, au plus { $minutes } par jour. C’est une proposition : allez à votre rythme.
plan-when = Quand
plan-pages = Pages, les nouvelles en gras
plan-minutes = Minutes
plan-done = Fait
plan-day = Semaine { $week }, jour { $day }
plan-each-day = Chaque jour
plan-easy-to-hard = Les pages du jour vont du facile au difficile. En gras, les nouvelles.
plan-rest = Après { $block } au plus, reposez-vous { $rest } : regardez au loin. Les minutes comprennent ces pauses.
plan-again = Une page n’est pas encore facile ? Reprenez-la. Les nouvelles peuvent attendre.
plan-end = Finissez chaque jour en regardant au loin.
plan-come-again = Il y a plus de jours que de pages : des pages connues reviennent.
plan-framed = Une page dans un cadre : seulement comme votre professionnel de la vue l’a dit.
plan-go-on = Avancez quand, lors de { $days } jours différents,
plan-good-answers = à une page de questions, vous avez eu tant de bonnes réponses que c’est plus que la chance,
plan-good-marks = la barre et le coin étaient là tous les deux, et
plan-good-comfort = le confort est resté de 0 à { $most } sur 10, où 10 est mauvais.
plan-step-back = Prenez la page plus facile quand
plan-bad-marks = la barre ou le coin manque, ou tout reste double, ou
plan-bad-comfort = le confort atteint { $least } sur 10. Reposez-vous d’abord, en regardant au loin.
plan-bad-easier = Chaque page nomme sa voisine plus facile.
plan-stop = Règle d’arrêt
plan-ask = Demander
plan-ask-words = Montrez votre carnet à votre professionnel de la vue après quatre semaines, plus tôt si quelque chose vous inquiète. Son avis compte plus que ce plan.

# The log.

log-title = Votre carnet
log-description = Une ligne pour chacun des { $n } jours, à remplir.
log-lead = Une ligne par jour. Ces pages : édition { $edition }, à { $distance } de vos yeux, { $glasses }. Confort : 0 est bon, 10 est mauvais. Entourez ce que vous avez vu.
log-head-day = Jour
log-head-date = Date
log-head-page = Page
log-head-glasses = Lunettes à l’endroit
log-head-minutes = Min
log-head-single = Simple, double
log-head-marks = Barre, coin
log-head-answers = Bonnes rép.
log-head-before = Confort avant
log-head-after = Confort après
log-head-stayed = Resté double
log-head-note = Note
log-circle-single = s   d
log-circle-marks = b   c
log-circle-stayed = o   n
log-stays-double = Confort 4 ou plus : reposez-vous, puis prenez une page plus facile. Resté double après un repos : arrêtez, notez-le et consultez votre professionnel de la vue. Montrez-lui ce carnet.
log-screen-lead = Tenez un carnet sur papier, une ligne par jour. Notez :
log-screen-date = la date, la page et cette édition ; et que les lunettes étaient à l’endroit ;
log-screen-seen = les minutes ; si tout était simple ou double ; si la barre et le coin étaient là tous les deux ;
log-screen-answers = combien de réponses étaient bonnes, si la page en demande ;
log-screen-comfort = le confort avant et après, de 0 (bon) à 10 (mauvais) ;
log-screen-other = si quelque chose est resté double après un repos, et ce que vous avez remarqué d’autre.

# The answer key.

answers-title = Réponses
answers-turn = Réponses : retournez la page.
answers-description = Les réponses à ce que demandent les pages d’exercice.
answers-pass = { $right } sur { $of } ou plus : plus que la chance

# The words of all exercises once more.

words-title = Chaque exercice en mots
words-lead = Les mots de toutes les pages d’exercice une fois encore, en noir seulement : à lire sans les lunettes, ou à se faire lire.
words-lead-dark = Les mots de toutes les pages d’exercice une fois encore, sans couleur : à lire sans les lunettes, ou à se faire lire.
words-description = Ce qu’il faut faire à chaque page d’exercice, en mots seulement, à lire sans les lunettes.
words-page = { $title }, page { $page }
words-pages = { $title }, pages { $page } à { $last_page }
words-level = { $title }, niveau { $level }, page { $page }
words-level-pages = { $title }, niveau { $level }, pages { $page } à { $last_page }
words-levels = { $title }, niveaux { $level } à { $last_level }, pages { $page } à { $last_page }
