# Wörter, die mehrere Arten von Übungen gemeinsam haben.

# Was die Kontrollzeichen sagen: der Balken des linken und der Keil des rechten Auges. Eine Seite kann ohne sie sein.
kinds-check-both = { $marks ->
    [yes] Prüfen Sie, ob Balken und Keil beide da sind.
   *[no] Prüfen Sie, ob alle Teile da sind.
    }
kinds-check-there = { $marks ->
    [yes] Prüfen Sie, ob Balken und Keil da sind.
   *[no] Prüfen Sie, ob alle Teile da sind.
    }
kinds-see-marks = { $see } Balken und Keil sind beide da.

# Zeiten und Wiederholungen.
kinds-seconds = { $count ->
    [one] { $n } Sekunde
   *[other] { $n } Sekunden
    }
kinds-times = { $n ->
    [1] einmal
    [2] zweimal
   *[other] { $n } Mal
    }
kinds-watch-ten = Schauen Sie zehn Sekunden hin, dann in die Ferne. Machen Sie das dreimal. Eine Minute genügt.

# Was eine Seite zuerst sagt, die eine Fachperson aufgibt.
kinds-as-told = Machen Sie das nur so, wie Ihre Fachperson es gesagt hat.

# „Sie sehen nur …“: was man sieht (im Akkusativ) und was zu tun ist.
kinds-only-bar = den Balken
kinds-only-wedge = den Keil
kinds-only-flat = ein flaches Bild
kinds-only-doubled = alles doppelt
kinds-right-out-try = Ihr rechtes Auge setzt aus. Blinzeln, weit weg schauen, noch einmal.
kinds-left-out-try = Ihr linkes Auge setzt aus. Blinzeln, weit weg schauen, noch einmal.
kinds-right-out-look = Ihr rechtes Auge setzt aus. Blinzeln, weit weg schauen, neu hinsehen.
kinds-left-out-look = Ihr linkes Auge setzt aus. Blinzeln, weit weg schauen, neu hinsehen.
kinds-one-out = Ein Auge setzt aus. Jedes einzeln abdecken, dann noch einmal.
kinds-easier = Pause, dann leichtere Seite.
