# What the parts at the end of a book share.

part-sheet = { $title }, hoja { $n }
time-minutes = { $n ->
    [one] { $n } minuto
   *[other] { $n } minutos
    }
time-seconds = { $n ->
    [one] { $n } segundo
   *[other] { $n } segundos
    }
time-days = { $n ->
    [one] { $n } día
   *[other] { $n } días
    }
time-weeks = { $n ->
    [one] { $n } semana
   *[other] { $n } semanas
    }

# The plan.

plan-title = Su plan
plan-description = Qué páginas tocan en cada semana y día, y cuándo seguir, tomar una página más fácil, parar y preguntar.
plan-lead = { $weeks }, { $days } por semana, como mucho { $minutes } al día. Es una propuesta: vaya a su ritmo.
plan-when = Cuándo
plan-pages = Páginas, las nuevas en negrita
plan-minutes = Minutos
plan-done = Hecho
plan-day = Semana { $week }, día { $day }
plan-each-day = Cada día
plan-easy-to-hard = Las páginas de un día van de fácil a difícil. Las de negrita son nuevas.
plan-rest = Tras { $block } como mucho, descanse { $rest }: mire a lo lejos. Los minutos incluyen estos descansos.
plan-again = ¿Una página aún no es fácil? Repítala. Las nuevas pueden esperar.
plan-end = Termine cada día mirando a lo lejos.
plan-come-again = Hay más días que páginas: las páginas que ya conoce vuelven.
plan-framed = Una página en un marco: solo como le dijo su profesional de la vista.
plan-go-on = Siga cuando, en { $days } días distintos,
plan-good-answers = en una página que pregunta, tuvo tantos aciertos que es más que suerte,
plan-good-marks = estaban tanto la barra como la cuña, y
plan-good-comfort = el bienestar quedó entre 0 y { $most } de 10, donde 10 es malo.
plan-step-back = Tome la página más fácil cuando
plan-bad-marks = falta la barra o la cuña, o todo sigue doble, o
plan-bad-comfort = el bienestar llega a { $least } de 10. Descanse primero, mirando a lo lejos.
plan-bad-easier = Cada página nombra otra más fácil.
plan-stop = Regla de parada
plan-ask = Pregunte
plan-ask-words = Enseñe su diario a su profesional de la vista tras cuatro semanas, y antes si algo le preocupa. Lo que diga vale más que este plan.

# The log.

log-title = Su diario
log-description = Una línea para cada uno de { $n } días, para escribir.
log-lead = Una línea al día. Estas páginas: edición { $edition }, a { $distance } de los ojos, { $glasses }. Bienestar: 0 es bueno, 10 es malo. Rodee con un círculo lo que vio.
log-head-day = Día
log-head-date = Fecha
log-head-page = Página
log-head-glasses = Gafas bien
log-head-minutes = Min
log-head-single = Única, doble
log-head-marks = Barra, cuña
log-head-answers = Aciertos
log-head-before = Bienestar antes
log-head-after = Bienestar después
log-head-stayed = Siguió doble
log-head-note = Nota
log-circle-single = u   d
log-circle-marks = b   c
log-circle-stayed = s   n
log-stays-double = Bienestar 4 o más: descanse y luego tome una página más fácil. ¿Siguió doble tras un descanso? Pare, anótelo y pregunte a su profesional de la vista. Enséñele este diario.
log-screen-lead = Lleve un diario en papel, una línea cada día. Anote:
log-screen-date = la fecha, la página y esta edición; y que las gafas estaban bien puestas;
log-screen-seen = los minutos; si todo se vio único o doble; si estaban la barra y la cuña;
log-screen-answers = cuántos aciertos tuvo, si la página pregunta;
log-screen-comfort = el bienestar antes y después, de 0 (bueno) a 10 (malo);
log-screen-other = si algo siguió doble tras un descanso, y qué más notó.

# The answer key.

answers-title = Respuestas
answers-turn = Respuestas: gire la página.
answers-description = Las respuestas a lo que preguntan las páginas de ejercicio.
answers-pass = { $right } de { $of } o más: más que suerte

# The words of all exercises once more.

words-title = Cada ejercicio en palabras
words-lead = Otra vez las palabras de todas las páginas de ejercicio, solo en negro. Puede leerlas sin las gafas de colores o pedir que se las lean.
words-lead-dark = Otra vez las palabras de todas las páginas de ejercicio, sin color. Puede leerlas sin las gafas de colores o pedir que se las lean.
words-description = Qué hacer en cada página de ejercicio, solo en palabras, para leer sin las gafas de colores.
words-page = { $title }, página { $page }
words-pages = { $title }, páginas { $page } a { $last_page }
words-level = { $title }, nivel { $level }, página { $page }
words-level-pages = { $title }, nivel { $level }, páginas { $page } a { $last_page }
words-levels = { $title }, niveles { $level } a { $last_level }, páginas { $page } a { $last_page }
