# Seiten mit eigenen Bildern. Wie die Teile heißen, weiß nur, wer sie gezeichnet hat: Hier werden sie gezählt.

layers-goal = Sehen Sie jeden Teil des Bildes in eigener Tiefe.
layers-look = Schauen Sie auf das Bild wie aus einem Fenster.
layers-nearest = Schauen Sie auf den Teil, der am nächsten scheint, bis er einfach ist.
layers-back = Gehen Sie zum Teil dahinter, und so bis ganz nach hinten. Kommen Sie dann wieder nach vorn.
layers-repeat = Machen Sie das fünfmal, schauen Sie dann in die Ferne.
layers-front = { $n ->
        [one] Ein Teil vor der Seite.
       *[other] { $n } Teile vor der Seite.
    }
layers-page = { $n ->
        [one] Ein Teil auf der Seite.
       *[other] { $n } Teile auf der Seite.
    }
layers-behind = { $n ->
        [one] Ein Teil hinter der Seite.
       *[other] { $n } Teile hinter der Seite.
    }
