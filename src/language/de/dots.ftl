# Seiten mit Zufallspunkten: was sie teilen, und was jede Art für sich hat.

dots-frame = Schauen Sie entspannt auf die Mitte. Prüfen Sie, ob der Rahmen rundum ganz ist.
dots-rest = Schauen Sie dann fünf Sekunden in die Ferne.
dots-whole = Der Rahmen ist rundum ganz: Beide Augen machen mit.
dots-one-eye = jeden zweiten Strich
dots-one-eye-then = Ein Auge setzt aus. Blinzeln, weit weg schauen, noch einmal.
dots-flat = flache Punkte
dots-flat-then = Auf den Rahmen schauen, warten. Noch flach? Leichtere Seite nehmen.
dots-double = zwei Rahmen

way-up = oben
way-right = rechts
way-down = unten
way-left = links

hidden-goal = { $n ->
        [one] Finden Sie die Form, die nur zwei Augen zusammen sehen.
       *[other] Finden Sie die Formen, die nur zwei Augen zusammen sehen.
    }
hidden-wait = { $n ->
        [one] Warten Sie höchstens eine halbe Minute, bis eine Form hervortritt.
       *[other] Warten Sie höchstens eine halbe Minute, bis Formen hervortreten.
    }
hidden-follow = { $n ->
        [one] Fahren Sie mit den Augen am Rand der Form entlang.
       *[other] Fahren Sie mit den Augen am Rand jeder Form entlang.
    }
hidden-shapes = { $n } Formen
hidden-see-front = { $shapes } vor den anderen Punkten.
hidden-see-behind = { $shapes } hinter den anderen Punkten, wie durch ein Loch gesehen.
hidden-see-either = { $shapes } vor den anderen Punkten oder dahinter.
hidden-see-mixed = { $shapes }, teils vor den anderen Punkten, teils dahinter.

gap-goal = { $n ->
        [one] Sehen Sie, wo der versteckte Ring offen ist.
       *[other] Sehen Sie, wo jeder versteckte Ring offen ist.
    }
gap-wait = { $n ->
        [one] Warten Sie höchstens eine halbe Minute, bis ein Ring hervortritt.
       *[other] Warten Sie höchstens eine halbe Minute, bis Ringe hervortreten.
    }
gap-write = { $n ->
        [one] Notieren Sie, wo seine Lücke ist: oben, rechts, unten oder links.
       *[other] Notieren Sie zu jeder Nummer: oben, rechts, unten oder links.
    }
gap-see = { $n ->
        [one] Ein Ring in einer anderen Tiefe als die Punkte um ihn. Er hat eine Lücke.
       *[other] { $n } Ringe in einer anderen Tiefe als die Punkte um sie. Jeder hat eine Lücke.
    }

planes-goal = Spüren Sie, wie jede Fläche aus Punkten in eigener Tiefe steht.
planes-wait = Warten Sie höchstens eine halbe Minute, bis die Flächen auseinandertreten.
planes-order = Notieren Sie die Nummern der Reihe nach, von ganz vorn bis ganz hinten.
planes-step-row = Gehen Sie mit den Augen von Fläche zu Fläche, hin und zurück, fünfmal.
planes-step-nest = Gehen Sie mit den Augen von außen nach innen und zurück, fünfmal.
planes-see-row = { $n } ebene Flächen aus Punkten, nebeneinander, jede in einer eigenen Tiefe.
planes-see-nest = { $n } ebene Flächen aus Punkten, eine in der anderen, jede in einer eigenen Tiefe.

board-goal = Spüren Sie, wie sich ein Brett aus Punkten neigt. Welche Kante ist nah?
board-wait = Warten Sie höchstens eine halbe Minute, bis die Punkte ein schräges Brett bilden.
board-write = Welche Kante ist Ihnen am nächsten? Notieren Sie: oben, rechts, unten oder links.
board-see = Ein ebenes, schräges Brett aus Punkten. Eine Kante kommt auf Sie zu, die gegenüber weicht zurück.

hills-goal = Zählen Sie die langen Hügel, die nur zwei Augen zusammen sehen.
hills-wait = Warten Sie höchstens eine halbe Minute, bis die Hügel hervortreten.
hills-count = Schauen Sie langsam von links nach rechts. Zählen Sie die Hügel, 1 bis { $most }, und notieren Sie die Zahl.
hills-see = Lange, sanfte Hügel von oben nach unten, die sich zu Ihnen heben.
hollows-goal = Zählen Sie die langen Mulden, die nur zwei Augen zusammen sehen.
hollows-wait = Warten Sie höchstens eine halbe Minute, bis die Mulden hervortreten.
hollows-count = Schauen Sie langsam von links nach rechts. Zählen Sie die Mulden, 1 bis { $most }, und notieren Sie die Zahl.
hollows-see = Lange, sanfte Mulden von oben nach unten, die von Ihnen wegsinken.

waves-goal = Spüren Sie, wie ein Feld aus Punkten steigt und fällt.
waves-wait = Warten Sie höchstens eine halbe Minute, bis die Punkte steigen und fallen.
waves-follow-down = Folgen Sie den Wellen mit den Augen von oben nach unten und zurück, fünfmal.
waves-follow-right = Folgen Sie den Wellen mit den Augen von links nach rechts und zurück, fünfmal.
waves-see-down = { $n ->
        [one] Eine sanfte Welle von oben nach unten, wie auf ruhigem Wasser.
       *[other] { $n } sanfte Wellen von oben nach unten, wie auf ruhigem Wasser.
    }
waves-see-right = { $n ->
        [one] Eine sanfte Welle von links nach rechts, wie auf ruhigem Wasser.
       *[other] { $n } sanfte Wellen von links nach rechts, wie auf ruhigem Wasser.
    }

relief-goal = Finden Sie die hohen und tiefen Stellen, die nur zwei Augen zusammen sehen.
relief-wait = Warten Sie höchstens eine halbe Minute, bis die Punkte steigen und sinken.
relief-wander = Wandern Sie mit den Augen von ganz vorn nach ganz hinten und zurück, fünfmal.
relief-see = Eine Landschaft aus Punkten, mit Nahem und Fernem.
