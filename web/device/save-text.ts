/** Hands a text to the person as a file to keep. */
export function saveText(name: string, text: string, type: string): void {
  saveFile(name, text, type);
}

/** Hands bytes to the person as a file to keep. */
export function saveFile(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
