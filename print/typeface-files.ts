/** The files of Andika in @fontsource/andika, under `files/`, in the order in which characters are looked for. */
export const ANDIKA = {
  regular: ['andika-latin-400-normal.woff', 'andika-latin-ext-400-normal.woff'],
  bold: ['andika-latin-700-normal.woff', 'andika-latin-ext-700-normal.woff'],
} as const;
