import './check-note.css';
/** What a score is and is not; stands wherever one is shown. */
export function PracticeNote() {
  return (
    <p class="practice-note small">
      This is for practice, not a diagnosis: it shows what to practice next, and compares no child
      with others. For anything more, ask your school’s licensed specialists and follow your local
      rules.
    </p>
  );
}
