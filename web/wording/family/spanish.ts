import type { FamilyWords, StoryWords } from './family-words.ts';

/** The family note in Spanish. Machine-made: nobody who speaks Spanish has read it yet, and it says so. */
export const SPANISH: FamilyWords = {
  tag: 'es-US',
  title: (name) => `Leer en casa con ${name}`,
  intro:
    'En la escuela practicamos la lectura por sonidos unos minutos cada día. Cinco minutos en casa ayudan mucho.',
  aboutWords: (name) =>
    `Las palabras de esta página están en inglés, porque ${name} está aprendiendo a leer en inglés. No se preocupe por la pronunciación: lo que más ayuda es practicar juntos.`,
  canRead: (name) => `Palabras que ${name} ya puede leer`,
  toTry: 'Palabras para intentar',
  together: 'Para leer juntos',
  practicing: 'Lo que estamos practicando ahora',
  toWrite: 'Palabras para escribir juntos',
  howToWrite: (name) =>
    `Diga la palabra despacio. ${name} dice cada sonido, lo escribe y después mira la palabra de arriba.`,
  howTo: 'Cómo practicar',
  steps: (name) => [
    `${name} señala cada letra o grupo de letras y dice su sonido; luego pasa el dedo por debajo de la palabra y la lee.`,
    `Si una palabra no sale bien, primero dígala usted, después díganla juntos y al final deje que ${name} la diga.`,
    'Terminen mientras todavía sea divertido, y díganse qué salió bien.',
  ],
  machineMade: 'Traducción automática. Todavía no la ha revisado una persona que hable español.',
};

/** The sentence on a child in Spanish, machine-made like the rest. */
export const SPANISH_STORY: StoryWords = {
  nothing: 'Todavía no hay nada anotado.',
  surely: (families) => `lee con seguridad ${families}`,
  right: (times, of) => `leyó bien ${times} de ${of} veces`,
  practicing: (cards) => `estamos practicando ${cards}`,
  and: 'y',
  families: {
    'short-vowel': 'las vocales cortas',
    consonant: 'las consonantes simples',
    double: 'las consonantes dobles',
    digraph: 'las letras que juntas forman un sonido',
    cluster: 'los grupos de consonantes',
    'silent-e': 'las palabras con e muda',
    'long-vowel': 'las vocales largas',
    'vowel-team': 'los grupos de vocales',
    'r-vowel': 'las vocales con r',
    ending: 'las terminaciones',
    sight: 'palabras que se leen de un vistazo',
  },
};
