# Lo que dicen del dibujo los pies de imagen, los pies de página y las descripciones: demandas, lugares y qué recibe cada ojo.

list-apart = { $before }; { $after }

demand-toward = { $pd } hacia delante
demand-away = { $pd } hacia atrás
demand-page = en la página
demand-on-page = en la página
demand-range = de { $from } a { $to }
demand-range-to-page = de { $from } a la página
demand-range-from-page = de la página a { $to }

place-between = { $near } a { $far } cm
place-very-far = muy lejos

# Pies de imagen.

caption-flat = Todo en la página, a { $distance }.
caption-flat-base = Todo en la página, contado desde el desplazamiento base, a { $distance }.
caption-deep = Profundidades: { $depths }; página a { $distance }.
caption-deep-base = Profundidades, contadas desde el desplazamiento base: { $depths }; página a { $distance }.
caption-range = Profundidades: { $depths }. Desde sus ojos: página { $distance }.
caption-range-base = Profundidades, contadas desde el desplazamiento base: { $depths }. Desde sus ojos: página { $distance }.
caption-depth = { $name } { $demand }
caption-depth-all = todo { $demand }
caption-place = { $name } { $place } ({ $demand })
caption-place-all = todo { $place } ({ $demand })
caption-places = Desde sus ojos: { $places }; página { $distance }.

# Lo que recibe cada ojo.

eye-left-alone = Ojo izquierdo: { $things }.
eye-right-alone = Ojo derecho: { $things }.
eye-both-alone = Ambos: { $things }.
thing-count = { $count } { $thing-many }
thing-numbered = { $thing } { $number }

picture-eyes = Ojo izquierdo: { $left }. Ojo derecho: { $right }. Los dos ojos juntos: { $together }.
picture-same = las mismas figuras
picture-same-moved = las mismas figuras movidas de lado según su profundidad
picture-line = una línea que va { $depths }
picture-line-flat = una línea en la página
picture-stand = { $name }: { $demand }, distancia a los ojos { $place }
picture-stand-base = { $name }: { $demand }
picture-lines = líneas que van hacia el fondo
picture-trail = un sendero
picture-trail-beads = { $count ->
        [one] un sendero con { $count } cuenta
       *[other] un sendero con { $count } cuentas
    }
picture-dots = Ojo izquierdo: puntos al azar dentro de un marco, con uno de cada dos trazos. Ojo derecho: los mismos puntos, movidos de lado según su profundidad, y los otros trazos. Los dos ojos juntos: puntos que están { $depths }, en un marco entero.
picture-dots-flat = Ojo izquierdo: puntos al azar dentro de un marco, con uno de cada dos trazos. Ojo derecho: los mismos puntos y los otros trazos. Los dos ojos juntos: puntos que están en la página, en un marco entero.
picture-dots-lines = Unas líneas dibujadas muestran dónde cambia la profundidad.
picture-dots-drawn = Entre ellos: { $things }.

# Una página que pregunta algo.

asked-picture = { $count ->
        [one] Una imagen para los dos ojos juntos, con { $count } pregunta. { $goal }
       *[other] Una imagen para los dos ojos juntos, con { $count } preguntas. { $goal }
    }
asked-choices = Para elegir: { $choices }.
asked-key-turned = Las respuestas están en la clave de respuestas al final del libro.
asked-key-file = Las respuestas están en un archivo propio.

# Un desplazamiento base por un ojo desviado, un equilibrio entre los ojos y quién los fijó.

base-words = desplazamiento base { $amounts }
base-right-higher = imagen derecha { $pd } más alta
base-left-higher = imagen izquierda { $pd } más alta
base-sentence = Todo se apoya en un desplazamiento base: { $amounts }.
balance-left = { $share } % ojo izquierdo
balance-right = { $share } % ojo derecho
balance-words = equilibrio { $share }
set-by = fijado por { $name }

# Números de una página.

readings-distance = Ojos a página
readings-demand = Demanda
readings-place = Ojos a figura
readings-ruler-range = { $near } a { $far }
readings-ruler = Regla: el lugar del lápiz está a { $range } cm de la página (barra gruesa)
readings-ruler-picture = Una regla en tamaño real, de { $length } cm, con una barra gruesa desde { $range } cm.

# Lo que un documento dice de sí mismo.

document-answers = { $title }: respuestas
document-answers-subject = Respuestas a las páginas de práctica de { $title }.
document-subject = Páginas de práctica para los dos ojos y gafas { $first }/{ $second }.
document-practice = páginas de práctica
document-anaglyph = anaglifo
document-glasses = gafas { $first }/{ $second }
