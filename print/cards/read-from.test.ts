import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { openTypeface } from '../typeface.ts';
import { ANDIKA } from '../typeface-files.ts';
import { ownCard, paperCard } from './paper-card.ts';
import { readFrom } from './read-from.ts';

const { resolve } = createRequire(import.meta.url);
const read = (name: string) => readFileSync(resolve(`@fontsource/andika/files/${name}`));
const typeface = openTypeface({ regular: ANDIKA.regular.map(read), bold: ANDIKA.bold.map(read) });
const half = { kind: 'half', paper: 'letter', pictured: false } as const;

test('a half sheet of one letter is read from 8 m, a long grapheme from less', () => {
  const of = (...cards: Parameters<typeof paperCard>[0][]) =>
    readFrom(cards.map(paperCard), half, typeface);
  expect(of('m=M')?.largest).toBeGreaterThanOrEqual(8);
  expect(of('m=M')?.smallest).toBe(of('m=M')?.largest);
  expect(of('m=M', 'ough=AO')?.smallest).toBeLessThan(8);
  expect(of('m=M', 'ough=AO')?.largest).toBe(of('m=M')?.largest);
});

test('index cards are read from about half as far, and a picture takes from the distance of long ones', () => {
  const cards = [paperCard('str=S+T+R')];
  const plain = readFrom(cards, half, typeface)?.largest ?? 0;
  const index = readFrom(cards, { ...half, kind: 'index' }, typeface)?.largest ?? 0;
  const pictured = readFrom(cards, { ...half, pictured: true }, typeface)?.largest ?? 0;
  expect(index).toBeLessThan(plain * 0.65);
  expect(pictured).toBeLessThan(plain);
});

test('blank cards have nothing to read', () => {
  expect(readFrom([ownCard('')], half, typeface)).toBeNull();
});
