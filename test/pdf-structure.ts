/**
 * Reads the structure of a PDF the way a screen reader finds it: from the catalog down, and in the content of
 * each page what is marked as which part. For files as PDFKit writes them, whose objects are plain text.
 */
import { inflateSync } from 'node:zlib';

/** An element of the structure tree. */
export interface Element {
  readonly role: string;
  readonly alt?: string;
  readonly says?: string;
  readonly box?: readonly number[];
  /** Elements, and how often something painted is pointed to. */
  readonly kids: readonly Element[];
  readonly painted: number;
}

type Objects = ReadonlyMap<number, string>;

/** The root's only element, the document. Throws where there is none. */
export function structureIn(bytes: Uint8Array): Element {
  const objects = objectsIn(bytes);
  const root = [...objects.values()].find((body) => body.includes('/Type /StructTreeRoot'));
  const first = /\/K \[(\d+) 0 R\]/.exec(root ?? '')?.[1];
  if (first === undefined) throw new Error('The file has no structure.');
  return elementOf(Number(first), objects);
}

/** How often each page paints outside of all marks of its content. */
export function unmarkedPaint(bytes: Uint8Array): readonly number[] {
  return contentsIn(bytes).map((content) => {
    let [depth, unmarked] = [0, 0];
    for (const [operator] of content.matchAll(/\b(BDC|BMC|EMC|Tj|TJ|f\*?|S|B\*?)(?=\s|$)/g)) {
      if (operator === 'BDC' || operator === 'BMC') depth += 1;
      else if (operator === 'EMC') depth -= 1;
      else if (depth === 0) unmarked += 1;
    }
    return unmarked;
  });
}

/** What each page paints, as the operators of PDF. */
export function contentsIn(bytes: Uint8Array): readonly string[] {
  const objects = objectsIn(bytes);
  return [...objects.values()]
    .filter((body) => /\/Type \/Page\b/.test(body))
    .map((body) => objects.get(Number(/\/Contents (\d+) 0 R/.exec(body)?.[1])) ?? '')
    .map((body) => {
      const stream = /stream\r?\n([\s\S]*)\r?\nendstream/.exec(body)?.[1] ?? '';
      return inflateSync(Buffer.from(stream, 'latin1')).toString('latin1');
    });
}

function objectsIn(bytes: Uint8Array): Objects {
  const text = Buffer.from(bytes).toString('latin1');
  const found = text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g);
  return new Map([...found].map(([, id, body]) => [Number(id), body as string]));
}

function elementOf(id: number, objects: Objects): Element {
  const body = objects.get(id) ?? '';
  const kids = /\/K \[([^\]]*)\]/.exec(body)?.[1] ?? '';
  const alt = textOf('Alt', body);
  const says = textOf('ActualText', body);
  const box = /\/BBox \[([^\]]*)\]/.exec(body)?.[1]?.split(' ').map(Number);
  const elements = [...kids.matchAll(/(\d+) 0 R/g)].map(([, kid]) => Number(kid));
  return {
    role: /\/S \/(\w+)/.exec(body)?.[1] ?? '',
    ...(alt === null ? {} : { alt }),
    ...(says === null ? {} : { says }),
    ...(box ? { box } : {}),
    kids: elements.map((kid) => elementOf(kid, objects)),
    painted: (kids.replaceAll(/\d+ 0 R/g, '').match(/\d+/g) ?? []).length,
  };
}

/** A text of PDF, in its own 8 bits or in UTF-16 (ISO 32000-1 §7.9.2). */
function textOf(key: string, body: string): string | null {
  const found = new RegExp(`/${key} \\(((?:\\\\.|[^\\\\)])*)\\)`, 's').exec(body)?.[1];
  if (found === undefined) return null;
  const plain = found.replace(/\\(.)/gs, (_, character: string) => character);
  if (!plain.startsWith('\xfe\xff')) return plain;
  return Buffer.from(plain.slice(2), 'latin1').swap16().toString('utf16le');
}
