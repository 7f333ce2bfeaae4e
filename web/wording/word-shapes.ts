/** A shape of words, as the core writes it, in a teacher's words, with a word that has it. */
export interface ShapeName {
  readonly shape: string;
  readonly name: string;
  readonly example: string;
}

/** The shapes she can ask for, the simplest first. */
export const SHAPE_NAMES: readonly ShapeName[] = [
  { shape: 'vc', name: 'vowel – ending', example: 'at' },
  { shape: 'cv', name: 'beginning – vowel', example: 'go' },
  { shape: 'cvc', name: 'beginning – vowel – ending', example: 'ship' },
  { shape: 'cvcc', name: 'beginning – vowel – two endings', example: 'hand' },
  { shape: 'ccvc', name: 'two beginnings – vowel – ending', example: 'stop' },
  { shape: 'ccvcc', name: 'two beginnings – vowel – two endings', example: 'plant' },
  { shape: 'cvce', name: 'beginning – vowel – ending – silent e', example: 'make' },
  { shape: 'ccvce', name: 'two beginnings – vowel – ending – silent e', example: 'stone' },
  { shape: 'cvv', name: 'beginning – vowel team', example: 'day' },
  { shape: 'cvvc', name: 'beginning – vowel team – ending', example: 'rain' },
  { shape: 'ccvvc', name: 'two beginnings – vowel team – ending', example: 'train' },
  { shape: 'cvr', name: 'beginning – vowel with r', example: 'car' },
  { shape: 'cvrc', name: 'beginning – vowel with r – ending', example: 'bird' },
  { shape: 'ccvrc', name: 'two beginnings – vowel with r – ending', example: 'start' },
];
