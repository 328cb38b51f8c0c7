# Páginas de puntos al azar: lo que comparten y lo propio de cada tipo.

dots-frame = Mire con suavidad el centro. Compruebe que el marco está entero por todos lados.
dots-rest = Luego mire a lo lejos cinco segundos.
dots-whole = El marco está entero por todos lados: los dos ojos participan.
dots-one-eye = uno de cada dos trazos
dots-one-eye-then = Un ojo no participa. Parpadee, mire a lo lejos y repita.
dots-flat = puntos planos
dots-flat-then = Mire el marco y espere. ¿Sigue plano? Tome una página más fácil.
dots-double = dos marcos

way-up = arriba
way-right = derecha
way-down = abajo
way-left = izquierda

hidden-goal = { $n ->
        [one] Busque la figura que solo se ve con los dos ojos a la vez.
       *[other] Busque las figuras que solo se ven con los dos ojos a la vez.
    }
hidden-wait = { $n ->
        [one] Espere hasta medio minuto a que aparezca una figura.
       *[other] Espere hasta medio minuto a que aparezcan figuras.
    }
hidden-follow = { $n ->
        [one] Siga con los ojos el borde de la figura.
       *[other] Siga con los ojos el borde de cada figura.
    }
hidden-shapes = { $n } figuras
hidden-see-front = { $shapes } delante de los demás puntos.
hidden-see-behind = { $shapes } detrás de los demás puntos, como a través de un hueco.
hidden-see-either = { $shapes } delante o detrás de los demás puntos.
hidden-see-mixed = { $shapes }: parte delante de los demás puntos, parte detrás.

gap-goal = { $n ->
        [one] Vea dónde está abierto el anillo oculto.
       *[other] Vea dónde está abierto cada anillo oculto.
    }
gap-wait = { $n ->
        [one] Espere hasta medio minuto a que aparezca un anillo.
       *[other] Espere hasta medio minuto a que aparezcan anillos.
    }
gap-write = { $n ->
        [one] Anote dónde está su abertura: arriba, derecha, abajo o izquierda.
       *[other] Junto a cada número escriba arriba, derecha, abajo o izquierda.
    }
gap-see = { $n ->
        [one] Un anillo a otra profundidad que los puntos de alrededor. Tiene una abertura.
       *[other] { $n } anillos a otra profundidad que los puntos de alrededor. Cada uno tiene una abertura.
    }

planes-goal = Note cómo cada plano de puntos está a su propia profundidad.
planes-wait = Espere hasta medio minuto a que los planos se separen.
planes-order = Escriba los números en orden, del plano más cercano al más lejano.
planes-step-row = Pase con los ojos de plano en plano, ida y vuelta, cinco veces.
planes-step-nest = Pase con los ojos de fuera adentro y vuelva, cinco veces.
planes-see-row = { $n } planos de puntos, uno junto a otro, cada uno a su propia profundidad.
planes-see-nest = { $n } planos de puntos, uno dentro de otro, cada uno a su propia profundidad.

board-goal = Note cómo se inclina una tabla de puntos y diga qué borde está cerca.
board-wait = Espere hasta medio minuto a que los puntos formen una tabla inclinada.
board-write = Anote qué borde está más cerca: arriba, derecha, abajo o izquierda.
board-see = Una tabla lisa de puntos que se inclina. Un borde viene hacia usted y el de enfrente se aleja.

hills-goal = Cuente las colinas largas que solo se ven con los dos ojos a la vez.
hills-wait = Espere hasta medio minuto a que aparezcan las colinas.
hills-count = Mire despacio de izquierda a derecha. Cuente las colinas, de 1 a { $most }, y anote el número.
hills-see = Colinas largas y suaves que van de arriba abajo y suben hacia usted.
hollows-goal = Cuente los surcos largos que solo se ven con los dos ojos a la vez.
hollows-wait = Espere hasta medio minuto a que aparezcan los surcos.
hollows-count = Mire despacio de izquierda a derecha. Cuente los surcos, de 1 a { $most }, y anote el número.
hollows-see = Surcos largos y suaves que van de arriba abajo y se hunden hacia el fondo.

waves-goal = Note cómo sube y baja un campo de puntos.
waves-wait = Espere hasta medio minuto a que los puntos suban y bajen.
waves-follow-down = Siga las olas con los ojos de arriba abajo y vuelva, cinco veces.
waves-follow-right = Siga las olas con los ojos de izquierda a derecha y vuelva, cinco veces.
waves-see-down = { $n ->
        [one] Una ola suave de arriba abajo, como en agua tranquila.
       *[other] { $n } olas suaves de arriba abajo, como en agua tranquila.
    }
waves-see-right = { $n ->
        [one] Una ola suave de izquierda a derecha, como en agua tranquila.
       *[other] { $n } olas suaves de izquierda a derecha, como en agua tranquila.
    }

relief-goal = Busque los lugares altos y bajos que solo se ven con los dos ojos a la vez.
relief-wait = Espere hasta medio minuto a que los puntos suban y se hundan.
relief-wander = Deje ir los ojos del lugar más cercano al más lejano y vuelva, cinco veces.
relief-see = Un paisaje de puntos con lugares cercanos y lejanos.
