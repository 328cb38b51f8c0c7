# Seiten, die eine Fachperson vorgibt.

contrast-goal = Sehen Sie beide Zeichen einer Reihe, während eines davon von Reihe zu Reihe dünner wird.
contrast-begin-ring-thins = Beginnen Sie mit Reihe 1. Schauen Sie auf das Kreuz: Ist auch der Ring da?
contrast-begin-cross-thins = Beginnen Sie mit Reihe 1. Schauen Sie auf den Ring: Ist auch das Kreuz da?
contrast-down = Gehen Sie Reihe für Reihe nach unten, je fünf Sekunden.
contrast-note = Notieren Sie die letzte Reihe, in der beide Zeichen da sind. Hören Sie dort auf.
contrast-rest = Schauen Sie zehn Sekunden in die Ferne. Zwei Runden sind genug.
contrast-see-ring-thins = Ein Ring und ein Kreuz in jeder Reihe, zur selben Zeit. Der Ring wird dünner und bleibt.
contrast-see-cross-thins = Ein Ring und ein Kreuz in jeder Reihe, zur selben Zeit. Das Kreuz wird dünner und bleibt.
contrast-rings = die Ringe
contrast-rings-then = Ihr rechtes Auge setzt aus. Eine Reihe höher gehen, neu hinsehen.
contrast-crosses = die Kreuze
contrast-crosses-then = Ihr linkes Auge setzt aus. Eine Reihe höher gehen, neu hinsehen.

gated-double-then = Hören Sie für heute auf. Sagen Sie es Ihrer Fachperson.

shared-goal = Finden Sie einen Weg, von dem jedes Auge nur einen Teil kennt.
shared-pencil = Nehmen Sie einen Bleistift.
shared-look = Prüfen Sie, ob Wände, Ring und Stern alle da sind.
shared-draw = { $hazards ->
        [0] Zeichnen Sie langsam vom Ring zum Stern: durch keine Wand.
       *[other] Zeichnen Sie langsam vom Ring zum Stern: durch keine Wand, über kein Kreuz.
    }
shared-fade = Wird ein Teil blass, halten Sie an. Blinzeln, in die Ferne schauen, weitermachen.
shared-rest = Schauen Sie nach zwei Minuten in die Ferne. Einmal ist genug.
shared-see = { $hazards ->
        [0] Ein kleiner Irrgarten, ein Ring als Start und ein Stern als Ziel.
       *[other] Ein kleiner Irrgarten, ein Ring als Start, ein Stern als Ziel und Kreuze.
    }
shared-walls = Wände und keine Zeichen
shared-marks = Zeichen und keine Wände
shared-left-out = Ihr linkes Auge setzt aus. Machen Sie erst Pause.
shared-right-out = Ihr rechtes Auge setzt aus. Machen Sie erst Pause.
