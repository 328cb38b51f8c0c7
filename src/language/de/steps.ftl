# Arten, in denen die Augen von Tiefe zu Tiefe gehen.

# Wege mit Stationen.
steps-number-one = Schauen Sie auf Nummer 1, bis sie einfach und klar ist.
steps-see-stop = Die Station, auf die Sie schauen, ist einfach. Andere können doppelt sein: Das ist in Ordnung.

tour-goal = Gehen Sie mit den Augen rundum. Sehen Sie jede Station einfach, so oft es in Ruhe geht.
tour-setup = Legen Sie eine Uhr bereit.
tour-check = { $marks ->
    [yes] Prüfen Sie, ob Balken und Keil beide da sind. Gehen Sie dann zur nächsten Nummer.
   *[no] Prüfen Sie, ob alle Teile da sind. Gehen Sie dann zur nächsten Nummer.
    }
tour-again = Beginnen Sie nach der letzten Nummer bei 1.
tour-count = Zählen Sie, wie viele Stationen in { $time } einfach werden. Notieren Sie die Zahl im Tagebuch.
tour-far = Schauen Sie in die Ferne.

# Stationen haben Nummern oder Namen, die der Autor gab, oder keines von beiden.
jump-goal = Springen Sie von Tiefe zu Tiefe und sehen Sie jede Station einfach.
jump-start-name = Schauen Sie auf „{ $name }“, bis Sie einfach und klar sehen.
jump-start-shape = Schauen Sie auf die erste Form, bis sie einfach und klar ist.
jump-next-number = Springen Sie zur nächsten Nummer. Warten Sie, bis sie einfach ist.
jump-next-name = Springen Sie zu „{ $name }“. Warten Sie, bis Sie einfach sehen.
jump-next-shape = Springen Sie zur nächsten Form. Warten Sie, bis sie einfach ist.
jump-check = { $marks ->
    [yes] Bleiben Sie an jeder Station { $time } und prüfen Sie, ob Balken und Keil da sind.
   *[no] Bleiben Sie an jeder Station { $time } und prüfen Sie, ob alle Teile da sind.
    }
jump-round = Machen Sie die Runde { $times }, schauen Sie dann in die Ferne.

pairs-goal = Ziehen Sie die Augen nach innen, lassen Sie los, immer wieder.
pairs-start = { $form ->
    [column] Schauen Sie ganz oben hin, bis Sie nur { $shape-a-acc } sehen.
   *[row] Schauen Sie ganz links hin, bis Sie nur { $shape-a-acc } sehen.
    }
pairs-go = { $form ->
    [column] Gehen Sie Schritt für Schritt nach unten. Weiter erst, wenn Sie einfach sehen.
   *[row] Gehen Sie Schritt für Schritt nach rechts. Weiter erst, wenn Sie einfach sehen.
    }
pairs-check = { $marks ->
    [yes] Bleiben Sie jedes Mal { $time }. Prüfen Sie, ob Balken und Keil da sind.
   *[no] Bleiben Sie jedes Mal { $time }. Prüfen Sie, ob alle Teile da sind.
    }
pairs-round = Machen Sie das Ganze { $times }. Schauen Sie dann in die Ferne.
pairs-see = Das eine steht vor der Seite, das nächste dahinter, und so weiter.

rungs-goal = Steigen Sie von Sprosse 1 bis { $last }, in kleinen Schritten.
rungs-look = Schauen Sie auf Sprosse 1, bis Sie nur { $shape-a-acc } sehen.
rungs-stay = Bleiben Sie { $time }, gehen Sie dann zur nächsten Nummer.
rungs-stop = Halten Sie an der ersten Sprosse an, die doppelt bleibt. Gehen Sie eine zurück.
rungs-write = Notieren Sie Ihre letzte einfache Sprosse. Schauen Sie in die Ferne.
rungs-see = Nur { $shape-a } auf der Sprosse, auf die Sie schauen. Jede Sprosse verlangt etwas mehr.

hoop-goal = Sehen Sie, wie sich ein großer Reifen von der Seite löst.
hoop-rest = Lassen Sie die Augen auf dem ganzen dicken Reifen ruhen, nicht auf einem Punkt.
hoop-thin = Schauen Sie auf den dünnen Reifen auf der Seite, dann wieder auf den dicken.
hoop-hold = Schauen Sie { $time } hin. Welcher ist Ihnen näher? Schauen Sie dann in die Ferne.
hoop-see = { $side ->
    [toward] Der dicke Reifen schwebt vor dem dünnen, näher bei Ihnen.
    [away] Der dicke Reifen hängt hinter dem dünnen, tiefer als die Seite.
   *[page] Beide Reifen liegen flach auf der Seite.
    }

tiles-goal = Spüren Sie jeden Schritt von { $shape-gender ->
    [f] einer { $shape } zur nächsten darin.
   *[other] einem { $shape } zum nächsten darin.
    }
tiles-largest = { $shape-gender ->
    [m] Schauen Sie auf den größten { $shape }. Er liegt auf der Seite.
    [f] Schauen Sie auf die größte { $shape }. Sie liegt auf der Seite.
   *[n] Schauen Sie auf das größte { $shape }. Es liegt auf der Seite.
    }
tiles-in = Gehen Sie nach innen, { $shape } für { $shape }. Warten Sie, bis Sie einfach sehen.
tiles-say = Sagen Sie: Ist es eine Grube oder ein Turm? Lesen Sie dann „{ page-see }“.
tiles-check = { $marks ->
    [yes] Prüfen Sie in der Mitte, ob Balken und Keil beide da sind.
   *[no] Prüfen Sie in der Mitte, ob alle Teile da sind.
    }
tiles-out = Kommen Sie Schritt für Schritt zurück. Machen Sie das fünfmal, schauen Sie dann in die Ferne.
tiles-see = { $side ->
    [toward] Ein Turm aus gleichen Stufen. Die kleinste ist Ihnen am nächsten.
   *[away] Eine Grube aus gleichen Stufen. Die kleinste liegt am tiefsten.
    }

point-goal = Zeigen Sie auf die Stelle, an der { $shape-the } zu stehen scheint.
point-setup-toward = Legen Sie einen Bleistift bereit.
point-setup-away = Stellen Sie die Seite am Rand eines Tisches auf, sodass Ihre Hand hinter sie greifen kann.
point-look = Schauen Sie auf { $shape-the-acc }, bis { $shape-gender ->
    [m] er
    [f] sie
   *[n] es
    } einfach ist. Schauen Sie noch nicht auf das Lineal.
point-pencil-toward = Führen Sie einen Bleistift vom Rand her dorthin, wo { $shape-the } zu schweben scheint.
point-pencil-away = Halten Sie einen Bleistift neben die Seite, so tief, wie { $shape-the } zu liegen scheint.
point-ruler = Halten Sie den Bleistift still. Wie weit ist er von der Seite weg? Schauen Sie nun auf das Lineal.
point-again = Schauen Sie in die Ferne. Machen Sie das { $times }.
point-see-toward = { $shape-gender ->
    [m] Nur { $shape-a }, der vor der Seite schwebt. Der Bleistift trifft ihn in der Luft.
    [f] Nur { $shape-a }, die vor der Seite schwebt. Der Bleistift trifft sie in der Luft.
   *[n] Nur { $shape-a }, das vor der Seite schwebt. Der Bleistift trifft es in der Luft.
    }
point-see-away = Nur { $shape-a }, { $shape-gender ->
    [m] der
    [f] die
   *[n] das
    } hinter der Seite liegt. Der Bleistift ist genauso tief.

# Abstände haben ihre Einheit dabei.
walk-goal = Halten Sie { $shape-a-acc } einfach, während Sie von der Seite weggehen.
walk-setup = Hängen Sie die Seite in Augenhöhe auf, mit Platz nach hinten.
walk-start = Beginnen Sie { $distance } vor der Seite. Warten Sie, bis Sie nur { $shape-a-acc } sehen.
walk-check = { $marks ->
    [yes] Bleiben Sie { $time }. Prüfen Sie, ob Balken und Keil beide da sind.
   *[no] Bleiben Sie { $time }. Prüfen Sie, ob alle Teile da sind.
    }
walk-back = Gehen Sie zurück zum nächsten Abstand in der Tabelle, bis { $distance }.
walk-return = Kommen Sie ebenso zurück. Notieren Sie, wo ein Teil verschwand.
walk-see = Nur { $shape-a }, den ganzen Weg einfach. Das Bild scheint dabei vielleicht zu wandern.

posts-goal = Gehen Sie die Pfosten entlang. Spüren Sie, wie weit jeder weg ist.
posts-base = Schauen Sie auf die Grundlinie: Sie liegt auf der Seite.
posts-go = Gehen Sie nach rechts von Pfosten zu Pfosten. Sehen Sie jeden einfach.
posts-check = { $marks ->
    [yes] Prüfen Sie an jedem Pfosten, ob Balken und Keil da sind.
   *[no] Prüfen Sie an jedem Pfosten, ob alle Teile da sind.
    }
posts-say = Sagen Sie, welcher Pfosten Ihnen am nächsten ist und welcher am fernsten.
posts-back = Gehen Sie zurück. Schauen Sie dann in die Ferne.
posts-see-through = Eine Reihe von Pfosten, die wie eine Treppe durch die Seite läuft.
posts-see-both-sides = Einige Pfosten stehen vor der Seite, einige dahinter.
posts-see-stair-away = Eine Treppe aus Pfosten. Jeder steht weiter weg als der vorige.
posts-see-stair-toward = Eine Treppe aus Pfosten. Jeder steht näher bei Ihnen als der vorige.
posts-see-away = Jeder Pfosten steht in seiner eigenen Tiefe, auf der Seite oder dahinter.
posts-see-toward = Jeder Pfosten steht in seiner eigenen Tiefe, auf der Seite oder davor.

nest-box = Kasten
    .the = der Kasten
    .the-acc = den Kasten
    .gender = m
nest-frames = Rahmenreihe
    .the = die Rahmenreihe
    .the-acc = die Rahmenreihe
    .gender = f
nest-corridor = Gang
    .the = der Gang
    .the-acc = den Gang
    .gender = m
nest-goal = { $count ->
    [one] Spüren Sie, wie tief { $room-the } ist und wo die Form darin steht.
   *[other] Spüren Sie, wie tief { $room-the } ist und wo jede Form darin steht.
    }
nest-window = Schauen Sie in { $room-the-acc } wie durch ein Fenster.
nest-front = Lassen Sie die Augen von ganz vorn nach ganz hinten wandern.
nest-check = { $count ->
    [one] Schauen Sie auf die Form.
   *[other] Schauen Sie nacheinander auf jede Form.
    } { $marks ->
    [yes] Prüfen Sie, ob Balken und Keil da sind.
   *[no] Prüfen Sie, ob alle Teile da sind.
    }
nest-back = Kommen Sie nach vorn. Machen Sie das fünfmal, schauen Sie dann in die Ferne.
nest-see = { $room-gender ->
    [f] Eine tiefe
   *[m] Ein tiefer
    } { $room }. Was kleiner ist, steht weiter weg.

solids-goal = Sehen Sie Dinge, als stünden sie in einem echten Raum.
solids-window = Schauen Sie durch die Seite wie durch ein Fenster.
solids-nearest = Schauen Sie auf das, was am nächsten ist, bis es einfach ist.
solids-check = { $count ->
    [one] Schauen Sie es ruhig an.
   *[other] Schauen Sie nacheinander auf jedes Ding.
    } { $marks ->
    [yes] Prüfen Sie, ob Balken und Keil da sind.
   *[no] Prüfen Sie, ob alle Teile da sind.
    }
solids-edges = Folgen Sie den Kanten in die Tiefe und wieder zurück.
solids-again = Machen Sie das fünfmal, schauen Sie dann in die Ferne.
solids-see = Räumliche Dinge, vorn nah und hinten fern.

trail-goal = Folgen Sie mit den Augen einer Spur, die näher kommt und sich entfernt.
trail-start-line = Schauen Sie auf ein Ende der Spur, bis es einfach ist.
trail-start-bead = Schauen Sie auf die Perle mit den Zeichen, bis sie einfach ist.
trail-along-line = Gleiten Sie mit den Augen langsam die Spur entlang. Spüren Sie, wie sie ziehen und loslassen.
trail-along-beads = Gehen Sie mit den Augen langsam von Perle zu Perle. Spüren Sie, wie sie ziehen und loslassen.
trail-check = { $marks ->
    [yes] Prüfen Sie an jedem Ende, ob Balken und Keil da sind.
   *[no] Prüfen Sie an jedem Ende, ob alle Teile da sind.
    }
trail-back = Kommen Sie ebenso zurück. Machen Sie das { $times }, schauen Sie dann in die Ferne.
trail-back-round = Gehen Sie dann andersherum. Machen Sie das { $times }, schauen Sie dann in die Ferne.
trail-see = Eine glatte Spur, deren Tiefe sich überall ändert. Wo Sie hinschauen, ist sie einfach.
