import { useEffect } from 'preact/hooks';
import type { DrillRecord } from '../../../core/log/class-state.ts';
import { isNoteKept, keepNotes, noteOf, typeNote } from './note-keeping.ts';
import { say } from './wording.ts';

/** How long she pauses, in milliseconds, before what she wrote goes into the log. */
const pause = 1000;

/** A line for herself, kept as she types. */
export function HerNote({ record }: { readonly record: DrillRecord }) {
  const text = noteOf(record.id);
  const kept = isNoteKept(record.id);

  useEffect(() => {
    if (kept) return;
    const timer = setTimeout(keepNotes, pause);
    return () => clearTimeout(timer);
  }, [text, kept]);

  useEffect(() => {
    const keep = () => void keepNotes();
    keep();
    addEventListener('pagehide', keep);
    document.addEventListener('visibilitychange', keep);
    return () => {
      removeEventListener('pagehide', keep);
      document.removeEventListener('visibilitychange', keep);
      keep();
    };
  }, [record.id]);

  return (
    <>
      <textarea
        rows={3}
        aria-label={say.herNote.aLineForYourself}
        placeholder={say.herNote.whatYouWant}
        value={text}
        onInput={({ currentTarget }) => typeNote(record, currentTarget.value)}
        onBlur={() => void keepNotes()}
      />
      <p class="quiet small" role="status">
        {text.trim() !== '' && kept ? say.herNote.kept : ''}
      </p>
    </>
  );
}
