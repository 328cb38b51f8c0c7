# Páginas que preguntan: lo que comparten y lo propio de cada tipo.

choice-check = En el centro, compruebe que ve a la vez la barra y la cuña.
choice-rest = Cada tres preguntas, mire a lo lejos cinco segundos.
choice-score = En total, acertar { $right } de { $of } es más que suerte.
choice-no-test = Esto es práctica, no una prueba de la vista.

odd-goal = En cada grupo, busque { $shape-the } que está a otra profundidad.
odd-look = En el grupo 1, { $shape-a } está más cerca o más lejos que { $shape-gender ->
        [f] las
       *[m] los
    } demás.
odd-write = Anote su letra. Si duda, adivine.
odd-see = En cada grupo de { $shape-many }, { $shape-gender ->
        [f] una delante o detrás de las
       *[m] uno delante o detrás de los
    } demás. Los espacios desiguales no dicen nada.

side-goal = Diga si cada { $shape } está más cerca o más lejos que su poste.
side-look = Mire el poste 1 hasta que sus tres trazos estén en una sola línea.
side-ask = ¿Está { $shape-the } más cerca o más lejos que su poste? Anótelo. Si duda, adivine.
side-see = Postes rectos en la página. { $shape-gender ->
        [f] Unas { $shape-many } flotan delante de su poste, otras
       *[m] Unos { $shape-many } flotan delante de su poste, otros
    } quedan detrás.
side-near = cerca
side-far = lejos

order-goal = Ordene { $shape-gender ->
        [f] las
       *[m] los
    } { $shape-many } de cada grupo, de lejos a cerca.
order-ask = En el grupo 1, ¿cuál está más lejos de usted? ¿Cuál sigue?
order-write = Escriba las letras de lejos a cerca. Si duda, adivine.
order-see-equal = Grupos de { $shape-many }, cada { $shape-gender ->
        [f] una a su propia profundidad. Todas
       *[m] uno a su propia profundidad. Todos
    } tienen el mismo tamaño.
order-see-drawn = Grupos de { $shape-many }, cada { $shape-gender ->
        [f] una a su propia profundidad. El tamaño no dice nada: una
       *[m] uno a su propia profundidad. El tamaño no dice nada: uno
    } grande puede estar lejos.

match-goal = Busque el poste que está a la misma profundidad que el suelto de arriba.
match-look = En el grupo 1, mire el poste suelto y luego los cinco de abajo.
match-ask = ¿Cuál de los cinco está a la misma profundidad? Anote su número. Si duda, adivine.
match-see = Cinco postes a cinco profundidades. Encima hay otro, tan profundo como uno de ellos.
