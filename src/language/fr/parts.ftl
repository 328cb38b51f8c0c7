# Les parties d’un livre, outre précautions, vérifications et exercices.

# Who the book is for

audience-title = À qui s’adresse ce livre
audience-lead = S’exercer avec les deux yeux convient à certains et pas à d’autres. Veuillez lire toute cette page.
audience-description = À qui s’adresse le livre, qui doit d’abord demander et à qui il ne s’adresse pas.
audience-one-heading = Pour une seule personne
audience-one = { $by } a réglé ce livre pour une seule personne. Ce n’est pas vous ? Ne l’utilisez pas.
audience-for = Il peut vous convenir si
audience-for-1 = vous êtes adulte, ou un adulte est assis à côté de vous ;
audience-for-2 = vous aimeriez vous exercer à utiliser les deux yeux ensemble ;
audience-for-3 = un professionnel de la vue a examiné vos yeux il y a moins d’un an ;
audience-for-4 = ce professionnel vous a dit que vous pouvez vous exercer sans danger.
audience-ask = Demandez d’abord si
audience-ask-1 = un œil dévie, ou un œil est bien plus faible que l’autre ;
audience-ask-2 = vous voyez parfois double, ou avez un nouveau prisme ;
audience-ask-3 = un point de la page des précautions vous concerne.
audience-not = Il n’est pas pour vous si
audience-not-1 = votre vision double est nouvelle ou soudaine : demandez tout de suite une aide médicale ;
audience-not-2 = un professionnel vous a dit de ne pas vous exercer avec les deux yeux ensemble ;
audience-not-3 = vous ne voyez que d’un œil ;
audience-not-4 = vous voulez savoir ce qu’ont vos yeux : ces pages ne peuvent pas le dire ;
audience-not-5 = il doit remplacer des lunettes, un cache, des médicaments ou une opération ;
audience-not-6 = vous avez moins de 18 ans et aucun adulte n’est présent.
audience-expect = À quoi s’attendre
audience-expect-1 = Personne ne peut promettre ce que l’exercice fera pour vous. Certains voient la profondeur tôt, d’autres tard, d’autres jamais.
audience-expect-2 = Allez à votre rythme. Vous pouvez arrêter à tout moment, et c’est très bien ainsi.

# What the reader needs

needs-title = Ce qu’il vous faut
needs-lead = Préparez tout avant de commencer. Ainsi rien ne vous dérangera.
needs-description = Lunettes, papier ou écran, lumière, table et temps.
needs-eyes = Pour les yeux
needs-glasses = Des lunettes à deux filtres : { $glasses }.
needs-own-glasses = Vos propres lunettes dessous, si vous lisez avec. Elles ont un prisme ? Gardez-le.
needs-clean = Un chiffon doux. Des filtres propres laissent passer la bonne lumière.
needs-paper = Pour les pages
needs-paper-1 = Une imprimante couleur. Imprimez à 100 %, en qualité maximale, sans économie d’encre.
needs-paper-2 = Du papier blanc mat, 100 à 120 g. Le papier brillant fait des reflets.
needs-paper-3 = Laissez sécher l’encre. Gardez les pages à plat, à l’abri du soleil.
needs-paper-4 = Pas de photocopies : elles changent les encres et souvent la taille.
needs-screen = Pour les pages
needs-screen-1 = Un écran d’au moins 32 cm de large. Un téléphone est trop petit.
needs-screen-2 = Affichez les pages à 100 %, en plein écran. La vérification de la taille dit comment.
needs-screen-3 = Coupez les couleurs de nuit et la luminosité automatique. Essuyez l’écran.
needs-light = Lumière
needs-light-1 = Une lumière régulière sur la page, sans reflet ni ombre.
needs-light-2 = La même lampe chaque fois : une autre peut donner une image fantôme.
needs-desk = À la table
needs-ruler = Une règle, et une ficelle de { $distance } pour garder la distance.
needs-pencil = Un crayon pour le carnet et les cases.
needs-flat = La page à plat, bien en face de votre visage.
needs-upright = Une chaise pour vous tenir bien droit. Une tête penchée écarte les deux images.
needs-time = Temps
needs-minutes = { $minutes ->
    [one] Au plus { $minutes } minute au calme par jour.
   *[other] Au plus { $minutes } minutes au calme par jour.
    }
needs-time-usual = Au plus 10 à 15 minutes au calme par jour.
needs-distance-rest = Une fenêtre ou une grande pièce, pour reposer vos yeux au loin.
needs-aloud = Si vous le souhaitez, quelqu’un qui vous lit les mots.

# The level map

map-title = Votre carte
map-lead = Chaque cercle est une page. Coloriez-le quand la page est devenue facile. Rien ne presse, et aucun cercle n’est obligatoire.
map-description = Chaque page d’exercice comme un cercle à colorier, par série.
map-grade = degré { $n }
map-go = Aller à la page { $n }
map-check = Pour commencer
map-check-about = Les deux yeux participent-ils ?
map-toward = Vers l’avant
map-toward-about = Les formes sont devant la page. Vos yeux tournent vers l’intérieur.
map-away = Vers l’arrière
map-away-about = Les formes sont derrière la page. Vos yeux tournent vers l’extérieur.
map-jump = Sauts
map-jump-about = Vous regardez d’une profondeur à l’autre.
map-smooth = Le long d’un chemin
map-smooth-about = Vous suivez une ligne dans la profondeur.
map-depth = Voir la profondeur
map-depth-about = Vous trouvez ce qui est plus près.

# Glossary: each word, and what it means

glossary-title = Les mots de ce livre
glossary-lead = Des sens simples, tels que ce livre emploie les mots.
glossary-description = Ce que veulent dire les termes, en phrases simples.
glossary-word = { $word } :
glossary-anaglyph = anaglyphe
    .means = Une image en deux couleurs, une pour chaque œil. Des lunettes à deux filtres les séparent.
glossary-arc-second = seconde d’arc (s d’arc)
    .means = Un angle très petit : un degré en a 3600. Les petites profondeurs s’expriment ainsi.
glossary-away = arrière, vers l’arrière
    .means = Une chose semble être derrière la page. Vos yeux tournent un peu vers l’extérieur.
glossary-base = décalage de base
    .means = Toute l’image est décalée. Seul un professionnel le règle, pour une personne.
glossary-base-in-out = base externe, base interne
    .means = Des noms de prismes. La base externe tourne les yeux vers l’intérieur, comme les images vers l’avant. La base interne, vers l’extérieur.
glossary-comfort = confort
    .means = Comment vous vous sentez, de 0 à 10 : 0 est bon, 10 est mauvais.
glossary-convergence = convergence
    .means = Les deux yeux tournent vers l’intérieur, vers une chose proche.
glossary-demand = demande
    .means = De combien une page demande à vos yeux de tourner, à partir de la page elle-même.
glossary-divergence = divergence
    .means = Les deux yeux tournent vers l’extérieur, vers une chose plus lointaine.
glossary-double = double
    .means = Vous voyez une chose deux fois.
glossary-eye-turn = déviation d’un œil
    .means = Un œil regarde à côté de ce que regarde l’autre.
glossary-fusion = fusion, fusionner
    .means = Votre cerveau réunit les images des deux yeux en une seule.
glossary-ghost = image fantôme
    .means = Une trace de l’image d’un œil que l’autre voit aussi.
glossary-grade = degré
    .means = Ce que demande une page, de 1 à 10. Ce n’est pas une note pour vous.
glossary-jump = saut
    .means = Vous regardez d’un coup d’une profondeur à une autre.
glossary-level = niveau
    .means = Un pas d’un exercice. Les niveaux élevés demandent plus.
glossary-lock-frame = cadre d’appui
    .means = Un cadre qui suit une forme. Il aide vos yeux à rester dessus.
glossary-parallax = parallaxe
    .means = L’écart sur la page entre les deux images d’une forme.
glossary-prism-dioptre = dioptrie prismatique (dp)
    .means = Une mesure de la rotation des yeux. 1 dp est 1 cm à 1 m de distance.
glossary-random-dots = points aléatoires
    .means = Des points semés au hasard. Seuls les deux yeux ensemble y trouvent la forme.
glossary-reserve = réserve
    .means = De combien vos yeux peuvent tourner avant de voir flou ou double. Un professionnel la mesure.
glossary-single = simple
    .means = Vous voyez une chose une fois, les deux yeux ouverts.
glossary-stereopsis = stéréoscopie
    .means = Voir la profondeur parce que vos deux yeux regardent de deux endroits.
glossary-stop-rule = règle d’arrêt
    .means = Quand arrêter tout de suite. Elle figure sur chaque page d’exercice.
glossary-strand = série
    .means = Des pages d’une même sorte, du facile au difficile.
glossary-suppression = suppression
    .means = Votre cerveau écarte l’image d’un œil, souvent pour ne pas voir double.
glossary-toward = avant, vers l’avant
    .means = Une chose semble être devant la page. Vos yeux tournent un peu vers l’intérieur.
glossary-vergence = vergence
    .means = Les deux yeux tournent en sens contraire : vers l’intérieur ou vers l’extérieur.
glossary-watch-marks = repères de contrôle
    .means = La barre plate est pour l’œil gauche, le coin pour le droit. Si vous voyez les deux, les deux yeux participent.

# Sources

sources-title = Sources
sources-lead = Les nombres et les règles de ce livre reposent sur ces travaux. Certains n’ont été lus qu’en résumé. Ils appuient les nombres ; aucun n’a étudié ce livre.
sources-description = Les travaux publiés sur lesquels reposent les nombres et les règles du livre.
sources-depth = Profondeur et distance
sources-limits = Jusqu’où les yeux tournent et fusionnent
sources-grades = Ce qui rend une page plus difficile
sources-dots = Points aléatoires
sources-ghost = Couleurs et images fantômes
sources-safety = Rayures et motifs
sources-page = Taille et impression
sources-none = Sans source
sources-none-words = Les minutes par jour, les pauses, les pas entre niveaux et le moment d’avancer suivent l’usage. Aucun travail publié ne les fixe.

# Licence and credits

licence-title = Licence et crédits
licence-description = Ce que vous pouvez faire du livre, et de qui vient le travail qu’il contient.
licence-book = Ce livre
licence-author = { $title } est de { $author }.
licence-credits = Crédits
licence-typeface = Police de caractères
licence-typeface-words = Les mots sont composés en Atkinson Hyperlegible Next, sous la SIL Open Font License 1.1.
licence-contact = Erreurs et questions
licence-contact-words = Veuillez écrire à { $contact }.

# Versions and errors

versions-title = Versions et erreurs
versions-lead = Vous avez la version { $version } du { $date }. Ci-dessous, ce qui a changé, le plus récent d’abord.
versions-description = Les versions du livre avec ce qui a changé dans chacune.
versions-release = Version { $version } · { $date }
versions-error = Une erreur ?
versions-error-words = Notez la version et le numéro de la page. Une page vous paraît fausse ? Laissez-la de côté.
versions-contact = Veuillez écrire à { $contact }.
