# Pages que fixe un professionnel.

contrast-goal = Voyez les deux marques d’une rangée, dont l’une s’amincit de rangée en rangée.
contrast-begin-ring-thins = Commencez par la rangée 1. Regardez la croix, et voyez que l’anneau est là aussi.
contrast-begin-cross-thins = Commencez par la rangée 1. Regardez l’anneau, et voyez que la croix est là aussi.
contrast-down = Descendez rangée par rangée, cinq secondes chacune.
contrast-note = Notez la dernière rangée où les deux marques sont là. Arrêtez-vous là.
contrast-rest = Regardez au loin dix secondes. Deux tours suffisent.
contrast-see-ring-thins = Un anneau et une croix dans chaque rangée, en même temps. L’anneau devient plus fin, mais il reste.
contrast-see-cross-thins = Un anneau et une croix dans chaque rangée, en même temps. La croix devient plus fine, mais elle reste.
contrast-rings = les anneaux
contrast-rings-then = Votre œil droit a décroché. Remontez d’une rangée, regardez encore.
contrast-crosses = les croix
contrast-crosses-then = Votre œil gauche a décroché. Remontez d’une rangée, regardez encore.

gated-double-then = Arrêtez pour aujourd’hui. Dites-le à votre professionnel.

shared-goal = Trouvez un chemin dont chaque œil ne connaît qu’une partie.
shared-pencil = Prenez un crayon.
shared-look = Voyez que murs, anneau et étoile sont tous là.
shared-draw = { $hazards ->
        [0] Tracez lentement de l’anneau à l’étoile, sans traverser de mur.
       *[other] Tracez lentement de l’anneau à l’étoile, sans traverser de mur ni toucher de croix.
    }
shared-fade = Une partie s’efface ? Arrêtez. Clignez, regardez au loin, continuez.
shared-rest = Après deux minutes, regardez au loin. Une fois suffit.
shared-see = { $hazards ->
        [0] Un petit labyrinthe, un anneau de départ, une étoile à atteindre.
       *[other] Un petit labyrinthe, un anneau de départ, une étoile à atteindre, et des croix.
    }
shared-walls = des murs sans marques
shared-marks = des marques sans murs
shared-left-out = Votre œil gauche a décroché. Reposez-vous d’abord.
shared-right-out = Votre œil droit a décroché. Reposez-vous d’abord.
