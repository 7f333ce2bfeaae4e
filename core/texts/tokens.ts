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

const PIECES =
  /[\p{L}\p{M}]+(?:['’ʼ][\p{L}\p{M}]+)*['’]?|\d[\d.,:/]*(?:st|nd|rd|th)?|[^\p{L}\p{M}\d]+/gu;

/** All tokens of a text, in order. Linear in its length. */
export function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let sentenceStart = true;
  for (const [piece] of text.matchAll(PIECES)) {
    if (/^\d/.test(piece)) {
      tokens.push({ kind: 'number', text: piece, word: '', capital: false });
      sentenceStart = false;
    } else if (/^\p{L}/u.test(piece)) {
      tokens.push(...wordTokens(piece, !sentenceStart));
      sentenceStart = false;
    } else {
      tokens.push({ kind: 'other', text: piece, word: '', capital: false });
      if (/[.!?:\n“"]/.test(piece)) sentenceStart = true;
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
