# Páginas con dibujos propios. El nombre de cada parte solo lo sabe quien la dibujó: aquí se cuentan.

layers-goal = Vea cada parte de la imagen a su propia profundidad.
layers-look = Mire la imagen como si mirara por una ventana.
layers-nearest = Lleve los ojos a la parte que parece más cercana. Espere hasta verla única.
layers-back = Siga a la parte de detrás, y así hasta el fondo. Luego vuelva hacia delante.
layers-repeat = Hágalo cinco veces y luego mire a lo lejos.
layers-front = { $n ->
        [one] Una parte delante de la página.
       *[other] { $n } partes delante de la página.
    }
layers-page = { $n ->
        [one] Una parte en la página.
       *[other] { $n } partes en la página.
    }
layers-behind = { $n ->
        [one] Una parte detrás de la página.
       *[other] { $n } partes detrás de la página.
    }
