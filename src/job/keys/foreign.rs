//! The commonest keys and words in other languages, so that who writes them is pointed to those of the
//! file.

/// Words in German, French and Spanish, in small letters without accents, and the word of the file.
const WORDS: [(&str, &[&str]); 62] = [
    // Sections and keys.
    ("job", &["auftrag", "chantier", "trabajo"]),
    ("stone", &["stein", "pierre", "piedra"]),
    (
        "slab",
        &["platte", "rohplatte", "tranche", "dalle", "tabla", "losa"],
    ),
    (
        "top",
        &[
            "arbeitsplatte",
            "deckplatte",
            "plateau",
            "encimera",
            "plan de travail",
        ],
    ),
    ("title", &["titel", "titre", "titulo"]),
    (
        "units",
        &[
            "einheit",
            "einheiten",
            "unite",
            "unites",
            "unidad",
            "unidades",
        ],
    ),
    ("date", &["datum", "fecha"]),
    ("note", &["notiz", "bemerkung", "remarque", "nota"]),
    ("language", &["sprache", "langue", "idioma"]),
    ("kind", &["art", "sorte", "type", "tipo"]),
    (
        "thickness",
        &[
            "dicke",
            "starke",
            "staerke",
            "epaisseur",
            "espesor",
            "grosor",
        ],
    ),
    ("density", &["dichte", "densite", "densidad"]),
    ("strength", &["festigkeit", "resistance", "resistencia"]),
    ("silica", &["quarz", "silizium", "silice"]),
    ("weighed", &["gewicht", "gewogen", "poids", "peso"]),
    (
        "rectangle",
        &[
            "rechteck",
            "rectangulo",
            "abmessungen",
            "dimensions",
            "medidas",
        ],
    ),
    ("corners", &["ecken", "coins", "esquinas"]),
    ("circle", &["kreis", "cercle", "circulo"]),
    (
        "round",
        &["rund", "radius", "rayon", "arrondi", "radio", "redondo"],
    ),
    ("sides", &["seiten", "cotes", "lados"]),
    ("diagonals", &["diagonalen", "diagonales"]),
    (
        "factory",
        &["werkskante", "fertig", "usine", "fini", "fabrica"],
    ),
    ("rough", &["roh", "brut", "bruto"]),
    ("tape", &["massband", "metre", "cinta"]),
    ("vein", &["ader", "maserung", "veine", "veta"]),
    (
        "flaw",
        &["fehler", "riss", "defaut", "fissure", "defecto", "grieta"],
    ),
    ("finish", &["kante", "finition", "acabado"]),
    ("cutout", &["ausschnitt", "decoupe", "recorte", "hueco"]),
    (
        "support",
        &["stutze", "stuetze", "auflager", "appui", "apoyo"],
    ),
    ("machine", &["maschine", "maquina"]),
    ("rpm", &["drehzahl", "tours", "revoluciones"]),
    ("power", &["antrieb", "alimentation", "alimentacion"]),
    ("noise", &["larm", "laerm", "bruit", "ruido"]),
    ("disc", &["scheibe", "trennscheibe", "disque", "disco"]),
    ("diameter", &["durchmesser", "diametre", "diametro"]),
    ("kerf", &["schnittbreite", "trait", "corte"]),
    ("guide", &["schiene", "fuhrung", "fuehrung", "guia"]),
    ("length", &["lange", "laenge", "longueur", "longitud"]),
    ("width", &["breite", "largeur", "ancho"]),
    ("height", &["hohe", "hoehe", "hauteur", "altura"]),
    ("dust", &["staub", "poussiere", "polvo"]),
    ("respirator", &["maske", "masque", "mascarilla"]),
    ("lift", &["heben", "levage", "levantar"]),
    ("people", &["personen", "leute", "personnes", "personas"]),
    ("door", &["tur", "tuer", "porte", "puerta"]),
    // Stones and other words.
    ("granite", &["granit", "granito"]),
    ("marble", &["marmor", "marbre", "marmol"]),
    ("sandstone", &["sandstein", "gres", "arenisca"]),
    ("limestone", &["kalkstein", "calcaire", "caliza"]),
    ("slate", &["schiefer", "ardoise", "pizarra"]),
    ("water", &["wasser", "eau", "agua"]),
    (
        "none",
        &["keine", "kein", "ohne", "aucun", "sans", "ninguno", "sin"],
    ),
    (
        "outdoors",
        &[
            "draussen",
            "aussen",
            "dehors",
            "exterieur",
            "exterior",
            "fuera",
        ],
    ),
    (
        "indoors",
        &[
            "drinnen",
            "innen",
            "dedans",
            "interieur",
            "interior",
            "dentro",
        ],
    ),
    ("battery", &["akku", "batterie", "bateria"]),
    ("mains", &["netz", "strom", "secteur", "red"]),
    ("polish", &["poliert", "polieren", "poli", "pulido"]),
    ("saw", &["gesagt", "gesaegt", "scie", "aserrado"]),
    ("ease", &["gefast", "gebrochen", "adouci", "canto matado"]),
    (
        "angle grinder",
        &["winkelschleifer", "flex", "meuleuse", "amoladora"],
    ),
    ("trolley", &["wagen", "rollwagen", "chariot", "carro"]),
    ("all", &["alle", "alles", "tous", "todos"]),
];

/// The word of the file that a word of another language stands for, among those that are known here.
pub(in crate::job) fn elsewhere(word: &str, known: &[&'static str]) -> Option<&'static str> {
    let word = without_accents(word);
    let meant = |entry: &&(&'static str, &[&str])| entry.1.contains(&word.as_str());
    let mut meanings = WORDS.iter().filter(meant).map(|(here, _)| *here);
    meanings.find(|here| known.contains(here))
}

/// In small letters, without accents.
fn without_accents(word: &str) -> String {
    let plain = |c: char| match c {
        'ä' | 'á' | 'à' | 'â' => 'a',
        'é' | 'è' | 'ê' | 'ë' => 'e',
        'í' | 'î' | 'ï' => 'i',
        'ö' | 'ó' | 'ô' => 'o',
        'ü' | 'ú' | 'û' => 'u',
        'ñ' => 'n',
        'ç' => 'c',
        '_' | '-' => ' ',
        c => c,
    };
    let word = word.trim().to_lowercase().replace('ß', "ss");
    word.chars().map(plain).collect()
}
