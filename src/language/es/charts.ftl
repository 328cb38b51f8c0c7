# Los gráficos de `plot`, para autores: la escalera de un conjunto y sus páginas vistas desde arriba.

chart-facts = { $title } { $version } · { $date } · para { $distance } y una distancia entre los ojos de { $ipd } ({ $low } a { $high })
chart-facts-base = { $facts } · { $base }; todo se cuenta desde ahí
chart-numbers = Son números sobre páginas, no sobre un lector: ni prueba, ni puntuación, ni tratamiento.

# La escalera.

chart-ladder = La escalera de { $title }
chart-ladder-sheet = La escalera de { $title }, hoja { $number } de { $count }
chart-ladder-lead = Lo que piden los ejercicios, en el orden del libro: { $span }.
chart-ladder-picture = Dos gráficos ({ $span }): dificultad de 0 a 100, y demanda en dioptrías prismáticas; { $range }.
chart-span-none = ninguna página
chart-span-one = página { $number }
chart-span-many = páginas { $first } a { $last }
chart-difficulty = Dificultad, 0 a 100
chart-demand = Demanda, dioptrías prismáticas

chart-strand-check = comprobaciones
chart-strand-toward = mantener hacia delante
chart-strand-away = mantener hacia atrás
chart-strand-jump = salto
chart-strand-smooth = cambio suave
chart-strand-depth = profundidad fina
chart-no-marker = sin marca: no se conoce la dificultad

chart-bar = de la menor a la mayor demanda de una página; 0 es la página misma
chart-toward = hacia delante
chart-away = hacia atrás
chart-blur = borrosidad
chart-break = ruptura
chart-parallel = paralelos
chart-range = rango del lector: { $away } ({ $first }) a { $toward } ({ $second })
chart-no-range = no se conoce el rango del lector: el conjunto no da ni reservas ni normas
chart-comfort = comodidad: 1 grado de disparidad como máximo
chart-parallel-eyes = ojos paralelos para una distancia entre los ojos de { $ipd }
chart-reserves = { $source }: { $ends }
chart-reserve-ends = { $name } a { $ends }
chart-source-norm = reservas de la norma { $norm }
chart-source-one-side = reservas, un lado de la norma { $norm }
chart-source-found = reservas como las halló un profesional
chart-bound-percival = Percival, tercio medio
chart-bound-sheard = Sheard, el doble de la foria
chart-bound-reserve = toda la reserva

# Vistas desde arriba.

chart-plan-lead = { $id } · { $kind } · visto desde arriba, escala 1 : { $scale }
chart-plan-picture = Los dos ojos, la página a { $distance } y dónde están sus objetivos. { $labels }.
chart-label = { $names }: { $depth }
chart-label-names = { $names }:
chart-names-more = { $names } y { $count } más
chart-names-left = { $names } (ojo izquierdo)
chart-names-right = { $names } (ojo derecho)
chart-labels-left-out = { $count } de { $all } rótulos; el informe tiene el resto
chart-depth-toward = { $cm } hacia delante ({ $pd })
chart-depth-away = { $cm } hacia atrás ({ $pd })
chart-depths = { $near } a { $far }
chart-left-eye = ojo izquierdo
chart-right-eye = ojo derecho
chart-ruler = cm desde los ojos; la página a { $distance }
chart-art-field = Línea larga: el campo de dibujo de la página, de { $width } de ancho
chart-ipds = barras con extremos: distancias entre los ojos de { $low } a { $high }
chart-lines = líneas finas: ambos ojos miran { $name }
chart-dotted = punteado: un solo ojo
chart-arrowhead = punta de flecha: más lejos que la hoja
chart-shade = sombra: el rango del lector, { $near } a { $far }
chart-shade-parallel = sombra: el rango del lector, { $near } a ojos paralelos
