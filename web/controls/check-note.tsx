import './check-note.css';
/** What a score is and is not; stands wherever one is shown. */
export function PracticeNote() {
  return (
    <p class="practice-note small">
      This is practice monitoring, not a diagnosis: it says what to practice next. No norm is
      claimed. For anything more, ask your school’s licensed specialists and follow your local
      rules.
    </p>
  );
}
