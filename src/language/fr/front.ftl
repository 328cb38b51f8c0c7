# Précautions, et comment utiliser le livre.

# Cautions

cautions-title = À lire d’abord, s’il vous plaît
cautions-description = Précautions : à qui demander, quand chercher de l’aide, quand arrêter.
cautions-ask = Demandez avant de commencer
cautions-ask-1 = Votre dernier examen des yeux doit dater de moins d’un an. Demandez : « Puis-je m’exercer sans danger à utiliser les deux yeux ensemble ? »
cautions-ask-2 = Demandez d’abord en cas d’œil dévié ou bien plus faible, de vision double, d’yeux qui tremblent, de nouveau prisme. De même après une opération des yeux ou une blessure à la tête.
cautions-ask-3 = Demandez d’abord en cas de maladie de la thyroïde, des nerfs ou des muscles, ou de crises d’épilepsie. De même en cas de migraine due à des motifs, de vertiges ou de nausées de grossesse.
cautions-ask-4 = Les grandes études ont laissé de côté bien des gens avec un œil dévié ou opéré. Personne ne peut dire ce que l’exercice fera pour vous.
cautions-ask-5 = Moins de 18 ans : seulement avec un adulte à côté de vous, cinq minutes au plus, à un niveau fixé par un professionnel.
cautions-stop = Règle d’arrêt
cautions-help = Demandez tout de suite une aide médicale
cautions-help-words = Vision double nouvelle ou soudaine, même si elle passe. Paupière qui tombe, pupilles inégales, perte de vision. Mal de tête nouveau ou très fort. Faiblesse du visage ou d’un bras, difficulté à parler. Douleur à la mâchoire ou au cuir chevelu. Un de ces signes après un coup à la tête. Appelez le numéro d’urgence ; cela ne fait jamais partie de l’exercice.
cautions-safe = Restez en sécurité
cautions-safe-1 = Ne vous exercez ni avant de conduire, faire du vélo, grimper, nager, cuisiner ou utiliser des machines, ni pendant. Attendez au moins 30 minutes, jusqu’à voir simple et net.
cautions-safe-2 = Pas après de l’alcool ou des calmants, pas avec de la fièvre, pas en cas de grande fatigue.
cautions-safe-3 = Au plus 10 à 15 minutes par jour. Regardez au loin une demi-minute après chaque page.
cautions-safe-4 = Si les couleurs ou les motifs vous gênent, ôtez les lunettes et arrêtez. C’est très bien ainsi.
cautions-about = À propos de ce livre
cautions-about-words = Ce livre est une simple information, sans aucune garantie. C’est un ensemble de pages d’exercice, ni un test ni un traitement. L’avis de votre professionnel de la vue diplômé et les règles de votre pays passent avant.
cautions-base = Toutes les images ont un décalage de base ({ $base }), réglé par { $by } pour une seule personne. N’utilisez, ne prêtez ni ne copiez ce livre pour personne d’autre. Il ne vaut qu’à { $distance }. Ne changez rien vous-même.

# How to use the book

how-title = Comment utiliser ces pages
how-description = Ce qu’il faut, comment marche une page, quand avancer et quand revenir en arrière.
how-needs = Ce qu’il vous faut
how-needs-glasses = Lunettes : { $glasses }. Portez vos propres lunettes dessous.
how-needs-paper = Une page imprimée à 100 %, à plat et droite.
how-needs-screen = Un écran qui montre la page à 100 %, à plat et droit.
how-needs-ruler = Une règle ou une ficelle de { $distance }.
how-needs-light = Une lumière régulière, sans reflet, et un crayon pour le carnet.
how-each-day = Chaque jour
how-day-check = Vérifiez lunettes, image fantôme et taille (trois pages).
how-day-start = Commencez par le premier exercice. Gardez { $distance } des yeux à la page.
how-day-practise = Exercez-vous deux ou trois minutes, regardez au loin, puis continuez.
how-day-end = Terminez chaque fois en regardant au loin.
how-works = Comment marche une page
how-works-pictures = Chaque œil reçoit sa propre image. Votre cerveau réunit les deux. Des formes décalées semblent être vers l’avant ou vers l’arrière. Un cadre suit une forme et aide vos yeux à rester dessus.
how-picture = Œil gauche : un anneau avec une barre plate dedans. Œil droit : le même anneau avec un coin dedans. Les deux yeux ensemble : un anneau avec barre et coin.
how-works-marks = La barre plate est seulement pour l’œil gauche, le coin seulement pour le droit. Si vous voyez les deux, les deux yeux participent.
how-works-grade = Le degré en haut d’une page, de 1 à 10, dit ce que la page demande. Ce n’est pas une note pour vous.
how-move-on = Avancez quand
how-move-on-1 = C’était facile trois jours différents et les deux repères étaient là.
how-move-on-2 = Le confort est resté bon : 0 à 2 sur 10, où 10 est mauvais.
how-step-back = Revenez en arrière quand
how-step-back-1 = Un repère manque, ou tout est double.
how-step-back-2 = Le confort atteint 4 sur 10. Reposez-vous, puis prenez une page plus facile.
