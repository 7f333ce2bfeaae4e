/**
 * Cuts running text into words, numbers and what stands between, keeping every
 * character, so that the text can be shown again as it was with its words
 * marked. Curly and straight apostrophes count as one; a hyphen parts two words.
 */
export interface Token {
  readonly kind: 'word' | 'number' | 'other';
  /** As written. The texts of all tokens, joined, are the text. */
  readonly text: string;
  /** For a word: lower case, plain apostrophes; else empty. */
  readonly word: string;
  /** For a word: whether it is capitalised where a sentence does not ask for it. */
  readonly capital: boolean;
}

/** A plain word, a word with other letters or apostrophes, a number, what stands between. */
const PIECES =
  /([A-Za-z]+)(?![\p{L}\p{M}'’ʼ])|([\p{L}\p{M}]+(?:['’ʼ][\p{L}\p{M}]+)*['’]?)|(\d[\d.,:/]*(?:st|nd|rd|th)?)|[^\p{L}\p{M}\d]+/gu;

/** All tokens of a text, in order. Linear in its length; plain words take a short way. */
export function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let sentenceStart = true;
  PIECES.lastIndex = 0;
  for (let match = PIECES.exec(text); match; match = PIECES.exec(text)) {
    const [piece, plain, other, number] = match;
    if (plain !== undefined) {
      const word = plain.toLowerCase();
      tokens.push({
        kind: 'word',
        text: plain,
        word,
        capital: !sentenceStart && word[0] !== plain[0],
      });
      sentenceStart = false;
    } else if (other !== undefined) {
      tokens.push(...wordTokens(other, !sentenceStart));
      sentenceStart = false;
    } else if (number !== undefined) {
      tokens.push({ kind: 'number', text: number, word: '', capital: false });
      sentenceStart = false;
    } else {
      tokens.push({ kind: 'other', text: piece, word: '', capital: false });
      if (piece !== ' ' && /[.!?:\n“"]/.test(piece)) sentenceStart = true;
    }
  }
  return tokens;
}

/** A trailing apostrophe belongs to the word only after s (the boys' dog); else it closes a quote. */
function wordTokens(piece: string, inside: boolean): Token[] {
  const quote = /['’]$/.test(piece) && !/s['’]$/i.test(piece);
  const text = quote ? piece.slice(0, -1) : piece;
  const word = text.normalize('NFC').toLowerCase().replace(/[’ʼ]/g, "'");
  const token: Token = { kind: 'word', text, word, capital: inside && /^\p{Lu}/u.test(text) };
  return quote
    ? [token, { kind: 'other', text: piece.slice(-1), word: '', capital: false }]
    : [token];
}
