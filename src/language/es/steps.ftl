# Clases en las que los ojos van de una profundidad a otra.

# Recorridos con paradas.
steps-number-one = Mire el número 1 hasta verlo único y nítido.
steps-see-stop = La parada que mira se ve única. Las otras pueden verse dobles por ahora: no pasa nada.

tour-goal = Recorra la página y vea única cada parada, tantas veces como pueda sin perder el orden.
tour-setup = Tenga un reloj a mano.
tour-check = { $marks ->
    [yes] Compruebe que ve a la vez la barra y la cuña. Luego vaya al número siguiente.
   *[no] Compruebe que ve todas las partes. Luego vaya al número siguiente.
    }
tour-again = Tras el último número, vuelva a empezar por el 1.
tour-count = Cuente las paradas que ve únicas en { $time }. Anote el número en el diario.
tour-far = Mire a lo lejos.

# Las paradas tienen números, nombres del autor o ninguna de las dos cosas.
jump-goal = Salte de una profundidad a otra y vea única cada parada.
jump-start-name = Mire «{ $name }» hasta ver una imagen única y nítida.
jump-start-shape = Mire la primera figura hasta verla única y nítida.
jump-next-number = Salte al número siguiente. Espere hasta verlo único.
jump-next-name = Salte a «{ $name }». Espere hasta ver una sola imagen.
jump-next-shape = Salte a la figura siguiente. Espere hasta verla única.
jump-check = { $marks ->
    [yes] Quédese { $time } en cada parada y compruebe que ve la barra y la cuña.
   *[no] Quédese { $time } en cada parada y compruebe que ve todas las partes.
    }
jump-round = Haga la ruta { $times }. Luego mire a lo lejos.

pairs-goal = Lleve los ojos hacia dentro, suéltelos y vuelva a empezar.
pairs-start = { $form ->
    [column] Empiece por { $shape-the } de arriba. Espere a ver { $shape-gender ->
        [f] solo una.
       *[m] solo uno.
        }
   *[row] Empiece por { $shape-the } de la izquierda. Espere a ver { $shape-gender ->
        [f] solo una.
       *[m] solo uno.
        }
    }
pairs-go = { $form ->
    [column] Baje paso a paso. No siga hasta que vea una sola imagen.
   *[row] Vaya hacia la derecha paso a paso. No siga hasta que vea una sola imagen.
    }
pairs-check = { $marks ->
    [yes] Quédese { $time } cada vez. Compruebe que ve la barra y la cuña.
   *[no] Quédese { $time } cada vez. Compruebe que ve todas las partes.
    }
pairs-round = Haga todo el recorrido { $times }. Luego mire a lo lejos.
pairs-see = Una figura delante de la página, la siguiente detrás, y así hasta el final.

rungs-goal = Suba del peldaño 1 al { $last }, con un pequeño paso cada vez.
rungs-look = Mire el peldaño 1 hasta ver { $shape-gender ->
    [f] una sola
   *[m] un solo
    } { $shape }.
rungs-stay = Quédese { $time } y luego vaya al número siguiente.
rungs-stop = Pare en el primer peldaño que siga doble. Retroceda un peldaño.
rungs-write = Anote el último peldaño que vio único. Luego mire a lo lejos.
rungs-see = { $shape-gender ->
    [f] Una sola
   *[m] Un solo
    } { $shape } en el peldaño que mira. Cada peldaño pide un poco más.

hoop-goal = Vea cómo un gran aro se despega de la página.
hoop-rest = Deje descansar la mirada en todo el aro grueso, no en un solo punto.
hoop-thin = Mire el aro fino de la página y luego otra vez el grueso.
hoop-hold = Mire { $time }. Fíjese en cuál está más cerca de usted. Luego mire a lo lejos.
hoop-see = { $side ->
    [toward] El aro grueso flota delante del fino, más cerca de usted.
    [away] El aro grueso queda detrás del fino, más al fondo que la página.
   *[page] Los dos aros están justo en la página.
    }

tiles-goal = Sienta cada paso de { $shape-gender ->
    [f] una { $shape } a la siguiente, que está dentro.
   *[m] un { $shape } al siguiente, que está dentro.
    }
tiles-largest = Mire { $shape-the } más grande. Está en la página.
tiles-in = Vaya hacia dentro, { $shape } por { $shape }. Pare cada vez hasta ver { $shape-gender ->
    [f] solo una.
   *[m] solo uno.
    }
tiles-say = Diga si es un pozo o una torre. Después lea «{ page-see }».
tiles-check = { $marks ->
    [yes] En el centro, compruebe que ve a la vez la barra y la cuña.
   *[no] En el centro, compruebe que ve todas las partes.
    }
tiles-out = Vuelva a salir paso a paso. Hágalo cinco veces y luego mire a lo lejos.
tiles-see = { $side ->
    [toward] Una torre de escalones iguales. El más pequeño es el más cercano a usted.
   *[away] Un pozo de escalones iguales. El más pequeño es el más hondo.
    }

point-goal = Señale el lugar donde parece estar { $shape-the }.
point-setup-toward = Tenga un lápiz a mano.
point-setup-away = Ponga la página de pie en el borde de una mesa, para que su mano llegue detrás de ella.
point-look = Mire { $shape-the } hasta ver { $shape-gender ->
    [f] solo una.
   *[m] solo uno.
    } No mire todavía la regla.
point-pencil-toward = Acerque un lápiz desde un lado hasta donde parece flotar { $shape-the }.
point-pencil-away = Sostenga un lápiz junto a la página, tan atrás como parece estar { $shape-the }.
point-ruler = No mueva el lápiz. ¿A qué distancia está de la página? Ahora mire la regla.
point-again = Mire a lo lejos. Hágalo { $times }.
point-see-toward = { $shape-gender ->
    [f] Una sola { $shape } que flota delante de la página. El lápiz la toca en el aire.
   *[m] Un solo { $shape } que flota delante de la página. El lápiz lo toca en el aire.
    }
point-see-away = { $shape-gender ->
    [f] Una sola
   *[m] Un solo
    } { $shape } que está detrás de la página. El lápiz está a la misma profundidad.

# Las distancias traen su unidad.
walk-goal = Siga viendo { $shape-gender ->
    [f] una sola
   *[m] un solo
    } { $shape } mientras se aleja de la página.
walk-setup = Cuélguela a la altura de los ojos, con sitio para alejarse.
walk-start = Empiece a { $distance } de la página. Espere a ver { $shape-gender ->
    [f] una sola
   *[m] un solo
    } { $shape }.
walk-check = { $marks ->
    [yes] Quédese { $time }. Compruebe que ve a la vez la barra y la cuña.
   *[no] Quédese { $time }. Compruebe que ve todas las partes.
    }
walk-back = Retroceda a la siguiente distancia de la tabla, hasta { $distance }.
walk-return = Vuelva por el mismo camino. Anote dónde se perdió una parte.
walk-see = { $shape-gender ->
    [f] Una sola
   *[m] Un solo
    } { $shape } en todo el recorrido. Puede parecer que se mueve al caminar usted.

posts-goal = Recorra los postes y sienta a qué distancia está cada uno.
posts-base = Mire la línea de base. Está en la página.
posts-go = Vaya de poste en poste, de izquierda a derecha. Vea único cada uno.
posts-check = { $marks ->
    [yes] En cada poste, compruebe que ve la barra y la cuña.
   *[no] En cada poste, compruebe que ve todas las partes.
    }
posts-say = Diga qué poste está más cerca de usted y cuál está más lejos.
posts-back = Vuelva en sentido contrario. Luego mire a lo lejos.
posts-see-through = Una fila de postes que atraviesa la página como una escalera.
posts-see-both-sides = Unos postes están delante de la página y otros detrás.
posts-see-stair-away = Una escalera de postes. Cada uno está más lejos que el anterior.
posts-see-stair-toward = Una escalera de postes. Cada uno está más cerca de usted que el anterior.
posts-see-away = Cada poste está a su propia profundidad, en la página o detrás.
posts-see-toward = Cada poste está a su propia profundidad, en la página o delante.

nest-box = caja
    .the = la caja
    .of = de la caja
    .gender = f
nest-frames = fila de marcos
    .the = la fila de marcos
    .of = de la fila de marcos
    .gender = f
nest-corridor = pasillo
    .the = el pasillo
    .of = del pasillo
    .gender = m
nest-goal = { $count ->
    [one] Sienta la profundidad { $room-of } y sitúe la figura dentro.
   *[other] Sienta la profundidad { $room-of } y sitúe cada figura dentro.
    }
nest-window = Mire hacia el interior { $room-of } como por una ventana.
nest-front = Deje que sus ojos vayan del frente al fondo { $room-of }.
nest-check = { $count ->
    [one] Mire la figura.
   *[other] Mire las figuras una tras otra.
    } { $marks ->
    [yes] Compruebe que ve la barra y la cuña.
   *[no] Compruebe que ve todas las partes.
    }
nest-back = Vuelva al frente. Hágalo cinco veces y luego mire a lo lejos.
nest-see = { $room-gender ->
    [f] Una { $room } profunda.
   *[m] Un { $room } profundo.
    } Lo más pequeño está más lejos de usted.

solids-goal = Vea las cosas como si estuvieran en un espacio real.
solids-window = Mire a través de la página como por una ventana.
solids-nearest = Empiece por lo más cercano a usted. Espere a verlo único.
solids-check = { $count ->
    [one] Mírelo con calma.
   *[other] Mire las cosas una tras otra.
    } { $marks ->
    [yes] Compruebe que ve la barra y la cuña.
   *[no] Compruebe que ve todas las partes.
    }
solids-edges = Siga los bordes que van hacia el fondo, ida y vuelta.
solids-again = Hágalo cinco veces y luego mire a lo lejos.
solids-see = Cosas con volumen, con un lado cerca y otro lejos.

trail-goal = Siga un sendero con los ojos mientras se acerca y se aleja.
trail-start-line = Empiece en un extremo del sendero y espere a verlo único.
trail-start-bead = Empiece en la cuenta con las señales y espere a verla única.
trail-along-line = Deslice los ojos despacio por el sendero. Sienta cómo se juntan y se sueltan.
trail-along-beads = Lleve los ojos despacio de cuenta en cuenta. Sienta cómo se juntan y se sueltan.
trail-check = { $marks ->
    [yes] En cada extremo, compruebe que ve la barra y la cuña.
   *[no] En cada extremo, compruebe que ve todas las partes.
    }
trail-back = Vuelva por el mismo camino. Hágalo { $times } y luego mire a lo lejos.
trail-back-round = Vaya después en sentido contrario. Hágalo { $times } y luego mire a lo lejos.
trail-see = Un sendero suave que cambia de profundidad todo el tiempo. La parte que mira se ve única.
