# Words of every exercise page.

page-stop-rule = Regla de parada.
page-stop = Pare ya si siente dolor, dolor de cabeza, náuseas o mareo. Pare también si aún ve borroso o doble tras 5 a 10 minutos de descanso mirando a lo lejos. ¿Dura hasta el día siguiente o vuelve dos veces? Guarde el libro y pregunte a su profesional de la vista.
page-glasses = { $left } izquierda, { $right } derecha
page-ground-white = fondo blanco
page-ground-black = fondo negro
page-set-up = Preparación:
page-set-up-words = a { $distance } de los ojos, { $glasses }. Página plana y recta.
page-badge-level = nivel { $n } de { $of }
page-badge-grade = grado { $n }
page-title-level = { $title }, nivel { $n }
page-do = Qué hacer
page-see = Debería ver
page-only = Si solo ve …
page-only-row = { $seen }:
page-easier = Más fácil:
page-harder = Más difícil:
page-first = esta es la primera página
page-last = esta es la última página
page-answers = Respuestas:
page-number = página { $n }
page-key-apart = en un archivo aparte
page-way = { $name } página { $page }
page-go-to = Ir a la página { $page }

# An exercise on two sheets: its picture, and its words.

page-words-title = { $title }: palabras
page-words-description = Qué hacer en la página «{ $title }», solo en palabras, para leer sin las gafas de colores.
page-words-at = Qué hacer:
page-picture-at = Imagen:

# The footer.

footer-set = { $title } { $version } · edición { $edition } · { $date }
footer-set-reader = { $title } { $version } · edición { $edition } · para { $reader } · { $date }
footer-facts = { $depth } · { $distance }, { $ipd } entre ojos · { $glasses } · { $ground }
footer-true-size = tamaño 100 %
footer-seed = semilla { $n }

# Where the reader writes on an exercise page.

log-date = Fecha
log-minutes = Minutos
log-single = Única
log-marks = Las dos señales
log-comfort = Bienestar 0–10
log-line = Diario: fecha, minutos, única, las dos señales, bienestar 0–10.
log-line-answers = { $n ->
    [one] Diario: fecha, bienestar 0–10, su respuesta.
   *[other] Diario: fecha, bienestar 0–10, sus respuestas { $first } a { $last }.
    }
log-write = { $n ->
    [one] Anote su respuesta en el diario.
   *[other] Anote sus respuestas { $first } a { $last } en el diario.
    }

# Cover and contents.

cover-facts = { $n ->
    [one] Páginas de práctica para ver con los dos ojos, con gafas de filtros { $first } y { $second }. Una página de ejercicio, hecha para verla a { $distance } de los ojos.
   *[other] Páginas de práctica para ver con los dos ojos, con gafas de filtros { $first } y { $second }. { $n } páginas de ejercicio, hechas para verlas a { $distance } de los ojos.
    }
cover-description = Portada de { $title }.
cover-edition = Edición { $edition }: { $page }, { $ground }
cover-edition-reader = Edición { $edition }: { $page }, { $ground } · hecha para { $reader }
cover-glasses = Gafas: { $glasses }
cover-version = Versión { $version } · { $date }
cover-author = { $author } · versión { $version } · { $date }
cover-practice = Páginas de práctica. No son una prueba ni un tratamiento: lea primero las precauciones.
contents-title = Contenido
contents-description = Cada página del libro con su número.
contents-link = Ir a { $title }
