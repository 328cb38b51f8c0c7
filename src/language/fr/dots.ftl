# Pages de points aléatoires : ce qu’elles partagent, et ce que chaque sorte a de propre.

dots-frame = Regardez le milieu sans forcer. Vérifiez que le cadre est entier tout autour.
dots-rest = Regardez ensuite au loin cinq secondes.
dots-whole = Le cadre est entier tout autour : les deux yeux participent.
dots-one-eye = un tiret sur deux
dots-one-eye-then = Un œil a décroché. Clignez, regardez au loin, réessayez.
dots-flat = des points à plat
dots-flat-then = Regardez le cadre et attendez. Encore à plat ? Page plus facile.
dots-double = deux cadres

way-up = haut
way-right = droite
way-down = bas
way-left = gauche

hidden-goal = { $n ->
        [one] Trouvez la forme que seuls vos deux yeux ensemble voient.
       *[other] Trouvez les formes que seuls vos deux yeux ensemble voient.
    }
hidden-wait = { $n ->
        [one] Attendez jusqu’à une demi-minute qu’une forme ressorte.
       *[other] Attendez jusqu’à une demi-minute que des formes ressortent.
    }
hidden-follow = { $n ->
        [one] Suivez des yeux le bord de la forme.
       *[other] Suivez des yeux le bord de chaque forme.
    }
hidden-shapes = { $n } formes
hidden-see-front = { $shapes } devant les autres points.
hidden-see-behind = { $shapes } derrière les autres points, comme à travers un trou.
hidden-see-either = { $shapes } devant ou derrière les autres points.
hidden-see-mixed = { $shapes }, devant ou derrière les autres points selon la forme.

gap-goal = { $n ->
        [one] Voyez où l’anneau caché est ouvert.
       *[other] Voyez où chaque anneau caché est ouvert.
    }
gap-wait = { $n ->
        [one] Attendez jusqu’à une demi-minute qu’un anneau ressorte.
       *[other] Attendez jusqu’à une demi-minute que des anneaux ressortent.
    }
gap-write = { $n ->
        [one] Notez où il est ouvert : haut, droite, bas ou gauche.
       *[other] Pour chaque numéro, notez haut, droite, bas ou gauche.
    }
gap-see = { $n ->
        [one] Un anneau à une autre profondeur que les points autour. Il est ouvert d’un côté.
       *[other] { $n } anneaux à une autre profondeur que les points autour. Chacun est ouvert d’un côté.
    }

planes-goal = Sentez chaque plan de points à sa propre profondeur.
planes-wait = Attendez jusqu’à une demi-minute que les plans se séparent.
planes-order = Notez les numéros dans l’ordre, du plan le plus proche au plus lointain.
planes-step-row = Allez des yeux de plan en plan, aller et retour, cinq fois.
planes-step-nest = Allez des yeux du dehors au dedans et revenez, cinq fois.
planes-see-row = { $n } plans de points, plats, côte à côte, chacun à sa propre profondeur.
planes-see-nest = { $n } plans de points, plats, l’un dans l’autre, chacun à sa propre profondeur.

board-goal = Sentez comment penche une planche de points, et dites quel bord est près.
board-wait = Attendez jusqu’à une demi-minute que les points forment une planche penchée.
board-write = Notez quel bord est le plus près : haut, droite, bas ou gauche.
board-see = Une planche plate de points, penchée. Un bord vient vers vous, le bord d’en face s’éloigne.

hills-goal = Comptez les longues buttes que seuls vos deux yeux ensemble voient.
hills-wait = Attendez jusqu’à une demi-minute que les buttes ressortent.
hills-count = Regardez lentement de gauche à droite. Comptez les buttes, de 1 à { $most }, et notez le nombre.
hills-see = De longues buttes douces qui vont de haut en bas et montent vers vous.
hollows-goal = Comptez les longs creux que seuls vos deux yeux ensemble voient.
hollows-wait = Attendez jusqu’à une demi-minute que les creux ressortent.
hollows-count = Regardez lentement de gauche à droite. Comptez les creux, de 1 à { $most }, et notez le nombre.
hollows-see = De longs creux doux qui vont de haut en bas et s’enfoncent loin de vous.

waves-goal = Sentez un champ de points monter et descendre.
waves-wait = Attendez jusqu’à une demi-minute que les points ondulent.
waves-follow-down = Suivez les vagues des yeux de haut en bas et revenez, cinq fois.
waves-follow-right = Suivez les vagues des yeux de gauche à droite et revenez, cinq fois.
waves-see-down = { $n ->
        [one] Une vague douce de haut en bas, comme sur une eau calme.
       *[other] { $n } vagues douces de haut en bas, comme sur une eau calme.
    }
waves-see-right = { $n ->
        [one] Une vague douce de gauche à droite, comme sur une eau calme.
       *[other] { $n } vagues douces de gauche à droite, comme sur une eau calme.
    }

relief-goal = Trouvez les endroits hauts et bas que seuls vos deux yeux ensemble voient.
relief-wait = Attendez jusqu’à une demi-minute que le relief ressorte.
relief-wander = Laissez aller vos yeux de l’endroit le plus proche au plus lointain et revenez, cinq fois.
relief-see = Un paysage de points, proche ici et lointain là.
