# Seiten mit Zufallspunkten: was sie teilen, und was jede Art für sich hat.

dots-frame = Schauen Sie ruhig auf die Mitte. Prüfen Sie, ob der Rahmen rundum ganz ist.
dots-rest = Schauen Sie dann fünf Sekunden in die Ferne.
dots-whole = Der Rahmen ist rundum ganz: Beide Augen sind dabei.
dots-one-eye = jeden zweiten Strich
dots-one-eye-then = Ein Auge setzt aus. Blinzeln Sie, schauen Sie in die Ferne, versuchen Sie es noch einmal.
dots-flat = flache Punkte
dots-flat-then = Schauen Sie auf den Rahmen und warten Sie. Noch flach? Nehmen Sie eine leichtere Seite.
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
        [one] Schreiben Sie auf, wo seine Lücke ist: oben, rechts, unten oder links.
       *[other] Schreiben Sie zu jeder Nummer: oben, rechts, unten oder links.
    }
gap-see = { $n ->
        [one] Ein Ring in einer anderen Tiefe als die Punkte um ihn. Er hat eine Lücke.
       *[other] { $n } Ringe in einer anderen Tiefe als die Punkte um sie. Jeder hat eine Lücke.
    }

planes-goal = Spüren Sie, wie jede Fläche aus Punkten in ihrer eigenen Tiefe steht.
planes-wait = Warten Sie höchstens eine halbe Minute, bis die Flächen auseinandertreten.
planes-order = Schreiben Sie die Nummern der Reihe nach auf, von der nächsten Fläche bis zur fernsten.
planes-step-row = Gehen Sie mit den Augen von Fläche zu Fläche, hin und zurück, fünfmal.
planes-step-nest = Gehen Sie mit den Augen von außen nach innen und zurück, fünfmal.
planes-see-row = { $n } ebene Flächen aus Punkten, nebeneinander, jede in einer eigenen Tiefe.
planes-see-nest = { $n } ebene Flächen aus Punkten, eine in der anderen, jede in einer eigenen Tiefe.

board-goal = Spüren Sie, wie ein Brett aus Punkten kippt. Sagen Sie, welche Kante nah ist.
board-wait = Warten Sie höchstens eine halbe Minute, bis die Punkte auf einem schrägen Brett liegen.
board-write = Schreiben Sie auf, welche Kante am nächsten ist: oben, rechts, unten oder links.
board-see = Ein ebenes, schräges Brett aus Punkten. Eine Kante kommt auf Sie zu, die Kante gegenüber weicht zurück.

hills-goal = Zählen Sie die langen Hügel, die nur zwei Augen zusammen sehen.
hills-wait = Warten Sie höchstens eine halbe Minute, bis die Hügel hervortreten.
hills-count = Schauen Sie langsam von links nach rechts. Zählen Sie die Hügel, 1 bis { $most }, und schreiben Sie die Zahl auf.
hills-see = Lange, sanfte Hügel, die von oben nach unten laufen und auf Sie zukommen.
hollows-goal = Zählen Sie die langen Mulden, die nur zwei Augen zusammen sehen.
hollows-wait = Warten Sie höchstens eine halbe Minute, bis die Mulden hervortreten.
hollows-count = Schauen Sie langsam von links nach rechts. Zählen Sie die Mulden, 1 bis { $most }, und schreiben Sie die Zahl auf.
hollows-see = Lange, sanfte Mulden, die von oben nach unten laufen und von Ihnen weg sinken.

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

relief-goal = Finden Sie die hohen und die tiefen Stellen, die nur zwei Augen zusammen sehen.
relief-wait = Warten Sie höchstens eine halbe Minute, bis die Punkte steigen und sinken.
relief-wander = Lassen Sie die Augen von der nächsten Stelle zur fernsten wandern und zurück, fünfmal.
relief-see = Eine Landschaft aus Punkten mit nahen und fernen Stellen.
