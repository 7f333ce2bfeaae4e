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
  /** For a word: whether it has a capital that no sentence asks for. */
  readonly capital: boolean;
}

/** A word with any letters and apostrophes, a number, or what stands between, from one place on. */
const PIECE =
  /([\p{L}\p{M}]+(?:['’ʼ][\p{L}\p{M}]+)*['’]?)|(\d[\d.,:/]*(?:st|nd|rd|th)?)|[^\p{L}\p{M}\d]+/uy;

/** All tokens of a text, in order. Linear in its length; plain words and spaces take a short way. */
export function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let sentenceStart = true;
  let at = 0;
  while (at < text.length) {
    const end = plainWordEnd(text, at);
    if (end > at) {
      const plain = text.slice(at, end);
      const word = plain.toLowerCase();
      const capital = !sentenceStart && word.charCodeAt(0) !== plain.charCodeAt(0);
      tokens.push({ kind: 'word', text: plain, word, capital });
      sentenceStart = false;
      at = end;
      if (text[at] === ' ' && plainWordEnd(text, at + 1) > at + 1) {
        tokens.push(SPACE);
        at += 1;
      }
      continue;
    }
    PIECE.lastIndex = at;
    const match = PIECE.exec(text);
    if (!match) throw new Error(`no token at ${at}`);
    const [piece, letters, number] = match;
    at += piece.length;
    if (letters !== undefined) {
      tokens.push(...wordTokens(letters, !sentenceStart));
      sentenceStart = false;
    } else if (number !== undefined) {
      tokens.push({ kind: 'number', text: piece, word: '', capital: false });
      sentenceStart = false;
    } else {
      tokens.push({ kind: 'other', text: piece, word: '', capital: false });
      if (/[.!?:\n“"]/.test(piece)) sentenceStart = true;
    }
  }
  return tokens;
}

const SPACE: Token = { kind: 'other', text: ' ', word: '', capital: false };

/** Where a word of plain letters ends, if nothing that could belong to it follows; else `at`. */
function plainWordEnd(text: string, at: number): number {
  let end = at;
  while (isPlainLetter(text.charCodeAt(end))) end += 1;
  const next = text.charCodeAt(end);
  return next === APOSTROPHE || next > 127 ? at : end;
}

const APOSTROPHE = 0x27;

function isPlainLetter(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
}

/** A trailing apostrophe belongs to the word only after s, and only as its first (the boys' dog); else it closes a quote. */
function wordTokens(piece: string, inside: boolean): Token[] {
  const quote = /['’]$/.test(piece) && !/^[^'’ʼ]*s['’]$/i.test(piece);
  const text = quote ? piece.slice(0, -1) : piece;
  const word = text.normalize('NFC').toLowerCase().replace(/[’ʼ]/g, "'");
  const token: Token = { kind: 'word', text, word, capital: inside && /^\p{Lu}/u.test(text) };
  return quote
    ? [token, { kind: 'other', text: piece.slice(-1), word: '', capital: false }]
    : [token];
}
