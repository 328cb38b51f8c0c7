# Seiten, die etwas fragen: was sie teilen, und was jede Art für sich hat.

choice-check = Prüfen Sie, ob Balken und Keil in der Mitte beide da sind.
choice-rest = Schauen Sie nach je drei Fragen fünf Sekunden in die Ferne.
choice-score = Insgesamt gilt: { $right } von { $of } richtig ist mehr als Glück.
choice-no-test = Das ist eine Übung, kein Test Ihrer Augen.

odd-goal = Finden Sie in jeder Gruppe { $shape-the-acc }, { $shape-gender ->
        [f] die
        [n] das
       *[m] der
    } in einer anderen Tiefe steht.
odd-look = In Gruppe 1 steht { $shape-a } näher oder weiter weg als die anderen.
odd-write = Notieren Sie den Buchstaben. Unsicher? Raten Sie.
odd-see = { $shape-many } in Gruppen. In jeder steht { $shape-gender ->
        [f] eine
        [n] eines
       *[m] einer
    } vor oder hinter den anderen. Ungleiche Abstände sagen nichts.

side-goal = Sagen Sie jedes Mal: Steht { $shape-the } näher als { $shape-gender ->
        [f] ihr
       *[m] sein
    } Pfosten oder weiter weg?
side-look = Schauen Sie auf Pfosten 1, bis seine drei Striche eine Linie sind.
side-ask = Steht { $shape-the } näher als { $shape-gender ->
        [f] ihr
       *[m] sein
    } Pfosten oder weiter weg? Notieren Sie es. Unsicher? Raten Sie.
side-see = Gerade Pfosten auf der Seite. Einige { $shape-many } schweben vor ihrem Pfosten, einige liegen dahinter.
side-near = nah
side-far = fern

order-goal = Ordnen Sie in jeder Gruppe { $shape-many } von fern nach nah.
order-ask = Was steht in Gruppe 1 am weitesten weg? Was kommt danach?
order-write = Notieren Sie die Buchstaben von fern nach nah. Unsicher? Raten Sie.
order-see-equal = { $shape-many } in Gruppen, { $shape-gender ->
        [f] jede
        [n] jedes
       *[m] jeder
    } in einer eigenen Tiefe. Alle sind gleich groß.
order-see-drawn = { $shape-many } in Gruppen, { $shape-gender ->
        [f] jede
        [n] jedes
       *[m] jeder
    } in einer eigenen Tiefe. Die Größe sagt nichts: Auch Großes kann fern sein.

match-goal = Finden Sie den Pfosten, der so tief steht wie der einzelne darüber.
match-look = Schauen Sie in Gruppe 1 auf den einzelnen Pfosten, dann auf die fünf darunter.
match-ask = Welcher der fünf steht gleich tief? Notieren Sie seine Nummer. Unsicher? Raten Sie.
match-see = Fünf Pfosten in fünf Tiefen. Darüber steht einer, so tief wie einer der fünf.
