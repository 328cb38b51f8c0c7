# Arten, in denen eins einfach gehalten wird.

hold-goal = Halten Sie { $shape-a-acc } einfach und klar, während Ihre Augen ruhig bleiben.
hold-look = Schauen Sie entspannt auf { $shape-the-acc }, bis Sie nur { $shape-gender ->
    [m] einen
    [f] eine
   *[n] eines
    } sehen.
hold-hold = Halten Sie das Bild { $time } einfach und klar.
hold-rest = Schauen Sie fünf Sekunden in die Ferne. Machen Sie das { $times }.
hold-see = Nur { $shape-a }, { $shape-gender ->
    [m] der
    [f] die
   *[n] das
    } { $side ->
    [toward] vor der Seite zu schweben scheint.
    [away] hinter der Seite zu liegen scheint, wie durch ein Fenster gesehen.
   *[page] flach auf der Seite liegt.
    }

columns-goal = Lesen Sie Zeile um Zeile, während jede etwas mehr von Ihren Augen verlangt.
columns-start = Schauen Sie auf die erste Zeile, bis sie einfach und klar ist.
columns-check = { $marks ->
    [yes] Prüfen Sie, ob Balken und Keil da sind, oben und unten.
   *[no] Prüfen Sie, ob alle Teile da sind, oben und unten.
    }
columns-aloud = Lesen Sie laut, Zeile für Zeile. Warten Sie jedes Mal, bis sie klar ist.
columns-rest = Schauen Sie am Ende fünf Sekunden in die Ferne. Machen Sie das dreimal.
columns-see = Einfache, klare Zeilen, die nach und nach vor- oder zurücktreten.

# Eine Zeile hat Wörter; mehrere sind Zeilen.
words-goal = { $lines ->
    [one] Lesen Sie Wörter mit beiden Augen, während sie einfach und klar bleiben.
   *[other] Lesen Sie Zeilen mit beiden Augen, während sie einfach und klar bleiben.
    }
words-middle = Schauen Sie entspannt auf die Mitte der Seite, bis die Buchstaben einfach sind.
words-aloud = Lesen Sie laut und langsam, notfalls Buchstabe für Buchstabe.
words-rest = Schauen Sie fünf Sekunden in die Ferne. Machen Sie das fünfmal.
words-see-toward = { $lines ->
    [one] Einfache, klare Wörter, die vor der Seite zu schweben scheinen.
   *[other] Einfache, klare Zeilen, die vor der Seite zu schweben scheinen.
    }
words-see-away = { $lines ->
    [one] Einfache, klare Wörter, die hinter der Seite zu liegen scheinen.
   *[other] Einfache, klare Zeilen, die hinter der Seite zu liegen scheinen.
    }
words-see-page = { $lines ->
    [one] Einfache, klare Wörter, flach auf der Seite.
   *[other] Einfache, klare Zeilen, flach auf der Seite.
    }

dealt-goal = Lesen Sie Wörter, deren Buchstaben auf beide Augen verteilt sind.
dealt-first = Schauen Sie auf den ersten Buchstaben einer Reihe, bis er klar ist.
dealt-aloud = Lesen Sie die Reihe vor, Buchstabe für Buchstabe, oder schreiben Sie sie auf.
dealt-last = Gehen Sie bis zur letzten Reihe, schauen Sie dann in die Ferne. Eine Minute genügt.
dealt-note = Notieren Sie die Reihen, in denen Buchstaben fehlten: Jedes Auge hatte eigene.
dealt-see = Reihen ganzer Wörter, alle Buchstaben nebeneinander, keiner fehlt.
dealt-only-some = einige Buchstaben
dealt-some = Einem Auge fehlten seine eigenen. Blinzeln, weit weg schauen, neu lesen.
dealt-only-turns = wechselnde Buchstaben
dealt-turns = Die Augen wechseln sich ab. Pause, dann leichtere Seite.
# Was eine Reihe sagt, und was jedes Auge allein davon hatte.
dealt-answer = { $word }: links { $left }, rechts { $right }

patch-goal = Halten Sie eine Scheibe einfach und klar, während ihr Rand Ihre Augen zusammenhält.
patch-border = Schauen Sie zuerst auf den rauen Rand, bis er eins wird.
patch-middle = Schauen Sie nun in die offene Mitte der Scheibe. Prüfen Sie, ob Balken und Keil beide da sind.
patch-hold = Halten Sie das Bild zehn Sekunden, schauen Sie dann in die Ferne. Machen Sie das dreimal. Eine Minute genügt.
patch-see = { $side ->
    [toward] Eine klare Scheibe vor der Seite, in einem rauen Rand. In der Mitte ein Balken und ein Keil, beide zugleich.
    [away] Eine klare Scheibe hinter der Seite, in einem rauen Rand. In der Mitte ein Balken und ein Keil, beide zugleich.
   *[page] Eine klare Scheibe, flach auf der Seite, in einem rauen Rand. In der Mitte ein Balken und ein Keil, beide zugleich.
    }
