# Las hojas para el profesional de la vista: aquí caben los términos del oficio.

professional-title = Para su profesional de la vista
professional-later = Para su profesional, hoja { $number }
professional-description = Qué es el libro, para qué se calculó y los números de cada página de ejercicio.
professional-lead = Enseñe estas hojas, por favor, a quien cuida de sus ojos.

professional-what = Qué es este libro
professional-what-text = Páginas de práctica para los dos ojos con filtros rojo y cian, para adultos que practican por su cuenta. No son una prueba ni un tratamiento; no miden nada y no prometen nada. Se calcularon con los números de abajo y con nada más. Su consejo va antes que todo lo que está escrito aquí.
professional-please = Qué le pedimos
professional-please-text = ¿Es segura esta clase de práctica para este lector? ¿Qué páginas, desde dónde, durante cuánto tiempo? ¿Hay alguna razón para no debilitar una supresión? Escríbalo, por favor, junto a la tabla y tache lo que el lector deba dejar.
professional-viewer = Para qué se calculó
professional-findings = Qué más se sabe de los ojos
professional-glasses = Gafas y tintas
professional-columns = Qué dice la tabla
professional-columns-text = Grado: lo difícil que es una página al lado de las otras, de 1 a 10; no dice nada del lector. Demanda: respecto a la página, en dioptrías prismáticas; hacia delante es base externa, hacia atrás es base interna. Disparidad: diferencia exacta de vergencia respecto a la página; + es cruzada. Lugar: desde los ojos, para todas las distancias interpupilares. Tamaño: de lo más pequeño y lo más grande que se mira. Pistas: 0 son solo puntos, 3 un contorno y más. Partes: vistas solo por el ojo izquierdo, solo por el derecho, por ambos. Equilibrio: lo que conserva el ojo más fuerte.
professional-columns-base = La demanda y la disparidad se cuentan desde el desplazamiento base; no se dice ningún lugar, porque los ojos están desviados.

# Nombres de los datos y lo que está al lado.

professional-head-what = Qué
professional-head-value = Valor
professional-unknown = no se sabe; nada se supone
professional-reader = Lector
professional-distance = Ojos a página
professional-ipd = Distancia interpupilar
professional-ipd-value = { $ipd }; de los lectores { $low } a { $high }
professional-reserve-toward = Reserva base externa
professional-reserve-away = Reserva base interna
professional-blur = borrosidad { $n }
professional-break = ruptura { $n }
professional-recovery = recobro { $n }
professional-reserve = { $amounts }; { $source }
professional-source-norm = medias publicadas de un grupo, { $norm }
professional-source-found = como se halló en el lector
professional-zone = Se pide como máximo
professional-zone-value = { $from } ({ $first }) a { $to } ({ $second }): { $which }
professional-zone-whole = todas las reservas
professional-zone-everyday = la parte de cada día
professional-bound-percival = Percival
professional-bound-sheard = Sheard
professional-bound-reserve = reserva
professional-phoria = Foria
professional-phoria-eso = { $pd } endo
professional-phoria-exo = { $pd } exo
professional-near-point = Punto próximo de convergencia
professional-balance = Equilibrio
professional-base = Desplaza­miento base
professional-base-none = ninguno
professional-base-out = { $pd } hacia delante (base externa)
professional-base-in = { $pd } hacia atrás (base interna)
professional-base-right = { $pd } imagen derecha más alta
professional-base-left = { $pd } imagen izquierda más alta
professional-framed = Páginas con marco
professional-decided = Zona y desplaza­miento base
professional-filters = Gafas
professional-edition = Edición
professional-edition-white = { $id }, { $page }, fondo blanco
professional-edition-black = { $id }, { $page }, fondo negro
professional-seen-on = Vista en
professional-inks = Tintas
professional-inks-value = ojo izquierdo { $left }, ojo derecho { $right }
professional-ghost = Imagen fantasma prevista
professional-ghost-value = ojo izquierdo { $left } %, ojo derecho { $right } %
professional-ghost-ideal = ojo izquierdo { $left } %, ojo derecho { $right } %, si la pantalla y los filtros fueran ideales

# La tabla de las páginas.

professional-page = Página
professional-kind = Clase
professional-level = Nivel
professional-grade = Grado
professional-demand = Demanda, dp
professional-disparity = Disparidad, segarc
professional-place = Lugar, cm
professional-size = Tamaño, grados
professional-cue = Pistas
professional-parts = Partes
professional-range = { $from } a { $to }
professional-none = –
professional-flat = página
professional-toward = { $n } delante
professional-away = { $n } atrás
professional-very-far = muy lejos
professional-by-kind = por clase
