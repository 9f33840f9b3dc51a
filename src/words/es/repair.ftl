# Findings of repair: a line, and in full.

opening-larger = El hueco { $number } sale más grande: ¿sigue cubierto?
    .detail = El hueco { $number }, { $what }, queda de { $long } × { $wide } en lugar de { $long_asked } × { $wide_asked }: { $more } más en { $sides }. Si el reborde de lo que va dentro sigue cubriendo el borde del hueco, y sigue encontrando piedra en la que apoyarse o sujetarse con mordazas, no se sabe aquí: el reborde tiene que llegar en ese lado { $more } más lejos de lo que pedía el hueco previsto. Coloque la pieza que va dentro, o mida su reborde, antes de cortar ninguna otra cosa.
