/**
 * Puts a text on the clipboard; false when the browser will not. Pages that are
 * not served securely have no clipboard of their own, so the old way is tried too.
 */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyFromField(text);
  }
}

function copyFromField(text: string): boolean {
  const before = document.activeElement;
  const field = document.createElement('textarea');
  field.value = text;
  field.className = 'for-ears';
  document.body.append(field);
  field.select();
  const done = document.execCommand('copy');
  field.remove();
  if (before instanceof HTMLElement) before.focus({ preventScroll: true });
  return done;
}
