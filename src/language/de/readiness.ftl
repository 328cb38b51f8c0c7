# Kurze Prüfungen: was jedes Auge sieht und ob es zusammenkommt.

# Zwei Hälften einer Linie an einer Skala. Sie steht senkrecht oder liegt waagerecht.
nonius-goal = { $form ->
    [upright] Sehen Sie, ob sich die Hälften einer senkrechten Linie treffen.
   *[level] Sehen Sie, ob sich die Hälften einer waagerechten Linie treffen.
    }
nonius-zero = Schauen Sie auf die Null der Skala. Beide Augen sehen die Skala.
nonius-ticks = { $form ->
    [upright] Halten Sie die Augen still. Wohin zeigen die obere und die untere Hälfte?
   *[level] Halten Sie die Augen still. Wohin zeigen die linke und die rechte Hälfte?
    }
nonius-note = Notieren Sie beide Striche im Tagebuch. Schauen Sie in die Ferne, dann noch einmal hin. Eine Minute genügt.
nonius-tell = Bleiben die Hälften getrennt, sagen Sie es Ihrer Fachperson. Ändern Sie selbst nichts.
nonius-see = { $form ->
    [upright] Die obere und die untere Hälfte stehen still, über und unter demselben Strich.
   *[level] Die linke und die rechte Hälfte stehen still, links und rechts von demselben Strich.
    }
nonius-only-first = { $form ->
    [upright] die obere Hälfte
   *[level] die linke Hälfte
    }
nonius-only-second = { $form ->
    [upright] die untere Hälfte
   *[level] die rechte Hälfte
    }
nonius-only-apart = getrennte Hälften
nonius-apart = Nichts erzwingen. Nennen Sie Ihrer Fachperson die notierten Striche.

# Ein Punkt für das eine Auge in einem Rahmen für das andere.
inset-goal = Sehen Sie zwei verschiedene Bilder, eins mit jedem Auge, als ein Bild.
inset-corners = Schauen Sie auf die vier Eckstriche. Beide Augen sehen sie.
inset-middle = Schauen Sie nun in die Mitte. Lassen Sie Punkt und Rahmen zusammenkommen.
inset-see = Ein Punkt, der im quadratischen Rahmen bleibt, mit einem Strich an jeder Ecke.
inset-only-frame = den Rahmen
inset-only-dot = den Punkt
inset-only-drift = einen wandernden Punkt
inset-drift = Pause, neu hinsehen. Immer so? Ihrer Fachperson sagen.

# Zeichen für jedes Auge, in Gruppen von drei Größen.
who-goal = Sehen Sie, welches Auge welches Zeichen sieht und ob beide mitmachen.
who-largest = Schauen Sie auf das größte Quadrat. Welche Zeichen stehen darüber?
who-cover = Decken Sie das rechte Auge ab: Ringe und Quadrate bleiben. Decken Sie das linke ab: Kreuze und Quadrate bleiben.
who-note = Schauen Sie mit beiden Augen auf jedes Quadrat. Notieren Sie das kleinste, das Ring und Kreuz hat. Eine Minute genügt.
who-see = Drei Quadrate, über jedem ein Ring und ein Kreuz, alle zur gleichen Zeit.
who-only-rings = Ringe, Quadrate
who-only-crosses = Kreuze, Quadrate
who-only-turns = wechselnde Zeichen
who-turns = Die Augen wechseln sich ab. Pause, dann größere nehmen.

# Ein Umriss in Teilen, manche für das eine, manche für das andere Auge: Hälften, oder im Wechsel.
halves-goal = Setzen Sie die Teile zweier Bilder zu { $shape-gender ->
    [f] einer
   *[other] einem
    } { $shape } zusammen.
halves-dot = Schauen Sie auf den Punkt in der Mitte. Beide Augen sehen ihn.
halves-cover = Decken Sie erst das rechte, dann das linke Auge ab: Jedes Auge hat seine eigenen Teile.
halves-close = Schauen Sie mit beiden Augen auf den Punkt, bis sich { $shape-the } um ihn schließt.
halves-see = { $shape-gender ->
    [m] Ein ganzer
    [f] Eine ganze
   *[n] Ein ganzes
    } { $shape } um einen Punkt, mit kleinen Lücken zwischen den Teilen.
halves-only-left = { $deal ->
    [sides] die linke Hälfte
   *[turns] die Teile des linken Auges
    }
halves-only-right = { $deal ->
    [sides] die rechte Hälfte
   *[turns] die Teile des rechten Auges
    }
halves-only-apart = getrennte Teile
halves-apart = Pause, neu hinsehen. Nie zusammen? Ihrer Fachperson sagen.
