# Seiten, die eine Fachperson vorgibt.

contrast-goal = Sehen Sie beide Zeichen einer Reihe, während eines davon von Reihe zu Reihe dünner wird.
contrast-begin-ring-thins = Beginnen Sie mit Reihe 1. Schauen Sie auf das Kreuz, und sehen Sie, dass auch der Ring da ist.
contrast-begin-cross-thins = Beginnen Sie mit Reihe 1. Schauen Sie auf den Ring, und sehen Sie, dass auch das Kreuz da ist.
contrast-down = Gehen Sie Reihe für Reihe nach unten, je fünf Sekunden.
contrast-note = Merken Sie sich die letzte Reihe, in der beide Zeichen da sind. Hören Sie dort auf.
contrast-rest = Schauen Sie zehn Sekunden in die Ferne. Zwei Runden sind genug.
contrast-see-ring-thins = Ein Ring und ein Kreuz in jeder Reihe, zur selben Zeit. Der Ring wird dünner und bleibt.
contrast-see-cross-thins = Ein Ring und ein Kreuz in jeder Reihe, zur selben Zeit. Das Kreuz wird dünner und bleibt.
contrast-rings = die Ringe
contrast-rings-then = Ihr rechtes Auge setzt aus. Gehen Sie eine Reihe nach oben, und schauen Sie noch einmal.
contrast-crosses = die Kreuze
contrast-crosses-then = Ihr linkes Auge setzt aus. Gehen Sie eine Reihe nach oben, und schauen Sie noch einmal.

gated-double-then = Hören Sie für heute auf. Sagen Sie es Ihrer Fachperson.

shared-goal = Finden Sie einen Weg, von dem jedes Auge nur einen Teil kennt.
shared-pencil = Nehmen Sie einen Bleistift.
shared-look = Prüfen Sie, ob Wände, Ring und Stern alle da sind.
shared-draw = { $hazards ->
        [0] Zeichnen Sie langsam vom Ring zum Stern. Gehen Sie durch keine Wand.
       *[other] Zeichnen Sie langsam vom Ring zum Stern. Gehen Sie durch keine Wand und auf kein Kreuz.
    }
shared-fade = Wenn ein Teil blass wird, halten Sie an. Blinzeln Sie, schauen Sie in die Ferne, und machen Sie weiter.
shared-rest = Schauen Sie nach zwei Minuten in die Ferne. Einmal ist genug.
shared-see = { $hazards ->
        [0] Ein kleiner Irrgarten, ein Ring als Start und ein Stern als Ziel.
       *[other] Ein kleiner Irrgarten, ein Ring als Start, ein Stern als Ziel und Kreuze.
    }
shared-walls = Wände und keine Zeichen
shared-marks = Zeichen und keine Wände
shared-left-out = Ihr linkes Auge setzt aus. Machen Sie erst Pause.
shared-right-out = Ihr rechtes Auge setzt aus. Machen Sie erst Pause.
