# Mots communs à plusieurs sortes d’exercices.

# Ce que disent les repères de contrôle : la barre de l’œil gauche et le coin de l’œil droit. Une page peut en manquer.
kinds-check-both = { $marks ->
    [yes] Vérifiez que la barre et le coin sont là tous les deux.
   *[no] Vérifiez que toutes les parties sont là.
    }
kinds-check-there = { $marks ->
    [yes] Vérifiez que la barre et le coin sont là.
   *[no] Vérifiez que toutes les parties sont là.
    }
kinds-see-marks = { $see } La barre et le coin sont là tous les deux.

# Durées et répétitions.
kinds-seconds = { $count ->
    [one] { $n } seconde
   *[other] { $n } secondes
    }
kinds-times = { $n ->
    [1] une fois
    [2] deux fois
   *[other] { $n } fois
    }
kinds-watch-ten = Regardez dix secondes, puis regardez au loin. Faites-le trois fois. Une minute suffit.

# Ce que dit d’abord une page qu’un professionnel prescrit.
kinds-as-told = À faire seulement comme votre professionnel l’a dit.

# « Si vous ne voyez que … » : ce que l’on voit et ce qu’il faut faire.
kinds-only-bar = la barre
kinds-only-wedge = le coin
kinds-only-flat = une image plate
kinds-only-doubled = tout en double
kinds-right-out-try = Votre œil droit a décroché. Clignez, regardez au loin, réessayez.
kinds-left-out-try = Votre œil gauche a décroché. Clignez, regardez au loin, réessayez.
kinds-right-out-look = Votre œil droit a décroché. Clignez, regardez au loin, puis ici.
kinds-left-out-look = Votre œil gauche a décroché. Clignez, regardez au loin, puis ici.
kinds-one-out = Un œil a décroché. Cachez un œil, puis l’autre, et réessayez.
kinds-easier = Repos, puis page plus facile.
